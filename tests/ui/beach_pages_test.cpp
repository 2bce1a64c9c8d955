// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <algorithm>
#include <set>

#include "sheets_support.h"
#include "speaking.h"
#include "ui/sheet/beach_sheet.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

constexpr Paper papers[] = {Paper::a4, Paper::letter};

BeachSheet beach_of(const Session& session) {
    const Result<Plan> planned = plan(session, rules());
    EXPECT_TRUE(planned.has_value()) << (planned ? "" : words(planned.error()).toStdString());
    return beach_sheet(session, planned.value_or({}), session.groups.front(), UnitSystem::metric);
}

std::vector<Page> pages_of(const BeachSheet& sheet, Paper paper) {
    static TypeSetter setter;
    return beach_pages(sheet, paper, setter);
}

/// All guests of a sample in its first group, two of them without a birth date, each with too
/// little lead and some with other faults: as many stops and cautions as a bad morning has.
Session troubled(const char* name) {
    Session session = sample(name).session;
    session.groups.resize(1);
    for (std::size_t i = 0; i < session.guests.size(); ++i) {
        Guest& guest = session.guests[i];
        guest.group = session.groups.front().id;
        guest.kit.lead = Kilograms(1.0);
        if (i % 3 == 1) guest.birth_date.reset();
        if (i % 4 == 2) guest.kit.suit.clear();
    }
    session.conditions.visibility = Meters(1.0);
    return session;
}

/// Letters only: where lines break does not matter.
std::string letters(const QString& text) {
    QString bare = text;
    for (const char16_t one :
         {u' ', u'\u00A0', u'\n', u'\u2066', u'\u2067', u'\u2068', u'\u2069'}) {
        bare.remove(QChar(one));
    }
    return bare.toStdString();
}

/// How often words stand in others.
int count_of(const QString& words, const std::string& others) {
    const std::string sought = letters(words);
    int count = 0;
    for (auto at = others.find(sought); at != std::string::npos; at = others.find(sought, at + 1)) {
        ++count;
    }
    return count;
}

/// The first eight of a sample's guests in one group, before anybody was asked for health.
Session unanswered(const char* name) {
    Session session = sample(name).session;
    session.groups.resize(1);
    session.guests.resize(8);
    for (Guest& guest : session.guests) {
        guest.group = session.groups.front().id;
        guest.screening = {};
    }
    return session;
}

/// Nothing that the sheet holds but long names is missing from its pages.
void expect_all_there(const BeachSheet& sheet, Paper paper) {
    const auto pages = pages_of(sheet, paper);
    for (const Page& page : pages) EXPECT_EQ(faults_of(page).join(u'\n').toStdString(), "");
    const std::string there = letters(all_words_on(pages));
    const auto expect = [&](const QString& text) {
        EXPECT_TRUE(there.find(letters(text)) != std::string::npos) << text.toStdString();
    };
    for (const BeachGuest& guest : sheet.guests) {
        for (int i = 0; i < guest.flags.size(); ++i) {
            const bool told = there.find(letters(guest.flags[i])) != std::string::npos ||
                              there.find(letters(guest.moved_flags[i])) != std::string::npos;
            EXPECT_TRUE(told) << guest.flags[i].toStdString();
        }
        expect(guest.who);
        expect(guest.kit);
        expect(guest.minutes);
        expect(guest.low);
    }
    for (const QString& text : sheet.open + sheet.decided + sheet.emergency_plan) expect(text);
    expect(sheet.emergency_line);
    expect(sheet.times);
    expect(sheet.review);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        EXPECT_THAT(
            all_words_on({pages[i]}).toStdString(),
            HasSubstr("Page " + std::to_string(i + 1) + " of " + std::to_string(pages.size())));
    }
}

TEST(BeachPages, KeepTheFootAndWhoTheGuestsAre) {
    Session session = sample("many-tongues").session;
    for (Guest& guest : session.guests) guest.group = session.groups.front().id;
    session.groups.resize(1);
    const BeachSheet sheet = beach_of(session);
    const std::string words = all_words_on(pages_of(sheet, Paper::a4)).toStdString();
    const auto plain = [](QString text) {
        return text.replace(QChar(0x00A0), QChar(u' ')).simplified().toStdString();
    };
    ASSERT_GT(sheet.review.size(), 100);
    EXPECT_THAT(words, HasSubstr(plain(sheet.review)));
    for (const BeachGuest& guest : sheet.guests) EXPECT_THAT(words, HasSubstr(plain(guest.who)));
}

