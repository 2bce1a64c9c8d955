// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// How a number is shown with one hand, and the two signals that are mixed up most: a thumb up ends
/// the dive, a ring says that all is well.
class NumbersView : public ScreenView {
    Q_OBJECT
public:
    explicit NumbersView(GuestScreenControl& control, QWidget* parent = nullptr);

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    QBoxLayout* parts_;
    QGridLayout* digits_;
    std::vector<QWidget*> digit_tiles_;
    GuestLabel* title_;
    PictureView* ask_;
    GuestLabel* how_;
    QHBoxLayout* sample_;
    std::vector<PictureView*> sample_pictures_;
    std::vector<GuestLabel*> arrows_;  ///< one before each sign but the first
    GuestLabel* mixed_up_;
    PictureTile* thumb_;
    PictureTile* ring_;
};

}  // namespace leadline
