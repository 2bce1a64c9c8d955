// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/planning/check_screening.h"
#include "core/planning/checks.h"

namespace leadline {
namespace {

using Findings = std::vector<Finding>;

void append(Findings& found, const Findings& more) {
    found.insert(found.end(), more.begin(), more.end());
}

Finding own_finding(FindingCode code, Severity severity, Subject subject) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    finding.subject = std::move(subject);
    return finding;
}

// ---- one guest ---------------------------------------------------------------------------------

void check_age(const CheckContext& context, const Guest& guest, Findings& found) {
    const std::optional<int> age = age_on_day(context.session, guest);
    if (!age) return;  // check_consent() says that the birth date is missing
    const auto younger = [&](const Rule& rule) { return *age < rule.value; };
    if (const auto limit = broken_limit(context, RuleKind::least_age_years, age, younger)) {
        found.push_back(finding_of(FindingCode::guest_too_young, guest.id, *limit,
                                   {*age, static_cast<int>(limit->value)}));
    }
}

/// Limits of depth, cold and time that hold for the guest's age only; those for everybody are
/// checked once for the whole session.
void check_age_bands(const CheckContext& context, const Guest& guest, Findings& found) {
    const std::optional<int> age = age_on_day(context.session, guest);
    if (!age) return;
    const auto banded = [](const Rule& rule) { return rule.from_age || rule.to_age; };
    const double depth = context.environment.deepest.meters().value();
    if (const auto limit =
            broken_limit(context, RuleKind::max_depth_m, age, [&](const Rule& rule) {
                return banded(rule) && depth > rule.value + 1e-6;
            })) {
        found.push_back(finding_of(FindingCode::depth_over_limit, guest.id, *limit,
                                   {context.environment.deepest, Depth(Meters(limit->value))}));
    }
    const Kelvins water = context.session.conditions.water_temperature;
    const double celsius = Celsius(water).value();
    if (const auto limit =
            broken_limit(context, RuleKind::min_water_temperature_c, age, [&](const Rule& rule) {
                return banded(rule) && celsius < rule.value - 1e-6;
            })) {
        found.push_back(finding_of(FindingCode::water_too_cold, guest.id, *limit,
                                   {water, Kelvins(Celsius(limit->value))}));
    }
    const Minutes planned = duration(context.session.profile);
    if (const auto limit =
            broken_limit(context, RuleKind::max_minutes, age, [&](const Rule& rule) {
                return banded(rule) && celsius < rule.threshold.value_or(100.0) &&
                       planned.value() > rule.value + 1e-6;
            })) {
        found.push_back(
            finding_of(FindingCode::minutes_over_limit, guest.id, *limit,
                       {planned, Minutes(limit->value),
                        Kelvins(Celsius(limit->threshold.value_or(36.0)))}));
    }
}

void check_kit(const Guest& guest, Findings& found) {
    const Kit& kit = guest.kit;
    std::string missing;
    Severity severity = Severity::caution;
    const auto need = [&](bool there, const char* item, Severity without) {
        if (there) return;
        missing += (missing.empty() ? "" : ",") + std::string(item);
        severity = std::min(severity, without);
    };
    // Nobody breathes or floats without these three; the rest is comfort and can be found late.
    need(!kit.mask.empty(), "mask", Severity::stop);
    need(!kit.bcd.empty(), "bcd", Severity::stop);
    need(!kit.regulator.empty(), "regulator", Severity::stop);
    need(!kit.suit.empty(), "suit", Severity::caution);
    need(!kit.fins.empty(), "fins", Severity::caution);
    need(kit.lead.has_value(), "lead", Severity::caution);
    if (missing.empty()) return;
    Finding finding = own_finding(FindingCode::kit_missing, severity, guest.id);
    finding.text = missing;
    found.push_back(finding);
}

// ---- groups ------------------------------------------------------------------------------------

std::string primary_language(const std::string& tag) { return tag.substr(0, tag.find('-')); }

bool speaks(const StaffMember* member, const std::string& tag) {
    return member != nullptr &&
           std::any_of(member->languages.begin(), member->languages.end(),
                       [&](const std::string& spoken) {
                           return primary_language(spoken) == primary_language(tag);
                       });
}

/// Whether anybody leading the group speaks the guest's language. Unknown (no languages entered for
/// the staff) counts as understood: the finding would otherwise stand on every new session.
bool understood(const Session& session, const Group& group, const Guest& guest) {
    const StaffMember* instructor = find_staff(session, group.instructor);
    const StaffMember* assistant = find_staff(session, group.assistant);
    const bool entered = (instructor != nullptr && !instructor->languages.empty()) ||
                         (assistant != nullptr && !assistant->languages.empty());
    return !entered || speaks(instructor, guest.language) || speaks(assistant, guest.language);
}

struct GroupFacts {
    const Group& group;
    std::vector<const Guest*> guests;
    bool all_understood = true;
    bool nervous = false;
    std::optional<int> youngest;
};

GroupFacts facts_of(const Session& session, const Group& group) {
    GroupFacts facts{group, guests_in(session, group.id), true, false, std::nullopt};
    for (const Guest* guest : facts.guests) {
        facts.all_understood = facts.all_understood && understood(session, group, *guest);
        facts.nervous = facts.nervous || guest->breathing == BreathingClass::nervous;
        if (const std::optional<int> age = age_on_day(session, *guest)) {
            facts.youngest = std::min(*age, facts.youngest.value_or(200));
        }
    }
    return facts;
}

/// Why places under this kind of rule count for the group; none: the rule does not bear on it.
std::optional<RatioReason> ratio_reason(const CheckContext& context, const GroupFacts& facts,
                                        const Rule& rule) {
    const Conditions& today = context.session.conditions;
    const double threshold = rule.threshold.value_or(0.0);
    const auto when = [](bool holds, RatioReason reason) {
        return holds ? std::optional(reason) : std::nullopt;
    };
    switch (rule.kind) {
        case RuleKind::places_in_poor_visibility:
            return when(today.visibility && today.visibility->value() < threshold,
                        RatioReason::visibility);
        case RuleKind::places_in_current:
            return when(static_cast<int>(today.current) >= threshold, RatioReason::current);
        case RuleKind::places_in_waves:
            return when(today.wave_height && today.wave_height->value() > threshold,
                        RatioReason::waves);
        case RuleKind::places_with_children:
            return when(facts.youngest && *facts.youngest < threshold, RatioReason::children);
        case RuleKind::places_without_common_language:
            return when(!facts.all_understood, RatioReason::language);
        case RuleKind::places_with_nervous_guest:
            return when(facts.nervous, RatioReason::nervous);
        default: return std::nullopt;
    }
}

/// Places a set gives the group under the plain ratio: with an assistant the set's own value for
/// that, where it has one; otherwise an assistant adds nothing. Of several values the least counts.
const Rule* plain_ratio(const RuleSet& set, bool assistant, Severity severity) {
    const Rule* plain = nullptr;
    const Rule* assisted = nullptr;
    const auto keep_least = [](const Rule*& least, const Rule& rule) {
        if (least == nullptr || rule.value < least->value) least = &rule;
    };
    for (const Rule& rule : set.rules) {
        if (rule.severity != severity) continue;
        if (rule.kind == RuleKind::guests_per_instructor) keep_least(plain, rule);
        if (rule.kind == RuleKind::guests_with_assistant) keep_least(assisted, rule);
    }
    return assistant && assisted != nullptr ? assisted : plain;
}

struct Places {
    double value = 0.0;
    RatioReason reason = RatioReason::plain;
    const RuleSet* set = nullptr;
    const Rule* rule = nullptr;
};

/// The fewest places that rules of one severity leave the group; no rule: none.
std::optional<Places> fewest_places(const CheckContext& context, const GroupFacts& facts,
                                    Severity severity) {
    // One person is one pair of hands: an instructor named twice has no assistant.
    const bool assistant =
        !facts.group.assistant.empty() && facts.group.assistant != facts.group.instructor;
    std::optional<Places> fewest;
    const auto offer = [&](const RuleSet& set, const Rule& rule, RatioReason reason) {
        if (!fewest || rule.value < fewest->value) fewest = Places{rule.value, reason, &set, &rule};
    };
    for (const RuleSet& set : context.rules.sets) {
        const auto& chosen = context.session.rule_sets;
        if (std::find(chosen.begin(), chosen.end(), set.id) == chosen.end()) continue;
        if (const Rule* rule = plain_ratio(set, assistant, severity)) {
            offer(set, *rule,
                  rule->kind == RuleKind::guests_with_assistant ? RatioReason::with_assistant
                                                                : RatioReason::plain);
        }
        for (const Rule& rule : set.rules) {
            if (rule.severity != severity) continue;
            if (const auto reason = ratio_reason(context, facts, rule)) offer(set, rule, *reason);
        }
    }
    return fewest;
}

void check_ratio(const CheckContext& context, const GroupFacts& facts, Findings& found) {
    const auto companions = strictest(context.rules, context.session.rule_sets,
                                      RuleKind::companions_use_places);
    // Without a rule a companion uses a place: the safe side.
    const bool count_companions = !companions || companions->value > 0.0;
    const auto used = std::count_if(
        facts.guests.begin(), facts.guests.end(),
        [&](const Guest* guest) { return count_companions || !guest->certified; });
    for (const Severity severity : {Severity::stop, Severity::caution, Severity::note}) {
        const std::optional<Places> places = fewest_places(context, facts, severity);
        if (!places || static_cast<double>(used) <= places->value) continue;
        Finding finding = own_finding(FindingCode::ratio_exceeded, severity, facts.group.id);
        finding.values = {static_cast<int>(used), static_cast<int>(places->value)};
        finding.reason = places->reason;
        finding.rule_set = places->set->title;
        finding.source = places->rule->source;
        found.push_back(finding);
        return;
    }
}

void check_group(const CheckContext& context, const Group& group, Findings& found) {
    const GroupFacts facts = facts_of(context.session, group);
    if (facts.guests.empty()) {
        found.push_back(own_finding(FindingCode::group_empty, Severity::note, group.id));
        return;
    }
    const StaffMember* leader = find_staff(context.session, group.instructor);
    if (leader == nullptr || leader->role != StaffRole::instructor) {
        found.push_back(
            own_finding(FindingCode::group_without_instructor, Severity::stop, group.id));
    }
    check_ratio(context, facts, found);
    for (const Guest* guest : facts.guests) {
        if (understood(context.session, group, *guest)) continue;
        Finding finding =
            own_finding(FindingCode::no_common_language, Severity::caution, guest->id);
        finding.text = guest->language;
        found.push_back(finding);
    }
}

/// Somebody who is counted on in several groups can be at arm's reach of one.
void check_staff_once(const Session& session, const StaffMember& member, Findings& found) {
    int groups = 0;
    for (const Group& group : session.groups) {
        const bool needed = group.instructor == member.id || group.assistant == member.id;
        if (needed && !guests_in(session, group.id).empty()) ++groups;
    }
    if (groups < 2) return;
    Finding finding = own_finding(FindingCode::staff_in_two_groups, Severity::stop, member.id);
    finding.values = {groups};
    found.push_back(finding);
}

}  // namespace

std::vector<Finding> check_people(const CheckContext& context) {
    Findings found;
    const Session& session = context.session;
    if (session.guests.empty()) {
        found.push_back(own_finding(FindingCode::no_guests, Severity::note, {}));
    }
    for (const Guest& guest : session.guests) {
        check_age(context, guest, found);
        append(found, check_consent(session, context.rules, guest));
        check_age_bands(context, guest, found);
        append(found, check_screening(session, context.rules, guest));
        append(found, check_today(guest));
        check_kit(guest, found);
        if (guest.group.empty()) {
            found.push_back(
                own_finding(FindingCode::guest_without_group, Severity::stop, guest.id));
        }
    }
    for (const Group& group : session.groups) check_group(context, group, found);
    for (const StaffMember& member : session.staff) check_staff_once(session, member, found);
    return found;
}

}  // namespace leadline
