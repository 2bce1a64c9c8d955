// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/figure_table.h"

#include <QEvent>
#include <QHeaderView>
#include <QResizeEvent>
#include <QScrollBar>
#include <QSortFilterProxyModel>
#include <QStyledItemDelegate>
#include <algorithm>

#include "ui/gas/id_row_model.h"

namespace leadline {
namespace {

constexpr int most_rows_shown = 12;
constexpr int most_cell_letters = 36;  // of a cell; the tooltip has all of it
constexpr int most_letters_name = 21;
constexpr int most_letters_with_room = 44;
constexpr int beside_text = 5;       // of a cell, on either side
constexpr int above_and_below = 10;  // of a row's text, together

/// Leaves air on either side of a cell's text: a number would else touch the words that follow it.
class AiryDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyleOptionViewItem cell = option;
        initStyleOption(&cell, index);
        const QStyle* style = option.widget->style();
        style->drawPrimitive(QStyle::PE_PanelItemViewItem, &cell, painter, option.widget);
        cell.rect.adjust(beside_text, 0, -beside_text, 0);
        style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, option.widget);
    }
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(2 * beside_text, 0);
    }
};

}  // namespace

FigureTable::FigureTable(IdRowModel& model, const QString& object_name,
                         const QString& accessible_name, QWidget* parent)
    : QTableView(parent), proxy_(new QSortFilterProxyModel(this)) {
    setObjectName(object_name);
    setAccessibleName(accessible_name);
    proxy_->setSortRole(IdRowModel::sort_role);
    proxy_->setSortLocaleAware(true);
    proxy_->setSortCaseSensitivity(Qt::CaseInsensitive);
    proxy_->setSourceModel(&model);
    setModel(proxy_);
    setItemDelegate(new AiryDelegate(this));
    setSortingEnabled(true);
    sortByColumn(-1, Qt::AscendingOrder);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setTextElideMode(Qt::ElideRight);
    setWordWrap(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(horizontalHeader(), &QHeaderView::sortIndicatorChanged, this, [this] { fit(room_); });
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &FigureTable::current_changed);
}

int FigureTable::fitting_width(int column) const {
    const QHeaderView* header = horizontalHeader();
    const QString heading = proxy_->headerData(column, Qt::Horizontal).toString();
    // The heading's own hint keeps room for the arrow of sorting in every column.
    int width = header->fontMetrics().size(0, heading).width() + 2 * beside_text;
    if (column == header->sortIndicatorSection()) width = header->sectionSizeHint(column);
    const int letters = column == 0 ? most_letters_name : most_cell_letters;
    const int content =
        std::min(sizeHintForColumn(column), fontMetrics().averageCharWidth() * letters);
    return std::max(width, content);
}

void FigureTable::fit(int room) {
    room_ = room;
    QHeaderView* header = horizontalHeader();
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + above_and_below);
    for (int column = 0; column < proxy_->columnCount(); ++column) {
        if (!isColumnHidden(column)) header->resizeSection(column, fitting_width(column));
    }
    const bool scrolls = proxy_->rowCount() > most_rows_shown;
    const int around = 2 * frameWidth() + (scrolls ? verticalScrollBar()->sizeHint().width() : 0);
    int spare = room - around - header->length();
    for (int column = 0; spare > 0 && column < proxy_->columnCount(); ++column) {
        if (isColumnHidden(column)) continue;
        const int wanted = std::min(sizeHintForColumn(column),
                                    fontMetrics().averageCharWidth() * most_letters_with_room);
        const int more = std::clamp(wanted - header->sectionSize(column), 0, spare);
        header->resizeSection(column, header->sectionSize(column) + more);
        spare -= more;
    }
    setMaximumWidth(header->length() + around);
    updateGeometry();
}

std::string FigureTable::current_id() const {
    return currentIndex().data(IdRowModel::id_role).toString().toStdString();
}

QSize FigureTable::sizeHint() const {
    const int rows = std::clamp(proxy_->rowCount(), 1, most_rows_shown);
    int height = horizontalHeader()->sizeHint().height() + 2 * frameWidth() +
                 rows * verticalHeader()->defaultSectionSize();
    if (width() < maximumWidth()) height += horizontalScrollBar()->sizeHint().height();
    return {maximumWidth(), height};
}

QSize FigureTable::minimumSizeHint() const {
    return {QTableView::minimumSizeHint().width(), sizeHint().height()};
}

void FigureTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) updateGeometry();
}

void FigureTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit(room_);
}

}  // namespace leadline
