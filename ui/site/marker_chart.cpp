// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/marker_chart.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

#include "ui/document/session_document.h"
#include "ui/widgets/theme.h"

namespace leadline {

std::vector<ChartMark> chart_marks(double meters, double pixels, UnitSystem units, double room) {
    if (!(meters > 0.0) || !(pixels > 0.0)) return {};  // nothing planned yet
    static constexpr std::array metric{0.5, 1.0, 2.0, 5.0, 10.0, 20.0};
    static constexpr std::array feet{1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0};
    const bool imperial = units == UnitSystem::imperial;
    const double unit = imperial ? 0.3048 : 1.0;
    const auto fits = [&](double step) { return step * unit * pixels / meters >= room; };
    const double step = imperial ? *std::find_if(feet.begin(), feet.end() - 1, fits)
                                 : *std::find_if(metric.begin(), metric.end() - 1, fits);
    std::vector<ChartMark> marks;
    constexpr double slack = 1e-9;
    for (int i = 0; i * step * unit <= meters + slack; ++i) {
        const Meters at(i * step * unit);
        marks.push_back({at.value(), text(Depth(at), units)});
    }
    return marks;
}

MarkerChart::MarkerChart(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&document_, &SessionDocument::changed, this, &MarkerChart::refresh);
    connect(&document_, &SessionDocument::opened, this, [this] {
        kept_.reset();
        pointed_.reset();
    });
}

QSize MarkerChart::sizeHint() const {
    const int line = fontMetrics().height();
    return {28 * line, 17 * line};
}

QSize MarkerChart::minimumSizeHint() const {
    const int line = fontMetrics().height();
    return {18 * line, 15 * line};
}

void MarkerChart::refresh() {
    // The dive may have become shallower than where the marker stood.
    const std::vector<Depth> places = stops();
    for (std::optional<Depth>* at : {&kept_, &pointed_}) {
        if (*at && (places.empty() || **at > places.back())) at->reset();
    }
    describe();
    stale_ = true;
    if (isVisible()) lay_out_anew();  // a keystroke on another tab need not wait for it
}

void MarkerChart::lay_out_anew() {
    stale_ = false;
    lay_out();
    update();
}

std::optional<Depth> MarkerChart::marker() const {
    if (pointed_) return pointed_;
    return hasFocus() ? kept_ : std::nullopt;
}

QString MarkerChart::reading() const {
    const std::optional<Depth> at = marker();
    return at ? reading_at(*at) : QString();
}

void MarkerChart::describe() {
    QString words = reading();
    if (words.isEmpty()) {
        words = summary() + u' ' + tr("Arrow keys read out what holds at a depth.");
    }
    words.replace(QStringLiteral(":\n"), QStringLiteral(": "));
    words.replace(u'\n', QStringLiteral("; "));
    if (words != accessibleDescription()) setAccessibleDescription(words);
}

std::optional<Depth> MarkerChart::stop_near(double x) const {
    const std::vector<Depth> places = stops();
    const auto nearest =
        std::min_element(places.begin(), places.end(), [&](const Depth& a, const Depth& b) {
            return std::abs(x_of(a) - x) < std::abs(x_of(b) - x);
        });
    return nearest == places.end() ? std::nullopt : std::optional<Depth>(*nearest);
}

void MarkerChart::step_marker(int stops_on) {
    const std::vector<Depth> places = stops();
    if (places.empty()) return;
    const std::optional<Depth> from = pointed_ ? pointed_ : kept_;
    const auto last = static_cast<std::ptrdiff_t>(places.size()) - 1;
    std::ptrdiff_t to = stops_on > 0 ? 0 : last;
    if (from) {
        const auto at = std::lower_bound(places.begin(), places.end(), *from);
        to = std::clamp<std::ptrdiff_t>(std::distance(places.begin(), at) + stops_on, 0, last);
    }
    kept_ = places[static_cast<std::size_t>(to)];
    pointed_.reset();  // the keys have the marker until the pointer moves again
    describe();
    update();
}

void MarkerChart::keyPressEvent(QKeyEvent* event) {
    const int all = static_cast<int>(stops().size());
    const int tenth = std::max(1, all / 10);
    switch (event->key()) {
        case Qt::Key_Right:
        case Qt::Key_Down: return step_marker(1);
        case Qt::Key_Left:
        case Qt::Key_Up: return step_marker(-1);
        case Qt::Key_PageDown: return step_marker(tenth);
        case Qt::Key_PageUp: return step_marker(-tenth);
        case Qt::Key_Home: return step_marker(-all);
        case Qt::Key_End: return step_marker(all);
        default: QWidget::keyPressEvent(event);
    }
}

