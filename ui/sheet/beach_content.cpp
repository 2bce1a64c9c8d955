// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "core/planning/air_order.h"
#include "core/planning/overrule_key.h"
#include "core/planning/signal_check.h"
#include "ui/guest_words/signal_words.h"
#include "ui/guest_words/typed_text.h"
#include "ui/sheet/beach_sheet.h"
#include "ui/sheet/card_language.h"
#include "ui/sheet/sheet_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/gauge_steps.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

class BeachWords {
    Q_DECLARE_TR_FUNCTIONS(BeachSheet)
};

constexpr double check_step_minutes = 5.0;
constexpr int most_checks = 6;

/// "60" of "60 bar".
QString bare(const QString& quantity) {
    return quantity.section(QChar(0x00A0), 0, 0);
}
QString lower(const QString& words) {
    return QLocale().toLower(words);
}
QString unit_of(const QString& quantity) {
    return quantity.section(QChar(0x00A0), 1);
}

bool about(const Finding& finding, const GuestId& guest) {
    const auto* id = std::get_if<GuestId>(&finding.subject);
    return id != nullptr && *id == guest;
}

/// Whether a finding concerns the group as a whole: itself, its staff, or the session.
bool about_group(const Finding& finding, const Group& group) {
    if (std::holds_alternative<std::monostate>(finding.subject)) return true;
    if (const auto* id = std::get_if<GroupId>(&finding.subject)) return *id == group.id;
    if (const auto* id = std::get_if<StaffId>(&finding.subject)) {
        return *id == group.instructor || *id == group.assistant;
    }
    return false;
}

bool stands(const Finding& finding) {
    return !finding.overruled_because && finding.severity != Severity::note;
}

QString flag_text(const Finding& finding, const Session& session, UnitSystem units) {
    return BeachWords::tr("%1: %2", "severity: what is wrong")
        .arg(label(finding.severity), words(finding, session, units).what);
}

QString open_text(const Finding& finding, const Session& session, UnitSystem units) {
    const FindingText said = words(finding, session, units);
    return BeachWords::tr("%1, %2: %3", "severity, whom it is about: what is wrong")
        .arg(label(finding.severity), set_apart(one_line(said.about)), said.what);
}

QString decided_text(const Finding& finding, const Session& session, UnitSystem units) {
    const FindingText said = words(finding, session, units);
    const auto decision = std::find_if(session.overrules.begin(), session.overrules.end(),
                                       [&](const Overrule& one) { return covers(one, finding); });
    const QString by =
        decision != session.overrules.end() ? set_apart(one_line(decision->by)) : QString();
    const QString why = one_line(*finding.overruled_because);
    const QString what = BeachWords::tr("%1: %2", "whom it is about: what is wrong")
                             .arg(set_apart(one_line(said.about)), said.what);
    return by.isEmpty() ? BeachWords::tr("%1 Goes ahead because: %2").arg(what, why)
                        : BeachWords::tr("%1 Goes ahead because: %2 (%3)").arg(what, why, by);
}

QString known_text(const BriefingCheck& check) {
    if (!check.checked_on) return BeachWords::tr("not asked");
    const std::vector<HandSignal> needed = signals_to_know();
    const auto known = std::count_if(needed.begin(), needed.end(),
                                     [&](HandSignal one) { return is_understood(check, one); });
    return BeachWords::tr("%1 of %2", "signals known").arg(known).arg(needed.size());
}

/// Whether a flag says all in which the health check is short of clear. To say it twice costs other
/// guests their place on the page.
bool is_said_by_flags(const HealthCheck& check, const std::vector<const Finding*>& flags) {
    const auto said = [&](std::initializer_list<FindingCode> codes) {
        return std::any_of(flags.begin(), flags.end(), [&](const Finding* flag) {
            return std::find(codes.begin(), codes.end(), flag->code) != codes.end();
        });
    };
    const bool before = outcome(check) == ScreeningOutcome::clear ||
                        said({FindingCode::screening_unanswered, FindingCode::screening_physician,
                              FindingCode::screening_does_not_dive});
    const bool today = check.today == TodayOutcome::clear ||
                       said({FindingCode::screening_today_unanswered,
                             FindingCode::screening_today_flagged});
    return before && today;
}

/// @param flags  of the guest, which stand
QString who_text(const Session& session, const Guest& guest,
                 const std::vector<const Finding*>& flags) {
    const QString age =
        guest.birth_date
            ? BeachWords::tr("%n years", nullptr, age_in_years(*guest.birth_date, session.date))
            : BeachWords::tr("age not known");
    const bool clear = outcome(guest.screening) == ScreeningOutcome::clear &&
                       guest.screening.today == TodayOutcome::clear;
    QStringList all{age};
    if (clear) {
        all << BeachWords::tr("health clear");
    } else if (!is_said_by_flags(guest.screening, flags)) {
        all << BeachWords::tr("health: %1, %2", "before the day, today")
                   .arg(lower(label(outcome(guest.screening))),
                        lower(label(guest.screening.today)));
    }
    all << BeachWords::tr("signals %1").arg(known_text(check_on(guest.briefing, session.date)))
        << guest_language_name(guest.language);
    return all.join(QStringLiteral(" · "));
}

