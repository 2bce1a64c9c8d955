// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/briefing.h"

#include <gmock/gmock.h>

#include "core/planning/session.h"

namespace leadline {
namespace {


TEST(Briefing, KeepsUnderstoodSignalsOnceAndInOrder) {
    BriefingCheck check;
    for (const HandSignal one : {HandSignal::up, HandSignal::ok, HandSignal::up}) {
        set_understood(check, one, true);
    }
    EXPECT_THAT(check.understood, testing::ElementsAre(HandSignal::ok, HandSignal::up));
    EXPECT_TRUE(is_understood(check, HandSignal::up));
    set_understood(check, HandSignal::up, false);
    set_understood(check, HandSignal::cold, false);
    EXPECT_THAT(check.understood, testing::ElementsAre(HandSignal::ok));
    EXPECT_FALSE(is_understood(check, HandSignal::up));
}

TEST(Briefing, StandardSkillsAreAllOnce) {
    const std::vector<Skill> skills = standard_skills();
    ASSERT_EQ(skills.size(), static_cast<std::size_t>(skill_count));
    EXPECT_EQ(skills.front(), Skill::breathe_from_mouthpiece);
    EXPECT_EQ(skills.back(), Skill::float_at_surface);
}

TEST(Briefing, ASkillTwiceIsRefused) {
    Session session;
    session.profile = {{{Minutes(0.0), Depth(Meters(0.0)), Phase::surface},
                        {Minutes(2.0), Depth(Meters(3.0)), Phase::descent},
                        {Minutes(9.0), Depth(Meters(0.0)), Phase::ascent}}};
    ASSERT_TRUE(check(session).has_value());
    session.skills = {Skill::clear_mask, Skill::share_air, Skill::clear_mask};
    const Result<Done> checked = check(session);
    ASSERT_FALSE(checked.has_value());
    EXPECT_EQ(checked.error().code, ErrorCode::duplicate_id);
    EXPECT_EQ(checked.error().place, "/skills/2");
}

}  // namespace
}  // namespace leadline
