// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/session_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>

#include "core/debrief/review.h"
#include "core/files/json_gate.h"
#include "core/files/json_values.h"
#include "core/files/text_file.h"
#include "core/planning/plan.h"
#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;
using testing::HasSubstr;

SessionFile read_back(const SessionFile& file) {
    const Result<SessionFile> read = read_session(write_session(file), session_schema());
    if (!read) {
        ADD_FAILURE() << testing::PrintToString(read.error());
        return {};
    }
    return *read;
}

SessionFile small_session() { return load_session(data_dir() / "small-session.json"); }

/// A session in which no member of any part has the value it would have by default.
SessionFile full_session() {
    SessionFile file = small_session();
    Session& session = file.session;
    session.site.altitude = Altitude(Meters(-12.5));
    session.site.latitude = Degrees(-33.8567);
    session.site.bottom_depth = Depth(Meters(17.25));
    session.site.entry = Entry::pool_steps;
    session.site.meeting_place = "Tor 3 – unter der Brücke";
    session.site.emergency_plan = "first\nsecond\n\tthird";
    session.conditions.barometer = Pascals(101290.0);
    session.conditions.visibility = Meters(7.5);
    session.conditions.current = Current::strong;
    session.conditions.wave_height = Meters(0.4);
    session.staff.push_back(
        {StaffId("staff-2"), "Ana", StaffRole::assistant, {"pt-BR", "fr"}, {}});
    session.staff[0].extra_ascents = 3;
    const Date day{std::chrono::year(2026), std::chrono::month(7), std::chrono::day(10)};
    session.staff[0].earlier_dives = {
        {session.date, TimeOfDay{8 * 60 + 5}, Depth(Meters(7.25)), Minutes(41.5), 4},
        {day, TimeOfDay{14 * 60}, Depth(Meters(18.0)), Minutes(50.0), 1}};
    session.stock = {{{CylinderTypeId("steel-12"), 14}, {CylinderTypeId("steel-8"), 0}},
                     {{"5 mm \"M\"", 6}, {"7 mm – L", 1000}},
                     {Kilograms(0.5), Kilograms(1.0), Kilograms(Pounds(3.0))}};
    session.groups[0].assistant = StaffId("staff-2");
    session.groups.push_back({GroupId("group-2"), "", StaffId(), StaffId()});
    Guest& guest = session.guests[0];
    guest.body_mass = Kilograms(61.5);
    guest.body_height = Meters(1.57);
    guest.shoe_size_eu = 37.5;
    guest.screening = {ScreeningOutcome::physician_required,
                       day,
                       "Leadline 1",
                       "Žofie \"Z\"",
                       true,
                       Date{std::chrono::year(2026), std::chrono::month(2), std::chrono::day(28)},
                       TodayOutcome::with_care,
                       SignatureKind::on_screen};
    guest.guardian_consent = true;
    guest.certified = true;
    guest.breathing = BreathingClass::child;
    guest.dives_before = 0;
    guest.phone = "+00 555 0101";
    guest.email = "rosa@example.org";
    guest.kit.suit = "5 mm \"M\"";
    guest.kit.bcd = "M";
    guest.kit.fins = "40-41";
    guest.kit.regulator = "R4";
    guest.note = "two\nlines";
    session.guests[1].group = GroupId();
    file.log->note = "all well";
    file.log->divers[1].ears_troubled = true;
    file.log->divers[1].note = "left ear";
    return file;
}

class Sample : public testing::TestWithParam<std::filesystem::path> {};

TEST_P(Sample, OpensAndComesBackTheSame) {
    const std::string text = slurp(GetParam());
    const Result<SessionFile> read = read_session(text, session_schema());
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_EQ(write_session(*read), text);
    EXPECT_EQ(read_back(*read), *read);
}

