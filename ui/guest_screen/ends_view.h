// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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

/// At which reading low on air is signalled: the highest of those who are briefed, whoever is
/// picked, so that nobody signals too late; each one's own below it where they differ and there is
/// room; and to ask for it where somebody's cylinder is not known.
QString low_on_air_words(const GuestScreenControl& control);

}  // namespace leadline
