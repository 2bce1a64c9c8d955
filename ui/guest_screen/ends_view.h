// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// What ends the dive for all: air, time, one guest's wish, ears, cold, the instructor's sign.
class EndsView : public ScreenView {
    Q_OBJECT
public:
    explicit EndsView(GuestScreenControl& control, QWidget* parent = nullptr);

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    GuestLabel* title_;
    GuestLabel* all_;
    GuestLabel* slow_;
    QGridLayout* grid_;
    std::vector<QWidget*> tiles_;
    GuestLabel* standing_;
};

/// The reading at which low on air is signalled: of the picked guest, else the highest of those who
/// are briefed, so that nobody signals too late. None: no cylinder of theirs is known.
std::optional<Bars> pressure_to_signal_at(const GuestScreenControl& control);

}  // namespace leadline
