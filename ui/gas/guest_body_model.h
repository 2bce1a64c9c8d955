// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gas/guest_body_words.h"
#include "ui/gas/id_row_model.h"

namespace leadline {

/// Every guest's warmth and lead as a row, in roster order.
class GuestBodyModel : public IdRowModel {
    Q_OBJECT
public:
    enum Column {
        name_column,
        group_column,
        feels_cold_column,
        too_cold_column,
        try_column,
        carried_column,
        note_column,
        surface_column,
        end_column,
        depth_column,
        suit_column,
        column_count
    };

    explicit GuestBodyModel(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    /// Takes over what the document now has.
    void refresh();

private:
    [[nodiscard]] Heading heading(int column) const override;
    [[nodiscard]] QVariant part(const std::string& id, int column, Part part) const override;
    [[nodiscard]] QString shown(const GuestBody& body, int column) const;
    [[nodiscard]] QString warmth_shown(const GuestBody& body, int column) const;
    [[nodiscard]] QString lead_shown(const GuestBody& body, int column) const;
    [[nodiscard]] QString told(const GuestBody& body, int column) const;
    [[nodiscard]] QVariant sorted(const GuestBody& body, int column) const;

    SessionDocument& document_;
};

}  // namespace leadline
