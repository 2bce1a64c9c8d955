// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planning/ear_lung_plan.h"
#include "ui/site/marker_chart.h"

namespace leadline {

/// What a held breath does on the way up: for each depth at which it starts, a bar up to where the
/// published limit of the lung is met, and above the water the size that breath would have there.
/// Depth goes down, the depth of the start to the right.
class LungChart : public MarkerChart {
    Q_OBJECT
public:
    explicit LungChart(SessionDocument& document, QWidget* parent = nullptr);

    [[nodiscard]] double x_of(Depth depth) const override;
    [[nodiscard]] double y_of(Depth depth) const;
    /// The limits that are drawn with their breath; the deepest is always among them.
    [[nodiscard]] const std::vector<HeldBreathLimit>& columns() const { return columns_; }

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
    [[nodiscard]] const std::vector<HeldBreathLimit>& limits() const;
    [[nodiscard]] const HeldBreathLimit* limit_at(Depth depth) const;
    [[nodiscard]] double radius(double expansion) const;
    void choose_columns();
    void place_names();
    /// At the first of the places that lies in the plot and covers neither words nor bars.
    /// @returns whether there was one; otherwise the label is left out
    bool put_free(const ChartLabel& label, const std::vector<QPointF>& places);
    /// Where words about the ends of the bars may stand, the best place first.
    [[nodiscard]] std::vector<QPointF> beside_ends(const QSizeF& size) const;
    void draw_water(QPainter& painter) const;
    void draw_column(QPainter& painter, const HeldBreathLimit& limit) const;

    std::vector<HeldBreathLimit> columns_;
    double deepest_ = 1.0;  ///< [m]
};

}  // namespace leadline
