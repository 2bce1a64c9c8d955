// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/theme.h"

#include <QApplication>
#include <QFont>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

#include "ui/widgets/marks_style.h"

namespace leadline {
namespace {

QPalette light_palette() {
    QPalette palette;
    const QColor paper(0xF6, 0xF3, 0xEC);
    const QColor sheet(0xFF, 0xFE, 0xFB);
    const QColor ink(0x1C, 0x24, 0x2B);
    const QColor accent(0x0E, 0x57, 0x6B);
    palette.setColor(QPalette::Window, paper);
    palette.setColor(QPalette::WindowText, ink);
    palette.setColor(QPalette::Base, sheet);
    palette.setColor(QPalette::AlternateBase, QColor(0xFA, 0xF7, 0xF1));
    palette.setColor(QPalette::Text, ink);
    palette.setColor(QPalette::PlaceholderText, QColor(0x6B, 0x70, 0x72));
    palette.setColor(QPalette::Button, QColor(0xEC, 0xE7, 0xDC));
    palette.setColor(QPalette::ButtonText, ink);
    palette.setColor(QPalette::BrightText, Qt::white);
    palette.setColor(QPalette::Highlight, accent);
    palette.setColor(QPalette::HighlightedText, Qt::white);
    palette.setColor(QPalette::Link, accent);
    palette.setColor(QPalette::ToolTipBase, sheet);
    palette.setColor(QPalette::ToolTipText, ink);
    palette.setColor(QPalette::Mid, QColor(0xC9, 0xC3, 0xB6));
    const QColor greyed(0x8A, 0x8B, 0x86);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, greyed);
    }
    return palette;
}

QPalette dark_palette() {
    QPalette palette;
    const QColor paper(0x1B, 0x20, 0x24);
    const QColor sheet(0x22, 0x28, 0x2D);
    const QColor ink(0xE9, 0xE6, 0xDD);
    const QColor accent(0x2A, 0x7F, 0x97);
    palette.setColor(QPalette::Window, paper);
    palette.setColor(QPalette::WindowText, ink);
    palette.setColor(QPalette::Base, sheet);
    palette.setColor(QPalette::AlternateBase, QColor(0x27, 0x2E, 0x33));
    palette.setColor(QPalette::Text, ink);
    palette.setColor(QPalette::PlaceholderText, QColor(0x9A, 0x9E, 0x9C));
    palette.setColor(QPalette::Button, QColor(0x2D, 0x35, 0x3B));
    palette.setColor(QPalette::ButtonText, ink);
    palette.setColor(QPalette::BrightText, Qt::white);
    palette.setColor(QPalette::Highlight, accent.darker(120));
    palette.setColor(QPalette::HighlightedText, Qt::white);
    palette.setColor(QPalette::Link, QColor(0x74, 0xC3, 0xD8));
    palette.setColor(QPalette::ToolTipBase, sheet);
    palette.setColor(QPalette::ToolTipText, ink);
    palette.setColor(QPalette::Mid, QColor(0x4A, 0x53, 0x59));
    // Fusion draws edges with these; left alone they would stay the light look's.
    palette.setColor(QPalette::Light, QColor(0x4A, 0x53, 0x59));
    palette.setColor(QPalette::Midlight, QColor(0x3A, 0x43, 0x49));
    palette.setColor(QPalette::Dark, QColor(0x12, 0x16, 0x19));
    palette.setColor(QPalette::Shadow, QColor(0x0A, 0x0D, 0x0F));
    const QColor greyed(0x7E, 0x83, 0x84);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, greyed);
    }
    return palette;
}

}  // namespace

void apply_theme(QApplication& application, Shade shade) {
    QApplication::setStyle(new MarksStyle);
    QFont font(QStringLiteral("Noto Sans"));
    constexpr double comfortable_points = 10.5;  // read at arm's length
    font.setPointSizeF(comfortable_points);
    QApplication::setFont(font);
    QApplication::setPalette(shade == Shade::light ? light_palette() : dark_palette());
    application.setStyleSheet(QStringLiteral("QToolTip { padding: 4px; }"));
}

Shade shade_of(const QPalette& palette) {
    return palette.color(QPalette::Base).lightness() < 128 ? Shade::dark : Shade::light;
}

Inks inks(const QPalette& palette) {
    if (shade_of(palette) == Shade::light) {
        return {QColor(0x0E, 0x57, 0x6B), QColor(0xA3, 0x1F, 0x1F), QColor(0x8A, 0x55, 0x00),
                QColor(0x3D, 0x5A, 0x6B), QColor(0x5C, 0x62, 0x65), QColor(0xD6, 0xD0, 0xC4),
                QColor(0xD9, 0xE8, 0xEA)};
    }
    return {QColor(0x74, 0xC3, 0xD8), QColor(0xFF, 0x8A, 0x80), QColor(0xF0, 0xB4, 0x55),
            QColor(0x9C, 0xBE, 0xD0), QColor(0xAE, 0xB3, 0xB1), QColor(0x46, 0x4F, 0x55),
            QColor(0x23, 0x3B, 0x44)};
}

namespace {

/// The shape in one ink, its inner mark in another.
QPixmap severity_shape(Severity severity, const QColor& ink, const QColor& mark) {
    constexpr int side = 48;
    QPixmap pixmap(side, side);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    switch (severity) {
        case Severity::stop:
            painter.drawRoundedRect(QRectF(6, 6, 36, 36), 5, 5);
            painter.setBrush(mark);
            painter.drawRect(QRectF(14, 20, 20, 8));
            break;
        case Severity::caution: {
            QPainterPath triangle;
            triangle.moveTo(24, 5);
            triangle.lineTo(45, 42);
            triangle.lineTo(3, 42);
            triangle.closeSubpath();
            painter.drawPath(triangle);
            painter.setBrush(mark);
            painter.drawRect(QRectF(21.5, 17, 5, 13));
            painter.drawRect(QRectF(21.5, 33, 5, 5));
            break;
        }
        case Severity::note:
            painter.setPen(QPen(ink, 5));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(QRectF(8, 8, 32, 32));
            break;
    }
    return pixmap;
}

}  // namespace

QIcon severity_icon(Severity severity, const QPalette& palette) {
    const Inks colours = inks(palette);
    QColor ink = colours.note;
    if (severity == Severity::stop) ink = colours.stop;
    if (severity == Severity::caution) ink = colours.caution;
    QIcon icon(severity_shape(severity, ink, palette.color(QPalette::Base)));
    // On a selected row the ink would drown in the highlight.
    icon.addPixmap(severity_shape(severity, palette.color(QPalette::HighlightedText),
                                  palette.color(QPalette::Highlight)),
                   QIcon::Selected);
    return icon;
}

}  // namespace leadline
