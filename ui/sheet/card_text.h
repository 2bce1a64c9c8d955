// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/sheet/card_content.h"

namespace leadline {

/// A card as plain text, for its QR code: nothing that is not printed on the card itself. Where it
/// would take more bytes in UTF-8, lines stand in a briefer form (a long name ends in an ellipsis, depth
/// and time lose their labels) or are left out, the least needed first: whom to call, when to signal
/// and the one rule go before the name, where to meet and the kit. No number is ever cut.
/// @param most_bytes  of the text; a line that alone is longer leaves its room to the others
QString card_as_text(const CardContent& card, qsizetype most_bytes);

}  // namespace leadline
