// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/guest_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyle>
#include <QStyledItemDelegate>
#include <algorithm>
#include <array>

#include "ui/roster/guest_model.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

/// Letters a column is made for; the text in full stands in the tooltip.
constexpr std::array<int, guest_column_count> letters{16, 16, 6, 10, 17, 11, 14, 16, 10};

/// A selected row is tinted and has a bar at its left edge, so that marks and words keep their
/// inks.
class RowDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        if (index.column() != 0) return QStyledItemDelegate::paint(painter, option, index);
        QStyleOptionViewItem behind = option;
        initStyleOption(&behind, index);
        option.widget->style()->drawPrimitive(QStyle::PE_PanelItemViewItem, &behind, painter,
                                              option.widget);
        constexpr int bar = 4;
        QStyleOptionViewItem beside = option;
        beside.rect.adjust(bar, 0, 0, 0);
        QStyledItemDelegate::paint(painter, beside, index);
        if (!(option.state & QStyle::State_Selected)) return;
        painter->fillRect(option.rect.x(), option.rect.y(), bar, option.rect.height(),
                          inks(option.palette).accent);
    }

protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        option->palette.setColor(QPalette::HighlightedText, option->palette.color(QPalette::Text));
        option->palette.setColor(QPalette::Highlight, inks(option->palette).water);
        // The whole row is chosen, not a cell of it.
        option->state &= ~QStyle::State_HasFocus;
    }
};

}  // namespace

GuestTable::GuestTable(QWidget* parent) : QTableView(parent) {
    setObjectName(QStringLiteral("guest_table"));
    setAccessibleName(tr("Guests"));
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setCornerButtonEnabled(false);
    setItemDelegate(new RowDelegate(this));
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    constexpr int air = 14;
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + air);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    // A third click on a heading leads back to the roster's own order.
    horizontalHeader()->setSortIndicatorClearable(true);
    horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    const int side = fontMetrics().height();
    setIconSize(QSize(side, side));
    connect(this, &QTableView::doubleClicked, this, &GuestTable::edit_wanted);
}

void GuestTable::fit_columns() {
    const int letter = fontMetrics().averageCharWidth();
    for (int column = 0; column < guest_column_count; ++column) {
        // A heading may be longer in another language; the sort indicator covers what is beside it.
        const QString heading =
            model() == nullptr
                ? QString()
                : model()->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        const int least = horizontalHeader()->fontMetrics().horizontalAdvance(heading) + letter;
        setColumnWidth(column,
                       std::max(least, letters.at(static_cast<std::size_t>(column)) * letter));
    }
    stretch_names();
}

void GuestTable::stretch_names() {
    if (model() == nullptr) return;
    int others = 0;
    for (int column = 1; column < model()->columnCount(); ++column) others += columnWidth(column);
    const int least = letters.front() * fontMetrics().averageCharWidth();
    setColumnWidth(0, std::max(least, viewport()->width() - others));
}

void GuestTable::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter: return Q_EMIT edit_wanted();
        case Qt::Key_Delete: return Q_EMIT remove_wanted();
        default: QTableView::keyPressEvent(event);
    }
}

void GuestTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (!hasFocus()) return;
    QPainter painter(viewport());
    painter.setPen(QPen(inks(palette()).accent, 2));
    painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
}

void GuestTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    viewport()->update();
}

void GuestTable::focusOutEvent(QFocusEvent* event) {
    QTableView::focusOutEvent(event);
    viewport()->update();
}

void GuestTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    stretch_names();
}

}  // namespace leadline
