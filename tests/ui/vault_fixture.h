// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <map>
#include <memory>
#include <optional>

#include "ui/shell/keyring.h"
#include "ui/shell/main_window.h"
#include "ui/shell/record_keeper.h"
#include "ui/shell/vault_access.h"
#include "ui_fixture.h"

namespace leadline::testing {

/// A keyring in memory, which may also not answer at all.
class FakeKeyring final : public Keyring {
public:
    struct Content {
        bool answers = true;
        std::map<QString, std::string> entries;
    };
    explicit FakeKeyring(Content& content) : content_(content) {}
    void read(const QString& entry, QObject* context, Found found) override {
        later(context, [this, entry, found] {
            const auto it = content_.entries.find(entry);
            if (!content_.answers) {
                found(no_answer());
            } else if (it == content_.entries.end()) {
                found(Error{ErrorCode::not_found, "keyring", entry.toStdString(), {}});
            } else {
                found(SecretBytes::copy_of(it->second));
            }
        });
    }
    void write(const QString& entry, const SecretBytes& secret, QObject* context,
               Finished finished) override {
        later(context, [this, entry, text = std::string(secret.view()), finished] {
            if (content_.answers) content_.entries[entry] = text;
            finished(content_.answers ? Result<Done>(Done{}) : Result<Done>(no_answer()));
        });
    }
    void remove(const QString& entry, QObject* context, Finished finished) override {
        content_.entries.erase(entry);
        later(context, [finished] { finished(Done{}); });
    }

private:
    static Error no_answer() { return Error{ErrorCode::keyring_failed, {}, "no service", {}}; }
    template <typename Act>
    static void later(QObject* context, Act act) {
        QMetaObject::invokeMethod(context, std::move(act), Qt::QueuedConnection);
    }
    Content& content_;
};

inline constexpr StretchingCost cheap{1, 8 * 1024};
inline const QString good_passphrase = QStringLiteral("seven grey seals asleep");

/// A window over records in a folder that vanishes, with a session kept and a vault that opens
/// fast.
class VaultWindow : public DocumentTest {
protected:
    void SetUp() override { start(); }

    void start() {
        window_.reset();
        keeper_.reset();
        Result<std::unique_ptr<Database>> database = Database::open(database_path());
        ASSERT_TRUE(database.has_value());
        keeper_ = std::make_unique<RecordKeeper>(document_, std::move(database).value());
        window_ = std::make_unique<MainWindow>(document_, *keeper_);
        access().set_cost(cheap);
        access().set_keyring(std::make_unique<FakeKeyring>(keyring_));
        window_->resize(1280, 800);
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
        const auto sessions = keeper_->sessions();
        if (sessions && !sessions->empty()) {
            ASSERT_TRUE(keeper_->open_row(sessions->front().row).has_value());
        } else {
            ASSERT_TRUE(keeper_->open_new(sample("salt-cove")).has_value());
            ASSERT_TRUE(keeper_->keep().has_value());
        }
    }
    VaultAccess& access() { return *window_->health(); }
    [[nodiscard]] QString database_path() const {
        return folder_.filePath(QStringLiteral("records.sqlite"));
    }
    QAction* action(const char* name) {
        auto* found = window_->findChild<QAction*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QString mark() { return child<QToolButton>(*window_, "vault_mark")->accessibleName(); }
    GuestId first_guest() { return document_.session().guests.front().id; }

    /// A vault without the dialog.
    void make_vault_directly() {
        Result<NewVault> made = make_vault(
            VaultWay::passphrase, SecretBytes::copy_of(good_passphrase.toStdString()), cheap);
        ASSERT_TRUE(made.has_value());
        recovery_ = made->recovery_key.clone();
        ASSERT_TRUE(access().keep(std::move(*made), QStringLiteral("Mara")).has_value());
    }
    [[nodiscard]] QString typed_recovery_key() const {
        QStringList groups;
        for (const std::string& group : recovery_groups(recovery_)) {
            groups += QString::fromStdString(group).toLower();
        }
        return groups.join(u' ');
    }
    /// Types the group that the page asks for.
    static void confirm_recovery(QWidget& dialog) {
        const QString asked = child<QLabel>(dialog, "recovery_question")->text();
        int number = 0;
        for (const QString& word : asked.split(u' ')) {
            if (word.toInt() > 0) number = word.toInt();
        }
        ASSERT_GE(number, 1) << asked.toStdString();
        const QByteArray name = QStringLiteral("recovery_group_%1").arg(number).toLatin1();
        QTest::keyClicks(child<QLineEdit>(dialog, "recovery_answer"),
                         child<QLabel>(dialog, name.constData())->text());
    }
    static QString trouble(QWidget& dialog) {
        return child<QLabel>(dialog, "vault_trouble")->text();
    }

    QTemporaryDir folder_;
    FakeKeyring::Content keyring_;
    SecretBytes recovery_;
    std::unique_ptr<RecordKeeper> keeper_;
    std::unique_ptr<MainWindow> window_;
};

}  // namespace leadline::testing
