// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever happens to a file, reading it either gives a session that can be planned and written, or
// an error that says where. Every run makes the same changes.
#include <gtest/gtest.h>

#include <random>

#include "core/files/json_gate.h"
#include "core/files/schema_check.h"
#include "core/files/schema_failure.h"
#include "core/planning/plan.h"
#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;

constexpr int mutations = 500;

class Mutator {
public:
    explicit Mutator(std::uint32_t seed) : random_(seed) {}

    std::size_t below(std::size_t limit) { return limit == 0 ? 0 : random_() % limit; }

    std::string bytes_changed(std::string text) {
        for (std::size_t count = 1 + below(3); count > 0; --count) {
            const std::size_t at = below(text.size());
            switch (below(4)) {
                case 0: text[at] = static_cast<char>(below(256)); break;
                case 1: text.erase(at, 1 + below(20)); break;
                case 2: text.insert(at, text.substr(below(text.size()), 1 + below(40))); break;
                default: text.insert(at, 1, "{}[]\",:0-e"[below(10)]); break;
            }
        }
        return text;
    }

    /// A value somewhere in the document replaced, removed or doubled.
    json value_changed(json document) {
        json* node = &document;
        while (node->is_structured() && !node->empty() && below(5) != 0) {
            const auto index = static_cast<std::ptrdiff_t>(below(node->size()));
            node = &*std::next(node->begin(), index);
        }
        if (node->is_array() && !node->empty() && below(2) == 0) {
            node->push_back(node->at(below(node->size())));
        } else if (node->is_object() && !node->empty() && below(2) == 0) {
            const auto index = static_cast<std::ptrdiff_t>(below(node->size()));
            node->erase(std::next(node->begin(), index));
        } else {
            *node = odd_value();
        }
        return document;
    }

private:
    json odd_value() {
        static const std::vector<json> odd = {
            nullptr, true, 0, -1, 1, 0.5, 1e308, -1e308, 5e-324, 61, 9007199254740992, "", "x",
            "guest-1", "2026-07-11", "9999-99-99", "25:61", "yes", json::array(), json::object(),
            json::array({1, 2}), {{"points", json::array()}}, std::string(300, 'a')};
        return odd[below(odd.size())];
    }

    std::mt19937 random_;
};

void expect_session_or_place(const std::string& text, const std::string& schema,
                             const RuleBook& rules) {
    const Result<SessionFile> read = read_session(text, schema);
    if (!read) {
        EXPECT_FALSE(read.error().place.empty());
        EXPECT_NO_THROW((void)json(read.error().given).dump()) << "not UTF-8";
        return;
    }
    const std::string written = write_session(*read);
    const Result<SessionFile> again = read_session(written, schema);
    ASSERT_TRUE(again) << testing::PrintToString(again.error());
    EXPECT_EQ(write_session(*again), written);
    const Result<Plan> planned = plan(read->session, rules);
    EXPECT_TRUE(planned || !planned.error().place.empty());
}

class Mutations : public testing::Test {
protected:
    /// The samples take turns.
    [[nodiscard]] const std::string& sample(int change) const {
        return samples_[static_cast<std::size_t>(change) % samples_.size()];
    }
    const std::string schema_ = session_schema();

private:
    const std::vector<std::string> samples_ = [] {
        std::vector<std::string> texts;
        for (const std::filesystem::path& path : sample_paths()) texts.push_back(slurp(path));
        return texts;
    }();
};

TEST_F(Mutations, OfBytesAreReadOrRefused) {
    const RuleBook rules = load_rules();
    Mutator mutator(20260711);
    for (int i = 0; i < mutations; ++i) {
        SCOPED_TRACE("change " + std::to_string(i));
        expect_session_or_place(mutator.bytes_changed(sample(i)), schema_, rules);
    }
}

TEST_F(Mutations, OfValuesAreReadOrRefused) {
    const RuleBook rules = load_rules();
    Mutator mutator(20260712);
    for (int i = 0; i < mutations; ++i) {
        SCOPED_TRACE("change " + std::to_string(i));
        const json changed = mutator.value_changed(json::parse(sample(i)));
        expect_session_or_place(changed.dump(), schema_, rules);
    }
}

TEST_F(Mutations, AreRefusedByTheLibraryExactlyWhereAFailureIsFound) {
    const json schema = json::parse(schema_);
    Mutator mutator(20260713);
    int valid = 0;
    for (int i = 0; i < mutations; ++i) {
        const json changed = mutator.value_changed(json::parse(sample(i)));
        const bool passes = check_schema(changed, schema_).has_value();
        EXPECT_EQ(passes, !find_failure(changed, schema)) << "change " << i;
        valid += passes ? 1 : 0;
    }
    // Both outcomes must occur, or the changes test nothing.
    EXPECT_GT(valid, mutations / 20);
    EXPECT_LT(valid, mutations * 19 / 20);
}

}  // namespace
}  // namespace leadline::files_test
