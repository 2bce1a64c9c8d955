// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/notice_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QUndoStack>

namespace leadline {

NoticeStrip::NoticeStrip(QUndoStack& undo_stack, QWidget* parent)
    : QWidget(parent),
      undo_stack_(undo_stack),
      text_(new QLabel(this)),
      button_(new QPushButton(tr("Undo"), this)) {
    setObjectName(QStringLiteral("notice"));
    text_->setObjectName(QStringLiteral("notice_text"));
    text_->setTextFormat(Qt::PlainText);
    text_->setWordWrap(true);
    button_->setObjectName(QStringLiteral("undo_remove"));
    button_->setAccessibleName(tr("Undo this step"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(text_, 1);
    row->addWidget(button_);
    hide();
    connect(button_, &QPushButton::clicked, this, &NoticeStrip::undo);
    connect(&undo_stack, &QUndoStack::indexChanged, this, [this] {
        if (may_undo_) clear();
    });
}

void NoticeStrip::say(const QString& text) {
    may_undo_ = false;
    button_->hide();
    text_->setText(text);
    show();
}

void NoticeStrip::say_with_undo(const QString& text) {
    may_undo_ = true;
    button_->show();
    text_->setText(text);
    show();
}

void NoticeStrip::clear() {
    may_undo_ = false;
    hide();
}

void NoticeStrip::undo() {
    if (!may_undo_) return;
    undo_stack_.undo();
    Q_EMIT undone();
}

}  // namespace leadline
