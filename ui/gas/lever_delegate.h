// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace leadline {

/// Draws a row of LeverModel: the change and its two figures on one line, the bar as a thick rule
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

private:
    void paint_figures(QPainter& painter, const QStyleOptionViewItem& option,
                       const QModelIndex& index, const QRectF& line) const;
    void paint_bar(QPainter& painter, const QStyleOptionViewItem& option,
                   const QModelIndex& index, const QRectF& track) const;
};

}  // namespace leadline
