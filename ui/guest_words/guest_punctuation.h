// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "ui/guest_words/guest_language.h"

namespace leadline {

/// A number with its unit, never parted at the end of a line. No space stands before a unit in
/// Chinese, Japanese or Korean letters ("30分").
/// @source  common practice, no source
QString number_with_unit(const QString& number, const QString& unit);

/// A share with its sign: "55 %"; without a space in Chinese, Japanese and Korean.
/// @source  common practice, no source
QString number_with_percent(const QString& number, const GuestTongue& tongue);

/// A label before what it names: "Depth: 3 m", in Chinese and Japanese with the wide colon that
/// has its own space, in French with a narrow space before the colon.
QString labelled(const QString& label, const QString& value, const GuestTongue& tongue);

/// Sentences one after another; the full stop of Chinese and Japanese has its own space.
QString sentences_together(const QStringList& sentences, const GuestTongue& tongue);

}  // namespace leadline
