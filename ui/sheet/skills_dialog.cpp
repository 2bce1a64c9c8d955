// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/skills_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/guest_words/signal_words.h"
#include "ui/sheet/card_language.h"
#include "ui/widgets/screen_room.h"

namespace leadline {

SkillsDialog::SkillsDialog(const std::vector<Skill>& chosen, QWidget* parent)
    : QDialog(parent), list_(new QListWidget(this)) {
    setObjectName(QStringLiteral("skills_dialog"));
    setWindowTitle(tr("Skills of this session"));
    auto* heading = new QLabel(tr("Tick what the guests &practise before the tour."), this);
    heading->setWordWrap(true);
    heading->setBuddy(list_);
    list_->setObjectName(QStringLiteral("skills_list"));
    list_->setAccessibleName(tr("Skills of this session"));
    list_->setWordWrap(true);
    list_->setSpacing(2);
    for (const Skill skill : standard_skills()) {
        const QString name = skill_name(skill, window_tongue());
        const QString purpose = skill_purpose(skill, window_tongue());
        auto* item = new QListWidgetItem(QString(name + u'\n' + purpose), list_);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        const bool ticked = std::find(chosen.begin(), chosen.end(), skill) != chosen.end();
        item->setCheckState(ticked ? Qt::Checked : Qt::Unchecked);
        item->setData(Qt::UserRole, static_cast<int>(skill));
    }
    list_->setCurrentRow(0);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setObjectName(QStringLiteral("skills_accept"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(heading);
    layout->addWidget(list_, 1);
    layout->addWidget(buttons);
    resize(within_screen(*this, {460, 470}));
}

std::vector<Skill> SkillsDialog::chosen() const {
    std::vector<Skill> skills;
    for (int row = 0; row < list_->count(); ++row) {
        const QListWidgetItem* item = list_->item(row);
        if (item->checkState() != Qt::Checked) continue;
        skills.push_back(static_cast<Skill>(item->data(Qt::UserRole).toInt()));
    }
    return skills;
}

}  // namespace leadline
