// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/gas_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/document/session_document.h"
#include "ui/gas/short_names.h"
#include "ui/words/lever_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class GasTexts {
    Q_DECLARE_TR_FUNCTIONS(GasTab)
};

QString guest_name(const Session& session, const GuestId& id) {
    const Guest* guest = find_guest(session, id);
    return short_name(QString::fromStdString(guest != nullptr ? guest->name : id.text));
}

QString instructor_name(const StaffMember& instructor) {
    return instructor.name.empty() ? GasTexts::tr("the instructor")
                                   : short_name(QString::fromStdString(instructor.name));
}

/// The gravest open finding that says the air of the group does not last.
std::optional<Severity> shortage(const Plan& plan, const GroupId& group) {
    std::optional<Severity> worst;
    const auto weigh = [&](const Finding* finding) {
        if (finding != nullptr && (!worst || finding->severity < *worst)) {
            worst = finding->severity;
        }
    };
    for (const GuestGas& gas : plan.guests) {
        if (gas.group != group) continue;
        weigh(open_finding(plan, FindingCode::ends_below_reserve, gas.guest));
    }
    weigh(open_finding(plan, FindingCode::group_unlikely_to_finish, group));
    return worst;
}

QString with_word(std::optional<Severity> severity, const QString& text) {
    return severity ? GasTexts::tr("%1 – %2").arg(label(*severity), text) : text;
}

/// That guest and instructor reach the surface on the instructor's cylinder.
GasSentence sharing_answer(const SessionDocument& document, const GroupForecast& forecast) {
    const Session& session = document.session();
    const QString group = group_label(session, forecast.group);
    const Group* led = find_group(session, forecast.group);
    const StaffMember* instructor =
        led != nullptr ? find_staff(session, led->instructor) : nullptr;
    if (instructor == nullptr) {
        return {std::nullopt,
                GasTexts::tr("%1: no instructor named yet, so nobody to share air with is "
                             "known.")
                    .arg(group)};
    }
    const QString who = instructor_name(*instructor);
    if (!forecast.sharing_lasts) {
        return {std::nullopt,
                GasTexts::tr("%1: no cylinder is known for %2, so sharing it is not reckoned.")
                    .arg(group, who)};
    }
    const Finding* finding =
        open_finding(document.plan(), FindingCode::sharing_may_not_last,
                     Subject(instructor->id));
    const std::optional<Severity> severity =
        finding != nullptr ? std::optional(finding->severity) : std::nullopt;
    return {severity,
            with_word(severity,
                      GasTexts::tr("%1: if a guest's air fails at depth, both reach the surface on "
                                   "the cylinder of %2 in %3.")
                          .arg(group, who, chance_text(*forecast.sharing_lasts)))};
}

/// The chance in closed form beside the runs.
QString witness(const QString& group, const GroupForecast& forecast) {
    const QLocale locale;
    const auto hundredths = [&](double share, int decimals) {
        return locale.toString(share * 100.0, 'f', decimals);
    };
    const RunSummary& runs = forecast.runs;
    const double apart = std::abs(forecast.completes - runs.completes);
    const QString verdict =
        apart <= runs.completes_error ? GasTexts::tr("within the standard error of the runs")
        : apart <= 3.0 * runs.completes_error
            ? GasTexts::tr("within three standard errors of the runs")
            : GasTexts::tr("further apart than the runs explain: do not rely on it");
    return GasTexts::tr(
               "%1, all last: %2 of 100 in closed form (first of several lognormals: David and "
               "Nagaraja, Order Statistics, 2003, from memory); %3 ± %4 of 100 in %5 runs, %6.")
        .arg(group, hundredths(forecast.completes, 1), hundredths(runs.completes, 1),
             hundredths(runs.completes_error, 2), locale.toString(runs.runs), verdict);
}

}  // namespace

const Finding* open_finding(const Plan& plan, FindingCode code, const Subject& subject) {
    const auto found =
        std::find_if(plan.findings.begin(), plan.findings.end(), [&](const Finding& finding) {
            return finding.code == code && finding.subject == subject &&
                   !finding.overruled_because;
        });
    return found == plan.findings.end() ? nullptr : &*found;
}

QString whole_minutes(Minutes time) { return text(time, Rounding::down); }

