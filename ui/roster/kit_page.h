// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/roster/edit_desk.h"

class QLabel;
class QStringListModel;

namespace leadline {

class ClearableBox;
class CylinderPicker;
class Field;
class FieldForm;
class ShoeBox;
class TypedLine;

/// Sizes, and what was handed out.
class KitPage : public QWidget {
    Q_OBJECT
public:
    explicit KitPage(EditDesk& desk, QWidget* parent = nullptr);
    void start_guest();
    void refresh();
    void focus_first();
    [[nodiscard]] QString complaints() const;

private:
    /// A text of the kit, with what other guests already have as suggestions.
    struct Item {
        TypedLine* line = nullptr;
        std::string Kit::*text = nullptr;
        QStringListModel* suggestions = nullptr;
    };
    void build_sizes();
    void build_kit();
    void build_cylinder();
    void add_item(const QString& label, const QString& name, const char* key,
                  std::string Kit::*text);
    void refresh_sizes(const Guest& guest);
    void refresh_suggestions(const Item& item);
    void refresh_cylinder(const Guest& guest);

    EditDesk& desk_;
    FieldForm* form_;
    ClearableBox* height_;
    ClearableBox* mass_;
    ShoeBox* shoe_;
    ClearableBox* lead_;
    CylinderPicker* cylinder_;
    Field* type_field_ = nullptr;
    Field* fill_field_ = nullptr;
    Field* temperature_field_ = nullptr;
    QLabel* remark_ = nullptr;
    std::vector<Item> items_;
};

}  // namespace leadline
