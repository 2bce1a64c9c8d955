// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <vector>

#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"

namespace leadline {

/// The least type on any of the instructor's sheets.
inline constexpr double least_sheet_points = 8.0;
/// What printers leave blank, and room for a thumb.
inline constexpr double sheet_margin = 8.0;

/// How text is set on a sheet. Fields as those of TextStyle.
struct SheetStyle {
    double points = 9.0;
    bool bold = false;
    int most_lines = 1;
    Align align = Align::left;
    bool middle = false;
    Ink ink = Ink::black;
    double least = least_sheet_points;
    Typeface face{};
};

/// Draws the parts that all sheets are made of onto a page, in millimetres.
class SheetPen {
public:
    /// @param page  its paper decides the frame; the frame is added to the page
    SheetPen(TypeSetter& setter, Page& page);

    /// Within the margins.
    [[nodiscard]] const QRectF& frame() const { return frame_; }

    /// @returns whether it ends in an ellipsis, as it did not fit
    bool text(const QString& words, const QRectF& frame, const SheetStyle& style = {});
    bool text(const Phrase& phrase, const QRectF& frame, const SheetStyle& style = {});
    /// Height of a text broken at a width [mm].
    double height(const Phrase& phrase, double width, double points, bool bold = false,
                  const Typeface& face = {});
    double width(const QString& words, double points, bool bold = false,
                 const Typeface& face = {});
    /// Width below which a word of the text would have to be broken [mm].
    double widest_word(const QString& words, double points, bool bold = false);

    void line(double x1, double y1, double x2, double y2, double width = 0.2,
              Ink ink = Ink::black);
    /// From edge to edge of the frame.
    void rule(double y, double width = 0.2, Ink ink = Ink::black);
    void box(const QRectF& rect, double width = 0.25, double corner = 0.0);
    void filled(const QRectF& rect, double corner = 0.0);
    void picture(const QString& name, const QRectF& rect);
    /// An empty box to tick, in the middle of `cell`.
    void tick(const QRectF& cell, double side = 4.5);
    /// A line to write on along the foot of `cell`.
    void blank(const QRectF& cell);

private:
    TypeSetter& setter_;
    Page& page_;
    QRectF frame_;
};

/// Height kept at the foot of a sheet.
inline constexpr double sheet_foot_height = 9.2;
/// What the sheet is, for whom, and the session; @returns where the sheet's own matter begins.
double set_sheet_title(SheetPen& pen, const QString& what, const QString& whose,
                       const QString& session);
/// What the sheet is not, and the page; @returns where the foot begins.
double set_sheet_foot(SheetPen& pen, const QString& standing, const QString& number);

/// Columns side by side: widths by weight, with room between.
/// @returns the cells of a row at `top`
std::vector<QRectF> columns(const QRectF& row, const std::vector<double>& widths,
                            double gap = 1.5);

}  // namespace leadline
