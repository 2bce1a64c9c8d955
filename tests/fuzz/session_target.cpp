// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/rule_file.h"
#include "core/files/session_file.h"
#include "core/planning/plan.h"
#include "tests/fuzz/support.h"
#include "tests/fuzz/target.h"

namespace leadline::fuzz {
namespace {

const RuleBook& house_rules() {
    static const RuleBook book = [] {
        const Result<RuleSet> set =
            read_rule_set(source_file("resources/rules/house.json"),
                          source_file("resources/schema/rules.schema.json"));
        must(set.has_value(), "the house rules can be read");
        return RuleBook{{*set}};
    }();
    return book;
}

}  // namespace

void session_file(std::string_view bytes) {
    const std::string& schema = source_file("resources/schema/session.schema.json");
    const Result<SessionFile> read = read_session(bytes, schema);
    if (!read) return must(!read.error().place.empty(), "an error says where");
    const std::string written = write_session(*read);
    const Result<SessionFile> again = read_session(written, schema);
    must(again.has_value(), "what was written can be read");
    must(write_session(*again) == written, "what was read again is written alike");
    const Result<Plan> planned = plan(read->session, house_rules());
    must(planned || !planned.error().place.empty(), "a plan, or an error that says where");
}

}  // namespace leadline::fuzz
