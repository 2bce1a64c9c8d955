// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

HealthCheck& check_of(Scene& scene) { return guest_of(scene).screening; }

/// A physician asked for on 3 July, and a release of a day.
std::function<void(Scene&)> released_on(std::optional<Date> release) {
    return [release](Scene& scene) {
        check_of(scene).outcome = ScreeningOutcome::physician_required;
        check_of(scene).physician_approval_seen = true;
        check_of(scene).approval_on = release;
    };
}

FindingCase guest_too_young() {
    const auto born = [](Date birth) {
        return [birth](Scene& scene) {
            guest_of(scene).birth_date = birth;
            guest_of(scene).guardian_consent = true;
        };
    };
    return {FindingCode::guest_too_young, "Young", Severity::stop, first_guest,
            born(day(2016, 7, 5)), born(day(2016, 7, 4))};  // ten years old on the day itself
}

FindingCase birth_date_missing() {
    return {FindingCode::birth_date_missing, "BirthDate", Severity::stop, first_guest,
            [](Scene& scene) { guest_of(scene).birth_date.reset(); }, [](Scene&) {}};
}

FindingCase consent_missing() {
    const auto born = [](Date birth) {
        return [birth](Scene& scene) { guest_of(scene).birth_date = birth; };
    };
    return {FindingCode::consent_missing, "Consent", Severity::stop, first_guest,
            born(day(2008, 7, 5)), born(day(2008, 7, 4))};
}

FindingCase consent_given() {
    return {FindingCode::consent_missing, "ConsentGiven", Severity::stop, first_guest,
            [](Scene& scene) { guest_of(scene).birth_date = day(2012, 1, 1); },
            [](Scene& scene) {
                guest_of(scene).birth_date = day(2012, 1, 1);
                guest_of(scene).guardian_consent = true;
            }};
}

FindingCase outcome_case(FindingCode code, ScreeningOutcome outcome, const std::string& what) {
    return {code, what, Severity::stop, first_guest,
            [outcome](Scene& scene) { check_of(scene).outcome = outcome; }, [](Scene&) {}};
}

FindingCase screening_physician() {
    return {FindingCode::screening_physician, "Physician", Severity::stop, first_guest,
            [](Scene& scene) {
                check_of(scene).outcome = ScreeningOutcome::physician_required;
            },
            released_on(std::nullopt)};
}

FindingCase screening_does_not_dive() {
    return {FindingCode::screening_does_not_dive, "DespiteARelease", Severity::stop, first_guest,
            [](Scene& scene) {
                check_of(scene).outcome = ScreeningOutcome::does_not_dive;
                check_of(scene).physician_approval_seen = true;
            },
            released_on(std::nullopt)};
}

FindingCase screening_out_of_date() {
    const auto checked = [](Date on) {
        return [on](Scene& scene) { check_of(scene).checked_on = on; };
    };
    return {FindingCode::screening_out_of_date, "AfterAYear", Severity::stop, first_guest,
            checked(day(2025, 7, 4)), checked(day(2025, 7, 5))};
}

FindingCase screening_of_no_day() {
    return {FindingCode::screening_out_of_date, "OfNoDay", Severity::stop, first_guest,
            [](Scene& scene) {
                // Even where no rule limits the months.
                scene.session.rule_sets.clear();
                check_of(scene).checked_on.reset();
            },
            [](Scene& scene) {
                scene.session.rule_sets.clear();
                check_of(scene).checked_on = day(2025, 7, 5);
            }};
}

FindingCase screening_out_of_date_without_rule() {
    const auto checked = [](Date on) {
        return [on](Scene& scene) {
            scene.session.rule_sets.clear();
            check_of(scene).checked_on = on;
        };
    };
    return {FindingCode::screening_out_of_date, "WithoutARule", Severity::stop, first_guest,
            checked(day(2025, 7, 4)), checked(day(2025, 7, 5))};
}

FindingCase screening_unanswered_of_age() {
    const auto born = [](Date on) {
        return [on](Scene& scene) {
            guest_of(scene).birth_date = on;
            check_of(scene).checked_on = day(2026, 7, 1);
        };
    };
    return {FindingCode::screening_unanswered, "TurnedFortyFiveAfterTheCheck", Severity::stop,
            first_guest, born(day(1981, 7, 2)), born(day(1981, 7, 1))};
}

