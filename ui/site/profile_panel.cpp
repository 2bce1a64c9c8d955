// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_panel.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QTableView>

#include "ui/document/session_document.h"
#include "ui/site/profile_delegate.h"
#include "ui/site/profile_model.h"
#include "ui/site/profile_refusal.h"
#include "ui/site/profile_view.h"
#include "ui/widgets/quantity_box.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

/// A label above a box, tied to it: short enough for four side by side.
QuantityBox* labelled_box(QBoxLayout* row, QuantityKind kind, const QString& label,
                          const QString& name, const QString& help) {
    auto* box = new QuantityBox(kind);
    box->setObjectName(name);
    box->setToolTip(help);
    auto* caption = new QLabel(label);
    caption->setBuddy(box);
    auto* column = new QVBoxLayout;
    column->setSpacing(4);
    column->addWidget(caption);
    column->addWidget(box);
    row->addLayout(column);
    return box;
}

}  // namespace

ProfilePanel::ProfilePanel(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      view_(new ProfileView(document)),
      model_(new ProfileModel(document, this)),
      side_by_side_(new QBoxLayout(QBoxLayout::LeftToRight)),
      refusal_(new QLabel),
      refusal_icon_(new QLabel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(quick_row());
    side_by_side_->setSpacing(16);
    side_by_side_->addWidget(view_, 1);
    side_by_side_->addWidget(corner_table());
    column->addLayout(side_by_side_, 1);
    refusal_->setObjectName(QStringLiteral("profile_refusal"));
    refusal_->setWordWrap(true);
    refusal_->setTextFormat(Qt::PlainText);
    refusal_->hide();
    refusal_icon_->hide();
    auto* refusal_row = new QHBoxLayout;
    refusal_row->addWidget(refusal_icon_, 0, Qt::AlignTop);
    refusal_row->addWidget(refusal_, 1);
    column->addLayout(refusal_row);

    connect(view_, &ProfileView::corner_selected, this, &ProfilePanel::select_row);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { view_->select_corner(current.row()); });
    connect(add_, &QPushButton::clicked, view_, &ProfileView::add_corner_after_selected);
    connect(remove_, &QPushButton::clicked, view_, &ProfileView::remove_selected_corner);
    connect(follow_, &QCheckBox::toggled, this, [this](bool follow) {
        const LaterCorners later = follow ? LaterCorners::follow : LaterCorners::stay;
        view_->set_later_corners(later);
        model_->set_later_corners(later);
    });
    connect(draw_, &QPushButton::clicked, this, &ProfilePanel::draw_plain_dive);
    for (QuantityBox* box : {deepest_, skills_depth_, skills_, tour_}) {
        connect(box, &QuantityBox::edited, this, &ProfilePanel::quick_number_changed);
    }
    connect(model_, &ProfileModel::refused, this, &ProfilePanel::show_refusal);
    connect(&document_, &SessionDocument::changed, this, &ProfilePanel::refresh);
    refresh();
}

ProfilePanel::~ProfilePanel() {
    // A table that goes with an open editor may still commit it and let go of its row, when this is
    // no longer a ProfilePanel.
    disconnect(&document_, nullptr, this, nullptr);
    disconnect(table_->selectionModel(), nullptr, this, nullptr);
    disconnect(model_, nullptr, this, nullptr);
}

QWidget* ProfilePanel::quick_row() {
    auto* widget = new QWidget;
    quick_ = new QBoxLayout(QBoxLayout::LeftToRight, widget);
    quick_->setContentsMargins(0, 0, 0, 0);
    quick_->setSpacing(8);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    deepest_ = labelled_box(row, QuantityKind::depth, tr("&Deepest"),
                            QStringLiteral("quick_deepest"), tr("Depth of the tour"));
    skills_depth_ = labelled_box(row, QuantityKind::depth, tr("Skills at"),
                                 QStringLiteral("quick_skills_depth"),
                                 tr("Depth at which the first exercises are done"));
    skills_ = labelled_box(row, QuantityKind::minutes, tr("Skills for"),
                           QStringLiteral("quick_skills"), tr("Minutes of exercises"));
    tour_ = labelled_box(row, QuantityKind::minutes, tr("Tour &for"),
                         QStringLiteral("quick_tour"), tr("Minutes of the tour"));
    draw_ = new QPushButton(tr("Dra&w the plain dive"));
    draw_->setObjectName(QStringLiteral("quick_draw"));
    draw_->setToolTip(tr("Replaces the corners by: surface, down, skills, down, tour, up"));
    by_hand_ = new QLabel(tr("Changed by hand."));
    by_hand_->setObjectName(QStringLiteral("quick_by_hand"));
    auto* column = new QVBoxLayout;
    column->setSpacing(4);
    column->addWidget(by_hand_);
    column->addWidget(draw_, 0, Qt::AlignLeft);
    quick_->addLayout(row);
    quick_->addLayout(column);
    quick_->addStretch(1);
    return widget;
}

