// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/physics/result.h"
#include "core/planning/screening.h"

namespace leadline {

/// Reads the health questions (resources/screening/*.json), checked against their schema
/// (resources/schema/questions.schema.json) and by check().
/// @returns the questions, or the first thing wrong with its place as a JSON pointer
Result<Questionnaire> read_questionnaire(std::string_view json, std::string_view schema_json);

/// A guest's answers as JSON, to be sealed: the edition, what was answered, nothing else.
std::string write_answers(const HealthAnswers& answers);

/// Answers that write_answers() wrote. What this program does not know is refused, so that nobody
/// believes to see all of what was kept.
Result<HealthAnswers> read_answers(std::string_view json);

}  // namespace leadline
