// SPDX-License-Identifier: GPL-3.0-or-later
// check(session): every error it can give, and the nearest session it lets pass.
#include <functional>
#include <limits>

#include "tests/planning/finding_cases.h"

namespace leadline {
namespace {

struct CheckCase {
    std::string what;
    ErrorCode code{};
    std::string place;
    std::function<void(Session&)> broken;
    std::function<void(Session&)> neighbour;
};

/// A number in range at both ends and refused just outside.
CheckCase range(const std::string& what, const std::string& place,
                const std::function<void(Session&, double)>& set, double outside, double inside) {
    return {what, ErrorCode::out_of_range, place,
            [set, outside](Session& session) { set(session, outside); },
            [set, inside](Session& session) { set(session, inside); }};
}

void add_range(std::vector<CheckCase>& cases, const std::string& what, const std::string& place,
               double least, double most, double step,
               const std::function<void(Session&, double)>& set) {
    cases.push_back(range(what + "Low", place, set, least - step, least));
    cases.push_back(range(what + "High", place, set, most + step, most));
    cases.push_back(range(what + "NotANumber", place, set,
                          std::numeric_limits<double>::quiet_NaN(), (least + most) / 2.0));
}

void add_place_ranges(std::vector<CheckCase>& cases) {
    add_range(cases, "Altitude", "/site/altitude_m", -430, 5000, 0.5,
              [](Session& s, double v) { s.site.altitude = Altitude(Meters(v)); });
    add_range(cases, "Latitude", "/site/latitude_deg", -90, 90, 0.5,
              [](Session& s, double v) { s.site.latitude = Degrees(v); });
    add_range(cases, "Salinity", "/site/salinity", 0, 42, 0.5,
              [](Session& s, double v) { s.site.salinity.value = v; });
    add_range(cases, "Bottom", "/site/bottom_depth_m", 0, 200, 0.5,
              [](Session& s, double v) { s.site.bottom_depth = meters(v); });
    add_range(cases, "Water", "/conditions/water_temperature_c", -2, 36, 0.5,
              [](Session& s, double v) { s.conditions.water_temperature = celsius(v); });
    add_range(cases, "Air", "/conditions/air_temperature_c", -20, 50, 0.5,
              [](Session& s, double v) { s.conditions.air_temperature = celsius(v); });
    add_range(cases, "Barometer", "/conditions/barometer_hpa", 500, 1100, 0.5,
              [](Session& s, double v) { s.conditions.barometer = Pascals(v * 100.0); });
    add_range(cases, "Visibility", "/conditions/visibility_m", 0, 100, 0.5,
              [](Session& s, double v) { s.conditions.visibility = Meters(v); });
    add_range(cases, "Waves", "/conditions/wave_height_m", 0, 10, 0.5,
              [](Session& s, double v) { s.conditions.wave_height = Meters(v); });
}

void add_guest_ranges(std::vector<CheckCase>& cases) {
    add_range(cases, "Mass", "/guests/1/mass_kg", 15, 250, 0.5,
              [](Session& s, double v) { s.guests[1].body_mass = Kilograms(v); });
    add_range(cases, "Height", "/guests/1/height_cm", 80, 250, 0.5,
              [](Session& s, double v) { s.guests[1].body_height = Meters(v / 100.0); });
    add_range(cases, "Shoe", "/guests/1/shoe_size_eu", 20, 55, 0.5,
              [](Session& s, double v) { s.guests[1].shoe_size_eu = v; });
    add_range(cases, "Rmv", "/guests/1/rmv_l_per_min", 5, 100, 0.5,
              [](Session& s, double v) { s.guests[1].measured_rmv = LitersPerMinute(v); });
    add_range(cases, "Lead", "/guests/1/kit/lead_kg", 0, 25, 0.5,
              [](Session& s, double v) { s.guests[1].kit.lead = Kilograms(v); });
    add_range(cases, "FillTemperature", "/guests/1/kit/cylinder/fill_temperature_c", -20, 70, 0.5,
              [](Session& s, double v) { s.guests[1].kit.cylinder->fill_temperature = celsius(v); });
    cases.push_back(range(
        "FillLow", "/guests/1/kit/cylinder/fill_pressure_bar",
        [](Session& s, double v) { s.guests[1].kit.cylinder->fill_pressure = Bars(v); }, -1.0, 0.0));
}

EarlierDive dive_at(Date date, int hour, int minute) {
    return {date, TimeOfDay{hour * 60 + minute}, meters(9.0), Minutes(40.0), 1};
}

/// One field of the first of two earlier dives.
void add_dive_ranges(std::vector<CheckCase>& cases) {
    const auto add = [&](const std::string& what, const char* field, double least, double most,
                         double step, const std::function<void(EarlierDive&, double)>& set) {
        add_range(cases, what, std::string("/staff/0/earlier_dives/1/") + field, least, most, step,
                  [set](Session& s, double value) {
                      s.staff[0].earlier_dives = {dive_at(day(2026, 7, 2), 9, 0),
                                                  dive_at(day(2026, 7, 3), 9, 0)};
                      set(s.staff[0].earlier_dives[1], value);
                  });
    };
    add("DiveDepth", "deepest_m", 0.001, 60.0, 0.001,
        [](EarlierDive& dive, double value) { dive.deepest = meters(value); });
    add("DiveMinutes", "duration_min", 1.0, 240.0, 0.001,
        [](EarlierDive& dive, double value) { dive.duration = Minutes(value); });
}

/// A whole number in range at both ends.
void add_count(std::vector<CheckCase>& cases, const std::string& what, const std::string& place,
               int least, int most, const std::function<void(Session&, int)>& set) {
    const auto with = [set](int value) {
        return [set, value](Session& session) { set(session, value); };
    };
    cases.push_back(
        {what + "Low", ErrorCode::out_of_range, place, with(least - 1), with(least)});
    cases.push_back({what + "High", ErrorCode::out_of_range, place, with(most + 1), with(most)});
}

void add_counts(std::vector<CheckCase>& cases) {
    add_count(cases, "DivesBefore", "/guests/1/dives_before", 0, 20000,
              [](Session& s, int v) { s.guests[1].dives_before = v; });
    add_count(cases, "ExtraAscents", "/staff/0/extra_ascents", 0, 20,
              [](Session& s, int v) { s.staff[0].extra_ascents = v; });
    add_count(cases, "DiveAscents", "/staff/0/earlier_dives/0/ascents", 1, 30,
              [](Session& s, int v) {
                  s.staff[0].earlier_dives = {dive_at(day(2026, 7, 3), 9, 0)};
                  s.staff[0].earlier_dives[0].ascents = v;
              });
    add_count(cases, "DiveStart", "/staff/0/earlier_dives/0/start", 0, 1439,
              [](Session& s, int v) {
                  s.staff[0].earlier_dives = {dive_at(day(2026, 7, 3), 0, v)};
              });
    add_count(cases, "StockCylinders", "/stock/cylinders/0/count", 0, 1000,
              [](Session& s, int v) { s.stock.cylinders = {{CylinderTypeId("steel-12"), v}}; });
    add_count(cases, "StockSuits", "/stock/suits/0/count", 0, 1000,
              [](Session& s, int v) { s.stock.suits = {{"7 mm M", v}}; });
}

/// Earlier dives, one of which is changed, against the session at 10:30 on 4 July 2026.
void add_dive_order(std::vector<CheckCase>& cases) {
    const auto dives = [](const std::vector<EarlierDive>& list) {
        return [list](Session& s) { s.staff[0].earlier_dives = list; };
    };
    const Date today = day(2026, 7, 4);
    const std::string list = "/staff/0/earlier_dives";
    cases.push_back({"DiveDate", ErrorCode::bad_date, list + "/0/date",
                     dives({dive_at(day(2026, 6, 31), 9, 0)}),
                     dives({dive_at(day(2026, 6, 30), 9, 0)})});
    cases.push_back({"DiveTomorrow", ErrorCode::out_of_range, list + "/0/date",
                     dives({dive_at(day(2026, 7, 5), 9, 0)}), dives({dive_at(today, 9, 0)})});
    cases.push_back({"DiveNotOver", ErrorCode::out_of_range, list + "/0/start",
                     dives({dive_at(today, 9, 51)}), dives({dive_at(today, 9, 50)})});
    cases.push_back({"DiveTooOld", ErrorCode::out_of_range, list + "/0/date",
                     dives({dive_at(day(2025, 7, 2), 9, 0)}),
                     dives({dive_at(day(2025, 7, 3), 9, 0)})});
    cases.push_back({"DiveDuringAnother", ErrorCode::times_overlap, list + "/0/start",
                     dives({dive_at(today, 8, 39), dive_at(today, 8, 0)}),
                     dives({dive_at(today, 8, 40), dive_at(today, 8, 0)})});
    cases.push_back({"DiveTwice", ErrorCode::times_overlap, list + "/1/start",
                     dives({dive_at(today, 8, 0), dive_at(today, 8, 0)}),
                     dives({dive_at(today, 8, 0), dive_at(day(2026, 7, 3), 8, 0)})});
    cases.push_back({"DivePastMidnight", ErrorCode::times_overlap, list + "/1/start",
                     dives({dive_at(day(2026, 7, 3), 23, 50), dive_at(today, 0, 29)}),
                     dives({dive_at(day(2026, 7, 3), 23, 50), dive_at(today, 0, 30)})});
    std::vector<EarlierDive> many;
    for (unsigned i = 0; i < most_earlier_dives; ++i) {
        many.push_back(dive_at(day(2026, 1u + i / 25, 1u + i % 25), 9, 0));
    }
    std::vector<EarlierDive> one_more = many;
    one_more.push_back(dive_at(today, 9, 0));
    cases.push_back({"DivesTooMany", ErrorCode::bad_count, list, dives(one_more), dives(many)});
}

void add_stock(std::vector<CheckCase>& cases) {
    const auto cylinders = [](const std::vector<CylinderStock>& list) {
        return [list](Session& s) { s.stock.cylinders = list; };
    };
    const auto suits = [](const std::vector<SuitStock>& list) {
        return [list](Session& s) { s.stock.suits = list; };
    };
    const auto lead = [](const std::vector<double>& list) {
        return [list](Session& s) {
            for (const double size : list) s.stock.lead_pieces.emplace_back(size);
        };
    };
    add_range(cases, "LeadPiece", "/stock/lead_pieces_kg/0", 0.1, 10.0, 0.01,
              [](Session& s, double v) { s.stock.lead_pieces = {Kilograms(v)}; });
    cases.push_back({"StockUnknownCylinder", ErrorCode::unknown_reference,
                     "/stock/cylinders/0/type", cylinders({{CylinderTypeId("tin-3"), 1}}),
                     cylinders({{CylinderTypeId("steel-15"), 1}})});
    cases.push_back({"StockCylinderTwice", ErrorCode::duplicate_id, "/stock/cylinders/1/type",
                     cylinders({{CylinderTypeId("steel-15"), 1}, {CylinderTypeId("steel-15"), 1}}),
                     cylinders({{CylinderTypeId("steel-15"), 1}, {CylinderTypeId("steel-8"), 1}})});
    cases.push_back({"StockSuitTwice", ErrorCode::duplicate_id, "/stock/suits/1/suit",
                     suits({{"7 mm M", 1}, {"7 mm M", 2}}), suits({{"7 mm M", 1}, {"7 mm L", 2}})});
    cases.push_back({"StockSuitEmpty", ErrorCode::bad_text, "/stock/suits/0/suit",
                     suits({{"", 1}}), suits({{"M", 1}})});
    cases.push_back({"StockSuitLong", ErrorCode::bad_text, "/stock/suits/0/suit",
                     suits({{std::string(101, 's'), 1}}), suits({{std::string(100, 's'), 1}})});
    std::vector<SuitStock> many;
    for (int i = 0; i < most_suit_kinds; ++i) many.push_back({"suit " + std::to_string(i), 1});
    std::vector<SuitStock> one_more = many;
    one_more.push_back({"one more", 1});
    cases.push_back({"StockSuitsMany", ErrorCode::bad_count, "/stock/suits", suits(one_more),
                     suits(many)});
    cases.push_back({"LeadSizeTwice", ErrorCode::duplicate_id, "/stock/lead_pieces_kg/2",
                     lead({1.0, 2.0, 1.0009}), lead({1.0, 2.0, 1.0011})});
    std::vector<double> sizes;
    for (int i = 1; i <= most_lead_sizes; ++i) sizes.push_back(0.25 * i);
    std::vector<double> one_size_more = sizes;
    one_size_more.push_back(9.0);
    cases.push_back({"LeadSizesMany", ErrorCode::bad_count, "/stock/lead_pieces_kg",
                     lead(one_size_more), lead(sizes)});
}

void add_times(std::vector<CheckCase>& cases) {
    const auto add = [&](const std::string& what, const std::string& place,
                         TimeOfDay Session::*time) {
        for (const auto& [outside, inside] : {std::pair(-1, 0), std::pair(1440, 1439)}) {
            cases.push_back({what + (outside < 0 ? "Low" : "High"), ErrorCode::out_of_range, place,
                             [time, outside](Session& s) { s.*time = TimeOfDay{outside}; },
                             [time, inside](Session& s) { s.*time = TimeOfDay{inside}; }});
        }
    };
    add("MeetingTime", "/meeting_time", &Session::meeting_time);
    add("DiveTime", "/dive_time", &Session::dive_time);
}

void add_ids(std::vector<CheckCase>& cases) {
    const auto nothing = [](Session&) {};
    cases.push_back({"GuestIdTwice", ErrorCode::duplicate_id, "/guests/1/id",
                     [](Session& s) { s.guests[1].id = first_guest; }, nothing});
    cases.push_back({"GuestIdEmpty", ErrorCode::bad_text, "/guests/1/id",
                     [](Session& s) { s.guests[1].id = GuestId(); }, nothing});
    cases.push_back({"GroupIdTwice", ErrorCode::duplicate_id, "/groups/1/id",
                     [](Session& s) { s.groups.push_back(s.groups[0]); },
                     [](Session& s) {
                         s.groups.push_back(s.groups[0]);
                         s.groups[1].id = GroupId("red");
                     }});
    cases.push_back({"StaffIdTwice", ErrorCode::duplicate_id, "/staff/1/id",
                     [](Session& s) { s.staff.push_back(s.staff[0]); },
                     [](Session& s) {
                         s.staff.push_back(s.staff[0]);
                         s.staff[1].id = StaffId("staff-2");
                     }});
    cases.push_back({"GuestsGroup", ErrorCode::unknown_reference, "/guests/1/group",
                     [](Session& s) { s.guests[1].group = GroupId("green"); },
                     [](Session& s) { s.guests[1].group = GroupId(); }});
    cases.push_back({"Instructor", ErrorCode::unknown_reference, "/groups/0/instructor",
                     [](Session& s) { s.groups[0].instructor = StaffId("staff-9"); },
                     [](Session& s) { s.groups[0].instructor = StaffId(); }});
    cases.push_back({"Assistant", ErrorCode::unknown_reference, "/groups/0/assistant",
                     [](Session& s) { s.groups[0].assistant = StaffId("staff-9"); }, nothing});
    cases.push_back({"Leader", ErrorCode::unknown_reference, "/leader",
                     [](Session& s) { s.leader = StaffId("staff-9"); },
                     [](Session& s) { s.leader = StaffId(); }});
}

void add_texts_and_dates(std::vector<CheckCase>& cases) {
    cases.push_back({"NameEmpty", ErrorCode::bad_text, "/guests/1/name",
                     [](Session& s) { s.guests[1].name.clear(); },
                     [](Session& s) { s.guests[1].name = "O"; }});
    // 200 characters of up to four bytes each.
    cases.push_back({"NameLong", ErrorCode::bad_text, "/guests/1/name",
                     [](Session& s) { s.guests[1].name = std::string(201, 'x'); },
                     [](Session& s) { s.guests[1].name = std::string(200, 'x'); }});
    cases.push_back({"Date", ErrorCode::bad_date, "/date",
                     [](Session& s) { s.date = day(2026, 2, 30); },
                     [](Session& s) { s.date = day(2026, 2, 28); }});
    cases.push_back({"BirthDate", ErrorCode::bad_date, "/guests/1/birth_date",
                     [](Session& s) { s.guests[1].birth_date = day(1990, 2, 29); },
                     [](Session& s) { s.guests[1].birth_date = day(1992, 2, 29); }});
    cases.push_back({"BirthInTheFuture", ErrorCode::birth_date_in_future, "/guests/1/birth_date",
                     [](Session& s) { s.guests[1].birth_date = day(2026, 7, 5); },
                     [](Session& s) { s.guests[1].birth_date = day(2026, 7, 4); }});
    cases.push_back({"OverruleWithoutReason", ErrorCode::bad_text, "/overrules/0/reason",
                     [](Session& s) { s.overrules = {{"kit_missing:guest-1", "", "Ruta"}}; },
                     [](Session& s) { s.overrules = {{"kit_missing:guest-1", "own", "Ruta"}}; }});
    cases.push_back({"OverruleOfSpaces", ErrorCode::bad_text, "/overrules/0/reason",
                     [](Session& s) { s.overrules = {{"kit_missing:guest-1", " \t ", "Ruta"}}; },
                     [](Session& s) { s.overrules = {{"kit_missing:guest-1", " a ", "Ruta"}}; }});
}

void add_cylinders_and_profile(std::vector<CheckCase>& cases) {
    cases.push_back({"CylinderType", ErrorCode::unknown_reference, "/guests/0/kit/cylinder/type",
                     [](Session& s) { s.guests[0].kit.cylinder->type = CylinderTypeId("tin-3"); },
                     [](Session& s) { s.guests[0].kit.cylinder->type = CylinderTypeId("steel-15"); }});
    cases.push_back(
        {"Overfilled", ErrorCode::overfilled_cylinder, "/guests/0/kit/cylinder/fill_pressure_bar",
         [](Session& s) { s.guests[0].kit.cylinder->fill_pressure = Bars(232.1); },
         [](Session& s) { s.guests[0].kit.cylinder->fill_pressure = Bars(232.0); }});
    cases.push_back({"StaffOverfilled", ErrorCode::overfilled_cylinder,
                     "/staff/0/cylinder/fill_pressure_bar",
                     [](Session& s) { s.staff[0].cylinder->fill_pressure = Bars(232.1); },
                     [](Session& s) { s.staff[0].cylinder->fill_pressure = Bars(232.0); }});
    cases.push_back({"Profile", ErrorCode::profile_not_closed, "/profile/points/5/depth_m",
                     [](Session& s) { s.profile.points.back().depth = meters(1.0); },
                     [](Session&) {}});
    cases.push_back({"NoProfile", ErrorCode::bad_count, "/profile/points",
                     [](Session& s) { s.profile.points.clear(); }, [](Session&) {}});
}

std::vector<CheckCase> session_cases() {
    std::vector<CheckCase> all;
    add_place_ranges(all);
    add_guest_ranges(all);
    add_dive_ranges(all);
    add_counts(all);
    add_dive_order(all);
    add_stock(all);
    add_times(all);
    add_ids(all);
    add_texts_and_dates(all);
    add_cylinders_and_profile(all);
    return all;
}

class SessionCheck : public testing::TestWithParam<CheckCase> {};

TEST_P(SessionCheck, RefusesWhatIsWrongAndNamesThePlace) {
    const CheckCase& one = GetParam();
    Session broken = sound_scene().session;
    one.broken(broken);
    const Result<Done> refused = check(broken);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, one.code);
    EXPECT_EQ(refused.error().place, one.place);

