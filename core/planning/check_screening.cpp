// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/check_screening.h"

#include <algorithm>

#include "core/planning/checks.h"
#include "core/planning/overrule_key.h"
#include "core/planning/session_edits.h"

namespace leadline {
namespace {

using Findings = std::vector<Finding>;

Finding about(const Guest& guest, FindingCode code, Severity severity) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    finding.subject = guest.id;
    return finding;
}

// Where no chosen set says anything: common practice, no source; the safe side.
constexpr double months_without_rule = 12.0;
constexpr double consent_age_without_rule = 18.0;

/// What counts where none of the chosen sets has a rule of a kind; nothing where one has.
std::optional<Limit> built_in(const Session& session, const RuleBook& rules, RuleKind kind,
                              double value) {
    if (strictest(rules, session.rule_sets, kind)) return std::nullopt;
    Limit limit;
    limit.value = value;
    limit.severity = Severity::stop;
    limit.source = "common practice, no source: no chosen rule set says anything";
    return limit;
}

/// The rule, if any, by which something of a day no longer counts at the session's date.
std::optional<Limit> outdated(const Session& session, const RuleBook& rules,
                              std::optional<int> age, Date from) {
    const auto own =
        built_in(session, rules, RuleKind::screening_valid_months, months_without_rule);
    if (own) {
        const bool old = session.date >= expires_on(from, static_cast<int>(own->value));
        return old ? own : std::nullopt;
    }
    return broken_limit(rules, session.rule_sets, RuleKind::screening_valid_months, age,
                        [&](const Rule& rule) {
                            return session.date >= expires_on(from, static_cast<int>(rule.value));
                        });
}

void check_outcome(const Guest& guest, Findings& found) {
    const auto stop = [&](FindingCode code) {
        found.push_back(about(guest, code, Severity::stop));
    };
    switch (outcome(guest.screening)) {
        case ScreeningOutcome::clear: break;
        case ScreeningOutcome::unanswered: stop(FindingCode::screening_unanswered); break;
        case ScreeningOutcome::physician_required: stop(FindingCode::screening_physician); break;
        case ScreeningOutcome::does_not_dive: stop(FindingCode::screening_does_not_dive); break;
    }
}

/// Whether the guest came into the age of the closer questions after the check.
bool came_of_age(const Session& session, const Guest& guest) {
    const HealthCheck& check = guest.screening;
    if (check.outcome != ScreeningOutcome::clear || check.edition == own_form_edition ||
        !guest.birth_date || !check.checked_on || *check.checked_on < *guest.birth_date) {
        return false;
    }
    return age_in_years(*guest.birth_date, *check.checked_on) < closer_questions_from_age &&
           age_in_years(*guest.birth_date, session.date) >= closer_questions_from_age;
}

void check_day(const Session& session, const RuleBook& rules, const Guest& guest,
               std::optional<int> age, Findings& found) {
    const HealthCheck& check = guest.screening;
    // A check of an unknown day may be of any: the safe side is that it no longer counts.
    if (!check.checked_on) {
        found.push_back(about(guest, FindingCode::screening_out_of_date, Severity::stop));
        return;
    }
    if (*check.checked_on > session.date) {
        Finding finding = about(guest, FindingCode::screening_in_future, Severity::stop);
        finding.text = to_text(*check.checked_on);
        found.push_back(finding);
        return;
    }
    if (const auto limit = outdated(session, rules, age, *check.checked_on)) {
        Finding finding = finding_of(FindingCode::screening_out_of_date, guest.id, *limit,
                                     {static_cast<int>(limit->value)});
        finding.text = to_text(*check.checked_on);
        found.push_back(finding);
    }
}

void check_approval(const Session& session, const RuleBook& rules, const Guest& guest,
                    std::optional<int> age, Findings& found) {
    const HealthCheck& check = guest.screening;
    if (check.outcome != ScreeningOutcome::physician_required || !check.physician_approval_seen) {
        return;
    }
    if (!check.approval_on) {
        found.push_back(about(guest, FindingCode::approval_older_than_check, Severity::caution));
        return;
    }
    // Nobody has read a release that is not written yet.
    if (*check.approval_on > session.date) {
        Finding finding = about(guest, FindingCode::screening_in_future, Severity::stop);
        finding.text = to_text(*check.approval_on);
        found.push_back(finding);
        return;
    }
    if (!check.checked_on || *check.approval_on >= *check.checked_on) return;
    Finding finding = about(guest, FindingCode::approval_older_than_check, Severity::caution);
    if (const auto limit = outdated(session, rules, age, *check.approval_on)) {
        finding = finding_of(FindingCode::approval_older_than_check, guest.id, *limit,
                             {static_cast<int>(limit->value)});
    }
    finding.text = to_text(*check.approval_on);
    found.push_back(finding);
}

void check_paper(const Guest& guest, Findings& found) {
    const HealthCheck& check = guest.screening;
    if (check.signature == SignatureKind::none) {
        found.push_back(about(guest, FindingCode::screening_not_signed, Severity::caution));
    }
    if (check.edition != present_edition && check.edition != own_form_edition) {
        Finding finding = about(guest, FindingCode::screening_edition_older, Severity::note);
        finding.text = check.edition;
        found.push_back(finding);
    }
}

}  // namespace

