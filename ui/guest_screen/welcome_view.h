// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// Welcome: who dives today, when, where, with whom, how deep and how long.
class WelcomeView : public ScreenView {
    Q_OBJECT
public:
    explicit WelcomeView(GuestScreenControl& control, QWidget* parent = nullptr);

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    struct Fact {
        GuestLabel* label = nullptr;
        GuestLabel* value = nullptr;
    };
    [[nodiscard]] QString instructor() const;
    [[nodiscard]] QString place() const;
    QBoxLayout* parts_;
    GuestLabel* title_;
    GuestLabel* names_;
    GuestLabel* may_stop_;
    GuestLabel* may_ask_;
    GuestLabel* plan_title_;
    std::array<Fact, 5> facts_;
    GuestLabel* standing_;
};

}  // namespace leadline
