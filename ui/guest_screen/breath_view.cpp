// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/breath_view.h"

#include <algorithm>
#include <cmath>

#include "ui/document/place_water.h"
#include "ui/document/session_document.h"
#include "ui/guest_screen/place_scene.h"
#include "ui/guest_words/guest_punctuation.h"

namespace leadline {
namespace {

constexpr double key_step = 0.5;  // m
constexpr double drawing_ems = 4.6;

/// How far the drum is drawn bent: by the share of the pressure at which the tube locks.
double drawn_bend(Pascals difference) {
    return std::min(1.0, difference.value() / eustachian_tube_locking.value());
}

}  // namespace

BreathView::BreathView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      parts_(screen_row()),
      numbers_(screen_row()),
      tiles_(screen_grid()),
      never_hold_(new GuestLabel(TextRole::shout, TextInk::warn, this)),
      breathe_(new GuestLabel(TextRole::heading, TextInk::accent, this)),
      drag_(new GuestLabel(TextRole::body, TextInk::quiet, this)),
      scene_(new WaterScene(this)),
      depth_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      pressure_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      times_top_(new GuestLabel(TextRole::body, TextInk::ink, this)),
      standing_(new GuestLabel(TextRole::small, TextInk::quiet, this)) {
    never_hold_->setObjectName(QStringLiteral("never_hold"));
    scene_->setObjectName(QStringLiteral("breath_scene"));
    depth_->setObjectName(QStringLiteral("breath_depth"));
    pressure_->setObjectName(QStringLiteral("breath_pressure"));
    balloon_ = add_space(AirSpace::balloon);
    lungs_ = add_space(AirSpace::lungs);
    ear_ = add_space(AirSpace::ear);
    mask_ = add_space(AirSpace::mask);
    lungs_.text->setObjectName(QStringLiteral("breath_lungs"));
    balloon_.value->setObjectName(QStringLiteral("breath_balloon"));

    auto* water = screen_column();
    water->addWidget(drag_);
    water->addWidget(scene_, 1);
    numbers_->addWidget(depth_, 1);
    numbers_->addWidget(pressure_, 1);
    numbers_->addWidget(times_top_, 1);
    auto* right = screen_column();
    right->addLayout(numbers_);
    right->addLayout(tiles_, 1);
    right->addWidget(standing_);
    parts_->addLayout(water, 2);
    parts_->addLayout(right, 5);
    auto* all = screen_column(this);
    all->addWidget(never_hold_);
    all->addWidget(breathe_);
    all->addLayout(parts_, 1);
    connect(scene_, &WaterScene::depth_wanted, this, &BreathView::move_to);
}

BreathView::Space BreathView::add_space(AirSpace space) {
    auto* tile = new ScreenTile(this);
    Space made;
    made.view = new AirSpaceView(space, drawing_ems, tile);
    made.name = new GuestLabel(TextRole::heading, TextInk::accent, tile);
    made.value = new GuestLabel(TextRole::heading, TextInk::ink, tile);
    made.text = new GuestLabel(TextRole::body, TextInk::ink, tile);
    auto* row = screen_row(tile);
    row->addWidget(made.view, 0, Qt::AlignVCenter);
    auto* words = screen_column();
    words->addStretch();
    words->addWidget(made.name);
    words->addWidget(made.value);
    words->addWidget(made.text);
    words->addStretch();
    row->addLayout(words, 1);
    tile_widgets_.push_back(tile);
    return made;
}

bool BreathView::take_key(int key) {
    switch (key) {
        case Qt::Key_Down:
            move_to(wanted_ + key_step);
            return true;
        case Qt::Key_Up:
            move_to(wanted_ - key_step);
            return true;
        default:
            return false;
    }
}

void BreathView::move_to(double meters) {
    const double deepest = control().document().plan().environment.deepest.meters().value();
    wanted_ = std::clamp(meters, 0.0, deepest);
    control().touch();
    show_present();
    settle();
}

void BreathView::show_state(int /*state*/) {
    show_numbers(control().document().plan().environment.deepest.meters().value());
}

void BreathView::show_present() {
    show_numbers(wanted_);
    scene_->set_depth(wanted_, control().is_calm());
}

void BreathView::take_words() {
    const Environment& place = control().document().plan().environment;
    wanted_ = std::min(wanted_, place.deepest.meters().value());
    never_hold_->setText(say(ScreenWord::never_hold));
    breathe_->setText(say(ScreenWord::breathe));
    drag_->setText(say(ScreenWord::drag));
    balloon_.name->setText(say(ScreenWord::balloon));
    lungs_.name->setText(say(ScreenWord::lungs));
    ear_.name->setText(say(ScreenWord::ear_drum));
    mask_.name->setText(say(ScreenWord::mask));
    standing_->setText(say(ScreenWord::standing));
    scene_->set_content(place_scene(place, control().figures(), tongue()));
    scene_->setAccessibleName(say(ScreenWord::diver));
    show_present();
}

void BreathView::show_numbers(double meters) {
    const Result<WaterColumn> water = place_water(control().document());
    if (!water) return;
    const Result<BreathDemo> demo = breath_demo(*water, Depth(Meters(meters)));
    if (!demo) return;
    demo_ = *demo;
    const GuestFigures figures = control().figures();
    const QString at = figures.depth_now(demo_.depth);
    depth_->setText(labelled(say(ScreenWord::depth), at, tongue()));
    scene_->setAccessibleDescription(at);
    pressure_->setText(
        labelled(say(ScreenWord::pressure), figures.pressure(demo_.pressure), tongue()));
    times_top_->setText(say(ScreenWord::times_top).arg(figures.growth(demo_.pressure_ratio)));
    scene_->set_balloon(demo_.balloon_width);

    balloon_.view->set_share(demo_.balloon_width);
    balloon_.value->setText(say(ScreenWord::size_here).arg(figures.share(demo_.balloon_volume)));
    balloon_.text->setText(say(ScreenWord::balloon_says));

    const bool under = meters > 0.0;
    lungs_.view->set_share(std::cbrt(demo_.held_breath_growth));
    lungs_.value->setText(say(ScreenWord::lungs_breathe));
    QStringList held;
    if (under) {
        held << say(ScreenWord::lungs_held).arg(at, figures.growth(demo_.held_breath_growth))
             << say(ScreenWord::lungs_tear);
    }
    if (demo_.danger_ascent) {
        held << say(ScreenWord::lungs_tear_by).arg(figures.at_most(*demo_.danger_ascent));
    }
    lungs_.text->setText(sentences_together(held, tongue()));
    lungs_.text->setVisible(!held.isEmpty());

    const double bend = drawn_bend(demo_.uncleared);
    ear_.view->set_share(bend);
    ear_.value->setText(
        say(demo_.uncleared < ear_opening_least ? ScreenWord::ear_flat : ScreenWord::ear_bent));
    ear_.text->setText(say(ScreenWord::ear_says));
    mask_.view->set_share(demo_.balloon_volume);
    mask_.value->setText(
        say(demo_.uncleared < ear_opening_least ? ScreenWord::mask_loose : ScreenWord::mask_tight));
    mask_.text->setText(say(ScreenWord::mask_says));
}

void BreathView::arrange(bool portrait) {
    // The water keeps its height: the diver is dragged over it.
    parts_->setStretch(1, portrait ? 3 : 5);
    numbers_->setDirection(portrait ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    fill_grid(*tiles_, tile_widgets_, portrait ? 1 : 2);
}

}  // namespace leadline
