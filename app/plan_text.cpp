// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/plan_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <vector>

#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

QString tr(const char* source) { return QCoreApplication::translate("PlanText", source); }

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

QString groups_text(const Session& session, const Plan& plan, UnitSystem units) {
    QString text;
    for (const GroupGas& group : plan.groups) {
        if (!group.limiting_guest) continue;
        const GuestGas* gas = find_gas(plan, *group.limiting_guest);
        text += tr("%1: %2 is first to reach the reserve")
                    .arg(subject_name(group.group, session), name_of(session, *group.limiting_guest));
        if (gas != nullptr && gas->minutes_to_reserve) {
            text += tr(" (%1 at depth)").arg(leadline::text(*gas->minutes_to_reserve, Rounding::down));
        }
        text += group.cut_short ? tr("; the dive must end after %1.").arg(leadline::text(group.ends_at))
                                : tr("; the planned %1 are covered.").arg(leadline::text(group.ends_at));
        if (group.instructor_minimum_gas) {
            text += tr(" Instructor keeps at least %1.")
                        .arg(leadline::text(*group.instructor_minimum_gas, units, Rounding::up));
        }
        text += u'\n';
    }
    return text;
}

}  // namespace

QString findings_text(const Session& session, const std::vector<Finding>& findings,
                      UnitSystem units) {
    QString text;
    for (const Finding& finding : findings) {
        const FindingText said = words(finding, session, units);
        text += label(finding.severity) + QStringLiteral(" · ") + said.about +
                QStringLiteral(": ") + said.what + u' ' + said.remedy + u'\n';
        if (!said.source.isEmpty()) text += QStringLiteral("    ") + said.source + u'\n';
        if (finding.overruled_because) {
            text += tr("    Set aside because: %1\n")
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
    text += tr("Readiness: %1 stop, %2 care, %3 note, %4 set aside\n")
                .arg(plan.readiness.stops)
                .arg(plan.readiness.cautions)
                .arg(plan.readiness.notes)
                .arg(plan.readiness.overruled);
    text += tr("Deepest %1, %2 there (surface %3); planned %4\n\n")
                .arg(leadline::text(place.deepest, units),
                     leadline::text(place.bottom_pressure, units),
                     leadline::text(place.surface_pressure, units),
                     leadline::text(duration(session.profile)));
    text += groups_text(session, plan, units) + u'\n';

    std::vector<QStringList> rows{{tr("Guest"), tr("RMV"), tr("Start"), tr("Turn"), tr("Leave"),
                                   tr("Signal"), tr("End"), tr("Reserve after")}};
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
    text += columns(rows) + u'\n' + findings_text(session, plan.findings, units);
    text += tr("\nEstimates for planning, on the side of more air used. The gauge, the guest's "
               "signal and the instructor decide.\n");
    return text;
}

QString review_text(const Session& session, const Review& review, UnitSystem units) {
    std::vector<QStringList> rows{{tr("Guest"), tr("Time"), tr("Deepest"), tr("End"),
                                   tr("Planned end"), tr("RMV planned"), tr("RMV actual")}};
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
