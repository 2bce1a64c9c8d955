// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/afterwards_view.h"

#include <array>

#include "ui/document/session_document.h"

namespace leadline {
namespace {

/// Signs of decompression illness that a guest can notice, in plain words.
/// @source  from memory: Mitchell, Bennett & Moon, Decompression sickness and arterial gas
/// embolism,
///          N. Engl. J. Med. 386 (2022) 1254-1264; that most begin within 48 h: common practice.
///          Not all there are: any complaint after a dive is one for a physician
constexpr std::array<ScreenWord, 6> signs_to_watch{
    ScreenWord::watch_numb,  ScreenWord::watch_weak,   ScreenWord::watch_dizzy,
    ScreenWord::watch_tired, ScreenWord::watch_joints, ScreenWord::watch_breath,
};

}  // namespace

AfterwardsView::AfterwardsView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      grid_(screen_grid()),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      no_flying_(new GuestLabel(TextRole::title, TextInk::ink, this)),
      watch_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      call_(nullptr),
      say_dived_(nullptr),
      standing_(new GuestLabel(TextRole::small, TextInk::quiet, this)) {
    for (std::size_t k = 0; k < signs_to_watch.size(); ++k) {
        signs_.push_back(new GuestLabel(TextRole::heading, TextInk::ink, this));
    }
    auto* call = new ScreenTile(this, true);
    call_ = new GuestLabel(TextRole::title, TextInk::on_warn, call);
    say_dived_ = new GuestLabel(TextRole::heading, TextInk::on_warn, call);
    auto* words = screen_column(call);
    words->addWidget(call_);
    words->addWidget(say_dived_);
    auto* column = screen_column(this);
    column->addWidget(title_);
    column->addWidget(no_flying_);
    column->addStretch(1);
    column->addWidget(watch_);
    column->addLayout(grid_);
    column->addStretch(1);
    column->addWidget(call);
    column->addWidget(standing_);
}

void AfterwardsView::take_words() {
    const Session& session = control().document().session();
    const Plan& plan = control().document().plan();
    const GuestFigures figures = control().figures();
    title_->setText(say(ScreenWord::after));
    no_flying_->setText(say(ScreenWord::no_flying).arg(figures.hours_at_least(plan.limits.no_fly)));
    watch_->setText(say(ScreenWord::watch));
    for (std::size_t k = 0; k < signs_.size(); ++k) {
        static_cast<GuestLabel*>(signs_[k])->setText(QStringLiteral("•  ") +
                                                     say(signs_to_watch.at(k)));
    }
    const QString line = typed_text(session.site.emergency_line);
    call_->setText(line.isEmpty() ? say(ScreenWord::call_unknown)
                                  : say(ScreenWord::call).arg(line));
    say_dived_->setText(say(ScreenWord::say_dived));
    standing_->setText(say(ScreenWord::standing));
}

void AfterwardsView::arrange(bool portrait) {
    fill_grid(*grid_, signs_, portrait ? 1 : 2);
}

}  // namespace leadline
