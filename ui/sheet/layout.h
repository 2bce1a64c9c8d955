// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
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

/// In which letters a text is set, and which way it runs.
struct Typeface {
    QString family = QStringLiteral("Noto Sans");
    bool right_to_left = false;
    friend bool operator==(const Typeface&, const Typeface&) = default;
};

/// One line of text, placed. Already broken: whoever draws it never breaks lines.
struct TextLine {
    QString text;
    double left = 0.0;      ///< of the line's left end, whichever way it runs [mm]
    double baseline = 0.0;  ///< [mm]
    int bold_letters = 0;   ///< so many letters from the start are bold
    double width = 0.0;     ///< as measured when it was set [mm]
    friend bool operator==(const TextLine&, const TextLine&) = default;
};

struct TextItem {
    QRectF rect;          ///< the frame that the text keeps to
    double points = 8.0;  ///< size of the type
    bool bold = false;
    Ink ink = Ink::black;
    Typeface face;
    std::vector<TextLine> lines;
    bool elided = false;  ///< the text did not fit and ends in an ellipsis
    bool broken_word = false;  ///< a word was longer than a line; noted on the instructor's sheets
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

/// A QR code. `rect` holds the dark and light fields only; whoever lays it out leaves a margin of four
/// fields around it white, as ISO/IEC 18004:2015 section 6.3.8 asks for (from memory).
struct QrItem {
    QRectF rect;
    int side = 0;          ///< fields in a row
    QByteArray fields;     ///< side * side, row by row from the top left; 1: dark
    friend bool operator==(const QrItem&, const QrItem&) = default;
};

using SheetItem = std::variant<TextItem, LineItem, RectItem, PictureItem, QrItem>;

enum class Paper { a4, letter, a5, a6 };

/// Size of the paper, upright [mm]. ISO 216: A4 210 x 297, A5 148 x 210, A6 105 x 148; Letter: 8.5 x
/// 11 in (ANSI Y14.1).
QSizeF paper_size(Paper paper);

/// A sheet of paper. `frames` are the cards on it (or the one frame of a whole-page sheet).
struct Page {
    Paper paper = Paper::a4;
    bool landscape = false;  ///< lies on its long side
    std::vector<QRectF> frames;
    std::vector<QRectF> too_full;  ///< of these, the cards whose fixed words lack room
    std::vector<SheetItem> items;
    friend bool operator==(const Page&, const Page&) = default;
};

/// Size of a page as it is read, lying or upright [mm].
QSizeF page_size(const Page& page);

/// Frame of any item.
QRectF rect_of(const SheetItem& item);

/// Moves, scales and, about the frame's upright axis, mirrors what was laid out: for larger cards, and
/// for languages that run from right to left. Lines of text and pictures keep their own direction.
/// @param items  laid out in `from`
/// @param to  where they go; its width to `from`'s is the scale of everything, type too
void place(std::vector<SheetItem>& items, const QRectF& from, const QRectF& to, bool mirrored);

/// A text that ends in an ellipsis, for it lacked room.
struct CutText {
    QString shown;  ///< what is left of it, ellipsis and all
    friend bool operator==(const CutText&, const CutText&) = default;
};

/// What was cut on a page; empty: all stands there. To be said before anything is printed, with the
/// advice to shorten it.
std::vector<CutText> cut_texts(const Page& page);

/// The page's words, a line each, in the order drawn.
QStringList words_on(const Page& page);

}  // namespace leadline
