// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/stock_rows.h"

#include <utility>

#include "core/records/statement.h"

namespace leadline {

namespace {

/// Writes a list, `insert(position, item)` by item.
template <typename Items, typename Insert>
Result<Done> write_list(const Items& items, Insert insert) {
    int position = 0;
    for (const auto& item : items) {
        const Result<Done> done = insert(position++, item);
        if (!done) return done;
    }
    return Done{};
}

}  // namespace

Result<Done> write_stock(const QSqlDatabase& database, SessionRow row, const Stock& stock) {
    Statement cylinder(database, u"INSERT INTO stock_cylinders (session_id, position, "
                                 "cylinder_type, count) VALUES (?, ?, ?, ?)"_qs);
    Statement suit(database, u"INSERT INTO stock_suits (session_id, position, suit, count) "
                             "VALUES (?, ?, ?, ?)"_qs);
    Statement piece(database, u"INSERT INTO stock_lead_pieces (session_id, position, mass_kg) "
                              "VALUES (?, ?, ?)"_qs);
    return in_turn(
        [&] {
            return write_list(stock.cylinders, [&](int position, const CylinderStock& held) {
                return cylinder.run(row.value, position, held.type, held.count);
            });
        },
        [&] {
            return write_list(stock.suits, [&](int position, const SuitStock& held) {
                return suit.run(row.value, position, held.suit, held.count);
            });
        },
        [&] {
            return write_list(stock.lead_pieces, [&](int position, Kilograms mass) {
                return piece.run(row.value, position, mass);
            });
        });
}

Result<Stock> read_stock(const QSqlDatabase& database, SessionRow row) {
    auto cylinders =
        Statement(database, u"SELECT cylinder_type, count FROM stock_cylinders "
                            "WHERE session_id = ? ORDER BY position"_qs)
            .all(
                [](Row& found) {
                    return CylinderStock{CylinderTypeId(found.text()), found.small_number()};
                },
                row.value);
    if (!cylinders) return cylinders.error();
    auto suits = Statement(database, u"SELECT suit, count FROM stock_suits "
                                     "WHERE session_id = ? ORDER BY position"_qs)
                     .all([](Row& found) { return SuitStock{found.text(), found.small_number()}; },
                          row.value);
    if (!suits) return suits.error();
    auto pieces = Statement(database, u"SELECT mass_kg FROM stock_lead_pieces "
                                      "WHERE session_id = ? ORDER BY position"_qs)
                      .all([](Row& found) { return found.quantity<Kilograms>(); }, row.value);
    if (!pieces) return pieces.error();
    return Stock{std::move(*cylinders), std::move(*suits), std::move(*pieces)};
}

}  // namespace leadline
