// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/support.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <map>
#include <sstream>

#include "tests/fuzz/target.h"

namespace leadline::fuzz {

const std::string& source_file(const std::string& path) {
    static std::map<std::string, std::string> read;
    const auto [entry, is_new] = read.emplace(path, std::string());
    if (is_new) {
        std::ifstream file(LEADLINE_SOURCE_DIR "/" + path, std::ios::binary);
        must(file.good(), path.c_str());
        std::ostringstream text;
        text << file.rdbuf();
        entry->second = text.str();
    }
    return entry->second;
}

void must(bool holds, const char* what) {
    if (holds) return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

}  // namespace leadline::fuzz
