// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPolygonF>
#include <QWidget>

namespace leadline {

/// A strip to sign on with mouse, finger or pen. The strokes stand in a square grid of which the
/// strip's height is 100, so that they are shown alike at any size.
class SignaturePad : public QWidget {
    Q_OBJECT
public:
    explicit SignaturePad(QWidget* parent = nullptr);

    [[nodiscard]] bool is_empty() const { return strokes_.isEmpty(); }
    void clear();
    /// "M 12.0 30.5 L 14.2 31.0 ...", one M a stroke; empty for none.
    [[nodiscard]] QString svg_path() const;
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void signed_on();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] QPointF on_grid(QPointF position) const;
    void add(QPointF position);

    QList<QPolygonF> strokes_;
    qsizetype points_ = 0;
    bool drawing_ = false;
};

}  // namespace leadline
