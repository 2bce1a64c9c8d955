// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/files/support.h"

#include <csv.h>
#include <stdlib.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <utility>

#include "core/files/rule_file.h"

namespace leadline {

void PrintTo(const Error& error, std::ostream* out) {
    *out << files_test::code_name(error.code) << " at '" << error.place << "', given '"
         << error.given << "', allowed '" << error.allowed << "'";
}

namespace files_test {
namespace {

constexpr std::array<std::pair<ErrorCode, const char*>, 47> code_names{{
    {ErrorCode::file_unreadable, "file_unreadable"},
    {ErrorCode::file_unwritable, "file_unwritable"},
    {ErrorCode::file_too_large, "file_too_large"},
    {ErrorCode::not_json, "not_json"},
    {ErrorCode::nested_too_deep, "nested_too_deep"},
    {ErrorCode::wrong_type, "wrong_type"},
    {ErrorCode::unknown_field, "unknown_field"},
    {ErrorCode::missing_field, "missing_field"},
    {ErrorCode::out_of_range, "out_of_range"},
    {ErrorCode::not_a_choice, "not_a_choice"},
    {ErrorCode::bad_text, "bad_text"},
    {ErrorCode::bad_count, "bad_count"},
    {ErrorCode::bad_date, "bad_date"},
    {ErrorCode::birth_date_in_future, "birth_date_in_future"},
    {ErrorCode::duplicate_id, "duplicate_id"},
    {ErrorCode::unknown_reference, "unknown_reference"},
    {ErrorCode::overfilled_cylinder, "overfilled_cylinder"},
    {ErrorCode::time_not_increasing, "time_not_increasing"},
    {ErrorCode::ends_before_start, "ends_before_start"},
    {ErrorCode::profile_not_closed, "profile_not_closed"},
    {ErrorCode::times_overlap, "times_overlap"},
    {ErrorCode::ends_at_higher_pressure, "ends_at_higher_pressure"},
    {ErrorCode::log_of_another_session, "log_of_another_session"},
    {ErrorCode::unsupported_version, "unsupported_version"},
    {ErrorCode::database_failed, "database_failed"},
    {ErrorCode::database_newer, "database_newer"},
    {ErrorCode::database_locked, "database_locked"},
    {ErrorCode::database_damaged, "database_damaged"},
    {ErrorCode::database_gone, "database_gone"},
    {ErrorCode::database_read_only, "database_read_only"},
    {ErrorCode::disk_full, "disk_full"},
    {ErrorCode::not_our_records, "not_our_records"},
    {ErrorCode::cancelled, "cancelled"},
    {ErrorCode::not_found, "not_found"},
    {ErrorCode::table_too_large, "table_too_large"},
    {ErrorCode::not_a_table, "not_a_table"},
    {ErrorCode::vault_not_set_up, "vault_not_set_up"},
    {ErrorCode::vault_exists, "vault_exists"},
    {ErrorCode::vault_locked, "vault_locked"},
    {ErrorCode::vault_wrong_key, "vault_wrong_key"},
    {ErrorCode::vault_must_wait, "vault_must_wait"},
    {ErrorCode::vault_last_way, "vault_last_way"},
    {ErrorCode::passphrase_length, "passphrase_length"},
    {ErrorCode::recovery_key_mistyped, "recovery_key_mistyped"},
    {ErrorCode::sealed_unreadable, "sealed_unreadable"},
    {ErrorCode::key_stretching_failed, "key_stretching_failed"},
    {ErrorCode::keyring_failed, "keyring_failed"},
}};

std::vector<std::filesystem::path> json_files(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() == ".json") paths.push_back(entry.path());
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

struct Table {
    std::vector<std::vector<std::string>> rows;
    std::vector<std::string> row;
};

void on_cell(void* text, std::size_t length, void* data) {
    static_cast<Table*>(data)->row.emplace_back(static_cast<const char*>(text), length);
}

void on_line_end(int, void* data) {
    auto* table = static_cast<Table*>(data);
    table->rows.push_back(std::exchange(table->row, {}));
}

}  // namespace

std::string code_name(ErrorCode code) {
    for (const auto& [known, name] : code_names) {
        if (known == code) return name;
    }
    return "code " + std::to_string(static_cast<int>(code));
}

std::string slurp(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error("cannot read " + path.string());
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::filesystem::path source_dir() { return LEADLINE_SOURCE_DIR; }
std::filesystem::path data_dir() { return LEADLINE_TEST_DATA_DIR; }
std::string session_schema() {
    return slurp(source_dir() / "resources/schema/session.schema.json");
}
std::string rules_schema() { return slurp(source_dir() / "resources/schema/rules.schema.json"); }

std::vector<std::filesystem::path> sample_paths() {
    return json_files(source_dir() / "sample-sessions");
}
std::vector<std::filesystem::path> rule_paths() {
    return json_files(source_dir() / "resources/rules");
}

SessionFile load_session(const std::filesystem::path& path) {
    const Result<SessionFile> file = read_session(slurp(path), session_schema());
    if (!file) throw std::runtime_error(path.string() + ": refused at " + file.error().place);
    return *file;
}

RuleBook load_rules() {
    RuleBook book;
    const std::string schema = rules_schema();
    for (const std::filesystem::path& path : rule_paths()) {
        const Result<RuleSet> set = read_rule_set(slurp(path), schema);
        if (!set) throw std::runtime_error(path.string() + ": refused at " + set.error().place);
        book.sets.push_back(*set);
    }
    return book;
}

std::vector<std::vector<std::string>> read_csv(const std::filesystem::path& path) {
    const std::string text = slurp(path);
    csv_parser parser{};
    Table table;
    const bool read =
        csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI) == 0 &&
        csv_parse(&parser, text.data(), text.size(), on_cell, on_line_end, &table) ==
            text.size() &&
        csv_fini(&parser, on_cell, on_line_end, &table) == 0;
    csv_free(&parser);
    if (!read) throw std::runtime_error("no CSV: " + path.string());
    return table.rows;
}

ScratchFolder::ScratchFolder() {
    std::string name =
        (std::filesystem::temp_directory_path() / "leadline-files-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no scratch folder");
    path_ = name;
}

ScratchFolder::~ScratchFolder() {
    std::error_code code;
    std::filesystem::remove_all(path_, code);
}

std::vector<std::string> ScratchFolder::names() const {
    std::vector<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(path_)) {
        found.push_back(entry.path().filename().string());
    }
    std::sort(found.begin(), found.end());
    return found;
}

}  // namespace files_test
}  // namespace leadline