    // Nothing is planned that has not passed the check.
    const Result<Plan> planned = plan(broken, test_rules());
    ASSERT_FALSE(planned);
    EXPECT_EQ(planned.error(), refused.error());

    Session neighbour = sound_scene().session;
    one.neighbour(neighbour);
    const Result<Done> accepted = check(neighbour);
    EXPECT_TRUE(accepted) << accepted.error().place << " " << accepted.error().given;
}

INSTANTIATE_TEST_SUITE_P(cases, SessionCheck, testing::ValuesIn(session_cases()),
                         [](const auto& tested) { return tested.param.what; });

TEST(SessionIds, AreNewAndUnique) {
    Session session = sound_scene().session;
    for (int i = 0; i < 20; ++i) {
        Guest guest;
        guest.id = next_guest_id(session);
        guest.name = "New";
        EXPECT_EQ(find_guest(session, guest.id), nullptr);
        session.guests.push_back(guest);
        session.groups.push_back(Group{next_group_id(session), "New", {}, {}});
        StaffMember member;
        member.id = next_staff_id(session);
        session.staff.push_back(member);
    }
    EXPECT_TRUE(check(session));
    // Also after one in the middle has gone.
    session.guests.erase(session.guests.begin() + 5);
    EXPECT_EQ(find_guest(session, next_guest_id(session)), nullptr);
}

TEST(MergedDives, TakeEachDiveOnce) {
    const Date today = day(2026, 7, 4);
    std::vector<EarlierDive> dives{dive_at(today, 9, 0)};
    // The same dive, one that began during it, one that ended during it, one around it.
    EarlierDive around = dive_at(today, 8, 50);
    around.duration = Minutes(120.0);
    EXPECT_EQ(merge_dives(dives, {dives[0], dive_at(today, 9, 39), dive_at(today, 8, 21), around}),
              0U);
    EXPECT_EQ(merge_dives(dives, {dive_at(today, 9, 40), dive_at(today, 8, 20),
                                  dive_at(day(2026, 7, 3), 9, 0)}),
              3U);
    EXPECT_EQ(dives.size(), 4U);
    // New ones are also told from one another.
    EXPECT_EQ(merge_dives(dives, {dive_at(today, 6, 0), dive_at(today, 6, 10)}), 1U);
}

TEST(MergedDives, StopAtTheMost) {
    std::vector<EarlierDive> dives;
    std::vector<EarlierDive> many;
    for (unsigned i = 0; i < 120; ++i) {
        many.push_back(dive_at(day(2026, 1u + i / 28, 1u + i % 28), 9, 0));
    }
    EXPECT_EQ(merge_dives(dives, many), static_cast<std::size_t>(most_earlier_dives));
}

TEST(OldDives, AreDroppedAndTheOthersStay) {
    Session session = sound_scene().session;
    session.staff[0].earlier_dives = {dive_at(day(2025, 7, 2), 9, 0),
                                      dive_at(day(2025, 7, 3), 9, 0), dive_at(day(2026, 7, 4), 9, 0)};
    drop_old_dives(session);
    ASSERT_EQ(session.staff[0].earlier_dives.size(), 2U);
    EXPECT_EQ(session.staff[0].earlier_dives[0].date, day(2025, 7, 3));
    EXPECT_TRUE(check(session));
    session.date = day(2028, 2, 29);
    drop_old_dives(session);
    EXPECT_TRUE(session.staff[0].earlier_dives.empty());
}

TEST(SessionLookups, FindById) {
    Session session = sound_scene().session;
    EXPECT_EQ(find_guest(session, second_guest), &session.guests[1]);
    EXPECT_EQ(find_group(session, blue_group), &session.groups[0]);
    EXPECT_EQ(find_staff(session, first_instructor), &session.staff[0]);
    EXPECT_EQ(find_staff(session, StaffId()), nullptr);
    EXPECT_EQ(guests_in(session, blue_group).size(), 2U);
    EXPECT_TRUE(guests_in(session, GroupId("red")).empty());
}

}  // namespace
}  // namespace leadline
