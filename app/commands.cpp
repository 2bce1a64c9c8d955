// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <optional>

#include "app/plan_text.h"
#include "core/files/plan_json.h"
#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "core/planning/plan.h"
#include "ui/document/resources.h"
#include "ui/guest_words/guest_language.h"
#include "ui/sheet/card_layout.h"
#include "ui/sheet/cards.h"
#include "ui/sheet/missing_letters.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/sheet_document.h"
#include "ui/sheet/sheet_words.h"
#include "ui/sheet/sheets.h"
#include "ui/words/error_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class CommandTexts {
    Q_DECLARE_TR_FUNCTIONS(Commands)
};

/// What every command starts from.
struct Input {
    SessionFile file;
    RuleBook rules;
    Plan plan;
};

Result<Input> read_input(const CommandOptions& options) {
    Result<RuleBook> rules = load_rule_book();
    if (!rules) return rules.error();
    const Result<std::string> text = read_text_file(options.file.toStdString());
    if (!text) return text.error();
    Result<SessionFile> file =
        read_session(*text, resource_text(QStringLiteral("schema/session.schema.json")));
    if (!file) return file.error();
    Result<Plan> planned = plan(file->session, *rules);
    if (!planned) return planned.error();
    return Input{std::move(file).value(), std::move(rules).value(), std::move(planned).value()};
}

int refuse(const Error& error, const CommandOptions& options, Console console) {
    // The error's place already names the file when the file itself could not be read.
    const bool names_file = error.place == options.file.toStdString();
    console.err << words(error, names_file ? QString() : options.file) << Qt::endl;
    return exit_bad_input;
}

FindingSpeaker speaker(const Session& session, UnitSystem units) {
    return [&session, units](const Finding& finding) {
        const FindingText text = words(finding, session, units);
        return FindingWords{text.what.toStdString(), text.remedy.toStdString()};
    };
}

QStringList sheet_kind_names() {
    return {QStringLiteral("beach"), QStringLiteral("skills"), QStringLiteral("kit"),
            QStringLiteral("emergency"), QStringLiteral("pictures")};
}

std::optional<SheetKind> sheet_kind(const QString& name) {
    // In the order of SheetKind, behind the cards.
    const auto index = sheet_kind_names().indexOf(name);
    if (index < 0) return std::nullopt;
    return static_cast<SheetKind>(index + 1);
}

/// In the order of card_size_names().
constexpr CardSize named_sizes[] = {
    CardSize::a6_on_a4, CardSize::a6,         CardSize::a5_on_a4,       CardSize::a5,
    CardSize::a4,       CardSize::quarter_letter, CardSize::half_letter, CardSize::letter,
};

std::optional<CardSize> chosen_size(const CommandOptions& options) {
    if (options.size.isEmpty()) {
        return options.letter ? CardSize::quarter_letter : CardSize::a6_on_a4;
    }
    const auto index = card_size_names().indexOf(options.size);
    if (index < 0) return std::nullopt;
    return named_sizes[index];
}

/// Takes the guests' languages into the choice; false: one of them is not known, or there are too many.
bool take_guest_languages(const QString& tags, SheetChoice& choice) {
    if (tags.isEmpty()) return true;
    const QStringList each = tags.split(u',');
    if (each.size() > 2) return false;
    for (const QString& tag : each) {
        if (find_guest_language(tag.trimmed().toStdString()) == nullptr) return false;
    }
    choice.language = each.front().trimmed().toStdString();
    if (each.size() == 2) choice.second_language = each.back().trimmed().toStdString();
    return true;
}

/// Says in which languages the cards are drafts.
void tell_drafts(const std::vector<CardContent>& cards, Console console) {
    QStringList sentences;
    for (const CardContent& card : cards) {
        const QString said = translation_review(GuestTongue::of(card.language));
        if (!said.isEmpty() && !sentences.contains(said)) sentences << said;
    }
    if (!sentences.isEmpty()) console.err << sentences.join(u' ') << Qt::endl;
}

int exit_code(const std::vector<Finding>& findings) {
    return readiness(findings).may_dive() ? exit_ready : exit_stop;
}

}  // namespace

QStringList card_size_names() {
    return {QStringLiteral("a6"),       QStringLiteral("a6-paper"),
            QStringLiteral("a5"),       QStringLiteral("a5-paper"),
            QStringLiteral("a4"),       QStringLiteral("quarter-letter"),
            QStringLiteral("half-letter"), QStringLiteral("letter")};
}

QStringList guest_language_tags() {
    QStringList tags;
    for (const GuestLanguage& language : guest_languages()) {
        tags << QString::fromStdString(language.tag);
    }
    return tags;
}

int run_plan(const CommandOptions& options, Console console) {
    const Result<Input> input = read_input(options);
    if (!input) return refuse(input.error(), options, console);
    const Session& session = input->file.session;
    if (options.json) {
        console.out << QString::fromStdString(
                           plan_to_json(session, input->plan, speaker(session, options.units)))
                    << Qt::endl;
    } else {
        console.out << plan_text(session, input->plan, options.units) << Qt::flush;
    }
    return exit_code(input->plan.findings);
}

/// Says which letters of the pages no font here has: they would be empty boxes.
void tell_unprintable(const std::vector<Page>& pages, Console console) {
    for (const Page& page : pages) {
        for (const UnprintableText& text : unprintable_letters(page)) {
            console.err << CommandTexts::tr(
                               "No font here has the letters %1 of \"%2\": write them by hand, or "
                               "install a font that has them.")
                               .arg(text.letters, text.line)
                        << Qt::endl;
        }
    }
}

