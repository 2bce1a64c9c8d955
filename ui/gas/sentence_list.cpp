// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/sentence_list.h"

#include <QGridLayout>
#include <QLabel>

#include "ui/widgets/theme.h"

namespace leadline {

SentenceList::SentenceList(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(4);
    grid_->setColumnStretch(1, 1);
}

void SentenceList::show_sentences(const std::vector<GasSentence>& sentences) {
    while (rows_.size() < sentences.size()) {
        Row row{new QLabel, new QLabel};
        row.text->setWordWrap(true);
        // Not the many lines it would need at its narrowest.
        row.text->setMinimumHeight(fontMetrics().height());
        row.text->setTextFormat(Qt::PlainText);
        row.text->setTextInteractionFlags(Qt::TextSelectableByMouse);
        row.text->setObjectName(objectName() + QStringLiteral("_%1").arg(rows_.size() + 1));
        const int line = static_cast<int>(rows_.size());
        grid_->addWidget(row.icon, line, 0, Qt::AlignTop);
        grid_->addWidget(row.text, line, 1);
        rows_.push_back(row);
    }
    const int side = fontMetrics().height();
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const bool used = i < sentences.size();
        rows_[i].text->setVisible(used);
        rows_[i].icon->setVisible(used && sentences[i].severity.has_value());
        if (!used) continue;
        QFont written = font();
        written.setBold(sentences[i].severity.has_value());
        rows_[i].text->setFont(written);
        rows_[i].text->setText(sentences[i].text);
        if (sentences[i].severity) {
            rows_[i].icon->setPixmap(
                severity_icon(*sentences[i].severity, palette()).pixmap(side, side));
        }
    }
}

}  // namespace leadline
