// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/ear_view.h"

#include <algorithm>

#include "ui/document/place_water.h"
#include "ui/document/session_document.h"
#include "ui/guest_screen/place_scene.h"
#include "ui/guest_words/guest_punctuation.h"

namespace leadline {
namespace {

constexpr double step_meters = 0.1;

QString feeling_words(EarFeeling feeling, const GuestTongue& tongue) {
    switch (feeling) {
        case EarFeeling::fine:
            return screen_word(ScreenWord::ear_fine, tongue);
        case EarFeeling::discomfort:
            return screen_word(ScreenWord::ear_discomfort, tongue);
        case EarFeeling::pain:
            return screen_word(ScreenWord::ear_pain, tongue);
        case EarFeeling::locked:
            return screen_word(ScreenWord::ear_locked, tongue);
    }
    return {};
}

}  // namespace

EarView::EarView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      parts_(screen_row()),
      buttons_(screen_row()),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      every_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      pinch_(new PictureView(5.0, this)),
      how_(new GuestLabel(TextRole::body, TextInk::ink, this)),
      try_(new GuestLabel(TextRole::body, TextInk::quiet, this)),
      scene_(new WaterScene(this)),
      ear_(new AirSpaceView(AirSpace::ear, 7.5, this)),
      state_(new EarStateTile(this)),
      depth_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      pressure_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      said_words_(new GuestLabel(TextRole::heading, TextInk::accent, this)),
      down_(new GuestButton(this)),
      up_(new GuestButton(this)),
      clear_(new GuestButton(this)),
      signal_(new GuestLabel(TextRole::body, TextInk::ink, this)),
      standing_(new GuestLabel(TextRole::small, TextInk::quiet, this)) {
    scene_->setObjectName(QStringLiteral("ear_scene"));
    down_->setObjectName(QStringLiteral("ear_down"));
    up_->setObjectName(QStringLiteral("ear_up"));
    clear_->setObjectName(QStringLiteral("ear_clear"));
    pressure_->setObjectName(QStringLiteral("ear_pressure"));
    clear_->set_strong(true);
    down_->setAutoRepeat(true);
    up_->setAutoRepeat(true);
    pinch_->set_picture(QStringLiteral(":/leadline/body/head-pinch-nose.svg"));

    auto* how = screen_row();
    how->addWidget(pinch_, 0, Qt::AlignTop);
    auto* advice = screen_column();
    advice->addWidget(every_);
    advice->addWidget(how_);
    advice->addStretch();
    how->addLayout(advice, 1);
    auto* numbers = screen_column();
    numbers->addWidget(depth_);
    numbers->addWidget(pressure_);
    numbers->addWidget(said_words_);
    numbers->addStretch();
    auto* trial = screen_row();
    trial->addWidget(ear_, 0, Qt::AlignTop);
    trial->addLayout(numbers, 1);
    buttons_->addWidget(up_, 1);
    buttons_->addWidget(down_, 1);
    buttons_->addWidget(clear_, 2);
    auto* right = screen_column();
    right->addLayout(how);
    right->addStretch(1);
    right->addWidget(state_);
    right->addLayout(trial);
    right->addLayout(buttons_);
    right->addWidget(signal_);
    right->addStretch(1);
    right->addWidget(standing_);
    auto* water = screen_column();
    water->addWidget(try_);
    water->addWidget(scene_, 1);
    parts_->addLayout(water, 2);
    parts_->addLayout(right, 4);
    auto* all = screen_column(this);
    all->addWidget(title_);
    all->addLayout(parts_, 1);

    // Another session's guests start at the surface.
    connect(&control.document(), &SessionDocument::opened, this, [this] {
        started_ = false;
        said_ = Said::nothing;
    });
    connect(scene_, &WaterScene::depth_wanted, this, &EarView::move_to);
    connect(down_, &QPushButton::clicked, this,
            [this] { move_to(trial_.depth.meters().value() + step_meters); });
    connect(up_, &QPushButton::clicked, this,
            [this] { move_to(trial_.depth.meters().value() - step_meters); });
    connect(clear_, &QPushButton::clicked, this, &EarView::clear);
}

bool EarView::take_key(int key) {
    switch (key) {
        case Qt::Key_Down:
            move_to(trial_.depth.meters().value() + step_meters);
            return true;
        case Qt::Key_Up:
            move_to(trial_.depth.meters().value() - step_meters);
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_C:
            clear();
            return true;
        default:
            return false;
    }
}

void EarView::move_to(double meters) {
    const Result<WaterColumn> water = place_water(control().document());
    if (!water) return;
    const double deepest = control().document().plan().environment.deepest.meters().value();
    trial_ = ear_trial_moved(*water, trial_, Depth(Meters(std::clamp(meters, 0.0, deepest))));
    said_ = Said::nothing;
    control().touch();
    show_trial();
    settle();
}

void EarView::clear() {
    const Result<WaterColumn> water = place_water(control().document());
    if (!water) return;
    said_ = can_clear(trial_) ? Said::cleared : Said::up_first;
    trial_ = ear_trial_cleared(*water, trial_);
    control().touch();
    show_trial();
    settle();
}

void EarView::take_words() {
    const Environment& place = control().document().plan().environment;
    const GuestFigures figures = control().figures();
    const Result<WaterColumn> water = place_water(control().document());
    if (water) {
        if (!started_) trial_ = ear_trial_at_surface(*water);
        // Another site or another depth: the trial goes on in the new water, with ears that came there
        // by land. At the surface they are fine, however thin the air was before.
        if (started_) trial_.middle_ear = trial_.middle_ear + (water->surface_pressure() - surface_);
        surface_ = water->surface_pressure();
        trial_ = ear_trial_moved(*water, trial_, std::min(trial_.depth, place.deepest));
        started_ = true;
    }
    title_->setText(say(ScreenWord::ears));
    every_->setText(say(ScreenWord::ears_every).arg(figures.clearing_step(place.ladder.step)));
    how_->setText(say(ScreenWord::ears_how));
    try_->setText(say(ScreenWord::ears_try));
    down_->setText(say(ScreenWord::go_down));
    up_->setText(say(ScreenWord::go_up));
    clear_->setText(say(ScreenWord::clear_now));
    signal_->setText(say(ScreenWord::ear_signal));
    standing_->setText(say(ScreenWord::standing));
    pinch_->setAccessibleName(say(ScreenWord::ears_how));
    WaterScene::Content content = place_scene(place, figures, tongue());
    for (const Depth depth : place.ladder.clear_at) {
        content.clear_at.push_back(depth.meters().value());
    }
    content.clear_words = say(ScreenWord::clear_here);
    scene_->set_content(std::move(content));
    scene_->setAccessibleName(say(ScreenWord::diver));
    show_trial();
}

void EarView::show_trial() {
    const GuestFigures figures = control().figures();
    const QString at = figures.depth_now(trial_.depth);
    depth_->setText(labelled(say(ScreenWord::depth), at, tongue()));
    scene_->setAccessibleDescription(at);
    pressure_->setText(
        labelled(say(ScreenWord::ear_pressure), figures.pressure(trial_.difference), tongue()));
    scene_->set_depth(trial_.depth.meters().value(), control().is_calm());
    ear_->set_share(trial_.difference.value() / eustachian_tube_locking.value());
    ear_->setAccessibleName(feeling_words(trial_.feeling, tongue()));
    state_->set_state(trial_.feeling, feeling_words(trial_.feeling, tongue()));
    // Room for either answer is kept, so that nothing moves under the finger.
    said_words_->setText(
        said_ == Said::nothing
            ? QStringLiteral(" ")
            : say(said_ == Said::cleared ? ScreenWord::ear_cleared : ScreenWord::ear_up_first));
    said_words_->set_ink(said_ == Said::up_first ? TextInk::warn : TextInk::accent);
}

void EarView::show_state(int state) {
    const auto feeling = static_cast<EarFeeling>(state);
    state_->set_state(feeling, feeling_words(feeling, tongue()));
    said_words_->setText(say(state % 2 == 0 ? ScreenWord::ear_cleared : ScreenWord::ear_up_first));
}

void EarView::arrange(bool portrait) {
    // The water keeps its height: the diver is dragged over it.
    parts_->setStretch(1, portrait ? 3 : 4);
    buttons_->setDirection(portrait ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

}  // namespace leadline
