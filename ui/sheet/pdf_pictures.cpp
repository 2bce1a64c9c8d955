// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/pdf_pictures.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgRenderer>
#include <set>

namespace leadline {
namespace {

constexpr double points_per_inch = 72.0;

}  // namespace

QStringList pictures_on(const std::vector<Page>& pages) {
    std::set<QString> names;
    for (const Page& page : pages) {
        for (const SheetItem& item : page.items) {
            if (const auto* picture = std::get_if<PictureItem>(&item)) names.insert(picture->name);
        }
    }
    return {names.begin(), names.end()};
}

QByteArray picture_pages(const QStringList& names) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (names.isEmpty() || !buffer.open(QIODevice::WriteOnly)) return {};
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(pdf_dots_per_inch);
    const QPageSize square(QSize(picture_page_points, picture_page_points), QString(),
                           QPageSize::ExactMatch);
    writer.setPageLayout(QPageLayout(square, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
    QPainter painter;
    if (!painter.begin(&writer)) return {};
    const double side = picture_page_points * pdf_dots_per_inch / points_per_inch;
    for (qsizetype i = 0; i < names.size(); ++i) {
        if (i > 0 && !writer.newPage()) return {};
        QSvgRenderer picture(names[i]);
        if (picture.isValid()) picture.render(&painter, QRectF(0.0, 0.0, side, side));
    }
    if (!painter.end()) return {};
    return bytes;
}

}  // namespace leadline