std::optional<int> age_on_day(const Session& session, const Guest& guest) {
    if (!guest.birth_date) return std::nullopt;
    return age_in_years(*guest.birth_date, session.date);
}

std::vector<Finding> check_screening(const Session& session, const RuleBook& rules,
                                     const Guest& guest) {
    Findings found;
    check_outcome(guest, found);
    if (came_of_age(session, guest)) {
        found.push_back(about(guest, FindingCode::screening_unanswered, Severity::stop));
    }
    if (guest.screening.outcome == ScreeningOutcome::unanswered) return found;
    const std::optional<int> age = age_on_day(session, guest);
    check_day(session, rules, guest, age, found);
    check_approval(session, rules, guest, age, found);
    check_paper(guest, found);
    return found;
}

std::vector<Finding> check_consent(const Session& session, const RuleBook& rules,
                                   const Guest& guest) {
    const std::optional<int> age = age_on_day(session, guest);
    if (!age) return {about(guest, FindingCode::birth_date_missing, Severity::stop)};
    if (guest.guardian_consent) return {};
    auto limit = built_in(session, rules, RuleKind::consent_below_age_years,
                          consent_age_without_rule);
    if (limit && *age >= limit->value) return {};
    if (!limit) {
        limit = broken_limit(rules, session.rule_sets, RuleKind::consent_below_age_years, age,
                             [&](const Rule& rule) { return *age < rule.value; });
    }
    if (!limit) return {};
    return {finding_of(FindingCode::consent_missing, guest.id, *limit,
                       {*age, static_cast<int>(limit->value)})};
}

std::vector<Finding> check_today(const Guest& guest) {
    switch (guest.screening.today) {
        case TodayOutcome::clear: return {};
        // Answered on the morning itself, so a gap the day before is no reason to stop planning.
        case TodayOutcome::unanswered:
            return {about(guest, FindingCode::screening_today_unanswered, Severity::caution)};
        case TodayOutcome::with_care:
            return {about(guest, FindingCode::screening_today_flagged, Severity::caution)};
        case TodayOutcome::not_today:
            return {about(guest, FindingCode::screening_today_flagged, Severity::stop)};
    }
    return {};
}

std::vector<Finding> still_waiting(const Session& session, const RuleBook& rules,
                                   const Guest& guest) {
    Findings found = check_consent(session, rules, guest);
    const Findings screening = check_screening(session, rules, guest);
    found.insert(found.end(), screening.begin(), screening.end());
    std::erase_if(found, [&](const Finding& finding) {
        const bool overruled =
            std::any_of(session.overrules.begin(), session.overrules.end(),
                        [&](const Overrule& overrule) { return covers(overrule, finding); });
        return overruled || finding.severity != Severity::stop;
    });
    return found;
}

std::optional<int> screening_months(const Session& session, const RuleBook& rules) {
    const auto limit =
        strictest(rules, session.rule_sets, RuleKind::screening_valid_months,
                  [](const Rule& rule) { return rule.severity == Severity::stop; });
    if (limit) return static_cast<int>(limit->value);
    const auto own =
        built_in(session, rules, RuleKind::screening_valid_months, months_without_rule);
    return own ? std::optional(static_cast<int>(own->value)) : std::nullopt;
}

}  // namespace leadline
