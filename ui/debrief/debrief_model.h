// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "core/debrief/review.h"

namespace leadline {

class SessionDocument;

/// Planned against actual, a row a guest who is in the log, in the order of the roster. Pressures, time
/// and ear trouble can be edited in place. Before the name stands the shape of the gravest finding
/// about the guest; beside the end pressure, in words, who had the least air.
class DebriefModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        name_column,
        start_column,
        end_column,
        planned_end_column,
        duration_column,
        ears_column,
        rmv_column,
        rmv_change_column,
        deepest_column,
        mean_depth_column,
        used_column,
        column_count
    };
    enum Role { guest_role = Qt::UserRole + 1 };

    explicit DebriefModel(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] int row_of(const GuestId& id) const;

private:
    void refresh();
    [[nodiscard]] const DiverReview* review_at(int row) const;
    [[nodiscard]] QString shown(const DiverReview& diver, int column) const;
    [[nodiscard]] QString name_of(const DiverReview& diver) const;
    [[nodiscard]] QString tip(const DiverReview& diver, int column) const;
    [[nodiscard]] QVariant number(const DiverReview& diver, int column) const;
    [[nodiscard]] bool had_least(const DiverReview& diver) const;
    [[nodiscard]] std::optional<Severity> gravest(const DiverReview& diver) const;
    bool edit_diver(const GuestId& id, int column, double value);

    SessionDocument& document_;
    std::vector<GuestId> rows_;
};

/// "breathed 20 % more than planned", in short: "20 % more". Empty without an actual rate.
QString change_words(const DiverReview& diver);

}  // namespace leadline
