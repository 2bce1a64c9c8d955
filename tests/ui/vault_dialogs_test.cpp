// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QAbstractItemModelTester>
#include <QDialog>
#include <QFile>
#include <QListWidget>
#include <QRadioButton>
#include <QScreen>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTableView>
#include <QThreadPool>
#include <QVBoxLayout>

#include "ui/shell/audit_dialog.h"
#include "ui/shell/audit_model.h"
#include "ui/shell/recovery_key_dialog.h"
#include "ui/shell/recovery_page.h"
#include "ui/shell/recovery_sheet.h"
#include "ui/shell/secret_field.h"
#include "ui/shell/vault_passphrase_dialog.h"
#include "ui/shell/vault_set_up_dialog.h"
#include "ui/shell/vault_unlock_dialog.h"
#include "vault_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using State = HealthAccess::State;

class VaultDialogs : public VaultWindow {
protected:
    template <typename Dialog>
    std::unique_ptr<Dialog> shown() {
        auto dialog = std::make_unique<Dialog>(access(), nullptr);
        dialog->show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(dialog.get()));
        return dialog;
    }
    static void type(QDialog& dialog, const char* field, const QString& text) {
        QTest::keyClicks(child<QLineEdit>(dialog, field), text);
    }
    static void click(QDialog& dialog, const char* name) {
        QTest::mouseClick(child<QPushButton>(dialog, name), Qt::LeftButton);
    }
    static bool is_on(QDialog& dialog, const char* name) {
        return child<QPushButton>(dialog, name)->isEnabled();
    }
};

TEST_F(VaultDialogs, SetsAVaultUpByPassphraseAndPaper) {
    auto dialog = shown<VaultSetUpDialog>();
    EXPECT_EQ(child<QComboBox>(*dialog, "vault_who")->currentText(),
              access().staff_names().front());
    EXPECT_FALSE(is_on(*dialog, "vault_next"));
    type(*dialog, "vault_passphrase", QStringLiteral("too short"));
    type(*dialog, "vault_passphrase_again", QStringLiteral("too short"));
    EXPECT_FALSE(is_on(*dialog, "vault_next"));
    EXPECT_THAT(child<QLabel>(*dialog, "vault_hint")->text().toStdString(), HasSubstr("9 of"));
    child<QLineEdit>(*dialog, "vault_passphrase")->clear();
    child<QLineEdit>(*dialog, "vault_passphrase_again")->clear();
    type(*dialog, "vault_passphrase", good_passphrase);
    type(*dialog, "vault_passphrase_again", good_passphrase + QStringLiteral("x"));
    EXPECT_FALSE(is_on(*dialog, "vault_next"));
    QTest::keyClick(child<QLineEdit>(*dialog, "vault_passphrase_again"), Qt::Key_Backspace);
    EXPECT_TRUE(is_on(*dialog, "vault_next"));
    QTest::keyClick(child<QLineEdit>(*dialog, "vault_passphrase_again"), Qt::Key_Return);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return child<QLabel>(*dialog, "recovery_group_1")->isVisible(); }));
    // Nothing is kept before the paper is proved.
    EXPECT_EQ(access().vault_state(), State::not_set_up);
    EXPECT_FALSE(is_on(*dialog, "vault_next"));
    type(*dialog, "recovery_answer", QStringLiteral("0000"));
    EXPECT_FALSE(is_on(*dialog, "vault_next"));
    child<QLineEdit>(*dialog, "recovery_answer")->clear();
    confirm_recovery(*dialog);
    EXPECT_TRUE(is_on(*dialog, "vault_next"));
    QSignalSpy told(&access(), &HealthAccess::state_changed);
    click(*dialog, "vault_next");
    EXPECT_EQ(dialog->result(), QDialog::Accepted);
    EXPECT_EQ(access().state(), State::open);
    EXPECT_EQ(told.size(), 1);
    EXPECT_THAT(mark().toStdString(), HasSubstr("open"));
}

