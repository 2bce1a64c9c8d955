// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/roster/earlier_dives_dialog.h"
#include "ui/roster/edit_desk.h"

class QGridLayout;
class QToolButton;

namespace leadline {

class ChoiceBox;
class CylinderPicker;
class FindingList;
class LanguageButton;
class TypedLine;

/// The staff, one line each: name, role, languages, cylinder and fill, earlier dives, and below it
/// what is wrong.
class StaffList : public QWidget {
    Q_OBJECT
public:
    explicit StaffList(SessionDocument& document, QWidget* parent = nullptr);
    void refresh();
    void focus_member(const StaffId& member);
    void focus_last();
    /// Where dives that somebody made are looked up; an empty function: nowhere.
    void set_dive_finder(DiveFinder finder) { dive_finder_ = std::move(finder); }

Q_SIGNALS:
    void refused(const QString& message);

private:
    struct Line {
        StaffId id;
        TypedLine* name = nullptr;
        ChoiceBox* role = nullptr;
        LanguageButton* languages = nullptr;
        CylinderPicker* cylinder = nullptr;
        QToolButton* dives = nullptr;
        QToolButton* remove = nullptr;
        FindingList* findings = nullptr;
    };
    void rebuild();
    Line add_line(const StaffMember& member, int number);
    void connect_line(const Line& line);
    void open_dives(const StaffId& id);
    void refresh_line(const Line& line, const StaffMember& member);
    /// @returns whether the change was taken
    bool change(const StaffId& id, const char* key,
                const std::function<void(StaffMember&)>& change);

    EditDesk desk_;
    QGridLayout* grid_ = nullptr;
    QWidget* rows_ = nullptr;
    std::vector<Line> lines_;
    DiveFinder dive_finder_;
};

}  // namespace leadline
