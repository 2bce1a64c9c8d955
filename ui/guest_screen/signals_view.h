// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// The hand signals, a few at a time: picture, name, what it says and how it is made.
class SignalsView : public ScreenView {
    Q_OBJECT
public:
    explicit SignalsView(GuestScreenControl& control, QWidget* parent = nullptr);

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    GuestLabel* title_;
    QGridLayout* grid_;
    std::vector<QWidget*> tiles_;
    std::vector<QWidget*> shown_;
};

/// The signals of a part of the pages.
std::vector<HandSignal> signals_of_part(int part);

}  // namespace leadline
