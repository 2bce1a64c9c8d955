// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/plan_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "ui/words/finding_words.h"
#include "ui/words/lever_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class PlanTexts {
    Q_DECLARE_TR_FUNCTIONS(PlanText)
};

/// Rows of cells set in columns as wide as their widest cell.
QString columns(const std::vector<QStringList>& rows) {
    std::vector<qsizetype> widths;
    for (const QStringList& row : rows) {
        widths.resize(std::max(widths.size(), static_cast<std::size_t>(row.size())));
        for (qsizetype i = 0; i < row.size(); ++i) {
            auto& width = widths[static_cast<std::size_t>(i)];
            width = std::max(width, row[i].size());
        }
    }
    QString text;
    for (const QStringList& row : rows) {
        QString line;
        for (qsizetype i = 0; i < row.size(); ++i) {
            line += row[i].leftJustified(widths[static_cast<std::size_t>(i)] + 2);
        }
        text += line.trimmed() + u'\n';
    }
    return text;
}

QString name_of(const Session& session, const GuestId& id) { return subject_name(id, session); }

QString minutes(const std::optional<Minutes>& time) {
    return time ? leadline::text(*time, Rounding::down) : PlanTexts::tr("over 240 min");
}

/// Who is likely first at the reserve, how sure the dive is, and the best that could be changed.
QString forecast_text(const Session& session, const Plan& plan, const GroupForecast& forecast,
                      UnitSystem units) {
    QString text =
        PlanTexts::tr(
            "%1: %2 is likely first at %3, after %4 (10 to 90 of 100 dives: %5 to %6). All last "
            "the "
            "planned dive in %7 dives.")
            .arg(subject_name(forecast.group, session), name_of(session, forecast.likely_first),
                 leadline::text(plan.limits.reserve, units, Rounding::up),
                 minutes(forecast.first_at_reserve.middle),
                 minutes(forecast.first_at_reserve.early), minutes(forecast.first_at_reserve.late),
                 chance_text(forecast.completes)) +
        u'\n';
    const auto best = std::find_if(plan.levers.begin(), plan.levers.end(), [&](const Lever& lever) {
        return lever.group == forecast.group;
    });
    if (best != plan.levers.end()) {
        text += PlanTexts::tr("    Would help most: %1\n")
                    .arg(words(*best, plan, session, units).sentence);
    }
    return text;
}

QString groups_text(const Session& session, const Plan& plan, UnitSystem units) {
    QString text;
    for (const GroupForecast& forecast : plan.forecasts) {
        text += forecast_text(session, plan, forecast, units);
    }
    for (const GroupGas& group : plan.groups) {
        if (!group.instructor_minimum_gas) continue;
        text += PlanTexts::tr("%1: the instructor keeps at least %2.\n")
                    .arg(subject_name(group.group, session),
                         leadline::text(*group.instructor_minimum_gas, units, Rounding::up));
    }
    return text;
}

/// Warmth and lead, a row a guest.
QString body_text(const Session& session, const Plan& plan, UnitSystem units) {
    std::vector<QStringList> rows{{PlanTexts::tr("Guest"), PlanTexts::tr("Too cold after"),
                                   PlanTexts::tr("from"), PlanTexts::tr("Lead to try first"),
                                   PlanTexts::tr("from"), PlanTexts::tr("to"),
                                   PlanTexts::tr("carried")}};
    const QString none = QStringLiteral("-");
    for (std::size_t i = 0; i < plan.warmth.size(); ++i) {
        const GuestWarmth& warmth = plan.warmth[i];
        const GuestLead& lead = plan.lead[i];
        const bool warmth_known = warmth.gap == WarmthGap::none;
        const auto mass = [&](Kilograms value) {
            return lead.gap == LeadGap::none ? leadline::text(value, units) : none;
        };
        rows.push_back({name_of(session, warmth.guest),
                        warmth_known ? minutes(warmth.middle) : none,
                        warmth_known ? minutes(warmth.low) : none, mass(lead.middle),
                        mass(lead.low), mass(lead.high), mass(lead.carried)});
    }
    return columns(rows);
}

/// Staff: what the body carries, a row each.
QString staff_text(const Session& session, const Plan& plan) {
    std::vector<QStringList> rows{{PlanTexts::tr("Staff"), PlanTexts::tr("Dives today"),
                                   PlanTexts::tr("Times up"), PlanTexts::tr("Days in a row"),
                                   PlanTexts::tr("No-stop time left"),
                                   PlanTexts::tr("Before flying")}};
    for (const StaffExposure& exposure : plan.exposures) {
        rows.push_back(
            {subject_name(exposure.staff, session), QString::number(exposure.dives_today),
             QString::number(exposure.ascents_today), QString::number(exposure.days_in_a_row),
             exposure.no_stop_left ? leadline::text(*exposure.no_stop_left, Rounding::down)
                                   : PlanTexts::tr("over 24 h"),
             PlanTexts::tr("%1 h").arg(std::ceil(exposure.no_fly.value()))});
    }
    return columns(rows);
}

}  // namespace

