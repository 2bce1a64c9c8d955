// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QCommandLineParser>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QTextStream>
#include <cstdio>

#include "app/commands.h"
#include "app/window_start.h"
#include "ui/words/window_language.h"

namespace {

using namespace leadline;

/// Names the context of this file's texts to lupdate.
class MainTexts {
    Q_DECLARE_TR_FUNCTIONS(Main)
};

bool is_command(const QString& word) {
    return word == u"plan" || word == u"cards" || word == u"sheet" || word == u"review";
}

/// Whether the first word that is no option names a command: it decides, before Qt starts, whether a
/// display is needed at all.
bool wants_command(int argc, char** argv) {
    for (int i = 1; i < argc; ++i) {
        const QString word = QString::fromLocal8Bit(argv[i]);
        if (!word.startsWith(u'-')) return is_command(word);
        if (word == u"--help" || word == u"-h" || word == u"--version" || word == u"-v") return true;
    }
    return false;
}

bool has_display() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

struct Call {
    QString command;  ///< empty: the window
    CommandOptions options;
    WindowOptions window;
};

QString language_tags() {
    QStringList tags;
    for (const WindowLanguage& language : window_languages()) tags << language.tag;
    return tags.join(QStringLiteral(", "));
}

int misuse(const QString& message) {
    QTextStream(stderr) << message << QStringLiteral("\n")
                        << MainTexts::tr("\"leadline --help\" shows how to call it.") << Qt::endl;
    return exit_bad_input;
}

void describe(QCommandLineParser& parser) {
    parser.setApplicationDescription(MainTexts::tr(
        "Plans a first, supervised scuba session, prints a card for every guest and reviews the "
        "log.\n\n"
        "  leadline [FILE]                        open the window\n"
        "  leadline plan FILE [--json]            numbers and findings\n"
        "  leadline cards FILE --output OUT.pdf   a card for every guest\n"
        "  leadline sheet FILE --kind KIND --output OUT.pdf   a sheet for staff\n"
        "  leadline review FILE [--json]          planned against actual\n\n"
        "Exit codes: 0 done; 1 a stop stands; 2 bad input.\n"
        "A planning aid: local law, the instructor and a physician come first."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("FILE"), MainTexts::tr("Session file to open."),
                                 QStringLiteral("[plan|cards|sheet|review] [FILE]"));
    parser.addOptions({
        {QStringLiteral("json"), MainTexts::tr("Write JSON; every key names its unit.")},
        {QStringLiteral("output"), MainTexts::tr("Where the cards or the sheet go."),
         QStringLiteral("PDF")},
        {QStringLiteral("kind"),
         MainTexts::tr("Which sheet: beach, skills, kit, emergency or pictures."),
         QStringLiteral("KIND")},
        {QStringLiteral("size"),
         MainTexts::tr("Cards: %1; a name with \"paper\" has one card on a sheet of that size.")
             .arg(card_size_names().join(QStringLiteral(", "))),
         QStringLiteral("SIZE")},
        {QStringLiteral("guest-language"),
         MainTexts::tr("The page of pictures: one language or two, for example \"de,ar\"; English "
                       "if none is given. There are: %1.")
             .arg(guest_language_tags().join(QStringLiteral(", "))),
         QStringLiteral("TAG[,TAG]")},
        {QStringLiteral("letter"), MainTexts::tr("Letter paper: cards of a quarter instead of A6.")},
        {QStringLiteral("imperial"), MainTexts::tr("Feet, psi and degrees Fahrenheit.")},
        {QStringLiteral("database"), MainTexts::tr("Records file to use instead of the default."),
         QStringLiteral("FILE")},
        {QStringLiteral("pictures"),
         MainTexts::tr("Write a picture of every tab to a folder and quit."),
         QStringLiteral("FOLDER")},
        {QStringLiteral("dark"), MainTexts::tr("Start with the dark look.")},
        {QStringLiteral("language"), MainTexts::tr("Language of the window, for example \"en\"."),
         QStringLiteral("TAG")},
    });
}

/// Turns the parsed line into a call; on misuse gives the message.
QString interpret(const QCommandLineParser& parser, Call& call) {
    QStringList words = parser.positionalArguments();
    if (!words.isEmpty() && is_command(words.front())) call.command = words.takeFirst();
    if (words.size() > 1)
        return MainTexts::tr("One file at a time: \"%1\" is too much.").arg(words[1]);
    call.options.file = call.window.file = words.value(0);
    call.options.output = parser.value(QStringLiteral("output"));
    call.options.kind = parser.value(QStringLiteral("kind"));
    call.options.size = parser.value(QStringLiteral("size"));
    call.options.guest_languages = parser.value(QStringLiteral("guest-language"));
    call.options.json = parser.isSet(QStringLiteral("json"));
    call.options.letter = parser.isSet(QStringLiteral("letter"));
    call.window.imperial = parser.isSet(QStringLiteral("imperial"));
    call.options.units = call.window.imperial ? UnitSystem::imperial : UnitSystem::metric;
    call.window.database = parser.value(QStringLiteral("database"));
    call.window.pictures = parser.value(QStringLiteral("pictures"));
    call.window.language = parser.value(QStringLiteral("language"));
    call.window.dark = parser.isSet(QStringLiteral("dark"));
    if (!call.command.isEmpty() && call.options.file.isEmpty()) {
        return MainTexts::tr("\"%1\" needs a session file.").arg(call.command);
    }
    if (!call.window.language.isEmpty() &&
        language_for(call.window.language, {}) != call.window.language) {
        return MainTexts::tr("\"%1\" is no language of the window. There are: %2.")
            .arg(call.window.language, language_tags());
    }
    if ((call.command == u"cards" || call.command == u"sheet") && call.options.output.isEmpty()) {
        return MainTexts::tr("\"%1\" needs --output OUT.pdf.").arg(call.command);
    }
    return {};
}

int run_command(const Call& call) {
    QTextStream out(stdout);
    QTextStream err(stderr);
    const Console console{out, err};
    if (call.command == u"plan") return run_plan(call.options, console);
    if (call.command == u"cards") return run_cards(call.options, console);
    if (call.command == u"sheet") return run_sheet(call.options, console);
    if (call.command == u"review") return run_review(call.options, console);
    return run_without_display(call.options, console);
}

}  // namespace

int main(int argc, char** argv) {
    QCoreApplication::setApplicationName(QStringLiteral("leadline"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LEADLINE_VERSION));
    const bool display = has_display();
    const bool headless = wants_command(argc, argv) || !display;
    if (headless && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication application(argc, argv);
    speak_and_write({});
    QCommandLineParser parser;
    describe(parser);
    if (!parser.parse(QCoreApplication::arguments())) return misuse(parser.errorText());
    if (parser.isSet(QStringLiteral("help"))) parser.showHelp(exit_ready);
    if (parser.isSet(QStringLiteral("version"))) parser.showVersion();
    Call call;
    if (const QString message = interpret(parser, call); !message.isEmpty()) return misuse(message);
    if (!call.window.language.isEmpty()) speak_and_write(call.window.language);
    if (!call.command.isEmpty()) return run_command(call);
    if (!display && call.window.pictures.isEmpty()) {
        if (call.options.file.isEmpty()) {
            return misuse(MainTexts::tr("No display was found, and no session file was named."));
        }
        return run_command(call);
    }
    return run_window(application, call.window);
}