QString median_text(const TimeBand& band) {
    return band.middle ? whole_minutes(*band.middle)
                       : GasTexts::tr("over %1").arg(text(longest_profile));
}

QString spread_text(const TimeBand& band) {
    const auto number = [](Minutes time) {
        return whole_minutes(time).section(QChar(0x00A0), 0, 0);
    };
    if (!band.early) return {};
    if (!band.late) {
        return GasTexts::tr("%1 to over %2").arg(number(*band.early), number(longest_profile));
    }
    return GasTexts::tr("%1 to %2").arg(number(*band.early), number(*band.late));
}

QString band_text(const TimeBand& band) {
    const QString spread = spread_text(band);
    return spread.isEmpty() ? median_text(band)
                            : GasTexts::tr("%1 (%2)").arg(median_text(band), spread);
}

bool is_likely_first(const Plan& plan, const GuestGas& gas) {
    const GroupForecast* forecast = find_forecast(plan, gas.group);
    return forecast != nullptr && forecast->likely_first == gas.guest;
}

bool is_alone(const Plan& plan, const GuestGas& gas) {
    const GroupForecast* forecast = find_forecast(plan, gas.group);
    return forecast != nullptr && forecast->guests.size() < 2;
}

GasSentence group_answer(const SessionDocument& document, const GroupGas& gas) {
    const Session& session = document.session();
    const QString group = group_label(session, gas.group);
    if (guests_in(session, gas.group).empty()) {
        return {std::nullopt, GasTexts::tr("%1: nobody in this group yet.").arg(group)};
    }
    const GroupForecast* forecast = find_forecast(document.plan(), gas.group);
    const auto has_cylinder = [&](const GuestGas& one) {
        return one.group == gas.group && one.has_cylinder;
    };
    const std::vector<GuestGas>& all = document.plan().guests;
    if (forecast == nullptr && std::any_of(all.begin(), all.end(), has_cylinder)) {
        return {Severity::caution,
                with_word(Severity::caution,
                          GasTexts::tr(
                              "%1: too many guests in one group for a forecast. Form groups of at "
                              "most 100.")
                              .arg(group))};
    }
    if (forecast == nullptr) {
        return {Severity::caution,
                with_word(Severity::caution,
                          GasTexts::tr(
                              "%1: no cylinder is known. Enter cylinder and pressure in the table.")
                              .arg(group))};
    }
    const QString name = guest_name(session, forecast->likely_first);
    const QString reserve = text(document.plan().limits.reserve, document.units());
    const QString planned = text(duration(session.profile));
    const QString chance = chance_text(forecast->completes);
    const QString when = forecast->guests.size() > 1
                             ? GasTexts::tr("%1 is likely first at %2, after about %3.")
                             : GasTexts::tr("%1 is at %2 after about %3.");
    const QString first = when.arg(name, reserve, band_text(forecast->first_at_reserve));
    const std::optional<Severity> severity = shortage(document.plan(), gas.group);
    if (gas.cut_short) {
        return {severity,
                with_word(severity, GasTexts::tr("%1: the air does not last. %2 All last the "
                                                 "planned %3 in %4 dives.")
                                        .arg(group, first, planned, chance))};
    }
    const QString last = forecast->guests.size() > 1
                             ? GasTexts::tr("All last the planned %1 in %2 dives.")
                             : GasTexts::tr("The air lasts the planned %1 in %2 dives.");
    return {severity,
            with_word(severity,
                      GasTexts::tr("%1: %2 %3").arg(group, first, last.arg(planned, chance)))};
}

