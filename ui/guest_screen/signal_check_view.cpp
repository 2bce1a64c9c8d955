// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/signal_check_view.h"

#include <QRandomGenerator>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/guest_words/signal_words.h"

namespace leadline {
namespace {

constexpr double asked_picture_ems = 9.0;
constexpr double said_picture_ems = 2.8;

}  // namespace

SignalCheckView::SignalCheckView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      seed([] { return QRandomGenerator::global()->generate64(); }),
      parts_(screen_row()),
      asked_(screen_column()),
      answers_(screen_grid()),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      picker_(new GuestPicker(control, this)),
      picture_(new PictureView(asked_picture_ems, this)),
      question_(new GuestLabel(TextRole::heading, TextInk::ink, this)),
      said_picture_(new PictureView(said_picture_ems, this)),
      said_words_(new GuestLabel(TextRole::heading, TextInk::accent, this)),
      start_(new GuestButton(this)),
      known_(screen_grid()),
      score_(new GuestLabel(TextRole::heading, TextInk::accent, this)),
      noted_(new GuestLabel(TextRole::small, TextInk::quiet, this)) {
    start_->setObjectName(QStringLiteral("check_start"));
    said_words_->setObjectName(QStringLiteral("check_said"));
    score_->setObjectName(QStringLiteral("check_score"));
    picture_->setObjectName(QStringLiteral("check_picture"));
    for (int k = 0; k < signal_choice_count; ++k) {
        auto* button = new GuestButton(this);
        button->setObjectName(QStringLiteral("answer_%1").arg(k + 1));
        connect(button, &QPushButton::clicked, this, [this, k] { answer(k); });
        answer_buttons_.push_back(button);
    }
    for (std::size_t k = 0; k < signals_to_know().size(); ++k) {
        known_labels_.push_back(new GuestLabel(TextRole::body, TextInk::ink, this));
    }
    connect(start_, &QPushButton::clicked, this, &SignalCheckView::start);
    // Another session's guests may bear the same ids.
    connect(&control.document(), &SessionDocument::opened, this, &SignalCheckView::drop);
    asked_->addStretch(0);
    asked_->addWidget(question_);
    asked_->addWidget(picture_, 0, Qt::AlignHCenter);
    asked_->addLayout(answers_);
    auto* said = screen_row();
    said->addWidget(said_picture_);
    said->addWidget(said_words_, 1);
    asked_->addLayout(said);
    asked_->addWidget(start_);
    asked_->addStretch(1);
    auto* tile = new ScreenTile(this);
    auto* known = screen_column(tile);
    known->addWidget(score_);
    known->addLayout(known_);
    known->addStretch(1);
    known->addWidget(noted_);
    parts_->addLayout(asked_, 3);
    parts_->addWidget(tile, 2);
    auto* all = screen_column(this);
    all->addWidget(title_);
    all->addWidget(picker_);
    all->addLayout(parts_, 1);
}

bool SignalCheckView::take_key(int key) {
    if (key >= Qt::Key_1 && key < Qt::Key_1 + signal_choice_count) {
        answer(key - Qt::Key_1);
        return true;
    }
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        start();
        return true;
    }
    if (key == Qt::Key_Up || key == Qt::Key_Down) {
        picker_->step(key == Qt::Key_Down ? 1 : -1);
        return true;
    }
    return false;
}

void SignalCheckView::start() {
    if (control().guest() == nullptr || (check_ && !check_->done())) return;
    check_.emplace(signals_to_know(), seed());
    guest_ = control().guest()->id;
    ++check_number_;
    said_ = Said::nothing;
    control().touch();
    // The button goes: the keyboard would fall to the bar.
    if (start_->hasFocus()) window()->setFocus();
    refresh();
}

void SignalCheckView::drop() {
    check_.reset();
    said_ = Said::nothing;
    guest_ = {};
}

void SignalCheckView::answer(int choice) {
    if (!check_ || check_->done()) return;
    const bool pressed = std::any_of(answer_buttons_.begin(), answer_buttons_.end(),
                                     [](const QWidget* button) { return button->hasFocus(); });
    last_ = *check_->question();
    const bool right = check_->answer(check_->choices().at(static_cast<std::size_t>(choice)));
    said_ = right ? Said::right : Said::wrong;
    control().touch();
    if (right) control().note_known(last_, check_number_);
    if (pressed && check_ && check_->done()) {
        // The answers go: the keyboard would fall to the bar.
        start_->show();
        start_->setFocus();
    }
    refresh();
}

