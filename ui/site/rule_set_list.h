// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QListWidget;
class QListWidgetItem;

namespace leadline {

class SessionDocument;

/// Which rule sets apply to the session. Where several do, the strictest value counts.
class RuleSetList : public QWidget {
    Q_OBJECT
public:
    explicit RuleSetList(SessionDocument& document, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void fill();
    void refresh();
    void item_changed(QListWidgetItem* item);
    void fit_height();

    SessionDocument& document_;
    QListWidget* list_;
    QWidget* none_ = nullptr;
    QLabel* none_icon_ = nullptr;
    bool showing_ = false;
};

}  // namespace leadline
