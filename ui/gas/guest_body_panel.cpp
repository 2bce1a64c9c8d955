// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_body_panel.h"

#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/document/session_document.h"
#include "ui/gas/figure_table.h"
#include "ui/gas/guest_body_model.h"
#include "ui/gas/sentence_list.h"

namespace leadline {

GuestBodyPanel::GuestBodyPanel(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new GuestBodyModel(document, this)),
      answers_(new SentenceList),
      empty_(new QLabel),
      body_(new QWidget),
      table_(new FigureTable(*model_, QStringLiteral("body_table"),
                             tr("Warmth and lead of each guest"))),
      why_(new QToolButton),
      reasons_(new SentenceList) {
    setObjectName(QStringLiteral("guest_body_panel"));
    lay_out();
    connect(why_, &QToolButton::toggled, this, &GuestBodyPanel::show_reasons);
    connect(table_, &FigureTable::current_changed, this, &GuestBodyPanel::refresh_reasons);
    connect(&document_, &SessionDocument::changed, this, &GuestBodyPanel::follow_document);
    refresh();
}

GuestBodyPanel::~GuestBodyPanel() {
    // The table lets go of its row when this is no longer a GuestBodyPanel.
    disconnect(&document_, nullptr, this, nullptr);
    disconnect(table_, nullptr, this, nullptr);
}

void GuestBodyPanel::lay_out() {
    QFont large = font();
    constexpr double answer_size = 1.2;
    large.setPointSizeF(large.pointSizeF() * answer_size);
    answers_->setObjectName(QStringLiteral("body_answer"));
    answers_->setFont(large);
    const auto line = [](QLabel* label, const char* name, const QString& text) {
        label->setObjectName(QString::fromLatin1(name));
        label->setText(text);
        label->setWordWrap(true);
        label->setMinimumHeight(label->fontMetrics().height());
    };
    line(
        empty_, "body_empty",
        tr("No guests yet. Add them on the Roster tab with weight, height, suit and cylinder (page "
           "Kit); then this says who gets cold first and how much lead to try."));
    empty_->setFont(large);
    auto* safety = new QLabel;
    line(
        safety, "body_safety",
        tr("Estimates. Shivering or the sign “cold” ends the dive, whatever stands here. Lead is a "
           "starting value: check it at the surface before going down (common practice). Too heavy "
           "is the greater danger, so take the lighter of two."));
    why_->setObjectName(QStringLiteral("body_why"));
    why_->setText(tr("Why?"));
    why_->setAccessibleName(tr("Why? Warmth and lead"));
    why_->setCheckable(true);
    why_->setAutoRaise(true);
    why_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    why_->setArrowType(Qt::RightArrow);
    why_->setFocusPolicy(Qt::StrongFocus);
    reasons_->setObjectName(QStringLiteral("body_reason"));
    reasons_->hide();

    auto* inner = new QVBoxLayout(body_);
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(8);
    inner->addWidget(table_);
    inner->addWidget(safety);
    inner->addWidget(why_, 0, Qt::AlignLeft);
    inner->addWidget(reasons_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(empty_);
    column->addWidget(answers_);
    column->addWidget(body_);
    column->addStretch(1);
}

void GuestBodyPanel::follow_document() {
    // Typing on another tab does not wait for what nobody sees.
    stale_ = !isVisible();
    if (!stale_) refresh();
}

void GuestBodyPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!stale_) return;
    stale_ = false;
    refresh();
}

void GuestBodyPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    table_->fit(width());
}

void GuestBodyPanel::refresh() {
    const bool guests = !document_.session().guests.empty();
    empty_->setVisible(!guests);
    answers_->setVisible(guests);
    body_->setVisible(guests);
    model_->refresh();
    table_->setColumnHidden(GuestBodyModel::group_column, document_.session().groups.size() < 2);
    table_->fit(width());
    answers_->show_sentences(body_answers(document_));
    refresh_reasons();
}

void GuestBodyPanel::refresh_reasons() {
    if (why_->isChecked()) {
        reasons_->show_sentences(body_reasons(document_, GuestId(table_->current_id())));
    }
}

void GuestBodyPanel::show_reasons(bool shown) {
    refresh_reasons();
    reasons_->setVisible(shown);
    why_->setArrowType(shown ? Qt::DownArrow : Qt::RightArrow);
}

}  // namespace leadline
