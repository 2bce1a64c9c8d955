// SPDX-License-Identifier: GPL-3.0-or-later
// How the Briefing Sheet tab is put together: names, places, and what each sheet asks for.
#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/document/session_document.h"
#include "ui/guest_words/typed_text.h"
#include "ui/sheet/briefing_tab.h"
#include "ui/sheet/card_editor.h"
#include "ui/sheet/card_list.h"
#include "ui/sheet/page_preview.h"
#include "ui/sheet/saving_row.h"
#include "ui/sheet/sheet_bar.h"
#include "ui/sheet/sheet_words.h"
#include "ui/widgets/wheel_guard.h"
#include "ui/words/finding_words.h"

namespace leadline {
namespace {

constexpr int side_width = 350;
constexpr int least_list_height = 110;

/// Fills a box anew and keeps what was chosen where it is still there.
template <typename Fill>
void refill(QComboBox& box, Fill fill) {
    const QSignalBlocker quiet(box);
    const QVariant chosen = box.currentData();
    box.clear();
    fill(box);
    const int row = box.findData(chosen);
    box.setCurrentIndex(row >= 0 ? row : 0);
}

void make_narrow(QComboBox* box) {
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(8);
    guard_wheel(box);
}

}  // namespace

void BriefingTab::lay_out() {
    const std::pair<QWidget*, const char*> names[] = {
        {show_, "briefing_show"},
        {overrule_, "briefing_overrule"},
        {print_, "briefing_print"},
        {save_, "briefing_save_pdf"},
        {previous_, "briefing_previous"},
        {next_, "briefing_next"},
        {size_, "briefing_size"},
        {paper_, "briefing_paper"},
        {group_, "briefing_group"},
        {picture_language_, "picture_language"},
        {picture_second_, "picture_second_language"},
        {skills_, "briefing_skills"},
        {status_, "briefing_status"},
        {summary_, "briefing_summary"},
        {letters_, "briefing_letters"},
        {page_number_, "briefing_page"},
        {about_, "briefing_about"},
    };
    for (const auto& [widget, name] : names) widget->setObjectName(QString::fromLatin1(name));
    for (const CardSize one : card_sizes()) {
        size_->addItem(card_size_name(one), static_cast<int>(one));
    }
    paper_->addItem(tr("A4"), static_cast<int>(Paper::a4));
    paper_->addItem(tr("Letter"), static_cast<int>(Paper::letter));
    if (QLocale().measurementSystem() == QLocale::ImperialUSSystem) paper_->setCurrentIndex(1);
    picture_second_->addItem(tr("None"), QString());
    for (QComboBox* box : {size_, paper_, group_, picture_language_, picture_second_}) {
        make_narrow(box);
    }
    for (QLabel* label : {about_, status_, summary_, letters_}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);  // names may hold anything
    }
    letters_->hide();
    previous_->setAccessibleName(tr("Page before"));
    next_->setAccessibleName(tr("Next page"));

    auto* screen = new QPushButton(tr("Guest scree&n"), this);
    screen->setObjectName(QStringLiteral("briefing_guest_screen"));
    screen->setToolTip(tr("The briefing for guests to look at (F9)."));
    connect(screen, &QPushButton::clicked, this, &BriefingTab::guest_screen_requested);
    auto* top = new QHBoxLayout;
    top->addWidget(bar_, 1);
    top->addWidget(screen);
    auto* body = new QHBoxLayout;
    body->setSpacing(16);
    body->addWidget(build_side());
    body->addWidget(build_pages(), 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 16);
    layout->setSpacing(12);
    layout->addLayout(top);
    layout->addLayout(body, 1);
}

QWidget* BriefingTab::build_card_side() {
    auto* side = new QWidget(this);
    auto* heading = new QLabel(tr("Cards &for"), side);
    QFont bold = heading->font();
    bold.setBold(true);
    bold.setPointSizeF(bold.pointSizeF() * 1.15);
    heading->setFont(bold);
    heading->setBuddy(list_);
    auto* all = new QPushButton(tr("&All"), side);
    all->setObjectName(QStringLiteral("briefing_all"));
    auto* none = new QPushButton(tr("N&one"), side);
    none->setObjectName(QStringLiteral("briefing_none"));
    connect(all, &QPushButton::clicked, this, [this] { list_->set_all_wanted(true); });
    connect(none, &QPushButton::clicked, this, [this] { list_->set_all_wanted(false); });
    auto* top = new QHBoxLayout;
    top->addWidget(heading, 1);
    top->addWidget(all);
    top->addWidget(none);
    auto* stops = new QHBoxLayout;
    stops->addWidget(show_);
    stops->addWidget(overrule_);
    stops->addStretch();
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addLayout(top);
    layout->addWidget(list_, 1);
    layout->addLayout(stops);
    layout->addWidget(editor_);
    return side;
}

QWidget* BriefingTab::build_sheet_side() {
    auto* side = new QWidget(this);
    auto* grid = new QGridLayout;
    grid->setVerticalSpacing(8);
    int row = 0;
    const auto add = [&](QLabel* label, const QString& words, QComboBox* box) {
        label->setText(words);
        label->setBuddy(box);
        box->setAccessibleName(QString(words).remove(u'&'));
        grid->addWidget(label, row, 0);
        grid->addWidget(box, row, 1);
        ++row;
    };
    add(group_label_, tr("Gro&up"), group_);
    add(picture_language_label_, tr("&Language"), picture_language_);
    add(picture_second_label_, tr("Second lang&uage"), picture_second_);
    grid->setColumnStretch(1, 1);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(about_);
    layout->addLayout(grid);
    layout->addWidget(skills_, 0, Qt::AlignLeft);
    layout->addStretch(1);
    return side;
}

