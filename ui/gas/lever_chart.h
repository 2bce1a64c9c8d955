// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/planning/ids.h"

class QLabel;
class QListView;
class QModelIndex;
class QPushButton;

namespace leadline {

class LeverModel;
class SessionDocument;

/// "What would buy more minutes": a bar for each change that would help, longest first. A click,
/// Enter or Space on a bar makes the change, and the line below takes it back.
class LeverChart : public QWidget {
    Q_OBJECT
public:
    explicit LeverChart(SessionDocument& document, QWidget* parent = nullptr);

    /// Shows a group's levers; empty: those of all.
    void show_group(const GroupId& group);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    [[nodiscard]] QWidget* done_row();
    void refresh();
    void apply(const QModelIndex& index);
    /// Makes a bar the current one: the given row, or the nearest that is a bar.
    void stand_on(int row);

    SessionDocument& document_;
    LeverModel* model_;
    QLabel* title_;
    QLabel* figures_;  ///< over the column of chances
    QLabel* hint_;
    QLabel* empty_;
    QListView* list_;
    QWidget* done_;
    QLabel* done_text_;
    QPushButton* undo_;
    int undo_index_ = -1;  ///< of the undo stack, right after the last change made here
    bool is_stale_ = false;  ///< something changed while the bars were hidden
};

}  // namespace leadline
