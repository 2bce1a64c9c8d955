// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include <QCoreApplication>
#include <QFileInfo>

#include "app/plan_text.h"
#include "core/files/plan_json.h"
#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "core/planning/plan.h"
#include "ui/document/resources.h"
#include "ui/sheet/cards.h"
#include "ui/sheet/pdf.h"
#include "ui/words/error_words.h"
#include "ui/words/finding_words.h"

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

int exit_code(const std::vector<Finding>& findings) {
    return readiness(findings).may_dive() ? exit_ready : exit_stop;
}

}  // namespace

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

int run_cards(const CommandOptions& options, Console console) {
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
    const Result<int> written =
        write_cards_pdf(options.output, selection.cards,
                        options.letter ? CardSize::quarter_letter : CardSize::a6_on_a4,
                        card_document(session, selection.cards));
    if (!written) return refuse(written.error(), options, console);
    console.out << CommandTexts::tr("Cards: %1. Pages: %2. Written to %3")
                       .arg(selection.guests())
                       .arg(*written)
                       .arg(options.output)
                << Qt::endl;
    return selection.blocked.empty() ? exit_code(input->plan.findings) : exit_stop;
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
