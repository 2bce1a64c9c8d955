// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/debrief/log_chart.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <vector>

#include "ui/document/session_document.h"
#include "ui/widgets/theme.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

constexpr double left_margin = 64;
constexpr double right_margin = 150;  // room for names at the line ends
constexpr double top_margin = 24;
constexpr double bottom_margin = 28;

}  // namespace

/// One painting of the chart: scales and what is placed so far.
class LogChart::Drawing {
public:
    Drawing(LogChart& chart, QPainter& painter)
        : document_(chart.document_),
          current_(chart.current_),
          painter_(painter),
          palette_(chart.palette()),
          inks_(inks(palette_)),
          area_(QRectF(chart.rect())
                    .adjusted(left_margin, top_margin, -right_margin, -bottom_margin)) {
        measure();
    }

    void draw() {
        draw_water();
        draw_axes();
        if (!document_.log()) return;
        for (const LogEntry& diver : document_.log()->divers) {
            if (diver.guest != current_) draw_line(diver, false);
        }
        for (const LogEntry& diver : document_.log()->divers) {
            if (diver.guest == current_) draw_line(diver, true);
        }
    }

private:
    void measure() {
        minutes_ = duration(document_.session().profile).value();
        depth_ = deepest(document_.session().profile).meters().value();
        if (document_.log()) {
            for (const LogEntry& diver : document_.log()->divers) {
                for (const DepthSample& sample : diver.samples) {
                    minutes_ = std::max(minutes_, sample.time.value());
                    depth_ = std::max(depth_, sample.depth.meters().value());
                }
            }
        }
        minutes_ = std::max(minutes_, 1.0);
        depth_ = std::max(depth_ * 1.12, 1.0);
    }

    [[nodiscard]] QPointF at(Minutes time, Depth depth) const {
        return {area_.left() + time.value() / minutes_ * area_.width(),
                area_.top() + depth.meters().value() / depth_ * area_.height()};
    }

    void draw_water() {
        QPolygonF planned;
        for (const ProfilePoint& point : document_.session().profile.points) {
            planned << at(point.time, point.depth);
        }
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(inks_.water);
        painter_.drawPolygon(planned);
        painter_.setPen(inks_.faint);
        const QPointF middle = at(Minutes(minutes_ * 0.5), Depth());
        painter_.drawText(QRectF(middle.x() - 60, area_.top() + 2, 120, 20), Qt::AlignCenter,
                          LogChart::tr("planned"));
    }

    void draw_axes() {
        painter_.setPen(inks_.rule);
        painter_.drawLine(area_.topLeft(), area_.topRight());
        painter_.drawLine(area_.bottomLeft(), area_.bottomRight());
        painter_.setPen(inks_.faint);
        const bool imperial = document_.units() == UnitSystem::imperial;
        const double step = imperial ? 10.0 * 0.3048 : (depth_ > 12.0 ? 4.0 : 2.0);
        for (double depth = 0.0; depth <= depth_; depth += step) {
            const double y = at(Minutes(0.0), Depth(Meters(depth))).y();
            painter_.drawText(QRectF(0, y - 10, left_margin - 8, 20),
                              Qt::AlignRight | Qt::AlignVCenter,
                              text(Depth(Meters(depth)), document_.units()));
        }
        for (double time = 0.0; time <= minutes_ + 1e-9; time += minutes_ > 40.0 ? 10.0 : 5.0) {
            const double x = at(Minutes(time), Depth()).x();
            painter_.drawText(QRectF(x - 40, area_.bottom() + 4, 80, 20), Qt::AlignHCenter,
                              text(Minutes(time)));
        }
    }

    void draw_line(const LogEntry& diver, bool chosen) {
        if (diver.samples.size() < 2) return;
        QPolygonF line;
        for (const DepthSample& sample : diver.samples) line << at(sample.time, sample.depth);
        QPen pen(chosen ? inks_.accent : inks_.faint, chosen ? 2.6 : 1.2);
        if (!chosen) pen.setStyle(styles_[next_style_++ % styles_.size()]);
        painter_.setPen(pen);
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPolyline(line);
        name_line(diver, line.last(), chosen);
        if (chosen) mark_limits(diver);
    }

    /// Names stand in the right margin beside the line's end, pushed down where another stands.
    void name_line(const LogEntry& diver, QPointF end, bool chosen) {
        const Guest* guest = find_guest(document_.session(), diver.guest);
        QFont font = painter_.font();
        font.setBold(chosen);
        painter_.setFont(font);
        const QFontMetricsF metrics(font);
        double y = end.y();
        const auto taken = [&](double wanted) {
            return std::any_of(names_.begin(), names_.end(), [&](double other) {
                return std::abs(other - wanted) < metrics.height();
            });
        };
        while (taken(y)) y += 2.0;
        names_.push_back(y);
        const double x = area_.right() + 14;
        painter_.setPen(QPen(inks_.rule, 1));
        painter_.drawLine(end, QPointF(x - 3, y));
        painter_.setPen(chosen ? inks_.accent : palette_.color(QPalette::WindowText));
        const QString name = guest != nullptr ? QString::fromStdString(guest->name) : QString();
        painter_.drawText(QPointF(x, y + metrics.ascent() / 2 - 1),
                          metrics.elidedText(name, Qt::ElideRight, right_margin - 20));
        font.setBold(false);
        painter_.setFont(font);
    }

    void mark_limits(const LogEntry& diver) {
        if (!document_.review()) return;
        QStringList words;
        for (const Finding& finding : document_.review()->findings) {
            const auto* about = std::get_if<GuestId>(&finding.subject);
            if (about == nullptr || *about != diver.guest || finding.values.empty()) continue;
            const QString value = text(finding.values.front(), document_.units());
            if (finding.code == FindingCode::ascent_too_fast) {
                words << LogChart::tr("up too fast: %1").arg(value);
            } else if (finding.code == FindingCode::logged_too_deep ||
                       finding.code == FindingCode::logged_depth_over_limit) {
                words << LogChart::tr("too deep: %1").arg(value);
            }
        }
        if (words.isEmpty()) return;
        painter_.setPen(inks_.stop);
        painter_.drawText(QRectF(area_.left(), area_.bottom() - 22, area_.width(), 20),
                          Qt::AlignRight | Qt::AlignVCenter, words.join(QStringLiteral(" · ")));
    }

    SessionDocument& document_;
    const GuestId& current_;
    QPainter& painter_;
    QPalette palette_;
    Inks inks_;
    QRectF area_;
    double minutes_ = 1.0;
    double depth_ = 1.0;
    std::vector<double> names_;
    std::size_t next_style_ = 0;
    std::vector<Qt::PenStyle> styles_{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};
};

LogChart::LogChart(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
    setObjectName(QStringLiteral("debrief_chart"));
    setAccessibleName(tr("Depth over time, planned and logged"));
    setMinimumHeight(180);
    connect(&document_, &SessionDocument::changed, this, qOverload<>(&QWidget::update));
}

void LogChart::set_current(const GuestId& guest) {
    current_ = guest;
    update();
}

void LogChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    Drawing(*this, painter).draw();
}

}  // namespace leadline
