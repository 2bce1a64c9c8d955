// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/person_search.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/records/fold.h"
#include "core/records/guest_store.h"
#include "core/records/migrations.h"
#include "core/records/session_store.h"
#include "core/records/statement.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::must;
using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;
using testing::UnorderedElementsAre;

class PersonSearch : public testing::Test {
protected:
    void add(const std::string& name, const std::string& phone = {},
             const std::string& email = {}) {
        Guest guest = test::guest_named("guest-1", name);
        guest.phone = phone;
        guest.email = email;
        must(SessionStore(*database_).insert(test::session_with(test::day(2026, 7, 4), {guest})));
    }
    std::vector<std::string> find(const QString& text, int limit = 20) {
        std::vector<std::string> names;
        for (const KnownGuest& known : must(GuestStore(*database_).find(text, limit))) {
            names.push_back(known.guest.name);
        }
        return names;
    }
    QStringList near(const QString& word) {
        return must(near_words(database_->connection(), word));
    }
    /// Both indexes hold what the persons say.
    void expect_in_step() {
        for (const char* index : {"person_names", "person_parts"}) {
            const QString name = QString::fromUtf8(index);
            test::run(*database_, u"INSERT INTO %1 (%1, rank) VALUES ('integrity-check', 1)"_qs
                                      .arg(name));
        }
        EXPECT_EQ(test::number(*database_,
                               u"SELECT count(*) FROM (SELECT person_id, name, signs, phone, email "
                               "FROM person_search_source EXCEPT SELECT * FROM person_search)"_qs),
                  0);
        EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM person_search"_qs),
                  test::number(*database_, u"SELECT count(*) FROM person_search_source"_qs));
        EXPECT_EQ(test::number(*database_,
                               u"SELECT count(*) FROM (SELECT w.value AS word, count(*) AS names "
                               "FROM person_search s, json_each('[' || "
                               "replace(json_quote(s.name), ' ', '\",\"') || ']') w "
                               "WHERE w.value <> '' GROUP BY w.value "
                               "EXCEPT SELECT word, names FROM name_words)"_qs),
                  0);
    }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
};

TEST(SearchWords, AreFoldedAndCutAtSigns) {
    EXPECT_EQ(search_words(u" Łukasz-Maria  O’Brien "_qs),
              (QStringList{u"lukasz"_qs, u"maria"_qs, u"o"_qs, u"brien"_qs}));
    EXPECT_EQ(search_words(u"ann ANN änn"_qs), QStringList{u"ann"_qs});
    EXPECT_EQ(search_words(u"+00 (0)664/12-003"_qs),
              (QStringList{u"0"_qs, u"664"_qs, u"12"_qs, u"3"_qs}));
    EXPECT_EQ(search_words(u"?!"_qs), QStringList());
}

TEST_F(PersonSearch, WantsTheStartOfAWordOfTheName) {
    add("Anna-Marie Sternberg");
    add("Susanna O'Mara");
    EXPECT_THAT(find(u"ann"_qs), ElementsAre("Anna-Marie Sternberg"));
    EXPECT_THAT(find(u"mar"_qs), ElementsAre("Anna-Marie Sternberg", "Susanna O'Mara"));
    EXPECT_THAT(find(u"mari stern"_qs), ElementsAre("Anna-Marie Sternberg"));
    EXPECT_THAT(find(u"berg"_qs), IsEmpty());
    EXPECT_THAT(find(u"usanna"_qs), ElementsAre("Susanna O'Mara")) << "a first letter missing";
}

