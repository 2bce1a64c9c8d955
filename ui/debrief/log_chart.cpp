// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/debrief/log_chart.h"

#include <QIcon>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <vector>

#include "ui/document/session_document.h"
#include "ui/widgets/theme.h"
#include "ui/words/guest_name.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

constexpr double left_margin = 64;
constexpr double right_margin = 150;  // room for names at the line ends
constexpr double top_margin = 24;
constexpr double bottom_margin = 28;
constexpr double key_length = 18;  // sample of a line beside its name
constexpr double mark_side = 16;
constexpr int paper_alpha = 210;  // behind words that cross lines

/// Logs count from the descent; the plan also knows the time before it. Both on the plan's clock.
Minutes descent_start(const Profile& profile) {
    for (std::size_t i = 1; i < profile.points.size(); ++i) {
        if (profile.points[i].depth.meters().value() > 0.0) return profile.points[i - 1].time;
    }
    return Minutes(0.0);
}

const DiverReview* find_review(const std::optional<Review>& review, const GuestId& guest) {
    if (!review) return nullptr;
    const auto found = std::find_if(review->divers.begin(), review->divers.end(),
                                    [&](const DiverReview& diver) { return diver.guest == guest; });
    return found == review->divers.end() ? nullptr : &*found;
}

/// A limit that was exceeded: the sample at which, and how it is called.
struct LimitMark {
    DepthSample sample;
    Severity severity{};
    QString words;
};

std::vector<LimitMark> limit_marks(const SessionDocument& document, const LogEntry& diver) {
    std::vector<LimitMark> marks;
    const DiverReview* reviewed = find_review(document.review(), diver.guest);
    if (reviewed == nullptr) return marks;
    const auto add = [&](const Finding& finding, const QString& what, auto is_place) {
        const auto found = std::find_if(diver.samples.begin(), diver.samples.end(), is_place);
        if (found == diver.samples.end() || finding.values.empty()) return;
        marks.push_back({*found, finding.severity,
                         what.arg(text(finding.values.front(), document.units()))});
    };
    for (const Finding& finding : document.review()->findings) {
        const auto* about = std::get_if<GuestId>(&finding.subject);
        if (about == nullptr || *about != diver.guest) continue;
        if (finding.code == FindingCode::ascent_too_fast) {
            add(finding, LogChart::tr("up too fast: %1"), [&](const DepthSample& sample) {
                return sample.time.value() == reviewed->fastest_ascent_at.value();
            });
        } else if (finding.code == FindingCode::logged_too_deep ||
                   finding.code == FindingCode::logged_depth_over_limit) {
            add(finding, LogChart::tr("too deep: %1"), [&](const DepthSample& sample) {
                return sample.depth == reviewed->deepest;
            });
        }
    }
    return marks;
}

QString name_of(const SessionDocument& document, const GuestId& id) {
    const Guest* guest = find_guest(document.session(), id);
    return guest != nullptr ? guest_name(guest->name) : QString();
}

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
          shift_(descent_start(chart.document_.session().profile)),
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
        // Words of the chosen guest first: where room is short, the others keep their shape only.
        for (const bool chosen : {true, false}) {
            for (const LogEntry& diver : document_.log()->divers) {
                if ((diver.guest == current_) == chosen) draw_marks(diver);
            }
        }
        say_when_nothing_was_read();
    }

