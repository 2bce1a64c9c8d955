// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/chart_content.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/gas/gas_words.h"
#include "ui/words/guest_name.h"
#include "ui/words/lever_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class ChartTexts {
    Q_DECLARE_TR_FUNCTIONS(GasTab)
};

QString whole_name(const Session& session, const GuestId& id) {
    const Guest* guest = find_guest(session, id);
    return guest != nullptr ? guest_name(guest->name) : QString();
}

void add_bands(std::vector<PressureChart::Band>& bands, const Session& session,
               const GroupForecast& forecast, bool name_group) {
    const bool alone = forecast.guests.size() == 1;
    if (!alone) {
        PressureChart::Band first;
        const QString likely = whole_name(session, forecast.likely_first);
        first.name = name_group ? ChartTexts::tr("First of %1, likely %2")
                                      .arg(group_label(session, forecast.group), likely)
                                : ChartTexts::tr("First, likely %1").arg(likely);
        first.reserve = forecast.first_at_reserve;
        first.first = true;
        bands.push_back(first);
    }
    std::vector<PressureChart::Band> members;
    for (const GuestForecast& guest : forecast.guests) {
        members.push_back({guest.guest, whole_name(session, guest.guest), guest.reserve, alone});
    }
    const auto when = [](const PressureChart::Band& band) {
        return band.reserve.middle.value_or(longest_profile).value();
    };
    std::stable_sort(members.begin(), members.end(),
                     [&](const auto& a, const auto& b) { return when(a) < when(b); });
    bands.insert(bands.end(), members.begin(), members.end());
}

}  // namespace

PressureChart::Content chart_content(const SessionDocument& document, const GroupId& group) {
    const Plan& plan = document.plan();
    const Session& session = document.session();
    PressureChart::Content content;
    content.reserve = plan.limits.reserve;
    content.planned_end = duration(session.profile);
    content.units = document.units();
    for (const GuestGas& gas : plan.guests) {
        if (!gas.has_cylinder) continue;
        if (!group.empty() && gas.group != group) continue;
        const GroupGas* group_gas = find_gas(plan, gas.group);
        PressureChart::Line line;
        line.guest = gas.guest;
        line.name = whole_name(session, gas.guest);
        line.curve = gas.curve;
        line.limiting = is_likely_first(plan, gas);
        line.alone = is_alone(plan, gas);
        if (group_gas != nullptr && group_gas->cut_short &&
            group_gas->limiting_guest == gas.guest) {
            line.reserve_met = group_gas->ends_at;
        }
        content.lines.push_back(std::move(line));
    }
    const bool several = group.empty() && session.groups.size() > 1;
    for (const GroupForecast& forecast : plan.forecasts) {
        if (group.empty() || forecast.group == group) {
            add_bands(content.bands, session, forecast, several);
        }
    }
    return content;
}

}  // namespace leadline
