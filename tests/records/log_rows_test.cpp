// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/records/session_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::must;

/// A stored session with a log, and a count of the writes to samples from then on.
class LogRows : public testing::Test {
protected:
    LogRows() {
        for (const QString& change : {u"INSERT"_qs, u"DELETE"_qs, u"UPDATE"_qs}) {
            test::run(*database_, u"CREATE TEMP TRIGGER seen_%1 AFTER %1 ON log_samples BEGIN "
                                  "INSERT INTO writes VALUES ('%1'); END"_qs.arg(change));
        }
    }
    int writes(const QString& change) {
        return int(test::number(
            *database_, u"SELECT count(*) FROM writes WHERE change = '%1'"_qs.arg(change)));
    }
    int all_writes() { return int(test::number(*database_, u"SELECT count(*) FROM writes"_qs)); }
    void save_and_expect_back() {
        must(store_.save(row_, file_));
        EXPECT_EQ(must(store_.load(row_)), file_);
    }
    std::vector<LogEntry>& divers() { return file_.log->divers; }

    std::unique_ptr<Database> database_ = [] {
        auto opened = test::open(u":memory:"_qs);
        test::run(*opened, u"CREATE TEMP TABLE writes (change TEXT)"_qs);
        return opened;
    }();
    SessionStore store_{*database_};
    SessionFile file_ = test::full_session();
    SessionRow row_ = must(store_.insert(file_));
};

TEST_F(LogRows, SamplesAreLeftAloneWhenOnlyTheSessionChanged) {
    file_.session.title = "Changed";
    file_.session.guests.front().note = "Changed";
    save_and_expect_back();
    EXPECT_EQ(all_writes(), 0);
}

TEST_F(LogRows, SamplesAreLeftAloneWhenOnlyTheDiverChanged) {
    divers().at(1).end_pressure = Bars(60.0);
    divers().at(1).note = "Changed";
    std::swap(divers().at(0), divers().at(1));
    save_and_expect_back();
    EXPECT_EQ(all_writes(), 0);
}

TEST_F(LogRows, ChangedSamplesAreWrittenForTheirDiverOnly) {
    divers().at(0).samples = {{Minutes(1.0), Depth(Meters(1.0))}};
    save_and_expect_back();
    EXPECT_EQ(writes(u"INSERT"_qs), 1);
    EXPECT_EQ(writes(u"DELETE"_qs), 0);
    divers().at(1).samples.at(2).depth = Depth(Meters(0.3));
    save_and_expect_back();
    EXPECT_EQ(writes(u"INSERT"_qs), 4);
    EXPECT_EQ(writes(u"DELETE"_qs), 3);
}

TEST_F(LogRows, SamplesGoWithTheirDiver) {
    divers().erase(divers().begin() + 1);
    save_and_expect_back();
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM log_samples"_qs), 0);
}

TEST_F(LogRows, ALogMayComeLaterAndGoAgain) {
    file_.log.reset();
    save_and_expect_back();
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM log_samples"_qs), 0);
    file_.log = test::full_session().log;
    save_and_expect_back();
    file_.log->divers.clear();
    save_and_expect_back();
}

TEST_F(LogRows, AnEmptyLogIsNotNone) {
    file_.log = DiveLog{};
    save_and_expect_back();
}

TEST_F(LogRows, ManySamplesComeBackInOrder) {
    std::vector<DepthSample>& samples = divers().at(0).samples;
    for (int i = 0; i < 7200; ++i) {
        samples.push_back({Minutes(i / 60.0), Depth(Meters((i * 37 % 101) / 10.0))});
    }
    save_and_expect_back();
    EXPECT_EQ(writes(u"INSERT"_qs), 7200);
    save_and_expect_back();
    EXPECT_EQ(writes(u"INSERT"_qs), 7200);
}

}  // namespace
}  // namespace leadline