private:
    void measure() {
        minutes_ = duration(document_.session().profile).value();
        depth_ = deepest(document_.session().profile).meters().value();
        if (document_.log()) {
            for (const LogEntry& diver : document_.log()->divers) {
                for (const DepthSample& sample : diver.samples) {
                    minutes_ = std::max(minutes_, (sample.time + shift_).value());
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

    [[nodiscard]] QPointF at(const DepthSample& sample) const {
        return at(sample.time + shift_, sample.depth);
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
        for (const DepthSample& sample : diver.samples) line << at(sample);
        QPen pen(chosen ? inks_.accent : inks_.faint, chosen ? 2.6 : 1.2);
        if (!chosen) pen.setStyle(styles_[next_style_++ % styles_.size()]);
        painter_.setPen(pen);
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPolyline(line);
        name_line(diver, line.last().y(), chosen);
    }

    /// Names stand in the right margin near the line's end, pushed down where another stands, each
    /// behind a piece of its line: all lines end at the surface, so a pointer would tell nothing.
    void name_line(const LogEntry& diver, double end, bool chosen) {
        const QPen line_pen = painter_.pen();
        QFont font = painter_.font();
        font.setBold(chosen);
        painter_.setFont(font);
        const QFontMetricsF metrics(font);
        double y = end;
        const auto taken = [&](double wanted) {
            return std::any_of(names_.begin(), names_.end(), [&](double other) {
                return std::abs(other - wanted) < metrics.height();
            });
        };
        while (taken(y)) y += 2.0;
        names_.push_back(y);
        const double x = area_.right() + 12;
        painter_.drawLine(QPointF(x, y), QPointF(x + key_length, y));
        painter_.setPen(chosen ? inks_.accent : palette_.color(QPalette::WindowText));
        painter_.drawText(QPointF(x + key_length + 6, y + metrics.ascent() / 2 - 1),
                          metrics.elidedText(name_of(document_, diver.guest), Qt::ElideRight,
                                             right_margin - key_length - 24));
        font.setBold(false);
        painter_.setFont(font);
        painter_.setPen(line_pen);
    }

    /// Shape and words where a limit was exceeded; words only where they cover no others.
    void draw_marks(const LogEntry& diver) {
        const QFontMetricsF metrics(painter_.font());
        for (const LimitMark& mark : limit_marks(document_, diver)) {
            const QPointF place = at(mark.sample);
            const QRectF shape(place.x() - mark_side / 2, place.y() - mark_side / 2, mark_side,
                               mark_side);
            severity_icon(mark.severity, palette_).paint(&painter_, shape.toAlignedRect());
            QRectF words(place.x() + mark_side / 2 + 4, place.y() - metrics.height() / 2,
                         metrics.horizontalAdvance(mark.words) + 2, metrics.height());
            if (words.right() > area_.right()) words.moveRight(place.x() - mark_side / 2 - 4);
            const bool covers = std::any_of(words_.begin(), words_.end(), [&](const QRectF& other) {
                return other.intersects(words);
            });
            if (covers) continue;
            words_.push_back(words);
            QColor paper = palette_.color(QPalette::Window);
            paper.setAlpha(paper_alpha);
            painter_.fillRect(words.adjusted(-2, 0, 2, 0), paper);
            painter_.setPen(mark.severity == Severity::stop ? inks_.stop : inks_.caution);
            painter_.drawText(words, Qt::AlignVCenter, mark.words);
        }
    }

    void say_when_nothing_was_read() {
        const LogEntry* diver = find_log(*document_.log(), current_);
        if (diver == nullptr || diver->samples.size() >= 2) return;
        painter_.setPen(inks_.faint);
        const QString words =
            LogChart::tr("No depths were read for %1.").arg(name_of(document_, current_));
        painter_.drawText(area_.adjusted(8, 0, -8, -4), Qt::AlignBottom | Qt::AlignRight,
                          painter_.fontMetrics().elidedText(words, Qt::ElideRight,
                                                            static_cast<int>(area_.width()) - 16));
    }

    SessionDocument& document_;
    const GuestId& current_;
    QPainter& painter_;
    QPalette palette_;
    Inks inks_;
    Minutes shift_;
    QRectF area_;
    double minutes_ = 1.0;
    double depth_ = 1.0;
    std::vector<double> names_;
    std::vector<QRectF> words_;  ///< of the marks, so that none covers another
    std::size_t next_style_ = 0;
    std::vector<Qt::PenStyle> styles_{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};
};

LogChart::LogChart(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
    setObjectName(QStringLiteral("debrief_chart"));
    setAccessibleName(tr("Depth over time, planned and logged"));
    setMinimumHeight(180);
    connect(&document_, &SessionDocument::changed, this, &LogChart::refresh);
    refresh();
}

void LogChart::refresh() {
    QStringList words;
    if (document_.log()) {
        for (const LogEntry& diver : document_.log()->divers) {
            for (const LimitMark& mark : limit_marks(document_, diver)) {
                words << with_colon(name_of(document_, diver.guest), mark.words);
            }
        }
    }
    setAccessibleDescription(words.join(QStringLiteral("; ")));
    update();
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
