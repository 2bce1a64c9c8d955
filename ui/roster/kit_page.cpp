// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/kit_page.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QLabel>
#include <QStringListModel>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/roster/cylinder_picker.h"
#include "ui/roster/fields.h"

namespace leadline {
namespace {

constexpr int longest_item = 100;
constexpr double centimetres = 100.0;

template <typename Quantity>
std::optional<double> number(const std::optional<Quantity>& quantity) {
    if (!quantity) return std::nullopt;
    return quantity->value();
}

template <typename Quantity>
std::optional<Quantity> quantity(std::optional<double> number) {
    if (!number) return std::nullopt;
    return Quantity(*number);
}

}  // namespace

KitPage::KitPage(EditDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      form_(new FieldForm(this)),
      height_(new ClearableBox(QuantityKind::height, QStringLiteral("height_box"), this)),
      mass_(new ClearableBox(QuantityKind::mass, QStringLiteral("mass_box"), this)),
      shoe_(new ShoeBox(QStringLiteral("shoe_box"), this)),
      lead_(new ClearableBox(QuantityKind::lead, QStringLiteral("lead_box"), this)),
      cylinder_(new CylinderPicker(QStringLiteral("guest"), tr("None yet"), this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(form_);
    column->addStretch();
    build_cylinder();
    build_kit();
    build_sizes();
}

// ---- building ----------------------------------------------------------------------------------

void KitPage::build_cylinder() {
    form_->add_heading(tr("Cylinder"));
    type_field_ = form_->add(tr("C&ylinder"), cylinder_->type());
    fill_field_ = form_->add(tr("Fi&lled to"), cylinder_->fill());
    remark_ = form_->add_remark(QStringLiteral("fill_remark"));
    temperature_field_ = form_->add(tr("Gas te&mperature"), cylinder_->temperature());
    connect(cylinder_, &CylinderPicker::edited, this,
            [this](const std::optional<Cylinder>& cylinder) {
                const Guest* guest = desk_.guest();
                if (guest == nullptr) return;
                const char* part = changed_part(guest->kit.cylinder, cylinder);
                fill_field_->complain(desk_.change(
                    tr("Cylinder"), part, [&](Guest& to) { to.kit.cylinder = cylinder; }));
                refresh_cylinder(*desk_.guest());
            });
}

void KitPage::add_item(const QString& label, const QString& name, const char* key,
                       std::string Kit::*text) {
    auto* line = new TypedLine(name, longest_item, this);
    auto* suggestions = new QStringListModel(this);
    auto* completer = new QCompleter(suggestions, line);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->popup()->setObjectName(name + QStringLiteral("_suggestions"));
    completer->popup()->setAccessibleName(tr("What others have"));
    line->setCompleter(completer);
    Field* field = form_->add(label, line);
    const QString plain = line->accessibleName();
    const auto save = [this, line, field, plain, key, text] {
        const std::string value = line->trimmed();
        field->complain(
            desk_.change(plain, key, [&](Guest& guest) { guest.kit.*text = value; }));
    };
    connect(line, &QLineEdit::textEdited, this, save);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), line,
            [line, save](const QString& chosen) {
                line->setText(chosen);
                save();
            });
    items_.push_back({line, text, suggestions});
}

void KitPage::build_kit() {
    form_->add_heading(tr("Kit"));
    add_item(tr("S&uit"), QStringLiteral("suit_edit"), "suit", &Kit::suit);
    add_item(tr("&BCD"), QStringLiteral("bcd_edit"), "bcd", &Kit::bcd);
    add_item(tr("Mas&k"), QStringLiteral("mask_edit"), "mask", &Kit::mask);
    add_item(tr("Fi&ns"), QStringLiteral("fins_edit"), "fins", &Kit::fins);
    add_item(tr("Regulat&or no."), QStringLiteral("regulator_edit"), "regulator",
             &Kit::regulator);
    Field* lead = form_->add(tr("Lea&d"), lead_);
    connect(lead_, &QuantityBox::edited, this, [this, lead](std::optional<double> mass) {
        lead->complain(desk_.change(tr("Lead"), "lead", [&](Guest& guest) {
            guest.kit.lead = quantity<Kilograms>(mass);
        }));
    });
}

void KitPage::build_sizes() {
    form_->add_heading(tr("Sizes"));
    Field* height = form_->add(tr("Heigh&t"), height_);
    Field* mass = form_->add(tr("&Weight"), mass_);
    Field* shoe = form_->add(tr("Shoe si&ze"), shoe_);
    connect(height_, &QuantityBox::edited, this, [this, height](std::optional<double> value) {
        height->complain(desk_.change(tr("Height"), "height", [&](Guest& guest) {
            guest.body_height = value ? std::optional(Meters(*value / centimetres)) : std::nullopt;
        }));
    });
    connect(mass_, &QuantityBox::edited, this, [this, mass](std::optional<double> value) {
        mass->complain(desk_.change(tr("Weight"), "mass", [&](Guest& guest) {
            guest.body_mass = quantity<Kilograms>(value);
        }));
    });
    connect(shoe_, &ShoeBox::edited, this, [this, shoe](std::optional<double> size) {
        shoe->complain(desk_.change(tr("Shoe size"), "shoe",
                                    [&](Guest& guest) { guest.shoe_size_eu = size; }));
    });
}

// ---- showing -----------------------------------------------------------------------------------

void KitPage::start_guest() {
    form_->clear_complaints();
    const Guest* guest = desk_.guest();
    cylinder_->show_cylinder(guest != nullptr ? guest->kit.cylinder : std::nullopt);
    cylinder_->start_anew();
}

void KitPage::refresh() {
    const Guest* guest = desk_.guest();
    if (guest == nullptr) return;
    for (const Item& item : items_) {
        item.line->show_text(guest->kit.*item.text);
        refresh_suggestions(item);
    }
    lead_->set_units(desk_.document().units());
    lead_->show_value(number(guest->kit.lead));
    refresh_sizes(*guest);
    refresh_cylinder(*guest);
}

void KitPage::refresh_sizes(const Guest& guest) {
    const UnitSystem units = desk_.document().units();
    height_->set_units(units);
    mass_->set_units(units);
    std::optional<double> height;
    if (guest.body_height) {
        height = std::round(guest.body_height->value() * centimetres * 1e6) / 1e6;
    }
    height_->show_value(height);
    mass_->show_value(number(guest.body_mass));
    shoe_->show_size(guest.shoe_size_eu);
}

void KitPage::refresh_suggestions(const Item& item) {
    QStringList texts;
    for (const Guest& guest : desk_.document().session().guests) {
        const QString text = QString::fromStdString(guest.kit.*item.text);
        if (guest.id != desk_.guest_id() && !text.isEmpty() && !texts.contains(text)) texts << text;
    }
    texts.sort(Qt::CaseInsensitive);
    if (texts != item.suggestions->stringList()) item.suggestions->setStringList(texts);
}

void KitPage::refresh_cylinder(const Guest& guest) {
    cylinder_->set_units(desk_.document().units());
    cylinder_->set_air(desk_.document().session().conditions.air_temperature);
    cylinder_->show_cylinder(guest.kit.cylinder);
    const bool unread = guest.kit.cylinder && guest.kit.cylinder->fill_pressure.value() <= 0.0;
    remark_->setText(unread ? tr("Read the gauge and enter what it shows.") : QString());
    remark_->setVisible(unread);
}

void KitPage::focus_first() { cylinder_->type()->setFocus(Qt::ShortcutFocusReason); }

QString KitPage::complaints() const { return form_->complaints(); }

}  // namespace leadline
