// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

namespace leadline {
namespace {

using testing::HasSubstr;
using testing::ThrowsMessage;

constexpr const char* good =
    "id,expected,source,standing\n"
    "first,-1.5e-3,\"Author, \"\"Title\"\"\",read\n"
    "second,,elsewhere,memory\n";

auto parsing(const std::string& text) {
    return [text] { parse_reference(text, "sample"); };
}

auto complains(const char* about) {
    return ThrowsMessage<std::runtime_error>(HasSubstr(about));
}

TEST(ReferenceTable, GivesCellsByColumn) {
    const ReferenceTable table = parse_reference(good, "sample");
    ASSERT_EQ(table.size(), 2U);
    EXPECT_EQ(table[0].text("id"), "first");
    EXPECT_EQ(table[0].text("source"), "Author, \"Title\"");
    EXPECT_EQ(table[0].number("expected"), -1.5e-3);
    EXPECT_TRUE(table[0].has("expected"));
    EXPECT_FALSE(table[1].has("expected"));
    EXPECT_FALSE(table[1].has("colour"));
}

TEST(ReferenceTable, RefusesACellThatIsNotWhatIsAskedFor) {
    const ReferenceTable table = parse_reference(good, "sample");
    EXPECT_THAT([&] { (void)table[0].number("source"); }, complains("holds no number"));
    EXPECT_THAT([&] { (void)table[1].number("expected"); }, complains("holds no number"));
    EXPECT_THAT([&] { (void)table[0].text("colour"); }, complains("no column 'colour'"));
}

TEST(ReferenceTable, RefusesATableThatChecksNothing) {
    EXPECT_THAT(parsing(""), complains("no rows"));
    EXPECT_THAT(parsing("id,source,standing\n"), complains("no rows"));
    EXPECT_THAT([] { load_reference("no_such_table"); }, complains("cannot be read"));
}

TEST(ReferenceTable, RefusesBrokenRows) {
    EXPECT_THAT(parsing("id,source,standing\na,b\n"), complains("2 cells for 3 columns"));
    EXPECT_THAT(parsing("id,source,standing\na,b,read\na,c,read\n"), complains("used twice"));
    EXPECT_THAT(parsing("id,source,standing\na b,c,read\n"), complains("not plain"));
    EXPECT_THAT(parsing("id,source,standing\na,,read\n"), complains("no source"));
    EXPECT_THAT(parsing("id,source,standing\na,b,heard\n"), complains("standing 'heard'"));
    EXPECT_THAT(parsing("id,source,standing\na,\"b,read\n"), complains("not CSV"));
    EXPECT_THAT(parsing("id,source\na,b\n"), complains("no column 'standing'"));
}

}  // namespace
}  // namespace leadline
