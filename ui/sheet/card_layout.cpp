// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_layout.h"

#include "ui/sheet/card_setter.h"

namespace leadline {
namespace {

constexpr double mark_inset = 4.0;   // printers leave about 4 mm of the edge blank
constexpr double mark_length = 4.0;
constexpr double cross_arm = 2.5;
constexpr double mark_width = 0.1;

LineItem mark(double x1, double y1, double x2, double y2) {
    return {QLineF(x1, y1, x2, y2), mark_width, Ink::black};
}

/// Ticks on the two cuts at the edge of the paper, and a cross where the cuts meet.
void add_cut_marks(QSizeF paper, QSizeF card, Page& page) {
    const double x = card.width();
    const double y = card.height();
    const double right = paper.width() - mark_inset;
    const double bottom = paper.height() - mark_inset;
    page.items.emplace_back(mark(x, mark_inset, x, mark_inset + mark_length));
    page.items.emplace_back(mark(x, bottom - mark_length, x, bottom));
    page.items.emplace_back(mark(mark_inset, y, mark_inset + mark_length, y));
    page.items.emplace_back(mark(right - mark_length, y, right, y));
    page.items.emplace_back(mark(x - cross_arm, y, x + cross_arm, y));
    page.items.emplace_back(mark(x, y - cross_arm, x, y + cross_arm));
}

}  // namespace

Paper paper_of(CardSize size) {
    return size == CardSize::a6_on_a4 ? Paper::a4 : Paper::letter;
}

QSizeF card_size(CardSize size) {
    return size == CardSize::a6_on_a4 ? QSizeF(105.0, 148.0) : QSizeF(107.95, 139.7);
}

std::vector<Page> card_pages(const std::vector<CardContent>& cards, CardSize size) {
    const QSizeF card = card_size(size);
    std::vector<Page> pages;
    TypeSetter setter;
    for (std::size_t i = 0; i < cards.size(); ++i) {
        const std::size_t place = i % cards_on_page;
        if (place == 0) {
            pages.emplace_back();
            pages.back().paper = paper_of(size);
            add_cut_marks(paper_size(paper_of(size)), card, pages.back());
        }
        const QRectF frame(place % 2 == 0 ? 0.0 : card.width(), place < 2 ? 0.0 : card.height(),
                           card.width(), card.height());
        pages.back().frames.push_back(frame);
        set_card(cards[i], frame, setter, pages.back());
    }
    return pages;
}

}  // namespace leadline
