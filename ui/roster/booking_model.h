// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <memory>
#include <optional>
#include <vector>

#include "core/files/booking_csv.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A booking list on its way into the roster: the first column says whether a row will be added,
/// the others are those of the list, with what was understood of each cell.
class BookingModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit BookingModel(UnitSystem units, QObject* parent = nullptr);

    /// Another list; nothing is understood of it yet.
    void set_table(std::shared_ptr<const BookingTable> table);
    /// What the rows come to with these choices. What was ticked or unticked by hand stays.
    void set_preview(BookingPreview preview, const BookingChoices& choices);
    [[nodiscard]] const BookingPreview& preview() const { return preview_; }

    [[nodiscard]] bool is_ticked(int row) const;
    [[nodiscard]] int ticked() const;
    /// Ticked rows that cannot be added.
    [[nodiscard]] int ticked_with_error() const;
    [[nodiscard]] int repeats_left_out() const;
    void untick_errors();
    /// The guests of ticked rows, an age without birth date put into the note.
    [[nodiscard]] std::vector<Guest> guests() const;

    /// Everything to be said about a cell, the gravest first.
    [[nodiscard]] QStringList sentences(const QModelIndex& index) const;
    /// Whether one of them is an error of a ticked row.
    [[nodiscard]] bool is_error(const QModelIndex& index) const;
    /// The next cell with something to be said, after `from` and round to the start; ticked rows
    /// with errors only, where asked.
    [[nodiscard]] QModelIndex next_problem(const QModelIndex& from, bool errors_only) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void ticks_changed();

private:
    [[nodiscard]] const BookingRow* row_at(int row) const;
    [[nodiscard]] BookingField field_of(int column) const;
    [[nodiscard]] QString state_text(int row) const;
    [[nodiscard]] QString cell_text(const QModelIndex& index) const;
    [[nodiscard]] QString raw_text(const QModelIndex& index) const;
    [[nodiscard]] QVariant mark_of_cell(const QModelIndex& index) const;

    UnitSystem units_;
    std::shared_ptr<const BookingTable> table_;
    BookingPreview preview_;
    BookingChoices choices_;
    std::vector<std::optional<bool>> by_hand_;  ///< ticks set by the user
};

}  // namespace leadline
