// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/questionnaire_file.h"

#include <exception>
#include <nlohmann/json.hpp>
#include <optional>

#include "core/files/enum_names.h"
#include "core/files/json_gate.h"
#include "core/files/json_values.h"
#include "core/files/schema_check.h"

namespace leadline {
namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr int answers_version = 1;

QuestionTheme read_theme(const FieldReader& from) {
    QuestionTheme theme;
    theme.id = from.line("id");
    theme.title = from.line("title");
    theme.question = from.line("question");
    theme.kind = from.choice<ThemeKind>("kind");
    if (from.has("from_age")) theme.from_age = from.whole("from_age");
    from.each("follow_ups", [&](const json& item, const std::string& place) {
        const FieldReader fields(item, place, from.error_slot());
        theme.follow_ups.push_back({fields.line("id"), fields.line("question")});
    });
    return theme;
}

const char* word(Answer answer) { return answer == Answer::yes ? "yes" : "no"; }

Error not_an_answer(const std::string& place, const json& given) {
    return {ErrorCode::not_a_choice, place, given.dump(), "yes, no"};
}

std::optional<Answer> answer_of(const json& value) {
    if (value == "yes") return Answer::yes;
    if (value == "no") return Answer::no;
    return std::nullopt;
}

Result<Done> read_health(const json& from, HealthAnswers& answers) {
    for (const auto& [id, value] : from.items()) {
        const std::optional<Answer> answer = answer_of(value);
        if (!answer) return not_an_answer("/health/" + pointer_part(id), value);
        answers.by_id[id] = *answer;
    }
    return Done{};
}

Result<Done> read_today(const json& from, HealthAnswers& answers) {
    for (const auto& [name, value] : from.items()) {
        const std::string place = "/today/" + pointer_part(name);
        const auto question = enum_value<TodayQuestion>(name);
        if (!question) return Error{ErrorCode::unknown_field, "/today", name, {}};
        const std::optional<Answer> answer = answer_of(value);
        if (!answer) return not_an_answer(place, value);
        answers.today[static_cast<std::size_t>(*question)] = *answer;
    }
    return Done{};
}

}  // namespace

Result<Questionnaire> read_questionnaire(std::string_view text, std::string_view schema_json) {
    const Result<json> document = parse_json(text);
    if (!document) return document.error();
    if (const Result<Done> checked = check_schema(*document, schema_json); !checked) {
        return checked.error();
    }
    // Only a schema that is not this format's lets a value of the wrong type through to here.
    try {
        std::optional<Error> error;
        const FieldReader root(*document, "", error);
        Questionnaire questionnaire;
        questionnaire.edition = root.line("edition");
        root.each("themes", [&](const json& item, const std::string& place) {
            questionnaire.themes.push_back(read_theme({item, place, error}));
        });
        if (error) return *error;
        if (const Result<Done> checked = check(questionnaire); !checked) return checked.error();
        return questionnaire;
    } catch (const std::exception& problem) {
        return Error{ErrorCode::wrong_type, "/", problem.what(), ""};
    }
}

std::string write_answers(const HealthAnswers& answers) {
    ordered_json health = ordered_json::object();
    for (const auto& [id, answer] : answers.by_id) {
        if (answer != Answer::unanswered) health[id] = word(answer);
    }
    ordered_json today = ordered_json::object();
    for (std::size_t i = 0; i < answers.today.size(); ++i) {
        if (answers.today[i] == Answer::unanswered) continue;
        today[enum_name(static_cast<TodayQuestion>(i))] = word(answers.today[i]);
    }
    const ordered_json document{{"leadline_answers", answers_version},
                                {"edition", answers.edition},
                                {"health", std::move(health)},
                                {"today", std::move(today)}};
    return document.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

Result<HealthAnswers> read_answers(std::string_view text) {
    const Result<json> document = parse_json(text);
    if (!document) return document.error();
    if (!document->is_object()) {
        return Error{ErrorCode::wrong_type, "/", document->type_name(), "object"};
    }
    const json version = document->value("leadline_answers", json());
    if (version != answers_version) {
        return Error{ErrorCode::unsupported_version, "/leadline_answers", version.dump(),
                     std::to_string(answers_version)};
    }
    HealthAnswers answers;
    const json edition = document->value("edition", json(""));
    if (!edition.is_string()) {
        return Error{ErrorCode::wrong_type, "/edition", edition.dump(), "string"};
    }
    answers.edition = edition.get<std::string>();
    for (const char* part : {"health", "today"}) {
        const json list = document->value(part, json::object());
        if (!list.is_object()) {
            return Error{ErrorCode::wrong_type, "/" + std::string(part), list.dump(), "object"};
        }
        const Result<Done> read = std::string_view(part) == "health" ? read_health(list, answers)
                                                                     : read_today(list, answers);
        if (!read) return read.error();
    }
    return answers;
}

}  // namespace leadline
