// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/physics/quantities.h"
#include "core/physics/water.h"
#include "core/planning/profile.h"

namespace leadline {

/// The breathing load of a profile: L(t) = integral of f(phase) p(d(t)) dt, with p the absolute
/// pressure and f the phase's factor on the RMV. It is the same for everybody who dives the profile;
/// a diver's air use up to t is RMV L(t) / (Z R T), and the time at which a pressure is reached is
/// the inverse of this one curve.
///
/// Between corners the pressure is taken as linear in time. Water is compressed by depth, so the
/// true pressure lies a hair lower (below 1e-5): the load errs to the high side.
class BreathingCurve {
public:
    /// @param profile  passes check(profile)
    static BreathingCurve along(const Profile& profile, const WaterColumn& water);
    /// The profile up to where its final ascent starts, then staying at that depth until
    /// `longest_profile`: for "how long would the air last?".
    static BreathingCurve held_at_depth(const Profile& profile, const WaterColumn& water);

    /// Load from the start to a time; past the end it stays at total().
    [[nodiscard]] BarMinutes load_at(Minutes time) const;
    /// Time at which a load is reached; none when the dive ends before.
    [[nodiscard]] std::optional<Minutes> time_of(BarMinutes load) const;
    [[nodiscard]] BarMinutes total() const;

private:
    struct Knot {
        double time = 0.0;      ///< [min] start of the leg
        double pressure = 0.0;  ///< [bar] at the start of the leg
        double slope = 0.0;     ///< [bar/min] along the leg
        double factor = 1.0;    ///< phase factor of the leg
        double load = 0.0;      ///< [bar min] up to the start of the leg
    };
    BreathingCurve(const std::vector<ProfilePoint>& points, const WaterColumn& water);
    std::vector<Knot> knots_;  ///< one a leg, and one at the end
};

}  // namespace leadline
