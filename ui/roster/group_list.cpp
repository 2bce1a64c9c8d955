// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/group_list.h"

#include <QGridLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/roster/fields.h"
#include "ui/roster/finding_list.h"
#include "ui/roster/guest_facts.h"
#include "ui/roster/measures.h"
#include "ui/roster/roster_edits.h"
#include "ui/widgets/plain_tip.h"

namespace leadline {
namespace {

std::vector<ChoiceBox::Choice> staff_choices(const Session& session, const QString& nobody,
                                             bool instructors_only) {
    std::vector<ChoiceBox::Choice> choices{{nobody, QString()}};
    for (const StaffMember& member : session.staff) {
        if (instructors_only && member.role != StaffRole::instructor) continue;
        choices.push_back({staff_name(member), QString::fromStdString(member.id.text)});
    }
    return choices;
}

/// Shows who is named; somebody whose role is not offered here is still shown by name.
void show_member(ChoiceBox* box, std::vector<ChoiceBox::Choice> choices, const Session& session,
                 const StaffId& id) {
    const QString value = QString::fromStdString(id.text);
    const bool offered = std::any_of(choices.begin(), choices.end(),
                                     [&](const auto& choice) { return choice.value == value; });
    if (const StaffMember* member = find_staff(session, id); member != nullptr && !offered) {
        choices.push_back({staff_name(*member), value});
    }
    box->offer(choices);
    box->show_choice(value);
}

}  // namespace

GroupList::GroupList(SessionDocument& document, QWidget* parent)
    : QWidget(parent), desk_(document) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    rebuild();
}

// ---- building ----------------------------------------------------------------------------------

void GroupList::rebuild() {
    delete rows_;
    lines_.clear();
    rows_ = new QWidget(this);
    layout()->addWidget(rows_);
    grid_ = new QGridLayout(rows_);
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(4);
    const QStringList heads{tr("Group"), tr("Instructor"), tr("Assistant"), tr("Guests")};
    for (int i = 0; i < heads.size(); ++i) {
        auto* head = new QLabel(heads[i], rows_);
        head->setForegroundRole(QPalette::PlaceholderText);
        grid_->addWidget(head, 0, i);
    }
    for (const int stretched : {0, 1, 2}) grid_->setColumnStretch(stretched, 1);
    int number = 0;
    for (const Group& group : desk_.document().session().groups) {
        lines_.push_back(add_line(group, ++number));
        connect_line(lines_.back());
    }
    rows_->setVisible(!lines_.empty());
    QWidget* before = nullptr;
    for (const Line& line : lines_) {
        for (QWidget* next :
             {static_cast<QWidget*>(line.name), static_cast<QWidget*>(line.instructor),
              static_cast<QWidget*>(line.assistant), static_cast<QWidget*>(line.remove)}) {
            if (before != nullptr) setTabOrder(before, next);
            before = next;
        }
    }
}

GroupList::Line GroupList::add_line(const Group& group, int number) {
    const QString stem = QStringLiteral("group_%1_").arg(number);
    Line line;
    line.id = group.id;
    line.name = new TypedLine(stem + QStringLiteral("name"), longest_name, rows_);
    line.instructor = new ChoiceBox(stem + QStringLiteral("instructor"), rows_);
    line.assistant = new ChoiceBox(stem + QStringLiteral("assistant"), rows_);
    line.guests = new QLabel(rows_);
    line.guests->setObjectName(stem + QStringLiteral("guests"));
    line.remove = new QToolButton(rows_);
    line.remove->setText(QStringLiteral("×"));
    line.remove->setFocusPolicy(Qt::StrongFocus);
    line.remove->setObjectName(stem + QStringLiteral("remove"));
    line.findings = new FindingList(stem + QStringLiteral("findings"), rows_);
    const int row = number * 2;
    grid_->addWidget(line.name, row, 0);
    grid_->addWidget(line.instructor, row, 1);
    grid_->addWidget(line.assistant, row, 2);
    grid_->addWidget(line.guests, row, 3);
    grid_->addWidget(line.remove, row, 4);
    grid_->addWidget(line.findings, row + 1, 0, 1, 5);
    return line;
}

void GroupList::connect_line(const Line& line) {
    const GroupId id = line.id;
    connect(line.name, &QLineEdit::textEdited, this, [this, id, box = line.name] {
        const std::string name = box->trimmed();
        change(id, "name", [&](Group& group) { group.name = name; });
    });
    connect(line.instructor, &QComboBox::activated, this, [this, id, box = line.instructor] {
        const StaffId who(box->choice().toStdString());
        change(id, "instructor", [&](Group& group) { group.instructor = who; });
    });
    connect(line.assistant, &QComboBox::activated, this, [this, id, box = line.assistant] {
        const StaffId who(box->choice().toStdString());
        change(id, "assistant", [&](Group& group) { group.assistant = who; });
    });
    // Queued: the button is deleted by its own click.
    connect(
        line.remove, &QToolButton::clicked, this,
        [this, id] {
            desk_.change_session(tr("Remove group"), tr("Group"), {},
                                 [&](Session& session) { remove_group(session, id); });
        },
        Qt::QueuedConnection);
}

void GroupList::change(const GroupId& id, const char* key,
                       const std::function<void(Group&)>& change) {
    const QString refusal = desk_.change_session(
        tr("Change group"), tr("Group"),
        QString::fromStdString(id.text) + u'/' + QLatin1String(key), [&](Session& session) {
            for (Group& group : session.groups) {
                if (group.id == id) change(group);
            }
        });
    if (!refusal.isEmpty()) Q_EMIT refused(refusal);
}

// ---- showing -----------------------------------------------------------------------------------

void GroupList::refresh() {
    const std::vector<Group>& groups = desk_.document().session().groups;
    const bool same = std::equal(lines_.begin(), lines_.end(), groups.begin(), groups.end(),
                                 [](const Line& line, const Group& group) {
                                     return line.id == group.id;
                                 });
    if (!same) rebuild();
    for (std::size_t i = 0; i < lines_.size(); ++i) refresh_line(lines_[i], groups[i]);
}

void GroupList::refresh_line(const Line& line, const Group& group) {
    const Session& session = desk_.document().session();
    line.name->show_text(group.name);
    show_member(line.instructor, staff_choices(session, tr("Nobody yet"), true), session,
                group.instructor);
    show_member(line.assistant, staff_choices(session, tr("None"), false), session,
                group.assistant);
    const QString name = group_name(session, group.id);
    line.name->setAccessibleName(tr("Name of group %1").arg(name));
    line.instructor->setAccessibleName(tr("Instructor of group %1").arg(name));
    line.assistant->setAccessibleName(tr("Assistant of group %1").arg(name));
    line.remove->setAccessibleName(tr("Remove group %1").arg(name));
    line.remove->setToolTip(plain_tip(line.remove->accessibleName()));
    const auto count = static_cast<int>(guests_in(session, group.id).size());
    line.guests->setText(tr("%n guests", nullptr, count));
    std::vector<const Finding*> found;
    for (const Finding& finding : desk_.document().plan().findings) {
        const auto* about = std::get_if<GroupId>(&finding.subject);
        if (about != nullptr && *about == group.id) found.push_back(&finding);
    }
    line.findings->show_findings(found, desk_.document());
}

void GroupList::focus_group(const GroupId& group) {
    for (const Line& line : lines_) {
        if (line.id != group) continue;
        line.name->setFocus(Qt::ShortcutFocusReason);
        line.name->selectAll();
    }
}

void GroupList::focus_last() {
    if (!lines_.empty()) focus_group(lines_.back().id);
}

}  // namespace leadline
