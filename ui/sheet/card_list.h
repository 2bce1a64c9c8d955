// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidget>
#include <set>
#include <vector>

#include "core/planning/finding.h"

namespace leadline {

class SessionDocument;

/// The guests with a tick for whose card is wanted, and under each name whether it can be printed or
/// what stops it, and in which language it is. Several can be selected, to change their cards at once.
class CardList : public QListWidget {
    Q_OBJECT
public:
    explicit CardList(SessionDocument& document, QWidget* parent = nullptr);

    /// Guests whose card is not wanted.
    [[nodiscard]] const std::set<GuestId>& left_out() const { return left_out_; }
    [[nodiscard]] GuestId current_guest() const;
    /// The selected guests, roster order.
    [[nodiscard]] std::vector<GuestId> selected_guests() const;
    /// The first stop that keeps the current guest from a card; none: the card is ready.
    [[nodiscard]] std::optional<Finding> current_stop() const;
    void set_all_wanted(bool wanted);

Q_SIGNALS:
    /// Ticks, names, languages or stops have changed.
    void selection_changed();

private:
    void refresh();
    void note_tick(QListWidgetItem* item);

    SessionDocument& document_;
    std::set<GuestId> left_out_;
    bool filling_ = false;
};

}  // namespace leadline