TEST_F(PersonSearch, ForgivesCaseAndAccents) {
    for (const char* name : {"Øyvind Gråsten", "Łucja Wąsik", "Zoë Strauß", "Ærlig Ångman",
                             "Işıl Iğdır", "Ёлка Мойра"}) {
        add(name);
    }
    EXPECT_THAT(find(u"oyvind GRA"_qs), ElementsAre("Øyvind Gråsten"));
    EXPECT_THAT(find(u"lucja was"_qs), ElementsAre("Łucja Wąsik"));
    EXPECT_THAT(find(u"ŁUCJA"_qs), ElementsAre("Łucja Wąsik"));
    EXPECT_THAT(find(u"strauss zoe"_qs), ElementsAre("Zoë Strauß"));
    EXPECT_THAT(find(u"STRAUẞ"_qs), ElementsAre("Zoë Strauß"));
    EXPECT_THAT(find(u"aerlig"_qs), ElementsAre("Ærlig Ångman"));
    EXPECT_THAT(find(u"isil igdir"_qs), ElementsAre("Işıl Iğdır"));
    EXPECT_THAT(find(u"IŞIL IĞDIR"_qs), ElementsAre("Işıl Iğdır"));
    EXPECT_THAT(find(u"елка моира"_qs), ElementsAre("Ёлка Мойра"));
}

TEST_F(PersonSearch, FindsByPhoneHoweverItIsWritten) {
    add("Vera Onnig", "+43 (664) 123-45 67");
    add("Ilja Torsk", "0664 765 4321");
    EXPECT_THAT(find(u"664 123"_qs), ElementsAre("Vera Onnig"));
    EXPECT_THAT(find(u"0043664"_qs), ElementsAre("Vera Onnig"));
    EXPECT_THAT(find(u"+43/664/1234567"_qs), ElementsAre("Vera Onnig"));
    EXPECT_THAT(find(u"34567"_qs), ElementsAre("Vera Onnig"));
    EXPECT_THAT(find(u"0664"_qs), ElementsAre("Ilja Torsk", "Vera Onnig"));
    EXPECT_THAT(find(u"664 torsk"_qs), ElementsAre("Ilja Torsk"));
    EXPECT_THAT(find(u"664 99"_qs), IsEmpty());
}

TEST_F(PersonSearch, FindsByAPartOfTheEMail) {
    add("Vera Onnig", "", "v.Onnig77@Post.example");
    add("Mailin Torsk", "", "torsk@other.example");
    EXPECT_THAT(find(u"nig77"_qs), ElementsAre("Vera Onnig"));
    EXPECT_THAT(find(u"onnig77@post.ex"_qs), ElementsAre("Vera Onnig"));
    EXPECT_THAT(find(u"vera post"_qs), ElementsAre("Vera Onnig"));
    EXPECT_THAT(find(u"example"_qs), ElementsAre("Mailin Torsk", "Vera Onnig"));
    EXPECT_THAT(find(u"example torsk"_qs), ElementsAre("Mailin Torsk"));
    EXPECT_THAT(find(u"nnig other"_qs), IsEmpty()) << "the words are of two persons";
}

TEST_F(PersonSearch, NamesComeBeforeContacts) {
    add("Zita Post");
    add("Anna Berg", "", "anna@post.example");
    add("Postan Abel");
    EXPECT_THAT(find(u"post"_qs), ElementsAre("Postan Abel", "Zita Post", "Anna Berg"));
    EXPECT_THAT(find(u"post"_qs, 2), ElementsAre("Postan Abel", "Zita Post"));
}

TEST_F(PersonSearch, FindsSignsAnywhere) {
    add("潜水太郎");
    add("山田 花子");
    add("김서연");
    EXPECT_THAT(find(u"水"_qs), ElementsAre("潜水太郎"));
    EXPECT_THAT(find(u"水太"_qs), ElementsAre("潜水太郎"));
    EXPECT_THAT(find(u"田花"_qs), ElementsAre("山田 花子")) << "written without the space";
    EXPECT_THAT(find(u"花 山"_qs), ElementsAre("山田 花子"));
    EXPECT_THAT(find(u"太水"_qs), IsEmpty());
    EXPECT_THAT(find(u"서"_qs), ElementsAre("김서연"));
    EXPECT_THAT(find(u"서연"_qs), ElementsAre("김서연"));
}

