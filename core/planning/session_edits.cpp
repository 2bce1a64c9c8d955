// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/session_edits.h"

namespace leadline {
namespace {

/// The key of a decision without the mark that tells cautions from stops.
std::string plain_key(const Overrule& overrule) {
    const std::string mark = "care/";
    return overrule.finding.starts_with(mark) ? overrule.finding.substr(mark.size())
                                              : overrule.finding;
}

}  // namespace

void move_to_date(Session& session, Date date) {
    if (session.date == date) return;
    session.date = date;
    for (Guest& guest : session.guests) guest.screening.today = TodayOutcome::unanswered;
    std::erase_if(session.overrules, [](const Overrule& overrule) {
        return plain_key(overrule).starts_with("screening_today_");
    });
    drop_old_dives(session);
}

void correct_birth_date(Guest& guest, std::optional<Date> birth_date, Date session_date) {
    const auto is_asked_more = [&](const std::optional<Date>& born) {
        return !born || age_in_years(*born, session_date) >= closer_questions_from_age;
    };
    const bool missed = !is_asked_more(guest.birth_date) && is_asked_more(birth_date);
    guest.birth_date = birth_date;
    HealthCheck& check = guest.screening;
    if (missed && check.outcome == ScreeningOutcome::clear && check.edition != own_form_edition) {
        check.outcome = ScreeningOutcome::unanswered;
    }
}

void forget_screening_overrules(Session& session, const GuestId& guest) {
    std::erase_if(session.overrules, [&](const Overrule& overrule) {
        const std::string finding = plain_key(overrule);
        return finding.ends_with(":" + guest.text) &&
               (finding.starts_with("screening_") || finding.starts_with("approval_"));
    });
}

}  // namespace leadline
