// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/finding_words.h"
#include "ui/words/guest_name.h"

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/name_words.h"
#include "ui/words/rule_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class FindingTexts {
    Q_DECLARE_TR_FUNCTIONS(Findings)
};

/// What and remedy, before names and sources are added.
struct Pair {
    QString what;
    QString remedy;
};

/// The finding's numbers as texts, by place; empty past the last.
class Values {
public:
    Values(const Finding& finding, UnitSystem units) {
        for (const FindingValue& value : finding.values) {
            // When the air will be low, or the no-stop time over, is an estimate: never later than
            // worked out.
            const bool estimate = finding.code == FindingCode::ends_below_reserve ||
                                  (finding.code == FindingCode::cold_before_end &&
                                   texts_.isEmpty()) ||
                                  (finding.code == FindingCode::staff_needs_stop &&
                                   !texts_.isEmpty());
            texts_ << (estimate && std::holds_alternative<Minutes>(value)
                           ? text(std::get<Minutes>(value), Rounding::down)
                           : text(value, units));
        }
    }
    [[nodiscard]] QString operator[](qsizetype index) const { return texts_.value(index); }

private:
    QStringList texts_;
};

/// The day that a finding carries, in letters; as it stands when it is none.
QString day_of(const Finding& finding) {
    const Result<Date> day = parse_date(finding.text, {});
    return day ? spelled(*day) : QString::fromStdString(finding.text);
}

QString kit_list(const std::string& raw) {
    QStringList names;
    for (const QString& item : QString::fromStdString(raw).split(u',')) names << kit_item(item);
    return names.join(QStringLiteral(", "));
}

QString ratio_cause(RatioReason reason) {
    switch (reason) {
        case RatioReason::plain:
            return FindingTexts::tr("for one instructor");
        case RatioReason::with_assistant:
            return FindingTexts::tr("even with an assistant");
        case RatioReason::visibility:
            return FindingTexts::tr("in this visibility");
        case RatioReason::current:
            return FindingTexts::tr("in this current");
        case RatioReason::waves:
            return FindingTexts::tr("in these waves");
        case RatioReason::children:
            return FindingTexts::tr("with a child in the group");
        case RatioReason::language:
            return FindingTexts::tr("when a guest shares no language with the staff");
        case RatioReason::nervous:
            return FindingTexts::tr("with a nervous guest in the group");
    }
    return {};
}

Pair place_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::depth_over_limit:
            return {FindingTexts::tr("Planned to %1, deeper than the %2 allowed.").arg(v[0], v[1]),
                    FindingTexts::tr("Plan no deeper than %1.").arg(v[1])};
        case FindingCode::depth_over_usual:
            return {
                FindingTexts::tr("Planned to %1; %2 is usual for a first dive.").arg(v[0], v[1]),
                FindingTexts::tr("Stay shallower unless the site asks for it.")};
        case FindingCode::bottom_below_limit:
            return {FindingTexts::tr(
                        "The bottom lies at %1; no more than %2 is wanted below first-time guests.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr(
                        "Choose a shallower spot, or keep guests over a slope or a line.")};
        case FindingCode::water_too_cold:
            return {
                FindingTexts::tr("The water has %1, colder than the %2 wanted.").arg(v[0], v[1]),
                FindingTexts::tr("Choose warmer water, a shorter dive or warmer suits.")};
        case FindingCode::minutes_over_limit:
            return {FindingTexts::tr("Planned for %1; at most %2 while the water is below %3.")
                        .arg(v[0], v[1], v[2]),
                    FindingTexts::tr("Shorten the dive to %1.").arg(v[1])};
        case FindingCode::visibility_low:
            return {FindingTexts::tr("Visibility is %1; at least %2 is wanted.").arg(v[0], v[1]),
                    FindingTexts::tr("Take fewer guests within arm's reach, or do not dive.")};
        case FindingCode::current_strong:
            return {FindingTexts::tr("There is more current than first-time guests should meet."),
                    FindingTexts::tr("Wait for slack water or choose a sheltered spot.")};
        case FindingCode::waves_high:
            return {FindingTexts::tr("Waves reach %1; at most %2 is wanted.").arg(v[0], v[1]),
                    FindingTexts::tr("Choose a sheltered entry or do not dive.")};
        case FindingCode::ascent_too_fast:
            return {FindingTexts::tr("Goes up at %1, faster than the %2 allowed.").arg(v[0], v[1]),
                    FindingTexts::tr("Give the way up more time.")};
        case FindingCode::descent_too_fast:
            return {FindingTexts::tr("Goes down at %1, faster than the %2 wanted.").arg(v[0], v[1]),
                    FindingTexts::tr("Give the way down more time: ears need it.")};
        case FindingCode::ear_step_over_locking:
            return {FindingTexts::tr(
                        "Clearing every %1 is too seldom: the tube to the ear can lock after %2.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr("Clear in smaller steps.")};
        case FindingCode::no_rules_chosen:
            return {FindingTexts::tr(
                        "No rules are chosen, so no limit of depth, age or ratio is checked."),
                    FindingTexts::tr("Tick the rules that apply on the Site tab.")};
        case FindingCode::emergency_line_missing:
            return {FindingTexts::tr("No emergency number is entered for the site."),
                    FindingTexts::tr("Enter the number to call; it is printed on every card.")};
        default: return {};
    }
}

