// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_start.h"

#include <QApplication>
#include <QDate>
#include <QDir>
#include <QKeyEvent>
#include <QLocale>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QTabWidget>
#include <QTextStream>
#include <QTimer>
#include <QUndoStack>
#include <memory>
#include <optional>
#include <vector>

#include "app/commands.h"
#include "core/records/database.h"
#include "ui/document/resources.h"
#include "ui/document/session_document.h"
#include "ui/guest_screen/guest_screen.h"
#include "ui/guest_screen/screen_view.h"
#include "ui/shell/copy_timer.h"
#include "ui/shell/language_menu.h"
#include "ui/shell/main_window.h"
#include "ui/shell/record_keeper.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"
#include "ui/words/window_language.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class CommandWindowTexts {
    Q_DECLARE_TR_FUNCTIONS(Commands)
};

Date today() {
    const QDate day = QDate::currentDate();
    return Date{std::chrono::year(day.year()),
                std::chrono::month(static_cast<unsigned>(day.month())),
                std::chrono::day(static_cast<unsigned>(day.day()))};
}

/// Without a file: the newest session on record, else a new one.
void open_start(RecordKeeper& keeper) {
    const std::optional<SessionRow> newest = keeper.newest_session();
    if (newest && keeper.open_row(*newest)) return;
    SessionFile fresh{empty_session(today()), std::nullopt};
    fresh.session.leader = fresh.session.staff.front().id;
    static_cast<void>(keeper.open_new(std::move(fresh)).has_value());
}

/// One picture: a tab, and what must be seen on it.
struct Picture {
    int tab = 0;
    QString name;
    QString page_bar;  ///< a QTabBar on the tab; empty: none
    int page = 0;
    QString scroll_area;
    QString part;      ///< scrolled to in the area above; empty: the top
};

std::vector<Picture> all_pictures() {
    const QString pages = QStringLiteral("gas_pages");
    return {{0, QStringLiteral("roster"), {}, 0, {}, {}},
            {1, QStringLiteral("site"), {}, 0, {}, {}},
            {1, QStringLiteral("site-ears-and-lungs"), {}, 0, QStringLiteral("site_right"),
             QStringLiteral("ears_and_lungs")},
            {2, QStringLiteral("gas"), pages, 0, {}, {}},
            {2, QStringLiteral("gas-warmth-and-lead"), pages, 1, {}, {}},
            {2, QStringLiteral("gas-staff"), pages, 2, {}, {}},
            {3, QStringLiteral("briefing-sheet"), {}, 0, {}, {}},
            {4, QStringLiteral("debrief"), {}, 0, {}, {}}};
}

/// Layouts settle after the first round of events.
void settle() {
    QCoreApplication::processEvents();
    QCoreApplication::processEvents();
}

void show(MainWindow& window, const Picture& picture) {
    window.tabs()->setCurrentIndex(picture.tab);
    settle();
    if (auto* bar = window.findChild<QTabBar*>(picture.page_bar);
        bar != nullptr && !picture.page_bar.isEmpty()) {
        bar->setCurrentIndex(picture.page);
    }
    auto* area = window.findChild<QScrollArea*>(picture.scroll_area);
    auto* part = window.findChild<QWidget*>(picture.part);
    if (area != nullptr && part != nullptr && !picture.part.isEmpty()) {
        area->verticalScrollBar()->setValue(part->mapTo(area->widget(), QPoint()).y());
    }
    settle();
}

bool save(QWidget& widget, const QString& path) {
    if (widget.grab().save(path)) return true;
    QTextStream(stderr) << CommandWindowTexts::tr("%1 cannot be written.").arg(path) << Qt::endl;
    return false;
}

/// Pages of the guest screen; the diver has gone down by some keys where that shows something.
bool save_guest_screen(SessionDocument& document, const QString& folder) {
    GuestScreen screen(document);
    screen.control().set_calm(true);
    screen.resize(1280, 720);
    screen.show();
    const auto& stops = screen.control().stops();
    for (std::size_t k = 0; k < stops.size(); ++k) {
        screen.control().go_to(static_cast<int>(k));
        settle();
        for (int press = 0; press < 24; ++press) {
            QKeyEvent down(QEvent::KeyPress, Qt::Key_Down, Qt::NoModifier);
            QApplication::sendEvent(screen.view(), &down);
        }
        settle();
        if (!save(screen, folder + QStringLiteral("/guest-screen-%1.png").arg(k + 1))) return false;
    }
    return true;
}

/// Writes each picture as a PNG.
int write_pictures(MainWindow& window, SessionDocument& document, const QString& folder) {
    QTextStream err(stderr);
    if (!QDir().mkpath(folder)) {
        err << CommandWindowTexts::tr("%1 cannot be made.").arg(folder) << Qt::endl;
        return exit_bad_input;
    }
    for (const Picture& picture : all_pictures()) {
        show(window, picture);
        const QString path = folder + u'/' + picture.name + QStringLiteral(".png");
        if (!save(window, path)) return exit_bad_input;
    }
    return save_guest_screen(document, folder) ? exit_ready : exit_bad_input;
}

}  // namespace

void speak_and_write(const QString& chosen) {
    const QLocale system = QLocale::system();
    const QString tag = language_for(chosen, system.uiLanguages());
    speak(tag);
    QLocale::setDefault(locale_for(tag, system));
}

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
                        database ? std::move(database).value() : std::unique_ptr<Database>(),
                        nullptr, path);
    if (options.language.isEmpty()) {
        const QString name = QString::fromLatin1(language_setting);
        speak_and_write(keeper.setting(name).value_or(QString()));
    }
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
    if (options.pictures.isEmpty()) window.resize(within_screen(window, window.size()));
    window.show();
    if (!options.pictures.isEmpty()) {
        QCoreApplication::processEvents();
        return write_pictures(window, document, options.pictures);
    }
    CopyTimer copies(keeper.wanted_path());
    QObject::connect(&copies, &CopyTimer::failed, &window, [&window](const QString& message) {
        window.show_message(message, Severity::caution);
    });
    QObject::connect(&keeper, &RecordKeeper::about_to_close, &copies, &CopyTimer::pause);
    QObject::connect(&keeper, &RecordKeeper::database_changed, &copies, &CopyTimer::start);
    if (keeper.has_database()) copies.start();
    return QApplication::exec();
}

}  // namespace leadline