TEST_F(VaultDialogs, LeavingSetUpLeavesNothing) {
    {
        auto dialog = shown<VaultSetUpDialog>();
        QTest::mouseClick(child<QRadioButton>(*dialog, "vault_by_keyring"), Qt::LeftButton);
        child<QRadioButton>(*dialog, "vault_by_keyring")->setChecked(true);
        click(*dialog, "vault_next");
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return child<QLabel>(*dialog, "recovery_group_1")->isVisible(); }));
        EXPECT_EQ(keyring_.entries.size(), 1U);
        QTest::keyClick(dialog.get(), Qt::Key_Escape);
        EXPECT_EQ(dialog->result(), QDialog::Rejected);
    }
    EXPECT_EQ(access().vault_state(), State::not_set_up);
    EXPECT_TRUE(keyring_.entries.empty());
}

TEST_F(VaultDialogs, SaysWhenNoKeyringAnswersAndOffersThePassphrase) {
    keyring_.answers = false;
    auto dialog = shown<VaultSetUpDialog>();
    child<QRadioButton>(*dialog, "vault_by_keyring")->setChecked(true);
    click(*dialog, "vault_next");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !trouble(*dialog).isEmpty(); }));
    EXPECT_THAT(trouble(*dialog).toStdString(), HasSubstr("keyring does not answer"));
    EXPECT_TRUE(child<QRadioButton>(*dialog, "vault_by_passphrase")->isChecked());
    EXPECT_TRUE(child<QLineEdit>(*dialog, "vault_passphrase")->isEnabled());
}

TEST_F(VaultDialogs, SetsUpAndUnlocksByKeyring) {
    {
        auto dialog = shown<VaultSetUpDialog>();
        child<QRadioButton>(*dialog, "vault_by_keyring")->setChecked(true);
        click(*dialog, "vault_next");
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return child<QLabel>(*dialog, "recovery_group_1")->isVisible(); }));
        confirm_recovery(*dialog);
        click(*dialog, "vault_next");
        EXPECT_EQ(access().state(), State::open);
    }
    access().lock();
    {
        auto dialog = shown<VaultUnlockDialog>();
        EXPECT_FALSE(child<QLineEdit>(*dialog, "vault_passphrase")->isVisible());
        click(*dialog, "vault_unlock_keyring");
        ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->result() == QDialog::Accepted; }));
    }
    EXPECT_EQ(access().state(), State::open);
    // A passphrase may be added later.
    auto dialog = shown<VaultPassphraseDialog>();
    EXPECT_FALSE(child<QLineEdit>(*dialog, "vault_old_passphrase")->isVisible());
    type(*dialog, "vault_passphrase", good_passphrase);
    type(*dialog, "vault_passphrase_again", good_passphrase);
    click(*dialog, "vault_change");
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->result() == QDialog::Accepted; }));
    EXPECT_TRUE(access().has_way(VaultWay::passphrase));
    keyring_.entries.clear();
    access().lock();
    auto unlock = shown<VaultUnlockDialog>();
    click(*unlock, "vault_unlock_keyring");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !trouble(*unlock).isEmpty(); }));
    EXPECT_THAT(trouble(*unlock).toStdString(), HasSubstr("no key of this vault"));
}

TEST_F(VaultDialogs, UnlocksByEnterAndSaysWhoItWas) {
    make_vault_directly();
    access().lock();
    auto dialog = shown<VaultUnlockDialog>();
    auto* who = child<QComboBox>(*dialog, "vault_who");
    who->lineEdit()->selectAll();
    QTest::keyClicks(who, QStringLiteral("Tess Okoro"));
    type(*dialog, "vault_passphrase", good_passphrase);
    QTest::keyClick(child<QLineEdit>(*dialog, "vault_passphrase"), Qt::Key_Return);
    // The passphrase is out of the field before the work is done.
    EXPECT_EQ(child<QLineEdit>(*dialog, "vault_passphrase")->text(), QString());
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->result() == QDialog::Accepted; }));
    EXPECT_EQ(access().vault()->who(), "Tess Okoro");
    EXPECT_THAT(mark().toStdString(), HasSubstr("Tess Okoro"));
}

