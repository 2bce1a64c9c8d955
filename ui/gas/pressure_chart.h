// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QChartView>
#include <QLineSeries>
#include <QString>
#include <optional>
#include <vector>

#include "core/planning/plan.h"
#include "ui/words/quantity_text.h"

class QValueAxis;

namespace leadline {

/// Pressure against time, a line a guest, each named at its end instead of in a legend. The guest
/// who is first to reach the reserve stands out.
class PressureChart : public QChartView {
    Q_OBJECT
public:
    struct Line {
        GuestId guest;
        QString name;
        std::vector<PressurePoint> curve;
        bool limiting = false;
        bool alone = false;  ///< the group's only guest: first of nobody
        std::optional<Minutes> reserve_met;  ///< on the planned dive; only when it is cut short
    };
    /// When somebody is at the reserve: a bar from the 10 % to the 90 % dive, under the lines.
    struct Band {
        GuestId guest;    ///< empty: whoever is first of a group
        QString name;     ///< "Ana"; "First of Blue, likely Ana"
        TimeBand reserve;
        bool first = false;  ///< of a group, or its only guest
    };
    struct Content {
        std::vector<Line> lines;  ///< roster order; guests without a cylinder have none
        std::vector<Band> bands;  ///< top to bottom
        Bars reserve{50.0};
        Minutes planned_end{};
        UnitSystem units = UnitSystem::metric;
    };
    struct Label {
        GuestId guest;  ///< empty: not about one guest
        QString text;
        QRectF box;     ///< in the view; none overlaps another
        QPointF anchor; ///< end of its line
        bool strong = false;
    };
    struct Lane {
        std::size_t band = 0;  ///< in Content::bands
        QRectF bar;
        QString text;          ///< empty where there is no room for a name
        QRectF box;            ///< of the text
        bool open = false;     ///< goes on after the end of the axis
    };

    explicit PressureChart(QWidget* parent = nullptr);

    void show_content(Content content);
    /// Draws one guest's line strongly; none: only the limiting ones.
    void highlight(const std::optional<GuestId>& guest);
    [[nodiscard]] const std::vector<Label>& labels() const { return labels_; }
    /// The bands as drawn; those for which there is no room are left out.
    [[nodiscard]] const std::vector<Lane>& lanes() const { return lanes_; }
    /// Where a pressure at a time stands in the view.
    [[nodiscard]] QPointF place_of(Minutes time, Bars gauge) const;
    /// The guest whose line or label is at a point; none within a finger's width.
    [[nodiscard]] std::optional<GuestId> guest_at(const QPointF& point) const;
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void guest_chosen(const leadline::GuestId& guest);

protected:
    bool viewportEvent(QEvent* event) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void lay_out();
    void set_axes();
    void set_lines();
    void place_labels();
    void place_lanes();
    /// Height of the bands and of their caption.
    [[nodiscard]] double strip_height() const;
    [[nodiscard]] std::vector<double> lane_heights() const;
    [[nodiscard]] double lane_line() const;  ///< height of a lane with its name
    [[nodiscard]] Lane lane_for(std::size_t band, double top, double height) const;
    [[nodiscard]] QFont quiet_font() const;
    [[nodiscard]] double last_minute() const;
    [[nodiscard]] double planned_end_x() const;
    [[nodiscard]] bool show_tip_of_band(const QPointF& at, const QPoint& global);
    [[nodiscard]] double shown(Bars gauge) const;
    [[nodiscard]] double top_pressure() const;
    [[nodiscard]] QPen pen_of(const Line& line, std::size_t index) const;
    [[nodiscard]] QString end_text(const Line& line) const;
    [[nodiscard]] QString reserve_text() const;
    void draw_reserve(QPainter& painter) const;
    void draw_end(QPainter& painter) const;
    void draw_meeting_points(QPainter& painter) const;
    void draw_labels(QPainter& painter) const;
    void draw_bands(QPainter& painter) const;

    Content content_;
    std::optional<GuestId> highlighted_;
    std::vector<Label> labels_;
    std::vector<Lane> lanes_;
    std::vector<QLineSeries*> series_;
    QRectF plot_;
    QValueAxis* time_axis_;
    QValueAxis* pressure_axis_;
};

}  // namespace leadline
