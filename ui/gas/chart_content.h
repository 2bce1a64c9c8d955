// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gas/pressure_chart.h"

namespace leadline {

class SessionDocument;

/// What the chart shows of a group, or of all when `group` is empty: a line a guest, and under
/// them, group by group, when its first and each of its guests is at the reserve, the earliest on top.
PressureChart::Content chart_content(const SessionDocument& document, const GroupId& group);

}  // namespace leadline
