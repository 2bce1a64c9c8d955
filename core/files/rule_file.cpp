// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/rule_file.h"

#include <array>
#include <exception>
#include <optional>

#include "core/files/json_gate.h"
#include "core/files/json_values.h"
#include "core/files/schema_check.h"

namespace leadline {
namespace {

using nlohmann::json;

constexpr int rule_file_version = 1;

/// What a rule of a kind may say: the range of its value, and that of its threshold where the kind
/// has one. Wide enough for any published rule; narrow enough that a slip of the pen is refused.
struct KindForm {
    RuleKind kind;
    double least;
    double most;
    bool has_threshold = false;
    double least_threshold = 0.0;
    double most_threshold = 0.0;
};

constexpr std::array<KindForm, 28> kind_forms{{
    {RuleKind::max_depth_m, 1, 60},
    {RuleKind::usual_depth_m, 1, 60},
    {RuleKind::max_bottom_depth_m, 1, 200},
    {RuleKind::least_age_years, 0, 99},
    {RuleKind::consent_below_age_years, 0, 99},
    {RuleKind::guests_per_instructor, 0, 20},
    {RuleKind::guests_with_assistant, 0, 20},
    {RuleKind::companions_use_places, 0, 1},
    {RuleKind::places_in_poor_visibility, 0, 20, true, 0, 100},
    {RuleKind::places_in_current, 0, 20, true, 0, 3},
    {RuleKind::places_in_waves, 0, 20, true, 0, 10},
    {RuleKind::places_with_children, 0, 20, true, 0, 99},
    {RuleKind::places_without_common_language, 0, 20},
    {RuleKind::places_with_nervous_guest, 0, 20},
    {RuleKind::min_water_temperature_c, -2, 36},
    {RuleKind::max_minutes, 1, 240, true, -2, 40},
    {RuleKind::reserve_pressure_bar, 0, 200},
    {RuleKind::max_ascent_rate_m_per_min, 1, 30},
    {RuleKind::max_descent_rate_m_per_min, 1, 60},
    {RuleKind::min_visibility_m, 0, 100},
    {RuleKind::max_wave_height_m, 0, 10},
    {RuleKind::max_current, 0, 3},
    {RuleKind::clearing_step_m, 0.1, 1},
    {RuleKind::staff_dives_per_day, 1, 20},
    {RuleKind::staff_ascents_per_day, 1, 100},
    {RuleKind::staff_days_in_a_row, 1, 7},
    {RuleKind::no_fly_hours, 0, 168},
    {RuleKind::screening_valid_months, 1, 60},
}};

const KindForm* find_form(RuleKind kind) {
    for (const KindForm& form : kind_forms) {
        if (form.kind == kind) return &form;
    }
    return nullptr;
}

void check_range(const FieldReader& from, const char* key, double least, double most) {
    const double value = from.number(key);
    if (value >= least && value <= most) return;
    from.fail({ErrorCode::out_of_range, from.place(key), json(value).dump(),
               json(tidy(least)).dump() + " to " + json(tidy(most)).dump()});
}

/// The threshold stands exactly where the kind has one: one left out would count as zero, and one
/// too many would be believed to act.
void check_threshold(const FieldReader& from, const KindForm& form, const std::string& place) {
    if (form.has_threshold != from.has("threshold")) {
        from.fail({form.has_threshold ? ErrorCode::missing_field : ErrorCode::unknown_field, place,
                   "threshold", ""});
    } else if (form.has_threshold) {
        check_range(from, "threshold", form.least_threshold, form.most_threshold);
    }
}

std::optional<int> optional_whole(const FieldReader& from, const char* key) {
    return from.has(key) ? std::optional(from.whole(key)) : std::nullopt;
}

Rule read_rule(const FieldReader& from, const std::string& place) {
    Rule rule;
    const std::string kind_name = from.line("kind");
    const std::optional<RuleKind> kind = rule_kind(kind_name);
    const KindForm* form = kind ? find_form(*kind) : nullptr;
    if (form == nullptr) {
        from.fail({ErrorCode::not_a_choice, from.place("kind"), kind_name, ""});
        return rule;
    }
    check_range(from, "value", form->least, form->most);
    check_threshold(from, *form, place);
    rule.kind = *kind;
    rule.value = from.number("value");
    rule.threshold = from.optional_number("threshold", [](double value) { return value; });
    rule.from_age = optional_whole(from, "from_age");
    rule.to_age = optional_whole(from, "to_age");
    rule.severity = from.choice<Severity>("severity");
    rule.source = from.line("source");
    rule.standing = from.choice<Standing>("standing");
    if (rule.from_age && rule.to_age && *rule.to_age < *rule.from_age) {
        from.fail({ErrorCode::out_of_range, from.place("to_age"), std::to_string(*rule.to_age),
                   ">= " + std::to_string(*rule.from_age)});
    }
    return rule;
}

Result<RuleSet> rules_from_document(const json& document) {
    std::optional<Error> error;
    const FieldReader root(document, "", error);
    RuleSet set{root.id<RuleSetId>("id"), root.line("title"), root.lines("note"), {}};
    root.each("rules", [&](const json& item, const std::string& place) {
        set.rules.push_back(read_rule({item, place, error}, place));
    });
    if (error) return *error;
    return set;
}

}  // namespace

Result<RuleSet> read_rule_set(std::string_view text, std::string_view schema_json) {
    const Result<json> document = parse_json(text);
    if (!document) return document.error();
    const Result<Done> version =
        check_file_version(*document, "leadline_rules", rule_file_version);
    if (!version) return version.error();
    if (const Result<Done> checked = check_schema(*document, schema_json); !checked) {
        return checked.error();
    }
    // Only a schema that is not this format's lets a value of the wrong type through to here.
    try {
        return rules_from_document(*document);
    } catch (const std::exception& problem) {
        return Error{ErrorCode::wrong_type, "/", problem.what(), ""};
    }
}

}  // namespace leadline
