// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <variant>
#include <vector>

namespace leadline {

// What is drawn on a page: plain values in millimetres from the page's top left corner. Made by a
// layout, drawn by the SheetPainter, and read as text by the tests. Everything is black, white or a
// grey hairline, so that any printer will do.

enum class Ink {
    black,
    white,  ///< on a black field
    grey,   ///< hairlines only, never text
};

/// One line of text, placed. Already broken: whoever draws it never breaks lines.
struct TextLine {
    QString text;
    double left = 0.0;      ///< of the line's start [mm]
    double baseline = 0.0;  ///< [mm]
    int bold_letters = 0;   ///< so many letters from the start are bold
    friend bool operator==(const TextLine&, const TextLine&) = default;
};

struct TextItem {
    QRectF rect;          ///< the frame that the text keeps to
    double points = 8.0;  ///< size of the type
    bool bold = false;
    Ink ink = Ink::black;
    std::vector<TextLine> lines;
    bool elided = false;  ///< the text did not fit and ends in an ellipsis
    friend bool operator==(const TextItem&, const TextItem&) = default;
};

struct LineItem {
    QLineF line;
    double width = 0.2;
    Ink ink = Ink::black;
    [[nodiscard]] QRectF rect() const {
        return QRectF(line.p1(), line.p2())
            .normalized()
            .adjusted(-width / 2, -width / 2, width / 2, width / 2);
    }
    friend bool operator==(const LineItem&, const LineItem&) = default;
};

/// A box, filled or drawn as an outline inside `rect`.
struct RectItem {
    QRectF rect;
    double corner = 0.0;  ///< radius of the corners
    double width = 0.0;   ///< of the outline; 0: filled
    Ink ink = Ink::black;
    friend bool operator==(const RectItem&, const RectItem&) = default;
};

/// A vector drawing that fills `rect`.
struct PictureItem {
    QRectF rect;
    QString name;  ///< resource path of an SVG
    friend bool operator==(const PictureItem&, const PictureItem&) = default;
};

using SheetItem = std::variant<TextItem, LineItem, RectItem, PictureItem>;

enum class Paper { a4, letter };

/// Size of the paper, upright [mm]. ISO 216 A4: 210 x 297; Letter: 8.5 x 11 in (ANSI Y14.1).
QSizeF paper_size(Paper paper);

/// A sheet of paper, upright. `frames` are the cards on it (or the one frame of a whole-page sheet).
struct Page {
    Paper paper = Paper::a4;
    std::vector<QRectF> frames;
    std::vector<SheetItem> items;
    friend bool operator==(const Page&, const Page&) = default;
};

/// Frame of any item.
QRectF rect_of(const SheetItem& item);

/// The page's words, a line each, in the order drawn.
QStringList words_on(const Page& page);

}  // namespace leadline
