// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/numbers_view.h"

#include "ui/guest_words/signal_words.h"

namespace leadline {
namespace {

constexpr int most_digits = 4;
constexpr double sample_ems = 4.6;
constexpr double digit_ems = 3.2;

QString digit_picture(int digit) {
    return QStringLiteral(":/leadline/signals/number-%1.svg").arg(digit);
}

}  // namespace

NumbersView::NumbersView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      parts_(screen_row()),
      digits_(screen_grid()),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      ask_(new PictureView(sample_ems, this)),
      how_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      sample_(screen_row()),
      mixed_up_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      thumb_(new PictureTile(sample_ems, true, this)),
      ring_(new PictureTile(sample_ems, true, this)) {
    ask_->set_picture(signal_picture(HandSignal::how_much_air));
    for (int digit = 0; digit <= 9; ++digit) {
        auto* tile = new PictureTile(digit_ems, false, this);
        tile->set(digit_picture(digit), {}, QString::number(digit), {});
        digit_tiles_.push_back(tile);
    }
    auto* asked = screen_row();
    asked->addWidget(ask_);
    asked->addWidget(title_, 1);
    // The first sign stands where reading begins, as on the sheet of pictures.
    auto* sample = new QWidget(this);
    sample->setLayout(sample_);
    for (int k = 0; k < most_digits; ++k) {
        if (k > 0) {
            auto* arrow = new GuestLabel(TextRole::title, TextInk::ink, sample);
            arrow->setWordWrap(false);
            arrow->setText(QString(arrow_to_next_sign));
            arrows_.push_back(arrow);
            sample_->addWidget(arrow, 0, Qt::AlignVCenter);
        }
        auto* picture = new PictureView(sample_ems, sample);
        sample_pictures_.push_back(picture);
        sample_->addWidget(picture);
    }
    auto* numbers = screen_column();
    numbers->addLayout(asked);
    numbers->addWidget(how_);
    // At the side where the page begins.
    auto* sample_row = screen_row();
    sample_row->addWidget(sample);
    sample_row->addStretch(1);
    numbers->addLayout(sample_row);
    numbers->addStretch(1);
    auto* all_digits = new QWidget(this);
    all_digits->setLayoutDirection(Qt::LeftToRight);
    all_digits->setLayout(digits_);
    for (QWidget* tile : digit_tiles_) tile->setParent(all_digits);
    numbers->addWidget(all_digits);
    numbers->addStretch(1);

    auto* mixed = screen_column();
    mixed->addStretch(1);
    mixed->addWidget(mixed_up_);
    mixed->addWidget(thumb_);
    mixed->addWidget(ring_);
    mixed->addStretch(2);
    parts_->addLayout(numbers, 3);
    parts_->addLayout(mixed, 2);
    auto* all = screen_column(this);
    all->addLayout(parts_, 1);
}

void NumbersView::take_words() {
    const GuestFigures figures = control().figures();
    title_->setText(say(ScreenWord::numbers));
    ask_->setAccessibleName(say(ScreenWord::numbers));
    how_->setText(say(ScreenWord::numbers_how).arg(figures.sample_reading()));
    const QString digits = figures.sample_digits();
    for (int k = 0; k < most_digits; ++k) {
        PictureView* picture = sample_pictures_[static_cast<std::size_t>(k)];
        picture->setVisible(k < digits.size());
        if (k > 0) {
            arrows_[static_cast<std::size_t>(k - 1)]->setVisible(k < digits.size() &&
                                                                 control().right_to_left());
        }
        if (k >= digits.size()) continue;
        picture->set_picture(digit_picture(digits.at(k).digitValue()));
        picture->setAccessibleName(digits.mid(k, 1));
    }
    mixed_up_->setText(say(ScreenWord::mixed_up));
    thumb_->set(signal_picture(HandSignal::up), {}, say(ScreenWord::thumb_up), {});
    ring_->set(signal_picture(HandSignal::ok), {}, say(ScreenWord::ring_ok), {});
}

void NumbersView::arrange(bool portrait) {
    parts_->setDirection(portrait ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    fill_grid(*digits_, digit_tiles_, 5);
}

}  // namespace leadline