void SignalCheckView::take_words() {
    const Guest* guest = control().guest();
    const int noted = guest == nullptr ? 0
                                       : static_cast<int>(check_on(guest->briefing, control().today())
                                                              .understood.size());
    // Another guest: another check. And where a note was taken back in the window, what was told is told
    // no more: the check would end with signals known that nobody keeps.
    if (check_ && (guest == nullptr || guest->id != guest_ || noted < noted_count_)) drop();
    noted_count_ = noted;
    title_->setText(say(ScreenWord::check));
    picker_->take_words();
    show_question();
    show_known();
}

void SignalCheckView::show_question() {
    const bool asking = check_ && !check_->done();
    const bool done = check_ && check_->done();
    picture_->setVisible(asking);
    question_->setVisible(asking || done);
    question_->setText(say(done ? ScreenWord::check_done : ScreenWord::check_question));
    start_->setVisible(!asking && control().guest() != nullptr);
    start_->set_strong(!done);
    // Before the first question the button is all there is, and stands in the middle.
    asked_->setStretch(0, check_ ? 0 : 1);
    start_->setText(say(done ? ScreenWord::check_again : ScreenWord::check_start));
    for (std::size_t k = 0; k < answer_buttons_.size(); ++k) {
        auto* button = static_cast<GuestButton*>(answer_buttons_[k]);
        button->setVisible(asking);
        if (!asking) continue;
        button->setText(QStringLiteral("%1. ").arg(k + 1) +
                        signal_caption(check_->choices().at(k), tongue()));
    }
    if (asking) {
        picture_->set_picture(signal_picture(*check_->question()));
        picture_->setAccessibleName(signal_making(*check_->question(), tongue()));
    }
    said_picture_->setVisible(said_ != Said::nothing);
    if (said_ != Said::nothing) said_picture_->set_picture(signal_picture(last_));
    said_words_->setVisible(check_.has_value());
    said_words_->set_ink(said_ == Said::wrong ? TextInk::ink : TextInk::accent);
    switch (said_) {
        case Said::nothing:
            said_words_->setText(QStringLiteral(" "));
            break;
        case Said::right:
            said_words_->setText(QStringLiteral("✓ ") + say(ScreenWord::check_right));
            break;
        case Said::wrong:
            said_words_->setText(
                QStringLiteral("↻ ") +
                say(ScreenWord::check_wrong).arg(isolated(signal_meaning(last_, tongue()))) + u' ' +
                say(ScreenWord::check_ask_again));
            break;
    }
}

void SignalCheckView::show_known() {
    const Guest* guest = control().guest();
    // What was known on another day is asked again.
    const BriefingCheck check =
        guest != nullptr ? check_on(guest->briefing, control().today()) : BriefingCheck{};
    const std::vector<HandSignal> asked = signals_to_know();
    int count = 0;
    for (std::size_t k = 0; k < asked.size(); ++k) {
        const bool known = is_understood(check, asked[k]);
        count += known ? 1 : 0;
        auto* label = static_cast<GuestLabel*>(known_labels_[k]);
        label->setText((known ? QStringLiteral("☑ ") : QStringLiteral("☐ ")) +
                       signal_caption(asked[k], tongue()));
        label->setAccessibleDescription(say(known ? ScreenWord::known : ScreenWord::not_known));
    }
    const QLocale& locale = tongue().locale();
    score_->setText(say(ScreenWord::check_score)
                        .arg(isolated(locale.toString(count)),
                             isolated(locale.toString(static_cast<int>(asked.size())))));
    const bool noted = check.checked_on.has_value();
    noted_->setText(
        noted
            ? say(ScreenWord::check_noted).arg(control().figures().day(*check.checked_on))
            : QString());
    noted_->setVisible(noted);
}

void SignalCheckView::arrange(bool portrait) {
    picker_->arrange(portrait);
    parts_->setDirection(portrait ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    fill_grid(*answers_, answer_buttons_, 2);
    fill_grid(*known_, known_labels_, portrait ? 3 : 1);
}

}  // namespace leadline
