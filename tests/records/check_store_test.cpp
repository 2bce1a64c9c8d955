// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/check_store.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/records/guest_store.h"
#include "core/records/person_merge.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::day;
using test::must;

const Date born = day(1990, 5, 17);

Guest checked_guest(ScreeningOutcome outcome, std::optional<Date> on) {
    Guest guest = test::guest_named("guest-1", "Ana Müller");
    guest.birth_date = born;
    guest.screening.outcome = outcome;
    guest.screening.checked_on = on;
    guest.screening.edition = "Leadline 1";
    return guest;
}

class CheckStoreTest : public testing::Test {
protected:
    SessionRow keep(Date date, const Guest& guest) {
        return must(sessions_.insert(test::session_with(date, {guest})));
    }
    std::optional<HealthCheck> last(std::optional<SessionRow> except = {}) {
        return must(checks_.last_check("Ana Müller", born, except));
    }
    void put_aside(qint64 person, SessionRow session, const QString& question) {
        test::run(*database_, QStringLiteral("INSERT INTO answers_to_seal (person_id, session_id, "
                                             "question) VALUES (%1, %2, '%3')")
                                  .arg(person)
                                  .arg(session.value)
                                  .arg(question));
    }

    std::unique_ptr<Database> database_ = test::open(QStringLiteral(":memory:"));
    SessionStore sessions_{*database_};
    CheckStore checks_{*database_};
};

TEST_F(CheckStoreTest, GivesTheLatestCheckOfAPerson) {
    EXPECT_EQ(last(), std::nullopt);
    const Guest clear = checked_guest(ScreeningOutcome::clear, day(2026, 5, 3));
    const Guest older = checked_guest(ScreeningOutcome::physician_required, day(2025, 6, 1));
    keep(day(2026, 5, 3), clear);
    keep(day(2026, 8, 1), older);
    EXPECT_EQ(last(), clear.screening) << "by the day of the check, not of the session";
}

TEST_F(CheckStoreTest, LooksNotAtTheOpenSessionNorAtGaps) {
    const SessionRow open = keep(day(2026, 7, 4),
                                 checked_guest(ScreeningOutcome::clear, day(2026, 7, 4)));
    keep(day(2026, 7, 5), checked_guest(ScreeningOutcome::unanswered, day(2026, 7, 5)));
    keep(day(2026, 7, 6), checked_guest(ScreeningOutcome::clear, std::nullopt));
    EXPECT_TRUE(last());
    EXPECT_EQ(last(open), std::nullopt);
}

TEST_F(CheckStoreTest, TakesOnlyNameAndBirthDateTogetherForThePerson) {
    keep(day(2026, 7, 4), checked_guest(ScreeningOutcome::clear, day(2026, 7, 4)));
    EXPECT_EQ(must(checks_.last_check("Ana Müller", std::nullopt, {})), std::nullopt);
    EXPECT_EQ(must(checks_.last_check("Ana Müller", day(1990, 5, 18), {})), std::nullopt);
    EXPECT_EQ(must(checks_.last_check("Ana", born, {})), std::nullopt);
}

TEST_F(CheckStoreTest, OfTwoOnOneDayGivesTheLaterSessionsThenTheGraver) {
    keep(day(2026, 7, 4), checked_guest(ScreeningOutcome::does_not_dive, day(2026, 7, 4)));
    keep(day(2026, 7, 4), checked_guest(ScreeningOutcome::clear, day(2026, 7, 4)));
    EXPECT_EQ(last()->outcome, ScreeningOutcome::does_not_dive);
    keep(day(2026, 7, 5), checked_guest(ScreeningOutcome::clear, day(2026, 7, 4)));
    EXPECT_EQ(last()->outcome, ScreeningOutcome::clear);
}

