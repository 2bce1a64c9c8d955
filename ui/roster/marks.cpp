// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/marks.h"

#include <QPainter>
#include <QPen>
#include <QPixmap>

#include "ui/widgets/theme.h"

namespace leadline {
namespace {

QIcon drawn(Mark mark, const QPalette& palette) {
    constexpr int side = 48;
    QPixmap pixmap(side, side);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    const Inks colours = inks(palette);
    if (mark == Mark::done) {
        painter.setPen(QPen(colours.accent, 6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(QPolygonF({{9, 26}, {20, 37}, {40, 12}}));
    } else {
        QPen pen(colours.stop, 5);
        pen.setDashPattern({1.6, 1.2});
        painter.setPen(pen);
        painter.drawEllipse(QRectF(8, 8, 32, 32));
    }
    painter.end();
    return QIcon(pixmap);
}

/// The same shape in a selected row: styles would tint it beyond recognition.
QIcon untinted(QIcon icon) {
    for (const QSize& size : icon.availableSizes()) {
        icon.addPixmap(icon.pixmap(size), QIcon::Selected);
    }
    return icon;
}

}  // namespace

QIcon mark_icon(Mark mark, const QPalette& palette) {
    switch (mark) {
        case Mark::none: return {};
        case Mark::done:
        case Mark::open: return untinted(drawn(mark, palette));
        case Mark::note: return untinted(severity_icon(Severity::note, palette));
        case Mark::caution: return untinted(severity_icon(Severity::caution, palette));
        case Mark::stop: return untinted(severity_icon(Severity::stop, palette));
    }
    return {};
}

Mark mark_of(Severity severity) {
    switch (severity) {
        case Severity::stop: return Mark::stop;
        case Severity::caution: return Mark::caution;
        case Severity::note: return Mark::note;
    }
    return Mark::none;
}

Mark mark_of(ScreeningOutcome outcome) {
    switch (outcome) {
        case ScreeningOutcome::clear: return Mark::done;
        case ScreeningOutcome::unanswered: return Mark::open;
        case ScreeningOutcome::physician_required:
        case ScreeningOutcome::does_not_dive: return Mark::stop;
    }
    return Mark::open;
}

Mark mark_of(TodayOutcome outcome) {
    switch (outcome) {
        case TodayOutcome::clear: return Mark::done;
        case TodayOutcome::unanswered: return Mark::open;
        case TodayOutcome::with_care: return Mark::caution;
        case TodayOutcome::not_today: return Mark::stop;
    }
    return Mark::open;
}

}  // namespace leadline
