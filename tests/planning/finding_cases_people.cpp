// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

Answer& health(Scene& scene, HealthTheme theme) {
    return guest_of(scene).screening.health[static_cast<std::size_t>(theme)];
}

Answer& today(Scene& scene, TodayQuestion question) {
    return guest_of(scene).screening.today[static_cast<std::size_t>(question)];
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

FindingCase screening_unanswered() {
    return {FindingCode::screening_unanswered, "Unanswered", Severity::stop, first_guest,
            [](Scene& scene) { health(scene, HealthTheme::mind) = Answer::unanswered; },
            [](Scene&) {}};
}

FindingCase screening_physician() {
    return {FindingCode::screening_physician, "Physician", Severity::stop, first_guest,
            [](Scene& scene) { health(scene, HealthTheme::lungs) = Answer::yes; },
            [](Scene& scene) {
                health(scene, HealthTheme::lungs) = Answer::yes;
                guest_of(scene).screening.physician_approval_seen = true;
            }};
}

FindingCase screening_does_not_dive() {
    return {FindingCode::screening_does_not_dive, "Pregnant", Severity::stop, first_guest,
            [](Scene& scene) {
                health(scene, HealthTheme::pregnancy) = Answer::yes;
                guest_of(scene).screening.physician_approval_seen = true;
            },
            [](Scene& scene) {
                health(scene, HealthTheme::lungs) = Answer::yes;
                guest_of(scene).screening.physician_approval_seen = true;
            }};
}

FindingCase flagged_today(TodayQuestion question, const std::string& what, Severity severity) {
    return {FindingCode::screening_today_flagged, what, severity, first_guest,
            [question](Scene& scene) { today(scene, question) = Answer::yes; }, [](Scene&) {}};
}

FindingCase today_unanswered() {
    return {FindingCode::screening_today_unanswered, "TodayUnanswered", Severity::caution,
            first_guest,
            [](Scene& scene) { today(scene, TodayQuestion::cannot_swim) = Answer::unanswered; },
            [](Scene& scene) { today(scene, TodayQuestion::cannot_swim) = Answer::yes; }};
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
        screening_unanswered(),
        screening_physician(),
        screening_does_not_dive(),
        flagged_today(TodayQuestion::cold_or_blocked_ears, "BlockedEars", Severity::stop),
        flagged_today(TodayQuestion::alcohol_or_drugs, "Alcohol", Severity::stop),
        flagged_today(TodayQuestion::new_medicine, "NewMedicine", Severity::stop),
        flagged_today(TodayQuestion::unwilling_or_very_afraid, "Unwilling", Severity::stop),
        flagged_today(TodayQuestion::flight_or_mountain_within_24_hours, "Flight",
                      Severity::caution),
        flagged_today(TodayQuestion::cannot_swim, "CannotSwim", Severity::caution),
        today_unanswered(),
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
