// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

#include "core/files/session_file.h"
#include "core/physics/result.h"
#include "core/planning/rules.h"

namespace leadline {

/// Shows an error in a failing test.
void PrintTo(const Error& error, std::ostream* out);

namespace files_test {

std::string code_name(ErrorCode code);

/// The bytes of a file. Throws std::runtime_error when it cannot be read.
std::string slurp(const std::filesystem::path& path);

std::filesystem::path source_dir();
std::filesystem::path data_dir();
std::string session_schema();
std::string rules_schema();

/// The sample sessions, by name.
std::vector<std::filesystem::path> sample_paths();
/// The published rule sets, by name.
std::vector<std::filesystem::path> rule_paths();

/// Reads a session that must be right.
SessionFile load_session(const std::filesystem::path& path);
/// All published rule sets.
RuleBook load_rules();

/// A table of comma-separated values, header line first.
std::vector<std::vector<std::string>> read_csv(const std::filesystem::path& path);

/// A folder of its own, gone with the object.
class ScratchFolder {
public:
    ScratchFolder();
    ~ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const {
        return path_ / name;
    }
    [[nodiscard]] std::vector<std::string> names() const;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

}  // namespace files_test
}  // namespace leadline
