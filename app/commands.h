// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QTextStream>

#include "ui/words/quantity_text.h"

namespace leadline {

/// Exit codes of the command line.
enum ExitCode {
    exit_ready = 0,      ///< done, and nothing stops the dive
    exit_stop = 1,       ///< done as far as allowed; a stop stands
    exit_bad_input = 2,  ///< the input or the call is wrong; nothing was done
};

/// Where a command writes, so that tests can read it.
struct Console {
    QTextStream& out;
    QTextStream& err;
};

struct CommandOptions {
    QString file;
    QString output;      ///< cards and sheet only
    QString kind;        ///< sheet only: beach, skills, kit, emergency or pictures
    bool json = false;   ///< plan and review only
    QString size;        ///< cards only: a name of card_size_names(); empty: as `letter` says
    QString guest_languages;  ///< the page of pictures only: "de" or "de,ar"; empty: English
    bool letter = false; ///< cards: quarter Letter instead of A6; sheet: Letter instead of A4
    UnitSystem units = UnitSystem::metric;
};

/// The sizes of cards as they are named on the command line: "a6", "a6-paper", ...
QStringList card_size_names();
/// The tags of the guests' languages.
QStringList guest_language_tags();

/// leadline plan FILE [--json]
int run_plan(const CommandOptions& options, Console console);
/// leadline cards FILE --output OUT.pdf [--size SIZE | --letter]
int run_cards(const CommandOptions& options, Console console);
/// leadline sheet FILE --kind KIND --output OUT.pdf [--letter] [--guest-language TAG[,TAG]]
int run_sheet(const CommandOptions& options, Console console);
/// leadline review FILE [--json]
int run_review(const CommandOptions& options, Console console);
/// The plan as text, then the cards beside the current folder: for a machine without a display.
int run_without_display(const CommandOptions& options, Console console);

}  // namespace leadline
