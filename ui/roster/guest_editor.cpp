// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/guest_editor.h"

#include <QButtonGroup>
#include <QCoreApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/roster/finding_list.h"
#include "ui/roster/kit_page.h"
#include "ui/roster/marks.h"
#include "ui/roster/page_button.h"
#include "ui/roster/person_page.h"
#include "ui/roster/screening_page.h"
#include "ui/widgets/elided_label.h"
#include "ui/words/guest_name.h"

namespace leadline {
namespace {

constexpr std::array pages{GuestPage::person, GuestPage::screening, GuestPage::kit};

constexpr std::size_t place(GuestPage page) { return static_cast<std::size_t>(page); }

bool open_on(const Finding& finding, GuestPage page) {
    return page_of(finding.code) == page && !finding.overruled_because;
}

}  // namespace

GuestEditor::GuestEditor(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      desk_(document),
      name_(new ElidedLabel(this)),
      shape_(new QLabel(this)),
      state_(new QLabel(this)),
      buttons_(new QButtonGroup(this)),
      stack_(new QStackedWidget(this)),
      person_(new PersonPage(desk_)),
      screening_(new ScreeningPage(desk_)),
      kit_(new KitPage(desk_)) {
    setObjectName(QStringLiteral("guest_editor"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    build_header(column);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    const std::array names{tr("&Person"), tr("S&creening"), tr("K&it")};
    const std::array stems{"page_person", "page_screening", "page_kit"};
    for (std::size_t i = 0; i < pages.size(); ++i) {
        auto* button = new PageButton(names[i], this);
        button->setObjectName(QLatin1String(stems[i]));
        buttons_->addButton(button, static_cast<int>(i));
        row->addWidget(button, 1);
    }
    column->addLayout(row);
    column->addWidget(stack_, 1);
    add_page(GuestPage::person, tr("Person"), person_);
    QScrollArea* area = add_page(GuestPage::screening, tr("Screening"), screening_);
    add_page(GuestPage::kit, tr("Kit"), kit_);
    connect(screening_, &ScreeningPage::wants_sight, area, [area](QWidget* question) {
        // What was unfolded a moment ago has no place yet.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
        constexpr int around = 60;
        area->ensureWidgetVisible(question, 0, around);
    });
    connect(buttons_, &QButtonGroup::idClicked, this, [this](int id) {
        show_page(pages.at(static_cast<std::size_t>(id)));
    });
    show_page(GuestPage::person);
}

void GuestEditor::build_header(QVBoxLayout* column) {
    name_->setObjectName(QStringLiteral("editor_name"));
    QFont large = name_->font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    large.setBold(true);
    name_->setFont(large);
    state_->setObjectName(QStringLiteral("editor_state"));
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(shape_);
    row->addWidget(state_, 1);
    column->addWidget(name_);
    column->addLayout(row);
}

QScrollArea* GuestEditor::add_page(GuestPage page, const QString& name, QWidget* content) {
    auto* inner = new QWidget;
    auto* column = new QVBoxLayout(inner);
    column->setContentsMargins(0, 8, 8, 8);
    column->setSpacing(16);
    if (page == GuestPage::screening) {
        findings_[place(page)] = screening_->findings();
    } else {
        auto* list = new FindingList(QStringLiteral("findings_%1").arg(place(page)), inner);
        findings_[place(page)] = list;
        column->addWidget(list);
    }
    column->addWidget(content, 1);
    auto* area = new QScrollArea(stack_);
    area->setObjectName(QStringLiteral("page_area_%1").arg(place(page)));
    area->setAccessibleName(name);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(inner);
    stack_->addWidget(area);
    return area;
}

void GuestEditor::set_guest_finder(GuestFinder finder) {
    person_->set_guest_finder(std::move(finder));
}

void GuestEditor::show_guest(const GuestId& guest) {
    if (guest == desk_.guest_id()) return refresh();
    const QString unread = person_->complaints() + kit_->complaints();
    if (!unread.isEmpty()) {
        Q_EMIT unread_complaint(name_->text() + QStringLiteral(" – ") + unread);
    }
    desk_.set_guest(guest);
    person_->start_guest();
    kit_->start_guest();
    refresh();
    for (auto* area : stack_->findChildren<QScrollArea*>()) area->ensureVisible(0, 0);
}

void GuestEditor::refresh() {
    const Guest* guest = desk_.guest();
    if (guest == nullptr) return;
    refresh_header(*guest);
    refresh_findings();
    person_->refresh();
    screening_->refresh();
    kit_->refresh();
}

void GuestEditor::refresh_header(const Guest& guest) {
    name_->show_text(guest_name(guest.name));
    const Plan& plan = desk_.document().plan();
    std::vector<Finding> own;
    for (const Finding* finding : findings_of(plan, guest.id)) own.push_back(*finding);
    const Readiness counts = readiness(own);
    Mark mark = Mark::done;
    QString state = tr("Ready");
    if (counts.stops > 0) {
        mark = Mark::stop;
        state = tr("Not ready: %1").arg(count_text(counts));
    } else if (card_is_blocked(plan.findings, guest.id, guest.group)) {
        mark = Mark::stop;
        state = tr("Not ready: the group or the session is not");
    } else if (counts.cautions > 0) {
        mark = Mark::caution;
        state = tr("May dive, with care: %1").arg(count_text(counts));
    }
    if (counts.overruled > 0) state += tr(" (%1 overruled)").arg(counts.overruled);
    state_->setText(state);
    const int side = fontMetrics().height();
    shape_->setPixmap(mark_icon(mark, palette()).pixmap(side, side));
}

void GuestEditor::refresh_findings() {
    const auto own = findings_of(desk_.document().plan(), desk_.guest_id());
    for (const GuestPage page : pages) {
        std::vector<const Finding*> here;
        Mark worst = Mark::done;
        for (const Finding* finding : own) {
            if (page_of(finding->code) != page) continue;
            here.push_back(finding);
            if (!finding->overruled_because) worst = std::max(worst, mark_of(finding->severity));
        }
        findings_[place(page)]->show_findings(here, desk_.document());
        QAbstractButton* button = buttons_->button(static_cast<int>(page));
        button->setIcon(mark_icon(worst, palette()));
        const QString state = worst == Mark::stop      ? tr("stops the dive")
                              : worst == Mark::caution ? tr("care")
                                                       : QString();
        button->setAccessibleDescription(state);
    }
}

void GuestEditor::show_page(GuestPage page) {
    buttons_->button(static_cast<int>(page))->setChecked(true);
    stack_->setCurrentIndex(static_cast<int>(page));
}

GuestPage GuestEditor::page() const {
    return pages.at(static_cast<std::size_t>(stack_->currentIndex()));
}

GuestPage GuestEditor::worst_page() const {
    const auto own = findings_of(desk_.document().plan(), desk_.guest_id());
    for (const Severity severity : {Severity::stop, Severity::caution}) {
        for (const GuestPage page : pages) {
            for (const Finding* finding : own) {
                if (finding->severity == severity && open_on(*finding, page)) return page;
            }
        }
    }
    return GuestPage::person;
}

void GuestEditor::focus_name() {
    show_page(GuestPage::person);
    person_->focus_name();
}

void GuestEditor::focus_page() {
    switch (page()) {
        case GuestPage::person: return person_->focus_name();
        case GuestPage::screening: return screening_->focus_first();
        case GuestPage::kit: return kit_->focus_first();
    }
}

void GuestEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return Q_EMIT left();
    QWidget::keyPressEvent(event);
}

void GuestEditor::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) refresh();
}

}  // namespace leadline
