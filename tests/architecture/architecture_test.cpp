// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

// Rules of the tree that no compiler checks: which room may include which, where Qt, SQL and words
// may stand, and how long a file may be.

namespace {

namespace fs = std::filesystem;

const fs::path root = LEADLINE_SOURCE_DIR;

struct Source {
    std::string path;  ///< from the root
    std::string text;
};

std::vector<Source> sources(const std::vector<std::string>& folders) {
    std::vector<Source> found;
    for (const std::string& folder : folders) {
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            const std::string extension = entry.path().extension().string();
            if (extension != ".h" && extension != ".cpp") continue;
            std::ifstream file(entry.path());
            std::stringstream text;
            text << file.rdbuf();
            found.push_back({fs::relative(entry.path(), root).generic_string(), text.str()});
        }
    }
    return found;
}

std::vector<std::string> includes(const Source& source) {
    static const std::regex pattern("^#include [<\"]([^>\"]+)[>\"]", std::regex::multiline);
    std::vector<std::string> found;
    for (std::sregex_iterator it(source.text.begin(), source.text.end(), pattern), end; it != end;
         ++it) {
        found.push_back((*it)[1]);
    }
    return found;
}

bool starts_with(const std::string& text, const std::string& start) {
    return text.rfind(start, 0) == 0;
}

std::string room_of(const std::string& path) {
    const std::size_t first = path.find('/');
    const std::size_t second = path.find('/', first + 1);
    return second == std::string::npos ? path.substr(0, first) : path.substr(0, second);
}

/// What each room may include of the others; itself always.
const std::map<std::string, std::set<std::string>>& allowed() {
    static const std::set<std::string> physics{"core/physics"};
    static const std::set<std::string> body{"core/physics", "core/body"};
    static const std::set<std::string> planning{"core/physics", "core/body", "core/planning"};
    static const std::map<std::string, std::set<std::string>> map{
        {"core/physics", {}},
        {"core/body", physics},
        {"core/planning", body},
        {"core/debrief", planning},
        {"core/files", {"core/physics", "core/body", "core/planning", "core/debrief"}},
        {"core/records",
         {"core/physics", "core/body", "core/planning", "core/debrief", "core/files"}},
    };
    return map;
}

TEST(Architecture, RoomsOfTheCoreIncludeOnlyRoomsBelowThem) {
    for (const Source& source : sources({"core"})) {
        const std::string room = room_of(source.path);
        ASSERT_TRUE(allowed().contains(room)) << source.path << ": an unknown room";
        for (const std::string& included : includes(source)) {
            EXPECT_FALSE(starts_with(included, "ui/") || starts_with(included, "app/"))
                << source.path << " includes " << included;
            if (!starts_with(included, "core/")) continue;
            const std::string other = room_of(included);
            EXPECT_TRUE(other == room || allowed().at(room).contains(other))
                << source.path << " includes " << included;
        }
    }
}

TEST(Architecture, OnlyRecordsKnowsQt) {
    static const std::regex qt("^Q[A-Z]");
    for (const Source& source : sources({"core"})) {
        for (const std::string& included : includes(source)) {
            if (!std::regex_search(included, qt) && !starts_with(included, "Qt")) continue;
            EXPECT_EQ(room_of(source.path), "core/records")
                << source.path << " includes " << included;
        }
    }
}

TEST(Architecture, SqlStandsOnlyInRecords) {
    static const std::regex sql("\\b(INSERT INTO|DELETE FROM|SELECT .* FROM|PRAGMA|QSqlQuery)\\b");
    for (const Source& source : sources({"core", "ui", "app"})) {
        if (room_of(source.path) == "core/records") continue;
        EXPECT_FALSE(std::regex_search(source.text, sql)) << source.path;
    }
}

TEST(Architecture, TheCoreHasNoWordsForPeople) {
    static const std::regex words("\\b(tr|translate|QMessageBox)\\s*\\(");
    for (const Source& source : sources({"core"})) {
        EXPECT_FALSE(std::regex_search(source.text, words)) << source.path;
    }
}

TEST(Architecture, NothingBelowIncludesTheShell) {
    for (const Source& source : sources({"ui"})) {
        if (room_of(source.path) == "ui/shell") continue;
        for (const std::string& included : includes(source)) {
            EXPECT_FALSE(starts_with(included, "ui/shell/") || starts_with(included, "app/"))
                << source.path << " includes " << included;
        }
    }
}

TEST(Architecture, TabsDoNotKnowEachOther) {
    const std::set<std::string> tabs{"ui/roster", "ui/site", "ui/gas", "ui/debrief", "ui/sheet",
                                     "ui/guest_screen"};
    for (const Source& source : sources({"ui"})) {
        const std::string room = room_of(source.path);
        if (!tabs.contains(room)) continue;
        for (const std::string& included : includes(source)) {
            const std::string other = room_of(included);
            EXPECT_FALSE(tabs.contains(other) && other != room)
                << source.path << " includes " << included;
        }
    }
}

TEST(Architecture, OneHeaderChoosesTheUnits) {
    for (const Source& source : sources({"core", "ui", "app"})) {
        for (const std::string& included : includes(source)) {
            if (included != "units.h") continue;
            EXPECT_EQ(source.path, "core/physics/quantities.h");
        }
    }
}

TEST(Architecture, FilesCanBeReadInOneSitting) {
    for (const Source& source : sources({"core", "ui", "app", "tests"})) {
        const auto lines = std::count(source.text.begin(), source.text.end(), '\n');
        EXPECT_LE(lines, 800) << source.path;
    }
}

TEST(Architecture, EveryFileNamesItsLicence) {
    for (const Source& source : sources({"core", "ui", "app", "tests"})) {
        EXPECT_TRUE(starts_with(source.text, "// SPDX-License-Identifier: GPL-3.0-or-later"))
            << source.path;
    }
}

TEST(Architecture, NoTwoTypesOfTheProgramShareAName) {
    // All live in one namespace: two of a name would be one to the linker, without a warning.
    static const std::regex type("^(?:class|struct|enum class) ([A-Za-z]+)(?: final)? *(?::[^:]|\\{)",
                                 std::regex::multiline);
    std::map<std::string, std::string> seen;
    for (const Source& source : sources({"core", "ui", "app"})) {
        if (source.path.ends_with(".cpp")) continue;
        for (std::sregex_iterator it(source.text.begin(), source.text.end(), type), end; it != end;
             ++it) {
            const auto [first, is_new] = seen.emplace((*it)[1], source.path);
            EXPECT_TRUE(is_new) << (*it)[1] << " in " << first->second << " and " << source.path;
        }
    }
    EXPECT_GT(seen.size(), 50U);
}

TEST(Architecture, TheTopLevelIsAsAgreed) {
    const std::set<std::string> agreed{"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE",
                                       "CMakePresets.json", "app", "core", "ui", "resources",
                                       "tests", "sample-sessions", "build"};
    for (const auto& entry : fs::directory_iterator(root)) {
        const std::string name = entry.path().filename().string();
        EXPECT_TRUE(starts_with(name, ".") || agreed.contains(name)) << name;
    }
}

}  // namespace
