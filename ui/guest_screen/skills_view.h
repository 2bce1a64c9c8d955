// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// What is practised before the tour, and what each is for.
class SkillsView : public ScreenView {
    Q_OBJECT
public:
    explicit SkillsView(GuestScreenControl& control, QWidget* parent = nullptr);

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    GuestLabel* title_;
    GuestLabel* how_;
    QGridLayout* grid_;
    std::vector<QWidget*> tiles_;
    std::vector<QWidget*> shown_;
};

}  // namespace leadline
