// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/roster/edit_desk.h"
#include "ui/roster/known_guest_list.h"

class QCheckBox;
class QLabel;
class QPlainTextEdit;

namespace leadline {

class BirthDateLine;
class ChoiceBox;
class ClearableBox;
class CountBox;
class Field;
class FieldForm;
class TypedLine;

/// Who a guest is: name, birth date, language, group, consent, breathing, and staff's own note.
class PersonPage : public QWidget {
    Q_OBJECT
public:
    explicit PersonPage(EditDesk& desk, QWidget* parent = nullptr);

    /// Where persons on record are looked up while a name is typed; an empty function: nowhere.
    void set_guest_finder(GuestFinder finder);
    /// Another guest is shown: half-typed text and complaints of the one before are dropped.
    void start_guest();
    void refresh();
    void focus_name();
    [[nodiscard]] QString complaints() const;

private:
    void build_person();
    void build_contact();
    void build_breathing();
    void build_note();
    void wire_name();
    void wire_birth_date();
    void wire_dives();
    void take_over(const Guest& known);
    void refresh_choices(const Guest& guest);
    void refresh_remarks(const Guest& guest);

    EditDesk& desk_;
    FieldForm* form_;
    TypedLine* name_;
    Field* name_field_ = nullptr;
    KnownGuestList* known_;
    BirthDateLine* birth_date_;
    Field* birth_date_field_ = nullptr;
    QLabel* age_ = nullptr;
    ChoiceBox* language_;
    ChoiceBox* group_;
    QCheckBox* consent_;
    Field* consent_field_ = nullptr;
    QCheckBox* companion_;
    CountBox* dives_;
    TypedLine* phone_;
    TypedLine* email_;
    ChoiceBox* breathing_;
    ClearableBox* rmv_;
    QLabel* planned_rmv_ = nullptr;
    QPlainTextEdit* note_;
};

}  // namespace leadline
