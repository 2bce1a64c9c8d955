// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/pressure_chart.h"

#include <QChart>
#include <QGraphicsLayout>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QValueAxis>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/gas/gas_words.h"
#include "ui/gas/label_spread.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr double label_gap = 14.0;  ///< from the end of a line to its label

/// Pressure of a curve at a time, by the straight line between its points.
std::optional<PressurePoint> point_at(const std::vector<PressurePoint>& curve, double minutes) {
    if (curve.empty() || minutes < curve.front().time.value() ||
        minutes > curve.back().time.value()) {
        return std::nullopt;
    }
    const auto after = std::lower_bound(
        curve.begin(), curve.end(), minutes,
        [](const PressurePoint& point, double wanted) { return point.time.value() < wanted; });
    if (after == curve.begin()) return *after;
    const PressurePoint& from = *(after - 1);
    const PressurePoint& to = *after;
    const double share = (minutes - from.time.value()) / (to.time - from.time).value();
    return PressurePoint{Minutes(minutes),
                         Depth(from.depth.meters() + (to.depth - from.depth) * share),
                         from.gauge + (to.gauge - from.gauge) * share};
}

/// Step of an axis whose marks stand at least `room` pixels apart.
double axis_step(const std::array<double, 6>& steps, double pixels_per_unit, double room) {
    for (const double step : steps) {
        if (step * pixels_per_unit >= room) return step;
    }
    return steps.back();
}

}  // namespace

PressureChart::PressureChart(QWidget* parent)
    : QChartView(parent), time_axis_(new QValueAxis(this)), pressure_axis_(new QValueAxis(this)) {
    setObjectName(QStringLiteral("gas_chart"));
    setAccessibleName(tr("Pressure over time"));
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    // One stop for the keyboard, not two. In this order: a policy set on the viewport is passed on.
    viewport()->setFocusPolicy(Qt::NoFocus);
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    chart()->legend()->hide();
    chart()->setAnimationOptions(QChart::NoAnimation);
    chart()->setBackgroundVisible(false);
    chart()->setPlotAreaBackgroundVisible(false);
    chart()->setMargins(QMargins(0, 0, 0, 0));
    chart()->layout()->setContentsMargins(0, 0, 0, 0);
    chart()->addAxis(time_axis_, Qt::AlignBottom);
    chart()->addAxis(pressure_axis_, Qt::AlignLeft);
    for (QValueAxis* axis : {time_axis_, pressure_axis_}) {
        axis->setGridLineVisible(false);
        axis->setMinorGridLineVisible(false);
        axis->setTickType(QValueAxis::TicksDynamic);
        axis->setTickAnchor(0.0);
    }
    setMinimumHeight(fontMetrics().height() * 16);
}

QSize PressureChart::sizeHint() const { return {640, fontMetrics().height() * 17}; }

double PressureChart::shown(Bars gauge) const {
    return content_.units == UnitSystem::imperial ? Psi(gauge).value() : gauge.value();
}

double PressureChart::top_pressure() const {
    double highest = shown(content_.reserve) * 2.0;
    for (const Line& line : content_.lines) {
        for (const PressurePoint& point : line.curve) {
            highest = std::max(highest, shown(point.gauge));
        }
    }
    const double round = content_.units == UnitSystem::imperial ? 500.0 : 50.0;
    return std::ceil(highest / round) * round;
}

QPointF PressureChart::place_of(Minutes time, Bars gauge) const {
    return {plot_.left() + time.value() / time_axis_->max() * plot_.width(),
            plot_.bottom() - shown(gauge) / pressure_axis_->max() * plot_.height()};
}

void PressureChart::show_content(Content content) {
    content_ = std::move(content);
    lay_out();
}

void PressureChart::highlight(const std::optional<GuestId>& guest) {
    if (guest == highlighted_) return;
    highlighted_ = guest;
    lay_out();
}

QString PressureChart::end_text(const Line& line) const {
    const QString end = text(line.curve.back().gauge, content_.units, Rounding::down);
    const QFontMetricsF metrics(font());
    const double room = std::max(80.0, width() * 0.2);
    const QString name = metrics.elidedText(line.name, Qt::ElideRight, room);
    return end + QStringLiteral("  ") + (line.limiting && !line.alone ? tr("%1, first").arg(name) : name);
}

