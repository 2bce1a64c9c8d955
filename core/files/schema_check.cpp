// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/schema_check.h"

#include <exception>
#include <optional>
#include <string>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include "core/files/schema_failure.h"

namespace leadline {
namespace {

using nlohmann::json;

/// What the library says of the first failure, for the case that find_failure() finds none.
Error failure_in_words(const valijson::Schema& schema, const json& value) {
    valijson::ValidationResults results;
    valijson::Validator validator;
    (void)validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(value), &results);
    valijson::ValidationResults::Error first;
    (void)results.popError(first);
    return {ErrorCode::wrong_type, "/", first.description, ""};
}

Result<Done> validate(const json& value, const json& schema_document) {
    valijson::Schema schema;
    valijson::SchemaParser parser(valijson::SchemaParser::kDraft7);
    parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(schema_document), schema);
    // Without a list of results the validator stops at the first failure, so that a hostile file
    // cannot make it collect millions of them.
    valijson::Validator validator;
    if (validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(value), nullptr)) {
        return Done{};
    }
    const std::optional<Error> failure = find_failure(value, schema_document);
    return failure ? *failure : failure_in_words(schema, value);
}

}  // namespace

Result<Done> check_schema(const json& value, std::string_view schema_json) {
    // The schema library and the JSON library throw; both are caught here and nowhere else.
    try {
        return validate(value, json::parse(schema_json.begin(), schema_json.end()));
    } catch (const std::exception& problem) {
        return Error{ErrorCode::not_json, "schema", problem.what(), ""};
    }
}

}  // namespace leadline
