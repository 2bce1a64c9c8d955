// SPDX-License-Identifier: GPL-3.0-or-later

// A day with the health vault, in a process of its own that a test looks at afterwards, and that
// may die in the middle of it:
//   vault_day FOLDER clean|kill|abort|plain|keyring
// FOLDER gets the records and all that the program writes. "plain" also writes the secrets
// unsealed, as a mistake would: the test's search must find them.

#include <QApplication>
#include <QFile>
#include <QSettings>
#include <QTextStream>
#include <csignal>
#include <iostream>

#include "app/commands.h"
#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "core/records/migrations.h"
#include "core/records/vault.h"
#include "tests/app/vault_secrets.h"
#include "ui/document/resources.h"
#include "ui/document/session_document.h"
#include "ui/shell/keyring.h"
#include "ui/shell/main_window.h"
#include "ui/shell/record_keeper.h"
#include "ui/shell/vault_access.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

constexpr StretchingCost cheap{1, 8 * 1024};

template <typename T>
T must(Result<T> result) {
    if (result) return std::move(*result);
    std::cerr << "failed: " << words(result.error()).toStdString() << std::endl;
    std::exit(3);
}

/// What a user reads when something fails.
template <typename T>
void say_failure(const Result<T>& result) {
    if (!result) std::cerr << words(result.error()).toStdString() << std::endl;
}

SecretBytes secret(const char* text) {
    return SecretBytes::copy_of(text);
}

/// Records of all kinds for two guests, written, read, and refused.
void use_vault(VaultAccess& access, const Session& session) {
    for (const auto& [kind, content] : test::secret_contents) {
        for (std::size_t i = 0; i < 2; ++i) {
            must(access.put(session.guests.at(i).id, kind, content));
            must(access.open(session.guests.at(i).id, kind));
        }
    }
    say_failure(
        access.put(GuestId("nobody"), HealthKind::screening, test::secret_contents[0].second));
    say_failure(access.put(session.guests.front().id, HealthKind::screening,
                           std::string(test::secret_contents[0].second) + "\xff"));
    Vault& vault = *access.vault();
    must(vault.change_passphrase(secret(test::first_passphrase), secret(test::second_passphrase),
                                 cheap, "Mara"));
    access.lock();
    say_failure(access.put(session.guests.front().id, HealthKind::screening, "x"));
    say_failure(vault.open_with_passphrase(secret(test::wrong_passphrase), "Mara"));
    must(vault.open_with_recovery_key(test::recovery_text(), "Mara"));
    must(access.open(session.guests.front().id, HealthKind::signature));
}

void set_up(VaultAccess& access) {
    NewVault made = must(make_vault(VaultWay::passphrase, secret(test::first_passphrase), cheap));
    // A recovery key that the test knows.
    made.recovery_key = must(read_recovery_key(test::recovery_text()));
    made.wrapped.back() =
        must(wrap(made.data_key, VaultWay::recovery, made.recovery_key, made.vault_id, {}));
    must(access.keep(std::move(made), QStringLiteral("Mara")));
}

/// All that leaves the program: the session as a file, the plan, the cards.
void write_out(const SessionDocument& document, const QString& folder) {
    const QString file = folder + QStringLiteral("/session.json");
    must(write_text_file(file.toStdString(), write_session(document.file())));
    QTextStream out(stdout);
    QTextStream err(stderr);
    const Console console{out, err};
    CommandOptions options;
    options.file = file;
    options.json = true;
    run_plan(options, console);
    options.json = false;
    run_plan(options, console);
    options.output = folder + QStringLiteral("/cards.pdf");
    run_cards(options, console);
}

/// The copy that is kept before the next change of the schema, and the tables made anew.
void change_schema(Database& database) {
    std::vector<MigrationStep> steps = must(built_in_steps());
    steps.push_back(
        {newest_schema_version + 1, {QStringLiteral("ALTER TABLE sessions ADD COLUMN boat TEXT")}});
    must(migrate(database.connection(), steps));
}

void write_plainly(RecordKeeper& keeper, const QString& folder) {
    QFile file(folder + QStringLiteral("/plain.txt"));
    static_cast<void>(file.open(QIODevice::WriteOnly));
    int number = 0;
    for (const std::string& text : test::all_secrets()) {
        keeper.put_setting(QStringLiteral("plain-%1").arg(++number), QString::fromStdString(text));
        file.write(QByteArray::fromStdString(text));
        std::cerr << text << std::endl;
    }
    QSettings(QStringLiteral("leadline"), QStringLiteral("leadline"))
        .setValue(QStringLiteral("plain"), QString::fromUtf8(test::first_passphrase));
}

/// To be tried by hand in a desktop session; in the tests no keyring answers.
int try_keyring() {
    DesktopKeyring keyring;
    const QString entry = QStringLiteral("leadline-trial");
    QObject context;
    const auto leave = [](const Result<Done>& done) {
        say_failure(done);
        std::cerr << (done ? "the keyring works" : "the keyring failed") << std::endl;
        QCoreApplication::exit(0);
    };
    const auto compare = [&](const Result<SecretBytes>& found) {
        if (!found || found->view() != test::first_passphrase) {
            leave(found ? Error{ErrorCode::keyring_failed, {}, "another entry", {}}
                        : found.error());
            return;
        }
        keyring.remove(entry, &context, leave);
    };
    keyring.write(entry, secret(test::first_passphrase), &context, [&](const Result<Done>& done) {
        if (done) {
            keyring.read(entry, &context, compare);
        } else {
            leave(done);
        }
    });
    return QCoreApplication::exec();
}

int run(const QString& folder, const QString& how) {
    SessionDocument document(must(load_rule_book()));
    auto database = must(Database::open(folder + QStringLiteral("/records.sqlite")));
    Database& records = *database;
    RecordKeeper keeper(document, std::move(database));
    MainWindow window(document, keeper);
    window.show();
    if (!window.open_file(QStringLiteral(LEADLINE_SOURCE_DIR "/sample-sessions/salt-cove.json"))) {
        return 3;
    }
    must(keeper.keep());
    set_up(*window.health());
    use_vault(*window.health(), document.session());
    keeper.put_setting(QStringLiteral("units"), QStringLiteral("metric"));
    QCoreApplication::processEvents();
    if (how == QStringLiteral("plain")) write_plainly(keeper, folder);
    if (how == QStringLiteral("kill")) return std::raise(SIGKILL);
    if (how == QStringLiteral("abort")) std::abort();
    write_out(document, folder);
    window.health()->lock();
    change_schema(records);
    return 0;
}

}  // namespace
}  // namespace leadline

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() != 3) return 2;
    if (arguments[2] == QStringLiteral("keyring")) return leadline::try_keyring();
    return leadline::run(arguments[1], arguments[2]);
}
