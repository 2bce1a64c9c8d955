// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/planning/plan.h"
#include "core/planning/session.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A thing and what it is: a piece of kit and its size. An empty value is a line to write on.
struct CardFact {
    QString label;
    QString value;
    friend bool operator==(const CardFact&, const CardFact&) = default;
};

/// One of the big figures. An empty number is a line to write on.
struct CardFigure {
    QString label;   ///< "Low on air"
    QString number;  ///< "60"
    QString unit;    ///< "bar"
    QString action;  ///< "signal at once"; may be empty
    bool strong = false;  ///< the one figure that must be found first
    friend bool operator==(const CardFigure&, const CardFigure&) = default;
};

/// A short piece of advice with the word it is found by.
struct CardAdvice {
    QString head;
    QString text;
    friend bool operator==(const CardAdvice&, const CardAdvice&) = default;
};

struct CardSignal {
    QString picture;  ///< resource path of the drawing
    QString caption;
    friend bool operator==(const CardSignal&, const CardSignal&) = default;
};

/// What stands on a guest's card: words and numbers, translated, in one system of units. Holds
/// nothing private: no birth date, health, body measures, notes or reasons for an overrule.
struct CardContent {
    GuestId guest;
    QString name;
    QString group;                  ///< empty: in no group
    CardFact instructor;
    CardFact when;                  ///< date and meeting time
    CardFact where;                 ///< meeting place; the site where none is named
    std::vector<CardFact> kit;      ///< sizes and number of the set
    CardFact lead;
    CardFact cylinder;
    std::vector<CardFigure> figures;  ///< half, low on air, depth, time; half only where it helps
    QString breath_rule;
    QString breath_reason;
    QString breath_growth;  ///< how much a breath held from the deepest point grows, "×1.8"
    std::vector<CardAdvice> advice;
    std::vector<CardSignal> hand_signals;
    CardAdvice after;         ///< flying and mountains
    CardAdvice watch;         ///< signs to watch for
    QString call;             ///< stands before the number
    QString emergency_line;   ///< empty: a line to write on
    QString standing;         ///< what the card is not
    friend bool operator==(const CardContent&, const CardContent&) = default;
};

/// The card of one guest.
///
/// Figures err to the safe side: pressures are rounded up (to 10 bar or 50 psi), depth and time
/// down, the growth of a held breath up. The pressure for turning back is left out where it is not
/// above the one for low on air, or not below what the cylinder starts with.
///
/// @param plan  plan(session, ...) of this very session
/// @source  order of the card and what to do when separated (look around for up to a minute, then
///          go up): common practice, no source
CardContent card_content(const Session& session, const Plan& plan, const Guest& guest,
                         UnitSystem units);

/// Every text on a card, in reading order; empty ones left out.
QStringList all_words(const CardContent& content);

}  // namespace leadline
