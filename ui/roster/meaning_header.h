// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHeaderView>
#include <vector>

#include "core/files/booking_words.h"

class QComboBox;

namespace leadline {

/// The heading of a booking list's columns with a choice of meaning in each; the first column has
/// none. The choices can be reached by Tab, one after the other.
class MeaningHeader : public QHeaderView {
    Q_OBJECT
public:
    explicit MeaningHeader(QWidget* parent = nullptr);

    /// New choices, one a column of the list.
    void set_meanings(const std::vector<BookingField>& fields);
    /// Each meaning but `note` once: the column changed last has it before others. While somebody
    /// steps through a choice with the keys, the others are not changed by what is passed on the
    /// way; they are once the choice is left.
    [[nodiscard]] std::vector<BookingField> meanings() const;
    [[nodiscard]] const std::vector<QComboBox*>& choices() const { return choices_; }

    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void meanings_changed();

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;
    void updateGeometries() override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void place_choices();
    /// The choices come to show what meanings() says.
    void settle();

    std::vector<QComboBox*> choices_;
    std::size_t changed_last_ = 0;
};

}  // namespace leadline
