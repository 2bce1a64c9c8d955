// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QPalette>
#include <vector>

#include "core/planning/rules.h"
#include "core/records/check_store.h"

namespace leadline {

enum class RedListColumn { day, guest, phone, needs, session };
inline constexpr int red_list_column_count = 5;

/// Who must still see a physician, bring consent, answer or renew before a session to come: one row
/// a guest and session, by date and time.
class RedListModel : public QAbstractTableModel {
    Q_OBJECT
public:
    RedListModel(const std::vector<SessionToCome>& sessions, const RuleBook& rules,
                 QObject* parent = nullptr);

    [[nodiscard]] SessionRow session_at(int row) const;
    [[nodiscard]] GuestId guest_at(int row) const;
    /// All of it as a plain page, for printing.
    [[nodiscard]] QString html() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    struct Row {
        SessionRow session;
        GuestId guest;
        QString cells[red_list_column_count];
        QString tip;  ///< what to ask of whom
    };
    std::vector<Row> rows_;
};

}  // namespace leadline
