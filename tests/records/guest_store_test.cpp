// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/guest_store.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QStringList>

#include "core/records/fold.h"
#include "core/records/session_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::must;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

class GuestStoreTest : public testing::Test {
protected:
    void add(const std::vector<std::string>& names) {
        std::vector<Guest> guests;
        for (const std::string& name : names) {
            guests.push_back(test::guest_named("guest-" + std::to_string(guests.size()), name));
        }
        must(SessionStore(*database_).insert(test::session_with(test::day(2026, 7, 4), guests)));
    }
    std::vector<std::string> find(const QString& text, int limit = 20) {
        std::vector<std::string> names;
        for (const KnownGuest& known : must(store_.find(text, limit))) {
            names.push_back(known.guest.name);
        }
        return names;
    }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
    GuestStore store_{*database_};
};

TEST(Folded, StripsAccentsAndCase) {
    EXPECT_EQ(folded(u"Éloïse ČAPEK"_qs), u"eloise capek"_qs);
    EXPECT_EQ(folded(u"e\u0301"_qs), u"e"_qs);
    EXPECT_EQ(folded(u"Ắ"_qs), u"a"_qs);
    EXPECT_EQ(folded(u"ＦＵＬＬ ﬁ"_qs), u"full fi"_qs);
}

TEST(Folded, SpellsOutLettersThatDoNotComeApart) {
    EXPECT_EQ(folded(u"ØRSTED Łukasz Straße ẞ Ærø"_qs), u"orsted lukasz strasse ss aero"_qs);
    EXPECT_EQ(folded(u"Iğdır IŞIK İpek ışık"_qs), u"igdir isik ipek isik"_qs);
    EXPECT_EQ(folded(u"Đorđe Þór Œuvre ð ǿ"_qs), u"dorde thor oeuvre d o"_qs);
}

TEST(Folded, LeavesOtherScriptsReadable) {
    EXPECT_EQ(folded(u"Ёлка ΣΟΦΊΑΣ"_qs), u"елка σοφιασ"_qs);
    EXPECT_EQ(folded(u"σοφίας"_qs), u"σοφιασ"_qs);
    EXPECT_EQ(folded(u"潜水 太郎"_qs), u"潜水 太郎"_qs);
    EXPECT_EQ(folded(u"\U0001F420 A"_qs), u"\U0001F420 a"_qs);
}

TEST(Folded, MakesSpacesAndApostrophesOne) {
    EXPECT_EQ(folded(u"  O’Neill\t\n ‘X’ "_qs), u"o'neill 'x'"_qs);
    EXPECT_EQ(folded(QString()), QString());
}

TEST_F(GuestStoreTest, IgnoresAccentsAndCase) {
    add({"Øystein Müller", "Łucja Nowak", "José Peña", "Zoë Strauß"});
    EXPECT_THAT(find(u"muller"_qs), ElementsAre("Øystein Müller"));
    EXPECT_THAT(find(u"MÜLL"_qs), ElementsAre("Øystein Müller"));
    EXPECT_THAT(find(u"lucja"_qs), ElementsAre("Łucja Nowak"));
    EXPECT_THAT(find(u"pena"_qs), ElementsAre("José Peña"));
    EXPECT_THAT(find(u"strauss"_qs), ElementsAre("Zoë Strauß"));
    EXPECT_THAT(find(u"E\u0301 NUN\u0303A"_qs), IsEmpty());
    EXPECT_THAT(find(u"PEN\u0303A"_qs), ElementsAre("José Peña"));
}

TEST_F(GuestStoreTest, WantsEveryWordInAnyOrder) {
    add({"Anna Maria Berg", "Anna Stein", "Berta Annan"});
    EXPECT_THAT(find(u"berg anna"_qs), ElementsAre("Anna Maria Berg"));
    EXPECT_THAT(find(u"  anna   "_qs), ElementsAre("Anna Maria Berg", "Anna Stein", "Berta Annan"));
    EXPECT_THAT(find(u"an an an"_qs), SizeIs(3));
    EXPECT_THAT(find(u"anna xyz"_qs), IsEmpty());
}