QString findings_text(const Session& session, const std::vector<Finding>& findings,
                      UnitSystem units) {
    QString text;
    for (const Finding& finding : findings) {
        const FindingText said = words(finding, session, units);
        text += label(finding.severity) + QStringLiteral(" · ") +
                with_colon(said.about, said.what + u' ' + said.remedy) + u'\n';
        if (!said.source.isEmpty()) text += QStringLiteral("    ") + said.source + u'\n';
        if (finding.overruled_because) {
            text += PlanTexts::tr("    Set aside because: %1\n")
                        .arg(QString::fromStdString(*finding.overruled_because));
        }
    }
    return text;
}

QString plan_text(const Session& session, const Plan& plan, UnitSystem units) {
    const Environment& place = plan.environment;
    QString text = QString::fromStdString(session.title) + QStringLiteral("\n") +
                   leadline::text(session.date) + u' ' + leadline::text(session.dive_time) +
                   QStringLiteral(", ") + QString::fromStdString(session.site.name) +
                   QStringLiteral("\n\n");
    text += PlanTexts::tr("Readiness: %1 stop, %2 care, %3 note, %4 set aside\n")
                .arg(plan.readiness.stops)
                .arg(plan.readiness.cautions)
                .arg(plan.readiness.notes)
                .arg(plan.readiness.overruled);
    text +=
        PlanTexts::tr("Deepest %1, %2 there (surface %3); planned %4\n\n")
            .arg(leadline::text(place.deepest, units), leadline::text(place.bottom_pressure, units),
                 leadline::text(place.surface_pressure, units),
                 leadline::text(duration(session.profile)));
    text += groups_text(session, plan, units) + u'\n';

    std::vector<QStringList> rows{{PlanTexts::tr("Guest"), PlanTexts::tr("RMV"),
                                   PlanTexts::tr("Start"), PlanTexts::tr("Turn"),
                                   PlanTexts::tr("Leave"), PlanTexts::tr("Signal"),
                                   PlanTexts::tr("End"), PlanTexts::tr("Reserve after")}};
    for (const GuestGas& gas : plan.guests) {
        const QString none = QStringLiteral("-");
        const auto pressure = [&](Bars value, Rounding rounding) {
            return gas.has_cylinder ? leadline::text(value, units, rounding) : none;
        };
        rows.push_back({name_of(session, gas.guest), leadline::text(gas.rmv, units),
                        pressure(gas.start_pressure, Rounding::down),
                        pressure(gas.turn_pressure, Rounding::up),
                        pressure(gas.leave_pressure, Rounding::up),
                        pressure(gas.signal_pressure, Rounding::up),
                        pressure(gas.end_pressure, Rounding::down),
                        gas.minutes_to_reserve
                            ? leadline::text(*gas.minutes_to_reserve, Rounding::down)
                            : none});
    }
    text += columns(rows) + u'\n' + body_text(session, plan, units) + u'\n' +
            staff_text(session, plan) + u'\n' + findings_text(session, plan.findings, units);
    text += PlanTexts::tr(
        "\nEstimates for planning, on the side of more air used. The gauge, the guest's "
        "signal, shivering and the instructor decide. Lead: check at the surface. Staff: the "
        "diver's own computer and a physician prevail.\n");
    return text;
}

QString review_text(const Session& session, const Review& review, UnitSystem units) {
    std::vector<QStringList> rows{{PlanTexts::tr("Guest"), PlanTexts::tr("Time"),
                                   PlanTexts::tr("Deepest"), PlanTexts::tr("End"),
                                   PlanTexts::tr("Planned end"), PlanTexts::tr("RMV planned"),
                                   PlanTexts::tr("RMV actual")}};
    for (const DiverReview& diver : review.divers) {
        rows.push_back(
            {name_of(session, diver.guest), leadline::text(diver.duration),
             leadline::text(diver.deepest, units), leadline::text(diver.end_pressure, units),
             leadline::text(diver.planned_end_pressure, units),
             leadline::text(diver.planned_rmv, units),
             diver.actual_rmv ? leadline::text(*diver.actual_rmv, units) : QStringLiteral("-")});
    }
    return QString::fromStdString(session.title) + QStringLiteral("\n\n") + columns(rows) + u'\n' +
           findings_text(session, review.findings, units);
}

}  // namespace leadline
