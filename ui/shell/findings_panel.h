// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/planning/finding.h"

class QLabel;
class QListView;
class QPushButton;

namespace leadline {

class FindingsModel;
class SessionDocument;

/// The findings beside the tabs: a list, and under it the chosen one in full with its source and the
/// two things one can do about it: go there, or go ahead with a reason.
class FindingsPanel : public QWidget {
    Q_OBJECT
public:
    explicit FindingsPanel(SessionDocument& document, QWidget* parent = nullptr);
    void focus_list();

Q_SIGNALS:
    void subject_requested(const leadline::Finding& finding);

private:
    void show_current();
    void overrule();
    void withdraw();

    SessionDocument& document_;
    FindingsModel* model_;
    QListView* list_;
    QLabel* title_;
    QLabel* detail_;
    QPushButton* go_;
    QPushButton* overrule_;
};

}  // namespace leadline
