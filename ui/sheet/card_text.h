// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/sheet/card_content.h"

namespace leadline {

/// A card as plain text, for its QR code: nothing that is not printed on the card itself. Where it
/// would take more bytes in UTF-8, whole lines are left out, the least needed first: whom to call, when
/// to signal and the one rule go before where to meet and the kit. No line is ever cut.
/// @param most_bytes  of the text; where even the first line is longer, the result is empty
QString card_as_text(const CardContent& card, qsizetype most_bytes);

}  // namespace leadline
