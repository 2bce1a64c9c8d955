// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/physics/quantities.h"
#include "core/planning/dates.h"
#include "core/planning/session.h"
#include "ui/guest_words/guest_language.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// Quantities as a guest reads them: in the guest's language and units, each with its unit, wrapped
/// so that they keep their order in any text. What is a limit is rounded to the safe side.
class GuestFigures {
public:
    /// @param also  lengths and pressures are said in these units too
    GuestFigures(const GuestTongue& tongue, UnitSystem units,
                 std::optional<UnitSystem> also = std::nullopt)
        : tongue_(&tongue), units_(units), also_(also) {}

    [[nodiscard]] UnitSystem units() const { return units_; }
    /// "5.0 m" where the diver is now; "16 ft". Rounded down, as the deepest point is.
    [[nodiscard]] QString depth_now(Depth depth) const;
    /// A deepest point, or a step or an ascent that must not be longer: rounded down. "5 m", "0.5
    /// m".
    [[nodiscard]] QString at_most(Meters length) const;
    /// A whole number of the units beside a scale of depth: "5 m", "15 ft".
    [[nodiscard]] QString depth_mark(double value) const;
    /// The step of descent after which ears are cleared, as on the card.
    [[nodiscard]] QString clearing_step(Meters step) const;
    /// A reading to signal at: up to 10 bar or 50 psi. "60 bar".
    [[nodiscard]] QString signal_at(Bars gauge) const;
    /// "1.31 bar", "19.0 psi".
    [[nodiscard]] QString pressure(Pascals pressure) const;
    /// "×1.8": how much a held breath grows, and how many times the pressure at the top it is: the
    /// same number. Rounded up to a tenth, the safe side: never less than it is.
    [[nodiscard]] QString growth(double factor) const;
    /// "55 %".
    [[nodiscard]] QString share(double share) const;
    /// Whole minutes, rounded down: "20 min".
    [[nodiscard]] QString minutes_at_most(Minutes time) const;
    /// Whole hours, rounded up, without a unit.
    [[nodiscard]] QString hours_at_least(Hours time) const;
    [[nodiscard]] QString mass(Kilograms mass) const;
    /// The size of a cylinder: "12 L"; in imperial units the air it holds when full.
    [[nodiscard]] QString cylinder(const CylinderTypeId& type) const;
    [[nodiscard]] QString day(Date date) const;
    [[nodiscard]] QString time(TimeOfDay time) const;
    /// A reading that shows how numbers are given with the hands, in digits: "120" and its unit.
    [[nodiscard]] QString sample_digits() const;
    [[nodiscard]] QString sample_reading() const;

private:
    [[nodiscard]] QString number(double value, int decimals) const;
    [[nodiscard]] QString with_unit(const QString& number, const QString& unit) const;
    /// What one unit system says of a value, and the other where both are read.
    [[nodiscard]] QString in_both(QString (GuestFigures::*in_one)(double) const,
                                  double value) const;
    [[nodiscard]] QString one_depth(double meters) const;
    [[nodiscard]] QString one_length(double meters) const;
    [[nodiscard]] QString one_step(double meters) const;
    [[nodiscard]] QString one_gauge(double bar) const;
    [[nodiscard]] QString one_pressure(double pascals) const;
    const GuestTongue* tongue_;
    UnitSystem units_;
    std::optional<UnitSystem> also_;
};

/// What people typed, on one line (see typed_line()), wrapped so that it keeps its order, and its
/// numbers theirs; a word too long for any line may break every few letters.
QString typed_text(const std::string& typed);

/// The first name of each, alone; where two share one, with as much of the last as tells them
/// apart, else the whole name, else a number: no two are the same.
/// @source  that the first word of a name is the one people go by: common practice, no source
std::vector<QString> first_names(const std::vector<const Guest*>& guests);

}  // namespace leadline
