// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gas/id_row_model.h"
#include "ui/gas/staff_exposure_words.h"

namespace leadline {

/// What the dives of the last days leave to each member of staff, as a row, in the session's order.
class StaffExposureModel : public IdRowModel {
    Q_OBJECT
public:
    enum Column {
        name_column,
        verdict_column,
        no_stop_column,
        planned_column,
        share_column,
        dives_column,
        ascents_column,
        days_column,
        interval_column,
        no_fly_column,
        column_count
    };

    explicit StaffExposureModel(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    /// Takes over what the document now has.
    void refresh();

private:
    [[nodiscard]] Heading heading(int column) const override;
    [[nodiscard]] QVariant part(const std::string& id, int column, Part part) const override;
    [[nodiscard]] QString shown(const StaffExposure& exposure, int column) const;
    [[nodiscard]] QString told(const StaffExposure& exposure, int column) const;
    [[nodiscard]] QVariant sorted(const StaffExposure& exposure, int column) const;
    [[nodiscard]] const Finding* open_in(const StaffExposure& exposure, int column) const;
    [[nodiscard]] QString counted(const StaffExposure& exposure, int column, int count) const;

    SessionDocument& document_;
};

}  // namespace leadline