void PressureChart::lay_out() {
    const QFontMetricsF metrics(font());
    QFont strong = font();
    strong.setBold(true);
    const QFontMetricsF strong_metrics(strong);
    double label_width = 0.0;
    for (const Line& line : content_.lines) {
        if (!line.curve.empty()) {
            label_width = std::max(label_width, strong_metrics.horizontalAdvance(end_text(line)));
        }
    }
    const double left = metrics.horizontalAdvance(tr("3000 psi")) + 12.0;
    const double above = metrics.height() + 10.0;
    const double below = metrics.height() + 12.0 + strip_height();
    // Names stand right of the planned end, where no lines are; the axis may go on there.
    const double planned = std::max(1.0, content_.planned_end.value());
    const double to_end = std::max(40.0, width() - left - label_width - label_gap - 8.0);
    const double wide = std::min(width() - left - 16.0, to_end * last_minute() / planned);
    plot_ = QRectF(left, above, std::max(40.0, wide), std::max(40.0, height() - above - below));
    set_axes();
    set_lines();
    chart()->setPlotArea(plot_);
    place_labels();
    place_lanes();
    viewport()->update();
}

void PressureChart::set_axes() {
    static constexpr std::array minutes{1.0, 2.0, 5.0, 10.0, 20.0, 60.0};
    static constexpr std::array bars{10.0, 20.0, 50.0, 100.0, 150.0, 200.0};
    static constexpr std::array psi{100.0, 250.0, 500.0, 1000.0, 1500.0, 2000.0};
    const bool imperial = content_.units == UnitSystem::imperial;
    const double end = last_minute();
    const QFontMetricsF metrics(font());
    time_axis_->setRange(0.0, end);
    time_axis_->setTickInterval(axis_step(
        minutes, plot_.width() / end, metrics.horizontalAdvance(tr("240 min")) + 24.0));
    time_axis_->setLabelFormat(tr("%.0f min", "format of a number of minutes"));
    const double top = top_pressure();
    pressure_axis_->setRange(0.0, top);
    pressure_axis_->setTickInterval(
        axis_step(imperial ? psi : bars, plot_.height() / top, metrics.height() * 1.8));
    pressure_axis_->setLabelFormat(imperial ? tr("%.0f psi", "format of a pressure")
                                            : tr("%.0f bar", "format of a pressure"));
    const Inks colours = inks(palette());
    for (QValueAxis* axis : {time_axis_, pressure_axis_}) {
        axis->setLabelsFont(font());
        axis->setLabelsColor(colours.faint);
        axis->setLinePen(QPen(colours.rule, 1.0));
    }
}

QPen PressureChart::pen_of(const Line& line, std::size_t index) const {
    // Told apart by pattern as much as by name, so that a black and white copy still serves.
    static const std::array<QList<qreal>, 5> patterns{
        QList<qreal>{8, 3}, QList<qreal>{2, 3}, QList<qreal>{8, 3, 2, 3}, QList<qreal>{14, 4},
        QList<qreal>{4, 2, 1, 2, 1, 2}};
    const Inks colours = inks(palette());
    if (line.limiting) return QPen(colours.accent, 3.0);
    const bool chosen = highlighted_ == line.guest;
    QPen pen(chosen ? palette().color(QPalette::Text) : colours.faint, chosen ? 2.6 : 1.4);
    pen.setDashPattern(patterns[index % patterns.size()]);
    return pen;
}

void PressureChart::set_lines() {
    // Series are kept and given new points: making one anew costs more than a keystroke may.
    while (series_.size() < content_.lines.size()) {
        auto* series = new QLineSeries(this);
        chart()->addSeries(series);
        series->attachAxis(time_axis_);
        series->attachAxis(pressure_axis_);
        series_.push_back(series);
    }
    while (series_.size() > content_.lines.size()) {
        chart()->removeSeries(series_.back());
        delete series_.back();
        series_.pop_back();
    }
    // The last series lies on top: plain lines first, then the limiting ones, then the chosen one.
    std::vector<std::size_t> order(content_.lines.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    const auto rank = [&](std::size_t i) {
        const Line& line = content_.lines[i];
        return highlighted_ == line.guest ? 2 : line.limiting ? 1 : 0;
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    for (std::size_t i = 0; i < order.size(); ++i) {
        const Line& line = content_.lines[order[i]];
        QList<QPointF> points;
        points.reserve(static_cast<qsizetype>(line.curve.size()));
        for (const PressurePoint& point : line.curve) {
            points.append({point.time.value(), shown(point.gauge)});
        }
        series_[i]->setName(line.name);
        series_[i]->setPen(pen_of(line, order[i]));
        series_[i]->replace(points);
    }
}

void PressureChart::place_labels() {
    labels_.clear();
    QFont strong = font();
    strong.setBold(true);
    const QFontMetricsF metrics(strong);
    std::vector<WantedLabel> wanted;
    std::vector<const Line*> lines;
    for (const Line& line : content_.lines) {
        if (line.curve.empty()) continue;
        const QPointF end = place_of(line.curve.back().time, line.curve.back().gauge);
        const int rank = highlighted_ == line.guest ? 0 : line.limiting ? 1 : 2;
        // Of the rest, who has least left is named first.
        const int remaining = static_cast<int>(line.curve.back().gauge.value());
        wanted.push_back({end.y(), rank * 1000 + remaining});
        lines.push_back(&line);
    }
    const double height = metrics.height() + 2.0;
    const double left = planned_end_x() + label_gap;
    // Over the bands the names keep off the axis; without them the strip goes on to the edge.
    const double bottom =
        content_.bands.empty() ? this->height() - 4.0 : plot_.bottom() + 2.0;
    const auto places = spread_labels(wanted, height, plot_.top() - height / 2.0, bottom - height);
    int hidden = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!places[i]) {
            ++hidden;
            continue;
        }
        const Line& line = *lines[i];
        Label label;
        label.guest = line.guest;
        label.text = end_text(line);
        label.strong = line.limiting || highlighted_ == line.guest;
        label.anchor = place_of(line.curve.back().time, line.curve.back().gauge);
        label.box = QRectF(left, *places[i] - metrics.height() / 2.0,
                           metrics.horizontalAdvance(label.text) + 2.0, metrics.height());
        labels_.push_back(label);
    }
    if (hidden > 0) {
        Label more;
        more.text = tr("and %n more in the table", nullptr, static_cast<int>(hidden));
        more.box = QRectF(left, bottom - metrics.height(),
                          metrics.horizontalAdvance(more.text), metrics.height());
        more.box.moveRight(std::min(more.box.right(), width() - 2.0));
        more.anchor = more.box.center();
        labels_.push_back(more);
    }
}