TEST_F(VaultDialogs, AWrongPassphraseWaits) {
    make_vault_directly();
    access().lock();
    // After a first try one waits a second at most, which a busy machine needs to get here; after
    // the ninth some minutes.
    QSqlQuery tries(keeper_->database()->connection());
    ASSERT_TRUE(tries.exec(QStringLiteral(
        "INSERT OR REPLACE INTO vault_tries (id, failed, last_at_s) VALUES (1, 8, 0)")));
    auto dialog = shown<VaultUnlockDialog>();
    EXPECT_FALSE(is_on(*dialog, "vault_unlock"));
    type(*dialog, "vault_passphrase", QStringLiteral("not this one at all"));
    click(*dialog, "vault_unlock");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !trouble(*dialog).isEmpty(); }));
    EXPECT_EQ(trouble(*dialog).toStdString(), "This passphrase does not open the vault.");
    EXPECT_FALSE(is_on(*dialog, "vault_unlock"));
    EXPECT_THAT(child<QPushButton>(*dialog, "vault_unlock")->text().toStdString(),
                HasSubstr("Wait"));
    EXPECT_EQ(access().state(), State::locked);
}

TEST_F(VaultDialogs, WithoutANameNobodyUnlocks) {
    make_vault_directly();
    access().lock();
    auto dialog = shown<VaultUnlockDialog>();
    type(*dialog, "vault_passphrase", good_passphrase);
    EXPECT_TRUE(is_on(*dialog, "vault_unlock"));
    child<QComboBox>(*dialog, "vault_who")->setEditText(QStringLiteral("  "));
    EXPECT_FALSE(is_on(*dialog, "vault_unlock"));
}

TEST_F(VaultDialogs, TheRecoveryKeyUnlocksAndAMistypedOneIsTold) {
    make_vault_directly();
    access().lock();
    auto dialog = shown<VaultUnlockDialog>();
    QTest::mouseClick(child<QCheckBox>(*dialog, "vault_use_recovery"), Qt::LeftButton,
                      Qt::NoModifier, QPoint(8, 8));
    ASSERT_TRUE(child<QLineEdit>(*dialog, "vault_recovery_key")->isVisible());
    QString key = typed_recovery_key();
    const QChar last = key.back();
    key.back() = last == u'2' ? u'3' : u'2';
    type(*dialog, "vault_recovery_key", key);
    click(*dialog, "vault_unlock");
    EXPECT_THAT(trouble(*dialog).toStdString(), HasSubstr("mistyped"));
    QTest::keyClick(child<QLineEdit>(*dialog, "vault_recovery_key"), Qt::Key_Backspace);
    type(*dialog, "vault_recovery_key", QString(last));
    click(*dialog, "vault_unlock");
    EXPECT_EQ(dialog->result(), QDialog::Accepted);
    EXPECT_EQ(access().state(), State::open);
}

TEST_F(VaultDialogs, LeavingWhileItChecksIsSafe) {
    make_vault_directly();
    access().lock();
    {
        auto dialog = shown<VaultUnlockDialog>();
        type(*dialog, "vault_passphrase", good_passphrase);
        click(*dialog, "vault_unlock");
        QTest::keyClick(dialog.get(), Qt::Key_Escape);
    }
    QThreadPool::globalInstance()->waitForDone();
    QCoreApplication::processEvents();
    EXPECT_EQ(access().state(), State::locked);
}

TEST_F(VaultDialogs, ChangesThePassphrase) {
    make_vault_directly();
    auto dialog = shown<VaultPassphraseDialog>();
    const QString fresh = QStringLiteral("a boat called nothing much");
    type(*dialog, "vault_old_passphrase", good_passphrase);
    type(*dialog, "vault_passphrase", fresh);
    EXPECT_FALSE(is_on(*dialog, "vault_change"));
    type(*dialog, "vault_passphrase_again", fresh);
    QTest::keyClick(child<QLineEdit>(*dialog, "vault_passphrase_again"), Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->result() == QDialog::Accepted; }));
    access().lock();
    EXPECT_TRUE(access()
                    .vault()
                    ->open_with_passphrase(SecretBytes::copy_of(fresh.toStdString()), "Mara")
                    .has_value());
}