TEST_F(PersonSearch, ForgivesOneSlipAWord) {
    add("Kristina Halvorsen");
    for (const char* slip :
         {"kristima", "kristna", "krisstina", "rkistina", "xristina", "ristina", "kkristina",
          "krsitina", "kristnia", "kristinx", "kristina halvorsem", "kristima halvrosen",
          "halvosen kri", "halvorsenn", "hallvors", "halcor"}) {
        EXPECT_THAT(find(QString::fromUtf8(slip)), ElementsAre("Kristina Halvorsen")) << slip;
    }
    for (const char* other : {"kris timo", "krxstxna", "ina", "xri", "halvorsxy", "olvorsen",
                              "krisx", "kristina halvorsen berg"}) {
        EXPECT_THAT(find(QString::fromUtf8(other)), IsEmpty()) << other;
    }
}

TEST_F(PersonSearch, ASlipIsOnlyThoughtOfWhenNobodyFits) {
    add("Marta Olm");
    add("Marte Olm");
    EXPECT_THAT(find(u"marta"_qs), ElementsAre("Marta Olm"));
    EXPECT_THAT(find(u"martx"_qs), ElementsAre("Marta Olm", "Marte Olm"));
}

TEST_F(PersonSearch, NearWordsAreOneSlipAway) {
    for (const char* name : {"anton", "antonia", "anon", "santon", "nton", "atnon", "ancon",
                             "berta", "antan", "xnton", "antoni"}) {
        add(name);
    }
    EXPECT_THAT(near(u"anton"_qs), Not(Contains(u"berta"_qs)));
    for (const QString& word : {u"anon"_qs, u"santon"_qs, u"nton"_qs, u"atnon"_qs, u"ancon"_qs,
                                u"antan"_qs, u"xnton"_qs}) {
        EXPECT_THAT(near(u"anton"_qs), Contains(word)) << word.toStdString();
    }
    EXPECT_THAT(near(u"ant"_qs), IsEmpty()) << "three letters turn into anything";
    EXPECT_THAT(near(u"1234"_qs), IsEmpty());
}

TEST_F(PersonSearch, TheIndexFollowsEveryChange) {
    SessionStore store(*database_);
    Guest guest = test::guest_born("guest-1", "Vera Onnig", test::day(1990, 2, 3));
    guest.phone = "664 123";
    const SessionRow row =
        must(store.insert(test::session_with(test::day(2026, 7, 4), {guest})));
    expect_in_step();
    guest.name = "Wera Onnig Onnig";
    guest.phone = "0699 555";
    guest.email = "wera@post.example";
    must(store.save(row, test::session_with(test::day(2026, 7, 4), {guest})));
    expect_in_step();
    EXPECT_THAT(find(u"vera"_qs), ElementsAre("Wera Onnig Onnig")) << "a slip, no longer the name";
    EXPECT_THAT(find(u"664"_qs), IsEmpty());
    EXPECT_THAT(find(u"699555"_qs), SizeIs(1));
    EXPECT_THAT(find(u"wera@post"_qs), SizeIs(1));
    test::run(*database_, u"UPDATE persons SET erased = 1"_qs);
    expect_in_step();
    EXPECT_THAT(find(u"wera"_qs), IsEmpty());
    EXPECT_EQ(must(GuestStore(*database_).count()), 0);
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM name_words"_qs), 0);
    test::run(*database_, u"UPDATE persons SET erased = 0"_qs);
    expect_in_step();
    EXPECT_THAT(find(u"wera"_qs), SizeIs(1));
    must(store.remove(row));
    test::run(*database_, u"DELETE FROM persons"_qs);
    expect_in_step();
    EXPECT_THAT(find(u"wera"_qs), IsEmpty());
}