void PressureChart::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    lay_out();
}

void PressureChart::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) lay_out();
}

std::optional<GuestId> PressureChart::guest_at(const QPointF& point) const {
    for (const Label& label : labels_) {
        if (!label.guest.empty() && label.box.contains(point)) return label.guest;
    }
    for (const Lane& lane : lanes_) {
        if (!lane.bar.contains(point) && !lane.box.contains(point)) continue;
        const GuestId& guest = content_.bands[lane.band].guest;
        return guest.empty() ? std::nullopt : std::optional(guest);
    }
    constexpr double finger = 10.0;
    const double minutes = (point.x() - plot_.left()) / plot_.width() * time_axis_->max();
    std::optional<GuestId> found;
    double nearest = finger;
    for (const Line& line : content_.lines) {
        const auto on = point_at(line.curve, minutes);
        if (!on) continue;
        const double away = std::abs(place_of(on->time, on->gauge).y() - point.y());
        if (away > nearest) continue;
        nearest = away;
        found = line.guest;
    }
    return found;
}

bool PressureChart::viewportEvent(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QChartView::viewportEvent(event);
    const auto* help = dynamic_cast<QHelpEvent*>(event);
    if (help == nullptr) return false;
    if (show_tip_of_band(QPointF(help->pos()), help->globalPos())) return true;
    const std::optional<GuestId> guest = guest_at(QPointF(help->pos()));
    const double minutes =
        (help->pos().x() - plot_.left()) / plot_.width() * time_axis_->max();
    for (const Line& line : content_.lines) {
        if (guest != line.guest) continue;
        const auto on = point_at(line.curve, std::min(minutes, content_.planned_end.value()));
        if (!on) break;
        QToolTip::showText(help->globalPos(),
                           tr("%1: %2 after %3, at %4")
                               .arg(line.name, text(on->gauge, content_.units, Rounding::down),
                                    text(on->time), text(on->depth, content_.units)),
                           this);
        return true;
    }
    QToolTip::hideText();
    return true;
}

void PressureChart::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        if (const auto guest = guest_at(event->position())) Q_EMIT guest_chosen(*guest);
        event->accept();
        return;
    }
    QChartView::mousePressEvent(event);
}

void PressureChart::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    if (step == 0 || content_.lines.empty()) return QChartView::keyPressEvent(event);
    const int count = static_cast<int>(content_.lines.size());
    int at = step > 0 ? -1 : count;
    for (int i = 0; i < count; ++i) {
        if (content_.lines[static_cast<std::size_t>(i)].guest == highlighted_) at = i;
    }
    at = std::clamp(at + step, 0, count - 1);
    Q_EMIT guest_chosen(content_.lines[static_cast<std::size_t>(at)].guest);
}

void PressureChart::focusInEvent(QFocusEvent* event) {
    QChartView::focusInEvent(event);
    viewport()->update();
}

void PressureChart::focusOutEvent(QFocusEvent* event) {
    QChartView::focusOutEvent(event);
    viewport()->update();
}

}  // namespace leadline
