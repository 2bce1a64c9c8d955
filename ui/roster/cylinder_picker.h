// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <optional>

#include "ui/document/session_document.h"
#include "ui/widgets/quantity_box.h"

namespace leadline {

class ChoiceBox;

/// Which control an edit came from, as a key for merging: "cylinder_type", "cylinder_fill" or
/// "cylinder_temperature".
const char* changed_part(const std::optional<Cylinder>& before,
                         const std::optional<Cylinder>& after);

/// The three controls of a cylinder, laid out by whoever asks for them: kind, gauge reading, and
/// the temperature of the gas when it was read. The readings are off while no kind is chosen.
class CylinderPicker : public QObject {
    Q_OBJECT
public:
    /// @param stem    of the object names: "guest" gives guest_cylinder_combo, guest_fill_box, ...
    /// @param parent  parent of the controls
    CylinderPicker(const QString& stem, const QString& nothing, QWidget* parent);

    [[nodiscard]] ChoiceBox* type() const { return type_; }
    [[nodiscard]] QuantityBox* fill() const { return fill_; }
    [[nodiscard]] QuantityBox* temperature() const { return temperature_; }

    void set_units(UnitSystem units);
    /// Temperature for a cylinder not handed out before.
    void set_air(Kelvins air) { air_ = air; }
    void show_cylinder(const std::optional<Cylinder>& cylinder);
    /// The cylinder of somebody else is shown next: no reading may be carried over to it.
    void start_anew();
    [[nodiscard]] const std::optional<Cylinder>& cylinder() const { return cylinder_; }

Q_SIGNALS:
    void edited(const std::optional<Cylinder>& cylinder);

private:
    void offer_types(UnitSystem units);
    void pick_type();

    ChoiceBox* type_;
    QuantityBox* fill_;
    QuantityBox* temperature_;
    QString nothing_;
    Kelvins air_{288.15};
    std::optional<Cylinder> cylinder_;
    std::optional<Cylinder> picked_;  ///< by the list of kinds, last
    /// What was handed out before the list was gone through: stepping past a kind that may not hold
    /// the reading must not lose it.
    std::optional<Cylinder> before_;
};

}  // namespace leadline
