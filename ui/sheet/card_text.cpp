// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_text.h"

#include <QStringList>
#include <QTextBoundaryFinder>
#include <algorithm>
#include <numeric>
#include <vector>

#include "ui/guest_words/guest_punctuation.h"
#include "ui/guest_words/letters.h"
#include "ui/guest_words/typed_text.h"

namespace leadline {
namespace {

struct Line {
    QString text;
    QString brief;  ///< stands in for it where room is short; empty: none
    int need;       ///< 1: the last to be left out
};

/// Without the marks that only keep directions apart on paper.
QString plain(QString text) {
    constexpr char16_t first_isolate = 0x2066;
    constexpr char16_t last_isolate = 0x2069;
    text.removeIf([](QChar one) {
        return one.unicode() >= first_isolate && one.unicode() <= last_isolate;
    });
    return text.replace(no_break_space, u' ').replace(narrow_no_break_space, u' ');
}

QString joined(std::initializer_list<QString> parts) {
    QStringList filled(parts);
    filled.removeAll(QString());
    return filled.join(u' ');
}

/// As much of a text as so many bytes hold, with an ellipsis where that is not all.
QString shortened(const QString& text, qsizetype most_bytes) {
    if (text.toUtf8().size() <= most_bytes) return text;
    const QString ellipsis(QChar(0x2026));
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, text);
    QString kept;
    for (qsizetype end = finder.toNextBoundary(); end > 0; end = finder.toNextBoundary()) {
        const QString longer = text.left(end).trimmed() + ellipsis;
        if (longer.toUtf8().size() > most_bytes) break;
        kept = longer;
    }
    return kept;
}

QString figure(const CardFigure& one, const GuestTongue& tongue) {
    if (one.number.isEmpty()) return {};
    QString text = labelled(one.label, number_with_unit(one.number, one.unit), tongue);
    if (!one.as_read.isEmpty()) text += QStringLiteral(" = ") + one.as_read;
    return one.action.isEmpty() ? text : labelled(text, one.action, tongue);
}

/// "≤ 10 m": at most so deep, so long; without words, which are long in some languages.
QString at_most(const CardFigure& one) {
    if (one.number.isEmpty()) return {};
    return QChar(0x2264) + QChar(u' ') + number_with_unit(one.number, one.unit);
}

QString list_of(QStringList pieces) {
    pieces.removeAll(QString());
    return pieces.join(QStringLiteral(", "));
}

QString kit(const CardContent& card) {
    QStringList pieces;
    for (const CardKit& item : card.kit) {
        if (!item.value.isEmpty()) pieces << item.name + u' ' + item.value;
    }
    return list_of(pieces);
}

/// In reading order.
std::vector<Line> lines_of(const CardContent& card) {
    // A name is known to its owner; a long one leaves room for what the owner may not know.
    constexpr qsizetype brief_name = 32;
    constexpr qsizetype brief_place = 64;
    // Of a long text about whom to call only the numbers; none of them is ever cut.
    constexpr qsizetype long_call = 72;
    const GuestTongue& tongue = GuestTongue::of(card.language);
    const QString emergency = card.emergency_line.isEmpty()
                                  ? QString()
                                  : labelled(card.call, card.emergency_line, tongue);
    const QString numbers = list_of(dialled_numbers(plain(card.emergency_line)));
    CardFigure low = card.low_on_air;
    low.action.clear();
    std::vector<Line> lines{
        {card.name, shortened(plain(card.name), brief_name), 4},
        {card.group, {}, 9},
        {joined({card.when.label, card.when.value}), card.when.value, 5},
        {card.where, shortened(plain(card.where), brief_place), 7},
        {card.instructor.value.isEmpty() ? QString()
                                         : joined({card.instructor.label, card.instructor.value}),
         {},
         10},
        {figure(card.low_on_air, tongue), figure(low, tongue), 2},
        {list_of({figure(card.deepest, tongue), figure(card.time, tongue)}),
         list_of({at_most(card.deepest), at_most(card.time)}), 6},
        {card.breath_rule, {}, 3},
        {card.no_flying, {}, 8},
        {emergency,
         emergency.toUtf8().size() > long_call && !numbers.isEmpty()
             ? labelled(card.call, numbers, tongue)
             : QString(),
         1},
        {kit(card), {}, 11},
    };
    int need = static_cast<int>(lines.size());
    for (const QString& advice : card.advice) lines.push_back({advice, {}, ++need});
    lines.push_back({card.standing, {}, ++need});
    for (Line& line : lines) {
        line.text = plain(line.text);
        line.brief = line.brief.isEmpty() ? line.text : plain(line.brief);
    }
    std::erase_if(lines, [](const Line& line) { return line.text.isEmpty(); });
    return lines;
}

}  // namespace

QString card_as_text(const CardContent& card, qsizetype most_bytes) {
    const std::vector<Line> lines = lines_of(card);
    std::vector<std::size_t> by_need(lines.size());
    std::iota(by_need.begin(), by_need.end(), std::size_t{0});
    std::sort(by_need.begin(), by_need.end(),
              [&](std::size_t a, std::size_t b) { return lines[a].need < lines[b].need; });
    std::vector<QString> kept(lines.size());
    qsizetype left = most_bytes + 1;  // the last line ends without a break
    // First each line in its brief form, then in full where there is room, the most needed first.
    for (const std::size_t i : by_need) {
        const qsizetype bytes = lines[i].brief.toUtf8().size() + 1;
        if (bytes > left) continue;
        kept[i] = lines[i].brief;
        left -= bytes;
    }
    for (const std::size_t i : by_need) {
        const qsizetype more = lines[i].text.toUtf8().size() - lines[i].brief.toUtf8().size();
        if (kept[i].isEmpty() || more > left) continue;
        kept[i] = lines[i].text;
        left -= more;
    }
    QStringList text(kept.begin(), kept.end());
    text.removeAll(QString());
    return text.join(u'\n');
}

}  // namespace leadline
