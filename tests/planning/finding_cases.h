// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "tests/planning/scene.h"

namespace leadline {

/// A change of the sound scene that makes a finding appear, and the nearest one that does not.
struct FindingCase {
    FindingCode code{};
    std::string what;  ///< letters and digits; part of the test's name
    Severity severity{};
    Subject subject;
    std::function<void(Scene&)> broken;
    std::function<void(Scene&)> neighbour;
};

std::vector<FindingCase> place_cases();
std::vector<FindingCase> people_cases();
std::vector<FindingCase> ratio_cases();
std::vector<FindingCase> gas_cases();
std::vector<FindingCase> log_cases();
std::vector<FindingCase> body_cases();
std::vector<FindingCase> staff_cases();
std::vector<FindingCase> all_finding_cases();

void set_depth(Scene& scene, double depth_m);
Guest& guest_of(Scene& scene, std::size_t index = 0);
/// Guests like the first one, until there are so many in the blue group.
void fill_group(Scene& scene, std::size_t guests);
/// The log's entry of the first guest; the scene gets a log as planned when it has none.
LogEntry& logged(Scene& scene);

}  // namespace leadline