TEST_F(CheckStoreTest, ListsSessionsToComeByTime) {
    SessionFile file = test::full_session();
    file.session.date = day(2027, 1, 1);
    for (StaffMember& member : file.session.staff) member.earlier_dives.clear();
    const SessionRow full = must(sessions_.insert(file));
    const SessionRow first = keep(day(2026, 7, 4), test::guest_named("a", "Anna"));
    keep(day(2026, 7, 3), test::guest_named("b", "Bo"));
    const std::vector<SessionToCome> found = must(checks_.to_come(day(2026, 7, 4)));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].row, first);
    EXPECT_EQ(found[1].row, full);
    const Session& session = found[1].session;
    EXPECT_EQ(session.title, file.session.title);
    EXPECT_EQ(session.date, file.session.date);
    EXPECT_EQ(session.dive_time, file.session.dive_time);
    EXPECT_EQ(session.rule_sets, file.session.rule_sets);
    EXPECT_EQ(session.overrules, file.session.overrules);
    ASSERT_EQ(session.guests.size(), file.session.guests.size());
    for (std::size_t i = 0; i < session.guests.size(); ++i) {
        const Guest& guest = session.guests[i];
        const Guest& stored = file.session.guests[i];
        EXPECT_EQ(guest.id, stored.id);
        EXPECT_EQ(guest.name, stored.name);
        EXPECT_EQ(guest.phone, stored.phone);
        EXPECT_EQ(guest.email, stored.email);
        EXPECT_EQ(guest.birth_date, stored.birth_date);
        EXPECT_EQ(guest.guardian_consent, stored.guardian_consent);
        EXPECT_EQ(guest.screening, stored.screening);
    }
}

TEST_F(CheckStoreTest, AnswersToSealSurviveASaveAndGoWithSessionOrPerson) {
    Guest guest = checked_guest(ScreeningOutcome::clear, day(2026, 7, 4));
    const SessionRow one = keep(day(2026, 7, 4), guest);
    const SessionRow other = keep(day(2026, 7, 5), guest);
    put_aside(1, one, QStringLiteral("lungs"));
    put_aside(1, other, QStringLiteral("mind"));
    guest.note = "changed";
    must(sessions_.save(one, test::session_with(day(2026, 7, 4), {guest})));
    ASSERT_EQ(must(answers_to_seal(*database_)).size(), 2U);
    must(sessions_.remove(one));
    const std::vector<AnswerToSeal> left = must(answers_to_seal(*database_));
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left[0].question, "mind");
    EXPECT_EQ(left[0].name, "Ana Müller");
    EXPECT_EQ(left[0].date, day(2026, 7, 5));
}

TEST_F(CheckStoreTest, ForgetsTheAnswersNamedAndNoOthers) {
    const SessionRow row =
        keep(day(2026, 7, 4), checked_guest(ScreeningOutcome::clear, day(2026, 7, 4)));
    for (const char* question : {"lungs", "mind", "exercise"}) {
        put_aside(1, row, QString::fromLatin1(question));
    }
    const std::vector<AnswerToSeal> all = must(answers_to_seal(*database_));
    ASSERT_EQ(all.size(), 3U);
    must(forget_answers_to_seal(*database_, {all[0].id, all[2].id}));
    const std::vector<AnswerToSeal> left = must(answers_to_seal(*database_));
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left[0].question, all[1].question);
    must(forget_answers_to_seal(*database_, {}));
    EXPECT_EQ(must(answers_to_seal(*database_)).size(), 1U);
}

TEST_F(CheckStoreTest, KnowsWhomAPersonWasMergedInto) {
    const Guest clear = checked_guest(ScreeningOutcome::clear, day(2026, 7, 4));
    keep(day(2026, 7, 4), clear);
    Guest other = checked_guest(ScreeningOutcome::physician_required, day(2026, 8, 1));
    other.name = "Anna Mueller";
    keep(day(2026, 8, 1), other);
    EXPECT_EQ(last(), clear.screening);
    GuestStore guests(*database_);
    const qint64 kept = must(guests.find(u"mueller"_qs)).at(0).row;
    const qint64 merged = must(guests.find(u"ana m"_qs)).at(0).row;
    must(PersonMerges(*database_).merge(kept, merged, u"2026-08-02T12:00:00Z"_qs));
    EXPECT_EQ(last(), other.screening) << "the old name must not hide the graver check";
}

}  // namespace
}  // namespace leadline
