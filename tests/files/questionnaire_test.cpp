// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/questionnaire_file.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;

const std::string resources = LEADLINE_SOURCE_DIR "/resources/";

std::string questions_schema() { return slurp(resources + "schema/questions.schema.json"); }
std::string questions_text() { return slurp(resources + "screening/questions-1.json"); }

TEST(QuestionnaireFile, IsReadInTheOrderAsked) {
    const Result<Questionnaire> read = read_questionnaire(questions_text(), questions_schema());
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_EQ(read->edition, present_edition);
    ASSERT_EQ(read->themes.size(), 12U);
    EXPECT_EQ(read->themes[0].id, "lungs");
    EXPECT_EQ(read->themes[0].follow_ups.size(), 4U);
    EXPECT_EQ(read->themes[2].from_age, 45);
    EXPECT_EQ(read->themes[11].kind, ThemeKind::does_not_dive);
}

struct Spoiled {
    const char* what;
    const char* place;  ///< JSON pointer; what stands there is replaced
    json value;         ///< null: removed
    Error error;
};

TEST(QuestionnaireFile, IsRefusedWithThePlaceOfTheFault) {
    const std::vector<Spoiled> cases{
        {"version", "/leadline_questions", 2,
         {ErrorCode::not_a_choice, "/leadline_questions", "2", "1"}},
        {"kind", "/themes/0/kind", "perhaps",
         {ErrorCode::not_a_choice, "/themes/0/kind", "perhaps",
          "physician_at_once, follow_ups, does_not_dive"}},
        {"no follow-ups", "/themes/0/follow_ups", nullptr,
         {ErrorCode::missing_field, "/themes/0", "follow_ups", ""}},
        {"id twice", "/themes/1/id", "lungs", {ErrorCode::duplicate_id, "/themes/1/id", "lungs", ""}},
        {"title too long", "/themes/0/title", std::string(61, 'x'),
         {ErrorCode::bad_text, "/themes/0/title", "", ""}},
    };
    for (const Spoiled& one : cases) {
        json document = json::parse(questions_text());
        const json::json_pointer place(one.place);
        if (one.value.is_null()) {
            document[place.parent_pointer()].erase(place.back());
        } else {
            document[place] = one.value;
        }
        const Result<Questionnaire> read =
            read_questionnaire(document.dump(), questions_schema());
        ASSERT_FALSE(read) << one.what;
        EXPECT_EQ(read.error().code, one.error.code) << one.what;
        EXPECT_EQ(read.error().place, one.error.place) << one.what;
        if (one.error.given.empty()) continue;
        EXPECT_EQ(read.error().given, one.error.given) << one.what;
    }
    EXPECT_FALSE(read_questionnaire("{", questions_schema()));
}

TEST(AnswersFile, ComesBackTheSame) {
    HealthAnswers answers;
    answers.edition = "Leadline 1";
    set_answer(answers, "lungs", Answer::yes);
    set_answer(answers, "lungs.asthma", Answer::no);
    answers.today[1] = Answer::yes;
    answers.today[5] = Answer::no;
    const std::string text = write_answers(answers);
    const Result<HealthAnswers> read = read_answers(text);
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_EQ(*read, answers);
    EXPECT_EQ(text.find("unanswered"), std::string::npos);
    EXPECT_EQ(*read_answers(write_answers({})), HealthAnswers());
}

TEST(AnswersFile, IsRefusedWhenItIsNotUnderstoodWhole) {
    for (const char* text :
         {"", "[]", "{}", R"({"leadline_answers": 2})", R"({"leadline_answers": "1"})",
          R"({"leadline_answers": 1, "edition": 3})", R"({"leadline_answers": 1, "health": []})",
          R"({"leadline_answers": 1, "health": {"lungs": "maybe"}})",
          R"({"leadline_answers": 1, "health": {"lungs": true}})",
          R"({"leadline_answers": 1, "today": {"knees": "yes"}})",
          R"({"leadline_answers": 1, "today": {"cannot_swim": null}})"}) {
        EXPECT_FALSE(read_answers(text)) << text;
    }
}

// ---- session files -----------------------------------------------------------------------------

HealthCheck check_in_session(const json& screening) {
    json document = json::parse(slurp(LEADLINE_TEST_DATA_DIR "/small-session.json"));
    document["guests"][0]["screening"] = screening;
    const Result<SessionFile> read = read_session(document.dump(), session_schema());
    EXPECT_TRUE(read) << (read ? "" : testing::PrintToString(read.error()));
    return read ? read->session.guests[0].screening : HealthCheck();
}

json earlier_health(const char* answer) {
    json health;
    for (const char* theme :
         {"lungs", "heart_and_blood", "over_45_with_risks", "exercise", "eyes_ears_sinuses",
          "surgery_last_year", "nerves_and_blackouts", "mind", "back_hernia_diabetes",
          "stomach_and_gut", "prescription_medicine", "pregnancy"}) {
        health[theme] = answer;
    }
    return health;
}