TEST_P(Sample, GivesEveryGuestACard) {
    const SessionFile file = load_session(GetParam());
    const Result<Plan> planned = plan(file.session, load_rules());
    ASSERT_TRUE(planned) << testing::PrintToString(planned.error());
    EXPECT_TRUE(planned->readiness.may_dive());
    ASSERT_FALSE(file.session.guests.empty());
    for (const Guest& guest : file.session.guests) {
        EXPECT_FALSE(card_is_blocked(planned->findings, guest.id, guest.group)) << guest.name;
    }
}

TEST_P(Sample, UsesKnownRuleSetsAndOverrulesWhatIsFound) {
    const SessionFile file = load_session(GetParam());
    const RuleBook rules = load_rules();
    for (const RuleSetId& id : file.session.rule_sets) {
        EXPECT_TRUE(std::any_of(rules.sets.begin(), rules.sets.end(),
                                [&](const RuleSet& set) { return set.id == id; }))
            << id.text;
    }
    const Result<Plan> planned = plan(file.session, rules);
    ASSERT_TRUE(planned);
    for (const Overrule& overrule : file.session.overrules) {
        EXPECT_TRUE(std::any_of(planned->findings.begin(), planned->findings.end(),
                                [&](const Finding& finding) {
                                    return key(finding) == overrule.finding &&
                                           finding.overruled_because == overrule.reason;
                                }))
            << overrule.finding;
    }
}

