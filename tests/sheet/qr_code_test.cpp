// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/qr_code.h"

#include <gmock/gmock.h>
#include <zbar.h>

#include "sheet_fixture.h"
#include "ui/sheet/card_text.h"

namespace leadline::testing {
namespace {

/// The texts of all codes in a picture.
QStringList read_codes(const QImage& picture) {
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    QByteArray pixels;
    for (int y = 0; y < grey.height(); ++y) {
        pixels.append(reinterpret_cast<const char*>(grey.constScanLine(y)), grey.width());
    }
    zbar::ImageScanner scanner;
    scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
    scanner.set_config(zbar::ZBAR_QRCODE, zbar::ZBAR_CFG_ENABLE, 1);
    zbar::Image image(static_cast<unsigned>(grey.width()), static_cast<unsigned>(grey.height()),
                      "Y800", pixels.constData(), static_cast<unsigned long>(pixels.size()));
    EXPECT_GE(scanner.scan(image), 0);
    QStringList texts;
    for (auto symbol = image.symbol_begin(); symbol != image.symbol_end(); ++symbol) {
        texts << QString::fromStdString(symbol->get_data());
    }
    return texts;
}

constexpr double dots_per_mm = 12.0;  // about 300 to the inch

TEST(QrCode, EveryCodeIsReadBackFromThePage) {
    for (const char* name : sample_names) {
        const auto cards = faces_of(sample(name).session, UnitSystem::metric);
        for (const CardContent& card : cards) {
            const Page page = card_pages({card}, CardSize::a6).front();
            const QStringList texts = read_codes(rendered(page, dots_per_mm));
            ASSERT_EQ(texts.size(), 1) << card.name.toStdString();
            EXPECT_EQ(texts.front(), card_as_text(card, most_code_bytes));
            EXPECT_TRUE(texts.front().startsWith(plain(card.name).left(6)));
            EXPECT_TRUE(bare(texts.front()).contains(bare(card.emergency_line)));
            EXPECT_TRUE(texts.front().contains(card.breath_rule));
            EXPECT_TRUE(texts.front().contains(plain(card.low_on_air.number)));
        }
    }
}

double side_of_code(const Page& page) {
    for (const SheetItem& item : page.items) {
        if (const auto* code = std::get_if<QrItem>(&item)) return code->rect.width();
    }
    return 0.0;
}

TEST(QrCode, GrowsWithTheCardAndIsReadBackAtEverySize) {
    for (const char* language : {"en", "de", "ja", "ar"}) {
        const auto cards =
            faces_of(sample("many-tongues").session, UnitSystem::metric, language);
        ASSERT_FALSE(cards.empty());
        const CardContent& card = cards.front();
        const Page smallest = card_pages({card}, CardSize::a6).front();
        for (const CardSize size : card_sizes()) {
            const Page page = card_pages({card}, size).front();
            const QSizeF large = card_size(size);
            const QSizeF small = card_size(CardSize::a6);
            // As much larger as the card itself; a sheet of Letter is a little lower than its width asks.
            const double grown = std::min(large.width() / small.width(), large.height() / 139.7);
            EXPECT_NEAR(side_of_code(page) / side_of_code(smallest), grown, 0.02);
            // A coarser picture will do for a larger code.
            const double fine = dots_per_mm / std::max(1.0, grown);
            const QStringList texts = read_codes(rendered(page, fine));
            ASSERT_EQ(texts.size(), 1) << language << " " << static_cast<int>(size);
            EXPECT_EQ(texts.front(), card_as_text(card, most_code_bytes));
        }
    }
}

TEST(QrCode, ItsFieldsAreLargeEnoughAndItsEdgeIsWhite) {
    for (const CardSize size : card_sizes()) {
        const auto cards = faces_of(sample("many-tongues").session, UnitSystem::metric);
        for (const Page& page : card_pages(cards, size)) {
            for (const SheetItem& item : page.items) {
                const auto* code = std::get_if<QrItem>(&item);
                if (code == nullptr) continue;
                const double field = code->rect.width() / code->side;
                EXPECT_GE(field, 0.33 - 1e-9);
                const QRectF edge =
                    code->rect.adjusted(-4 * field, -4 * field, 4 * field, 4 * field);
                for (const SheetItem& other : page.items) {
                    if (&other == &item) continue;
                    if (const auto* box = std::get_if<RectItem>(&other); box && box->width > 0.0) {
                        EXPECT_FALSE(box->rect.intersects(edge));
                    } else if (std::holds_alternative<LineItem>(other)) {
                        EXPECT_FALSE(rect_of(other).intersects(edge));
                    }
                }
            }
        }
    }
}

TEST(QrCode, HoldsAsMuchAsIsSaidAndNoMore) {
    const auto largest = qr_code(QByteArray(most_code_bytes, 'x'));
    ASSERT_TRUE(largest.has_value());
    EXPECT_EQ(largest->side, most_code_fields);
    const auto larger = qr_code(QByteArray(most_code_bytes + 1, 'x'));
    ASSERT_TRUE(larger.has_value());
    EXPECT_GT(larger->side, most_code_fields);
    EXPECT_FALSE(qr_code({}).has_value());
    EXPECT_FALSE(qr_code(QByteArray(5000, 'x')).has_value());
}

TEST(QrCode, TheLeastNeededLinesAreLeftOutFirst) {
    const CardContent card =
        faces_of(sample("many-tongues").session, UnitSystem::metric, "en").front();
    const QString number = plain(card.emergency_line).replace(QChar(0x00A0), u' ');
    const QString low = card.low_on_air.number + u' ' + card.low_on_air.unit;
    const auto has = [](const QString& text, const QString& part) { return text.contains(part); };
    for (int bytes = 600; bytes >= 0; --bytes) {
        const QString text = card_as_text(card, bytes);
        EXPECT_LE(text.toUtf8().size(), bytes);
        if (bytes < 90) continue;
        EXPECT_TRUE(has(text, number)) << bytes;
        EXPECT_TRUE(has(text, low)) << bytes;
        EXPECT_TRUE(has(text, card.breath_rule)) << bytes;
    }
    EXPECT_TRUE(card_as_text(card, 0).isEmpty());
}

TEST(QrCode, ALongNameTakesNoRoomFromWhatMatters) {
    for (const char* language : {"en", "ru", "ar"}) {
        CardContent card =
            faces_of(sample("many-tongues").session, UnitSystem::metric, language).front();
        card.name = QStringLiteral("Александра ").repeated(11).left(120);
        card.group = QStringLiteral("Утренняя группа ").repeated(8);
        const QString text = card_as_text(card, most_code_bytes);
        EXPECT_TRUE(bare(text).contains(bare(card.emergency_line))) << language;
        EXPECT_TRUE(text.contains(card.low_on_air.number + u' ' + card.low_on_air.unit));
        EXPECT_TRUE(text.contains(card.breath_rule)) << language;
        EXPECT_TRUE(text.startsWith(u"Александра"_qs)) << text.toStdString();
        EXPECT_TRUE(text.section(u'\n', 0, 0).endsWith(QChar(0x2026)));
    }
}

TEST(QrCode, ATextLongerThanTheCodeLeavesItsRoomToTheOthers) {
    CardContent card =
        faces_of(sample("many-tongues").session, UnitSystem::metric, "ru").front();
    card.emergency_line =
        QStringLiteral("Спасатели на берегу ").repeated(12) + QStringLiteral("+00 555 0100");
    const QString text = card_as_text(card, most_code_bytes);
    EXPECT_TRUE(text.contains(card.call + QStringLiteral(": +00 555 0100"))) << text.toStdString();
    EXPECT_TRUE(text.contains(card.breath_rule));
    EXPECT_TRUE(text.contains(card.low_on_air.number + u' ' + card.low_on_air.unit));
}

TEST(QrCode, TellsDayPlaceDepthAndTimeInEveryLanguage) {
    for (const GuestLanguage& language : guest_languages()) {
        for (const CardContent& card :
             faces_of(sample("many-tongues").session, UnitSystem::metric, language.tag)) {
            const QString text = card_as_text(card, most_code_bytes);
            for (const QString& part :
                 {card.when.value, card.where, card.emergency_line, card.breath_rule,
                  QString(card.low_on_air.number + card.low_on_air.unit),
                  QString(card.deepest.number + card.deepest.unit),
                  QString(card.time.number + card.time.unit)}) {
                EXPECT_TRUE(bare(text).contains(bare(part)))
                    << language.tag << ": " << part.toStdString() << " in\n" << text.toStdString();
            }
        }
    }
}

TEST(QrCode, IsPunctuatedAsEachLanguageWritesIt) {
    const auto flat = [](const QString& text) -> QString {
        return plain(text).replace(QChar(0x00A0), u' ').replace(QChar(0x202F), u' ');
    };
    for (const GuestLanguage& language : guest_languages()) {
        const CardContent card =
            faces_of(sample("many-tongues").session, UnitSystem::metric, language.tag).front();
        const bool wide = language.tag == "zh-Hans" || language.tag == "ja";
        const bool french = language.tag == "fr";
        const QString colon = wide     ? QStringLiteral("\uFF1A")
                              : french ? QStringLiteral(" : ")
                                       : QStringLiteral(": ");
        const bool close = wide || language.tag == "ko";
        const QString minutes = card.time.number + (close ? u""_qs : u" "_qs) + card.time.unit;
        const QString low = card.low_on_air.number + u' ' + card.low_on_air.unit;
        for (const int bytes : {100'000, most_code_bytes}) {
            const QString text = card_as_text(card, bytes);
            const std::string where = language.tag + ":\n" + text.toStdString();
            EXPECT_TRUE(text.contains(flat(minutes))) << where;
            EXPECT_TRUE(text.contains(flat(card.low_on_air.label + colon + low))) << where;
            EXPECT_TRUE(bare(text).contains(bare(card.call + colon + card.emergency_line)))
                << where;
            EXPECT_FALSE(wide && text.contains(u": "_qs)) << where;
        }
        const QString all = card_as_text(card, 100'000);
        EXPECT_TRUE(all.contains(flat(card.deepest.label + colon))) << all.toStdString();
        EXPECT_TRUE(card.low_on_air.action.isEmpty() ||
                    all.contains(flat(colon + card.low_on_air.action)))
            << all.toStdString();
        // Beside the number on the card a label stands alone.
        EXPECT_FALSE(card.call.contains(u':') || card.call.contains(QChar(0xFF1A))) << language.tag;
    }
}

TEST(QrCode, HoldsNothingThatIsNotOnTheCard) {
    for (const CardContent& card : faces_of(sample("many-tongues").session, UnitSystem::metric)) {
        QStringList known = all_words(card);
        for (const CardKit& item : card.kit) known << item.name;
        const QString printed = bare(known.join(QString()));
        for (const QString& line : card_as_text(card, 100'000).split(u'\n')) {
            QString words = line;
            words.replace(QChar(0xFF1A), u' ');  // the wide colon after a label
            for (const QString& word : words.split(u' ')) {
                QString core = bare(word);
                while (core.endsWith(u':') || core.endsWith(u',')) core.chop(1);
                if (core == u"=") continue;
                EXPECT_TRUE(printed.contains(core)) << core.toStdString();
            }
        }
    }
}

}  // namespace
}  // namespace leadline::testing
