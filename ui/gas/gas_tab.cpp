// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/gas_tab.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/document/session_document.h"
#include "ui/gas/gas_words.h"
#include "ui/gas/guest_gas_delegate.h"
#include "ui/gas/guest_gas_model.h"
#include "ui/gas/guest_gas_proxy.h"
#include "ui/gas/sentence_list.h"

namespace leadline {
namespace {

constexpr int margin = 16;

GuestId guest_of(const QModelIndex& index) {
    return GuestId(index.data(GuestGasModel::guest_role).toString().toStdString());
}

QFont enlarged(QFont font, double factor) {
    font.setPointSizeF(font.pointSizeF() * factor);
    return font;
}

QLabel* wrapping(const QString& text, const QString& name) {
    auto* label = new QLabel(text);
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setMinimumHeight(label->fontMetrics().height());
    return label;
}

}  // namespace

GasTab::GasTab(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new GuestGasModel(document, this)),
      proxy_(new GuestGasProxy(this)),
      answers_(new SentenceList),
      instructors_(new SentenceList),
      refusal_(new SentenceList),
      empty_(new QLabel),
      chart_(new PressureChart),
      table_(new QTableView) {
    setObjectName(QStringLiteral("gas_tab"));
    proxy_->setSourceModel(model_);
    answers_->setObjectName(QStringLiteral("gas_answer"));
    answers_->setFont(enlarged(font(), 1.2));
    instructors_->setObjectName(QStringLiteral("gas_instructor"));
    refusal_->setObjectName(QStringLiteral("gas_refusal"));
    empty_->setObjectName(QStringLiteral("gas_empty"));
    empty_->setFont(enlarged(font(), 1.2));
    empty_->setWordWrap(true);
    empty_->setText(tr("No guests yet. Add them on the Roster tab and hand out their cylinders; "
                       "then this tab says how long their air lasts."));

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
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->setObjectName(QStringLiteral("gas_splitter"));
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(chart_);
    splitter->addWidget(table_part());
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 2);
    body->addWidget(splitter, 1);
    column->addWidget(body_, 1);
    column->addStretch(0);

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
    setTabOrder(groups_, chart_);
    setTabOrder(chart_, table_);

    connect(chart_, &PressureChart::guest_chosen, this, &GasTab::choose_guest);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &GasTab::selected_row_changed);
    connect(model_, &GuestGasModel::refused, this, &GasTab::show_refusal);
    connect(&document_, &SessionDocument::opened, this, [this] { choose_group({}); });
    connect(&document_, &SessionDocument::changed, this, &GasTab::refresh);
    refresh();
}

GasTab::~GasTab() {
    // A table that goes with an open editor may still commit it and let go of its row, when this is
    // no longer a GasTab.
    disconnect(&document_, nullptr, this, nullptr);
    disconnect(table_->selectionModel(), nullptr, this, nullptr);
    disconnect(model_, nullptr, this, nullptr);
}

QWidget* GasTab::chooser_row() {
    chooser_ = new QWidget;
    groups_ = new QComboBox;
    groups_->setObjectName(QStringLiteral("gas_group"));
    groups_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    constexpr int letters = 24;
    groups_->setMinimumContentsLength(letters);
    auto* caption = new QLabel(tr("&Group"));
    caption->setBuddy(groups_);
    auto* row = new QHBoxLayout(chooser_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addWidget(caption);
    row->addWidget(groups_);
    row->addStretch(1);
    connect(groups_, &QComboBox::activated, this, [this](int index) {
        choose_group(GroupId(groups_->itemData(index).toString().toStdString()));
    });
    return chooser_;
}

QWidget* GasTab::table_part() {
    table_->setObjectName(QStringLiteral("gas_table"));
    table_->setAccessibleName(tr("Air of each guest"));
    table_->setModel(proxy_);
    table_->setItemDelegate(new GuestGasDelegate(document_, table_));
    table_->setSortingEnabled(true);
    table_->sortByColumn(-1, Qt::AscendingOrder);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                            QAbstractItemView::AnyKeyPressed | QAbstractItemView::SelectedClicked);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->setTextElideMode(Qt::ElideRight);
    table_->setWordWrap(false);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    QHeaderView* header = table_->horizontalHeader();
    header->setSectionResizeMode(QHeaderView::ResizeToContents);
    header->setMaximumSectionSize(fontMetrics().averageCharWidth() * 30);
    header->setHighlightSections(false);
    // The page scrolls only when even the least heights do not fit.
    table_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    table_->setMinimumHeight(fontMetrics().height() * 9);

    auto* hint = wrapping(tr("Cylinder, reading, temperature, breathing and RMV can be changed in "
                               "the table: choose a cell and type, or press F2."),
                          QStringLiteral("gas_hint"));
    hint->setForegroundRole(QPalette::PlaceholderText);
    auto* safety = wrapping(tr("Estimates for planning, on the high side of use. In the water "
                                 "the gauge, the guest's signal and the instructor decide."),
                            QStringLiteral("gas_safety"));

    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(table_, 1);
    column->addWidget(refusal_);
    column->addWidget(hint);
    column->addWidget(instructors_);
    column->addWidget(safety);
    return part;
}

