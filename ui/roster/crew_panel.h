// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/document/session_document.h"
#include "ui/roster/earlier_dives_dialog.h"

class QBoxLayout;
class QLabel;
class QScrollArea;
class QToolButton;

namespace leadline {

class GroupList;
class StaffList;

/// Groups and staff below the guests: a strip that opens and closes.
class CrewPanel : public QWidget {
    Q_OBJECT
public:
    explicit CrewPanel(SessionDocument& document, QWidget* parent = nullptr);
    void refresh();
    void set_open(bool open);
    [[nodiscard]] bool is_open() const;
    void focus_group(const GroupId& group);
    void focus_member(const StaffId& member);
    void set_dive_finder(DiveFinder finder);

Q_SIGNALS:
    void refused(const QString& message);
    void opened(bool open);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* build_content();
    void add_group();
    void add_member();
    void bring_into_sight();

    SessionDocument& document_;
    QToolButton* toggle_;
    QLabel* summary_;
    QBoxLayout* halves_ = nullptr;
    QScrollArea* area_;
    GroupList* groups_;
    StaffList* staff_;
};

}  // namespace leadline
