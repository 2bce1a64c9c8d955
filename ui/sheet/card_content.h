// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <string>
#include <string_view>
#include <vector>

#include "core/planning/plan.h"
#include "core/planning/session.h"
#include "ui/sheet/layout.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A thing and what it is. An empty value is a line to write on.
struct CardFact {
    QString label;
    QString value;
    friend bool operator==(const CardFact&, const CardFact&) = default;
};

/// A piece of kit, shown by its picture. An empty value is a line to write on.
struct CardKit {
    QString picture;  ///< resource path of the drawing
    QString name;     ///< for the QR code, where pictures cannot be
    QString value;    ///< "M", "40-41", "6 kg"
    friend bool operator==(const CardKit&, const CardKit&) = default;
};

/// One of the big figures. An empty number is a line to write on.
struct CardFigure {
    QString label;      ///< "Low on air"
    QString number;     ///< "60"
    QString unit;       ///< "bar"
    QString as_read;    ///< what the gauge shows where it reads in other units: "60 bar"
    QString action;     ///< "signal now"; may be empty
    QString picture;    ///< the hand signal that goes with it; may be empty
    friend bool operator==(const CardFigure&, const CardFigure&) = default;
};

struct CardSignal {
    QString picture;  ///< resource path of the drawing
    QString caption;
    QString warning;  ///< what it does not mean; mostly empty
    friend bool operator==(const CardSignal&, const CardSignal&) = default;
};

/// What stands on one face of a guest's card: words and numbers in one language and one system of
/// units. Holds nothing private: no birth date, health, body measures, notes or reasons for an
/// overrule.
struct CardContent {
    GuestId guest;
    std::string language;      ///< BCP 47 tag of the words; "en" where the guest's has none
    Typeface face;
    bool second_face = false;  ///< goes beside the card before it: the same guest, another language
    QString name;
    QString group;             ///< empty: in no group
    CardFact instructor;
    CardFact when;             ///< day and meeting time
    QString where;             ///< meeting place; the site where none is named
    std::vector<CardKit> kit;
    CardFigure low_on_air;     ///< the one figure that must be found first
    CardFigure deepest;
    CardFigure time;
    QString breath_rule;
    QString breath_reason;
    QString breath_growth;     ///< how much a breath held from the deepest point grows, "×1.8"
    std::vector<QString> advice;
    std::vector<CardSignal> hand_signals;
    QString no_flying;
    QString watch;             ///< signs to watch for
    QString call;              ///< stands before the number; without a colon
    QString emergency_line;    ///< empty: a line to write on
    QString understood;        ///< stands beside a box
    QString standing;          ///< what the card is not
    friend bool operator==(const CardContent&, const CardContent&) = default;
};

/// One face of a guest's card.
///
/// Figures err to the safe side: pressures are rounded up (to 10 bar or 50 psi), depth and time
/// down, the growth of a held breath up.
///
/// @param plan  plan(session, ...) of this very session
/// @param house_units  of the window and of the gauges; the guest's own habit goes before it
/// @param language  BCP 47 tag; English where there are no words in it
/// @source  order of the card and what to do when separated (look around for up to a minute, then
///          go up): common practice, no source
CardContent card_content(const Session& session, const Plan& plan, const Guest& guest,
                         UnitSystem house_units, std::string_view language);
/// The face in the guest's first language.
CardContent card_content(const Session& session, const Plan& plan, const Guest& guest,
                         UnitSystem house_units);

/// Every text on a card, in reading order; empty ones left out.
QStringList all_words(const CardContent& content);

}  // namespace leadline
