// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/type_setting.h"

#include <QFontMetricsF>
#include <QHashFunctions>
#include <QTextBoundaryFinder>
#include <QTextLayout>
#include <QTextOption>
#include <algorithm>
#include <cmath>

#include "ui/guest_words/isolates.h"
#include "ui/guest_words/line_ends.h"

namespace leadline {
namespace {

constexpr double unbounded_mm = 1e5;
constexpr double size_step_points = 0.25;
// How far a line reaches above and below its baseline, in sizes of the type. For text: room for an
// accented capital and for a descender of Noto Sans; for figures: for their height and a comma.
struct Reach {
    double above;
    double below;
};
constexpr Reach text_reach{0.96, 0.27};
constexpr Reach digit_reach{0.76, 0.16};

Reach reach_of(const TextStyle& style) { return style.digits ? digit_reach : text_reach; }

// A grid unit or two: text is never said to be too wide for a rounding.
constexpr double tolerance_mm = 0.02;
constexpr std::size_t most_kept = 20000;

double lines_height(std::size_t lines, double points, const TextStyle& style) {
    const Reach reach = reach_of(style);
    const double between = lines > 0 ? static_cast<double>(lines - 1) : 0.0;
    return points * mm_per_point * (reach.above + reach.below + between * style.pitch);
}

bool opens_isolate(QChar one) {
    return one == left_to_right_isolate || one == right_to_left_isolate ||
           one == first_strong_isolate;
}

/// The isolate that a mark really opens: what comes behind its line's end decides no more.
QChar resolved(const QString& text, qsizetype opener) {
    if (text[opener] != first_strong_isolate) return text[opener];
    int depth = 0;
    for (qsizetype i = opener + 1; i < text.size(); ++i) {
        if (opens_isolate(text[i])) {
            ++depth;
        } else if (text[i] == pop_isolate) {
            if (--depth < 0) break;
        } else if (depth == 0) {
            const QChar::Direction direction = text[i].direction();
            if (direction == QChar::DirL) break;
            if (direction == QChar::DirR || direction == QChar::DirAL) return right_to_left_isolate;
        }
    }
    return left_to_right_isolate;
}

/// The isolates that stand open before a place, the outermost first.
QString open_isolates(const QString& text, qsizetype before) {
    QString open;
    for (qsizetype i = 0; i < before; ++i) {
        if (opens_isolate(text[i])) {
            open += resolved(text, i);
        } else if (text[i] == pop_isolate) {
            open.chop(1);
        }
    }
    return open;
}

/// A text whose isolates all end.
QString closed(const QString& text) {
    return text + QString(open_isolates(text, text.size()).size(), pop_isolate);
}

/// A part of a phrase without the spaces around it. It is drawn on its own, so the isolates in which
/// it stands are opened and closed in it: else a number would be turned around on a second line.
Phrase part_of(const Phrase& whole, qsizetype from, qsizetype length) {
    QString text = whole.text.mid(from, length);
    while (!text.isEmpty() && text.back().isSpace()) text.chop(1);
    const qsizetype bold = std::clamp<qsizetype>(whole.bold_letters - from, 0, text.size());
    const QString open = open_isolates(whole.text, from);
    return {closed(open + text), static_cast<int>(bold > 0 ? bold + open.size() : 0)};
}

double offset_of(Align align, double room, double width) {
    switch (align) {
        case Align::left: return 0.0;
        case Align::centre: return (room - width) / 2.0;
        case Align::right: return room - width;
    }
    return 0.0;
}

}  // namespace

QFont sheet_font(double points, bool bold, const Typeface& face) {
    // Figures and Latin letters are the same in every language; its own letters come from its own
    // typeface, and those that one lacks from its sisters before any other font.
    QFont font(QStringList{QStringLiteral("Noto Sans"), face.family,
                           QStringLiteral("Noto Sans Arabic"), QStringLiteral("Noto Sans CJK JP")});
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(static_cast<int>(std::lround(points * mm_per_point * units_per_mm)));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setBold(bold);
    // A hair of spacing keeps letters from being joined (fi, fl): readers and searches find the
    // words in the PDF. Scripts that run from right to left join theirs on purpose.
    if (!face.right_to_left) font.setLetterSpacing(QFont::AbsoluteSpacing, 0.5);
    return font;
}

double baseline_below_top(const TextStyle& style, double points) {
    return reach_of(style).above * points * mm_per_point;
}

Phrase phrase(const QString& head, const QString& text) {
    if (head.isEmpty()) return {text, 0};
    if (text.isEmpty()) return {head, static_cast<int>(head.size())};
    return {head + u' ' + text, static_cast<int>(head.size())};
}

namespace {

/// Ends a line earlier where it ends poorly and does not where a better end lies within it.
void end_well(QTextLine& line, const QString& text, const std::vector<qsizetype>& poor) {
    const int start = line.textStart();
    int end = start + line.textLength();
    if (end >= text.size() || !std::binary_search(poor.begin(), poor.end(), end)) return;
    QTextBoundaryFinder boundary(QTextBoundaryFinder::Line, text);
    boundary.setPosition(end);
    do {
        end = static_cast<int>(boundary.toPreviousBoundary());
    } while (end > start && std::binary_search(poor.begin(), poor.end(), end));
    if (end > start) line.setLineWidth(line.cursorToX(end) + 1.0);
}

}  // namespace

void apply_fonts(QTextLayout& layout, double points, bool bold, int bold_letters,
                 const Typeface& face) {
    layout.setFont(sheet_font(points, bold, face));
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    // Where a line starts is the layout's business, whichever way its letters run.
    option.setAlignment(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setTextDirection(face.right_to_left ? Qt::RightToLeft : Qt::LeftToRight);
    option.setUseDesignMetrics(true);
    layout.setTextOption(option);
    if (bold || bold_letters == 0) return;
    QTextLayout::FormatRange head;
    head.start = 0;
    head.length = bold_letters;
    head.format.setFont(sheet_font(points, true, face));
    layout.setFormats({head});
}

std::size_t TypeSetter::TaskHash::operator()(const Task& task) const {
    return qHashMulti(0, task.text, task.width, task.points, task.bold_letters, task.bold,
                      task.face.family);
}

const TypeSetter::Broken& TypeSetter::broken(const Phrase& phrase, double width, double points,
                                             bool bold, const Typeface& face) {
    Task task{phrase.text, width, points, phrase.bold_letters, bold, face};
    const auto found = known_.find(task);
    if (found != known_.end()) return found->second;
    if (known_.size() > most_kept) known_.clear();

    Broken result;
    QTextLayout layout(phrase.text);
    apply_fonts(layout, points, bold, phrase.bold_letters, face);
    QTextBoundaryFinder boundary(QTextBoundaryFinder::Line, phrase.text);
    const std::vector<qsizetype> poor = poor_line_ends(phrase.text);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width * units_per_mm);
        end_well(line, phrase.text, poor);
        const int end = line.textStart() + line.textLength();
        boundary.setPosition(end);
        result.inside_word = result.inside_word || !boundary.isAtBoundary();
        result.starts.push_back(line.textStart());
        result.lines.push_back(part_of(phrase, line.textStart(), line.textLength()));
        result.widths.push_back(line.naturalTextWidth() / units_per_mm);
    }
    layout.endLayout();
    return known_.emplace(std::move(task), std::move(result)).first->second;
}

