// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>
#include <unordered_map>
#include <vector>

#include "ui/sheet/layout.h"

class QTextLayout;

namespace leadline {

/// Type is measured and drawn on a grid of a hundredth of a millimetre, without hinting, whatever
/// the screen or printer: so the preview, the printer and the PDF break every line alike.
inline constexpr double units_per_mm = 100.0;
/// A point of type, 1/72 in [mm].
inline constexpr double mm_per_point = 25.4 / 72.0;

/// A typeface at a size, in units of the grid; where it is not installed, what the system puts in its
/// place. Letters it lacks are taken from other fonts.
QFont sheet_font(double points, bool bold, const Typeface& face = {});

/// Text whose first letters may be bold: the word by which it is found.
struct Phrase {
    QString text;
    int bold_letters = 0;
};
/// "Ears. Clear them ...", the head in bold.
Phrase phrase(const QString& head, const QString& text);

/// Gives a text layout the fonts of a phrase. Both measuring and drawing go through here.
void apply_fonts(QTextLayout& layout, double points, bool bold, int bold_letters,
                 const Typeface& face);

enum class Align { left, centre, right };

/// How a piece of text is to be set.
struct TextStyle {
    double points = 8.0;        ///< wanted
    double least_points = 8.0;  ///< shrinks to this before it is cut
    bool bold = false;
    Align align = Align::left;
    Ink ink = Ink::black;
    int most_lines = 1;
    double pitch = 1.22;  ///< from line to line, in sizes of the type
    bool middle = false;  ///< stands in the middle of the frame's height, not at its top
    bool digits = false;  ///< figures only: the frame leaves out room for accents and descenders
    Typeface face{};
};

/// How far the first baseline lies below the top of a frame [mm].
double baseline_below_top(const TextStyle& style, double points);

/// Sets text into frames. Keeps what it has measured, so that a day's cards, which share most of
/// their words, are set quickly. Not for use by several threads at once.
class TypeSetter {
public:
    /// Sets a phrase into a frame: at the wanted size where it fits, smaller where it must, and cut
    /// with an ellipsis where even the least size is too large. The text hangs from the top of the
    /// frame; a single line that had to shrink stays on the baseline it would have had. The item's
    /// frame is `frame`.
    TextItem set(const Phrase& phrase, const QRectF& frame, const TextStyle& style);

    /// Height that a phrase takes when broken at a width [mm].
    double height(const Phrase& phrase, double width, double points, const TextStyle& style);

    /// Lines that a phrase takes when broken at a width, and whether a word was longer than a line.
    struct LineCount {
        int lines = 0;
        bool inside_word = false;
    };
    LineCount lines(const Phrase& phrase, double width, double points, const TextStyle& style);

    /// Width of a phrase on one line [mm].
    double width(const Phrase& phrase, double points, bool bold, const Typeface& face = {});

private:
    struct Broken {
        std::vector<Phrase> lines;
        std::vector<double> widths;   ///< of each line [mm]
        std::vector<qsizetype> starts;  ///< of each line, in the whole text
        bool inside_word = false;     ///< a word was longer than a line
    };
    /// What has been broken before is found by all that decides about it.
    struct Task {
        QString text;
        double width;
        double points;
        int bold_letters;
        bool bold;
        Typeface face;
        friend bool operator==(const Task&, const Task&) = default;
    };
    struct TaskHash {
        std::size_t operator()(const Task& task) const;
    };
    const Broken& broken(const Phrase& phrase, double width, double points, bool bold,
                         const Typeface& face);
    [[nodiscard]] bool fits(const Broken& set, const QRectF& frame, double points,
                            const TextStyle& style) const;
    /// The largest size, down from the wanted one, at which the phrase fits without a broken word;
    /// the least size where there is none.
    double fitting_size(const Phrase& phrase, const QRectF& frame, const TextStyle& style);
    /// At the least size, as many lines as the frame holds, the last with an ellipsis.
    Broken cut(const Phrase& phrase, const QRectF& frame, const TextStyle& style);
    std::unordered_map<Task, Broken, TaskHash> known_;
};

}  // namespace leadline