/// The signals that were asked for and not known, in words.
QString unknown_text(const BriefingCheck& check) {
    if (!check.checked_on) return {};
    QStringList unknown;
    for (const HandSignal one : signals_to_know()) {
        if (!is_understood(check, one)) unknown << signal_caption(one, window_tongue());
    }
    if (unknown.isEmpty()) return {};
    return BeachWords::tr("Signals not yet known: %1.").arg(unknown.join(QStringLiteral(", ")));
}

/// Rounded down: to the safe side.
QString bare_minutes(const std::optional<Minutes>& time) {
    return time ? bare(text(*time, Rounding::down))
                : BeachWords::tr(">%1", "more minutes than").arg(longest_profile.value());
}

/// Broken between items only.
QString in_whole_items(const QString& list) {
    QStringList items = list.split(QStringLiteral(" · "));
    for (QString& item : items) item.replace(u' ', QChar(0x00A0));
    return items.join(QStringLiteral("\u00A0· "));
}

BeachGuest guest_of(const Session& session, const Plan& plan, const Guest& guest,
                    const std::vector<GuestId>& order, UnitSystem units) {
    BeachGuest row;
    row.name = one_line(guest.name);
    std::vector<const Finding*> flags;
    for (const Finding& finding : plan.findings) {
        if (about(finding, guest.id) && stands(finding)) flags.push_back(&finding);
    }
    row.who = who_text(session, guest, flags);
    for (const Finding* flag : flags) {
        row.flags << flag_text(*flag, session, units);
        row.moved_flags << open_text(*flag, session, units);
        row.stops += flag->severity == Severity::stop ? 1 : 0;
    }
    const QString unknown = unknown_text(check_on(guest.briefing, session.date));
    if (!unknown.isEmpty()) {
        row.flags << unknown;
        row.moved_flags
            << BeachWords::tr("%1: %2", "guest, flag").arg(set_apart(row.name), unknown);
    }
    row.kit = in_whole_items(kit_line(guest.kit, units));
    const auto place = std::find(order.begin(), order.end(), guest.id);
    if (place != order.end()) row.order = QString::number(place - order.begin() + 1);
    const GuestGas* gas = find_gas(plan, guest.id);
    if (gas == nullptr) return row;
    row.rmv = bare(text(gas->rmv, units));
    if (!gas->has_cylinder) return row;
    // The very figure on the guest's card, in the units of the sheet.
    row.low = QString::number(signal_reading(gas->signal_pressure, units), 'f', 0);
    row.turn = bare(text(gas->turn_pressure, units, Rounding::up));
    row.least = bare(text(gas->minimum_gas, units, Rounding::up));
    // What counts on the beach is the guest's own forecast; the single planned run only without
    // one.
    if (const GuestForecast* forecast = find_forecast(plan, guest.id)) {
        row.minutes = bare_minutes(forecast->reserve.middle);
        row.early = bare_minutes(forecast->reserve.early);
    } else {
        row.minutes = bare_minutes(gas->minutes_to_reserve);
    }
    return row;
}

/// Rounded down: to the safe side.
QString forecast_minutes(const std::optional<Minutes>& time) {
    return time ? text(*time, Rounding::down)
                : BeachWords::tr("over %1 min").arg(longest_profile.value());
}

/// When the air is low: of the group, of the forecast, not of the single planned run; and what the
/// table of guests gives.
QStringList low_air_sentences(const Session& session, const Plan& plan, const Group& group) {
    const GroupForecast* forecast = find_forecast(plan, group.id);
    const Guest* first =
        forecast != nullptr ? find_guest(session, forecast->likely_first) : nullptr;
    if (first != nullptr) {
        return {
            BeachWords::tr("Somebody is low on air after about %2 (in 10 of 100 dives before %3), "
                           "most likely first: %1.")
                .arg(set_apart(one_line(first->name)),
                     forecast_minutes(forecast->first_at_reserve.middle),
                     forecast_minutes(forecast->first_at_reserve.early)),
            BeachWords::tr(
                "The table gives each guest’s own forecast; in brackets: sooner in 10 of "
                "100 dives.")};
    }
    if (order_of_low_on_air(plan, group.id).empty()) return {};
    return {
        BeachWords::tr("No forecast: the table gives the planned minutes. About half of all dives "
                       "are low on air sooner.")};
}

