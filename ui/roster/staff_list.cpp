// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/staff_list.h"

#include <QGridLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/roster/cylinder_picker.h"
#include "ui/roster/fields.h"
#include "ui/roster/finding_list.h"
#include "ui/roster/guest_facts.h"
#include "ui/roster/language_button.h"
#include "ui/roster/measures.h"
#include "ui/roster/roster_edits.h"
#include "ui/widgets/plain_tip.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int spare = 8;  // around a button's text

}  // namespace

StaffList::StaffList(SessionDocument& document, QWidget* parent)
    : QWidget(parent), desk_(document) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    rebuild();
}

// ---- building ----------------------------------------------------------------------------------

void StaffList::rebuild() {
    delete rows_;
    lines_.clear();
    rows_ = new QWidget(this);
    layout()->addWidget(rows_);
    grid_ = new QGridLayout(rows_);
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(4);
    const QStringList heads{tr("Staff"),    tr("Role"),     tr("Speaks"),
                            tr("Cylinder"), tr("Filled to"), tr("Gas at"),
                            tr("Dives")};
    for (int i = 0; i < heads.size(); ++i) {
        auto* head = new QLabel(heads[i], rows_);
        head->setForegroundRole(QPalette::PlaceholderText);
        grid_->addWidget(head, 0, i);
    }
    grid_->setColumnStretch(0, 5);
    grid_->setColumnStretch(2, 3);
    grid_->setColumnStretch(3, 3);
    int number = 0;
    for (const StaffMember& member : desk_.document().session().staff) {
        lines_.push_back(add_line(member, ++number));
        connect_line(lines_.back());
    }
    rows_->setVisible(!lines_.empty());
    QWidget* before = nullptr;
    for (const Line& line : lines_) {
        const std::initializer_list<QWidget*> order{
            line.name,           line.role,                  line.languages, line.cylinder->type(),
            line.cylinder->fill(), line.cylinder->temperature(), line.dives, line.remove};
        for (QWidget* next : order) {
            if (before != nullptr) setTabOrder(before, next);
            before = next;
        }
    }
}

StaffList::Line StaffList::add_line(const StaffMember& member, int number) {
    const QString stem = QStringLiteral("staff_%1").arg(number);
    Line line;
    line.id = member.id;
    line.name = new TypedLine(stem + QStringLiteral("_name"), longest_name, rows_);
    line.role = new ChoiceBox(stem + QStringLiteral("_role"), rows_);
    line.role->offer({{label(StaffRole::instructor), QStringLiteral("instructor")},
                      {label(StaffRole::assistant), QStringLiteral("assistant")}});
    line.languages = new LanguageButton(rows_);
    line.languages->setObjectName(stem + QStringLiteral("_languages"));
    line.cylinder = new CylinderPicker(stem, tr("None yet"), rows_);
    line.dives = new QToolButton(rows_);
    line.dives->setFocusPolicy(Qt::StrongFocus);
    line.dives->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("100… ")) + spare);
    line.dives->setObjectName(stem + QStringLiteral("_dives"));
    line.remove = new QToolButton(rows_);
    line.remove->setText(QStringLiteral("×"));
    line.remove->setFocusPolicy(Qt::StrongFocus);
    line.remove->setObjectName(stem + QStringLiteral("_remove"));
    line.findings = new FindingList(stem + QStringLiteral("_findings"), rows_);
    const int row = number * 2;
    grid_->addWidget(line.name, row, 0);
    grid_->addWidget(line.role, row, 1);
    grid_->addWidget(line.languages, row, 2);
    grid_->addWidget(line.cylinder->type(), row, 3);
    grid_->addWidget(line.cylinder->fill(), row, 4);
    grid_->addWidget(line.cylinder->temperature(), row, 5);
    grid_->addWidget(line.dives, row, 6);
    grid_->addWidget(line.remove, row, 7);
    grid_->addWidget(line.findings, row + 1, 0, 1, 8);
    return line;
}

