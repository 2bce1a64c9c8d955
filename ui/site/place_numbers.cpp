// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/place_numbers.h"

#include <QGridLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QToolButton>
#include <algorithm>
#include <initializer_list>

#include "ui/document/session_document.h"
#include "ui/site/place_facts.h"
#include "ui/widgets/theme.h"

namespace leadline {

PlaceNumbers::PlaceNumbers(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(12);
    grid_->setVerticalSpacing(4);
    for (const PlaceFact& fact : place_facts(document_)) add_row(fact.id);
    arrange(1);
    connect(&document_, &SessionDocument::changed, this, &PlaceNumbers::refresh);
    refresh();
}

void PlaceNumbers::add_row(const QString& id) {
    Row row{new QLabel(this), new QLabel(this), new QToolButton(this), new QLabel(this)};
    QFont strong = font();
    strong.setBold(true);
    row.value->setFont(strong);
    row.value->setObjectName(QStringLiteral("number_") + id);
    row.value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    row.why->setObjectName(QStringLiteral("why_") + id);
    row.why->setText(tr("Why?"));
    row.why->setCheckable(true);
    row.why->setAutoRaise(true);
    row.why->setFocusPolicy(Qt::StrongFocus);
    row.reason->setObjectName(QStringLiteral("reason_") + id);
    row.reason->setWordWrap(true);
    row.reason->setForegroundRole(QPalette::PlaceholderText);
    row.reason->setTextInteractionFlags(Qt::TextSelectableByMouse);
    row.reason->hide();
    connect(row.why, &QToolButton::toggled, row.reason, &QLabel::setVisible);
    rows_.push_back(row);
}

void PlaceNumbers::arrange(int banks) {
    if (banks == banks_) return;
    banks_ = banks;
    constexpr int cells = 4;  // name, value, why, and room to the next bank
    const int in_bank = (static_cast<int>(rows_.size()) + banks - 1) / banks;
    for (int i = 0; i < static_cast<int>(rows_.size()); ++i) {
        const Row& row = rows_[static_cast<std::size_t>(i)];
        const int line = i % in_bank * 2;
        const int column = i / in_bank * cells;
        for (QWidget* part : std::initializer_list<QWidget*>{row.name, row.value, row.why,
                                                             row.reason}) {
            grid_->removeWidget(part);
        }
        grid_->addWidget(row.name, line, column);
        grid_->addWidget(row.value, line, column + 1);
        grid_->addWidget(row.why, line, column + 2);
        grid_->addWidget(row.reason, line + 1, column, 1, cells);
    }
    for (int bank = 0; bank < 2; ++bank) {
        grid_->setColumnStretch(bank * cells + 3, bank < banks ? 1 : 0);
    }
}

void PlaceNumbers::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // Two columns need more than twice one: otherwise their own least width would hold them open.
    int name = 0;
    int value = 0;
    int why = 0;
    for (const Row& row : rows_) {
        name = std::max(name, row.name->sizeHint().width());
        value = std::max(value, row.value->sizeHint().width());
        why = std::max(why, row.why->sizeHint().width());
    }
    const int spacing = grid_->horizontalSpacing();
    arrange(event->size().width() > 2 * (name + value + why + 5 * spacing) ? 2 : 1);
}

void PlaceNumbers::refresh() {
    const std::vector<PlaceFact> facts = place_facts(document_);
    for (std::size_t i = 0; i < rows_.size() && i < facts.size(); ++i) {
        rows_[i].name->setText(facts[i].name);
        rows_[i].value->setText(facts[i].value);
        rows_[i].why->setAccessibleName(tr("Why? %1").arg(facts[i].name));
        rows_[i].why->setToolTip(facts[i].reason);
        rows_[i].reason->setText(facts[i].reason);
    }
}

}  // namespace leadline
