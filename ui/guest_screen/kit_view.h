// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// The kit: each piece with its picture and what it is for; of the picked guest, the sizes.
class GuestKitView : public ScreenView {
    Q_OBJECT
public:
    explicit GuestKitView(GuestScreenControl& control, QWidget* parent = nullptr);
    bool take_key(int key) override;

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    GuestLabel* title_;
    GuestPicker* picker_;
    QGridLayout* grid_;
    std::vector<QWidget*> tiles_;
    GuestLabel* try_;
};

}  // namespace leadline
