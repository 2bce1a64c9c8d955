// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/place_findings.h"

#include <QGridLayout>
#include <QLabel>

#include "ui/document/session_document.h"
#include "ui/widgets/theme.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {

bool is_about_place(const Finding& finding) {
    switch (finding.code) {
        case FindingCode::depth_over_limit:
        case FindingCode::depth_over_usual:
        case FindingCode::bottom_below_limit:
        case FindingCode::water_too_cold:
        case FindingCode::minutes_over_limit:
        case FindingCode::visibility_low:
        case FindingCode::current_strong:
        case FindingCode::waves_high:
        case FindingCode::ascent_too_fast:
        case FindingCode::descent_too_fast:
        case FindingCode::ear_step_over_locking:
        case FindingCode::no_rules_chosen:
        case FindingCode::emergency_line_missing: return true;
        default: return false;
    }
}

PlaceFindings::PlaceFindings(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), grid_(new QGridLayout(this)) {
    setObjectName(QStringLiteral("site_findings"));
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(4);
    grid_->setColumnStretch(1, 1);
    connect(&document_, &SessionDocument::changed, this, &PlaceFindings::refresh);
    refresh();
}

void PlaceFindings::show_row(std::size_t index, const std::optional<Severity>& severity,
                             const QString& words, const QString& help) {
    if (index >= rows_.size()) {
        Row row{new QLabel, new QLabel};
        row.text->setObjectName(QStringLiteral("site_finding_%1").arg(index + 1));
        row.text->setWordWrap(true);
        row.text->setTextFormat(Qt::PlainText);
        row.text->setTextInteractionFlags(Qt::TextSelectableByMouse);
        row.text->setMinimumHeight(fontMetrics().height());
        grid_->addWidget(row.icon, static_cast<int>(index), 0, Qt::AlignTop);
        grid_->addWidget(row.text, static_cast<int>(index), 1);
        rows_.push_back(row);
    }
    const Row& row = rows_[index];
    const int side = fontMetrics().height();
    if (severity) row.icon->setPixmap(severity_icon(*severity, palette()).pixmap(side, side));
    row.icon->setVisible(severity.has_value());
    row.text->setText(words);
    row.text->setToolTip(help);
    row.text->show();
}

void PlaceFindings::refresh() {
    std::size_t used = 0;
    for (const Finding& finding : document_.plan().findings) {
        if (!is_about_place(finding) || finding.overruled_because) continue;
        const FindingText said = words(finding, document_.session(), document_.units());
        const bool whole_session = std::holds_alternative<std::monostate>(finding.subject);
        const QString sentences = said.what + u' ' + said.remedy;
        show_row(used++, finding.severity,
                 tr("%1 – %2").arg(label(finding.severity),
                                   whole_session ? sentences : with_colon(said.about, sentences)),
                 said.source);
    }
    if (used == 0) {
        show_row(used++, std::nullopt,
                 document_.session().rule_sets.empty()
                     ? tr("No rules are ticked to compare this place with.")
                     : tr("Nothing about the place breaks a rule that is ticked."),
                 {});
    }
    for (std::size_t i = used; i < rows_.size(); ++i) {
        rows_[i].icon->hide();
        rows_[i].text->hide();
    }
}

}  // namespace leadline