TEST(BeachPages, OfFewGuestsHaveEvenRows) {
    // The rows' lower rules lie as far apart as the words in them ask for, and all else is shared.
    for (const Page& page : pages_of(beach_of(sample("mountain-lake").session), Paper::a4)) {
        std::vector<double> heights;
        for (const SheetItem& item : page.items) {
            const auto* box = std::get_if<RectItem>(&item);
            // The frame for a photo is as high as its row.
            if (box == nullptr || box->rect.left() > page.frames.front().left() + 0.1) continue;
            if (box->rect.width() > 8.0 && box->rect.width() < 14.0) {
                heights.push_back(box->rect.height());
            }
        }
        ASSERT_GE(heights.size(), 2U);
        const auto [least, most] = std::minmax_element(heights.begin(), heights.end());
        EXPECT_LT(*most - *least, 12.0);
    }
}

TEST(BeachPages, OfASampleIsOne) {
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning", "many-tongues"}) {
        for (const Paper paper : papers) {
            EXPECT_EQ(pages_of(beach_of(sample(name).session), paper).size(), 1U) << name;
        }
    }
    Session nobody = sample("harbour-morning").session;
    nobody.guests.clear();
    EXPECT_EQ(pages_of(beach_of(nobody), Paper::letter).size(), 1U);
}

TEST(BeachPages, LoseNothingHoweverMuchThereIs) {
    Session nine = troubled("harbour-morning");
    nine.guests.push_back(nine.guests.front());
    nine.guests.back().id = GuestId("guest-99");
    nine.guests.back().name = "Ninth";
    for (const Session& session :
         {troubled("harbour-morning"), troubled("many-tongues"), troubled("mountain-lake"), nine,
          crowded(sample("harbour-morning").session, 1),
          crowded(sample("harbour-morning").session, 8),
          crowded(sample("harbour-morning").session, 40)}) {
        for (const Paper paper : papers) expect_all_there(beach_of(session), paper);
    }
}

TEST(BeachPages, SayWhereTheRestStands) {
    const BeachSheet sheet = beach_of(troubled("harbour-morning"));
    const auto pages = pages_of(sheet, Paper::letter);
    ASSERT_GE(pages.size(), 2U);
    const std::string number = std::to_string(pages.size());
    const std::string first = all_words_on({pages.front()}).toStdString();
    const std::string last = all_words_on({pages.back()}).toStdString();
    EXPECT_THAT(first, HasSubstr("more on page " + number));
    EXPECT_THAT(last, HasSubstr("Continued: what to know"));
    EXPECT_THAT(last, HasSubstr("Page " + number + " of " + number));
    // The gravest stands on the first.
    ASSERT_GT(sheet.open_stops, 0);
    EXPECT_THAT(first, HasSubstr(sheet.open.front().toStdString()));
    // A stop moved from its guest's row is announced there as one.
    EXPECT_THAT(first, HasSubstr("more under “Open”"));
}

TEST(BeachPages, HoldAllEightHeadsTogether) {
    // Whoever counts heads needs them on one sheet of paper, however many findings there are.
    const BeachSheet sheet = beach_of(troubled("harbour-morning"));
    ASSERT_EQ(sheet.guests.size(), 8U);
    for (const Paper paper : papers) {
        const std::string first = all_words_on({pages_of(sheet, paper).front()}).toStdString();
        for (const BeachGuest& guest : sheet.guests) {
            EXPECT_THAT(first, HasSubstr(guest.name.toStdString()));
        }
    }
}

