// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/missing_letters.h"

#include <QGlyphRun>
#include <QTextBoundaryFinder>
#include <QTextLayout>
#include <algorithm>

#include "ui/sheet/type_setting.h"

namespace leadline {
namespace {

constexpr double endless = 1e7;

/// Letters that need no shape of their own: spaces and what only directs other letters.
bool is_silent(const QString& letter) {
    return std::all_of(letter.begin(), letter.end(), [](QChar one) {
        return one.isSpace() || one.category() == QChar::Other_Format ||
               one.category() == QChar::Other_Control;
    });
}

bool lacks_shape(const QString& text, const Typeface& face) {
    QTextLayout layout(text);
    apply_fonts(layout, 10.0, false, 0, face);
    layout.beginLayout();
    layout.createLine().setLineWidth(endless);
    layout.endLayout();
    const QList<QGlyphRun> runs = layout.glyphRuns();
    return std::any_of(runs.begin(), runs.end(),
                       [](const QGlyphRun& run) { return run.glyphIndexes().contains(0); });
}

/// Asked letter by letter, for only a whole line's shapes tell nothing about which letter they are of.
QString letters_without_shape(const QString& line, const Typeface& face) {
    QString letters;
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, line);
    qsizetype from = 0;
    while (finder.toNextBoundary() != -1) {
        const QString letter = line.mid(from, finder.position() - from);
        from = finder.position();
        if (is_silent(letter) || letters.contains(letter)) continue;
        if (lacks_shape(letter, face)) letters += letter;
    }
    return letters;
}

}  // namespace

std::vector<UnprintableText> unprintable_letters(const Page& page) {
    std::vector<UnprintableText> found;
    for (const SheetItem& item : page.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr) continue;
        for (const TextLine& line : text->lines) {
            if (!lacks_shape(line.text, text->face)) continue;
            const QString letters = letters_without_shape(line.text, text->face);
            if (!letters.isEmpty()) found.push_back({line.text, letters});
        }
    }
    return found;
}

}  // namespace leadline