TEST(EarlierSessionFiles, KeepTheOutcomeAndNoAnswer) {
    const Date date{std::chrono::year(2026), std::chrono::month(7), std::chrono::day(11)};
    HealthCheck clear;
    clear.outcome = ScreeningOutcome::clear;
    clear.checked_on = date;
    EXPECT_EQ(check_in_session({{"health", earlier_health("no")}, {"today", json::object()}}),
              clear);

    json health = earlier_health("no");
    health["mind"] = "yes";
    json screening{{"health", health}, {"physician_approval_seen", true}};
    HealthCheck released = clear;
    released.outcome = ScreeningOutcome::physician_required;
    released.physician_approval_seen = true;
    EXPECT_EQ(check_in_session(screening), released);

    screening["health"].erase("lungs");
    HealthCheck gap;
    gap.physician_approval_seen = true;
    EXPECT_EQ(check_in_session(screening), gap) << "a release answers nothing that was not asked";
    screening.erase("physician_approval_seen");
    EXPECT_EQ(check_in_session(screening).outcome, ScreeningOutcome::physician_required);
    screening["health"]["pregnancy"] = "yes";
    EXPECT_EQ(check_in_session(screening).outcome, ScreeningOutcome::does_not_dive);
    EXPECT_EQ(check_in_session({{"health", json::object()}}), HealthCheck());
    EXPECT_EQ(check_in_session(json::object()), HealthCheck());
}

TEST(EarlierSessionFiles, KeepWhatTheDayCameTo) {
    const auto today = [](const json& answers) {
        return check_in_session({{"today", answers}}).today;
    };
    EXPECT_EQ(today(json::object()), TodayOutcome::unanswered);
    EXPECT_EQ(today({{"cannot_swim", "yes"}}), TodayOutcome::with_care);
    EXPECT_EQ(today({{"cannot_swim", "yes"}, {"new_medicine", "yes"}}), TodayOutcome::not_today);
    EXPECT_EQ(today("clear"), TodayOutcome::clear) << "the present form";
}

TEST(EarlierSessionFiles, OfTwoOutcomesTheGraverCounts) {
    EXPECT_EQ(check_in_session({{"outcome", "clear"}, {"health", earlier_health("yes")}}).outcome,
              ScreeningOutcome::does_not_dive);
    EXPECT_EQ(
        check_in_session({{"outcome", "does_not_dive"}, {"health", earlier_health("no")}}).outcome,
        ScreeningOutcome::does_not_dive);
}

TEST(EarlierSessionFiles, AreWrittenInThePresentFormWithoutAnswers) {
    json document = json::parse(slurp(LEADLINE_TEST_DATA_DIR "/small-session.json"));
    document["guests"][0]["screening"] = {{"health", earlier_health("yes")},
                                          {"today", {{"alcohol_or_drugs", "yes"}}}};
    const Result<SessionFile> read = read_session(document.dump(), session_schema());
    ASSERT_TRUE(read);
    const std::string written = write_session(*read);
    for (const char* word : {"lungs", "health", "pregnancy", "alcohol", "\"yes\""}) {
        EXPECT_EQ(written.find(word), std::string::npos) << word;
    }
    EXPECT_EQ(json::parse(written)["guests"][0]["screening"]["outcome"], "does_not_dive");
}

TEST(SessionFiles, RefuseADayOrAWordOfTheCheckThatIsNone) {
    json document = json::parse(slurp(LEADLINE_TEST_DATA_DIR "/small-session.json"));
    const auto refusal = [&](const char* key, const json& value) {
        json spoiled = document;
        spoiled["guests"][0]["screening"][key] = value;
        const Result<SessionFile> read = read_session(spoiled.dump(), session_schema());
        return read ? Error{} : read.error();
    };
    EXPECT_EQ(refusal("checked_on", "2026-02-30").code, ErrorCode::bad_date);
    EXPECT_EQ(refusal("checked_on", "2026-02-30").place, "/guests/0/screening/checked_on");
    EXPECT_EQ(refusal("physician_approval_on", "soon").code, ErrorCode::bad_date);
    EXPECT_EQ(refusal("outcome", "fine").code, ErrorCode::not_a_choice);
    EXPECT_EQ(refusal("today", "fine").code, ErrorCode::not_a_choice);
    EXPECT_EQ(refusal("today", "fine").place, "/guests/0/screening/today");
    EXPECT_EQ(refusal("today", 3).code, ErrorCode::wrong_type);
    EXPECT_EQ(refusal("today", {{"knees", "yes"}}).code, ErrorCode::unknown_field);
    EXPECT_EQ(refusal("signature", "in blood").code, ErrorCode::not_a_choice);
    EXPECT_EQ(refusal("checked_by", std::string(201, 'x')).code, ErrorCode::bad_text);
    EXPECT_EQ(refusal("knees", "yes").code, ErrorCode::unknown_field);
}

}  // namespace
}  // namespace leadline::files_test
