// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace leadline {

/// Draws a row of LeverModel: the change and its two figures on one line (long names: two), the bar as a thick rule
/// under them, as long as its minutes, and the cost in smaller words below.
class LeverDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit LeverDelegate(QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    /// As high as the cost needs at the list's width.
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

    /// Whether a row's name has room enough in a list of a width [px], beside its figures.
    [[nodiscard]] static bool name_is_whole(const QModelIndex& index, const QFont& font,
                                            double width);

private:
    /// Whether the chances stand on a line of their own: names would be cut off beside them.
    [[nodiscard]] static bool chance_has_own_line(const QModelIndex& index, const QFont& font,
                                                  double line_width);
    void paint_figures(QPainter& painter, const QStyleOptionViewItem& option,
                       const QModelIndex& index, const QRectF& line) const;
    void paint_bar(QPainter& painter, const QStyleOptionViewItem& option,
                   const QModelIndex& index, const QRectF& track) const;
};

}  // namespace leadline