Pair person_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::guest_too_young:
            return {FindingTexts::tr("Is %1; the least age is %2.").arg(v[0], v[1]),
                    FindingTexts::tr("Offer something else: no dive before %1.").arg(v[1])};
        case FindingCode::birth_date_missing:
            return {FindingTexts::tr("The birth date is missing, so no age limit can be checked."),
                    FindingTexts::tr("Enter the birth date.")};
        case FindingCode::consent_missing:
            return {FindingTexts::tr("Is %1 and no guardian's consent is on record.").arg(v[0]),
                    FindingTexts::tr("Get a guardian's signed consent and tick it.")};
        case FindingCode::guest_without_group:
            return {FindingTexts::tr("Is in no group."),
                    FindingTexts::tr("Put the guest into a group.")};
        case FindingCode::no_common_language:
            return {
                FindingTexts::tr("Reads %1, which nobody leading the group speaks.")
                    .arg(language_name(finding.text)),
                FindingTexts::tr(
                    "Swap groups, find a translator, or brief with pictures and a small group.")};
        case FindingCode::cylinder_missing:
            return {FindingTexts::tr("Has no cylinder."),
                    FindingTexts::tr("Hand one out and enter its pressure.")};
        case FindingCode::kit_missing:
            return {FindingTexts::tr("Still missing: %1.").arg(kit_list(finding.text)),
                    FindingTexts::tr("Fit it and enter the size or number.")};
        case FindingCode::staff_cylinder_missing:
            return {FindingTexts::tr("Leads a group and has no cylinder entered."),
                    FindingTexts::tr(
                        "Enter it, so that the air for bringing a guest up can be checked.")};
        default: return {};
    }
}

Pair screening_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::screening_unanswered:
            return {
                FindingTexts::tr("The health questions are still open."),
                FindingTexts::tr("Go through them with the guest, or take the centre's own form.")};
        case FindingCode::screening_physician:
            return {FindingTexts::tr("The health questions call for a physician."),
                    FindingTexts::tr(
                        "Ask the guest for a physician's written release to dive, and tick it when "
                        "you have read it.")};
        case FindingCode::screening_does_not_dive:
            return {FindingTexts::tr("Does not dive, by the health questions."),
                    FindingTexts::tr(
                        "Tell the guest in private, and offer something else. No release changes "
                        "this.")};
        case FindingCode::screening_today_flagged:
            if (finding.severity == Severity::stop) {
                return {FindingTexts::tr("Not today, by the questions of the day."),
                        FindingTexts::tr("Tell the guest in private, and offer another day.")};
            }
            return {FindingTexts::tr("Dives with care, by the questions of the day."),
                    FindingTexts::tr(
                        "Talk it over with the guest, see that all were asked, and when in doubt "
                        "do not dive today.")};
        case FindingCode::screening_today_unanswered:
            return {FindingTexts::tr("Today's questions are still open."),
                    FindingTexts::tr("Ask them before kitting up.")};
        case FindingCode::screening_out_of_date:
            if (finding.text.empty()) {
                return {FindingTexts::tr("The day of the health check is not on record."),
                        FindingTexts::tr("Go through the questions again with the guest.")};
            }
            return {
                FindingTexts::tr("The health check of %1 counts for %2 months and is out of date.")
                    .arg(day_of(finding), v[0]),
                FindingTexts::tr("Go through the questions again with the guest.")};
        case FindingCode::screening_in_future:
            return {FindingTexts::tr(
                        "The health check or the physician's release has the date %1, after the "
                        "session.")
                        .arg(day_of(finding)),
                    FindingTexts::tr("Correct the date, or go through the questions again.")};
        case FindingCode::approval_older_than_check:
            if (finding.text.empty()) {
                return {FindingTexts::tr("The day of the physician's release is not on record."),
                        FindingTexts::tr(
                            "Read the release and enter its date; without one nobody can tell "
                            "whether it still counts.")};
            }
            if (finding.severity == Severity::stop) {
                return {FindingTexts::tr("The physician's release of %1 is out of date.")
                            .arg(day_of(finding)),
                        FindingTexts::tr("Ask the guest for a new one.")};
            }
            return {
                FindingTexts::tr("The physician's release of %1 is older than the health check.")
                    .arg(day_of(finding)),
                FindingTexts::tr(
                    "Make sure that the physician knew what the guest answered since; else ask "
                    "for a new one.")};
        case FindingCode::screening_not_signed:
            return {FindingTexts::tr("Nobody has signed the health check."),
                    FindingTexts::tr("Have the guest sign, and for a minor a guardian too.")};
        case FindingCode::screening_edition_older:
            return {finding.text.empty()
                        ? FindingTexts::tr("It is not on record which questions were asked.")
                        : FindingTexts::tr("The questions were those of an earlier edition (%1).")
                              .arg(QString::fromStdString(finding.text)),
                    FindingTexts::tr("At the next check the present ones are asked.")};
        default: return {};
    }
}