FindingCase approval_without_day() {
    return {FindingCode::approval_older_than_check, "OfNoDay", Severity::caution, first_guest,
            released_on(std::nullopt), released_on(day(2026, 7, 3))};
}

FindingCase approval_in_future() {
    return {FindingCode::screening_in_future, "ReleaseOfTheDayAfter", Severity::stop, first_guest,
            released_on(day(2026, 7, 5)), released_on(day(2026, 7, 4))};
}

FindingCase screening_in_future() {
    const auto checked = [](Date on) {
        return [on](Scene& scene) { check_of(scene).checked_on = on; };
    };
    return {FindingCode::screening_in_future, "DayAfter", Severity::stop, first_guest,
            checked(day(2026, 7, 5)), checked(day(2026, 7, 4))};
}

FindingCase approval_older() {
    return {FindingCode::approval_older_than_check, "DayBefore", Severity::caution, first_guest,
            released_on(day(2026, 7, 2)), released_on(day(2026, 7, 3))};
}

FindingCase approval_out_of_date() {
    return {FindingCode::approval_older_than_check, "OutOfDate", Severity::stop, first_guest,
            released_on(day(2025, 7, 4)), [](Scene& scene) {
                released_on(day(2025, 7, 4))(scene);
                check_of(scene).outcome = ScreeningOutcome::clear;  // nobody asked for one
            }};
}

FindingCase screening_not_signed() {
    return {FindingCode::screening_not_signed, "Unsigned", Severity::caution, first_guest,
            [](Scene& scene) { check_of(scene).signature = SignatureKind::none; },
            [](Scene& scene) {
                check_of(scene) = HealthCheck();  // nothing there to sign yet
            }};
}

FindingCase screening_edition(const std::string& edition, const std::string& what) {
    return {FindingCode::screening_edition_older, what, Severity::note, first_guest,
            [edition](Scene& scene) { check_of(scene).edition = edition; },
            [](Scene& scene) { check_of(scene).edition = own_form_edition; }};
}

FindingCase today_case(FindingCode code, TodayOutcome today, const std::string& what,
                       Severity severity) {
    return {code, what, severity, first_guest,
            [today](Scene& scene) { check_of(scene).today = today; }, [](Scene&) {}};
}

FindingCase group_without_instructor() {
    return {FindingCode::group_without_instructor, "NoInstructor", Severity::stop, blue_group,
            [](Scene& scene) { scene.session.groups.front().instructor = StaffId(); },
            [](Scene&) {}};
}

FindingCase group_led_by_an_assistant() {
    return {FindingCode::group_without_instructor, "LedByAnAssistant", Severity::stop, blue_group,
            [](Scene& scene) { scene.session.staff.front().role = StaffRole::assistant; },
            [](Scene&) {}};
}

FindingCase staff_in_two_groups() {
    const auto second_group = [](const StaffId& instructor) {
        return [instructor](Scene& scene) {
            Session& session = scene.session;
            StaffMember other = session.staff.front();
            other.id = StaffId("staff-2");
            session.staff.push_back(other);
            session.groups.push_back(Group{GroupId("red"), "Red", instructor, {}});
            session.guests.back().group = GroupId("red");
        };
    };
    return {FindingCode::staff_in_two_groups, "Twice", Severity::stop, first_instructor,
            second_group(first_instructor), second_group(StaffId("staff-2"))};
}

FindingCase staff_of_an_empty_group() {
    return {FindingCode::staff_in_two_groups, "EmptyGroup", Severity::stop, first_instructor,
            [](Scene& scene) {
                scene.session.groups.push_back(Group{GroupId("red"), "Red", {}, first_instructor});
                scene.session.guests.back().group = GroupId("red");
            },
            [](Scene& scene) {
                // A group without guests needs nobody.
                scene.session.groups.push_back(Group{GroupId("red"), "Red", first_instructor, {}});
            }};
}

