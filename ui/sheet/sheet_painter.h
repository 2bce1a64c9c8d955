// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QString>
#include <map>
#include <memory>
#include <tuple>

#include "ui/sheet/layout.h"

class QPainter;
class QSvgRenderer;
class QTextLayout;

namespace leadline {

/// The colour of an ink on white paper.
QColor ink_colour(Ink ink);

/// Draws laid-out pages: the one painter for the preview, the printer and the PDF. Decides nothing:
/// what is on the page, and where, is in the page. Keeps the pictures it has read and the lines it has
/// shaped, for the next card has most of them again.
class SheetPainter {
public:
    SheetPainter();
    ~SheetPainter();
    SheetPainter(const SheetPainter&) = delete;
    SheetPainter& operator=(const SheetPainter&) = delete;

    /// Draws a page with its top left corner at the painter's origin. The paper itself is not
    /// painted.
    /// @param pixels_per_mm  units of the painter to a millimetre, > 0
    /// @param pictures  whether pictures and QR codes are drawn; the PDF puts them in by itself
    void paint(QPainter& painter, const Page& page, double pixels_per_mm, bool pictures = true);

private:
    void draw(QPainter& painter, const TextItem& item);
    void draw(QPainter& painter, const LineItem& item);
    void draw(QPainter& painter, const RectItem& item);
    void draw(QPainter& painter, const PictureItem& item);
    void draw(QPainter& painter, const QrItem& item);
    /// Text, size, bold, letters that are bold, family, whether it runs from right to left.
    using LineKey = std::tuple<QString, double, bool, int, QString, bool>;
    const QTextLayout& shaped(const TextItem& item, const TextLine& line);
    std::map<QString, std::unique_ptr<QSvgRenderer>> pictures_;
    std::map<LineKey, std::unique_ptr<QTextLayout>> lines_;
};

}  // namespace leadline