TEST_F(VaultDialogs, AWrongOldPassphraseChangesNothing) {
    make_vault_directly();
    auto dialog = shown<VaultPassphraseDialog>();
    type(*dialog, "vault_old_passphrase", QStringLiteral("wrong"));
    type(*dialog, "vault_passphrase", QStringLiteral("a boat called nothing much"));
    type(*dialog, "vault_passphrase_again", QStringLiteral("a boat called nothing much"));
    click(*dialog, "vault_change");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !trouble(*dialog).isEmpty(); }));
    EXPECT_THAT(trouble(*dialog).toStdString(), HasSubstr("Nothing was changed"));
    // Locked from elsewhere, it closes.
    access().lock();
    EXPECT_FALSE(dialog->isVisible());
}

TEST_F(VaultDialogs, ANewRecoveryKeyCountsOnceItIsConfirmed) {
    make_vault_directly();
    {
        auto dialog = shown<RecoveryKeyDialog>();
        QTest::keyClick(dialog.get(), Qt::Key_Escape);
    }
    access().lock();
    EXPECT_TRUE(
        access()
            .unlock_with_recovery_key(SecretBytes::copy_of(typed_recovery_key().toStdString()),
                                      QStringLiteral("Mara"))
            .has_value());
    auto dialog = shown<RecoveryKeyDialog>();
    EXPECT_FALSE(is_on(*dialog, "recovery_keep"));
    confirm_recovery(*dialog);
    click(*dialog, "recovery_keep");
    EXPECT_EQ(dialog->result(), QDialog::Accepted);
    access().lock();
    EXPECT_FALSE(
        access()
            .unlock_with_recovery_key(SecretBytes::copy_of(typed_recovery_key().toStdString()),
                                      QStringLiteral("Mara"))
            .has_value());
}

TEST_F(VaultDialogs, TheRecoveryKeyIsSavedAsAPdf) {
    make_vault_directly();
    auto dialog = shown<RecoveryKeyDialog>();
    const QString path = folder_.filePath(QStringLiteral("key.pdf"));
    dialog->page()->choose_pdf_path = [path] { return path; };
    click(*dialog, "recovery_save");
    EXPECT_TRUE(QFile::exists(path));
    const QFileDevice::Permissions others = QFileDevice::ReadGroup | QFileDevice::ReadOther |
                                            QFileDevice::WriteGroup | QFileDevice::WriteOther;
    EXPECT_EQ(QFile::permissions(path) & others, QFileDevice::Permissions());
    EXPECT_THAT(child<QLabel>(*dialog, "recovery_said")->text().toStdString(),
                HasSubstr(path.toStdString()));
}

TEST_F(VaultDialogs, ThePaperHoldsEveryGroupAndSaysWhatItOpens) {
    const SecretBytes key = new_recovery_key();
    const Page page = recovery_sheet(key, QStringLiteral("4 July 2026"), database_path());
    const std::string said = words_on(page).join(u'\n').toStdString();
    for (const std::string& group : recovery_groups(key)) EXPECT_THAT(said, HasSubstr(group));
    EXPECT_THAT(said, HasSubstr("4 July 2026"));
    EXPECT_THAT(said, Not(HasSubstr("…")));
    const QRectF paper(QPointF(0, 0), paper_size(page.paper));
    for (const SheetItem& item : page.items) EXPECT_TRUE(paper.contains(rect_of(item)));
}