TypeSetter::Broken TypeSetter::cut(const Phrase& phrase, const QRectF& frame,
                                   const TextStyle& style) {
    const double width = frame.width();
    Broken result = broken(phrase, width, style.least_points, style.bold, style.face);
    const double room =
        frame.height() + tolerance_mm - lines_height(1, style.least_points, style);
    const double pitch_mm = style.pitch * style.least_points * mm_per_point;
    const int in_height = 1 + static_cast<int>(std::max(0.0, std::floor(room / pitch_mm)));
    const auto kept = static_cast<std::size_t>(std::min(in_height, style.most_lines));
    if (result.lines.size() <= kept) return result;
    // The last line takes all that is left, shortened until its ellipsis fits.
    qsizetype from = result.starts[kept - 1];
    while (from < phrase.text.size() && phrase.text[from].isSpace()) ++from;
    Phrase last = part_of(phrase, from, phrase.text.size() - from);
    const bool bold = style.bold || last.bold_letters > 0;
    const QFontMetricsF metrics(sheet_font(style.least_points, bold, style.face));
    last.text = closed(metrics.elidedText(last.text, Qt::ElideRight, width * units_per_mm));
    last.bold_letters = std::min(last.bold_letters, static_cast<int>(last.text.size()));
    result.lines.resize(kept);
    result.widths.resize(kept);
    result.starts.resize(kept);
    result.lines.back() = last;
    result.widths.back() = this->width(last, style.least_points, style.bold, style.face);
    return result;
}

