// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

#include "core/physics/quantities.h"
#include "ui/words/quantity_text.h"

namespace leadline {

class SessionDocument;

/// Words that stand in a chart beside what they name.
struct ChartLabel {
    enum class Ink { plain, faint, accent, stop };
    QRectF box;
    QString text;
    Ink ink = Ink::plain;
    bool strong = false;
    bool veiled = false;  ///< the ground shows only faintly behind the letters
    Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter;
};

/// A tick of a scale.
struct ChartMark {
    double meters = 0.0;
    QString text;
};

/// Ticks in whole or half units from 0 to `meters`, at least `room` pixels apart.
/// @param pixels  length of the scale, > 0
std::vector<ChartMark> chart_marks(double meters, double pixels, UnitSystem units, double room);

/// A drawing over depth with a marker that reads out what holds at a depth. It follows the pointer;
/// by keyboard the arrows move it (right and down: deeper), Page Up and Page Down by a tenth of the
/// way, Home and End to the ends. The words of the reading are in the accessible description too.
class MarkerChart : public QWidget {
    Q_OBJECT
public:
    /// Where the marker stands and shows: under the pointer, or, with the focus, where keys put it.
    [[nodiscard]] std::optional<Depth> marker() const;
    /// What it reads out; empty without a marker.
    [[nodiscard]] QString reading() const;
    /// The words in the drawing; none overlaps another.
    [[nodiscard]] const std::vector<ChartLabel>& labels() const { return labels_; }
    [[nodiscard]] const QRectF& plot() const { return plot_; }
    [[nodiscard]] virtual double x_of(Depth depth) const = 0;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    explicit MarkerChart(SessionDocument& document, QWidget* parent);

    /// Takes the plan anew. A child calls it once at the end of its making.
    void refresh();
    virtual void lay_out() = 0;
    virtual void draw(QPainter& painter) const = 0;
    /// Depths at which the marker can stand, increasing.
    [[nodiscard]] virtual std::vector<Depth> stops() const = 0;
    [[nodiscard]] virtual QString reading_at(Depth depth) const = 0;
    /// Where the marker has its dots.
    [[nodiscard]] virtual std::vector<QPointF> dots_at(Depth depth) const = 0;
    /// Where a reading of a size hides least.
    [[nodiscard]] virtual QRectF reading_box(const QSizeF& size, Depth depth) const = 0;
    /// The drawing in a sentence.
    [[nodiscard]] virtual QString summary() const = 0;
    /// For a tool tip: the literature's own figures, and those at the marker.
    [[nodiscard]] virtual QString literature(const std::optional<Depth>& at) const = 0;

    void draw_labels(QPainter& painter) const;
    /// Gives a label a box of its size with this top left corner.
    void put(ChartLabel label, const QPointF& top_left);
    [[nodiscard]] QSizeF size_of(const ChartLabel& label) const;
    [[nodiscard]] bool covers_a_label(const QRectF& box) const;

    SessionDocument& document_;
    QRectF plot_;
    std::vector<ChartLabel> labels_;

    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] std::optional<Depth> stop_near(double x) const;
    void step_marker(int stops_on);
    void describe();
    void lay_out_anew();
    void draw_marker(QPainter& painter) const;

    bool stale_ = true;  ///< hidden when the plan changed: laid out when it is next seen
    std::optional<Depth> pointed_;
    std::optional<Depth> kept_;
};

}  // namespace leadline
