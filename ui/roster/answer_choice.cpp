// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/answer_choice.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include "ui/widgets/theme.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int id_of(Answer answer) { return static_cast<int>(answer); }

bool starts_with(const QString& word, const QString& key) {
    return !key.isEmpty() && word.startsWith(key, Qt::CaseInsensitive);
}

}  // namespace

AnswerSegment::AnswerSegment(Answer answer, QWidget* parent)
    : QAbstractButton(parent), answer_(answer) {
    setText(label(answer));
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize AnswerSegment::sizeHint() const {
    constexpr int beside = 26;
    constexpr int above = 10;
    return {fontMetrics().horizontalAdvance(text()) + beside, fontMetrics().height() + above};
}

void AnswerSegment::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Inks colours = inks(palette());
    const QRect frame = rect().adjusted(0, 0, -1, -1);
    QFont font = painter.font();
    QColor ink = palette().color(QPalette::ButtonText);
    if (isChecked() && answer_ != Answer::unanswered) {
        const bool yes = answer_ == Answer::yes;
        painter.fillRect(frame, yes ? colours.stop : palette().color(QPalette::Highlight));
        ink = palette().color(yes ? QPalette::Base : QPalette::HighlightedText);
        font.setBold(true);
    } else {
        painter.fillRect(frame, palette().color(isChecked() ? QPalette::Button : QPalette::Base));
    }
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawRect(frame);
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(rect(), Qt::AlignCenter, text());
    if (hasFocus()) {
        painter.setPen(QPen(ink, 2));
        painter.drawRect(rect().adjusted(4, 4, -4, -4));
    }
}

void AnswerSegment::keyPressEvent(QKeyEvent* event) {
    const bool plain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == 0;
    if (plain && event->key() == Qt::Key_Up) return Q_EMIT moved(-1);
    if (plain && event->key() == Qt::Key_Down) return Q_EMIT moved(1);
    for (const Answer answer : {Answer::no, Answer::yes}) {
        if (plain && starts_with(label(answer), event->text())) return Q_EMIT answered(answer);
    }
    if (plain && (event->key() == Qt::Key_Backspace || event->key() == Qt::Key_Minus)) {
        return Q_EMIT answered(Answer::unanswered);
    }
    QAbstractButton::keyPressEvent(event);
}

AnswerChoice::AnswerChoice(const QString& about, const QString& object_name, QWidget* parent)
    : QWidget(parent), buttons_(new QButtonGroup(this)) {
    setObjectName(object_name);
    setAccessibleName(about);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    const struct {
        Answer answer;
        const char* suffix;
    } segments[] = {{Answer::no, "_no"}, {Answer::yes, "_yes"}, {Answer::unanswered, "_open"}};
    for (const auto& segment : segments) {
        auto* button = new AnswerSegment(segment.answer, this);
        button->setObjectName(object_name + QLatin1String(segment.suffix));
        button->setAccessibleName(
            with_colon(about, segment.answer == Answer::unanswered ? tr("not answered")
                                                                   : label(segment.answer)));
        buttons_->addButton(button, id_of(segment.answer));
        row->addWidget(button);
        connect(button, &AnswerSegment::moved, this, &AnswerChoice::moved);
        connect(button, &AnswerSegment::answered, this, [this](Answer answer) {
            buttons_->button(id_of(answer))->setChecked(true);
            take_focus();
            Q_EMIT edited(answer);
            Q_EMIT moved(1);
        });
    }
    connect(buttons_, &QButtonGroup::idClicked, this,
            [this](int id) { Q_EMIT edited(static_cast<Answer>(id)); });
    show_answer(Answer::unanswered);
}

void AnswerChoice::show_answer(Answer answer) {
    QAbstractButton* wanted = buttons_->button(id_of(answer));
    if (wanted->isChecked()) return;
    const QAbstractButton* before = buttons_->checkedButton();
    const bool focused = before != nullptr && before->hasFocus();
    wanted->setChecked(true);
    if (focused) wanted->setFocus();
}

Answer AnswerChoice::answer() const { return static_cast<Answer>(buttons_->checkedId()); }

void AnswerChoice::take_focus() { buttons_->checkedButton()->setFocus(Qt::TabFocusReason); }

}  // namespace leadline
