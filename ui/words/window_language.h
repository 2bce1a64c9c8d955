// SPDX-License-Identifier: GPL-3.0-or-later
// The language of the window, of the sheets for staff and of the command line. What guests read has
// languages of its own (ui/guest_words).
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <vector>

namespace leadline {

/// A language in which the whole window can be shown.
struct WindowLanguage {
    QString tag;       ///< "de"
    QString own_name;  ///< "Deutsch"
    bool is_draft = false;  ///< no speaker has checked it (resources/translations/review.json)
};

/// English, the source, and every language of which no text was missing when this was built.
const std::vector<WindowLanguage>& window_languages();

/// What to show: the language chosen (a tag, empty: none) if it is offered, else the first offered
/// of those wanted (tags of the system such as "de-AT", the best first), else English.
QString language_for(const QString& chosen, const QStringList& wanted);

/// How dates and numbers are written in a language: as the system does if it speaks that language,
/// else as the language is written where the system stands, else where it comes from.
QLocale locale_for(const QString& tag, const QLocale& system);

/// Lets every text made from now on be in a language, Qt's own dialogs included; counts in English
/// get their forms ("1 guest", "2 guests"). May be called again. Errors: a tag that is not offered
/// is taken as English.
void speak(const QString& tag);

}  // namespace leadline
