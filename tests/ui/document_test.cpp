// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QSignalSpy>
#include <QUndoStack>

#include "ui_fixture.h"

namespace leadline::testing {
namespace {

class SessionDocumentTest : public DocumentTest {
protected:
    void SetUp() override { open("salt-cove"); }
};

TEST_F(SessionDocumentTest, AnEditChangesThePlanAtOnce) {
    const Pascals before = document_.plan().environment.bottom_pressure;
    const Result<Done> done = document_.edit(QStringLiteral("deeper"), [](Session& session) {
        for (ProfilePoint& point : session.profile.points) {
            point.depth = Depth(point.depth.meters() * 1.2);
        }
    });
    ASSERT_TRUE(done.has_value());
    EXPECT_GT(document_.plan().environment.bottom_pressure, before);
}

TEST_F(SessionDocumentTest, UndoAndRedoGiveBackExactlyWhatWas) {
    const SessionFile before = document_.file();
    ASSERT_TRUE(document_.edit(QStringLiteral("rename"), [](Session& session) {
        session.guests[0].name = "Somebody Else";
    }).has_value());
    const SessionFile after = document_.file();
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.file(), before);
    document_.undo_stack()->redo();
    EXPECT_EQ(document_.file(), after);
}

TEST_F(SessionDocumentTest, EditsWithTheSameKeyBecomeOneStep) {
    const std::string original = document_.session().guests[0].name;
    for (const char* name : {"A", "An", "Ann", "Anna"}) {
        ASSERT_TRUE(document_.edit(QStringLiteral("rename"), [&](Session& session) {
            session.guests[0].name = name;
        }, QStringLiteral("guest-1/name")).has_value());
    }
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    document_.undo_stack()->undo();
    EXPECT_EQ(document_.session().guests[0].name, original);
}

TEST_F(SessionDocumentTest, EditsWithOtherKeysStayApart) {
    ASSERT_TRUE(document_.edit(QStringLiteral("rename"), [](Session& session) {
        session.guests[0].name = "A";
    }, QStringLiteral("guest-1/name")).has_value());
    ASSERT_TRUE(document_.edit(QStringLiteral("rename"), [](Session& session) {
        session.guests[1].name = "B";
    }, QStringLiteral("guest-2/name")).has_value());
    EXPECT_EQ(document_.undo_stack()->count(), 2);
}

TEST_F(SessionDocumentTest, ARefusedEditChangesNothingAndSaysWhy) {
    const SessionFile before = document_.file();
    QSignalSpy refused(&document_, &SessionDocument::refused);
    QSignalSpy changed(&document_, &SessionDocument::changed);
    const Result<Done> done = document_.edit(QStringLiteral("too deep"), [](Session& session) {
        session.profile.points[2].depth = Depth(Meters(900.0));
    });
    EXPECT_FALSE(done.has_value());
    EXPECT_EQ(document_.file(), before);
    EXPECT_EQ(changed.count(), 0);
    ASSERT_EQ(refused.count(), 1);
    EXPECT_THAT(refused[0][0].toString().toStdString(), ::testing::HasSubstr("900"));
    EXPECT_THAT(refused[0][0].toString().toStdString(), ::testing::HasSubstr("0 to 60"));
    EXPECT_EQ(document_.undo_stack()->count(), 0);
}

TEST_F(SessionDocumentTest, AnEditThatChangesNothingIsNoStep) {
    ASSERT_TRUE(document_.edit(QStringLiteral("nothing"), [](Session&) {}).has_value());
    EXPECT_EQ(document_.undo_stack()->count(), 0);
}

TEST_F(SessionDocumentTest, OpeningStartsTheHistoryAnew) {
    ASSERT_TRUE(document_.edit(QStringLiteral("rename"), [](Session& session) {
        session.title = "x";
    }).has_value());
    open("mountain-lake");
    EXPECT_EQ(document_.undo_stack()->count(), 0);
}

TEST_F(SessionDocumentTest, ABrokenSessionIsNotOpened) {
    const SessionFile before = document_.file();
    SessionFile broken = before;
    broken.session.guests[1].id = broken.session.guests[0].id;
    EXPECT_FALSE(document_.open(broken).has_value());
    EXPECT_EQ(document_.file(), before);
}

TEST_F(SessionDocumentTest, ALogMakesAReviewAndItsRemovalTakesItAway) {
    EXPECT_FALSE(document_.review().has_value());
    open("finished-dive");
    ASSERT_TRUE(document_.review().has_value());
    ASSERT_TRUE(document_.edit_log(QStringLiteral("remove"), [](std::optional<DiveLog>& log) {
        log.reset();
    }).has_value());
    EXPECT_FALSE(document_.review().has_value());
    document_.undo_stack()->undo();
    EXPECT_TRUE(document_.review().has_value());
}

TEST_F(SessionDocumentTest, RemovingALoggedGuestTakesTheLogEntryAlong) {
    open("finished-dive");
    const GuestId gone = document_.session().guests[0].id;
    ASSERT_TRUE(document_.edit(QStringLiteral("remove"), [](Session& session) {
        session.guests.erase(session.guests.begin());
    }).has_value());
    ASSERT_TRUE(document_.log().has_value());
    EXPECT_EQ(find_log(*document_.log(), gone), nullptr);
    document_.undo_stack()->undo();
    EXPECT_NE(find_log(*document_.log(), gone), nullptr);
}

TEST_F(SessionDocumentTest, AnEmptySessionCanBePlanned) {
    const Date today{std::chrono::year(2026), std::chrono::month(7), std::chrono::day(4)};
    EXPECT_TRUE(document_.open({empty_session(today), std::nullopt}).has_value());
}

}  // namespace
}  // namespace leadline::testing
