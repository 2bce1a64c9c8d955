// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/crew_panel.h"

#include <QApplication>
#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>
#include <array>

#include "ui/roster/group_list.h"
#include "ui/roster/roster_edits.h"
#include "ui/roster/staff_list.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

// What a boat or a beach calls out: short, told apart by ear, and no colour that a language reads
// as a warning.
QString group_call(const Session& session) {
    const std::array names{
        CrewPanel::tr("Blue"),   CrewPanel::tr("White"),  CrewPanel::tr("Green"),
        CrewPanel::tr("Silver"), CrewPanel::tr("Violet"), CrewPanel::tr("Brown"),
    };
    for (const QString& name : names) {
        bool taken = false;
        for (const Group& group : session.groups) taken = taken || group.name == name.toStdString();
        if (!taken) return name;
    }
    return QString::number(session.groups.size() + 1);
}

}  // namespace

CrewPanel::CrewPanel(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      toggle_(new QToolButton(this)),
      summary_(new QLabel(this)),
      area_(new QScrollArea(this)),
      groups_(new GroupList(document)),
      staff_(new StaffList(document)) {
    setObjectName(QStringLiteral("crew_panel"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    toggle_->setObjectName(QStringLiteral("crew_toggle"));
    toggle_->setText(tr("&Groups and staff"));
    toggle_->setAccessibleName(tr("Groups and staff"));
    toggle_->setCheckable(true);
    toggle_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    toggle_->setFocusPolicy(Qt::StrongFocus);
    summary_->setObjectName(QStringLiteral("crew_summary"));
    row->addWidget(toggle_);
    row->addWidget(summary_, 1);
    column->addLayout(row);
    area_->setObjectName(QStringLiteral("crew_area"));
    area_->setAccessibleName(tr("Groups and staff"));
    area_->setWidgetResizable(true);
    area_->setFrameShape(QFrame::NoFrame);
    area_->setFocusPolicy(Qt::NoFocus);
    area_->setWidget(build_content());
    column->addWidget(area_, 1);
    connect(toggle_, &QToolButton::toggled, this, &CrewPanel::set_open);
    connect(groups_, &GroupList::refused, this, &CrewPanel::refused);
    connect(staff_, &StaffList::refused, this, &CrewPanel::refused);
    set_open(false);
}

QWidget* CrewPanel::build_content() {
    auto* content = new QWidget;
    halves_ = new QBoxLayout(QBoxLayout::TopToBottom, content);
    halves_->setContentsMargins(0, 0, 8, 8);
    constexpr int between = 24;
    halves_->setSpacing(between);
    auto* add_group_button = new QPushButton(tr("Add a group"), content);
    add_group_button->setObjectName(QStringLiteral("add_group"));
    auto* add_member_button = new QPushButton(tr("Add staff"), content);
    add_member_button->setObjectName(QStringLiteral("add_staff"));
    const auto half = [this](QWidget* list, QWidget* button, int stretch) {
        auto* column = new QVBoxLayout;
        column->setSpacing(8);
        column->addWidget(list);
        column->addWidget(button, 0, Qt::AlignLeft);
        column->addStretch();
        halves_->addLayout(column, stretch);
    };
    constexpr int groups_share = 5;
    constexpr int staff_share = 7;
    half(groups_, add_group_button, groups_share);
    half(staff_, add_member_button, staff_share);
    connect(add_group_button, &QPushButton::clicked, this, &CrewPanel::add_group);
    connect(add_member_button, &QPushButton::clicked, this, &CrewPanel::add_member);
    return content;
}

void CrewPanel::set_open(bool open) {
    toggle_->setChecked(open);
    toggle_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
    area_->setVisible(open);
    Q_EMIT opened(open);
}

void CrewPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    constexpr int letters_for_both = 140;
    const bool wide = width() >= letters_for_both * fontMetrics().averageCharWidth();
    halves_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

bool CrewPanel::is_open() const { return toggle_->isChecked(); }

void CrewPanel::refresh() {
    const Session& session = document_.session();
    groups_->refresh();
    staff_->refresh();
    int stops = 0;
    int cautions = 0;
    for (const Finding& finding : document_.plan().findings) {
        if (finding.overruled_because) continue;
        const bool ours = std::holds_alternative<GroupId>(finding.subject) ||
                          std::holds_alternative<StaffId>(finding.subject);
        stops += ours && finding.severity == Severity::stop ? 1 : 0;
        cautions += ours && finding.severity == Severity::caution ? 1 : 0;
    }
    QString said = tr("%n groups", nullptr, static_cast<int>(session.groups.size()));
    said += QStringLiteral(" · ") + tr("%n staff", nullptr, static_cast<int>(session.staff.size()));
    if (stops > 0) said += QStringLiteral(" · ") + tr("%n stops", nullptr, stops);
    if (cautions > 0) said += QStringLiteral(" · ") + tr("%n care", nullptr, cautions);
    summary_->setText(said);
}

void CrewPanel::add_group() {
    const std::string name = group_call(document_.session()).toStdString();
    const Result<Done> done = document_.edit(
        tr("Add group"), [&](Session& session) { leadline::add_group(session, name); });
    if (!done) return Q_EMIT refused(words(done.error()));
    groups_->focus_last();
    bring_into_sight();
}

void CrewPanel::add_member() {
    const Result<Done> done = document_.edit(tr("Add staff"), [&](Session& session) {
        session.staff.push_back(
            {next_staff_id(session), {}, StaffRole::instructor, {}, std::nullopt});
    });
    if (!done) return Q_EMIT refused(words(done.error()));
    staff_->focus_last();
    bring_into_sight();
}

void CrewPanel::focus_group(const GroupId& group) {
    set_open(true);
    groups_->focus_group(group);
    bring_into_sight();
}

void CrewPanel::focus_member(const StaffId& member) {
    set_open(true);
    staff_->focus_member(member);
    bring_into_sight();
}

void CrewPanel::set_dive_finder(DiveFinder finder) {
    staff_->set_dive_finder(std::move(finder));
}

void CrewPanel::bring_into_sight() {
    if (QWidget* focused = QApplication::focusWidget(); area_->isAncestorOf(focused)) {
        area_->ensureWidgetVisible(focused);
    }
}

}  // namespace leadline
