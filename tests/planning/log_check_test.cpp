// SPDX-License-Identifier: GPL-3.0-or-later
// check(log, session): every error it can give, and the nearest log it lets pass.
#include <cmath>
#include <functional>
#include <limits>

#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

struct LogCase {
    std::string what;
    ErrorCode code{};
    std::string place;
    std::function<void(DiveLog&)> broken;
    std::function<void(DiveLog&)> neighbour;
};

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

std::vector<LogCase> whole_log_cases() {
    const auto out_of_range = ErrorCode::out_of_range;
    return {
        {"TimeInLow", out_of_range, "/log/time_in", [](DiveLog& l) { l.time_in = TimeOfDay{-1}; },
         [](DiveLog& l) { l.time_in = TimeOfDay{0}; }},
        {"TimeInHigh", out_of_range, "/log/time_in", [](DiveLog& l) { l.time_in = TimeOfDay{1440}; },
         [](DiveLog& l) { l.time_in = l.time_out = TimeOfDay{1439}; }},
        {"TimeOutHigh", out_of_range, "/log/time_out",
         [](DiveLog& l) { l.time_out = TimeOfDay{1440}; },
         [](DiveLog& l) { l.time_out = TimeOfDay{1439}; }},
        {"OutBeforeIn", ErrorCode::ends_before_start, "/log/time_out",
         [](DiveLog& l) { l.time_out = TimeOfDay{l.time_in.minutes_after_midnight - 1}; },
         [](DiveLog& l) { l.time_out = l.time_in; }},
        {"HeadsInLow", out_of_range, "/log/heads_in", [](DiveLog& l) { l.heads_in = -1; },
         [](DiveLog& l) { l.heads_in = 0; }},
        {"HeadsInHigh", out_of_range, "/log/heads_in", [](DiveLog& l) { l.heads_in = 501; },
         [](DiveLog& l) { l.heads_in = 500; }},
        {"HeadsOutLow", out_of_range, "/log/heads_out", [](DiveLog& l) { l.heads_out = -1; },
         [](DiveLog& l) { l.heads_out = 0; }},
        {"HeadsOutHigh", out_of_range, "/log/heads_out", [](DiveLog& l) { l.heads_out = 501; },
         [](DiveLog& l) { l.heads_out = 500; }},
        {"UnknownGuest", ErrorCode::unknown_reference, "/log/divers/1/guest",
         [](DiveLog& l) { l.divers[1].guest = GuestId("guest-9"); }, [](DiveLog&) {}},
        {"GuestTwice", ErrorCode::duplicate_id, "/log/divers/1/guest",
         [](DiveLog& l) { l.divers[1].guest = first_guest; },
         [](DiveLog& l) { l.divers.pop_back(); }},
    };
}

std::vector<LogCase> diver_cases() {
    const auto out_of_range = ErrorCode::out_of_range;
    const std::string start = "/log/divers/0/start_pressure_bar";
    const std::string end = "/log/divers/0/end_pressure_bar";
    const std::string minutes = "/log/divers/0/duration_min";
    return {
        {"StartLow", out_of_range, start, [](DiveLog& l) { l.divers[0].start_pressure = Bars(-0.1); },
         [](DiveLog& l) { l.divers[0].start_pressure = l.divers[0].end_pressure = Bars(0.0); }},
        {"StartNotANumber", out_of_range, start,
         [](DiveLog& l) { l.divers[0].start_pressure = Bars(no_number); }, [](DiveLog&) {}},
        {"StartOverfilled", ErrorCode::overfilled_cylinder, start,
         [](DiveLog& l) { l.divers[0].start_pressure = Bars(260.0); },
         [](DiveLog& l) { l.divers[0].start_pressure = Bars(232.0); }},
        {"EndLow", out_of_range, end, [](DiveLog& l) { l.divers[0].end_pressure = Bars(-0.1); },
         [](DiveLog& l) { l.divers[0].end_pressure = Bars(0.0); }},
        {"EndNotANumber", out_of_range, end,
         [](DiveLog& l) { l.divers[0].end_pressure = Bars(no_number); }, [](DiveLog&) {}},
        {"NoteLong", ErrorCode::bad_text, "/log/divers/0/note",
         [](DiveLog& l) { l.divers[0].note = std::string(2001, 'x'); },
         [](DiveLog& l) { l.divers[0].note = std::string(2000, 'x'); }},
        {"LogNoteLong", ErrorCode::bad_text, "/log/note",
         [](DiveLog& l) { l.note = std::string(2001, 'x'); },
         [](DiveLog& l) { l.note = std::string(2000, 'x'); }},
        {"EndAboveStart", ErrorCode::ends_at_higher_pressure, end,
         [](DiveLog& l) { l.divers[0].end_pressure = l.divers[0].start_pressure + Bars(1.0); },
         [](DiveLog& l) { l.divers[0].end_pressure = l.divers[0].start_pressure; }},
        {"DurationLow", out_of_range, minutes,
         [](DiveLog& l) { l.divers[0].duration = Minutes(-0.1); },
         [](DiveLog& l) { l.divers[0].duration = Minutes(0.0); }},
        {"DurationHigh", out_of_range, minutes,
         [](DiveLog& l) { l.divers[0].duration = Minutes(240.1); },
         [](DiveLog& l) { l.divers[0].duration = Minutes(240.0); }},
        {"DurationNotANumber", out_of_range, minutes,
         [](DiveLog& l) { l.divers[0].duration = Minutes(no_number); }, [](DiveLog&) {}},
    };
}

