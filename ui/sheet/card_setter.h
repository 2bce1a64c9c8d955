// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include "ui/sheet/card_content.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"

namespace leadline {

/// Sets one card into its frame on the page. Every item stays within the frame.
///
/// From the top: who and where; kit; the big figures; the one rule; what to do, with the hand
/// signals beside it; afterwards and whom to call. Who and figures have fixed heights; what to do
/// takes what is left and sets its type as large as that allows. Advice and figures are never cut;
/// where long names and numbers leave too little room, everything moves closer together.
void set_card(const CardContent& card, const QRectF& frame, TypeSetter& setter, Page& page);

}  // namespace leadline
