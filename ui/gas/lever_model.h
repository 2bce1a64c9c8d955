// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <vector>

#include "core/planning/plan.h"
#include "ui/words/lever_words.h"

namespace leadline {

class SessionDocument;

/// What would buy more minutes, a row a lever, best first. Where several groups are shown, a row
/// with the group's name stands before its levers; it cannot be chosen.
class LeverModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role {
        gain_role = Qt::UserRole,  ///< QString "+4 min"
        chance_role,               ///< QString "83 → 91 of 100"
        cost_role,                 ///< QString
        share_role,                ///< double, the bar's length of the longest's, 0 to 1
        heading_role,              ///< bool: a group's name
    };

    explicit LeverModel(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// The lever of a row; nullptr for a heading or no row.
    [[nodiscard]] const Lever* lever_at(const QModelIndex& index) const;
    /// Shows a group's levers; empty: those of all.
    void show_group(const GroupId& group);
    void refresh();
    /// Makes the change in the session, as one step that can be undone. A heading changes nothing.
    bool apply(const QModelIndex& index);

private:
    struct Row {
        bool heading = false;
        Lever lever;
        LeverText text;  ///< of a heading only `what`
        double share = 0.0;
    };
    [[nodiscard]] std::vector<Row> rows_now() const;
    [[nodiscard]] bool same_kind(const std::vector<Row>& rows) const;

    SessionDocument& document_;
    GroupId group_;
    std::vector<Row> rows_;
};

}  // namespace leadline
