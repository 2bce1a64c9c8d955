// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/roster/edit_desk.h"

class QLabel;
class QPushButton;

namespace leadline {

class ChoiceBox;
class CylinderPicker;
class Field;
class FieldForm;

/// What can be done to several guests at once: put them into a group, hand out the same cylinder
/// with the same fill. Each is one undoable step.
class BulkPage : public QWidget {
    Q_OBJECT
public:
    explicit BulkPage(SessionDocument& document, QWidget* parent = nullptr);
    void show_guests(const std::vector<GuestId>& guests);
    void refresh();
    void focus_first();

private:
    void set_group();
    void hand_out();

    EditDesk desk_;
    std::vector<GuestId> guests_;
    QLabel* title_;
    FieldForm* form_;
    ChoiceBox* group_;
    QPushButton* set_group_;
    CylinderPicker* cylinder_;
    QPushButton* hand_out_;
    Field* group_field_ = nullptr;
    Field* fill_field_ = nullptr;
};

}  // namespace leadline
