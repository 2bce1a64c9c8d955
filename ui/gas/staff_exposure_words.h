// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/planning/plan.h"
#include "ui/gas/gas_words.h"

namespace leadline {

class SessionDocument;

/// The exposure of a member of staff, or nullptr.
const StaffExposure* find_exposure(const Plan& plan, const StaffId& staff);
/// The finding about a member of staff's exposure of this kind, open or set aside, or nullptr.
const Finding* exposure_finding(const Plan& plan, FindingCode code, const StaffId& staff);

/// How a member of staff stands to the limits.
struct StaffVerdict {
    std::optional<Severity> severity;  ///< of the gravest open finding
    QString word;                      ///< "Within limits", "Care: over a limit"
    QString full;                      ///< what is wrong and what to do
};
StaffVerdict staff_verdict(const SessionDocument& document, const StaffExposure& exposure);

/// A long time as people say it, rounded down: "52 min", "3 h 20 min", "27 h", "3 days".
QString long_time_text(Minutes time);
/// "No record" where there is none.
QString surface_interval_text(const StaffExposure& exposure);
/// "143 min", "over 24 h"; rounded down.
QString no_stop_text(const StaffExposure& exposure);
/// "34 %", rounded up.
QString tissue_share_text(const StaffExposure& exposure);
/// "24 h".
QString no_fly_text(const StaffExposure& exposure);

/// Who is over a limit, who within, and of whom no dive is on record.
std::vector<GasSentence> staff_answers(const SessionDocument& document);
/// What one's figures follow from (empty id: nobody's), the limits, and the sources.
std::vector<GasSentence> staff_reasons(const SessionDocument& document, const StaffId& staff);

}  // namespace leadline