std::string sample_name(const std::filesystem::path& path) {
    std::string name = path.stem().string();
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

INSTANTIATE_TEST_SUITE_P(, Sample, testing::ValuesIn(sample_paths()),
                         [](const auto& one) { return sample_name(one.param); });

TEST(Samples, AreAtLeastFour) { EXPECT_GE(sample_paths().size(), 4U); }

TEST(Samples, FinishedDiveTeachesWhatItIsThereFor) {
    const SessionFile file = load_session(source_dir() / "sample-sessions/finished-dive.json");
    const RuleBook rules = load_rules();
    const Result<Plan> planned = plan(file.session, rules);
    ASSERT_TRUE(planned && file.log);
    const Result<Review> reviewed = review(file.session, *planned, *file.log, rules);
    ASSERT_TRUE(reviewed) << testing::PrintToString(reviewed.error());
    std::vector<std::string> keys;
    for (const Finding& finding : reviewed->findings) keys.push_back(key(finding));
    EXPECT_THAT(keys, testing::UnorderedElementsAre("ascent_too_fast:guest-2",
                                                    "logged_below_reserve:guest-3"));
}

TEST(SessionFile, CarriesEveryMember) {
    const SessionFile file = full_session();
    const SessionFile back = read_back(file);
    EXPECT_EQ(back.session.site, file.session.site);
    EXPECT_EQ(back.session.conditions, file.session.conditions);
    EXPECT_EQ(back.session.profile, file.session.profile);
    EXPECT_EQ(back.session.staff, file.session.staff);
    EXPECT_EQ(back.session.groups, file.session.groups);
    EXPECT_EQ(back.session.guests, file.session.guests);
    EXPECT_EQ(back.session.stock, file.session.stock);
    EXPECT_EQ(back.session.overrules, file.session.overrules);
    EXPECT_EQ(back.log, file.log);
    EXPECT_EQ(back, file);
}

/// Files from before these fields existed must stay as they are when they are written again.
TEST(SessionFile, LeavesOutWhatIsNotRecorded) {
    const std::string text = write_session(small_session());
    for (const char* field : {"dives_before", "extra_ascents", "earlier_dives", "stock"}) {
        EXPECT_THAT(text, testing::Not(HasSubstr(field)));
    }
    const SessionFile file = small_session();
    EXPECT_FALSE(file.session.guests[0].dives_before);
    EXPECT_TRUE(file.session.staff[0].earlier_dives.empty());
    EXPECT_EQ(file.session.staff[0].extra_ascents, 0);
    EXPECT_EQ(file.session.stock, Stock{});
}

TEST(SessionFile, KeepsHalfAStock) {
    SessionFile file = small_session();
    file.session.stock.lead_pieces = {Kilograms(2.0)};
    EXPECT_THAT(write_session(file), HasSubstr("\"stock\": {\n    \"lead_pieces_kg\""));
    EXPECT_EQ(read_back(file), file);
}

TEST(SessionFile, CarriesASessionWithoutAnything) {
    SessionFile file;
    file.session.profile.points = {{Minutes(0.0), Depth(), Phase::surface},
                                   {Minutes(2.0), Depth(Meters(3.0)), Phase::descent},
                                   {Minutes(4.0), Depth(), Phase::ascent}};
    EXPECT_EQ(read_back(file), file);
}

TEST(SessionFile, KeepsTheSchemasOrder) {
    const std::string text = write_session(full_session());
    const auto written = nlohmann::ordered_json::parse(text);
    const auto schema = nlohmann::ordered_json::parse(session_schema());
    const auto expect_order = [](const auto& object, const auto& properties) {
        std::vector<std::string> wanted;
        for (const auto& [name, unused] : properties.items()) {
            if (object.contains(name)) wanted.push_back(name);
        }
        std::vector<std::string> found;
        for (const auto& [name, unused] : object.items()) found.push_back(name);
        EXPECT_EQ(found, wanted);
    };
    const auto& definitions = schema["definitions"];
    expect_order(written, schema["properties"]);
    expect_order(written["site"], schema["properties"]["site"]["properties"]);
    expect_order(written["conditions"], schema["properties"]["conditions"]["properties"]);
    expect_order(written["staff"][0], definitions["staff_member"]["properties"]);
    expect_order(written["staff"][0]["earlier_dives"][0],
                 definitions["earlier_dive"]["properties"]);
    expect_order(written["stock"], schema["properties"]["stock"]["properties"]);
    expect_order(written["groups"][0], definitions["group"]["properties"]);
    expect_order(written["guests"][0], definitions["guest"]["properties"]);
    expect_order(written["guests"][0]["kit"], definitions["kit"]["properties"]);
    expect_order(written["log"], definitions["log"]["properties"]);
    expect_order(written["log"]["divers"][1], definitions["diver_log"]["properties"]);
}

TEST(SessionFile, WritesOneSampleALine) {
    EXPECT_THAT(write_session(small_session()),
                HasSubstr("\n          [1, 1.5],\n          [2, 2],\n"));
}

TEST(SessionFile, NumbersPickUpNoNoise) {
    SessionFile file = small_session();
    for (int tenths = -19; tenths <= 359; ++tenths) {
        file.session.conditions.water_temperature = Kelvins(Celsius(tenths / 10.0));
        const json written = json::parse(write_session(file));
        EXPECT_LE(written["conditions"]["water_temperature_c"].dump().size(), 4U) << tenths;
        if (tenths % 10 == 7) {
            EXPECT_EQ(read_back(file), file) << tenths;
        }
    }
}

TEST(SessionFile, LosesNoDigit) {
    SessionFile file = small_session();
    file.session.conditions.water_temperature = Kelvins(Celsius((64.0 - 32.0) / 1.8));
    file.session.conditions.barometer = Pascals(101325.0 / 3.0 + 30000.0);
    file.session.profile.points[1].time = Minutes(11.0 / 6.0);
    file.session.profile.points[1].depth = Depth(Meters(Feet(10.0 / 3.0)));
    EXPECT_EQ(read_back(file), file);
}

TEST(SessionFile, TidyRoundsNoiseOnly) {
    EXPECT_EQ(tidy(18.000000000000004), 18.0);
    EXPECT_EQ(tidy(0.1 + 0.2), 0.3);
    EXPECT_EQ(tidy(1.0 / 3.0), 1.0 / 3.0);
    EXPECT_EQ(tidy(17.7777777), 17.7777777);
    EXPECT_FALSE(std::signbit(tidy(-0.0)));
    EXPECT_EQ(number_json(24.0).dump(), "24");
    EXPECT_EQ(number_json(24.5).dump(), "24.5");
    EXPECT_EQ(number_json(std::numeric_limits<double>::infinity()).dump(), "null");
    EXPECT_EQ(number_json(std::numeric_limits<double>::quiet_NaN()).dump(), "null");
}

struct Edge {
    const char* pointer;
    double least;
    double most;
};

/// The ends of a range are in it, and the next step outside is not, however the numbers travel.
TEST(SessionFile, LetsTheEndsOfEveryRangeIn) {
    const std::vector<Edge> edges = {
        {"/site/altitude_m", -430, 5000},
        {"/site/latitude_deg", -90, 90},
        {"/site/salinity", 0, 42},
        {"/site/bottom_depth_m", 0, 200},
        {"/conditions/water_temperature_c", -2, 36},
        {"/conditions/air_temperature_c", -20, 50},
        {"/conditions/barometer_hpa", 500, 1100},
        {"/conditions/visibility_m", 0, 100},
        {"/conditions/wave_height_m", 0, 10},
        {"/guests/0/mass_kg", 15, 250},
        {"/guests/0/height_cm", 80, 250},
        {"/guests/0/shoe_size_eu", 20, 55},
        {"/guests/0/rmv_l_per_min", 5, 100},
        {"/guests/0/kit/lead_kg", 0, 25},
        {"/guests/0/kit/cylinder/fill_pressure_bar", 0, 232},
        {"/guests/0/kit/cylinder/fill_temperature_c", -20, 70},
        {"/staff/0/cylinder/fill_temperature_c", -20, 70},
        {"/log/divers/1/duration_min", 0, 240},
        {"/staff/0/earlier_dives/0/deepest_m", 0.001, 60},
        {"/staff/0/earlier_dives/0/duration_min", 1, 240},
        {"/stock/lead_pieces_kg/0", 0.1, 10},
    };
    json base = json::parse(slurp(data_dir() / "small-session.json"));
    base["staff"][0]["earlier_dives"] = {
        {{"date", "2026-07-10"}, {"start", "09:00"}, {"deepest_m", 9}, {"duration_min", 40}}};
    base["stock"]["lead_pieces_kg"] = {1};
    const std::string schema = session_schema();
    for (const Edge& edge : edges) {
        const auto read_with = [&](double value) {
            json changed = base;
            if (edge.pointer == std::string("/guests/0/kit/cylinder/fill_pressure_bar")) {
                changed["log"]["divers"].erase(0);
            }
            changed[json::json_pointer(edge.pointer)] = value;
            return read_session(changed.dump(), schema);
        };
        for (const double inside : {edge.least, edge.most}) {
            const Result<SessionFile> read = read_with(inside);
            ASSERT_TRUE(read) << edge.pointer << testing::PrintToString(read.error());
            EXPECT_EQ(read_back(*read), *read) << edge.pointer;
        }
        for (const double outside : {edge.least - 0.001, edge.most + 0.001}) {
            const Result<SessionFile> read = read_with(outside);
            ASSERT_FALSE(read) << edge.pointer;
            EXPECT_EQ(read.error().place, edge.pointer);
        }
    }
}

/// Whole numbers likewise.
TEST(SessionFile, LetsTheEndsOfEveryCountIn) {
    const std::vector<Edge> edges = {
        {"/guests/0/dives_before", 0, 20000},
        {"/staff/0/extra_ascents", 0, 20},
        {"/staff/0/earlier_dives/0/ascents", 1, 30},
        {"/stock/cylinders/0/count", 0, 1000},
        {"/stock/suits/0/count", 0, 1000},
    };
    json base = json::parse(slurp(data_dir() / "small-session.json"));
    base["staff"][0]["earlier_dives"] = {
        {{"date", "2026-07-10"}, {"start", "09:00"}, {"deepest_m", 9}, {"duration_min", 40}}};
    base["stock"]["cylinders"] = {{{"type", "steel-12"}, {"count", 1}}};
    base["stock"]["suits"] = {{{"suit", "7 mm M"}, {"count", 1}}};
    for (const Edge& edge : edges) {
        const auto read_with = [&](double value) {
            json changed = base;
            changed[json::json_pointer(edge.pointer)] = static_cast<int>(value);
            return read_session(changed.dump(), session_schema());
        };
        for (const double inside : {edge.least, edge.most}) {
            const Result<SessionFile> read = read_with(inside);
            ASSERT_TRUE(read) << edge.pointer << testing::PrintToString(read.error());
            EXPECT_EQ(read_back(*read), *read) << edge.pointer;
        }
        for (const double outside : {edge.least - 1.0, edge.most + 1.0}) {
            const Result<SessionFile> read = read_with(outside);
            ASSERT_FALSE(read) << edge.pointer;
            EXPECT_EQ(read.error().place, edge.pointer);
        }
    }
}

TEST(SessionFile, CountsNamesInCharacters) {
    SessionFile file = small_session();
    for (const char* letter : {"n", "é", "漢", "😀"}) {
        std::string name;
        for (int i = 0; i < 200; ++i) name += letter;
        file.session.guests[0].name = name;
        EXPECT_EQ(read_back(file), file) << letter;
    }
}

TEST(SessionFile, WritesControlCharactersAsSpaces) {
    SessionFile file = small_session();
    file.session.guests[0].name = "Ada\tB\u202e\u0085o";
    file.session.guests[0].note = "a\n\tb\x07";
    const SessionFile back = read_back(file);
    EXPECT_EQ(back.session.guests[0].name, "Ada B  o");
    EXPECT_EQ(back.session.guests[0].note, "a\n\tb ");
}

TEST(SessionFile, LeavesMarksOfScriptsAlone) {
    // Joiners and direction marks belong to names in many scripts.
    SessionFile file = small_session();
    file.session.guests[0].name = "ليلى\u200f حداد \u200c\u200d";
    EXPECT_EQ(read_back(file), file);
}

TEST(SessionFile, WritesTextThatIsNoUtf8) {
    SessionFile file = small_session();
    file.session.guests[0].name = "Ad\xE9";
    const SessionFile back = read_back(file);
    EXPECT_EQ(back.session.guests[0].name, "Ad\uFFFD");
}

TEST(SessionFile, TooLargeIsRefusedUnparsed) {
    const Result<SessionFile> read =
        read_session(std::string(largest_text_file + 1, '['), session_schema());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::file_too_large);
}

