// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planning/ear_lung_plan.h"
#include "core/physics/water.h"
#include "ui/site/marker_chart.h"

namespace leadline {

/// What presses on the eardrum at a depth of the way down: just before a clearing there, and where
/// the way passes a depth more than once, the most.
struct EarReading {
    Pascals cleared{};
    Pascals never_cleared{};
};

/// Read off the straight lines of the plan's traces.
EarReading ear_reading(const EarTrace& trace, Depth depth);

/// The pressure on the eardrum on the way down: a saw-tooth with the planned clearings, and a
/// rising line had the diver never cleared, against the published thresholds.
///
/// Over depth, not time: a diver clears by metres, reads metres on the gauge, and a stop for skills
/// takes no room. The pressure is said as the height of water that weighs it: never cleared, each
/// metre down is a metre on the drum. The literature's mmHg are in the tool tip.
class EarChart : public MarkerChart {
    Q_OBJECT
public:
    explicit EarChart(SessionDocument& document, QWidget* parent = nullptr);

    [[nodiscard]] double x_of(Depth depth) const override;
    [[nodiscard]] double y_of(Pascals difference) const;

protected:
    void lay_out() override;
    void draw(QPainter& painter) const override;
    [[nodiscard]] std::vector<Depth> stops() const override;
    [[nodiscard]] QString reading_at(Depth depth) const override;
    [[nodiscard]] std::vector<QPointF> dots_at(Depth depth) const override;
    [[nodiscard]] QRectF reading_box(const QSizeF& size, Depth depth) const override;
    [[nodiscard]] QString summary() const override;
    [[nodiscard]] QString literature(const std::optional<Depth>& at) const override;

private:
    struct Threshold {
        Pascals at{};
        ChartLabel label;
        Qt::PenStyle style = Qt::SolidLine;
    };
    [[nodiscard]] const EarLungCharts& charts() const;
    [[nodiscard]] Meters water_of(Pascals difference) const;
    [[nodiscard]] QString water_text(Pascals difference) const;
    [[nodiscard]] std::vector<Threshold> thresholds() const;
    [[nodiscard]] std::vector<QPointF> line_of(const std::vector<EarPoint>& points) const;
    /// What a difference means. Judged by the figures as they are said, so that what the marker
    /// reads never falls short of a name in the drawing: the safe side by up to a tenth.
    [[nodiscard]] QString state_at(Pascals difference) const;
    void place_thresholds();
    /// Of the rising line in the drawing: pixels up for each to the right.
    [[nodiscard]] double slope() const;
    [[nodiscard]] std::vector<QPointF> beside_locking(const QSizeF& size) const;
    void name_never_cleared();
    void name_cleared();
    /// At the first of the places in the plot where the label covers neither words nor lines.
    /// @returns whether there was one; otherwise the label is left out
    bool put_free(const ChartLabel& label, const std::vector<QPointF>& places);
    void draw_grounds(QPainter& painter) const;
    void draw_scales(QPainter& painter) const;
    void draw_thresholds(QPainter& painter) const;
    void draw_traces(QPainter& painter) const;

    std::optional<WaterColumn> water_;
    double deepest_ = 1.0;     ///< at the right edge [m]
    Pascals top_{1.0};         ///< at the upper edge
    std::vector<QPointF> cleared_;
    std::vector<QPointF> never_;
};

}  // namespace leadline
