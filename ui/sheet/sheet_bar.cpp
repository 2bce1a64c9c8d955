// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheet_bar.h"

#include <QButtonGroup>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QPushButton>

#include "ui/sheet/sheet_document.h"

namespace leadline {
namespace {

class SheetNames {
    Q_DECLARE_TR_FUNCTIONS(SheetNames)
};

const char* object_name(SheetKind kind) {
    switch (kind) {
        case SheetKind::cards:
            return "sheet_cards";
        case SheetKind::beach:
            return "sheet_beach";
        case SheetKind::skills:
            return "sheet_skills";
        case SheetKind::kit:
            return "sheet_kit";
        case SheetKind::emergency:
            return "sheet_emergency";
        case SheetKind::pictures:
            return "sheet_pictures";
    }
    return "";
}

QString sheet_purpose(SheetKind kind) {
    switch (kind) {
        case SheetKind::cards:
            return SheetNames::tr("A card for each guest to take along");
        case SheetKind::beach:
            return SheetNames::tr("A page for each group, for the instructor");
        case SheetKind::skills:
            return SheetNames::tr("Who has practised what, to tick off");
        case SheetKind::kit:
            return SheetNames::tr("What to pack, for whom and how many");
        case SheetKind::emergency:
            return SheetNames::tr("A page for the wall at the site");
        case SheetKind::pictures:
            return SheetNames::tr("Signals and air in pictures");
    }
    return {};
}

}  // namespace

SheetBar::SheetBar(QWidget* parent) : QWidget(parent), buttons_(new QButtonGroup(this)) {
    auto* row = new QHBoxLayout(this);
    setObjectName(QStringLiteral("sheet_bar"));
    setAccessibleName(tr("What to print"));
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    buttons_->setExclusive(true);
    for (int i = 0; i < sheet_kind_count; ++i) {
        const auto kind = static_cast<SheetKind>(i);
        auto* button = new QPushButton(sheet_name(kind), this);
        button->setObjectName(QString::fromLatin1(object_name(kind)));
        button->setCheckable(true);
        button->setChecked(i == 0);
        button->setAutoDefault(false);
        button->setToolTip(sheet_purpose(kind));
        button->setAccessibleDescription(sheet_purpose(kind));
        buttons_->addButton(button, i);
        row->addWidget(button);
    }
    row->addStretch(1);
    connect(buttons_, &QButtonGroup::idToggled, this, [this](int id, bool down) {
        if (!down) return;
        // The chosen one says so by its letters too, not by its shade alone.
        for (QAbstractButton* button : buttons_->buttons()) {
            QFont font = button->font();
            font.setBold(button->isChecked());
            button->setFont(font);
        }
        Q_EMIT chosen(static_cast<SheetKind>(id));
    });
    QFont bold = buttons_->button(0)->font();
    bold.setBold(true);
    // Room for bold letters, so that the row does not shift.
    for (QAbstractButton* button : buttons_->buttons()) {
        const int extra = QFontMetrics(bold).horizontalAdvance(button->text()) -
                          button->fontMetrics().horizontalAdvance(button->text());
        button->setMinimumWidth(button->sizeHint().width() + extra);
    }
    buttons_->button(0)->setFont(bold);
}

SheetKind SheetBar::kind() const {
    return static_cast<SheetKind>(buttons_->checkedId());
}

void SheetBar::choose(SheetKind kind) {
    buttons_->button(static_cast<int>(kind))->setChecked(true);
}

}  // namespace leadline
