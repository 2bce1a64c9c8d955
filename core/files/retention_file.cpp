// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/retention_file.h"

#include <array>
#include <exception>
#include <optional>

#include "core/files/json_gate.h"
#include "core/files/json_values.h"
#include "core/files/schema_check.h"

namespace leadline {

template <>
struct EnumNames<KeptKind> {
    static constexpr std::array<std::string_view, kept_kind_count> names{"health", "contacts",
                                                                         "identity"};
};

namespace {

using nlohmann::json;

RetentionRule read_period(const FieldReader& from) {
    RetentionRule rule;
    rule.kind = from.choice<KeptKind>("kind");
    rule.erase_after_months = from.whole("erase_after_months");
    if (from.has("keep_at_least_months")) {
        rule.keep_at_least_months = from.whole("keep_at_least_months");
    }
    rule.source = from.line("source");
    rule.standing = from.choice<Standing>("standing");
    if (rule.keep_at_least_months && *rule.keep_at_least_months > rule.erase_after_months) {
        from.fail({ErrorCode::out_of_range, from.place("keep_at_least_months"),
                   std::to_string(*rule.keep_at_least_months),
                   "<= " + std::to_string(rule.erase_after_months)});
    }
    return rule;
}

Result<RetentionRules> periods_from_document(const json& document) {
    std::optional<Error> error;
    const FieldReader root(document, "", error);
    RetentionRules rules{root.line("title"), root.lines("note"), {}};
    root.each("rules", [&](const json& item, const std::string& place) {
        const FieldReader from(item, place, error);
        const RetentionRule rule = read_period(from);
        for (const RetentionRule& other : rules.rules) {
            if (other.kind == rule.kind) {
                from.fail({ErrorCode::duplicate_id, from.place("kind"), from.line("kind"), ""});
            }
        }
        rules.rules.push_back(rule);
    });
    if (error) return *error;
    return rules;
}

}  // namespace

Result<RetentionRules> read_retention_rules(std::string_view text, std::string_view schema_json) {
    const Result<json> document = parse_json(text);
    if (!document) return document.error();
    if (const Result<Done> checked = check_schema(*document, schema_json); !checked) {
        return checked.error();
    }
    // Only a schema that is not this format's lets a value of the wrong type through to here.
    try {
        return periods_from_document(*document);
    } catch (const std::exception& problem) {
        return Error{ErrorCode::wrong_type, "/", problem.what(), ""};
    }
}

}  // namespace leadline
