// SPDX-License-Identifier: GPL-3.0-or-later
// Findings about warmth and lead, from numbers as they would be worked out.
#include "core/planning/checks.h"
#include "tests/planning/scene.h"

namespace leadline {
namespace {

/// The sound scene's dive lasts 30 minutes.
std::vector<Finding> findings(const std::vector<GuestWarmth>& warmths,
                              const std::vector<GuestLead>& leads) {
    const Scene scene = sound_scene();
    const Environment environment;
    const Limits limits;
    return check_body({scene.session, scene.rules, environment, limits}, warmths, leads);
}

GuestWarmth warm_for(double low) {
    GuestWarmth warmth;
    warmth.guest = first_guest;
    warmth.low = Minutes(low);
    return warmth;
}

GuestLead sound_lead() {
    GuestLead lead;
    lead.guest = second_guest;
    lead.low = Kilograms(4.0);
    lead.middle = Kilograms(5.0);
    lead.high = Kilograms(7.0);
    lead.carried = Kilograms(5.0);
    lead.bcd_lift = Kilograms(13.0);
    return lead;
}

TEST(CheckBody, HasNothingToSayOfSoundNumbers) {
    GuestWarmth never_cold;
    never_cold.guest = second_guest;
    EXPECT_EQ(names_of(findings({warm_for(30.0), never_cold}, {sound_lead()})), "");
    EXPECT_EQ(names_of(findings({}, {})), "");
}

TEST(CheckBody, WarnsOfAGuestColdBeforeTheEnd) {
    const std::vector<Finding> found = findings({warm_for(29.9)}, {});
    ASSERT_EQ(names_of(found), "cold_before_end:guest-1");
    EXPECT_EQ(found[0].severity, Severity::caution);
    ASSERT_EQ(found[0].values.size(), 2U);
    EXPECT_EQ(std::get<Minutes>(found[0].values[0]).value(), 29.9);
    EXPECT_EQ(std::get<Minutes>(found[0].values[1]).value(), 30.0);
}

TEST(CheckBody, IsSilentAboutWhatIsNotKnown) {
    GuestWarmth warmth = warm_for(5.0);
    warmth.gap = WarmthGap::suit;
    GuestLead lead = sound_lead();
    lead.gap = LeadGap::suit;
    lead.carried = Kilograms(20.0);
    lead.bcd_cannot_hold_up = true;
    lead.cannot_stay_down = true;
    EXPECT_EQ(names_of(findings({warmth}, {lead})), "");
}

TEST(CheckBody, WarnsOfABcdThatCannotHold) {
    GuestLead lead = sound_lead();
    lead.bcd_cannot_hold_up = true;
    const std::vector<Finding> found = findings({}, {lead});
    ASSERT_EQ(names_of(found), "bcd_cannot_hold:guest-2");
    EXPECT_EQ(found[0].severity, Severity::caution);
    EXPECT_EQ(std::get<Kilograms>(found[0].values.at(0)).value(), 5.0);
    EXPECT_EQ(std::get<Kilograms>(found[0].values.at(1)).value(), 13.0);
}

TEST(CheckBody, WarnsOfAGuestWhoFloats) {
    GuestLead lead = sound_lead();
    lead.cannot_stay_down = true;
    lead.carried = Kilograms(1.0);
    const std::vector<Finding> found = findings({}, {lead});
    // Too little lead is in it: one note is enough.
    EXPECT_EQ(names_of(found), "cannot_stay_down:guest-2");
    for (const Finding& finding : found) {
        EXPECT_EQ(finding.severity, Severity::caution);
        ASSERT_EQ(finding.values.size(), 3U);
        EXPECT_EQ(std::get<Kilograms>(finding.values[0]).value(), 1.0);
        EXPECT_EQ(std::get<Kilograms>(finding.values[1]).value(), 4.0);
        EXPECT_EQ(std::get<Kilograms>(finding.values[2]).value(), 7.0);
    }
}

TEST(CheckBody, NotesLeadOutsideItsRangeOnEitherSide) {
    const auto names = [](double carried) {
        GuestLead lead = sound_lead();
        lead.carried = Kilograms(carried);
        return names_of(findings({}, {lead}));
    };
    EXPECT_EQ(names(3.9), "lead_outside_range:guest-2");
    EXPECT_EQ(names(4.0), "");
    EXPECT_EQ(names(7.0), "");
    EXPECT_EQ(names(7.1), "lead_outside_range:guest-2");
}

}  // namespace
}  // namespace leadline
