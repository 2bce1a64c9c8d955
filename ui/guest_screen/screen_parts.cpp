// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/screen_parts.h"

#include <QKeyEvent>
#include <QLayout>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <algorithm>

#include "ui/guest_words/isolates.h"
#include "ui/guest_words/line_ends.h"

namespace leadline {
namespace {

constexpr double button_padding_ems = 0.5;
constexpr double layout_spacing_ems = 0.5;
constexpr double tile_margin_ems = 0.5;
constexpr int word_flags = static_cast<int>(Qt::TextWordWrap) | static_cast<int>(Qt::AlignCenter);

double factor_of(TextRole role) {
    switch (role) {
        case TextRole::shout:
            return 2.2;
        case TextRole::title:
            return 1.7;
        case TextRole::heading:
            return 1.2;
        case TextRole::body:
            return 1.0;
        case TextRole::small:
            return 0.8;
    }
    return 1.0;
}

int px(const TypeScale& scale, double ems) {
    return std::max(1, qRound(scale.em * ems));
}

void scale_layout(QLayout* layout, const TypeScale& scale) {
    if (layout == nullptr) return;
    layout->setSpacing(px(scale, layout_spacing_ems));
    for (int k = 0; k < layout->count(); ++k) {
        QLayoutItem* item = layout->itemAt(k);
        scale_layout(item->layout(), scale);
    }
    layout->invalidate();
}

}  // namespace

QFont scaled_font(const TypeScale& scale, TextRole role) {
    QFont font(scale.family);
    font.setPixelSize(px(scale, factor_of(role)));
    font.setBold(role == TextRole::shout || role == TextRole::title || role == TextRole::heading);
    return font;
}

void scale_all(QWidget& root, const TypeScale& scale) {
    // Innermost first, so that every layout counts with sizes that are up to date.
    for (QObject* child : root.children()) {
        if (auto* widget = qobject_cast<QWidget*>(child)) {
            if (!widget->isWindow()) scale_all(*widget, scale);
        }
    }
    scale_layout(root.layout(), scale);
    if (auto* part = dynamic_cast<ScaledPart*>(&root)) part->set_scale(scale);
}

GuestLabel::GuestLabel(TextRole role, TextInk ink, QWidget* parent)
    : QLabel(parent), role_(role), ink_(ink) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setMargin(0);
    setIndent(0);
}

void GuestLabel::setText(const QString& words) {
    words_ = words;
    show_words();
}

void GuestLabel::show_words() {
    QString shown = with_good_line_ends(words_);
    // QLabel takes the direction from the first letter outside isolates. Names and figures stand in
    // isolates: a line of nothing else would run from left to right on every page.
    if (!shown.isEmpty() && shown.isRightToLeft() != isRightToLeft()) {
        shown.prepend(isRightToLeft() ? right_to_left_mark : left_to_right_mark);
    }
    QLabel::setText(shown);
    // Read aloud as they were said.
    setAccessibleName(shown == words_ ? QString() : words_);
}

void GuestLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::LayoutDirectionChange) show_words();
}

void GuestLabel::set_scale(const TypeScale& scale) {
    palette_ = scale.palette;
    const QFont wanted = scaled_font(scale, role_);
    if (font() != wanted) setFont(wanted);
    take_colour();
    // A name in another script stands on the side from which the page is read.
    if ((alignment() & Qt::AlignHCenter) == 0) {
        setAlignment((isRightToLeft() ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignAbsolute |
                     (alignment() & Qt::AlignVertical_Mask));
    }
}

QSize GuestLabel::sizeHint() const {
    return narrow_ ? QLabel::minimumSizeHint() : QLabel::sizeHint();
}

void GuestLabel::set_ink(TextInk ink) {
    ink_ = ink;
    take_colour();
}

void GuestLabel::take_colour() {
    QColor colour = palette_.ink;
    if (ink_ == TextInk::quiet) colour = palette_.quiet;
    if (ink_ == TextInk::accent) colour = palette_.accent;
    if (ink_ == TextInk::warn) colour = palette_.warn;
    if (ink_ == TextInk::on_warn) colour = palette_.on_warn;
    if (palette().color(QPalette::WindowText) == colour) return;
    QPalette shown = palette();
    shown.setColor(QPalette::WindowText, colour);
    setPalette(shown);
}

GuestButton::GuestButton(QWidget* parent) : QPushButton(parent) {
    // Reached by Tab; a click must not take Space, the presenter's key, away from the pages.
    setFocusPolicy(Qt::TabFocus);
    setAutoDefault(false);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void GuestButton::set_scale(const TypeScale& scale) {
    scale_ = scale;
    const QFont wanted = scaled_font(scale, TextRole::body);
    if (font() != wanted) setFont(wanted);
    update();
}

void GuestButton::set_strong(bool strong) {
    if (strong_ == strong) return;
    strong_ = strong;
    update();
}

int GuestButton::padding() const {
    return px(scale_, button_padding_ems);
}

QRect GuestButton::words_rect(int width) const {
    constexpr int any_height = 10000;
    return fontMetrics().boundingRect(QRect(0, 0, std::max(1, width - 2 * padding()), any_height),
                                      word_flags, text());
}

QSize GuestButton::sizeHint() const {
    const int wide = fontMetrics().horizontalAdvance(text()) + 2 * padding() + 4;
    return {wide, fontMetrics().height() + 2 * padding()};
}

QSize GuestButton::minimumSizeHint() const {
    int widest = 0;
    static const QRegularExpression breaks(QStringLiteral("(?<=-)|[ \\x{200B}]"));
    for (const QString& word : text().split(breaks)) {
        widest = std::max(widest, fontMetrics().horizontalAdvance(word));
    }
    return {widest + 2 * padding() + 4, fontMetrics().height() + 2 * padding()};
}

int GuestButton::heightForWidth(int width) const {
    return words_rect(width).height() + 2 * padding();
}

bool GuestButton::words_fit() const {
    const QRect needed = words_rect(width());
    return needed.width() <= width() - padding() && needed.height() <= height() - padding() / 2;
}

void GuestButton::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const ScreenPalette& colours = scale_.palette;
    const bool filled = strong_ || isChecked() || isDown();
    const double line = std::max(1.0, scale_.em * 0.07);
    const double radius = scale_.em * 0.35;
    QRectF box = QRectF(rect()).adjusted(line, line, -line, -line);
    if (hasFocus()) {
        painter.setPen(QPen(colours.ink, line * 1.6));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, radius, radius);
        const double gap = line * 2.0;
        box.adjust(gap, gap, -gap, -gap);
    }
    const QColor edge = isEnabled() ? colours.accent : colours.rule;
    painter.setPen(QPen(edge, line, isEnabled() ? Qt::SolidLine : Qt::DotLine));
    painter.setBrush(filled && isEnabled() ? colours.accent : colours.panel);
    painter.drawRoundedRect(box, radius, radius);
    painter.setPen(filled && isEnabled() ? colours.on_accent
                                         : (isEnabled() ? colours.ink : colours.quiet));
    painter.setFont(font());
    painter.drawText(rect().adjusted(padding() / 2, 0, -padding() / 2, 0), word_flags, text());
}

