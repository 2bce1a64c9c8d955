// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_setter.h"

#include <algorithm>
#include <iterator>

#include "ui/sheet/card_parts.h"
#include "ui/sheet/card_text.h"
#include "ui/sheet/qr_code.h"

namespace leadline {
namespace {

constexpr double base_width = 105.0;   // A6, for which the card is drawn
constexpr double base_height = 139.7;  // the lowest card: a quarter of Letter

// name points, lines; figure; rule, least on one line; body; foot; signal, kit sides; kit, where
// lines; gap.
constexpr CardRoom rooms[] = {
    {19.0, 3, 20.0, 20.5, 16.0, 9.0, 8.5, 10.5, 8.0, 2, 3, 1.6},
    {18.0, 3, 20.0, 20.0, 15.5, 8.5, 8.0, 9.0, 7.5, 2, 3, 1.2},
    {16.0, 3, 17.0, 18.0, 14.5, 8.5, 8.0, 7.5, 7.0, 2, 3, 0.9},
    {14.0, 2, 15.0, 16.0, 13.0, 8.0, 8.0, 6.5, 6.5, 2, 3, 0.7},
    {12.0, 2, 13.0, 14.0, 12.0, 8.0, 8.0, 5.0, 6.0, 2, 2, 0.5},
    {12.0, 2, 13.0, 14.0, 12.0, 8.0, 8.0, 5.0, 6.0, 2, 1, 0.5},
};

bool set_in_room(const CardContent& card, const QRectF& frame, CardRoom room,
                 const std::optional<QrItem>& code, TypeSetter& setter,
                 std::vector<SheetItem>& items) {
    CardCanvas canvas(frame, room, card.face, setter, items);
    // Nothing is larger than the one rule, in whatever language that is long.
    const double largest = card_rule_points(canvas, card);
    room.name_points = std::min(room.name_points, largest);
    room.figure_points = std::min(room.figure_points, largest);
    double y = set_card_name(canvas, card, canvas.inner().top());
    y = set_card_meeting(canvas, card, y + 0.4);
    y = set_card_kit(canvas, card, y + room.gap);
    y = set_card_figures(canvas, card, y + room.gap);
    y = set_card_rule(canvas, card, y + room.gap);
    const double foot = set_card_foot(canvas, card, code);
    set_card_middle(canvas, card, y + room.gap, foot - room.gap);
    return canvas.fits();
}

}  // namespace

bool set_card(const CardContent& card, const QRectF& frame, TypeSetter& setter, Page& page) {
    const double scale = std::min(frame.width() / base_width, frame.height() / base_height);
    const QRectF base(0.0, 0.0, frame.width() / scale, frame.height() / scale);
    const std::optional<QrItem> code = qr_code(card_as_text(card, most_code_bytes).toUtf8());
    std::vector<SheetItem> items;
    bool fits = false;
    for (const CardRoom& room : rooms) {
        items.clear();
        fits = set_in_room(card, base, room, code, setter, items);
        if (fits) break;
    }
    if (!fits) {
        // Words go before the code.
        items.clear();
        fits = set_in_room(card, base, std::end(rooms)[-1], std::nullopt, setter, items);
    }
    place(items, base, frame, card.face.right_to_left);
    page.items.insert(page.items.end(), items.begin(), items.end());
    return fits;
}

}  // namespace leadline
