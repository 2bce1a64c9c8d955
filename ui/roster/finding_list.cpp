// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/finding_list.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLayoutItem>

#include "ui/roster/marks.h"
#include "ui/widgets/plain_tip.h"
#include "ui/widgets/theme.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {

FindingList::FindingList(const QString& object_name, QWidget* parent)
    : QWidget(parent), column_(new QVBoxLayout(this)) {
    setObjectName(object_name);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(4);
    hide();
}

void FindingList::show_findings(const std::vector<const Finding*>& findings,
                                const SessionDocument& document) {
    std::vector<Line> lines;
    for (const Finding* finding : findings) {
        const FindingText said = words(*finding, document.session(), document.units());
        Line line{finding->severity, label(finding->severity), said.what + u' ' + said.remedy,
                  said.source};
        if (finding->overruled_because) {
            line.word = tr("Overruled");
            line.text = said.what + u' ' +
                        tr("Reason: %1").arg(QString::fromStdString(*finding->overruled_because));
        }
        lines.push_back(line);
    }
    if (lines == lines_) return;
    lines_ = std::move(lines);
    rebuild();
}

void FindingList::rebuild() {
    while (QLayoutItem* item = column_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const Line& line : lines_) add_line(line);
    setVisible(!lines_.empty());
}

void FindingList::add_line(const Line& line) {
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    auto* shape = new QLabel(row);
    const int side = fontMetrics().height();
    shape->setPixmap(mark_icon(mark_of(line.severity), palette()).pixmap(side, side));
    auto* word = new QLabel(line.word, row);
    QFont bold = word->font();
    bold.setBold(true);
    word->setFont(bold);
    auto* text = new QLabel(line.text, row);
    text->setTextFormat(Qt::PlainText);
    text->setWordWrap(true);
    text->setToolTip(plain_tip(line.source));
    layout->addWidget(shape, 0, Qt::AlignTop);
    layout->addWidget(word, 0, Qt::AlignTop);
    layout->addWidget(text, 1, Qt::AlignTop);
    column_->addWidget(row);
}

void FindingList::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !lines_.empty()) rebuild();
}

}  // namespace leadline
