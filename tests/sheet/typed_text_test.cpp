// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/typed_text.h"

#include <gmock/gmock.h>

#include <QGlyphRun>
#include <QTextBoundaryFinder>
#include <QTextLayout>

#include "sheet_fixture.h"

namespace leadline::testing {
namespace {

const QString coast_guard = QStringLiteral("الطوارئ +00 (0)555 010-0200");

/// A line as it is read from left to right on paper: each letter where it is drawn.
QString as_drawn(const QString& line, const Typeface& face) {
    QTextLayout layout(line);
    apply_fonts(layout, 10.0, false, 0, face);
    layout.beginLayout();
    QTextLine set = layout.createLine();
    set.setLineWidth(1e7);
    layout.endLayout();
    std::vector<std::pair<double, QChar>> placed;
    for (qsizetype i = 0; i < line.size(); ++i) {
        const bool seen = line[i].isDigit() || line[i] == u'+' || line[i] == QChar(0x2026) ||
                          line[i].isLetter();
        if (!seen) continue;
        const QList<QGlyphRun> runs = set.glyphRuns(static_cast<int>(i), 1);
        if (runs.isEmpty() || runs.front().positions().isEmpty()) continue;  // joined to another
        placed.emplace_back(runs.front().positions().front().x(), line[i]);
    }
    std::stable_sort(placed.begin(), placed.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    QString drawn;
    for (const auto& [x, letter] : placed) drawn += letter;
    return drawn;
}

QString as_drawn(const TextItem& item) {
    QString all;
    for (const TextLine& line : item.lines) all += as_drawn(line.text, item.face);
    return all;
}

TextItem set_in(const QString& text, double width, const Typeface& face, int lines = 6) {
    TextStyle style;
    style.points = 10.0;
    style.least_points = 10.0;
    style.most_lines = lines;
    style.face = face;
    TypeSetter setter;
    return setter.set({text, 0}, QRectF(0.0, 0.0, width, 60.0), style);
}

const Typeface latin{};
const Typeface arabic{QStringLiteral("Noto Sans Arabic"), true};

TEST(TypedTextTest, ANumberBehindWordsThatRunTheOtherWayKeepsItsOrder) {
    for (const Typeface& face : {latin, arabic}) {
        const QString kept = with_whole_numbers(coast_guard);
        for (const QString& text : {kept, isolated(kept)}) {
            EXPECT_TRUE(as_drawn(text, face).contains(u"+0005550100200"_qs))
                << as_drawn(text, face).toStdString();
        }
        // It would not without: the test does see the fault.
        EXPECT_FALSE(as_drawn(coast_guard, face).contains(u"+0005550100200"_qs));
    }
}

TEST(TypedTextTest, ANumberIsNotBrokenAtTheEndOfALine) {
    const QString number = QStringLiteral("+00 555 0100 200");
    const QString text = with_whole_numbers(QStringLiteral("Coast guard of the bay ") + number);
    for (double width = 35.0; width < 70.0; width += 1.0) {
        const TextItem item = set_in(text, width, latin);
        int with_digits = 0;
        for (const TextLine& line : item.lines) {
            with_digits += std::any_of(line.text.begin(), line.text.end(),
                                       [](QChar one) { return one.isDigit(); });
        }
        EXPECT_EQ(with_digits, 1) << width;
    }
}

TEST(TypedTextTest, WhatWouldTurnANumberAroundIsLeftOut) {
    for (const QChar mark : u"\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069"_qs) {
        const QString pasted = mark + QStringLiteral("112") + mark;
        EXPECT_EQ(typed_line(pasted), u"112") << int{mark.unicode()};
    }
    // It would be turned around: the test does see the fault.
    const QString turned = QChar(0x202E) + QStringLiteral("112 or +00 555 0100");
    EXPECT_TRUE(as_drawn(turned, latin).contains(u"211"_qs)) << as_drawn(turned, latin).toStdString();
    Session session = sample("many-tongues").session;
    session.site.emergency_line = turned.toStdString();
    session.site.meeting_place = "\u202EPier 47";
    session.guests.front().name = "\u2069\u202EAna 123";
    session.guests.front().kit.fins = "\u202E40";
    for (const char* tag : {"en", "ar"}) {
        const auto cards = faces_of(session, UnitSystem::metric, tag);
        for (const CardSize size : {CardSize::a6, CardSize::a5}) {
            const Page page = card_pages({cards.front()}, size).front();
            QString drawn;
            for (const SheetItem& item : page.items) {
                if (const auto* one = std::get_if<TextItem>(&item)) drawn += as_drawn(*one) + u'\n';
            }
            for (const char* digits : {"112", "47", "123", "40"}) {
                const QString number = QString::fromLatin1(digits);
                EXPECT_TRUE(drawn.contains(number)) << tag << digits;
            }
        }
    }
}

TEST(TypedTextTest, ControlCharactersAndPilesOfAccentsAreLeftOut) {
    EXPECT_EQ(typed_line(std::string("Ana\x01\x1B\x7F\nMaria\t\u2028Prado \u0085")), u"Ana Maria Prado");
    EXPECT_EQ(typed_line(std::string()), u"");
    EXPECT_EQ(typed_line(QStringLiteral(" \n\u0002 ")), u"");
    // Four accents on one letter are written somewhere; a pile is drawn over the lines above.
    const QString four = QStringLiteral("e\u0301\u0323\u0302\u0331");
    EXPECT_EQ(typed_line(four), four);
    EXPECT_EQ(typed_line(four + QString(100, QChar(0x0301)) + u'x'), four + u'x');
    // Words of many scripts stay as they are typed.
    for (const char* name : {"Nguyễn Thị Hằng", "ธิดารัตน์", "שָׁלוֹם", "हिन्दी", "محمّد", "👩‍🚀 Kim"}) {
        EXPECT_EQ(typed_line(std::string(name)), QString::fromUtf8(name)) << name;
    }
}

TEST(TypedTextTest, TheBeginningOfATextEndsBetweenLetters) {
    EXPECT_EQ(beginning(QStringLiteral("Ana Prado"), 9), u"Ana Prado");
    EXPECT_EQ(beginning(QStringLiteral("Ana Prado"), 8), QStringLiteral("Ana Pra…"));
    for (const char* name : {"👩‍🚀👩‍🚀👩‍🚀👩‍🚀👩‍🚀👩‍🚀", "🌊🌊🌊🌊🌊🌊🌊🌊🌊🌊", "e\u0301e\u0301e\u0301e\u0301e\u0301"}) {
        const QString whole = QString::fromUtf8(name);
        for (int longest = 1; longest < whole.size(); ++longest) {
            const QString first = beginning(whole, longest);
            EXPECT_LE(first.size(), longest);
            EXPECT_TRUE(first.isValidUtf16()) << longest;
            EXPECT_TRUE(first.endsWith(QChar(0x2026)));
            QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, whole);
            finder.setPosition(first.size() - 1);
            EXPECT_TRUE(finder.isAtBoundary()) << longest;
        }
    }
}

TEST(TypedTextTest, LeavesOtherTextAlone) {
    for (const char* text : {"", "Ana", "Pier 4", "call 112", "Gate B, 2nd floor"}) {
        EXPECT_EQ(with_whole_numbers(QString::fromUtf8(text)), QString::fromUtf8(text));
    }
    EXPECT_EQ(bare(with_whole_numbers(QStringLiteral("09:30 - 10:30 at Pier 4"))),
              u"09:30-10:30atPier4");
}

TEST(TypedTextTest, FindsTheNumbersThatOneCanDial) {
    EXPECT_EQ(dialled_numbers(QStringLiteral("Ring 112 or +00 555-0100, pier 4")),
              (QStringList{QStringLiteral("112"), QStringLiteral("+00 555-0100")}));
    EXPECT_EQ(dialled_numbers(with_whole_numbers(coast_guard)),
              QStringList{QStringLiteral("+00 (0)555 010-0200")});
    EXPECT_TRUE(dialled_numbers(QStringLiteral("the harbour office")).isEmpty());
}

TEST(TypeSettingTest, ALineThatBeginsInsideAnIsolateStaysInIt) {
    // Too long to be held together: it breaks, and every part keeps its order.
    const QString text = isolated(QStringLiteral("Coast guard +00 555 0100 / +00 555 0200 / +00 555 0300"));
    for (double width = 18.0; width < 60.0; width += 3.0) {
        const TextItem item = set_in(text, width, arabic);
        ASSERT_GT(item.lines.size(), 1U);
        EXPECT_EQ(as_drawn(item).toStdString(), "Coastguard+005550100+005550200+005550300") << width;
    }
}

TEST(TypeSettingTest, TheEllipsisStandsWhereTheTextEnds) {
    const QString text = isolated(QStringLiteral("The blue hut behind the old harbour office by the pier"));
    for (const int lines : {1, 2}) {
        const TextItem item = set_in(text, 30.0, arabic, lines);
        ASSERT_TRUE(item.elided);
        EXPECT_TRUE(as_drawn(item).endsWith(QChar(0x2026))) << as_drawn(item).toStdString();
    }
}

TEST(TypedTextTest, CardsKeepNumbersWhole) {
    Session session = sample("many-tongues").session;
    session.site.emergency_line = coast_guard.toStdString();
    session.site.meeting_place = "مرسى 7 ‎+00 555 0100";
    for (const char* tag : {"en", "ar"}) {
        const auto cards = faces_of(session, UnitSystem::metric, tag);
        const Page page = card_pages({cards.front()}, CardSize::a6).front();
        QString drawn;
        for (const SheetItem& item : page.items) {
            if (const auto* one = std::get_if<TextItem>(&item)) drawn += as_drawn(*one) + u'\n';
        }
        EXPECT_TRUE(drawn.contains(u"+0005550100200"_qs)) << tag;
        EXPECT_TRUE(drawn.contains(u"+005550100\n"_qs) || drawn.contains(u"+005550100"_qs)) << tag;
    }
}

TEST(CutTextTest, ALongPlaceGetsItsLinesAndWhatIsCutIsTold) {
    Session session = sample("salt-cove").session;
    session.site.meeting_place =
        "The blue hut behind the old harbour office, left of the ice house, second door from the "
        "pier, ring twice and wait for the crew to open it";
    auto cards = faces_of(session, UnitSystem::metric, "en");
    for (const Page& page : card_pages(cards, CardSize::a6)) {
        EXPECT_TRUE(cut_texts(page).empty());
        EXPECT_TRUE(page.too_full.empty());
    }
    for (CardContent& card : cards) card.where = card.where.repeated(4);
    for (const Page& page : card_pages(cards, CardSize::a6)) {
        const auto cut = cut_texts(page);
        ASSERT_EQ(cut.size(), 1U);
        EXPECT_TRUE(cut.front().shown.startsWith(u"The blue hut"_qs));
        EXPECT_TRUE(cut.front().shown.endsWith(QChar(0x2026)));
    }
}

TEST(CutTextTest, ACardWithoutRoomForItsWordsIsTold) {
    CardContent card = faces_of(sample("salt-cove").session, UnitSystem::metric, "en").front();
    for (const Page& page : card_pages({card}, CardSize::a6)) EXPECT_TRUE(page.too_full.empty());
    for (int i = 0; i < 5; ++i) card.watch += u' ' + card.watch;
    const Page page = card_pages({card}, CardSize::a6).front();
    EXPECT_EQ(page.too_full, page.frames);
}

TEST(CutTextTest, NothingIsCutOnTheCardsOfTheSamples) {
    for (const char* name : sample_names) {
        const auto cards = faces_of(sample(name).session, UnitSystem::metric);
        for (const Page& page : card_pages(cards, CardSize::a6_on_a4)) {
            EXPECT_TRUE(cut_texts(page).empty()) << name;
            EXPECT_TRUE(page.too_full.empty()) << name;
        }
    }
}

}  // namespace
}  // namespace leadline::testing
