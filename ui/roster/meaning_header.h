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
    /// A meaning given to one column is taken from the other that had it.
    void take_from_others(std::size_t column);

    std::vector<QComboBox*> choices_;
};

}  // namespace leadline
