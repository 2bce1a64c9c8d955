// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_layout.h"

#include <algorithm>
#include <array>
#include <optional>

#include "ui/sheet/card_setter.h"

namespace leadline {
namespace {

constexpr double mark_inset = 4.0;   // printers leave about 4 mm of the edge blank
constexpr double mark_length = 4.0;
constexpr double cross_arm = 2.5;
constexpr double mark_width = 0.1;
constexpr double fold_dash = 0.5;

/// How the cards of a size lie.
struct Grid {
    Paper paper;
    bool landscape;
    int columns;
    int rows;
};

Grid grid_of(CardSize size) {
    switch (size) {
        case CardSize::a6_on_a4: return {Paper::a4, false, 2, 2};
        case CardSize::quarter_letter: return {Paper::letter, false, 2, 2};
        case CardSize::a6: return {Paper::a6, false, 1, 1};
        case CardSize::a5_on_a4: return {Paper::a4, true, 2, 1};
        case CardSize::half_letter: return {Paper::letter, true, 2, 1};
        case CardSize::a5: return {Paper::a5, false, 1, 1};
        case CardSize::a4: return {Paper::a4, false, 1, 1};
        case CardSize::letter: return {Paper::letter, false, 1, 1};
    }
    return {Paper::a4, false, 2, 2};
}

/// The faces that lie in one row of a page, by their number in the list.
struct Row {
    std::array<std::optional<std::size_t>, 2> places;
    bool folded = false;
};

/// Rows of two: faces of one card together, single cards in the places that are free.
std::vector<Row> rows_of_two(const std::vector<CardContent>& cards) {
    std::vector<Row> rows;
    std::size_t open = cards.size();  // row with a free place; as many as cards: none
    for (std::size_t i = 0; i < cards.size(); ++i) {
        const bool pair = i + 1 < cards.size() && cards[i + 1].second_face;
        if (pair) {
            rows.push_back({{i, i + 1}, true});
            ++i;
        } else if (open < rows.size()) {
            rows[open].places[1] = i;
            open = cards.size();
        } else {
            rows.push_back({{i, std::nullopt}, false});
            open = rows.size() - 1;
        }
    }
    return rows;
}

LineItem mark(double x1, double y1, double x2, double y2) {
    return {QLineF(x1, y1, x2, y2), mark_width, Ink::black};
}

/// A short upright mark, whole for cutting, in dashes for folding.
void add_upright(Page& page, double x, double top, double bottom, bool folded) {
    if (!folded) {
        page.items.emplace_back(mark(x, top, x, bottom));
        return;
    }
    for (double y = top; y < bottom; y += 2.0 * fold_dash) {
        page.items.emplace_back(mark(x, y, x, std::min(y + fold_dash, bottom)));
    }
}

/// Marks at the edge of the paper, and where two cuts cross.
/// @param folded  for each row, whether its two faces are folded, not cut
void add_marks(const QSizeF& card, const Grid& grid, const std::array<bool, 2>& folded, Page& page) {
    const QSizeF paper = page_size(page);
    const double right = paper.width() - mark_inset;
    const double bottom = paper.height() - mark_inset;
    const double x = card.width();
    const double y = card.height();
    const bool last_folded = folded[static_cast<std::size_t>(grid.rows - 1)];
    add_upright(page, x, mark_inset, mark_inset + mark_length, folded[0]);
    add_upright(page, x, bottom - mark_length, bottom, last_folded);
    if (grid.rows == 1) return;
    page.items.emplace_back(mark(mark_inset, y, mark_inset + mark_length, y));
    page.items.emplace_back(mark(right - mark_length, y, right, y));
    page.items.emplace_back(mark(x - cross_arm, y, x + cross_arm, y));
    add_upright(page, x, y - cross_arm, y, folded[0]);
    add_upright(page, x, y, y + cross_arm, folded[1]);
}

Page empty_page(const Grid& grid) {
    Page page;
    page.paper = grid.paper;
    page.landscape = grid.landscape;
    return page;
}

void set_at(const CardContent& card, const QPointF& corner, const QSizeF& size,
            TypeSetter& setter, Page& page) {
    page.frames.emplace_back(corner, size);
    if (!set_card(card, page.frames.back(), setter, page)) {
        page.too_full.push_back(page.frames.back());
    }
}

std::vector<Page> pages_of_one(const std::vector<CardContent>& cards, const Grid& grid,
                               const QSizeF& size, TypeSetter& setter) {
    std::vector<Page> pages;
    for (const CardContent& card : cards) {
        pages.push_back(empty_page(grid));
        set_at(card, {0.0, 0.0}, size, setter, pages.back());
    }
    return pages;
}

}  // namespace

std::vector<CardSize> card_sizes() {
    return {CardSize::a6_on_a4, CardSize::quarter_letter, CardSize::a6, CardSize::a5_on_a4,
            CardSize::half_letter, CardSize::a5, CardSize::a4, CardSize::letter};
}

Paper paper_of(CardSize size) { return grid_of(size).paper; }

bool is_landscape(CardSize size) { return grid_of(size).landscape; }

QSizeF card_size(CardSize size) {
    const Grid grid = grid_of(size);
    if (size == CardSize::a6_on_a4) return paper_size(Paper::a6);
    if (size == CardSize::a5_on_a4) return paper_size(Paper::a5);
    const QSizeF paper = page_size(empty_page(grid));
    return {paper.width() / grid.columns, paper.height() / grid.rows};
}

int cards_on_page(CardSize size) {
    const Grid grid = grid_of(size);
    return grid.columns * grid.rows;
}

std::vector<Page> card_pages(const std::vector<CardContent>& cards, CardSize size) {
    TypeSetter setter;
    return card_pages(cards, size, setter);
}

std::vector<Page> card_pages(const std::vector<CardContent>& cards, CardSize size,
                             TypeSetter& setter) {
    const Grid grid = grid_of(size);
    const QSizeF card = card_size(size);
    if (grid.columns == 1) return pages_of_one(cards, grid, card, setter);
    const std::vector<Row> rows = rows_of_two(cards);
    const auto rows_on_page = static_cast<std::size_t>(grid.rows);
    std::vector<Page> pages;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const std::size_t row = i % rows_on_page;
        if (row == 0) {
            pages.push_back(empty_page(grid));
            const bool next_folded = i + 1 < rows.size() && rows[i + 1].folded;
            add_marks(card, grid, {rows[i].folded, grid.rows > 1 && next_folded}, pages.back());
        }
        for (std::size_t column = 0; column < rows[i].places.size(); ++column) {
            if (!rows[i].places[column]) continue;
            const QPointF corner(card.width() * static_cast<double>(column),
                                 card.height() * static_cast<double>(row));
            set_at(cards[*rows[i].places[column]], corner, card, setter, pages.back());
        }
    }
    return pages;
}

}  // namespace leadline
