// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;
class QUndoStack;

namespace leadline {

/// One sentence above the table, out of sight while there is none: what was just done, with a button
/// that takes it back, or what could not be done.
class NoticeStrip : public QWidget {
    Q_OBJECT
public:
    /// @param undo_stack  outlives the strip
    explicit NoticeStrip(QUndoStack& undo_stack, QWidget* parent = nullptr);

    void say(const QString& text);
    /// Tells of the step just done. Once anything else is done, the sentence and its button go: an
    /// Undo would then take back that instead.
    void say_with_undo(const QString& text);
    void clear();

Q_SIGNALS:
    /// The step told of was taken back with the button.
    void undone();

private:
    void undo();

    QUndoStack& undo_stack_;
    QLabel* text_;
    QPushButton* button_;
    bool may_undo_ = false;
};

}  // namespace leadline