Pair group_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::ratio_exceeded:
            return {FindingTexts::tr("%1 places used, %2 allowed %3.")
                        .arg(v[0], v[1], ratio_cause(finding.reason)),
                    FindingTexts::tr(
                        "Move guests to another group, add an instructor, or dive in turns.")};
        case FindingCode::staff_in_two_groups:
            return {FindingTexts::tr("Is counted on in %1 groups at once.").arg(v[0]),
                    FindingTexts::tr(
                        "Give each group staff of its own, or let the groups dive one after the "
                        "other in sessions of their own.")};
        case FindingCode::group_without_instructor:
            return {FindingTexts::tr("Has no instructor."),
                    FindingTexts::tr("Name an instructor for the group.")};
        case FindingCode::group_empty:
            return {FindingTexts::tr("Has no guests."),
                    FindingTexts::tr("Add guests or remove it.")};
        case FindingCode::no_guests:
            return {FindingTexts::tr("No guests yet."),
                    FindingTexts::tr("Add the first one on the Roster tab.")};
        default: return {};
    }
}

Pair gas_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::ends_below_reserve:
            return {FindingTexts::tr(
                        "Would surface with %1; %2 must be left. The reserve is reached after %3.")
                        .arg(v[0], v[1], v[2]),
                    FindingTexts::tr(
                        "Shorten the dive, go shallower, or give a bigger or fuller cylinder.")};
        case FindingCode::minimum_gas_above_reserve:
            return {FindingTexts::tr(
                        "Bringing two up from the deepest point takes %1, more than the reserve of "
                        "%2.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr(
                        "Have the guest signal at the higher pressure; the card says so.")};
        case FindingCode::group_unlikely_to_finish:
            return {FindingTexts::tr("All last the planned dive in only %1 of 100 such dives.")
                        .arg(v[0]),
                    FindingTexts::tr(
                        "See what would buy more minutes on the Gas tab, or plan a shorter dive.")};
        case FindingCode::sharing_may_not_last:
            return {FindingTexts::tr(
                        "If a guest's air fails, this cylinder brings both up in only %1 of 100 "
                        "cases.")
                        .arg(v[0]),
                    FindingTexts::tr("Take a bigger or fuller cylinder, or stay less deep.")};
        case FindingCode::staff_gas_below_minimum:
            return {FindingTexts::tr(
                        "Is planned to have %1 at the ascent; bringing a guest up takes %2.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr("Take a bigger or fuller cylinder, or shorten the dive.")};
        default: return {};
    }
}

