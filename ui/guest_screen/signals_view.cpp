// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/signals_view.h"

#include <algorithm>

#include "ui/guest_words/signal_words.h"

namespace leadline {
namespace {

constexpr double shown_sign_ems = 6.0;

}  // namespace

std::vector<HandSignal> signals_of_part(int part) {
    std::vector<HandSignal> found;
    const int first = part * signals_on_a_page;
    const int end = std::min(first + signals_on_a_page, hand_signal_count);
    for (int k = std::max(first, 0); k < end; ++k) found.push_back(static_cast<HandSignal>(k));
    return found;
}

SignalsView::SignalsView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      grid_(screen_grid()) {
    for (int k = 0; k < signals_on_a_page; ++k) {
        tiles_.push_back(new PictureTile(shown_sign_ems, true, this));
    }
    auto* column = screen_column(this);
    column->addWidget(title_);
    column->addLayout(grid_, 1);
    connect(&control, &GuestScreenControl::page_changed, this, [this] {
        if (isVisible()) refresh();
    });
}

void SignalsView::take_words() {
    title_->setText(say(ScreenWord::signal_page));
    const PageStop& stop = control().stop();
    const std::vector<HandSignal> shown =
        signals_of_part(stop.page == ScreenPage::hand_signals ? stop.part : 0);
    shown_.clear();
    for (std::size_t k = 0; k < tiles_.size(); ++k) {
        auto* tile = static_cast<PictureTile*>(tiles_[k]);
        tile->setVisible(k < shown.size());
        if (k >= shown.size()) continue;
        tile->set(signal_picture(shown[k]), signal_caption(shown[k], tongue()),
                  signal_meaning(shown[k], tongue()), signal_making(shown[k], tongue()));
        shown_.push_back(tile);
    }
}

void SignalsView::arrange(bool portrait) {
    fill_grid(*grid_, shown_, portrait ? 1 : 2, true);
}

}  // namespace leadline