/// What check() lets pass can be written and read again: every text at its longest, and one more is
/// refused by check() itself, at the same place as by the schema.
TEST(SessionFile, CheckAndSchemaAgreeOnTheLengthOfTexts) {
    struct Text {
        const char* place;
        std::size_t most;
        std::string& (*of)(Session&);
    };
    const std::vector<Text> texts{
        {"/title", 200, [](Session& s) -> std::string& { return s.title; }},
        {"/site/name", 200, [](Session& s) -> std::string& { return s.site.name; }},
        {"/site/meeting_place", 500,
         [](Session& s) -> std::string& { return s.site.meeting_place; }},
        {"/site/emergency_line", 200,
         [](Session& s) -> std::string& { return s.site.emergency_line; }},
        {"/site/emergency_plan", 2000,
         [](Session& s) -> std::string& { return s.site.emergency_plan; }},
        {"/staff/0/name", 200, [](Session& s) -> std::string& { return s.staff[0].name; }},
        {"/groups/0/name", 200, [](Session& s) -> std::string& { return s.groups[0].name; }},
        {"/guests/0/name", 200, [](Session& s) -> std::string& { return s.guests[0].name; }},
        {"/guests/0/note", 2000, [](Session& s) -> std::string& { return s.guests[0].note; }},
        {"/guests/0/kit/suit", 100, [](Session& s) -> std::string& { return s.guests[0].kit.suit; }},
        {"/stock/suits/0/suit", 100,
         [](Session& s) -> std::string& {
             s.stock.suits = {{"5 mm M", 1}};
             return s.stock.suits[0].suit;
         }},
        {"/guests/0/kit/bcd", 100, [](Session& s) -> std::string& { return s.guests[0].kit.bcd; }},
        {"/guests/0/kit/fins", 100, [](Session& s) -> std::string& { return s.guests[0].kit.fins; }},
        {"/guests/0/kit/mask", 100, [](Session& s) -> std::string& { return s.guests[0].kit.mask; }},
        {"/guests/0/kit/regulator", 100,
         [](Session& s) -> std::string& { return s.guests[0].kit.regulator; }},
    };
    for (const Text& text : texts) {
        SessionFile file = small_session();
        std::string& place = text.of(file.session);
        place.clear();
        for (std::size_t i = 0; i < text.most; ++i) place += "é";  // two bytes, one character
        EXPECT_TRUE(check(file.session)) << text.place;
        EXPECT_TRUE(read_session(write_session(file), session_schema())) << text.place;
        place += "é";
        const Result<Done> checked = check(file.session);
        ASSERT_FALSE(checked) << text.place;
        EXPECT_EQ(checked.error().place, text.place);
        const Result<SessionFile> read = read_session(write_session(file), session_schema());
        ASSERT_FALSE(read) << text.place;
        EXPECT_EQ(read.error().place, text.place);
    }
}

