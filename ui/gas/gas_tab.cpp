// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/gas_tab.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QTabBar>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/document/session_document.h"
#include "ui/gas/air_page.h"
#include "ui/gas/gas_words.h"
#include "ui/gas/guest_body_panel.h"
#include "ui/gas/sentence_list.h"
#include "ui/gas/staff_exposure_panel.h"

namespace leadline {
namespace {

constexpr int margin = 16;

QFont enlarged(QFont font, double factor) {
    font.setPointSizeF(font.pointSizeF() * factor);
    return font;
}

}  // namespace

GasTab::GasTab(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      answers_(new SentenceList),
      trouble_(new SentenceList),
      reasons_(new SentenceList),
      empty_(new QLabel),
      switch_(new QTabBar),
      air_(new AirPage(document)) {
    setObjectName(QStringLiteral("gas_tab"));
    answers_->setObjectName(QStringLiteral("gas_answer"));
    answers_->setFont(enlarged(font(), 1.2));
    trouble_->setObjectName(QStringLiteral("gas_trouble"));
    reasons_->setObjectName(QStringLiteral("gas_reason"));
    empty_->setObjectName(QStringLiteral("gas_empty"));
    empty_->setFont(enlarged(font(), 1.2));
    empty_->setWordWrap(true);
    empty_->setText(tr("No guests yet. Add them on the Roster tab and hand out their cylinders; "
                       "then this tab says how long their air lasts."));
    switch_->setObjectName(QStringLiteral("gas_pages"));
    switch_->setAccessibleName(tr("What to look at"));
    switch_->setExpanding(false);
    switch_->setDrawBase(true);
    // One stop for the keyboard; the arrow keys go from page to page.
    for (QToolButton* arrow : switch_->findChildren<QToolButton*>()) {
        arrow->setFocusPolicy(Qt::NoFocus);
    }

    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(8);
    column->addWidget(empty_);
    column->addWidget(answers_);
    body_ = new QWidget;
    auto* body = new QVBoxLayout(body_);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(8);
    body->addWidget(chooser_row());
    body->addWidget(trouble_);
    body->addWidget(reasons_);
    body->addWidget(switch_);
    pages_layout_ = body;
    column->addWidget(body_, 1);
    column->addStretch(0);
    add_page(air_, tr("A&ir"));
    add_page(new GuestBodyPanel(document_), tr("Warmth and &lead"));
    add_page(new StaffExposurePanel(document_), tr("S&taff"));

    auto* area = new QScrollArea;
    area->setObjectName(QStringLiteral("gas_scroll"));
    area->setAccessibleName(tr("Air of the guests"));
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(content);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(area);

    connect(switch_, &QTabBar::currentChanged, this, &GasTab::show_page);
    connect(&document_, &SessionDocument::opened, this, [this] { choose_group({}); });
    connect(&document_, &SessionDocument::changed, this, &GasTab::refresh);
    show_page(0);
    refresh();
}

GasTab::~GasTab() {
    // An open editor that goes with a page may still commit, when this is no longer a GasTab.
    disconnect(&document_, nullptr, this, nullptr);
}

QWidget* GasTab::chooser_row() {
    chooser_ = new QWidget;
    groups_ = new QComboBox;
    groups_->setObjectName(QStringLiteral("gas_group"));
    groups_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int letters = 24;
    groups_->setMinimumContentsLength(letters);
    groups_caption_ = new QLabel(tr("&Group"));
    groups_caption_->setBuddy(groups_);
    show_trouble_ = disclosure(tr("If so&mething goes wrong"), QStringLiteral("gas_show_trouble"),
                               trouble_);
    show_reasons_ = disclosure(tr("Wh&y?"), QStringLiteral("gas_show_reasons"), reasons_);
    auto* row = new QHBoxLayout(chooser_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(groups_caption_);
    row->addWidget(groups_);
    row->addWidget(show_trouble_);
    row->addWidget(show_reasons_);
    row->addStretch(1);
    connect(groups_, &QComboBox::activated, this, [this](int index) {
        choose_group(GroupId(groups_->itemData(index).toString().toStdString()));
    });
    return chooser_;
}

QToolButton* GasTab::disclosure(const QString& text, const QString& name, SentenceList* list) {
    auto* button = new QToolButton;
    button->setObjectName(name);
    button->setText(text);
    button->setCheckable(true);
    button->setAutoRaise(true);
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setArrowType(Qt::RightArrow);
    button->setFocusPolicy(Qt::StrongFocus);
    list->hide();
    connect(button, &QToolButton::toggled, this, [this, button, list](bool open) {
        button->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
        list->setVisible(open);
        refresh_disclosures();
    });
    return button;
}

void GasTab::add_page(QWidget* page, const QString& name) {
    page->hide();
    pages_.push_back(page);
    pages_layout_->addWidget(page, 1);
    switch_->addTab(name);
}

void GasTab::show_page(int page) {
    // Hidden ones take no room, which pages of a stack would.
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        pages_[i]->setVisible(static_cast<int>(i) == page);
    }
}

GroupId GasTab::chosen_group() const { return air_->group(); }

void GasTab::refresh() {
    // A group that has gone leaves all of them.
    if (find_group(document_.session(), air_->group()) == nullptr) air_->show_group({});
    const bool guests = !document_.session().guests.empty();
    empty_->setVisible(!guests);
    answers_->setVisible(guests);
    body_->setVisible(guests);
    refresh_chooser();
    answers_->show_sentences(group_answers(document_, air_->group()));
    refresh_disclosures();
    air_->refresh();
}

void GasTab::refresh_disclosures() {
    const bool reckoned = !document_.plan().forecasts.empty();
    show_trouble_->setEnabled(reckoned);
    show_reasons_->setEnabled(reckoned);
    // Sentences nobody sees are not made: this runs on every keystroke.
    using Sentences = std::vector<GasSentence>;
    const GroupId& group = air_->group();
    trouble_->show_sentences(show_trouble_->isChecked() ? trouble_answers(document_, group)
                                                        : Sentences());
    reasons_->show_sentences(show_reasons_->isChecked() ? answer_reasons(document_, group)
                                                        : Sentences());
}

void GasTab::refresh_chooser() {
    const auto& groups = document_.session().groups;
    QStringList names{tr("All")};
    QStringList ids{QString()};
    for (const Group& group : groups) {
        names << (group.name.empty() ? tr("(no name)") : QString::fromStdString(group.name));
        ids << QString::fromStdString(group.id.text);
    }
    bool same = groups_->count() == names.size();
    for (int i = 0; same && i < groups_->count(); ++i) {
        same = groups_->itemText(i) == names[i] && groups_->itemData(i).toString() == ids[i];
    }
    if (!same) {
        groups_->clear();
        for (qsizetype i = 0; i < names.size(); ++i) groups_->addItem(names[i], ids[i]);
    }
    groups_->setCurrentIndex(groups_->findData(QString::fromStdString(air_->group().text)));
    groups_->setVisible(groups.size() > 1);
    groups_caption_->setVisible(groups.size() > 1);
}

void GasTab::choose_group(const GroupId& group) {
    air_->show_group(group);
    refresh();
}

void GasTab::show_subject(const Subject& subject) {
    if (const auto* guest = std::get_if<GuestId>(&subject)) {
        const Guest* found = find_guest(document_.session(), *guest);
        if (found == nullptr) return;
        if (!air_->group().empty() && air_->group() != found->group) choose_group({});
        switch_->setCurrentIndex(page_of(subject));
        air_->show_guest(*guest);
        if (switch_->currentIndex() == air_page) air_->focus_table();
    } else if (const auto* group = std::get_if<GroupId>(&subject)) {
        switch_->setCurrentIndex(air_page);
        choose_group(*group);
    } else if (const auto* staff = std::get_if<StaffId>(&subject)) {
        switch_->setCurrentIndex(page_of(subject));
        for (const Group& led : document_.session().groups) {
            if (led.instructor == *staff) return choose_group(led.id);
        }
    }
}

int GasTab::page_of(const Subject& subject) const {
    // The gravest stands first.
    for (const Finding& finding : document_.plan().findings) {
        if (finding.subject != subject || finding.overruled_because) continue;
        switch (finding.code) {
            case FindingCode::ends_below_reserve:
            case FindingCode::minimum_gas_above_reserve:
            case FindingCode::cylinder_missing:
            case FindingCode::staff_cylinder_missing:
            case FindingCode::staff_gas_below_minimum:
            case FindingCode::sharing_may_not_last: return air_page;
            case FindingCode::cold_before_end:
            case FindingCode::bcd_cannot_hold:
            case FindingCode::cannot_stay_down:
            case FindingCode::lead_outside_range: return body_page;
            case FindingCode::staff_dives_over_limit:
            case FindingCode::staff_ascents_over_limit:
            case FindingCode::staff_days_over_limit:
            case FindingCode::staff_needs_stop: return staff_page;
            default: break;
        }
    }
    return air_page;
}

}  // namespace leadline
