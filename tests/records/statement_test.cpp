// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/statement.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/records/folder.h"

namespace leadline {
namespace {

using test::must;
using testing::HasSubstr;

class StatementTest : public testing::Test {
protected:
    StatementTest() {
        test::run(*database_, u"CREATE TABLE t (a INTEGER UNIQUE, b TEXT NOT NULL) STRICT"_qs);
    }
    qint64 rows() { return test::number(*database_, u"SELECT count(*) FROM t"_qs); }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
    QSqlDatabase connection_ = database_->connection();
    // Released before the database it belongs to.
    ~StatementTest() override { connection_ = QSqlDatabase(); }
};

TEST_F(StatementTest, ReportsWhatCannotBePrepared) {
    const Result<Done> ran = Statement(connection_, u"INSERT INTO nowhere VALUES (?)"_qs).run(1);
    ASSERT_FALSE(ran.has_value());
    EXPECT_EQ(ran.error().code, ErrorCode::database_failed);
    EXPECT_EQ(ran.error().place, ":memory:");
    EXPECT_THAT(ran.error().given, HasSubstr("nowhere"));
}

TEST_F(StatementTest, ReportsABrokenConstraintAndMayRunAgain) {
    Statement insert(connection_, u"INSERT INTO t VALUES (?, ?)"_qs);
    must(insert.run(1, u"one"_qs));
    const Result<Done> twice = insert.run(1, u"one"_qs);
    ASSERT_FALSE(twice.has_value());
    EXPECT_EQ(twice.error().code, ErrorCode::database_failed);
    EXPECT_THAT(twice.error().given, HasSubstr("UNIQUE"));
    must(insert.run(2, QString()));
    EXPECT_EQ(rows(), 2);
}

TEST_F(StatementTest, ReportsTooFewValues) {
    Statement insert(connection_, u"INSERT INTO t VALUES (?, ?)"_qs);
    EXPECT_FALSE(insert.run(1).has_value());
    EXPECT_EQ(rows(), 0);
}

TEST_F(StatementTest, RunsAgainWithOtherValuesAfterTextThatCouldNotBeStored) {
    Statement insert(connection_, u"INSERT INTO t VALUES (?, ?)"_qs);
    const Result<Done> bad = insert.run(1, std::string("\xFF"));
    ASSERT_FALSE(bad.has_value());
    EXPECT_EQ(bad.error().code, ErrorCode::bad_text);
    must(insert.run(1, std::string("good")));
    EXPECT_EQ(rows(), 1);
}

TEST_F(StatementTest, FirstOfNothingIsNothing) {
    const auto found = must(Statement(connection_, u"SELECT a FROM t"_qs).first([](Row& row) {
        return row.number();
    }));
    EXPECT_EQ(found, std::nullopt);
}

TEST_F(StatementTest, ATransactionNotCommittedIsUndone) {
    {
        Result<Transaction> transaction = Transaction::begin_writing(connection_);
        ASSERT_TRUE(transaction.has_value());
        must(Statement(connection_, u"INSERT INTO t VALUES (?, ?)"_qs).run(1, u"one"_qs));
    }
    EXPECT_EQ(rows(), 0);
    Result<Transaction> transaction = Transaction::begin_writing(connection_);
    ASSERT_TRUE(transaction.has_value());
    must(Statement(connection_, u"INSERT INTO t VALUES (?, ?)"_qs).run(1, u"one"_qs));
    must(transaction->commit());
    EXPECT_EQ(rows(), 1);
}

TEST(InTurn, StopsAtTheFirstFailure) {
    int ran = 0;
    const Error failure{ErrorCode::not_found, "here", "", ""};
    const auto good = [&]() -> Result<Done> {
        ++ran;
        return Done{};
    };
    const auto bad = [&]() -> Result<Done> {
        ++ran;
        return failure;
    };
    const Result<Done> result = in_turn(good, bad, good);
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error(), failure);
    EXPECT_EQ(ran, 2);
    EXPECT_TRUE(in_turn(good, good).has_value());
}

}  // namespace
}  // namespace leadline
