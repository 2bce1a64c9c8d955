// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/water_scene.h"

#include <QLinearGradient>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QSvgRenderer>
#include <algorithm>
#include <utility>

namespace leadline {
namespace {

// In ems.
constexpr double usual_sky = 2.6;
// With words that must stand clear of the diver at the surface.
constexpr double sky_with_words = 4.7;
constexpr double ground = 3.2;
constexpr double scale_width = 6.8;
constexpr double diver_side = 5.0;
constexpr double balloon_side = 3.2;
constexpr double diver_mask = 0.42;  // of its height: where the picture's eyes are
constexpr int glide_milliseconds = 160;
constexpr int one_line = int(Qt::AlignVCenter) | int(Qt::AlignLeading);
constexpr int many_lines = one_line | int(Qt::TextWordWrap);

}  // namespace

bool words_fit(const SceneWords& words) {
    const QRectF needed =
        QFontMetricsF(words.font)
            .boundingRect(QRectF(0, 0, words.box.width(), 100000), words.flags, words.text);
    return needed.width() <= words.box.width() + 1.0 && needed.height() <= words.box.height() + 1.0;
}

namespace {

/// The words with letters small enough for their box, where a language needs more room than most.
SceneWords shrunk(SceneWords words) {
    constexpr int smallest = 6;
    while (!words_fit(words) && words.font.pixelSize() > smallest) {
        words.font.setPixelSize(words.font.pixelSize() - 1);
    }
    return words;
}

}  // namespace

WaterScene::WaterScene(QWidget* parent)
    : QWidget(parent), diver_(std::make_unique<QSvgRenderer>()) {
    diver_->load(QStringLiteral(":/leadline/body/diver.svg"));
    diver_->setAspectRatioMode(Qt::KeepAspectRatio);
    setCursor(Qt::SizeVerCursor);
    glide_.setDuration(glide_milliseconds);
    connect(&glide_, &QVariantAnimation::valueChanged, this, [this](const QVariant& value) {
        shown_ = value.toDouble();
        update();
    });
}

WaterScene::~WaterScene() = default;

void WaterScene::set_content(Content content) {
    content_ = std::move(content);
    set_scale(scale_);
}

double WaterScene::sky() const {
    return content_.clear_words.isEmpty() ? usual_sky : sky_with_words;
}

QRectF WaterScene::diver_box() const {
    const double em = scale_.em;
    const double side = diver_side * em;
    // The scale reads at the diver's mask.
    return mirrored(QRectF(width() - side - balloon_side * em - em * 0.6,
                           y_of(shown_) - side * diver_mask, side, side));
}

void WaterScene::set_depth(double meters, bool calm) {
    depth_ = std::clamp(meters, 0.0, content_.deepest);
    glide_.stop();
    if (calm || !isVisible()) {
        shown_ = depth_;
    } else {
        glide_.setStartValue(shown_);
        glide_.setEndValue(depth_);
        glide_.start();
    }
    update();
}

void WaterScene::set_balloon(std::optional<double> width) {
    balloon_ = width;
    update();
}

void WaterScene::set_scale(const TypeScale& scale) {
    scale_ = scale;
    constexpr double least_wide = scale_width + diver_side + balloon_side + 2.0;
    constexpr double least_high = 13.0;
    setMinimumSize(qRound(scale.em * least_wide),
                   qRound(scale.em * (least_high + sky() - usual_sky)));
    update();
}

double WaterScene::y_of(double meters) const {
    const double top = sky() * scale_.em;
    const double bottom = height() - ground * scale_.em;
    return top + (bottom - top) * meters / content_.deepest;
}

double WaterScene::depth_at(double y) const {
    const double top = sky() * scale_.em;
    const double bottom = height() - ground * scale_.em;
    const double span = std::max(1.0, bottom - top);
    return std::clamp((y - top) / span, 0.0, 1.0) * content_.deepest;
}

QRectF WaterScene::mirrored(const QRectF& box) const {
    if (!mirrored()) return box;
    return {width() - box.right(), box.top(), box.width(), box.height()};
}

std::vector<SceneWords> WaterScene::words() const {
    std::vector<SceneWords> all;
    const double em = scale_.em;
    const QFont font = scaled_font(scale_, TextRole::small);
    const double line = QFontMetricsF(font).height();
    double free_from = -1e9;
    for (const Tick& tick : content_.ticks) {
        // The first stands above the water line, clear of it.
        const double y = y_of(tick.meters) - (tick.meters > 0.0 ? 0.0 : line * 0.75);
        if (y - line / 2.0 < free_from) continue;
        all.push_back(
            shrunk({mirrored(QRectF(em * 0.9, y - line / 2.0, em * (scale_width - 1.4), line)),
                    tick.words, font, one_line}));
        free_from = y + line / 2.0;
    }
    if (!content_.deepest_words.isEmpty()) {
        all.push_back(
            shrunk({mirrored(QRectF(em * 0.5, height() - em * 1.5, width() - em, em * 1.4)),
                    content_.deepest_words, font, one_line}));
    }
    if (!content_.clear_at.empty() && !content_.clear_words.isEmpty()) {
        const double left = em * (scale_width + 0.9);
        all.push_back(shrunk({mirrored(QRectF(left, em * 0.1, width() - left - em * 0.2, em * 2.3)),
                              content_.clear_words, font, many_lines}));
    }
    return all;
}

void WaterScene::paint_water(QPainter& painter) const {
    const ScreenPalette& colours = scale_.palette;
    const double radius = scale_.em * 0.4;
    QPainterPath frame;
    frame.addRoundedRect(QRectF(rect()), radius, radius);
    painter.setClipPath(frame);
    painter.fillRect(rect(), colours.panel);
    const QRectF water(0.0, y_of(0.0), width(), height() - y_of(0.0));
    QLinearGradient gradient(water.topLeft(), water.bottomLeft());
    gradient.setColorAt(0.0, colours.water);
    gradient.setColorAt(1.0, colours.deep_water);
    painter.fillRect(water, gradient);
    painter.setPen(QPen(colours.ink, std::max(2.0, scale_.em * 0.1)));
    // The water line: low waves.
    QPainterPath waves(QPointF(0.0, y_of(0.0)));
    const double wave = scale_.em * 1.2;
    for (double x = 0.0; x < width(); x += wave) {
        waves.quadTo(QPointF(x + wave / 4.0, y_of(0.0) - wave * 0.15),
                     QPointF(x + wave / 2.0, y_of(0.0)));
        waves.quadTo(QPointF(x + wave * 0.75, y_of(0.0) + wave * 0.15),
                     QPointF(x + wave, y_of(0.0)));
    }
    painter.drawPath(waves);
}

void WaterScene::paint_marks(QPainter& painter) const {
    const ScreenPalette& colours = scale_.palette;
    const double em = scale_.em;
    const double thin = std::max(1.0, em * 0.06);
    painter.setPen(QPen(colours.ink, thin));
    for (const Tick& tick : content_.ticks) {
        const QRectF mark = mirrored(QRectF(0.0, y_of(tick.meters), em * 0.6, 0.0));
        painter.drawLine(mark.topLeft(), mark.topRight());
    }
    painter.setPen(QPen(colours.ink, thin, Qt::DashLine));
    const QRectF bottom =
        mirrored(QRectF(em * scale_width, y_of(content_.deepest), width() - em * scale_width, 0.0));
    painter.drawLine(bottom.topLeft(), bottom.topRight());
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.accent);
    const auto paint_triangle = [&](double y) {
        const QRectF box = mirrored(QRectF(em * scale_width, y - em * 0.3, em * 0.6, em * 0.6));
        const double tip = mirrored() ? box.left() : box.right();
        const double back = mirrored() ? box.right() : box.left();
        painter.drawPolygon(QPolygonF({QPointF(back, box.top()), QPointF(tip, box.center().y()),
                                       QPointF(back, box.bottom())}));
    };
    for (const double meters : content_.clear_at) paint_triangle(y_of(meters));
    if (!content_.clear_at.empty()) paint_triangle(em * 1.25);
    painter.setPen(colours.ink);
    for (const SceneWords& words : this->words()) {
        painter.setFont(words.font);
        painter.drawText(words.box, words.flags, words.text);
    }
}