TEST_F(PersonSearch, ASaveThatChangesNobodyLeavesTheIndexAlone) {
    add("Vera Onnig");
    const qint64 changes =
        test::number(*database_, u"SELECT count(*) FROM person_names_data"_qs);
    const SessionRow row = must(SessionStore(*database_).list()).at(0).row;
    const SessionFile file = must(SessionStore(*database_).load(row));
    for (int i = 0; i < 3; ++i) must(SessionStore(*database_).save(row, file));
    EXPECT_EQ(test::number(*database_, u"SELECT count(*) FROM person_names_data"_qs), changes);
}

TEST_F(PersonSearch, ManyHitsComeByNameThoseThatBeginSoFirst) {
    must(execute(database_->connection(), u"BEGIN"_qs));
    Statement insert(database_->connection(),
                     u"INSERT INTO persons (name, folded_name, language) VALUES (?, ?, 'en')"_qs);
    for (int i = 0; i < 3000; ++i) {
        const QString name = i % 2 == 0 ? u"Abel Zorn%1"_qs.arg(i, 4, 10, QChar(u'0'))
                                        : u"Zora%1 Abel"_qs.arg(i, 4, 10, QChar(u'0'));
        must(insert.run(name, folded(name)));
    }
    must(insert.run(u"Aabe Zorn0"_qs, u"aabe zorn0"_qs));
    must(execute(database_->connection(), u"COMMIT"_qs));
    EXPECT_THAT(find(u"zor"_qs, 3),
                ElementsAre("Zora0001 Abel", "Zora0003 Abel", "Zora0005 Abel"));
    const auto all = find(u"zor"_qs, 5000);
    ASSERT_THAT(all, SizeIs(3001));
    EXPECT_EQ(all[1499], "Zora2999 Abel");
    EXPECT_EQ(all[1500], "Aabe Zorn0");
    EXPECT_EQ(all[1501], "Abel Zorn0000");
    EXPECT_EQ(all.back(), "Abel Zorn2998");
    EXPECT_THAT(find(u"abel zor"_qs, 2), ElementsAre("Abel Zorn0000", "Abel Zorn0002"));
    EXPECT_THAT(find(u"abel zora"_qs, 2), ElementsAre("Zora0001 Abel", "Zora0003 Abel"));
    const auto page = must(GuestStore(*database_).page(2999, 5));
    ASSERT_THAT(page, SizeIs(2));
    EXPECT_EQ(page[1].guest.name, "Zora2999 Abel");
}

TEST_F(PersonSearch, SaysWhenAPersonLastCame) {
    for (const int year : {2024, 2026, 2025}) {
        must(SessionStore(*database_)
                 .insert(test::session_with(
                     test::day(year, 7, 4),
                     {test::guest_born("guest-1", "Vera Onnig", test::day(1990, 2, 3))})));
    }
    const auto found = must(GuestStore(*database_).find(u"vera"_qs));
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].sessions, 3);
    EXPECT_EQ(found[0].last_session, test::day(2026, 7, 4));
}

TEST(MigrationToTheSearch, FillsTheIndexFromWhatIsThere) {
    const test::Folder folder;
    const QString name = u"schema 3"_qs;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_qs, name);
        database.setDatabaseName(folder.records());
        ASSERT_TRUE(database.open());
        auto steps = must(built_in_steps());
        steps.resize(3);
        must(migrate(database, steps));
        must(execute(database, u"INSERT INTO persons (name, folded_name, language, phone, email) "
                               "VALUES ('Vera Onnig', 'vera onnig', 'en', '+43 664', "
                               "'v@post.example'), ('潜水太郎', '潜水太郎', 'ja', '', '')"_qs));
    }
    QSqlDatabase::removeDatabase(name);
    const auto database = test::open(folder.records());
    GuestStore store(*database);
    EXPECT_EQ(must(store.count()), 2);
    for (const QString& text : {u"onn"_qs, u"4366"_qs, u"v@post"_qs, u"vero"_qs, u"水太"_qs}) {
        EXPECT_THAT(must(store.find(text)), SizeIs(1)) << text.toStdString();
    }
}

}  // namespace
}  // namespace leadline