GroupId GasTab::chosen_group() const { return proxy_->group(); }

void GasTab::refresh() {
    // A group that has gone leaves all of them.
    if (find_group(document_.session(), proxy_->group()) == nullptr) proxy_->show_group({});
    const bool guests = !document_.session().guests.empty();
    empty_->setVisible(!guests);
    answers_->setVisible(guests);
    body_->setVisible(guests);
    refusal_->show_sentences({});
    refresh_chooser();
    answers_->show_sentences(group_answers(document_, proxy_->group()));
    instructors_->show_sentences(instructor_answers(document_, proxy_->group()));
    refresh_columns();
    refresh_chart();
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
    groups_->setCurrentIndex(
        groups_->findData(QString::fromStdString(proxy_->group().text)));
    chooser_->setVisible(groups.size() > 1);
}

void GasTab::refresh_columns() {
    const bool one_group = document_.session().groups.size() < 2 || !proxy_->group().empty();
    table_->setColumnHidden(GuestGasModel::group_column, one_group);
}

void GasTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (chart_is_stale_) refresh_chart();
}

void GasTab::refresh_chart() {
    // Typing on another tab does not wait for lines nobody sees.
    chart_is_stale_ = !isVisible();
    if (chart_is_stale_) return;
    const Plan& plan = document_.plan();
    PressureChart::Content content;
    content.reserve = plan.limits.reserve;
    content.planned_end = duration(document_.session().profile);
    content.units = document_.units();
    for (const GuestGas& gas : plan.guests) {
        if (!gas.has_cylinder) continue;
        if (!proxy_->group().empty() && gas.group != proxy_->group()) continue;
        const Guest* guest = find_guest(document_.session(), gas.guest);
        const GroupGas* group = find_gas(plan, gas.group);
        PressureChart::Line line;
        line.guest = gas.guest;
        line.name = guest != nullptr ? QString::fromStdString(guest->name) : QString();
        line.curve = gas.curve;
        line.limiting = group != nullptr && group->limiting_guest == gas.guest;
        if (line.limiting && group->cut_short) line.reserve_met = group->ends_at;
        content.lines.push_back(std::move(line));
    }
    chart_->setVisible(!content.lines.empty());
    QStringList words;
    for (const GasSentence& sentence : group_answers(document_, proxy_->group())) {
        words << sentence.text;
    }
    chart_->setAccessibleDescription(words.join(u' '));
    chart_->show_content(std::move(content));
}

void GasTab::choose_group(const GroupId& group) {
    proxy_->show_group(group);
    refresh();
}

void GasTab::choose_guest(const GuestId& guest) {
    const int row = model_->row_of(guest);
    if (row < 0) return;
    const QModelIndex index = proxy_->mapFromSource(model_->index(row, 0));
    if (!index.isValid()) return;
    table_->setCurrentIndex(index);
    table_->scrollTo(index);
}

void GasTab::selected_row_changed() {
    const QModelIndexList rows = table_->selectionModel()->selectedRows();
    chart_->highlight(rows.isEmpty() ? std::nullopt
                                     : std::optional<GuestId>(guest_of(rows.front())));
}

void GasTab::show_refusal(const QString& message) {
    refusal_->show_sentences({{Severity::stop, message}});
}

void GasTab::show_subject(const Subject& subject) {
    if (const auto* guest = std::get_if<GuestId>(&subject)) {
        const Guest* found = find_guest(document_.session(), *guest);
        if (found == nullptr) return;
        if (!proxy_->group().empty() && proxy_->group() != found->group) choose_group({});
        choose_guest(*guest);
        table_->setFocus(Qt::OtherFocusReason);
    } else if (const auto* group = std::get_if<GroupId>(&subject)) {
        choose_group(*group);
    } else if (const auto* staff = std::get_if<StaffId>(&subject)) {
        for (const Group& led : document_.session().groups) {
            if (led.instructor == *staff) return choose_group(led.id);
        }
    }
}

}  // namespace leadline
