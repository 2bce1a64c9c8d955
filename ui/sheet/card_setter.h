// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include "ui/sheet/card_content.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"

namespace leadline {

/// Sets one face of a card into its frame on the page. Every item stays within the frame.
///
/// From the top: who and where; kit as pictures; the big figures; the one rule, largest; what to do;
/// the hand signals; afterwards, whom to call and the QR code. What to do and the signals take what is
/// left and are as large as that allows. Fixed words and figures are never cut; where long names,
/// numbers or languages leave too little room, everything moves closer together. A card larger than A6
/// is the same made larger, type and pictures too. For a language that runs from right to left the
/// card is mirrored, its pictures are not.
///
/// @returns whether all fixed words found room
bool set_card(const CardContent& card, const QRectF& frame, TypeSetter& setter, Page& page);

}  // namespace leadline