TEST_F(VaultDialogs, TheAuditTrailShowsWhoOpenedWhatAndIsChecked) {
    make_vault_directly();
    ASSERT_TRUE(access().put(first_guest(), HealthKind::signature, "M0 0").has_value());
    ASSERT_TRUE(access().open(first_guest(), HealthKind::signature).has_value());
    auto dialog = shown<AuditDialog>();
    auto* table = child<QTableView>(*dialog, "audit_table");
    ASSERT_EQ(table->model()->rowCount(), 3);
    const auto cell = [&](int row, int column) {
        return table->model()->index(row, column).data().toString().toStdString();
    };
    EXPECT_EQ(cell(0, AuditModel::what), "Opened a record");
    EXPECT_EQ(cell(0, AuditModel::who), "Mara");
    EXPECT_EQ(cell(0, AuditModel::detail), "Signature");
    EXPECT_EQ(cell(0, AuditModel::guest), document_.session().guests.front().name);
    EXPECT_EQ(cell(2, AuditModel::what), "Set the vault up");
    auto* verdict = child<QLabel>(*dialog, "audit_verdict");
    EXPECT_THAT(verdict->text().toStdString(), HasSubstr("none changed"));
    access().lock();
    EXPECT_THAT(verdict->text().toStdString(), HasSubstr("only when the vault is unlocked"));
    EXPECT_EQ(table->model()->rowCount(), 4);
    QTest::keyClick(dialog.get(), Qt::Key_Escape);
    EXPECT_FALSE(dialog->isVisible());
}

TEST_F(VaultDialogs, TheyTakeNoMoreThanTheScreen) {
    make_vault_directly();
    auto dialog = shown<AuditDialog>();
    const QSize room = dialog->screen()->availableSize();
    ASSERT_LT(room.width(), 860) << "else this shows nothing";
    EXPECT_LE(dialog->width(), room.width());
    QDialog high;
    auto* layout = new QVBoxLayout(&high);
    for (int i = 0; i < 6; ++i) layout->addWidget(new QListWidget(&high));
    ASSERT_GT(layout->totalSizeHint().height(), room.height()) << "else this shows nothing";
    size_for_texts(high, 480);
    EXPECT_LE(high.height(), room.height());
    EXPECT_EQ(high.width(), 480);
}

TEST_F(VaultDialogs, TheAuditTrailSaysWhenItWasChangedOrARecordTakenOut) {
    make_vault_directly();
    ASSERT_TRUE(access().put(first_guest(), HealthKind::signature, "M0 0").has_value());
    auto dialog = shown<AuditDialog>();
    auto* verdict = child<QLabel>(*dialog, "audit_verdict");
    const auto change_from_outside = [&](const char* sql) {
        const QString name = QStringLiteral("outside");
        {
            QSqlDatabase outside = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
            outside.setDatabaseName(database_path());
            ASSERT_TRUE(outside.open());
            QSqlQuery query(outside);
            ASSERT_TRUE(query.exec(QString::fromLatin1(sql)));
        }
        QSqlDatabase::removeDatabase(name);
        click(*dialog, "audit_again");
    };
    ASSERT_NO_FATAL_FAILURE(change_from_outside("DELETE FROM health_records"));
    EXPECT_THAT(verdict->text().toStdString(), HasSubstr("from outside: 1."));
    ASSERT_NO_FATAL_FAILURE(
        change_from_outside("UPDATE health_openings SET who = 'Nobody' WHERE number = 1"));
    EXPECT_THAT(verdict->text().toStdString(), HasSubstr("Broken at entry 1"));
}

TEST(AuditModelTest, IsAWellBehavedModel) {
    AuditModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.set_entries({{2, "2026-07-04T08:15:00Z", "Jo", "record_moved", 5, 1, "screening from 4"},
                       {1, "nonsense", "", "an event of later", 0, 0, "end_cut 7"}},
                      {{5, QStringLiteral("Anna")}});
    const auto cell = [&](int row, int column) {
        return model.index(row, column).data().toString().toStdString();
    };
    EXPECT_EQ(cell(0, AuditModel::guest), "Anna");
    EXPECT_EQ(cell(0, AuditModel::detail), "Screening answers");
    EXPECT_EQ(cell(1, AuditModel::when), "nonsense");
    EXPECT_EQ(cell(1, AuditModel::what), "an event of later");
    EXPECT_EQ(cell(1, AuditModel::detail), "at entry 7");
    EXPECT_EQ(cell(1, AuditModel::guest), "");
    model.set_entries({}, {});
    EXPECT_EQ(model.rowCount(), 0);
}

}  // namespace
}  // namespace leadline::testing
