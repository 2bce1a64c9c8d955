// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "ui/guest_words/guest_language.h"
#include "ui/sheet/card_layout.h"
#include "ui/sheet/cards.h"
#include "ui/sheet/qr_code.h"
#include "ui/sheet/sheet_painter.h"
#include "ui/sheet/type_setting.h"
#include "ui_fixture.h"

namespace leadline::testing {

inline const std::vector<const char*> sample_names{"salt-cove", "mountain-lake", "harbour-morning",
                                                   "finished-dive", "many-tongues"};

/// A face for every guest, in one language; in the guest's own where `language` is empty.
inline std::vector<CardContent> faces_of(const Session& session, UnitSystem units,
                                         const std::string& language = {}) {
    const Result<Plan> planned = plan(session, rules());
    EXPECT_TRUE(planned.has_value());
    std::vector<CardContent> cards;
    if (!planned) return cards;
    for (const Guest& guest : session.guests) {
        cards.push_back(card_content(session, *planned, guest, units,
                                     language.empty() ? guest.language : language));
    }
    return cards;
}

/// A text as a wordier language might have it: longer by two fifths.
inline QString stretched(const QString& text) {
    const qsizetype more = (text.size() * 2 + 4) / 5;
    if (!text.contains(u' ')) return text + text.left(more);
    const QStringList words = text.split(u' ');
    QString longer = text;
    for (qsizetype i = 0; longer.size() < text.size() + more; ++i) {
        longer += u' ' + words[i % words.size()];
    }
    return longer;
}

/// A card whose fixed words are all longer.
inline CardContent stretched(CardContent card) {
    for (QString* text :
         {&card.when.label, &card.instructor.label, &card.low_on_air.label, &card.low_on_air.action,
          &card.deepest.label, &card.time.label, &card.breath_rule, &card.breath_reason,
          &card.no_flying, &card.watch, &card.call, &card.understood, &card.standing}) {
        *text = stretched(*text);
    }
    for (QString& text : card.advice) text = stretched(text);
    for (CardSignal& hand : card.hand_signals) {
        hand.caption = stretched(hand.caption);
        if (!hand.warning.isEmpty()) hand.warning = stretched(hand.warning);
    }
    return card;
}

/// A text without the marks that only keep directions apart.
inline QString plain(QString text) {
    text.removeIf([](QChar one) { return one.unicode() >= 0x2066 && one.unicode() <= 0x2069; });
    return text;
}

/// The same without spaces: for finding it.
inline QString bare(const QString& text) {
    QString result = plain(text);
    result.removeIf([](QChar one) { return one.isSpace(); });
    return result;
}

/// Where the letters of a text really stand: from the height of a capital down to a descender, as
/// wide as the line is. Frames may touch; letters may not.
inline std::vector<QRectF> letter_boxes(const TextItem& text) {
    constexpr double capital = 0.72;     // of the size, Noto Sans
    constexpr double descender = 0.22;
    const double size = text.points * mm_per_point;
    std::vector<QRectF> boxes;
    for (const TextLine& line : text.lines) {
        const bool bold = text.bold || line.bold_letters == line.text.size();
        // Measured large and scaled down, so that no hinting of small type gets in.
        const QFont font = sheet_font(100.0, bold, text.face);
        const double em = QFontInfo(font).pixelSize();
        const double width = QFontMetricsF(font).horizontalAdvance(line.text) / em * size;
        boxes.emplace_back(line.left, line.baseline - capital * size, width,
                           (capital + descender) * size);
    }
    return boxes;
}

/// Texts that leave the card they stand on, or whose letters lie on those of another or on a picture.
inline QStringList faults(const Page& page) {
    constexpr double hair = 0.3;  // [mm], of overlap that no eye sees
    QStringList found;
    std::vector<std::pair<QRectF, QString>> placed;
    const auto meets = [&](const QRectF& one, const QRectF& other) {
        const QRectF overlap = one.intersected(other);
        return overlap.width() > hair && overlap.height() > hair;
    };
    for (const SheetItem& item : page.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || text->lines.empty()) continue;
        const QString first = text->lines.front().text;
        const std::vector<QRectF> own = letter_boxes(*text);
        for (const QRectF& box : own) {
            const bool inside =
                std::any_of(page.frames.begin(), page.frames.end(), [&](const QRectF& frame) {
                    return frame.adjusted(-hair, -hair, hair, hair).contains(box);
                });
            if (!inside) found << QStringLiteral("outside: ") + first;
            for (const auto& [other, words] : placed) {
                if (meets(box, other)) {
                    found << QStringLiteral("overlap: ") + first + QStringLiteral(" / ") + words;
                }
            }
            for (const SheetItem& other : page.items) {
                QRectF picture;
                if (std::holds_alternative<PictureItem>(other)) {
                    picture = rect_of(other).adjusted(hair, hair, -hair, -hair);
                } else if (const auto* code = std::get_if<QrItem>(&other)) {
                    const double quiet = 4.0 * code->rect.width() / code->side;
                    picture = code->rect.adjusted(-quiet, -quiet, quiet, quiet);
                }
                if (picture.isValid() && meets(box, picture)) {
                    found << QStringLiteral("on a picture: ") + first;
                }
            }
        }
        for (const QRectF& box : own) placed.emplace_back(box, first);
    }
    return found;
}

/// A page as it looks on paper.
inline QImage rendered(const Page& page, double dots_per_mm) {
    const QSizeF size = page_size(page) * dots_per_mm;
    QImage image(size.toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    SheetPainter().paint(painter, page, dots_per_mm);
    return image;
}

}  // namespace leadline::testing
