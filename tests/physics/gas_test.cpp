// SPDX-License-Identifier: GPL-3.0-or-later
// The handbooks' gas laws and gas supply sums, done with the project's real air and real water.
#include <gtest/gtest.h>

#include "core/body/breathing.h"
#include "core/body/lungs.h"
#include "core/physics/air.h"
#include "tests/physics/support.h"

namespace leadline {
namespace {

constexpr double cubic_foot = 0.3048 * 0.3048 * 0.3048;  // m3
constexpr double cubic_inch = cubic_foot / 1728.0;       // m3
constexpr Psi handbook_atmosphere{14.7};

Kelvins fahrenheit(double degrees) {
    return Kelvins((degrees + 459.67) / 1.8);
}

Pascals of_gauge(double psig) {
    return Psi(psig) + handbook_atmosphere;
}

Pascals handbook_pressure(double fsw) {
    return handbook_sea().absolute_pressure(Depth(Feet(fsw)));
}

/// Volume that air, 1 ft3 of it at one state, takes at another.
double volume_ratio(Pascals from, Kelvins from_temperature, Pascals to, Kelvins to_temperature) {
    return must(air_molar_density(from, from_temperature)) /
           must(air_molar_density(to, to_temperature));
}

class GasLaws : public RowTest {};

TEST_P(GasLaws, AgreesWithTheTable) {
    const ReferenceRow& row = GetParam();
    const std::string& check = row.text("check");
    if (check == "expansion") {
        const Depth depth{Feet(row.number("depth_fsw"))};
        expect_near(row, held_breath_expansion(handbook_sea(), depth));
    } else if (check == "bell_volume_ft3") {
        const Kelvins temperature = fahrenheit(row.number("from_f"));
        const double ratio = volume_ratio(Pascals(atmosphere_pa), temperature,
                                          handbook_pressure(row.number("depth_fsw")), temperature);
        expect_near(row, row.number("volume_ft3") * ratio);
    } else if (check == "isobaric_ft3") {
        const Pascals pressure = handbook_pressure(row.number("depth_fsw"));
        const double ratio = volume_ratio(pressure, fahrenheit(row.number("from_f")), pressure,
                                          fahrenheit(row.number("to_f")));
        expect_near(row, row.number("volume_ft3") * ratio);
    } else if (check == "isochoric_psi") {
        const CubicMeters flask(0.01);
        const Moles content = must(air_content(flask, of_gauge(row.number("start_psig")),
                                               fahrenheit(row.number("from_f"))));
        const Pascals heated =
            must(air_vessel_pressure(flask, content, fahrenheit(row.number("to_f"))));
        expect_near(row, Psi(heated).value());
    } else {
        fail_unknown_check(row);
    }
}

LEADLINE_REFERENCE_TABLE(GasLaws, "gas_laws");

/// What a row says of its cylinders, and what the handbooks do with it.
class Supply {
public:
    explicit Supply(const ReferenceRow& row) : row_(row) {}

    [[nodiscard]] CubicMeters volume() const {
        const double number = row_.number("volume");
        const std::string& unit = row_.text("volume_unit");
        if (unit == "ft3") {
            return CubicMeters(number * cubic_foot);
        }
        if (unit == "in3") {
            return CubicMeters(number * cubic_inch);
        }
        EXPECT_EQ(unit, "L");
        return Liters(number);
    }

    [[nodiscard]] Kelvins temperature() const { return Celsius(row_.number("temperature_c")); }

    [[nodiscard]] Moles content(Pascals pressure) const {
        return must(air_content(volume(), pressure, temperature()));
    }

    [[nodiscard]] Moles content_at(std::string_view psig_column) const {
        return content(of_gauge(row_.number(psig_column)));
    }

    /// Free air as the handbooks count it: an ideal gas of the cylinder's temperature [ft3].
    [[nodiscard]] double standard_cubic_feet(Moles amount) const {
        return amount.value() * molar_gas_constant * temperature().value() / atmosphere_pa /
               cubic_foot;
    }

    [[nodiscard]] Moles moles(double standard_cubic_feet) const {
        return Moles(standard_cubic_feet * cubic_foot * atmosphere_pa /
                     (molar_gas_constant * temperature().value()));
    }

    /// Free air that all cylinders give between two gauge readings [ft3].
    [[nodiscard]] double gas_between() const {
        const Moles given = content_at("start_psig") - content_at("end_psig");
        return row_.number("cylinders") * standard_cubic_feet(given);
    }

    /// Free air breathed a minute at the row's depth [ft3/min].
    [[nodiscard]] double surface_flow() const {
        return handbook_pressure(row_.number("depth_fsw")).value() / atmosphere_pa *
               row_.number("rmv_acfm");
    }

    /// Gauge reading of a cylinder that gives an amount of gas down to the row's last pressure.
    [[nodiscard]] double reading_for_gas() const {
        const Moles needed = content_at("end_psig") + moles(row_.number("gas_ft3"));
        const Pascals pressure = must(air_vessel_pressure(volume(), needed, temperature()));
        return (Psi(pressure) - handbook_atmosphere).value();
    }

private:
    const ReferenceRow& row_;
};

bool check_breathing(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    if (check == "surface_flow") {
        expect_near(row, Supply(row).surface_flow());
    } else if (check == "gas_volume") {
        expect_near(row, Supply(row).surface_flow() * row.number("minutes"));
    } else if (check == "duration_min") {
        expect_near(row, Supply(row).gas_between() / Supply(row).surface_flow());
    } else if (check == "rmv_average") {
        expect_near(row, planning_rmv(BreathingClass::average).value());
    } else if (check == "rmv_nervous") {
        expect_near(row, planning_rmv(BreathingClass::nervous).value());
    } else if (check == "rmv_calm") {
        expect_near(row, planning_rmv(BreathingClass::calm).value());
    } else if (check == "rmv_stressed") {
        expect_near(row, stressed_guest_rmv.value());
    } else {
        return false;
    }
    return true;
}

bool check_cylinder(const ReferenceRow& row) {
    const std::string& check = row.text("check");
    const Supply supply(row);
    if (check == "capacity_ft3") {
        expect_near(row, supply.standard_cubic_feet(supply.content_at("start_psig")));
    } else if (check == "delivered_ft3") {
        const Moles left = supply.content(Pascals(atmosphere_pa));
        expect_near(row, supply.standard_cubic_feet(supply.content_at("start_psig") - left));
    } else if (check == "gas_above_ft3") {
        expect_near(row, supply.gas_between());
    } else if (check == "pressure_for_gas_psig") {
        expect_near(row, supply.reading_for_gas());
    } else if (check == "mass_kg") {
        const Moles content = supply.content(Bars(row.number("start_bar_absolute")));
        expect_near(row, mass_of_air(content).value());
    } else if (check == "free_air_l") {
        const Moles content = supply.content(Bars(row.number("start_bar_absolute")));
        expect_near(row, free_air_volume(content).value());
    } else {
        return false;
    }
    return true;
}

class GasSupply : public RowTest {};

TEST_P(GasSupply, AgreesWithTheTable) {
    if (!check_breathing(GetParam()) && !check_cylinder(GetParam())) {
        fail_unknown_check(GetParam());
    }
}

LEADLINE_REFERENCE_TABLE(GasSupply, "gas_supply");

}  // namespace
}  // namespace leadline