void MarkerChart::mouseMoveEvent(QMouseEvent* event) {
    const bool inside = event->position().x() >= plot_.left() - 8.0 &&
                        event->position().x() <= plot_.right() + 8.0;
    pointed_ = inside ? stop_near(event->position().x()) : std::nullopt;
    describe();
    update();
}

void MarkerChart::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
    kept_ = stop_near(event->position().x());
    describe();
    update();
}

void MarkerChart::leaveEvent(QEvent* event) {
    QWidget::leaveEvent(event);
    pointed_.reset();
    describe();
    update();
}

void MarkerChart::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    const std::vector<Depth> places = stops();
    if (!kept_ && !places.empty()) kept_ = places.back();
    describe();
    update();
}

void MarkerChart::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    describe();
    update();
}

bool MarkerChart::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) setToolTip(literature(pointed_));
    return QWidget::event(event);
}

void MarkerChart::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    lay_out_anew();
}

void MarkerChart::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) lay_out_anew();
}

void MarkerChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::FontChange) return;
    updateGeometry();
    lay_out_anew();
}

QSizeF MarkerChart::size_of(const ChartLabel& label) const {
    QFont letters = font();
    letters.setBold(label.strong);
    const QSizeF words = QFontMetricsF(letters).size(0, label.text);
    return {words.width() + 4.0, words.height()};
}

void MarkerChart::put(ChartLabel label, const QPointF& top_left) {
    label.box = QRectF(top_left, size_of(label));
    labels_.push_back(std::move(label));
}

bool MarkerChart::covers_a_label(const QRectF& box) const {
    return std::any_of(labels_.begin(), labels_.end(),
                       [&](const ChartLabel& label) { return label.box.intersects(box); });
}

void MarkerChart::draw_labels(QPainter& painter) const {
    const Inks colours = inks(palette());
    QColor veil = palette().color(QPalette::Base);
    veil.setAlphaF(0.85F);
    for (const ChartLabel& label : labels_) {
        QFont letters = font();
        letters.setBold(label.strong);
        painter.setFont(letters);
        if (label.veiled) painter.fillRect(label.box, veil);
        switch (label.ink) {
            case ChartLabel::Ink::plain: painter.setPen(palette().color(QPalette::Text)); break;
            case ChartLabel::Ink::faint: painter.setPen(colours.faint); break;
            case ChartLabel::Ink::accent: painter.setPen(colours.accent); break;
            case ChartLabel::Ink::stop: painter.setPen(colours.stop); break;
        }
        painter.drawText(label.box, static_cast<int>(label.align), label.text);
    }
    painter.setFont(font());
}

void MarkerChart::draw_marker(QPainter& painter) const {
    const std::optional<Depth> at = marker();
    if (!at) return;
    const Inks colours = inks(palette());
    const double x = x_of(*at);
    painter.setPen(QPen(colours.faint, 1.0, Qt::DotLine));
    painter.drawLine(QPointF(x, plot_.top()), QPointF(x, plot_.bottom()));
    const std::vector<QPointF> dots = dots_at(*at);
    painter.setPen(QPen(colours.accent, 2.0));
    painter.drawPolyline(dots.data(), static_cast<int>(dots.size()));
    painter.setPen(QPen(palette().color(QPalette::Base), 1.0));
    painter.setBrush(colours.accent);
    for (const QPointF& dot : dots) painter.drawEllipse(dot, 4.5, 4.5);
    const QFontMetricsF metrics(font());
    const QString words = reading_at(*at);
    const QSizeF size = metrics.size(0, words) + QSizeF(16.0, 8.0);
    QRectF box = reading_box(size, *at);
    box.moveLeft(std::clamp(box.left(), 2.0, std::max(2.0, width() - 2.0 - size.width())));
    painter.setPen(QPen(colours.faint, 1.0));
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawRoundedRect(box, 4.0, 4.0);
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(box.adjusted(8.0, 4.0, -8.0, -4.0), Qt::AlignLeft | Qt::AlignVCenter, words);
}

void MarkerChart::paintEvent(QPaintEvent*) {
    if (stale_) lay_out();  // printed or grabbed without being shown
    stale_ = false;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    draw(painter);
    draw_labels(painter);
    draw_marker(painter);
    if (!hasFocus()) return;
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0));
}

}  // namespace leadline
