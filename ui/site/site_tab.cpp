// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/site_tab.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include "ui/document/session_document.h"
#include "ui/site/conditions_form.h"
#include "ui/site/ear_lung_panel.h"
#include "ui/site/place_findings.h"
#include "ui/site/place_form.h"
#include "ui/site/place_numbers.h"
#include "ui/site/profile_panel.h"
#include "ui/site/rule_set_list.h"

namespace leadline {
namespace {

constexpr int margin = 16;

QLabel* section(const QString& title) {
    auto* label = new QLabel(title);
    QFont large = label->font();
    large.setPointSizeF(large.pointSizeF() * 1.15);
    large.setBold(true);
    label->setFont(large);
    return label;
}

QScrollArea* scrolling(QWidget* content, const QString& name, const QString& accessible_name) {
    auto* area = new QScrollArea;
    area->setObjectName(name);
    area->setAccessibleName(accessible_name);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(content);
    return area;
}

/// The field that a finding speaks of; empty: the drawing.
QString field_for(FindingCode code) {
    switch (code) {
        case FindingCode::bottom_below_limit: return QStringLiteral("site_bottom_depth");
        case FindingCode::water_too_cold: return QStringLiteral("conditions_water");
        case FindingCode::visibility_low: return QStringLiteral("conditions_visibility");
        case FindingCode::current_strong: return QStringLiteral("conditions_current");
        case FindingCode::waves_high: return QStringLiteral("conditions_waves");
        case FindingCode::emergency_line_missing: return QStringLiteral("site_emergency_line");
        case FindingCode::minutes_over_limit: return QStringLiteral("quick_tour");
        case FindingCode::no_rules_chosen:
        case FindingCode::ear_step_over_locking: return QStringLiteral("rule_sets");
        default: return {};
    }
}

}  // namespace

SiteTab::SiteTab(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      place_(new PlaceForm(document)),
      profile_(new ProfilePanel(document)),
      headline_(new QLabel) {
    setObjectName(QStringLiteral("site_tab"));
    auto* splitter = new QSplitter(Qt::Horizontal);
    splitter->setObjectName(QStringLiteral("site_splitter"));
    splitter->setChildrenCollapsible(false);
    left_ = left_column();
    right_ = right_column();
    splitter->addWidget(left_);
    splitter->addWidget(right_);
    splitter->setStretchFactor(0, 0);
    splitter->setStretchFactor(1, 1);
    const int left_width = fontMetrics().averageCharWidth() * 42;
    splitter->setSizes({left_width, 3 * left_width});
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(splitter);
    connect(&document_, &SessionDocument::changed, this, &SiteTab::refresh_headline);
    refresh_headline();
}

SiteTab::~SiteTab() {
    // An editor that is still open may commit while the parts go one by one.
    disconnect(&document_, nullptr, this, nullptr);
}

QScrollArea* SiteTab::left_column() {
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(8);
    column->addWidget(section(tr("Where")));
    column->addWidget(place_);
    column->addSpacing(margin);
    column->addWidget(section(tr("What the sea does today")));
    column->addWidget(new ConditionsForm(document_));
    column->addSpacing(margin);
    column->addWidget(section(tr("Rules that apply")));
    column->addWidget(new RuleSetList(document_));
    column->addStretch(1);
    QScrollArea* area = scrolling(content, QStringLiteral("site_left"), tr("Site and conditions"));
    area->setMinimumWidth(fontMetrics().averageCharWidth() * 40);
    return area;
}

QScrollArea* SiteTab::right_column() {
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(8);
    QFont large = headline_->font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    large.setBold(true);
    headline_->setFont(large);
    headline_->setObjectName(QStringLiteral("site_headline"));
    headline_->setWordWrap(true);
    headline_->setMinimumHeight(headline_->fontMetrics().height());
    column->addWidget(headline_);
    column->addWidget(new PlaceFindings(document_));
    column->addWidget(profile_, 1);
    column->addSpacing(margin);
    column->addWidget(new EarLungPanel(document_));
    column->addSpacing(margin);
    column->addWidget(section(tr("Numbers of the place")));
    column->addWidget(new PlaceNumbers(document_));
    return scrolling(content, QStringLiteral("site_right"), tr("Profile and numbers"));
}

void SiteTab::refresh_headline() {
    const Session& session = document_.session();
    const Plan& plan = document_.plan();
    const QString dive = tr("%1 deep, %2")
                             .arg(text(plan.environment.deepest, document_.units()),
                                  text(duration(session.profile)));
    headline_->setText(session.site.name.empty()
                           ? dive + u'.'
                           : tr("%1 at %2.").arg(dive, QString::fromStdString(session.site.name)));
}

void SiteTab::set_site_finder(std::function<std::vector<Site>()> finder) {
    place_->set_site_finder(std::move(finder));
}

void SiteTab::show_subject(const Subject&) {
    right_->ensureVisible(0, 0);
    profile_->focus_drawing();
}

void SiteTab::show_finding(FindingCode code) {
    auto* field = findChild<QWidget*>(field_for(code), Qt::FindChildrenRecursively);
    if (field_for(code).isEmpty() || field == nullptr) return show_subject({});
    QScrollArea* area = left_->isAncestorOf(field) ? left_ : right_;
    area->ensureWidgetVisible(field);
    field->setFocus(Qt::OtherFocusReason);
}

}  // namespace leadline
