// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/debrief/review.h"
#include "core/planning/finding.h"
#include "core/planning/rules.h"
#include "core/planning/session.h"

namespace leadline {

// Short labels, translated, for every choice a person can see.
QString label(Severity severity);            ///< "Stop", "Care", "Note"
QString label(Phase phase);                  ///< "At the surface", "Down", "Skills", "Tour", "Up"
QString label(BreathingClass breathing);     ///< "Calm", "Not known", "Nervous", "Child"
QString label(Current current);              ///< "None", ...
QString label(Entry entry);                  ///< "From the shore", ...
QString label(StaffRole role);
QString label(CylinderMetal metal);
QString label(Answer answer);
QString label(ScreeningOutcome outcome);     ///< "Clear", "Physician first", ...
QString label(Standing standing);            ///< "read in the source", "from memory", ...
QString label(DepthSource source);
QString label(TodayOutcome outcome);         ///< "Not asked today", "Fit today", ...
QString label(SignatureKind signature);      ///< "Not signed", "Signed on paper", ...
QString label(TodayQuestion question);       ///< short: "Cold or blocked ears"
/// The whole question, put to the guest in our own plain words.
QString question(TodayQuestion question);
/// The edition of a check as people read it: "by the centre's own form", "edition Leadline 1";
/// empty for one not known.
QString edition_words(const std::string& edition);
/// What a guest must still bring or be told, in two or three words: "physician's release"; empty for
/// findings that are no such thing.
QString needed(FindingCode code);
/// "suit" -> "suit": the items of Finding::text for kit_missing.
QString kit_item(const QString& raw);
/// Name of a language in the window's language: "de" -> "German". The tag itself when unknown.
QString language_name(const std::string& tag);
/// "name: text", with the colon spaced as the window's language sets it.
QString with_colon(const QString& name, const QString& text);
/// The languages offered in lists, as BCP 47 tags.
QStringList common_languages();

}  // namespace leadline
