// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/rule_file.h"
#include "tests/fuzz/support.h"
#include "tests/fuzz/target.h"

namespace leadline::fuzz {

void rule_file(std::string_view bytes) {
    const Result<RuleSet> set =
        read_rule_set(bytes, source_file("resources/schema/rules.schema.json"));
    if (!set) return must(!set.error().place.empty(), "an error says where");
    must(!set->id.empty(), "a rule set has an id");
}

}  // namespace leadline::fuzz