void WaterScene::paint_diver(QPainter& painter) const {
    const double em = scale_.em;
    const double y = y_of(shown_);
    const QRectF body = diver_box();
    painter.setPen(QPen(scale_.palette.ink, std::max(1.5, em * 0.07)));
    painter.drawLine(QPointF(mirrored() ? width() - scale_width * em : scale_width * em, y),
                     QPointF(body.center().x(), y));
    if (diver_->isValid()) diver_->render(&painter, body);
    if (!balloon_) return;
    const double full = balloon_side * em;
    const double wide = full * *balloon_;
    const QPointF centre(mirrored() ? full / 2.0 + em * 0.3 : width() - full / 2.0 - em * 0.3, y);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(scale_.palette.ink, std::max(1.0, em * 0.05), Qt::DashLine));
    painter.drawEllipse(centre, full / 2.0, full / 2.0);
    painter.setPen(QPen(Qt::black, std::max(1.5, em * 0.1)));
    painter.setBrush(Qt::white);
    painter.drawEllipse(centre, wide / 2.0, wide / 2.0);
}

void WaterScene::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(layoutDirection());
    paint_water(painter);
    paint_marks(painter);
    paint_diver(painter);
}

void WaterScene::mousePressEvent(QMouseEvent* event) {
    Q_EMIT depth_wanted(depth_at(event->position().y()));
}

void WaterScene::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton) Q_EMIT depth_wanted(depth_at(event->position().y()));
}

}  // namespace leadline
