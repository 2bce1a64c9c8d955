// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/staff_exposure_panel.h"

#include <QLabel>
#include <QLocale>
#include <QToolButton>
#include <QVBoxLayout>

#include "core/body/tissues.h"
#include "ui/document/session_document.h"
#include "ui/gas/figure_table.h"
#include "ui/gas/sentence_list.h"
#include "ui/gas/staff_exposure_model.h"

namespace leadline {

StaffExposurePanel::StaffExposurePanel(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new StaffExposureModel(document, this)),
      answers_(new SentenceList),
      empty_(new QLabel),
      body_(new QWidget),
      table_(new FigureTable(*model_, QStringLiteral("exposure_table"),
                             tr("What earlier dives leave to each member of staff"))),
      why_(new QToolButton),
      reasons_(new SentenceList) {
    setObjectName(QStringLiteral("staff_exposure_panel"));
    lay_out();
    connect(why_, &QToolButton::toggled, this, &StaffExposurePanel::show_reasons);
    connect(table_, &FigureTable::current_changed, this, &StaffExposurePanel::refresh_reasons);
    connect(&document_, &SessionDocument::changed, this, &StaffExposurePanel::follow_document);
    refresh();
}

StaffExposurePanel::~StaffExposurePanel() {
    // The table lets go of its row when this is no longer a StaffExposurePanel.
    disconnect(&document_, nullptr, this, nullptr);
    disconnect(table_, nullptr, this, nullptr);
}

void StaffExposurePanel::lay_out() {
    QFont large = font();
    constexpr double answer_size = 1.2;
    large.setPointSizeF(large.pointSizeF() * answer_size);
    answers_->setObjectName(QStringLiteral("exposure_answer"));
    answers_->setFont(large);
    const auto line = [](QLabel* label, const char* name, const QString& text) {
        label->setObjectName(QString::fromLatin1(name));
        label->setText(text);
        label->setWordWrap(true);
        label->setMinimumHeight(label->fontMetrics().height());
    };
    line(empty_, "exposure_empty",
         tr("Nobody on the staff yet. Add them on the Roster tab under Groups and staff, and enter "
            "their dives of the last seven days there with the button in the column Dives; then "
            "this "
            "says who is free to lead this dive."));
    empty_->setFont(large);
    auto* safety = new QLabel;
    line(safety, "exposure_safety",
         tr("An aid for planning. What the diver's own computer, a physician and the makers say "
            "prevails. Tissues by ZH-L16C with gradient factors %1/%2, common practice.")
             .arg(QLocale().toString(house_gradient_factors.low * 100.0, 'f', 0),
                  QLocale().toString(house_gradient_factors.high * 100.0, 'f', 0)));
    why_->setObjectName(QStringLiteral("exposure_why"));
    why_->setText(tr("Why?"));
    why_->setAccessibleName(tr("Why? Staff"));
    why_->setCheckable(true);
    why_->setAutoRaise(true);
    why_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    why_->setArrowType(Qt::RightArrow);
    why_->setFocusPolicy(Qt::StrongFocus);
    reasons_->setObjectName(QStringLiteral("exposure_reason"));
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

void StaffExposurePanel::follow_document() {
    // Typing on another tab does not wait for what nobody sees.
    stale_ = !isVisible();
    if (!stale_) refresh();
}

void StaffExposurePanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!stale_) return;
    stale_ = false;
    refresh();
}

void StaffExposurePanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    table_->fit(width());
}

void StaffExposurePanel::refresh() {
    const bool staff = !document_.session().staff.empty();
    empty_->setVisible(!staff);
    answers_->setVisible(staff);
    body_->setVisible(staff);
    model_->refresh();
    table_->fit(width());
    answers_->show_sentences(staff_answers(document_));
    refresh_reasons();
}

void StaffExposurePanel::refresh_reasons() {
    if (why_->isChecked()) {
        reasons_->show_sentences(staff_reasons(document_, StaffId(table_->current_id())));
    }
}

void StaffExposurePanel::show_reasons(bool shown) {
    refresh_reasons();
    reasons_->setVisible(shown);
    why_->setArrowType(shown ? Qt::DownArrow : Qt::RightArrow);
}

}  // namespace leadline
