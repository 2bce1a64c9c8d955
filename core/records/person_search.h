// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSqlDatabase>
#include <QString>
#include <QStringList>
#include <QtGlobal>
#include <vector>

#include "core/physics/result.h"

// Finding persons while somebody types. The index (migrations/004_search_and_merges.sql) is kept in
// step by triggers; persons merged into others and persons removed are not in it.

namespace leadline {

/// The words of a typed text as they are searched: folded, cut at everything that is neither letter
/// nor digit, each once. Zeros in front of a number are dropped, since a phone number is kept with
/// or without them.
QStringList search_words(const QString& text);

/// Rows of the persons a text finds, at most `limit`.
///
/// Every word must be the start of a word of the name, or stand among the digits of the phone number
/// or in the e-mail address (from three signs on). In names written without spaces (Han, kana,
/// Hangul) a word may stand anywhere. Only where nobody is found so, one slip of the pen is forgiven
/// in every word of four letters or more: a letter wrong, missing, too many, or two swapped.
///
/// Names that begin with the first word come first, then other names, then those found by phone or
/// e-mail; each by name. Among more than a thousand found by phone or e-mail it is any thousand that
/// are put in order. A text of nothing but spaces finds all; one of nothing but other signs nobody.
Result<std::vector<qint64>> find_persons(const QSqlDatabase& database, const QString& text,
                                         int limit);

/// Persons who are shown: neither merged into others nor removed.
Result<int> count_persons(const QSqlDatabase& database);

/// Rows of the shown persons by name, from a place in that order on.
Result<std::vector<qint64>> persons_from(const QSqlDatabase& database, int first, int count);

/// Words on record that are one slip of the pen from a typed word, or begin with such a word. A slip
/// in the last letter counts only for words no longer than what was typed, as one who types on would
/// have found the others.
Result<QStringList> near_words(const QSqlDatabase& database, const QString& word);

}  // namespace leadline
