// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QTimer>

#include "core/records/statement.h"
#include "ui/shell/idle_lock.h"
#include "ui/shell/vault_actions.h"
#include "vault_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using State = HealthAccess::State;

class VaultInWindow : public VaultWindow {
protected:
    IdleLock& idle() { return *window_->findChild<VaultActions*>()->idle_lock(); }
    bool enabled(const char* name) { return action(name)->isEnabled(); }
    /// Does something with the dialog that the next call opens.
    template <typename Act>
    static void when_dialog_opens(Act act) {
        QTimer::singleShot(0, qApp, [act] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            act(*dialog);
        });
    }
};

TEST_F(VaultInWindow, MenuAndMarkFollowTheState) {
    EXPECT_EQ(access().state(), State::not_set_up);
    EXPECT_EQ(mark().toStdString(), "Health vault not set up");
    EXPECT_EQ(action("action_vault_open")->text().remove(u'&').toStdString(), "Set up…");
    EXPECT_FALSE(enabled("action_vault_lock"));
    EXPECT_FALSE(enabled("action_vault_trail"));
    make_vault_directly();
    EXPECT_EQ(mark().toStdString(), "Health vault open: Mara");
    EXPECT_TRUE(enabled("action_vault_lock"));
    EXPECT_TRUE(enabled("action_vault_passphrase"));
    EXPECT_TRUE(enabled("action_vault_recovery"));
    EXPECT_TRUE(enabled("action_vault_trail"));
    EXPECT_FALSE(enabled("action_vault_open"));
    QSignalSpy told(&access(), &HealthAccess::state_changed);
    QTest::keyClick(window_.get(), Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(told.size(), 1);
    EXPECT_EQ(access().state(), State::locked);
    EXPECT_EQ(mark().toStdString(), "Health vault locked");
    EXPECT_TRUE(enabled("action_vault_open"));
    EXPECT_TRUE(enabled("action_vault_trail"));
    EXPECT_FALSE(enabled("action_vault_recovery"));
}

TEST_F(VaultInWindow, TheMarkLocksByAClick) {
    make_vault_directly();
    QTest::mouseClick(child<QToolButton>(*window_, "vault_mark"), Qt::LeftButton);
    EXPECT_EQ(access().state(), State::locked);
}

TEST_F(VaultInWindow, IsLockedAgainAfterAStart) {
    make_vault_directly();
    ASSERT_TRUE(access().put(first_guest(), HealthKind::screening, "{}").has_value());
    start();
    EXPECT_EQ(access().state(), State::locked);
    EXPECT_EQ(access().count(first_guest(), HealthKind::screening), 1);
}

TEST_F(VaultInWindow, WhatATabSealsItGetsBack) {
    make_vault_directly();
    const GuestId guest = first_guest();
    EXPECT_EQ(access().count(guest, HealthKind::screening), 0);
    ASSERT_TRUE(access().put(guest, HealthKind::screening, "first").has_value());
    ASSERT_TRUE(access().put(guest, HealthKind::screening, "second").has_value());
    const auto entries = access().open(guest, HealthKind::screening);
    ASSERT_TRUE(entries.has_value());
    ASSERT_EQ(entries->size(), 2U);
    EXPECT_EQ(entries->front().content, "second");
    EXPECT_EQ(entries->front().given_by, document_.session().guests.front().name);
    access().lock();
    EXPECT_EQ(access().open(guest, HealthKind::screening).error().code, ErrorCode::vault_locked);
    EXPECT_EQ(access().put(guest, HealthKind::screening, "x").error().code,
              ErrorCode::vault_locked);
    EXPECT_EQ(access().count(guest, HealthKind::screening), 2);
    EXPECT_EQ(access().count(GuestId("nobody"), HealthKind::screening), 0);
}

TEST_F(VaultInWindow, ASessionThatIsNotKeptSealsNothing) {
    make_vault_directly();
    ASSERT_TRUE(window_->open_file(sample_path("salt-cove")));
    EXPECT_EQ(access().state(), State::not_kept);
    EXPECT_EQ(access().vault_state(), State::open);
    EXPECT_FALSE(access().ask_to_open(window_.get()));
    EXPECT_EQ(access().put(first_guest(), HealthKind::screening, "x").error().code,
              ErrorCode::not_found);
    QSignalSpy told(&access(), &HealthAccess::state_changed);
    ASSERT_TRUE(keeper_->keep().has_value());
    EXPECT_EQ(told.size(), 1);
    EXPECT_EQ(access().state(), State::open);
}

TEST_F(VaultInWindow, AskToOpenAsksForThePassphrase) {
    make_vault_directly();
    access().lock();
    when_dialog_opens([](QDialog& dialog) {
        EXPECT_EQ(dialog.objectName().toStdString(), "vault_unlock_dialog");
        auto* field = child<QLineEdit>(dialog, "vault_passphrase");
        QTest::keyClicks(field, good_passphrase);
        QTest::keyClick(field, Qt::Key_Return);
    });
    EXPECT_TRUE(access().ask_to_open(window_.get()));
    when_dialog_opens([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); });
    access().lock();
    EXPECT_FALSE(access().ask_to_open(window_.get()));
}

