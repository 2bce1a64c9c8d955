// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_text.h"

#include <QStringList>
#include <algorithm>
#include <vector>

namespace leadline {
namespace {

struct Line {
    QString text;
    int need;  ///< 1: the last to be left out
};

QString joined(std::initializer_list<QString> parts) {
    QStringList filled(parts);
    filled.removeAll(QString());
    return filled.join(u' ');
}

QString figure(const CardFigure& one) {
    if (one.number.isEmpty()) return {};
    QString text = one.label + QStringLiteral(": ") + one.number + u' ' + one.unit;
    if (!one.as_read.isEmpty()) text += QStringLiteral(" = ") + one.as_read;
    if (!one.action.isEmpty()) text += QStringLiteral(": ") + one.action;
    return text;
}

QString kit(const CardContent& card) {
    QStringList pieces;
    for (const CardKit& item : card.kit) {
        if (!item.value.isEmpty()) pieces << item.name + u' ' + item.value;
    }
    return pieces.join(QStringLiteral(", "));
}

/// In reading order.
std::vector<Line> lines_of(const CardContent& card) {
    const QString emergency =
        card.emergency_line.isEmpty() ? QString() : joined({card.call, card.emergency_line});
    QStringList limits{figure(card.deepest), figure(card.time)};
    limits.removeAll(QString());
    std::vector<Line> lines{
        {joined({card.name, card.group}), 1},
        {joined({card.when.label, card.when.value}), 6},
        {card.where, 7},
        {card.instructor.value.isEmpty() ? QString()
                                         : joined({card.instructor.label, card.instructor.value}),
         10},
        {figure(card.low_on_air), 3},
        {limits.join(QStringLiteral(", ")), 5},
        {card.breath_rule, 4},
        {card.no_flying, 8},
        {emergency, 2},
        {kit(card), 9},
    };
    int need = static_cast<int>(lines.size());
    for (const QString& advice : card.advice) lines.push_back({advice, ++need});
    lines.push_back({card.standing, ++need});
    std::erase_if(lines, [](const Line& line) { return line.text.isEmpty(); });
    return lines;
}

/// Without the marks that only keep directions apart on paper.
QString plain(QString text) {
    constexpr char16_t first_isolate = 0x2066;
    constexpr char16_t last_isolate = 0x2069;
    text.removeIf([](QChar one) {
        return one.unicode() >= first_isolate && one.unicode() <= last_isolate;
    });
    return text.replace(QChar(0x00A0), u' ');
}

}  // namespace

QString card_as_text(const CardContent& card, qsizetype most_bytes) {
    std::vector<Line> lines = lines_of(card);
    for (Line& line : lines) line.text = plain(line.text);
    const auto text = [&] {
        QStringList kept;
        for (const Line& line : lines) kept << line.text;
        return kept.join(u'\n');
    };
    while (!lines.empty() && text().toUtf8().size() > most_bytes) {
        lines.erase(std::max_element(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
            return a.need < b.need;
        }));
    }
    return text();
}

}  // namespace leadline
