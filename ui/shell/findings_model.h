// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <vector>

#include "core/planning/finding.h"
#include "ui/words/finding_words.h"

namespace leadline {

class SessionDocument;

/// The plan's findings and, after the dive, the review's, as a list: what stops first.
class FindingsModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { severity_role = Qt::UserRole + 1, about_role, what_role, remedy_role,
                overruled_role };

    explicit FindingsModel(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    /// The finding of a row, or nullptr.
    [[nodiscard]] const Finding* finding_at(int row) const;
    [[nodiscard]] FindingText text_at(int row) const;

private:
    void refresh();

    SessionDocument& document_;
    std::vector<Finding> findings_;
    std::vector<FindingText> texts_;
};

}  // namespace leadline