TEST_F(VaultInWindow, LocksWhenNobodyIsThere) {
    EXPECT_EQ(idle().wait(), std::chrono::minutes(5));
    EXPECT_FALSE(idle().is_running());
    make_vault_directly();
    EXPECT_TRUE(idle().is_running());
    idle().set_wait(std::chrono::milliseconds(1));
    ASSERT_TRUE(QTest::qWaitFor([&] { return access().state() == State::locked; }));
    EXPECT_FALSE(idle().is_running());
}

TEST_F(VaultInWindow, KeysAndClicksPutTheLockOff) {
    make_vault_directly();
    idle().set_wait(std::chrono::milliseconds(400));
    QElapsedTimer clock;
    clock.start();
    while (clock.elapsed() < 900) {
        QTest::keyClick(window_.get(), Qt::Key_Shift);
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    EXPECT_EQ(access().state(), State::open);
    ASSERT_TRUE(QTest::qWaitFor([&] { return access().state() == State::locked; }));
}

TEST_F(VaultInWindow, LocksBeforeTheComputerSleeps) {
    make_vault_directly();
    QMetaObject::invokeMethod(&idle(), "sleep_is_near", Q_ARG(bool, false));
    EXPECT_EQ(access().state(), State::open);
    QMetaObject::invokeMethod(&idle(), "sleep_is_near", Q_ARG(bool, true));
    EXPECT_EQ(access().state(), State::locked);
}

TEST_F(VaultInWindow, TheIdleTimeIsKept) {
    action("action_vault_idle_10")->trigger();
    EXPECT_EQ(idle().wait(), std::chrono::minutes(10));
    start();
    EXPECT_EQ(idle().wait(), std::chrono::minutes(10));
    EXPECT_TRUE(action("action_vault_idle_10")->isChecked());
    keeper_->put_setting(QStringLiteral("vault_idle_minutes"), QStringLiteral("999999"));
    start();
    EXPECT_EQ(idle().wait(), std::chrono::minutes(5));
}

TEST_F(VaultInWindow, AGuestWhoTurnsOutToBeSomebodyKeepsTheRecords) {
    make_vault_directly();
    const GuestId guest = first_guest();
    ASSERT_TRUE(access().put(guest, HealthKind::screening, "asthma").has_value());
    ASSERT_TRUE(document_
                    .edit(QStringLiteral("x"),
                          [&](Session& session) {
                              session.guests.front().name = "Somebody Else";
                              session.guests.front().birth_date = std::nullopt;
                          })
                    .has_value());
    const auto entries = access().open(guest, HealthKind::screening);
    ASSERT_TRUE(entries.has_value());
    ASSERT_EQ(entries->size(), 1U);
    EXPECT_NE(entries->front().given_by, "Somebody Else");
}

TEST_F(VaultInWindow, SaysWhenAnswersOfAnOlderVersionAreSealed) {
    const Result<qint64> person = access().store()->person_of(*keeper_->current_row(), first_guest());
    ASSERT_TRUE(person.has_value());
    ASSERT_TRUE(execute(keeper_->database()->connection(),
                        QStringLiteral("INSERT INTO answers_to_seal (person_id, session_id, "
                                       "question) VALUES (%1, %2, 'lungs')")
                            .arg(*person)
                            .arg(keeper_->current_row()->value))
                    .has_value());
    const QSignalSpy said(window_->findChild<VaultActions*>(), &VaultActions::said);
    make_vault_directly();
    ASSERT_EQ(said.count(), 1);
    const std::string text = said.at(0).at(0).toString().toStdString();
    EXPECT_THAT(text, HasSubstr("1 answer an older version kept open is sealed now."));
    EXPECT_THAT(text, HasSubstr("before-schema"));
}

}  // namespace
}  // namespace leadline::testing