QString air_text(const Session& session, const Plan& plan, const Group& group, UnitSystem units) {
    QStringList sentences = low_air_sentences(session, plan, group);
    const GroupGas* gas = find_gas(plan, group.id);
    if (gas != nullptr && gas->instructor_minimum_gas) {
        sentences << BeachWords::tr("Instructor: %1 at least, to bring one guest up.")
                         .arg(text(*gas->instructor_minimum_gas, units, Rounding::up));
    }
    return sentences.join(u' ');
}

QString times_text(const Session& session, const Plan& plan, const Group& group) {
    const GroupGas* gas = find_gas(plan, group.id);
    const Minutes planned = duration(session.profile);
    const Minutes ends = gas != nullptr ? gas->ends_at : planned;
    const QString in = text(session.dive_time);
    const QString out = text(later(session.dive_time, ends));
    const QString lasts = text(ends, Rounding::down);
    if (gas != nullptr && gas->cut_short) {
        return BeachWords::tr("In %1, up by %2 (%3): the air ends it before the plan does.")
            .arg(in, out, lasts);
    }
    return BeachWords::tr("In %1, back by %2 (%3).").arg(in, out, lasts);
}

/// Every five minutes, or so many more that the columns last to the end of the dive.
QStringList check_minutes(const Session& session) {
    const double lasts = duration(session.profile).value();
    double step = check_step_minutes;
    while (step * (most_checks + 1) < lasts) step += check_step_minutes;
    QStringList minutes;
    for (double at = step; at < lasts; at += step) minutes << QString::number(at);
    return minutes;
}

void add_people(const Session& session, const Group& group, BeachSheet& sheet) {
    QStringList staff;
    const auto add = [&](const StaffId& id, StaffRole role) {
        const StaffMember* member = find_staff(session, id);
        if (member != nullptr && !member->name.empty()) {
            staff << BeachWords::tr("%1 %2", "role, name")
                         .arg(label(role), set_apart(one_line(member->name)));
        }
    };
    add(group.instructor, StaffRole::instructor);
    add(group.assistant, StaffRole::assistant);
    sheet.staff = staff.join(QStringLiteral(" · "));
    sheet.group = one_line(subject_name(group.id, session));
    sheet.site = one_line(session.site.name);
    sheet.when = BeachWords::tr("%1 · meet %2 · in the water %3")
                     .arg(text(session.date), text(session.meeting_time), text(session.dive_time));
}

}  // namespace

BeachSheet beach_sheet(const Session& session, const Plan& plan, const Group& group,
                       UnitSystem units) {
    BeachSheet sheet;
    add_people(session, group, sheet);
    sheet.emergency_line = with_whole_numbers(one_line(session.site.emergency_line));
    for (const QString& line : lines_of(session.site.emergency_plan)) {
        sheet.emergency_plan << with_whole_numbers(line);
    }
    sheet.pressure_unit = unit_of(text(Bars(0.0), units));
    sheet.depth_unit = unit_of(text(Depth(), units));
    sheet.flow_unit = unit_of(text(LitersPerMinute(0.0), units));
    const std::vector<GuestId> order = order_of_low_on_air(plan, group.id);
    const std::vector<const Guest*> guests = guests_in(session, group.id);
    for (const Guest* guest : guests) {
        sheet.guests.push_back(guest_of(session, plan, *guest, order, units));
    }
    for (const ProfilePoint& point : session.profile.points) {
        sheet.profile.push_back({point.time.value(), point.depth.meters().value(),
                                 text(later(session.dive_time, point.time)),
                                 text(point.depth, units, Rounding::down)});
    }
    sheet.is_forecast = find_forecast(plan, group.id) != nullptr;
    sheet.times = times_text(session, plan, group);
    sheet.air = air_text(session, plan, group, units);
    sheet.air_checks = check_minutes(session);
    for (const HandSignal one :
         {HandSignal::something_wrong, HandSignal::low_on_air, HandSignal::out_of_air,
          HandSignal::up, HandSignal::help_at_surface}) {
        sheet.need.push_back({signal_picture(one), signal_caption(one, window_tongue())});
    }
    for (const Finding& finding : plan.findings) {
        const bool whole = about_group(finding, group);
        const bool of_guest = std::any_of(guests.begin(), guests.end(), [&](const Guest* guest) {
            return about(finding, guest->id);
        });
        if (whole && stands(finding)) {
            sheet.open << open_text(finding, session, units);
            sheet.open_stops += finding.severity == Severity::stop ? 1 : 0;
        }
        if ((whole || of_guest) && finding.overruled_because) {
            sheet.decided << decided_text(finding, session, units);
        }
    }
    sheet.review = review_text(guests);
    sheet.standing = planning_aid_line();
    sheet.units = units_line(units);
    return sheet;
}

}  // namespace leadline