/// The validator's regular expressions recurse once a character; the longest text let in must not
/// use up the stack.
TEST(SessionFile, LongestTextsMeetThePatterns) {
    const json base = json::parse(slurp(data_dir() / "small-session.json"));
    const std::string schema = session_schema();
    std::string tag = "en";
    while (tag.size() + 2 <= longest_text) tag += "-a";
    const std::vector<std::pair<std::string, std::string>> texts = {
        {"/guests/0/id", std::string(longest_text, 'a')},
        {"/guests/0/id", std::string(longest_text - 1, 'a') + " "},
        {"/guests/0/language", tag},
        {"/guests/0/language", tag.substr(1) + " "},
        {"/overrules/0/reason", std::string(longest_text, ' ')},
        {"/guests/0/birth_date", std::string(longest_text, '1')},
        {"/dive_time", std::string(longest_text, '1')},
    };
    for (const auto& [pointer, text] : texts) {
        json changed = base;
        changed[json::json_pointer(pointer)] = text;
        const Result<SessionFile> read = read_session(changed.dump(), schema);
        ASSERT_FALSE(read) << pointer;
        EXPECT_EQ(read.error().place, pointer);
    }
}

TEST(SessionFile, AnotherSchemaIsNoWayAroundTheTypes) {
    for (const char* text : {"{}", "[]", "3", R"({"guests": 3})", R"({"leadline_session": 1})"}) {
        const Result<SessionFile> read = read_session(text, "{}");
        ASSERT_FALSE(read) << text;
        EXPECT_FALSE(read.error().place.empty()) << text;
    }
}

TEST(SessionFile, OfTwoHundredGuestsWithLogsFits) {
    SessionFile file = full_session();
    const Guest guest = file.session.guests[0];
    LogEntry diver = file.log->divers[0];
    diver.samples.clear();
    for (int i = 0; i < 200; ++i) {
        diver.samples.push_back({Minutes(i * 0.25), Depth(Meters(6.0 + (i % 7) / 10.0))});
    }
    file.session.guests.clear();
    file.log->divers.clear();
    for (int i = 0; i < 200; ++i) {
        file.session.guests.push_back(guest);
        file.session.guests.back().id = GuestId("guest-" + std::to_string(i));
        file.log->divers.push_back(diver);
        file.log->divers.back().guest = file.session.guests.back().id;
    }
    EXPECT_LT(write_session(file).size(), largest_text_file / 2);
    EXPECT_EQ(read_back(file), file);
}

}  // namespace
}  // namespace leadline::files_test