GasSentence instructor_answer(const SessionDocument& document, const GroupGas& gas) {
    const Session& session = document.session();
    const Group* group = find_group(session, gas.group);
    const QString name = group_label(session, gas.group);
    const StaffMember* instructor =
        group != nullptr ? find_staff(session, group->instructor) : nullptr;
    if (instructor == nullptr)
        return {std::nullopt, GasTexts::tr("%1: no instructor named yet.").arg(name)};
    const QString who = instructor_name(*instructor);
    if (!gas.instructor_minimum_gas || !gas.instructor_at_ascent) {
        return {Severity::caution,
                with_word(Severity::caution,
                          GasTexts::tr(
                              "%1: no cylinder is known for %2, so the air for bringing a guest up "
                              "is not checked.")
                              .arg(name, who))};
    }
    const QString needed = text(*gas.instructor_minimum_gas, document.units(), Rounding::up);
    const QString left = text(*gas.instructor_at_ascent, document.units(), Rounding::down);
    const Finding* finding = open_finding(document.plan(), FindingCode::staff_gas_below_minimum,
                                          Subject(instructor->id));
    const std::optional<Severity> severity =
        finding != nullptr ? std::optional<Severity>(finding->severity) : std::nullopt;
    return {severity,
            with_word(severity, GasTexts::tr("%1: %2 needs %3 to bring a guest up, and is planned "
                                             "to have %4 at the ascent.")
                                    .arg(name, who, needed, left))};
}

std::vector<GasSentence> group_answers(const SessionDocument& document, const GroupId& group) {
    std::vector<GasSentence> answers;
    for (const GroupGas& gas : document.plan().groups) {
        if (group.empty() || gas.group == group) answers.push_back(group_answer(document, gas));
    }
    QStringList alone;
    for (const Guest& guest : document.session().guests) {
        if (guest.group.empty()) alone << short_name(QString::fromStdString(guest.name));
    }
    if (group.empty() && !alone.isEmpty()) {
        constexpr qsizetype named = 5;
        const QString more = alone.size() > named ? QStringLiteral(" …") : QString();
        answers.push_back(
            {std::nullopt, GasTexts::tr("In no group yet: %1. Put them into one on the Roster tab.")
                               .arg(alone.mid(0, named).join(QStringLiteral(", ")) + more)});
    }
    return answers;
}

std::vector<GasSentence> instructor_answers(const SessionDocument& document,
                                            const GroupId& group) {
    std::vector<GasSentence> answers;
    for (const GroupGas& gas : document.plan().groups) {
        if (!group.empty() && gas.group != group) continue;
        if (guests_in(document.session(), gas.group).empty()) continue;
        answers.push_back(instructor_answer(document, gas));
    }
    return answers;
}

std::vector<GasSentence> trouble_answers(const SessionDocument& document, const GroupId& group) {
    const Session& session = document.session();
    const Plan& plan = document.plan();
    std::vector<GasSentence> answers;
    for (const GroupForecast& forecast : plan.forecasts) {
        if (!group.empty() && forecast.group != group) continue;
        constexpr Bars lost{20.0};
        answers.push_back(
            {std::nullopt,
             GasTexts::tr(
                 "%1: all last the planned dive in %2 dives; in %3 when %4 starts with %5 less; in "
                 "%6 when somebody's regulator blows off air for 10 to 60 s.")
                 .arg(group_label(session, forecast.group), chance_text(forecast.completes),
                      chance_text(forecast.completes_after_loss),
                      guest_name(session, forecast.likely_first), text(lost, document.units()),
                      chance_text(forecast.completes_after_free_flow))});
        answers.push_back(sharing_answer(document, forecast));
    }
    return answers;
}

std::vector<GasSentence> answer_reasons(const SessionDocument& document, const GroupId& group) {
    std::vector<GasSentence> reasons;
    const auto say = [&](const QString& text) { reasons.push_back({std::nullopt, text}); };
    say(GasTexts::tr(
        "How one guest breathes is a spread, not a number: lognormal about the RMV in the "
        "table. Where nothing is known, of 100 guests the 10th and the 90th differ by a factor "
        "of two; sea and briefing move all of a group together. How wide, and how much is "
        "shared: common practice, no source."));
    say(GasTexts::tr(
        "The minutes hold for a group that stays at the depth from which the final ascent "
        "starts. In brackets: 10 of 100 such dives are there before the first figure, 10 after "
        "the second. Minutes and chances are rounded down."));
    for (const GroupForecast& forecast : document.plan().forecasts) {
        if (!group.empty() && forecast.group != group) continue;
        say(witness(group_label(document.session(), forecast.group), forecast));
    }
    say(GasTexts::tr(
            "The same session always gives the same figures: the runs start from one fixed number, "
            "%1. They are estimates for planning: in the water the gauge and the guest's sign "
            "decide.")
            .arg(forecast_seed));
    return reasons;
}

}  // namespace leadline
