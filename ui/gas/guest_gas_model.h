// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "core/planning/plan.h"

namespace leadline {

class SessionDocument;

/// Every guest's air as a row, in roster order: what they breathe from and how, and what the plan
/// makes of it. Cylinder, pressure as read, gas temperature, breathing and RMV can be edited.
class GuestGasModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column {
        // The answer first, what it follows from after it.
        name_column,
        group_column,
        minutes_column,
        spread_column,
        ends_dive_column,
        end_column,
        signal_column,
        turn_column,
        leave_column,
        minimum_column,
        cylinder_column,
        fill_column,
        gas_temperature_column,
        start_column,
        breathing_column,
        rmv_column,
        column_count
    };
    enum Role {
        sort_role = Qt::UserRole,  ///< number or text to sort by
        guest_role,                ///< the guest's id
        group_role,                ///< the group's id
        limiting_role,             ///< whether the guest is likely the first of the group
    };

    explicit GuestGasModel(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Takes what the column's editor gives (Qt::EditRole): a cylinder type's id (empty: none),
    /// bar, degrees Celsius, a BreathingClass as int, L/min (invalid: by class). False, and nothing
    /// changed, when the document refuses it.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    /// Row of a guest, or -1.
    [[nodiscard]] int row_of(const GuestId& id) const;

Q_SIGNALS:
    /// A value was refused; in words, for beside the table.
    void refused(const QString& message);

private:
    void refresh();
    [[nodiscard]] QString shown(const Guest& guest, const GuestGas& gas, int column) const;
    [[nodiscard]] QString calculated(const GuestGas& gas, int column) const;
    [[nodiscard]] QVariant edited(const Guest& guest, int column) const;
    [[nodiscard]] QVariant sorted(const Guest& guest, const GuestGas& gas, int column) const;
    [[nodiscard]] QVariant tip(const Guest& guest, const GuestGas& gas, int column) const;
    [[nodiscard]] const Finding* finding_for(const GuestId& id, int column) const;
    [[nodiscard]] bool is_limiting(const GuestGas& gas) const;
    [[nodiscard]] QString cooling(const Guest& guest, const GuestGas& gas) const;

    SessionDocument& document_;
    std::vector<GuestId> ids_;  ///< rows as last shown
};

}  // namespace leadline
