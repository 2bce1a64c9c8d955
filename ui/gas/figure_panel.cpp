// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/figure_panel.h"

#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/document/session_document.h"
#include "ui/gas/figure_table.h"

namespace leadline {
namespace {

void set_line(QLabel* label, const QString& name, const QString& text) {
    label->setObjectName(name);
    label->setText(text);
    label->setWordWrap(true);
    label->setMinimumHeight(label->fontMetrics().height());
}

}  // namespace

FigurePanel::FigurePanel(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      answers_(new SentenceList),
      empty_(new QLabel),
      body_(new QWidget),
      why_(new QToolButton),
      reasons_(new SentenceList) {}

FigurePanel::~FigurePanel() {
    // The table lets go of its row when this is no longer a FigurePanel.
    disconnect(&document_, nullptr, this, nullptr);
    if (table_ != nullptr) disconnect(table_, nullptr, this, nullptr);
}

void FigurePanel::build(FigureTable* table, const Words& words) {
    table_ = table;
    QFont large = font();
    constexpr double answer_size = 1.2;
    large.setPointSizeF(large.pointSizeF() * answer_size);
    answers_->setObjectName(words.name + QStringLiteral("_answer"));
    answers_->setFont(large);
    set_line(empty_, words.name + QStringLiteral("_empty"), words.empty);
    empty_->setFont(large);
    auto* safety = new QLabel;
    set_line(safety, words.name + QStringLiteral("_safety"), words.safety);
    why_->setObjectName(words.name + QStringLiteral("_why"));
    why_->setText(tr("Why?"));
    why_->setAccessibleName(words.why);
    why_->setCheckable(true);
    why_->setAutoRaise(true);
    why_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    why_->setArrowType(Qt::RightArrow);
    why_->setFocusPolicy(Qt::StrongFocus);
    reasons_->setObjectName(words.name + QStringLiteral("_reason"));
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

    connect(why_, &QToolButton::toggled, this, &FigurePanel::show_reasons);
    connect(table_, &FigureTable::current_changed, this, &FigurePanel::refresh_reasons);
    connect(&document_, &SessionDocument::changed, this, &FigurePanel::follow_document);
    refresh();
}

void FigurePanel::follow_document() {
    // Typing on another tab does not wait for what nobody sees.
    stale_ = !isVisible();
    if (!stale_) refresh();
}

void FigurePanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!stale_) return;
    stale_ = false;
    refresh();
}

void FigurePanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    table_->fit(width());
}

void FigurePanel::refresh() {
    const bool rows = has_rows();
    empty_->setVisible(!rows);
    answers_->setVisible(rows);
    body_->setVisible(rows);
    refresh_rows();
    table_->fit(width());
    answers_->show_sentences(answers());
    refresh_reasons();
}

void FigurePanel::refresh_reasons() {
    if (why_->isChecked()) reasons_->show_sentences(reasons(table_->current_id()));
}

void FigurePanel::show_reasons(bool shown) {
    refresh_reasons();
    reasons_->setVisible(shown);
    why_->setArrowType(shown ? Qt::DownArrow : Qt::RightArrow);
}

}  // namespace leadline
