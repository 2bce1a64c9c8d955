// SPDX-License-Identifier: GPL-3.0-or-later
// The strip under the lines: when each guest is at the reserve, from the 10 % to the 90 % dive, on
// the time axis of the lines.
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "ui/gas/gas_words.h"
#include "ui/gas/pressure_chart.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr double thin_lane = 6.0;     ///< of a band without its name
constexpr double most_of_view = 0.45; ///< that the strip may take
constexpr double chance_bar_height = 8.0;
constexpr double name_gap = 6.0;           ///< between a bar and its name

QFont bold(QFont font, bool is_bold) {
    font.setBold(is_bold);
    return font;
}

}  // namespace

QFont PressureChart::quiet_font() const {
    constexpr double smaller = 0.92;
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * smaller);
    return small;
}

double PressureChart::last_minute() const {
    const double planned = std::max(1.0, content_.planned_end.value());
    double last = planned;
    for (const Band& band : content_.bands) {
        if (!band.reserve.early) continue;  // not on any axis
        last = std::max(last, band.reserve.late.value_or(longest_profile).value());
    }
    // The planned dive keeps half of the width at least.
    return std::min(last, 2.0 * planned);
}

double PressureChart::planned_end_x() const {
    return plot_.left() + content_.planned_end.value() / last_minute() * plot_.width();
}

double PressureChart::lane_line() const { return QFontMetricsF(quiet_font()).height(); }

std::vector<double> PressureChart::lane_heights() const {
    const double room = height() * most_of_view - lane_line();
    const auto count = content_.bands.size();
    std::vector<double> heights(count, lane_line());
    if (static_cast<double>(count) * lane_line() <= room) return heights;
    double used = 0.0;
    for (std::size_t i = 0; i < count; ++i) {
        const Band& band = content_.bands[i];
        const bool named = band.first || (highlighted_ && highlighted_ == band.guest);
        heights[i] = named ? lane_line() : thin_lane;
        used += heights[i];
    }
    // Then the nameless ones go, from the last on.
    for (std::size_t i = count; i-- > 0 && used > room;) {
        if (heights[i] > thin_lane) continue;
        used -= heights[i];
        heights[i] = 0.0;
    }
    return heights;
}

double PressureChart::strip_height() const {
    if (content_.bands.empty()) return 0.0;
    double height = lane_line() + 4.0;
    for (const double lane : lane_heights()) height += lane;
    return height + 2.0;
}

PressureChart::Lane PressureChart::lane_for(std::size_t index, double top, double height) const {
    const Band& band = content_.bands[index];
    const auto x_of = [&](const std::optional<Minutes>& time) {
        const double minutes = time.value_or(longest_profile).value();
        return plot_.left() + std::min(1.0, minutes / last_minute()) * plot_.width();
    };
    Lane lane;
    lane.band = index;
    const double thick = std::min(chance_bar_height, height - 1.0);
    const double from = x_of(band.reserve.early);
    const double to = std::max(from + 2.0, x_of(band.reserve.late));
    lane.bar = QRectF(from, top + (height - thick) / 2.0, to - from, thick);
    lane.open = band.reserve.late.value_or(longest_profile).value() > last_minute();
    if (height < lane_line()) return lane;
    const QFontMetricsF metrics(bold(quiet_font(), band.first));
    const QString time = QStringLiteral("  ") + median_text(band.reserve);
    const double before = lane.bar.left() - name_gap - 4.0;
    const double after = width() - 4.0 - lane.bar.right() - name_gap;
    const double whole = metrics.horizontalAdvance(band.name + time) + 2.0;
    const bool left = before >= whole || before >= after;
    const double room = (left ? before : after) - 2.0 - metrics.horizontalAdvance(time);
    lane.text = metrics.elidedText(band.name, Qt::ElideRight, std::max(0.0, room)) + time;
    const QSizeF size(metrics.horizontalAdvance(lane.text) + 2.0, height);
    lane.box = QRectF(QPointF(left ? lane.bar.left() - name_gap - size.width() : lane.bar.right() + name_gap,
                              top),
                      size);
    return lane;
}

void PressureChart::place_lanes() {
    lanes_.clear();
    if (content_.bands.empty()) return;
    double top = height() - strip_height() + lane_line() + 4.0;
    const std::vector<double> heights = lane_heights();
    for (std::size_t i = 0; i < heights.size(); ++i) {
        if (heights[i] <= 0.0) continue;
        if (content_.bands[i].reserve.early) lanes_.push_back(lane_for(i, top, heights[i]));
        top += heights[i];
    }
}

void PressureChart::draw_bands(QPainter& painter) const {
    if (content_.bands.empty()) return;
    const Inks colours = inks(palette());
    const double top = height() - strip_height();
    painter.setFont(quiet_font());
    painter.setPen(colours.faint);
    painter.drawText(QRectF(plot_.left(), top, width() - plot_.left(), lane_line()),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetricsF(quiet_font())
                         .elidedText(tr("At %1 after, staying down (10 to 90 of 100 dives)")
                                         .arg(text(content_.reserve, content_.units)),
                                     Qt::ElideRight, width() - plot_.left()));
    painter.setPen(QPen(colours.faint, 1.2, Qt::DotLine));
    painter.drawLine(QPointF(planned_end_x(), top + lane_line()),
                     QPointF(planned_end_x(), height() - 2.0));
    for (const Lane& lane : lanes_) {
        const Band& band = content_.bands[lane.band];
        const bool chosen = !band.guest.empty() && highlighted_ == band.guest;
        const QColor ink = band.first ? colours.accent
                           : chosen   ? palette().color(QPalette::Text)
                                      : colours.faint;
        QColor fill = ink;
        fill.setAlphaF(band.first || chosen ? 0.75F : 0.4F);
        painter.setPen(Qt::NoPen);
        painter.setBrush(fill);
        painter.drawRect(lane.bar);
        if (lane.open) {
            // An arrow's head: it goes on.
            const double y = lane.bar.center().y();
            const double half = lane.bar.height() / 2.0 + 2.0;
            painter.drawPolygon(QPolygonF({QPointF(lane.bar.right(), y - half),
                                           QPointF(lane.bar.right() + 7.0, y),
                                           QPointF(lane.bar.right(), y + half)}));
        }
        if (band.reserve.middle && band.reserve.middle->value() <= last_minute()) {
            const double x = place_of(*band.reserve.middle, Bars(0.0)).x();
            painter.setPen(QPen(palette().color(QPalette::Text), 2.0));
            painter.drawLine(QPointF(x, lane.bar.top() - 2.0), QPointF(x, lane.bar.bottom() + 2.0));
        }
        painter.fillRect(lane.box, palette().color(QPalette::Window));
        painter.setFont(bold(quiet_font(), band.first));
        painter.setPen(band.first || chosen ? ink : palette().color(QPalette::Text));
        painter.drawText(lane.box, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                         lane.text);
    }
    painter.setFont(font());
    painter.setBrush(Qt::NoBrush);
}

bool PressureChart::show_tip_of_band(const QPointF& at, const QPoint& global) {
    for (const Lane& lane : lanes_) {
        if (!lane.bar.contains(at) && !lane.box.contains(at)) continue;
        const Band& band = content_.bands[lane.band];
        QToolTip::showText(global,
                           tr("%1: at %2 after %3")
                               .arg(band.name, text(content_.reserve, content_.units),
                                    band_text(band.reserve)),
                           this);
        return true;
    }
    return false;
}

}  // namespace leadline
