// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// After the dive: how long not to fly, what to watch for, whom to call.
class AfterwardsView : public ScreenView {
    Q_OBJECT
public:
    explicit AfterwardsView(GuestScreenControl& control, QWidget* parent = nullptr);

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    QGridLayout* grid_;
    GuestLabel* title_;
    GuestLabel* no_flying_;
    GuestLabel* watch_;
    std::vector<QWidget*> signs_;
    GuestLabel* call_;
    GuestLabel* say_dived_;
    GuestLabel* standing_;
};

}  // namespace leadline