bool TypeSetter::fits(const Broken& set, const QRectF& frame, double points,
                      const TextStyle& style) const {
    return set.lines.size() <= static_cast<std::size_t>(style.most_lines) &&
           lines_height(set.lines.size(), points, style) <= frame.height() + tolerance_mm;
}

double TypeSetter::fitting_size(const Phrase& phrase, const QRectF& frame,
                                const TextStyle& style) {
    const auto good = [&](double points) {
        const Broken& set = broken(phrase, frame.width(), points, style.bold, style.face);
        return !set.inside_word && fits(set, frame, points, style);
    };
    if (style.points <= style.least_points || good(style.points)) return style.points;
    // Halving: what fits at a size fits at every smaller one.
    const auto size = [&](int steps) {
        return std::max(style.points - steps * size_step_points, style.least_points);
    };
    int too_large = 0;
    int smallest = static_cast<int>(
        std::ceil((style.points - style.least_points) / size_step_points - 1e-9));
    while (smallest - too_large > 1) {
        const int middle = (smallest + too_large) / 2;
        (good(size(middle)) ? smallest : too_large) = middle;
    }
    return size(smallest);
}

TextItem TypeSetter::set(const Phrase& phrase, const QRectF& frame, const TextStyle& style) {
    TextItem item;
    item.rect = frame;
    item.bold = style.bold;
    item.ink = style.ink;
    item.face = style.face;
    item.points = style.points;
    if (phrase.text.isEmpty()) return item;

    item.points = fitting_size(phrase, frame, style);
    const Broken& whole = broken(phrase, frame.width(), item.points, style.bold, style.face);
    item.elided = !fits(whole, frame, item.points, style);
    const Broken set = item.elided ? cut(phrase, frame, style) : whole;
    const double size = item.points * mm_per_point;
    double baseline = frame.top() + baseline_below_top(style, style.most_lines == 1 ? style.points
                                                                                   : item.points);
    if (style.middle) {
        const double height = lines_height(set.lines.size(), item.points, style);
        baseline = frame.top() + (frame.height() - height) / 2.0 +
                   baseline_below_top(style, item.points);
    }
    for (std::size_t i = 0; i < set.lines.size(); ++i) {
        item.lines.push_back({set.lines[i].text,
                              frame.left() + offset_of(style.align, frame.width(), set.widths[i]),
                              baseline, set.lines[i].bold_letters, set.widths[i]});
        baseline += style.pitch * size;
    }
    return item;
}

double TypeSetter::height(const Phrase& phrase, double width, double points,
                          const TextStyle& style) {
    if (phrase.text.isEmpty()) return 0.0;
    return lines_height(broken(phrase, width, points, style.bold, style.face).lines.size(), points, style);
}

TypeSetter::LineCount TypeSetter::lines(const Phrase& phrase, double width, double points,
                                        const TextStyle& style) {
    const Broken& set = broken(phrase, width, points, style.bold, style.face);
    return {static_cast<int>(set.lines.size()), set.inside_word};
}

double TypeSetter::width(const Phrase& phrase, double points, bool bold, const Typeface& face) {
    const Broken& one = broken(phrase, unbounded_mm, points, bold, face);
    return one.widths.empty() ? 0.0 : one.widths.front();
}

}  // namespace leadline
