// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/roster/edit_desk.h"

class QGridLayout;
class QLabel;
class QToolButton;

namespace leadline {

class ChoiceBox;
class FindingList;
class TypedLine;

/// The session's groups, one line each: name, instructor, assistant, how many guests, and below it
/// what is wrong with the group.
class GroupList : public QWidget {
    Q_OBJECT
public:
    explicit GroupList(SessionDocument& document, QWidget* parent = nullptr);
    void refresh();
    void focus_group(const GroupId& group);
    void focus_last();

Q_SIGNALS:
    void refused(const QString& message);

private:
    struct Line {
        GroupId id;
        TypedLine* name = nullptr;
        ChoiceBox* instructor = nullptr;
        ChoiceBox* assistant = nullptr;
        QLabel* guests = nullptr;
        QToolButton* remove = nullptr;
        FindingList* findings = nullptr;
    };
    void rebuild();
    Line add_line(const Group& group, int number);
    void connect_line(const Line& line);
    void refresh_line(const Line& line, const Group& group);
    void change(const GroupId& id, const char* key, const std::function<void(Group&)>& change);

    EditDesk desk_;
    QGridLayout* grid_ = nullptr;
    QWidget* rows_ = nullptr;
    std::vector<Line> lines_;
};

}  // namespace leadline