TEST(BeachPages, HoldAllEightHeadsTogetherBeforeHealthIsAsked) {
    std::set<QString> spoken;
    for (const char* tag : {"en", "de", "fr", "es"}) {
        const Speaking speaking(QString::fromUtf8(tag));
        for (const char* name : {"harbour-morning", "many-tongues"}) {
            const BeachSheet sheet = beach_of(unanswered(name));
            ASSERT_EQ(sheet.guests.size(), 8U);
            spoken.insert(sheet.standing);
            for (const Paper paper : papers) {
                SCOPED_TRACE(std::string(tag) + " " + name +
                             (paper == Paper::a4 ? " A4" : " Letter"));
                const std::string first = letters(all_words_on({pages_of(sheet, paper).front()}));
                for (const BeachGuest& guest : sheet.guests) {
                    EXPECT_THAT(first, HasSubstr(letters(guest.name)));
                }
            }
        }
    }
    EXPECT_EQ(spoken.size(), 4U);
}

TEST(BeachPages, CountTheHeadsOfAGroupOnSeveralPagesAsOne) {
    const auto words_of = [](int guests) {
        const auto pages =
            pages_of(beach_of(crowded(sample("harbour-morning").session, guests)), Paper::a4);
        return all_words_on({pages.front()}).toStdString();
    };
    EXPECT_THAT(words_of(9), HasSubstr("Heads in of 9 at"));
    EXPECT_THAT(words_of(40), HasSubstr("Heads out of 40 at"));
    EXPECT_THAT(words_of(1), HasSubstr("Heads in at"));
}

TEST(BeachPages, TellOfEachOfTwoNamesakes) {
    Session session = troubled("harbour-morning");
    // Eight alike on a page, and a ninth on another.
    session.guests.push_back(session.guests.front());
    session.guests.back().id = GuestId("guest-99");
    for (Guest& guest : session.guests) {
        const GuestId id = guest.id;
        guest = session.guests.front();
        guest.id = id;
        guest.kit.suit.clear();
        guest.birth_date.reset();
    }
    const BeachSheet sheet = beach_of(session);
    for (const Paper paper : papers) {
        const std::string there = letters(all_words_on(pages_of(sheet, paper)));
        const BeachGuest& one = sheet.guests.front();
        EXPECT_EQ(count_of(one.kit, there), 9);
        ASSERT_FALSE(one.flags.isEmpty());
        for (int i = 0; i < one.flags.size(); ++i) {
            EXPECT_EQ(count_of(one.flags[i], there) + count_of(one.moved_flags[i], there), 9)
                << one.flags[i].toStdString();
        }
    }
}

TEST(BeachPages, SayOfWhomAMovedFlagIsAsTheyDoOfTheGroup) {
    const BeachSheet sheet = beach_of(troubled("harbour-morning"));
    const std::string there = all_words_on(pages_of(sheet, Paper::letter)).toStdString();
    int moved = 0;
    for (const BeachGuest& guest : sheet.guests) {
        const std::string name = guest.name.toStdString();
        moved += there.find("Stop, " + name + ": ") != std::string::npos ||
                         there.find("Care, " + name + ": ") != std::string::npos
                     ? 1
                     : 0;
        EXPECT_THAT(there, Not(HasSubstr(name + ": Stop: ")));
        EXPECT_THAT(there, Not(HasSubstr(name + ": Care: ")));
    }
    EXPECT_GT(moved, 0);
}

TEST(BeachPages, ShowAllOfALongNumberToCallOnTheFirst) {
    Session session = sample("harbour-morning").session;
    session.site.emergency_line =
        "Harbour control on channel 16, then the island clinic on +00 555 0188 extension 4471, then "
        "the coast guard helicopter desk on +00 555 0199, and the doctor on call at night on "
        "+00 555 0122";
    const BeachSheet sheet = beach_of(session);
    for (const Paper paper : papers) {
        const auto pages = pages_of(sheet, paper);
        EXPECT_EQ(pages.size(), 1U);
        EXPECT_EQ(count_of(sheet.emergency_line, letters(all_words_on({pages.front()}))), 1);
    }
}

TEST(BeachPages, SayWhereANumberToCallStandsThatIsTooLong) {
    Session session = sample("harbour-morning").session;
    session.site.emergency_line = std::string(200, 'W');
    const auto pages = pages_of(beach_of(session), Paper::a4);
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_EQ(faults_of(pages.front()).join(u'\n').toStdString(), "");
    EXPECT_THAT(all_words_on({pages.front()}).toStdString(),
                HasSubstr("The whole plan stands on page 2."));
    EXPECT_THAT(letters(all_words_on({pages.back()})), HasSubstr(std::string(200, 'W')));
}