QWidget* ProfilePanel::corner_table() {
    auto* widget = new QWidget;
    auto* column = new QVBoxLayout(widget);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("corner_table"));
    table_->setAccessibleName(tr("Corners of the profile"));
    table_->setModel(model_);
    table_->setItemDelegate(new ProfileDelegate(document_, table_));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->setMinimumWidth(table_->fontMetrics().averageCharWidth() * 44);
    table_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
    table_->setMinimumHeight(table_->fontMetrics().height() * 10);
    column->addWidget(table_, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    add_ = new QPushButton(tr("Add c&orner"));
    add_->setObjectName(QStringLiteral("corner_add"));
    remove_ = new QPushButton(tr("Remove corner"));
    remove_->setObjectName(QStringLiteral("corner_remove"));
    buttons->addWidget(add_);
    buttons->addWidget(remove_);
    buttons->addStretch(1);
    column->addLayout(buttons);
    follow_ = new QCheckBox(tr("&Later corners move along"));
    follow_->setObjectName(QStringLiteral("corner_follow"));
    follow_->setToolTip(tr("When a corner moves in time, the legs after it keep their length and "
                           "their speed"));
    follow_->setChecked(true);
    column->addWidget(follow_);
    return widget;
}

void ProfilePanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // Beside each other while the drawing keeps a readable width; otherwise the table goes below.
    const int needed = table_->minimumWidth() + fontMetrics().averageCharWidth() * 56;
    const auto direction = [&](int least) {
        return event->size().width() >= least ? QBoxLayout::LeftToRight
                                              : QBoxLayout::TopToBottom;
    };
    side_by_side_->setDirection(direction(needed));
    // More than the row needs: otherwise its own least width would hold it open.
    const int boxes = quick_->itemAt(0)->minimumSize().width();
    quick_->setDirection(direction(boxes + draw_->sizeHint().width() + 4 * quick_->spacing()));
}

void ProfilePanel::focus_drawing() {
    view_->setFocus(Qt::OtherFocusReason);
    if (view_->selected_corner() < 0) view_->select_corner(1);
}

void ProfilePanel::refresh() {
    refusal_->hide();
    refusal_icon_->hide();
    const Profile& profile = document_.session().profile;
    const PlainDive dive = plain_dive_of(profile);
    for (QuantityBox* box : {deepest_, skills_depth_}) box->set_units(document_.units());
    deepest_->show_value(dive.deepest.meters().value());
    skills_depth_->show_value(dive.skills_depth.meters().value());
    skills_->show_value(dive.skills.value());
    tour_->show_value(dive.tour.value());
    const bool plain = is_plain_dive(profile);
    draw_->setEnabled(!plain);
    by_hand_->setText(plain ? QString() : tr("Changed by hand."));
    update_buttons();
}

void ProfilePanel::quick_number_changed() {
    // A profile drawn by hand is replaced only by the button; a plain one follows its numbers.
    draw_->setEnabled(true);
    if (is_plain_dive(document_.session().profile)) draw_plain_dive();
}

void ProfilePanel::draw_plain_dive() {
    const auto number = [](const QuantityBox* box) { return box->metric_value().value_or(0.0); };
    const PlainDive dive{Depth(Meters(number(deepest_))), Depth(Meters(number(skills_depth_))),
                         Minutes(number(skills_)), Minutes(number(tour_))};
    const Result<Done> done = document_.edit(
        tr("Draw the plain dive"), [&](Session& session) { session.profile = profile_of(dive); });
    if (done) return;
    refresh();  // the boxes go back to what the session has
    show_refusal(profile_refusal(done.error()));
}

void ProfilePanel::select_row(int corner) {
    if (corner < 0) {
        table_->clearSelection();
    } else if (table_->currentIndex().row() != corner) {
        const int column = std::max(0, table_->currentIndex().column());
        table_->setCurrentIndex(model_->index(corner, column));
    } else {
        table_->selectRow(corner);
    }
    update_buttons();
}

void ProfilePanel::update_buttons() {
    const Profile& profile = document_.session().profile;
    const int selected = view_->selected_corner();
    remove_->setEnabled(selected > 0 && corner_can_go(profile, static_cast<std::size_t>(selected)));
    add_->setEnabled(profile.points.size() < 50);
}

void ProfilePanel::show_refusal(const QString& message) {
    if (message.isEmpty()) return;
    constexpr int side = 18;
    refusal_icon_->setPixmap(severity_icon(Severity::stop, palette()).pixmap(side, side));
    refusal_->setText(message);
    refusal_->show();
    refusal_icon_->show();
}

}  // namespace leadline