void StaffList::connect_line(const Line& line) {
    const StaffId id = line.id;
    connect(line.name, &QLineEdit::textEdited, this, [this, id, box = line.name] {
        const std::string name = box->trimmed();
        change(id, "name", [&](StaffMember& member) { member.name = name; });
    });
    connect(line.role, &QComboBox::activated, this, [this, id, box = line.role] {
        const bool assists = box->choice() == u"assistant";
        change(id, "role", [&](StaffMember& member) {
            member.role = assists ? StaffRole::assistant : StaffRole::instructor;
        });
    });
    connect(line.languages, &LanguageButton::edited, this,
            [this, id](const std::vector<std::string>& tags) {
                change(id, "languages", [&](StaffMember& member) { member.languages = tags; });
            });
    connect(line.cylinder, &CylinderPicker::edited, this,
            [this, id, picker = line.cylinder](const std::optional<Cylinder>& cylinder) {
                const StaffMember* before = find_staff(desk_.document().session(), id);
                if (before == nullptr) return;
                const char* part = changed_part(before->cylinder, cylinder);
                if (change(id, part, [&](StaffMember& member) { member.cylinder = cylinder; })) {
                    return;
                }
                picker->show_cylinder(before->cylinder);
            });
    connect(line.dives, &QToolButton::clicked, this, [this, id] { open_dives(id); });
    // Queued: the button is deleted by its own click.
    connect(
        line.remove, &QToolButton::clicked, this,
        [this, id] {
            desk_.change_session(tr("Remove member of staff"), tr("Staff"), {},
                                 [&](Session& session) { remove_staff(session, id); });
        },
        Qt::QueuedConnection);
}

void StaffList::open_dives(const StaffId& id) {
    auto* dialog = new EarlierDivesDialog(desk_.document(), id, dive_finder_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

bool StaffList::change(const StaffId& id, const char* key,
                       const std::function<void(StaffMember&)>& change) {
    const QString refusal = desk_.change_session(
        tr("Change staff"), tr("Staff"),
        QString::fromStdString(id.text) + u'/' + QLatin1String(key), [&](Session& session) {
            for (StaffMember& member : session.staff) {
                if (member.id == id) change(member);
            }
        });
    if (!refusal.isEmpty()) Q_EMIT refused(refusal);
    return refusal.isEmpty();
}

// ---- showing -----------------------------------------------------------------------------------

void StaffList::refresh() {
    const std::vector<StaffMember>& staff = desk_.document().session().staff;
    const bool same = std::equal(lines_.begin(), lines_.end(), staff.begin(), staff.end(),
                                 [](const Line& line, const StaffMember& member) {
                                     return line.id == member.id;
                                 });
    if (!same) rebuild();
    for (std::size_t i = 0; i < lines_.size(); ++i) refresh_line(lines_[i], staff[i]);
}

void StaffList::refresh_line(const Line& line, const StaffMember& member) {
    const SessionDocument& document = desk_.document();
    line.name->show_text(member.name);
    line.name->setPlaceholderText(tr("Name"));
    line.role->show_choice(member.role == StaffRole::assistant ? QStringLiteral("assistant")
                                                               : QStringLiteral("instructor"));
    line.languages->show_languages(member.languages);
    line.cylinder->set_units(document.units());
    line.cylinder->set_air(document.session().conditions.air_temperature);
    line.cylinder->show_cylinder(member.cylinder);
    const QString name = staff_name(member);
    line.name->setAccessibleName(tr("Name of %1").arg(name));
    line.role->setAccessibleName(tr("Role of %1").arg(name));
    line.languages->setAccessibleName(tr("Languages of %1").arg(name));
    line.cylinder->type()->setAccessibleName(tr("Cylinder of %1").arg(name));
    line.cylinder->fill()->setAccessibleName(tr("Gauge reading of %1").arg(name));
    line.cylinder->temperature()->setAccessibleName(tr("Gas temperature of %1").arg(name));
    const auto count = static_cast<int>(member.earlier_dives.size());
    line.dives->setText(tr("%1…").arg(count));
    line.dives->setAccessibleName(tr("Earlier dives of %1").arg(name));
    line.dives->setAccessibleDescription(QString::number(count));
    line.dives->setToolTip(plain_tip(line.dives->accessibleName()));
    line.remove->setAccessibleName(tr("Remove %1").arg(name));
    line.remove->setToolTip(plain_tip(line.remove->accessibleName()));
    std::vector<const Finding*> found;
    for (const Finding& finding : document.plan().findings) {
        const auto* about = std::get_if<StaffId>(&finding.subject);
        if (about != nullptr && *about == member.id) found.push_back(&finding);
    }
    line.findings->show_findings(found, document);
}

void StaffList::focus_member(const StaffId& member) {
    for (const Line& line : lines_) {
        if (line.id != member) continue;
        line.name->setFocus(Qt::ShortcutFocusReason);
        line.name->selectAll();
    }
}

void StaffList::focus_last() {
    if (!lines_.empty()) focus_member(lines_.back().id);
}

}  // namespace leadline