Pair staff_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::staff_dives_over_limit:
            return {
                FindingTexts::tr("Would make dive number %1 today; at most %2 are wanted.")
                    .arg(v[0], v[1]),
                FindingTexts::tr("Have somebody else lead this group, or dive on another day.")};
        case FindingCode::staff_ascents_over_limit:
            return {FindingTexts::tr("Would come up %1 times today; at most %2 are wanted.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr("Plan fewer training ascents, or share them with others.")};
        case FindingCode::staff_days_over_limit:
            return {FindingTexts::tr("Dives on day %1 in a row; at most %2 are wanted.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr("Plan a day without diving.")};
        case FindingCode::staff_needs_stop:
            return {FindingTexts::tr(
                        "Would be in the water for %1 with %2 left before a stop is needed: could "
                        "not go straight up with a guest.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr(
                        "Dive shallower or shorter, wait longer, or have somebody else lead.")};
        default: return {};
    }
}

Pair body_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::cold_before_end:
            return {FindingTexts::tr("May be cold after %1; %2 are planned.").arg(v[0], v[1]),
                    FindingTexts::tr(
                        "Give a warmer suit or shorten the dive. Shivering ends it at once.")};
        case FindingCode::bcd_cannot_hold:
            return {FindingTexts::tr(
                        "With %1 of lead may be heavier at depth than the %2 the BCD is likely to "
                        "lift.")
                        .arg(v[0], v[1]),
                    FindingTexts::tr("Take off lead, or give a BCD with more lift.")};
        case FindingCode::cannot_stay_down:
            return {FindingTexts::tr(
                        "With %1 of lead is likely to float up near the end, with little air left; "
                        "%2 to %3 is expected.")
                        .arg(v[0], v[1], v[2]),
                    FindingTexts::tr("Check at the surface, and take spare lead along.")};
        case FindingCode::lead_outside_range:
            return {
                FindingTexts::tr("Carries %1 of lead; %2 to %3 is expected.").arg(v[0], v[1], v[2]),
                FindingTexts::tr("Check at the surface before going down.")};
        default: return {};
    }
}

Pair log_words(const Finding& finding, const Values& v) {
    switch (finding.code) {
        case FindingCode::logged_too_deep:
            return {FindingTexts::tr("Went to %1; %2 was planned.").arg(v[0], v[1]),
                    FindingTexts::tr("Talk it over and hold the depth next time.")};
        case FindingCode::logged_depth_over_limit:
            return {FindingTexts::tr("Went to %1, deeper than the %2 allowed.").arg(v[0], v[1]),
                    FindingTexts::tr("Report it as the centre asks, and ask how the guest feels.")};
        case FindingCode::logged_below_reserve:
            return {
                FindingTexts::tr("Came back with %1; %2 should have been left.").arg(v[0], v[1]),
                FindingTexts::tr("Use the guest's own breathing rate for the next plan.")};
        case FindingCode::logged_longer:
            return {FindingTexts::tr("Was in the water for %1; %2 was planned.").arg(v[0], v[1]),
                    FindingTexts::tr("Check the air and the cold for the longer time.")};
        case FindingCode::log_missing:
            return {FindingTexts::tr("Has no entry in the log."),
                    FindingTexts::tr("Enter the pressures and the time.")};
        case FindingCode::head_count_open:
            return {FindingTexts::tr("%1 went in, %2 counted back.").arg(v[0], v[1]),
                    FindingTexts::tr(
                        "Count again, two people, by name. Nobody leaves before it agrees.")};
        default: return {};
    }
}

}  // namespace

QString subject_name(const Subject& subject, const Session& session) {
    if (const auto* id = std::get_if<GuestId>(&subject)) {
        const Guest* guest = find_guest(session, *id);
        return guest_name(guest != nullptr ? guest->name : id->text);
    }
    if (const auto* id = std::get_if<GroupId>(&subject)) {
        const Group* group = find_group(session, *id);
        return FindingTexts::tr("Group %1")
            .arg(QString::fromStdString(group != nullptr ? group->name : id->text));
    }
    if (const auto* id = std::get_if<StaffId>(&subject)) {
        const StaffMember* member = find_staff(session, *id);
        return QString::fromStdString(member != nullptr ? member->name : id->text);
    }
    return FindingTexts::tr("Session");
}

FindingText words(const Finding& finding, const Session& session, UnitSystem units) {
    const Values values(finding, units);
    Pair pair;
    for (const auto& speak : {place_words, person_words, screening_words, group_words, gas_words,
                              staff_words, body_words, log_words}) {
        pair = speak(finding, values);
        if (!pair.what.isEmpty()) break;
    }
    FindingText result;
    result.about = subject_name(finding.subject, session);
    result.what = pair.what;
    result.remedy = pair.remedy;
    if (!finding.rule_set.empty()) {
        result.source = rule_set_title(finding.rule_set);
        if (!finding.source.empty()) {
            result.source += QStringLiteral(" (") + rule_source(finding.source) + u')';
        }
    }
    return result;
}

}  // namespace leadline