/// Says what the cards lack: texts that were cut, and cards whose words do not all have room.
void tell_cut(const std::vector<Page>& pages, Console console) {
    int too_full = 0;
    QStringList told;  // a place stands on every card: once is enough
    for (const Page& page : pages) {
        for (const CutText& text : cut_texts(page)) {
            if (told.contains(text.shown)) continue;
            told << text.shown;
            console.err << CommandTexts::tr("Cut on a card for want of room: \"%1\". Shorten it.")
                               .arg(text.shown)
                        << Qt::endl;
        }
        too_full += static_cast<int>(page.too_full.size());
    }
    if (too_full > 0) {
        console.err << CommandTexts::tr(
                           "%n cards have no room for all their words: read them before you hand "
                           "them out.",
                           nullptr, too_full)
                    << Qt::endl;
    }
}

int run_cards(const CommandOptions& options, Console console) {
    const std::optional<CardSize> size = chosen_size(options);
    if (!size) {
        console.err << CommandTexts::tr("--size is one of %1.")
                           .arg(card_size_names().join(QStringLiteral(", ")))
                    << Qt::endl;
        return exit_bad_input;
    }
    const Result<Input> input = read_input(options);
    if (!input) return refuse(input.error(), options, console);
    const Session& session = input->file.session;
    const CardSelection selection = select_cards(session, input->plan, options.units);
    for (const GuestId& blocked : selection.blocked) {
        console.err << CommandTexts::tr(
                           "No card for %1: a stop stands. \"leadline plan\" says which.")
                           .arg(subject_name(blocked, session))
                    << Qt::endl;
    }
    if (selection.cards.empty()) {
        console.err << CommandTexts::tr("No cards were written.") << Qt::endl;
        return exit_stop;
    }
    for (const MissingLanguage& missing : selection.missing) {
        const QString said =
            missing.second
                ? CommandTexts::tr("The card of %1 lacks the second language: there is none in %2.")
                : CommandTexts::tr("The card of %1 is in English: there is none in %2.");
        console.err << said.arg(subject_name(missing.guest, session), language_name(missing.tag))
                    << Qt::endl;
    }
    tell_drafts(selection.cards, console);
    const std::vector<Page> pages = card_pages(selection.cards, *size);
    tell_unprintable(pages, console);
    tell_cut(pages, console);
    const Result<int> written =
        write_pages_pdf(options.output, pages, card_document(session, selection.cards));
    if (!written) return refuse(written.error(), options, console);
    console.out << CommandTexts::tr("Cards: %1. Pages: %2. Written to %3")
                       .arg(selection.guests())
                       .arg(*written)
                       .arg(options.output)
                << Qt::endl;
    return selection.blocked.empty() ? exit_code(input->plan.findings) : exit_stop;
}

int run_sheet(const CommandOptions& options, Console console) {
    const std::optional<SheetKind> kind = sheet_kind(options.kind);
    if (!kind) {
        console.err << CommandTexts::tr("--kind is one of %1.")
                           .arg(sheet_kind_names().join(QStringLiteral(", ")))
                    << Qt::endl;
        return exit_bad_input;
    }
    SheetChoice choice;
    choice.kind = *kind;
    if (!take_guest_languages(options.guest_languages, choice)) {
        console.err << CommandTexts::tr("--guest-language is one or two of %1, with a comma between.")
                           .arg(guest_language_tags().join(QStringLiteral(", ")))
                    << Qt::endl;
        return exit_bad_input;
    }
    const Result<Input> input = read_input(options);
    if (!input) return refuse(input.error(), options, console);
    const Session& session = input->file.session;
    choice.paper = options.letter ? Paper::letter : Paper::a4;
    TypeSetter setter;
    const std::vector<Page> pages =
        sheet_pages(choice, session, input->plan, options.units, setter);
    if (pages.empty()) {
        console.err << CommandTexts::tr(
                           "Nothing was written: there is no group. Make one on the Roster.")
                    << Qt::endl;
        return exit_stop;
    }
    tell_unprintable(pages, console);
    const PdfInfo info = sheet_document(choice, session);
    // The beach sheet tells ages and what health checks came to.
    const Result<int> written =
        write_pages_pdf(options.output, pages, info,
                        *kind == SheetKind::beach ? FileAccess::owner_only : FileAccess::usual);
    if (!written) return refuse(written.error(), options, console);
    console.out << CommandTexts::tr("Pages: %1. Written to %2").arg(*written).arg(options.output)
                << Qt::endl;
    return exit_code(input->plan.findings);
}

int run_review(const CommandOptions& options, Console console) {
    const Result<Input> input = read_input(options);
    if (!input) return refuse(input.error(), options, console);
    const Session& session = input->file.session;
    if (!input->file.log) {
        return refuse({ErrorCode::missing_field, "/", "log", ""}, options, console);
    }
    const Result<Review> reviewed = review(session, input->plan, *input->file.log, input->rules);
    if (!reviewed) return refuse(reviewed.error(), options, console);
    if (options.json) {
        console.out << QString::fromStdString(
                           review_to_json(session, *reviewed, speaker(session, options.units)))
                    << Qt::endl;
    } else {
        console.out << review_text(session, *reviewed, options.units) << Qt::flush;
    }
    return exit_code(reviewed->findings);
}

int run_without_display(const CommandOptions& options, Console console) {
    console.err << CommandTexts::tr(
                       "No display was found: showing the plan here and writing the cards.")
                << Qt::endl;
    const int planned = run_plan(options, console);
    if (planned == exit_bad_input) return planned;
    CommandOptions cards = options;
    if (cards.output.isEmpty()) {
        cards.output = QFileInfo(options.file).completeBaseName() + QStringLiteral("-cards.pdf");
    }
    return std::max(planned, run_cards(cards, console));
}

}  // namespace leadline