FindingCase group_empty() {
    return {FindingCode::group_empty, "Empty", Severity::note, GroupId("red"),
            [](Scene& scene) {
                scene.session.groups.push_back(Group{GroupId("red"), "Red", {}, {}});
            },
            [](Scene& scene) {
                scene.session.groups.push_back(
                    Group{GroupId("red"), "Red", first_instructor, {}});
                guest_of(scene).group = GroupId("red");
            }};
}

FindingCase guest_without_group() {
    return {FindingCode::guest_without_group, "NoGroup", Severity::stop, first_guest,
            [](Scene& scene) { guest_of(scene).group = GroupId(); }, [](Scene&) {}};
}

FindingCase no_guests() {
    return {FindingCode::no_guests, "NoGuests", Severity::note, {},
            [](Scene& scene) { scene.session.guests.clear(); },
            [](Scene& scene) { scene.session.guests.pop_back(); }};
}

FindingCase no_common_language() {
    return {FindingCode::no_common_language, "Language", Severity::caution, first_guest,
            [](Scene& scene) { guest_of(scene).language = "de"; },
            [](Scene& scene) { guest_of(scene).language = "en-GB"; }};
}

FindingCase language_of_the_assistant() {
    return {FindingCode::no_common_language, "LanguageOfTheAssistant", Severity::caution,
            first_guest, [](Scene& scene) { guest_of(scene).language = "de"; },
            [](Scene& scene) {
                guest_of(scene).language = "de-AT";
                StaffMember helper;
                helper.id = StaffId("staff-2");
                helper.role = StaffRole::assistant;
                helper.languages = {"de"};
                scene.session.staff.push_back(helper);
                scene.session.groups.front().assistant = helper.id;
            }};
}

FindingCase languages_not_entered() {
    return {FindingCode::no_common_language, "LanguagesNotEntered", Severity::caution, first_guest,
            [](Scene& scene) { guest_of(scene).language = "de"; },
            [](Scene& scene) {
                guest_of(scene).language = "de";
                scene.session.staff.front().languages.clear();
            }};
}

FindingCase kit_item(std::string Kit::*item, const std::string& what, Severity severity) {
    return {FindingCode::kit_missing, what, severity, first_guest,
            [item](Scene& scene) { (guest_of(scene).kit.*item).clear(); }, [](Scene&) {}};
}

FindingCase lead_missing() {
    return {FindingCode::kit_missing, "Lead", Severity::caution, first_guest,
            [](Scene& scene) { guest_of(scene).kit.lead.reset(); },
            [](Scene& scene) { guest_of(scene).kit.lead = Kilograms(0.0); }};
}

}  // namespace

std::vector<FindingCase> people_cases() {
    return {
        guest_too_young(),
        birth_date_missing(),
        consent_missing(),
        consent_given(),
        outcome_case(FindingCode::screening_unanswered, ScreeningOutcome::unanswered, "Open"),
        screening_physician(),
        screening_does_not_dive(),
        screening_out_of_date(),
        screening_of_no_day(),
        screening_out_of_date_without_rule(),
        screening_unanswered_of_age(),
        screening_in_future(),
        approval_older(),
        approval_without_day(),
        approval_in_future(),
        approval_out_of_date(),
        screening_not_signed(),
        screening_edition("Leadline 0", "OlderEdition"),
        screening_edition("", "UnknownEdition"),
        today_case(FindingCode::screening_today_flagged, TodayOutcome::not_today, "NotToday",
                   Severity::stop),
        today_case(FindingCode::screening_today_flagged, TodayOutcome::with_care, "WithCare",
                   Severity::caution),
        today_case(FindingCode::screening_today_unanswered, TodayOutcome::unanswered, "Open",
                   Severity::caution),
        group_without_instructor(),
        group_led_by_an_assistant(),
        staff_in_two_groups(),
        staff_of_an_empty_group(),
        group_empty(),
        guest_without_group(),
        no_guests(),
        no_common_language(),
        language_of_the_assistant(),
        languages_not_entered(),
        kit_item(&Kit::mask, "Mask", Severity::stop),
        kit_item(&Kit::bcd, "Bcd", Severity::stop),
        kit_item(&Kit::regulator, "Regulator", Severity::stop),
        kit_item(&Kit::suit, "Suit", Severity::caution),
        kit_item(&Kit::fins, "Fins", Severity::caution),
        lead_missing(),
    };
}

}  // namespace leadline
