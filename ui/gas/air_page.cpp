// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/air_page.h"

#include <QBoxLayout>
#include <QEvent>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QScrollBar>
#include <QSplitter>
#include <QTableView>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/gas/chart_content.h"
#include "ui/gas/gas_words.h"
#include "ui/gas/guest_gas_delegate.h"
#include "ui/gas/guest_gas_model.h"
#include "ui/gas/guest_gas_proxy.h"
#include "ui/gas/lever_chart.h"
#include "ui/gas/pressure_chart.h"
#include "ui/gas/sentence_list.h"

namespace leadline {
namespace {

GuestId guest_of(const QModelIndex& index) {
    return GuestId(index.data(GuestGasModel::guest_role).toString().toStdString());
}

QLabel* wrapping(const QString& text, const QString& name) {
    auto* label = new QLabel(text);
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setMinimumHeight(label->fontMetrics().height());
    return label;
}

}  // namespace

AirPage::AirPage(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new GuestGasModel(document, this)),
      proxy_(new GuestGasProxy(this)),
      instructors_(new SentenceList),
      refusal_(new SentenceList),
      chart_(new PressureChart),
      levers_(new LeverChart(document)),
      table_(new QTableView) {
    setObjectName(QStringLiteral("gas_air_page"));
    proxy_->setSourceModel(model_);
    instructors_->setObjectName(QStringLiteral("gas_instructor"));
    refusal_->setObjectName(QStringLiteral("gas_refusal"));

    auto* charts = new QWidget;
    charts_ = new QBoxLayout(QBoxLayout::LeftToRight, charts);
    charts_->setContentsMargins(0, 0, 0, 0);
    charts_->setSpacing(24);
    charts_->addWidget(chart_);
    charts_->addWidget(levers_);
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->setObjectName(QStringLiteral("gas_splitter"));
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(charts);
    set_up_table();
    splitter->addWidget(table_);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    auto* hint = wrapping(tr("Cylinder, reading, temperature, breathing and RMV can be changed in "
                             "the table: choose a cell and type, or press F2."),
                          QStringLiteral("gas_hint"));
    hint->setForegroundRole(QPalette::PlaceholderText);
    auto* safety = wrapping(tr("Estimates for planning, on the high side of use. In the water "
                               "the gauge, the guest's signal and the instructor decide."),
                            QStringLiteral("gas_safety"));

    // Outside the splitter, which would not give a line that wraps its room.
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(splitter, 1);
    column->addWidget(refusal_);
    column->addWidget(hint);
    column->addWidget(instructors_);
    column->addWidget(safety);

    connect(chart_, &PressureChart::guest_chosen, this, &AirPage::show_guest);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &AirPage::selected_row_changed);
    connect(model_, &GuestGasModel::refused, this, &AirPage::show_refusal);
}

AirPage::~AirPage() {
    // A table that goes with an open editor may still commit it and let go of its row, when this is
    // no longer an AirPage.
    disconnect(table_->selectionModel(), nullptr, this, nullptr);
    disconnect(model_, nullptr, this, nullptr);
}

void AirPage::set_up_table() {
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
    connect(header, &QHeaderView::sectionResized, this, [this](int column) {
        if (column != GuestGasModel::name_column) fit_names();
    });
    table_->viewport()->installEventFilter(this);
    // The page scrolls only when even the least heights do not fit.
    table_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
}

const GroupId& AirPage::group() const { return proxy_->group(); }

void AirPage::show_group(const GroupId& group) {
    proxy_->show_group(group);
    levers_->show_group(group);
}

void AirPage::refresh() {
    refusal_->show_sentences({});
    instructors_->show_sentences(instructor_answers(document_, proxy_->group()));
    const bool one_group = document_.session().groups.size() < 2 || !proxy_->group().empty();
    table_->setColumnHidden(GuestGasModel::group_column, one_group);
    fit_table();
    fit_names();
    refresh_chart();
}

void AirPage::fit_table() {
    // A group is seen whole; more guests than that scroll.
    constexpr int fewest = 2;
    constexpr int most = 6;
    const int rows = std::clamp(proxy_->rowCount(), fewest, most);
    const int line = fontMetrics().height() + 12;
    table_->setMinimumHeight(table_->horizontalHeader()->sizeHint().height() + rows * line +
                             table_->horizontalScrollBar()->sizeHint().height() + 4);
}

bool AirPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_->viewport() && event->type() == QEvent::Resize) fit_names();
    return QWidget::eventFilter(watched, event);
}

/// Names leave the figures up to the turn in sight, but keep what tells one from another.
void AirPage::fit_names() {
    constexpr int least_letters = 16;
    QHeaderView* header = table_->horizontalHeader();
    if (header->count() == 0) return;
    header->setSectionResizeMode(GuestGasModel::name_column, QHeaderView::Fixed);
    int figures = 0;
    for (int column = GuestGasModel::group_column; column <= GuestGasModel::turn_column; ++column) {
        figures += header->sectionSize(column);
    }
    const QAbstractItemView& view = *table_;  // a table hides what the view tells
    const int whole = std::max(view.sizeHintForColumn(GuestGasModel::name_column),
                               header->sectionSizeHint(GuestGasModel::name_column));
    const int room = std::max(table_->viewport()->width() - figures,
                              fontMetrics().averageCharWidth() * least_letters);
    header->resizeSection(GuestGasModel::name_column,
                          std::min({whole + 1, room, header->maximumSectionSize()}));
}

void AirPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (chart_is_stale_) refresh_chart();
}

void AirPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // Side by side where both can be read, and the chart broader where there is room.
    const int letters = width() / fontMetrics().averageCharWidth();
    constexpr int both = 110;
    constexpr int ample = 145;
    charts_->setDirection(letters >= both ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    charts_->setStretchFactor(chart_, letters >= ample ? 3 : 6);
    charts_->setStretchFactor(levers_, letters >= ample ? 2 : 5);
}

void AirPage::refresh_chart() {
    // Typing on another tab does not wait for lines nobody sees.
    chart_is_stale_ = !isVisible();
    if (chart_is_stale_) return;
    PressureChart::Content content = chart_content(document_, proxy_->group());
    chart_->setVisible(!content.lines.empty());
    QStringList words;
    for (const GasSentence& sentence : group_answers(document_, proxy_->group())) {
        words << sentence.text;
    }
    chart_->setAccessibleDescription(words.join(u' '));
    chart_->show_content(std::move(content));
}

void AirPage::show_guest(const GuestId& guest) {
    const int row = model_->row_of(guest);
    if (row < 0) return;
    const QModelIndex index = proxy_->mapFromSource(model_->index(row, 0));
    if (!index.isValid()) return;
    table_->setCurrentIndex(index);
    table_->scrollTo(index);
}

void AirPage::focus_table() { table_->setFocus(Qt::OtherFocusReason); }

void AirPage::selected_row_changed() {
    const QModelIndexList rows = table_->selectionModel()->selectedRows();
    chart_->highlight(rows.isEmpty() ? std::nullopt
                                     : std::optional<GuestId>(guest_of(rows.front())));
}

void AirPage::show_refusal(const QString& message) {
    refusal_->show_sentences({{Severity::stop, message}});
}

}  // namespace leadline
