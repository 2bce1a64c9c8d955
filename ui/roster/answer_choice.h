// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QWidget>

#include "core/planning/screening.h"

class QButtonGroup;

namespace leadline {

/// One segment of an answer: filled and bold when chosen; a yes in the ink of a stop, since every
/// question is put so that yes is the answer to talk about.
class AnswerSegment : public QAbstractButton {
    Q_OBJECT
public:
    AnswerSegment(Answer answer, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    /// A key that is not the button's own: answers and movements.
    void answered(Answer answer);
    void moved(int questions);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    Answer answer_;
};

/// No | Yes | – for one question; one stop for the Tab key. Left and Right choose, Up and Down go
/// to the next question, and the first letters of No and Yes answer and go on, so that a clean
/// sheet is one key a question.
class AnswerChoice : public QWidget {
    Q_OBJECT
public:
    /// @param about  what is asked, for screen readers: "Lungs"
    AnswerChoice(const QString& about, const QString& object_name, QWidget* parent = nullptr);

    void show_answer(Answer answer);
    [[nodiscard]] Answer answer() const;
    void take_focus();

Q_SIGNALS:
    void edited(Answer answer);
    void moved(int questions);

private:
    QButtonGroup* buttons_;
};

}  // namespace leadline
