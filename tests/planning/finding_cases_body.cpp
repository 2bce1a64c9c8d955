// SPDX-License-Identifier: GPL-3.0-or-later
#include <functional>

#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

/// Gives the first guest a body, so that warmth and lead are known.
void embody(Scene& scene) {
    guest_of(scene).body_mass = Kilograms(70.0);
    guest_of(scene).body_height = Meters(1.72);
}

/// Where a finding appears between two values, found by halving.
/// @param says  whether it is there, with the value set
double edge(double silent, double loud, const std::function<bool(double)>& says) {
    for (int i = 0; i < 40; ++i) {
        const double middle = 0.5 * (silent + loud);
        (says(middle) ? loud : silent) = middle;
    }
    return silent;
}

bool says(const Scene& scene, FindingCode code) {
    return find(plan_of(scene).findings, code) != nullptr;
}

FindingCase cold_before_end() {
    const auto cool = [](double offset) {
        return [offset](Scene& scene) {
            embody(scene);
            const double water = edge(30.0, 0.0, [&](double tried) {
                scene.session.conditions.water_temperature = celsius(tried);
                const GuestWarmth warmth = plan_of(scene).warmth.front();
                return warmth.low && *warmth.low < duration(scene.session.profile);
            });
            scene.session.conditions.water_temperature = celsius(water + offset);
        };
    };
    return {FindingCode::cold_before_end, "Water", Severity::caution, first_guest, cool(-0.01),
            cool(0.01)};
}

/// Lead just on either side of where `code` begins.
FindingCase lead_case(FindingCode code, const std::string& what, Severity severity, double silent,
                      double loud) {
    const auto lead = [=](double towards_loud) {
        return [=](Scene& scene) {
            embody(scene);
            const double found = edge(silent, loud, [&](double tried) {
                guest_of(scene).kit.lead = Kilograms(tried);
                return says(scene, code);
            });
            const double step = loud > silent ? 0.01 : -0.01;
            guest_of(scene).kit.lead = Kilograms(found + towards_loud * step);
        };
    };
    return {code, what, severity, first_guest, lead(1.0), lead(-1.0)};
}

FindingCase lead_at_range_end(const std::string& what, bool high) {
    const auto lead = [high](double beyond) {
        return [high, beyond](Scene& scene) {
            embody(scene);
            const GuestLead range = plan_of(scene).lead.front();
            guest_of(scene).kit.lead = high ? range.high + Kilograms(beyond)
                                            : range.low - Kilograms(beyond);
        };
    };
    return {FindingCode::lead_outside_range, what, Severity::note, first_guest, lead(0.01),
            lead(0.0)};
}

}  // namespace

std::vector<FindingCase> body_cases() {
    return {cold_before_end(),
            lead_case(FindingCode::bcd_cannot_hold, "TooMuchLead", Severity::caution, 4.0, 25.0),
            lead_case(FindingCode::cannot_stay_down, "TooLittleLead", Severity::caution, 6.0, 0.0),
            lead_at_range_end("AboveTheRange", true), lead_at_range_end("BelowTheRange", false)};
}

}  // namespace leadline
