// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_start.h"

#include <QApplication>
#include <QDate>
#include <QDir>
#include <QTabWidget>
#include <QTextStream>
#include <QTimer>
#include <QUndoStack>
#include <memory>

#include "app/commands.h"
#include "core/records/database.h"
#include "ui/document/resources.h"
#include "ui/document/session_document.h"
#include "ui/shell/main_window.h"
#include "ui/shell/record_keeper.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

Date today() {
    const QDate day = QDate::currentDate();
    return Date{std::chrono::year(day.year()),
                std::chrono::month(static_cast<unsigned>(day.month())),
                std::chrono::day(static_cast<unsigned>(day.day()))};
}

/// Without a file: the newest session on record, else a new one.
void open_start(RecordKeeper& keeper) {
    const auto sessions = keeper.sessions();
    if (sessions && !sessions->empty() && keeper.open_row(sessions->front().row)) return;
    SessionFile fresh{empty_session(today()), std::nullopt};
    fresh.session.leader = fresh.session.staff.front().id;
    static_cast<void>(keeper.open_new(std::move(fresh)).has_value());
}

/// Writes each tab as a PNG.
int write_pictures(MainWindow& window, const QString& folder) {
    QTextStream err(stderr);
    if (!QDir().mkpath(folder)) {
        err << QCoreApplication::translate("Commands", "%1 cannot be made.").arg(folder)
            << Qt::endl;
        return exit_bad_input;
    }
    const QStringList names{QStringLiteral("roster"), QStringLiteral("site"),
                            QStringLiteral("gas"), QStringLiteral("briefing-sheet"),
                            QStringLiteral("debrief")};
    for (int tab = 0; tab < names.size(); ++tab) {
        window.tabs()->setCurrentIndex(tab);
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();  // a second round: layouts settle after the first
        const QString path = folder + u'/' + names[tab] + QStringLiteral(".png");
        if (!window.grab().save(path)) {
            err << QCoreApplication::translate("Commands", "%1 cannot be written.").arg(path)
                << Qt::endl;
            return exit_bad_input;
        }
    }
    return exit_ready;
}

}  // namespace

int run_window(QApplication& application, const WindowOptions& options) {
    QTextStream err(stderr);
    Result<RuleBook> rules = load_rule_book();
    if (!rules) {
        err << words(rules.error()) << Qt::endl;
        return exit_bad_input;
    }
    const QString path = options.database.isEmpty() ? default_database_path() : options.database;
    Result<std::unique_ptr<Database>> database = Database::open(path);
    QString database_message;
    if (!database) database_message = words(database.error());

    SessionDocument document(std::move(rules).value());
    RecordKeeper keeper(document,
                        database ? std::move(database).value() : std::unique_ptr<Database>());
    const bool dark = options.dark || keeper.setting(QStringLiteral("shade")) == QStringLiteral("dark");
    apply_theme(application, dark ? Shade::dark : Shade::light);
    if (options.file.isEmpty()) open_start(keeper);
    MainWindow window(document, keeper);
    if (!options.file.isEmpty() && !window.open_file(options.file)) {
        err << window.message() << Qt::endl;
        return exit_bad_input;
    }
    if (options.imperial) document.set_units(UnitSystem::imperial);
    if (!database_message.isEmpty()) window.show_message(database_message, Severity::stop);
    window.show();
    if (!options.pictures.isEmpty()) {
        QCoreApplication::processEvents();
        return write_pictures(window, options.pictures);
    }
    return QApplication::exec();
}

}  // namespace leadline
