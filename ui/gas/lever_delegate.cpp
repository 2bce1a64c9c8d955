// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/lever_delegate.h"

#include <QAbstractItemView>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/gas/lever_model.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr double side = 8.0;
constexpr double above = 6.0;
constexpr double below = 8.0;
constexpr double gap = 3.0;
constexpr double bar_height = 7.0;
constexpr double between_columns = 16.0;

QFont strong(QFont font) {
    font.setBold(true);
    return font;
}

QFont quiet(QFont font) {
    constexpr double smaller = 0.92;
    font.setPointSizeF(font.pointSizeF() * smaller);
    return font;
}

/// The widest text of a role over all rows, so that the figures stand in columns.
double column_width(const QModelIndex& index, int role, const QFontMetricsF& metrics) {
    double widest = 0.0;
    const QAbstractItemModel* model = index.model();
    for (int row = 0; row < model->rowCount(); ++row) {
        if (model->index(row, 0).data(LeverModel::heading_role).toBool()) continue;
        widest = std::max(widest, metrics.horizontalAdvance(
                                      model->index(row, 0).data(role).toString()));
    }
    return std::ceil(widest);
}

double list_width(const QStyleOptionViewItem& option) {
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    return view != nullptr ? view->viewport()->width() : option.rect.width();
}

QRectF cost_rect(const QString& cost, const QFont& font, double width) {
    return QFontMetricsF(quiet(font))
        .boundingRect(QRectF(0.0, 0.0, width - 2.0 * side, 1e4), Qt::TextWordWrap, cost);
}

/// What is left of a line of some width for a lever's name, beside the figures.
double name_width(const QModelIndex& index, const QFont& font, double line_width, bool with_chance) {
    const double gain =
        column_width(index, LeverModel::gain_role, QFontMetricsF(strong(font)));
    const double chance = column_width(index, LeverModel::chance_role, QFontMetricsF(font));
    return line_width - gain - between_columns - (with_chance ? chance + between_columns : 0.0);
}

QColor faded(QColor colour, float alpha) {
    colour.setAlphaF(alpha);
    return colour;
}

}  // namespace

LeverDelegate::LeverDelegate(QObject* parent) : QStyledItemDelegate(parent) {}

QSize LeverDelegate::sizeHint(const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
    const double line = QFontMetricsF(strong(option.font)).height();
    const double width = list_width(option);
    if (index.data(LeverModel::heading_role).toBool()) {
        return {static_cast<int>(width), static_cast<int>(std::ceil(line + above + gap))};
    }
    const QRectF cost =
        cost_rect(index.data(LeverModel::cost_role).toString(), option.font, width);
    const double lines = chance_has_own_line(index, option.font, width - 2.0 * side) ? 2.0 : 1.0;
    return {static_cast<int>(width),
            static_cast<int>(std::ceil(above + lines * line + gap + bar_height + gap +
                                       cost.height() + below))};
}

bool LeverDelegate::chance_has_own_line(const QModelIndex& index, const QFont& font,
                                        double line_width) {
    // All rows alike, so that the figures stand in columns.
    return column_width(index, Qt::DisplayRole, QFontMetricsF(strong(font))) >
           name_width(index, font, line_width, true);
}

bool LeverDelegate::name_is_whole(const QModelIndex& index, const QFont& font, double width) {
    const double line_width = width - 2.0 * side;
    const bool below_it = chance_has_own_line(index, font, line_width);
    return QFontMetricsF(strong(font)).horizontalAdvance(index.data().toString()) <=
           name_width(index, font, line_width, !below_it);
}

void LeverDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const Inks colours = inks(option.palette);
    const QRectF row(option.rect);
    const QRectF inside = row.adjusted(side, above, -side, -below);
    const double line = QFontMetricsF(strong(option.font)).height();
    if (index.data(LeverModel::heading_role).toBool()) {
        painter->setFont(strong(option.font));
        painter->setPen(colours.faint);
        painter->drawText(QRectF(inside.left(), row.top() + above, inside.width(), line),
                          Qt::AlignLeft | Qt::AlignVCenter, index.data().toString());
        painter->restore();
        return;
    }
    const bool chosen = option.state.testFlag(QStyle::State_HasFocus);
    if (chosen || option.state.testFlag(QStyle::State_MouseOver)) {
        painter->fillRect(row, faded(colours.accent, 0.09F));
    }
    paint_figures(*painter, option, index, QRectF(inside.topLeft(), QSizeF(inside.width(), line)));
    const double lines = chance_has_own_line(index, option.font, inside.width()) ? 2.0 : 1.0;
    const QRectF track(inside.left(), inside.top() + lines * line + gap, inside.width(),
                       bar_height);
    paint_bar(*painter, option, index, track);
    painter->setFont(quiet(option.font));
    painter->setPen(colours.faint);
    painter->drawText(QRectF(inside.left(), track.bottom() + gap, inside.width(),
                             row.bottom() - track.bottom() - gap),
                      Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                      index.data(LeverModel::cost_role).toString());
    if (chosen) {
        painter->setPen(QPen(option.palette.color(QPalette::Highlight), 2.0));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(row.adjusted(1.0, 1.0, -1.0, -1.0));
    }
    painter->restore();
}

void LeverDelegate::paint_figures(QPainter& painter, const QStyleOptionViewItem& option,
                                  const QModelIndex& index, const QRectF& line) const {
    const QFontMetricsF metrics(option.font);
    const QFontMetricsF strong_metrics(strong(option.font));
    const bool below_it = chance_has_own_line(index, option.font, line.width());
    const double chance = column_width(index, LeverModel::chance_role, metrics);
    painter.setPen(option.palette.color(QPalette::Text));
    painter.setFont(option.font);
    painter.drawText(below_it ? line.translated(0.0, line.height()) : line,
                     Qt::AlignRight | Qt::AlignVCenter,
                     index.data(LeverModel::chance_role).toString());
    QRectF gain_box = line;
    if (!below_it) gain_box.setRight(line.right() - chance - between_columns);
    painter.setFont(strong(option.font));
    painter.drawText(gain_box, Qt::AlignRight | Qt::AlignVCenter,
                     index.data(LeverModel::gain_role).toString());
    QRectF what_box = line;
    what_box.setWidth(name_width(index, option.font, line.width(), !below_it));
    painter.drawText(what_box, Qt::AlignLeft | Qt::AlignVCenter,
                     strong_metrics.elidedText(index.data().toString(), Qt::ElideRight,
                                               what_box.width()));
}

void LeverDelegate::paint_bar(QPainter& painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index, const QRectF& track) const {
    const Inks colours = inks(option.palette);
    painter.fillRect(QRectF(track.left(), track.bottom() - 1.0, track.width(), 1.0), colours.rule);
    // No minutes, a chance only: the bar is a tick, not nothing.
    constexpr double tick = 3.0;
    const double length =
        std::max(tick, index.data(LeverModel::share_role).toDouble() * track.width());
    painter.fillRect(QRectF(track.topLeft(), QSizeF(length, track.height())), colours.accent);
}

}  // namespace leadline