QWidget* BriefingTab::build_side() {
    auto* choices = new QWidget(this);
    list_->setMinimumHeight(least_list_height);
    card_side_ = build_card_side();
    sheet_side_ = build_sheet_side();
    auto* inside = new QVBoxLayout(choices);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(8);
    inside->addWidget(card_side_, 1);
    inside->addWidget(sheet_side_, 1);
    inside->addWidget(summary_);
    // On a small screen, or in large type, the choices are scrolled and not squeezed; the buttons
    // below them stay in sight.
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(choices);

    auto* paper_row = new QGridLayout;
    paper_row->addWidget(paper_label_, 0, 0);
    paper_row->addWidget(size_, 0, 1);
    paper_row->addWidget(paper_, 0, 1);
    paper_row->setColumnStretch(1, 1);
    auto* actions = new QHBoxLayout;
    actions->addWidget(print_);
    actions->addWidget(save_);
    actions->addStretch();
    auto* status = new QHBoxLayout;
    status->addWidget(status_icon_, 0, Qt::AlignTop);
    status->addWidget(status_, 1);

    auto* side = new QWidget(this);
    side->setFixedWidth(side_width);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(area, 1);
    layout->addWidget(letters_);
    layout->addLayout(paper_row);
    layout->addLayout(actions);
    layout->addWidget(saving_);
    layout->addLayout(status);
    return side;
}

QWidget* BriefingTab::build_pages() {
    auto* pages = new QWidget(this);
    auto* real = new QCheckBox(tr("Real size on s&creen"), pages);
    real->setObjectName(QStringLiteral("briefing_real_size"));
    connect(real, &QCheckBox::toggled, preview_, &PagePreview::set_real_size);
    auto* bar = new QHBoxLayout;
    bar->addWidget(previous_);
    bar->addWidget(page_number_);
    bar->addWidget(next_);
    bar->addStretch();
    bar->addWidget(real);
    auto* layout = new QVBoxLayout(pages);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addLayout(bar);
    layout->addWidget(preview_, 1);
    return pages;
}

QString BriefingTab::card_size_name(CardSize size) {
    switch (size) {
        case CardSize::a6_on_a4:
            return tr("A6, four to an A4 page");
        case CardSize::quarter_letter:
            return tr("Quarter Letter, four to a page");
        case CardSize::a6:
            return tr("A6 paper, one each");
        case CardSize::a5_on_a4:
            return tr("A5, two to an A4 page");
        case CardSize::half_letter:
            return tr("Half Letter, two to a page");
        case CardSize::a5:
            return tr("A5 paper, one each");
        case CardSize::a4:
            return tr("A4, one each: large type");
        case CardSize::letter:
            return tr("Letter, one each: large type");
    }
    return {};
}

QString BriefingTab::about_text(SheetKind kind) {
    switch (kind) {
        case SheetKind::cards:
            return {};
        case SheetKind::beach:
            return tr(
                "One page for each group: guests, air, times, heads and the emergency plan. It "
                "tells ages and what health checks came to: keep it with the staff.");
        case SheetKind::skills:
            return tr("Guests and skills, to tick off in the water.");
        case SheetKind::kit:
            return tr("Everybody's kit to tick while packing, and how many of each.");
        case SheetKind::emergency:
            return tr(
                "For the wall at the site: the number and the plan as entered on the Site tab. "
                "No guest stands on it.");
        case SheetKind::pictures:
            return tr(
                "All signals, the numbers and what pressure does to air here, for guests with "
                "whom no language is shared.");
    }
    return {};
}

void BriefingTab::show_choices() {
    const SheetKind chosen = kind();
    const bool cards = chosen == SheetKind::cards;
    card_side_->setVisible(cards);
    sheet_side_->setVisible(!cards);
    size_->setVisible(cards);
    paper_->setVisible(!cards);
    paper_label_->setText(cards ? tr("Card si&ze") : tr("Paper si&ze"));
    paper_label_->setBuddy(cards ? size_ : paper_);
    size_->setAccessibleName(tr("Card size"));
    paper_->setAccessibleName(tr("Paper size"));
    for (QWidget* widget : {static_cast<QWidget*>(group_label_), static_cast<QWidget*>(group_)}) {
        widget->setVisible(is_for_group(chosen));
    }
    const bool pictures = chosen == SheetKind::pictures;
    picture_language_label_->setVisible(pictures);
    picture_language_->setVisible(pictures);
    picture_second_label_->setVisible(pictures);
    picture_second_->setVisible(pictures);
    skills_->setVisible(chosen == SheetKind::skills);
    about_->setText(about_text(chosen));
}

void BriefingTab::fill_groups() {
    refill(*group_, [this](QComboBox& box) {
        box.addItem(tr("All groups"), QString());
        const Session& session = document_.session();
        for (const Group& group : session.groups) {
            constexpr int longest = 40;
            box.addItem(beginning(one_line(subject_name(group.id, session)), longest),
                        QString::fromStdString(group.id.text));
        }
    });
}

void BriefingTab::fill_picture_languages() {
    refill(*picture_language_, [](QComboBox& box) { fill_languages(box, {}); });
    refill(*picture_second_, [](QComboBox& box) {
        box.addItem(tr("None"), QString());
        fill_languages(box, {});
    });
}

}  // namespace leadline
