// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/ear_lung_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QResizeEvent>
#include <initializer_list>

#include "ui/document/session_document.h"
#include "ui/site/ear_chart.h"
#include "ui/site/ear_lung_words.h"
#include "ui/site/lung_chart.h"

namespace leadline {

EarLungPanel::EarLungPanel(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), grid_(new QGridLayout(this)) {
    setObjectName(QStringLiteral("ears_and_lungs"));
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(24);
    grid_->setVerticalSpacing(8);
    ears_ = part(tr("Ears on the way down"), QStringLiteral("ear"), new EarChart(document, this));
    lungs_ = part(tr("Lungs on the way up"), QStringLiteral("lung"), new LungChart(document, this));
    arrange(1);
    connect(&document_, &SessionDocument::changed, this, &EarLungPanel::refresh);
    refresh();
}

EarLungPanel::Part EarLungPanel::part(const QString& title, const QString& name, QWidget* chart) {
    const auto line = [&](const QString& part_name) {
        auto* label = new QLabel(this);
        label->setObjectName(part_name);
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        return label;
    };
    Part made{new QLabel(title, this), line(name + QStringLiteral("_sentence")), chart,
              line(name + QStringLiteral("_safety"))};
    QFont large = made.title->font();
    large.setPointSizeF(large.pointSizeF() * 1.15);
    large.setBold(true);
    made.title->setFont(large);
    made.title->setObjectName(name + QStringLiteral("_title"));
    return made;
}

void EarLungPanel::arrange(int columns) {
    if (columns == columns_) return;
    columns_ = columns;
    int first_row = 0;
    int column = 0;
    for (const Part& part : {ears_, lungs_}) {
        int row = first_row;
        for (QWidget* widget : std::initializer_list<QWidget*>{part.title, part.sentence,
                                                               part.chart, part.safety}) {
            grid_->removeWidget(widget);
            grid_->addWidget(widget, row++, column);
        }
        if (columns == 2) {
            ++column;
        } else {
            first_row = row + 1;  // an empty row parts them
        }
    }
    grid_->setRowMinimumHeight(4, columns == 2 ? 0 : 8);
    // The ear's drawing carries the names of its thresholds beside it.
    grid_->setColumnStretch(0, columns == 2 ? 6 : 1);
    grid_->setColumnStretch(1, columns == 2 ? 5 : 0);
}

void EarLungPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // More than both need: otherwise their own least width would hold them beside each other.
    const int least = ears_.chart->minimumSizeHint().width() +
                      lungs_.chart->minimumSizeHint().width() + 2 * grid_->horizontalSpacing();
    arrange(event->size().width() >= least ? 2 : 1);
}

void EarLungPanel::refresh() {
    const Plan& plan = document_.plan();
    const UnitSystem units = document_.units();
    ears_.sentence->setText(ear_sentence(plan, units) + u' ' + ear_step_sentence(plan, units));
    ears_.safety->setText(ear_safety(units));
    lungs_.sentence->setText(lung_sentence(plan, units));
    lungs_.safety->setText(lung_safety());
}

}  // namespace leadline
