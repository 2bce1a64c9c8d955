// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "ui/sheet/card_canvas.h"
#include "ui/sheet/card_content.h"

namespace leadline {

// The parts of a card, from the top. Each is set at a height `y` and returns where it ends.

double set_card_name(CardCanvas& canvas, const CardContent& card, double y);
double set_card_meeting(CardCanvas& canvas, const CardContent& card, double y);
double set_card_kit(CardCanvas& canvas, const CardContent& card, double y);
double set_card_figures(CardCanvas& canvas, const CardContent& card, double y);
/// The size of the one rule: what the card has room for, on one line or on two.
double card_rule_points(const CardCanvas& canvas, const CardContent& card);
double set_card_rule(CardCanvas& canvas, const CardContent& card, double y);

/// What to do, and the hand signals below it: they take what is left between `top` and `bottom`.
void set_card_middle(CardCanvas& canvas, const CardContent& card, double top, double bottom);

/// Afterwards, whom to call, the QR code: set upwards from the lower edge; returns where it begins.
/// @param code  of the card's text; none: its place stays empty
double set_card_foot(CardCanvas& canvas, const CardContent& card,
                     const std::optional<QrItem>& code);

}  // namespace leadline