void GuestButton::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
        case Qt::Key_Right:
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_PageUp:
        case Qt::Key_PageDown:
        case Qt::Key_Escape:
            event->ignore();
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            click();
            return;
        default:
            QPushButton::keyPressEvent(event);
    }
}

PictureView::PictureView(double ems, QWidget* parent)
    : QWidget(parent), ems_(ems), renderer_(std::make_unique<QSvgRenderer>()) {}

PictureView::~PictureView() = default;

void PictureView::set_picture(const QString& path) {
    if (path == path_) return;
    path_ = path;
    if (path_ == QLatin1String(clock_picture)) return update();
    renderer_->load(path);
    renderer_->setAspectRatioMode(Qt::KeepAspectRatio);
    update();
}

bool PictureView::is_drawn() const {
    return path_ == QLatin1String(clock_picture) || renderer_->isValid();
}

void PictureView::set_scale(const TypeScale& scale) {
    scale_ = scale;
    const int side = px(scale, ems_);
    setFixedSize(side, side);
    update();
}

void PictureView::paintEvent(QPaintEvent* /*event*/) {
    if (!is_drawn()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double radius = scale_.em * 0.25;
    // Outside a tile the ground gets a tile's edge.
    const bool in_tile = qobject_cast<const ScreenTile*>(parentWidget()) != nullptr;
    const double line = in_tile ? 0.0 : std::max(1.0, scale_.em * 0.05);
    painter.setPen(in_tile ? QPen(Qt::NoPen) : QPen(scale_.palette.rule, line));
    painter.setBrush(scale_.palette.picture);
    painter.drawRoundedRect(QRectF(rect()).adjusted(line, line, -line, -line), radius, radius);
    const double margin = width() * 0.06;
    if (path_ == QLatin1String(clock_picture)) {
        const QRectF face =
            QRectF(rect()).adjusted(2 * margin, 2 * margin, -2 * margin, -2 * margin);
        painter.setPen(QPen(Qt::black, width() * 0.05, Qt::SolidLine, Qt::RoundCap));
        painter.drawEllipse(face);
        painter.drawLine(face.center(), face.center() - QPointF(0, face.height() * 0.34));
        painter.drawLine(face.center(), face.center() + QPointF(face.width() * 0.24, 0));
        return;
    }
    renderer_->render(&painter, QRectF(rect()).adjusted(margin, margin, -margin, -margin));
}

ScreenTile::ScreenTile(QWidget* parent, bool warns) : QFrame(parent), warns_(warns) {}

void ScreenTile::set_scale(const TypeScale& scale) {
    scale_ = scale;
    const int margin = px(scale, tile_margin_ems);
    if (layout() != nullptr) layout()->setContentsMargins(margin, margin, margin, margin);
    update();
}

void ScreenTile::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = std::max(1.0, scale_.em * 0.05);
    const double radius = scale_.em * 0.4;
    painter.setPen(warns_ ? QPen(Qt::NoPen) : QPen(scale_.palette.rule, line));
    painter.setBrush(warns_ ? scale_.palette.warn : scale_.palette.panel);
    painter.drawRoundedRect(QRectF(rect()).adjusted(line, line, -line, -line), radius, radius);
}

}  // namespace leadline
