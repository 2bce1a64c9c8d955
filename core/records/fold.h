// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace leadline {

/// A name as it is searched: compatibility forms taken apart (NFKD), accents and other nonspacing
/// marks stripped, lower case, the letters that do not come apart spelled out (ø o, ł l, ß ss, æ ae,
/// œ oe, ı i, đ d, ð d, þ th, ς σ), one apostrophe for all, single spaces. "Łukasz  Ærø" becomes
/// "lukasz aero". For searching only: it makes different names alike.
/// @source  Unicode Standard Annex #15 (normalization forms); the letters by common practice
QString folded(const QString& name);

}  // namespace leadline
