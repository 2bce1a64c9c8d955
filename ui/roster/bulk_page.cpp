// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/bulk_page.h"

#include <QFont>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/roster/cylinder_picker.h"
#include "ui/roster/fields.h"
#include "ui/roster/guest_facts.h"

namespace leadline {

BulkPage::BulkPage(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      desk_(document),
      title_(new QLabel(this)),
      form_(new FieldForm(this)),
      group_(new ChoiceBox(QStringLiteral("bulk_group_combo"), this)),
      set_group_(new QPushButton(tr("&Put into this group"), this)),
      cylinder_(new CylinderPicker(QStringLiteral("bulk"), tr("Choose one"), this)),
      hand_out_(new QPushButton(tr("&Hand out to all of them"), this)) {
    setObjectName(QStringLiteral("bulk_page"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(16);
    QFont large = title_->font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    large.setBold(true);
    title_->setFont(large);
    title_->setObjectName(QStringLiteral("bulk_title"));
    column->addWidget(title_);
    column->addWidget(form_);
    column->addStretch();

    set_group_->setObjectName(QStringLiteral("bulk_set_group"));
    hand_out_->setObjectName(QStringLiteral("bulk_hand_out"));
    group_field_ = form_->add(tr("Gro&up"), group_);
    form_->add(QString(), set_group_);
    form_->add_heading(tr("The same cylinder for each"));
    form_->add(tr("C&ylinder"), cylinder_->type());
    fill_field_ = form_->add(tr("Fi&lled to"), cylinder_->fill());
    form_->add(tr("Gas te&mperature"), cylinder_->temperature());
    form_->add(QString(), hand_out_);
    connect(set_group_, &QPushButton::clicked, this, &BulkPage::set_group);
    connect(hand_out_, &QPushButton::clicked, this, &BulkPage::hand_out);
    connect(cylinder_, &CylinderPicker::edited, this, &BulkPage::refresh);
}

void BulkPage::show_guests(const std::vector<GuestId>& guests) {
    if (guests != guests_) form_->clear_complaints();
    guests_ = guests;
    title_->setText(tr("%n guests selected", nullptr, static_cast<int>(guests.size())));
    refresh();
}

void BulkPage::refresh() {
    const Session& session = desk_.document().session();
    std::vector<ChoiceBox::Choice> groups{{tr("None"), QString()}};
    for (const Group& group : session.groups) {
        groups.push_back({group_name(session, group.id), QString::fromStdString(group.id.text)});
    }
    group_->offer(groups);
    if (group_->currentIndex() < 0) group_->setCurrentIndex(0);
    cylinder_->set_units(desk_.document().units());
    cylinder_->set_air(session.conditions.air_temperature);
    cylinder_->show_cylinder(cylinder_->cylinder());
    hand_out_->setEnabled(cylinder_->cylinder().has_value());
}

void BulkPage::focus_first() { group_->setFocus(Qt::ShortcutFocusReason); }

void BulkPage::set_group() {
    const GroupId group(group_->choice().toStdString());
    group_field_->complain(desk_.change_session(
        tr("Put %n guests into a group", nullptr, static_cast<int>(guests_.size())), tr("Group"),
        {}, [&](Session& session) {
            for (const GuestId& id : guests_) {
                if (Guest* guest = find_guest(session, id)) guest->group = group;
            }
        }));
}

void BulkPage::hand_out() {
    const std::optional<Cylinder> cylinder = cylinder_->cylinder();
    fill_field_->complain(
        desk_.change_session(tr("Hand out %n cylinders", nullptr, static_cast<int>(guests_.size())),
                             tr("Cylinder"), {}, [&](Session& session) {
                                 for (const GuestId& id : guests_) {
                                     if (Guest* guest = find_guest(session, id))
                                         guest->kit.cylinder = cylinder;
                                 }
                             }));
}

}  // namespace leadline