TEST_F(GuestStoreTest, SignsPartWordsAndMeanNothingElse) {
    add({"Per_Cent", "Per%Cent", "PerXCent", "O'Neill \"Ned\"", "Back\\slash", "*star?"});
    EXPECT_THAT(find(u"per%cent"_qs), ElementsAre("Per%Cent", "Per_Cent"));
    EXPECT_THAT(find(u"per% c"_qs), ElementsAre("Per%Cent", "Per_Cent"));
    EXPECT_THAT(find(u"o'n"_qs), ElementsAre("O'Neill \"Ned\""));
    EXPECT_THAT(find(u"o’n"_qs), ElementsAre("O'Neill \"Ned\""));
    EXPECT_THAT(find(u"neil"_qs), ElementsAre("O'Neill \"Ned\""));
    EXPECT_THAT(find(u"\"ned\""_qs), ElementsAre("O'Neill \"Ned\""));
    EXPECT_THAT(find(u"back\\"_qs), ElementsAre("Back\\slash"));
    EXPECT_THAT(find(u"*sta*"_qs), ElementsAre("*star?"));
    for (const QString& signs : {u"%"_qs, u"\\"_qs, u"*"_qs, u"?"_qs, u"\""_qs, u"^"_qs}) {
        EXPECT_THAT(find(signs), IsEmpty()) << signs.toStdString();
    }
    for (const QString& query : {u"per AND cent"_qs, u"per OR x"_qs, u"NOT per"_qs,
                                 u"NEAR(per cent)"_qs, u"name : xyz"_qs,
                                 u"'; DROP TABLE persons; --"_qs}) {
        EXPECT_THAT(find(query), IsEmpty()) << query.toStdString();
    }
    EXPECT_EQ(must(store_.count()), 6);
}

TEST_F(GuestStoreTest, FindsByOneLetterAndListsAllForNone) {
    add({"Čeněk", "anna", "Žofie", "Ben"});
    EXPECT_THAT(find(u"z"_qs), ElementsAre("Žofie"));
    EXPECT_THAT(find(QString()), ElementsAre("anna", "Ben", "Čeněk", "Žofie"));
    EXPECT_THAT(find(u" \t"_qs), SizeIs(4));
}

TEST_F(GuestStoreTest, FindsOneSignOfAHanName) {
    add({"潜水太郎", "山田"});
    EXPECT_THAT(find(u"水"_qs), ElementsAre("潜水太郎"));
}

TEST_F(GuestStoreTest, StopsAtTheLimit) {
    add({"Anna A", "Anna B", "Anna C"});
    EXPECT_THAT(find(u"anna"_qs, 2), ElementsAre("Anna A", "Anna B"));
    EXPECT_THAT(find(u"anna"_qs, 0), IsEmpty());
    EXPECT_THAT(find(u"anna"_qs, -1), IsEmpty());
}

TEST_F(GuestStoreTest, BearsALongText) {
    add({"Anna"});
    QStringList words;
    for (int i = 0; i < 5000; ++i) words += u"w%1"_qs.arg(i);
    EXPECT_THAT(find(words.join(u' ')), IsEmpty());
    EXPECT_THAT(find(QString(100000, u'a')), IsEmpty());
    EXPECT_THAT(find(u"anna "_qs.repeated(5000)), ElementsAre("Anna"));
}

TEST_F(GuestStoreTest, FindsAmongTenThousand) {
    must(execute(database_->connection(), u"BEGIN"_qs));
    Statement insert(database_->connection(),
                     u"INSERT INTO persons (name, folded_name, language) VALUES (?, ?, 'en')"_qs);
    for (int i = 0; i < 10000; ++i) {
        const QString name = u"Guest Nº%1 Søn%2"_qs.arg(i).arg(i % 7);
        must(insert.run(name, folded(name)));
    }
    must(execute(database_->connection(), u"COMMIT"_qs));
    EXPECT_EQ(must(store_.count()), 10000);
    EXPECT_THAT(find(u"son3 no9999"_qs), ElementsAre("Guest Nº9999 Søn3"));
    EXPECT_THAT(find(u"no999"_qs), SizeIs(11));
    EXPECT_THAT(find(u"son5"_qs, 2000), SizeIs(1428));
    EXPECT_THAT(find(u"nobody"_qs), IsEmpty());
}

}  // namespace
}  // namespace leadline