std::vector<LogCase> sample_cases() {
    const auto out_of_range = ErrorCode::out_of_range;
    const std::string sample = "/log/divers/0/samples/";
    return {
        {"SampleTimeLow", out_of_range, sample + "0/0",
         [](DiveLog& l) { l.divers[0].samples[0].time = Minutes(-1.0); },
         [](DiveLog& l) { l.divers[0].samples[0].time = Minutes(0.0); }},
        {"SampleTimeHigh", out_of_range, sample + "5/0",
         [](DiveLog& l) { l.divers[0].samples[5].time = Minutes(240.1); },
         [](DiveLog& l) { l.divers[0].samples[5].time = Minutes(240.0); }},
        {"SampleDepthLow", out_of_range, sample + "2/1",
         [](DiveLog& l) { l.divers[0].samples[2].depth = meters(-0.1); },
         [](DiveLog& l) { l.divers[0].samples[2].depth = meters(0.0); }},
        {"SampleDepthHigh", out_of_range, sample + "2/1",
         [](DiveLog& l) { l.divers[0].samples[2].depth = meters(60.1); },
         [](DiveLog& l) { l.divers[0].samples[2].depth = meters(60.0); }},
        {"SampleDepthNotANumber", out_of_range, sample + "2/1",
         [](DiveLog& l) { l.divers[0].samples[2].depth = meters(no_number); }, [](DiveLog&) {}},
        {"SamplesAtOneTime", ErrorCode::time_not_increasing, sample + "3/0",
         [](DiveLog& l) { l.divers[0].samples[3].time = l.divers[0].samples[2].time; },
         [](DiveLog& l) {
             l.divers[0].samples[3].time = l.divers[0].samples[2].time + Minutes(0.01);
         }},
    };
}

std::vector<LogCase> log_cases() {
    std::vector<LogCase> all;
    for (const auto& part : {whole_log_cases(), diver_cases(), sample_cases()}) {
        all.insert(all.end(), part.begin(), part.end());
    }
    return all;
}

class LogCheck : public testing::TestWithParam<LogCase> {};

TEST_P(LogCheck, RefusesWhatIsWrongAndNamesThePlace) {
    const LogCase& one = GetParam();
    Scene scene = sound_scene_with_log();
    one.broken(*scene.log);
    const Result<Done> refused = check(*scene.log, scene.session);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, one.code);
    EXPECT_EQ(refused.error().place, one.place);
    const Result<Review> reviewed =
        review(scene.session, plan_of(scene), *scene.log, scene.rules);
    ASSERT_FALSE(reviewed);
    EXPECT_EQ(reviewed.error(), refused.error());

    Scene beside = sound_scene_with_log();
    one.neighbour(*beside.log);
    const Result<Done> accepted = check(*beside.log, beside.session);
    EXPECT_TRUE(accepted) << accepted.error().place << " " << accepted.error().given;
}

INSTANTIATE_TEST_SUITE_P(cases, LogCheck, testing::ValuesIn(log_cases()),
                         [](const auto& tested) { return tested.param.what; });

TEST(LogCheckOfStart, LetsAFullCylinderReadMoreInWarmWater) {
    Scene scene = sound_scene();
    scene.session.conditions.water_temperature = celsius(30.0);
    Cylinder& cylinder = *guest_of(scene).kit.cylinder;
    cylinder.fill_pressure = Bars(232.0);
    cylinder.fill_temperature = celsius(15.0);
    scene.log = log_as_planned(scene.session, plan_of(scene));
    ASSERT_GT(scene.log->divers[0].start_pressure.value(), 240.0);
    EXPECT_TRUE(check(*scene.log, scene.session));
    scene.log->divers[0].start_pressure = Bars(260.0);  // more than warmth explains
    EXPECT_FALSE(check(*scene.log, scene.session));
}

TEST(LogCheckOfStart, LetsEveryPlannedStartBeLogged) {
    Scene scene = sound_scene();
    for (const double water : {-2.0, 4.0, 15.0, 24.0, 36.0}) {
        for (const double fill : {-20.0, 5.0, 15.0, 40.0, 70.0}) {
            for (const CylinderType& type : cylinder_types()) {
                scene.session.conditions.water_temperature = celsius(water);
                guest_of(scene).kit.cylinder =
                    Cylinder{type.id, type.working_pressure, celsius(fill)};
                const DiveLog log = log_as_planned(scene.session, plan_of(scene));
                const Result<Done> checked = check(log, scene.session);
                EXPECT_TRUE(checked) << water << " " << fill << " " << type.id.text << " "
                                     << checked.error().given << " " << checked.error().allowed;
            }
        }
    }
}

TEST(LogCheckOfStart, HasACeilingWithoutACylinder) {
    Scene scene = sound_scene_with_log();
    guest_of(scene).kit.cylinder.reset();
    scene.log->divers[0].start_pressure = Bars(300.0);
    EXPECT_TRUE(check(*scene.log, scene.session));
    scene.log->divers[0].start_pressure = Bars(400.0);
    EXPECT_FALSE(check(*scene.log, scene.session));
}

TEST(LogLookup, FindsAGuestsEntry) {
    const Scene scene = sound_scene_with_log();
    EXPECT_EQ(find_log(*scene.log, second_guest), &scene.log->divers[1]);
    EXPECT_EQ(find_log(*scene.log, GuestId("guest-9")), nullptr);
}

}  // namespace
}  // namespace leadline
