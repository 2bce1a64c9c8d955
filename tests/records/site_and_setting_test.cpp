// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "core/records/site_store.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace leadline {
namespace {

using test::day;
using test::must;
using testing::ElementsAre;

class SiteStoreTest : public testing::Test {
protected:
    SessionRow insert(const Date& date, const Site& site) {
        SessionFile file = test::session_with(date, {});
        file.session.site = site;
        return must(sessions_.insert(file));
    }
    static Site bay(double depth_m) {
        Site site = test::full_session().session.site;
        site.name = "Bay";
        site.bottom_depth = Depth(Meters(depth_m));
        return site;
    }

    std::unique_ptr<Database> database_ = test::open(u":memory:"_qs);
    SessionStore sessions_{*database_};
    SiteStore sites_{*database_};
};

TEST_F(SiteStoreTest, GivesBackEveryField) {
    const Site site = test::full_session().session.site;
    must(sites_.put(site));
    EXPECT_THAT(must(sites_.list()), ElementsAre(site));
}

TEST_F(SiteStoreTest, ReplacesTheSiteOfThatName) {
    must(sites_.put(bay(6.0)));
    Site plain;
    plain.name = "Bay";
    must(sites_.put(plain));
    EXPECT_THAT(must(sites_.list()), ElementsAre(plain));
}

TEST_F(SiteStoreTest, ListsByNameWithoutRegardToAccentsAndCase) {
    std::vector<std::string> names{"Zenit", "ostrov", "Étang", "Ærø"};
    for (const std::string& name : names) {
        Site site;
        site.name = name;
        must(sites_.put(site));
    }
    std::vector<std::string> listed;
    for (const Site& site : must(sites_.list())) listed.push_back(site.name);
    EXPECT_THAT(listed, ElementsAre("Ærø", "Étang", "ostrov", "Zenit"));
}

TEST_F(SiteStoreTest, RefusesASiteWithoutAName) {
    const Result<Done> put = sites_.put(Site{});
    ASSERT_FALSE(put.has_value());
    EXPECT_EQ(put.error().code, ErrorCode::bad_text);
}

TEST_F(SiteStoreTest, LearnsFromSessions) {
    insert(day(2026, 7, 5), bay(7.0));
    EXPECT_THAT(must(sites_.list()), ElementsAre(bay(7.0)));
    insert(day(2026, 7, 6), bay(8.0));
    EXPECT_THAT(must(sites_.list()), ElementsAre(bay(8.0)));
}

TEST_F(SiteStoreTest, IsNotSetBackByAnEarlierSession) {
    insert(day(2026, 7, 5), bay(7.0));
    const SessionRow earlier = insert(day(2026, 7, 4), bay(3.0));
    EXPECT_THAT(must(sites_.list()), ElementsAre(bay(7.0)));
    EXPECT_EQ(must(sessions_.load(earlier)).session.site, bay(3.0));
}

TEST_F(SiteStoreTest, LeavesSessionsAsTheyWere) {
    const SessionRow row = insert(day(2026, 7, 5), bay(7.0));
    must(sites_.put(bay(9.0)));
    EXPECT_EQ(must(sessions_.load(row)).session.site, bay(7.0));
    must(sessions_.remove(row));
    EXPECT_THAT(must(sites_.list()), ElementsAre(bay(9.0)));
}

TEST_F(SiteStoreTest, KeepsNoSiteWithoutAName) {
    insert(day(2026, 7, 5), Site{});
    EXPECT_TRUE(must(sites_.list()).empty());
}

TEST(SettingStoreTest, GivesBackWhatWasPut) {
    const auto database = test::open(u":memory:"_qs);
    SettingStore settings(*database);
    EXPECT_EQ(must(settings.get(u"units"_qs)), std::nullopt);
    must(settings.put(u"units"_qs, u"metric"_qs));
    must(settings.put(u"units"_qs, u"impérial 'ft'"_qs));
    must(settings.put(u"card"_qs, QString()));
    EXPECT_EQ(must(settings.get(u"units"_qs)), u"impérial 'ft'"_qs);
    EXPECT_EQ(must(settings.get(u"card"_qs)), u""_qs);
    EXPECT_EQ(must(settings.get(u"unit_"_qs)), std::nullopt);
}

TEST(SettingStoreTest, RefusesANamelessSetting) {
    const auto database = test::open(u":memory:"_qs);
    EXPECT_FALSE(SettingStore(*database).put(QString(), u"x"_qs).has_value());
}

TEST(SettingStoreTest, OutlivesTheProgram) {
    const test::Folder folder;
    {
        const auto database = test::open(folder.records());
        must(SettingStore(*database).put(u"last_session"_qs, u"7"_qs));
    }
    const auto database = test::open(folder.records());
    EXPECT_EQ(must(SettingStore(*database).get(u"last_session"_qs)), u"7"_qs);
}

}  // namespace
}  // namespace leadline