TEST(BeachPages, CutNoKit) {
    Session session = sample("harbour-morning").session;
    for (Guest& guest : session.guests) {
        guest.kit.suit = "5 mm two-piece, long, with hood vest size M, and boots 42";
        guest.kit.bcd = "Size M, the one with the new inflator hose";
        guest.kit.mask = "Low volume, black, with corrective lenses -2.5 left, -3.0 right";
        guest.kit.fins = "Open heel 42-43 with boots from the blue box";
    }
    const BeachSheet sheet = beach_of(session);
    for (const Paper paper : papers) expect_all_there(sheet, paper);
}

TEST(BeachPages, SetNamesFromRightToLeftApart) {
    // A number behind such a name would move to its other side: a suit of 3 mm, lead of 3 kg.
    Session session = troubled("harbour-morning");
    for (Guest& guest : session.guests) guest.name = "نور الهدى";
    const QString words = all_words_on(pages_of(beach_of(session), Paper::letter));
    EXPECT_THAT(words.toStdString(), HasSubstr("Kit."));
    const QString name = QStringLiteral("نور الهدى");
    int followed = 0;
    for (qsizetype at = words.indexOf(name); at >= 0; at = words.indexOf(name, at + 1)) {
        const QChar next = words[at + name.size()];
        if (next == u':') ADD_FAILURE() << words.mid(at, 40).toStdString();
        followed += next == QChar(0x2069) ? 1 : 0;
    }
    EXPECT_GT(followed, 8);
}

TEST(BeachPages, CarryAPlanThatIsTooLongToTheNextPage) {
    const auto pages =
        pages_of(beach_of(crowded(sample("harbour-morning").session, 1)), Paper::letter);
    EXPECT_THAT(all_words_on({pages.front()}).toStdString(),
                HasSubstr("The whole plan stands on page 2."));
    EXPECT_THAT(all_words_on({pages.back()}).toStdString(), HasSubstr("Step 42:"));
}

TEST(BeachPages, SayThatNothingIsOpenOnlyWhereNoGuestHasAFlagEither) {
    BeachSheet sheet = beach_of(sample("mountain-lake").session);
    sheet.open.clear();
    sheet.open_stops = 0;
    sheet.decided.clear();
    const auto words_of = [&] { return all_words_on(pages_of(sheet, Paper::a4)).toStdString(); };
    for (BeachGuest& guest : sheet.guests) guest.flags.clear();
    EXPECT_THAT(words_of(), HasSubstr("No stop and no caution"));
    sheet.guests.back().flags = {QStringLiteral("Stop: not yet asked.")};
    EXPECT_THAT(words_of(), Not(HasSubstr("No stop and no caution")));
}

TEST(BeachPages, KeepWordsOffTheRules) {
    for (const Session& session :
         {sample("harbour-morning").session, sample("mountain-lake").session,
          sample("many-tongues").session, troubled("harbour-morning")}) {
        for (const Page& page : pages_of(beach_of(session), Paper::letter)) {
            std::vector<double> rules_at;
            for (const SheetItem& item : page.items) {
                const auto* line = std::get_if<LineItem>(&item);
                if (line != nullptr && line->line.dx() > page.frames.front().width() - 1.0) {
                    rules_at.push_back(line->line.y1());
                }
            }
            ASSERT_GE(rules_at.size(), 2U);
            for (const SheetItem& item : page.items) {
                const auto* text = std::get_if<TextItem>(&item);
                if (text == nullptr) continue;
                const double size = text->points * mm_per_point;
                for (const TextLine& line : text->lines) {
                    for (const double rule : rules_at) {
                        EXPECT_FALSE(rule > line.baseline - 0.7 * size &&
                                     rule < line.baseline + 0.2 * size)
                            << line.text.toStdString();
                    }
                }
            }
        }
    }
}

}  // namespace
}  // namespace leadline::testing
