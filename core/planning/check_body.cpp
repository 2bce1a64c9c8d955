// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/checks.h"

namespace leadline {
namespace {

Finding about(const GuestId& guest, FindingCode code, Severity severity,
              std::vector<FindingValue> values) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    finding.subject = guest;
    finding.values = std::move(values);
    return finding;
}

void check_warmth(const CheckContext& context, const GuestWarmth& warmth,
                  std::vector<Finding>& found) {
    if (warmth.gap != WarmthGap::none || !warmth.low) return;
    // The group is on its way up for the last minutes, and a guest who is cold by then is cold in
    // it.
    const Minutes planned = duration(context.session.profile);
    if (*warmth.low < planned) {
        found.push_back(about(warmth.guest, FindingCode::cold_before_end, Severity::caution,
                              {*warmth.low, planned}));
    }
}

void check_lead(const GuestLead& lead, std::vector<Finding>& found) {
    if (lead.gap != LeadGap::none) return;
    if (lead.bcd_cannot_hold_up) {
        found.push_back(about(lead.guest, FindingCode::bcd_cannot_hold, Severity::caution,
                              {lead.carried, lead.bcd_lift}));
    }
    if (lead.cannot_stay_down) {
        found.push_back(about(lead.guest, FindingCode::cannot_stay_down, Severity::caution,
                              {lead.carried, lead.low, lead.high}));
    } else if (lead.carried < lead.low || lead.carried > lead.high) {
        found.push_back(about(lead.guest, FindingCode::lead_outside_range, Severity::note,
                              {lead.carried, lead.low, lead.high}));
    }
}

}  // namespace

std::vector<Finding> check_body(const CheckContext& context,
                                const std::vector<GuestWarmth>& warmths,
                                const std::vector<GuestLead>& leads) {
    std::vector<Finding> found;
    for (const GuestWarmth& warmth : warmths) check_warmth(context, warmth, found);
    for (const GuestLead& lead : leads) check_lead(lead, found);
    return found;
}

}  // namespace leadline
