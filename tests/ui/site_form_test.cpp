// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of the Site tab: place, conditions, rules, and the numbers of the place.
#include <gmock/gmock.h>

#include <QComboBox>
#include <QCompleter>
#include <QAbstractItemView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QToolButton>
#include <QUndoStack>

#include "site_gas_walk.h"
#include "ui/site/place_facts.h"
#include "ui/site/place_findings.h"
#include "ui/site/site_tab.h"
#include "ui/widgets/quantity_box.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

class SiteTabTest : public DocumentTest {
protected:
    void SetUp() override {
        open("salt-cove");
        tab_ = std::make_unique<SiteTab>(document_);
        tab_->resize(1100, 760);
        tab_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(tab_.get()));
    }
    void type(const char* name, const char* text) {
        auto* box = child<QuantityBox>(*tab_, name);
        ASSERT_NE(box, nullptr);
        box->setFocus();
        box->selectAll();
        if (*text == '\0') {
            QTest::keyClick(box, Qt::Key_Delete);
        } else {
            QTest::keyClicks(box, QString::fromUtf8(text));
        }
        QTest::keyClick(box, Qt::Key_Return);
    }
    void choose(const char* name, int index) {
        auto* list = child<QComboBox>(*tab_, name);
        list->setFocus();
        list->setCurrentIndex(index);
        Q_EMIT list->activated(index);
    }
    const Session& session() const { return document_.session(); }
    bool has(FindingCode code) const {
        const auto& findings = document_.plan().findings;
        return std::any_of(findings.begin(), findings.end(),
                           [&](const Finding& finding) { return finding.code == code; });
    }

    std::unique_ptr<SiteTab> tab_;
};

TEST_F(SiteTabTest, TypingANameIsOneStepAndKeepsTheCursor) {
    const std::string before = session().site.name;
    auto* name = child<QLineEdit>(*tab_, "site_name");
    name->setFocus();
    name->setCursorPosition(0);
    QTest::keyClicks(name, QStringLiteral("New "));
    EXPECT_EQ(session().site.name, "New " + before);
    EXPECT_EQ(name->cursorPosition(), 4);
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    document_.undo_stack()->undo();
    EXPECT_EQ(session().site.name, before);
    EXPECT_EQ(name->text().toStdString(), before);
}

TEST_F(SiteTabTest, EveryFieldReachesTheSession) {
    type("site_altitude", "450");
    type("site_latitude", "47.5");
    type("site_bottom_depth", "80");
    type("conditions_water", "16");
    type("conditions_air", "25");
    type("conditions_barometer", "960");
    type("conditions_visibility", "7");
    type("conditions_waves", "0.4");
    choose("site_entry", 1);
    choose("conditions_current", 2);
    QTest::keyClicks(child<QLineEdit>(*tab_, "site_meeting_place"), QStringLiteral("!"));
    QTest::keyClicks(child<QLineEdit>(*tab_, "site_emergency_line"), QStringLiteral("9"));
    QTest::keyClicks(child<QPlainTextEdit>(*tab_, "site_emergency_plan"), QStringLiteral("Plan "));
    EXPECT_NEAR(session().site.altitude.meters().value(), 450.0, 1e-9);
    EXPECT_NEAR(session().site.latitude.value(), 47.5, 1e-9);
    ASSERT_TRUE(session().site.bottom_depth.has_value());
    EXPECT_NEAR(session().site.bottom_depth->meters().value(), 80.0, 1e-9);
    EXPECT_NEAR(Celsius(session().conditions.water_temperature).value(), 16.0, 1e-9);
    EXPECT_NEAR(Celsius(session().conditions.air_temperature).value(), 25.0, 1e-9);
    EXPECT_NEAR(session().conditions.barometer.value_or(Pascals(0.0)).value(), 96000.0, 1e-6);
    EXPECT_NEAR(session().conditions.visibility.value_or(Meters(0.0)).value(), 7.0, 1e-9);
    EXPECT_NEAR(session().conditions.wave_height.value_or(Meters(0.0)).value(), 0.4, 1e-9);
    EXPECT_EQ(session().site.entry, Entry::boat);
    EXPECT_EQ(session().conditions.current, Current::moderate);
    EXPECT_THAT(session().site.meeting_place, ::testing::HasSubstr("!"));
    EXPECT_THAT(session().site.emergency_line, ::testing::HasSubstr("9"));
    EXPECT_THAT(session().site.emergency_plan, ::testing::StartsWith("Plan "));
}

TEST_F(SiteTabTest, AnEmptiedBarometerFallsBackToTheAltitude) {
    ASSERT_TRUE(document_.plan().environment.from_barometer);
    type("conditions_barometer", "");
    EXPECT_FALSE(session().conditions.barometer.has_value());
    EXPECT_FALSE(document_.plan().environment.from_barometer);
    const std::string why =
        child<QLabel>(*tab_, "reason_surface_pressure")->text().toStdString();
    EXPECT_THAT(why, ::testing::HasSubstr("Standard atmosphere"));
}

TEST_F(SiteTabTest, WaterPresetsSetTheSalinity) {
    choose("site_water", 1);
    EXPECT_EQ(session().site.salinity.value, 0.0);
    choose("site_water", 2);
    EXPECT_EQ(session().site.salinity.value, 7.0);
    choose("site_water", 0);
    EXPECT_EQ(session().site.salinity.value, 35.0);
    type("site_salinity", "38");
    EXPECT_EQ(session().site.salinity.value, 38.0);
    EXPECT_EQ(child<QComboBox>(*tab_, "site_water")->currentIndex(), 3) << "none of the presets";
}

TEST_F(SiteTabTest, AKnownSiteFillsTheFormInOneStep) {
    const Site before = session().site;
    Site known;
    known.name = "Quarry pond";
    known.altitude = Altitude(Meters(420.0));
    known.latitude = Degrees(48.0);
    known.bottom_depth = Depth(Meters(9.0));
    known.emergency_line = "+00 555 0101";
    Site other = known;
    other.name = "River bend";
    int asked = 0;
    tab_->set_site_finder([&] {
        ++asked;
        return std::vector<Site>{other, known};
    });
    QTest::mouseClick(child<QToolButton>(*tab_, "site_known"), Qt::LeftButton);
    auto* name = child<QLineEdit>(*tab_, "site_name");
    auto* list = name->completer()->popup();
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->isVisible(); }));
    EXPECT_GE(asked, 1);
    ASSERT_EQ(list->model()->rowCount(), 2);
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(session().site, known);
    EXPECT_EQ(document_.undo_stack()->count(), 1);
    EXPECT_EQ(name->text().toStdString(), "Quarry pond");
    EXPECT_NEAR(child<QuantityBox>(*tab_, "site_altitude")->value(), 420.0, 1e-9);
    document_.undo_stack()->undo();
    EXPECT_EQ(session().site, before);
}

TEST_F(SiteTabTest, WithoutRecordsThereIsNoListOfKnownSites) {
    EXPECT_TRUE(child<QToolButton>(*tab_, "site_known")->isHidden());
}

TEST_F(SiteTabTest, TickingARuleSetChangesFindings) {
    ASSERT_FALSE(has(FindingCode::depth_over_limit));
    auto* list = child<QListWidget>(*tab_, "rule_sets");
    const auto item = [&](const char* id) -> QListWidgetItem* {
        for (int row = 0; row < list->count(); ++row) {
            if (list->item(row)->data(Qt::UserRole).toString() == QString::fromUtf8(id)) {
                return list->item(row);
            }
        }
        return nullptr;
    };
    ASSERT_EQ(list->count(), static_cast<int>(document_.rules().sets.size()));
    QListWidgetItem* france = item("france-code-du-sport");  // at most 6 m; the dive goes to 8 m
    ASSERT_NE(france, nullptr);
    EXPECT_FALSE(france->toolTip().isEmpty());
    list->setCurrentItem(france);
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Space);
    EXPECT_EQ(france->checkState(), Qt::Checked);
    EXPECT_TRUE(has(FindingCode::depth_over_limit));
    EXPECT_THAT(child<QLabel>(*tab_, "site_finding_1")->text().toStdString(),
                ::testing::HasSubstr("Stop"));
    document_.undo_stack()->undo();
    EXPECT_EQ(france->checkState(), Qt::Unchecked);
    EXPECT_FALSE(has(FindingCode::depth_over_limit));
}

TEST_F(SiteTabTest, WithNoRuleTickedItSaysSo) {
    auto* none = child<QWidget>(*tab_, "rule_sets_none");
    EXPECT_TRUE(none->isHidden());
    ASSERT_TRUE(
        document_.edit({}, [](Session& session) { session.rule_sets.clear(); }).has_value());
    EXPECT_FALSE(none->isHidden());
}

TEST_F(SiteTabTest, WhyShowsTheReasonAndTheSource) {
    for (const PlaceFact& fact : place_facts(document_)) {
        const std::string id = fact.id.toStdString();
        auto* why = child<QToolButton>(*tab_, ("why_" + id).c_str());
        auto* reason = child<QLabel>(*tab_, ("reason_" + id).c_str());
        EXPECT_TRUE(reason->isHidden());
        why->click();
        EXPECT_FALSE(reason->isHidden());
        EXPECT_FALSE(reason->text().isEmpty()) << id;
        EXPECT_EQ(child<QLabel>(*tab_, ("number_" + id).c_str())->text(), fact.value);
    }
}

TEST_F(SiteTabTest, NumbersFollowTheUnits) {
    document_.set_units(UnitSystem::imperial);
    for (const PlaceFact& fact : place_facts(document_)) {
        EXPECT_THAT(fact.value.toStdString(), ::testing::Not(::testing::EndsWith("bar")));
        EXPECT_THAT(fact.value.toStdString(), ::testing::Not(::testing::HasSubstr("kg")));
        EXPECT_THAT(fact.value.toStdString(), ::testing::Not(::testing::HasSubstr("\u00a0m")));
    }
    EXPECT_THAT(child<QLabel>(*tab_, "site_headline")->text().toStdString(),
                ::testing::HasSubstr("ft"));
    EXPECT_THAT(child<QuantityBox>(*tab_, "site_bottom_depth")->text().toStdString(),
                ::testing::HasSubstr("ft"));
}

TEST_F(SiteTabTest, AFindingLeadsToItsField) {
    tab_->show_finding(FindingCode::emergency_line_missing);
    EXPECT_TRUE(child<QWidget>(*tab_, "site_emergency_line")->hasFocus());
    tab_->show_finding(FindingCode::water_too_cold);
    EXPECT_TRUE(child<QWidget>(*tab_, "conditions_water")->hasFocus());
    tab_->show_finding(FindingCode::depth_over_limit);
    EXPECT_TRUE(child<QWidget>(*tab_, "profile_view")->hasFocus());
    tab_->show_subject({});
    EXPECT_TRUE(child<QWidget>(*tab_, "profile_view")->hasFocus());
}

TEST_F(SiteTabTest, OverruledFindingsAreNotRepeated) {
    ASSERT_TRUE(document_.edit({}, [](Session& session) {
        session.site.emergency_line.clear();
    }).has_value());
    auto* first = child<QLabel>(*tab_, "site_finding_1");
    EXPECT_THAT(first->text().toStdString(), ::testing::HasSubstr("emergency number"));
    ASSERT_TRUE(document_.edit({}, [](Session& session) {
        session.overrules.push_back({"emergency_line_missing", "Radio only", "Me"});
    }).has_value());
    EXPECT_THAT(first->text().toStdString(),
                ::testing::Not(::testing::HasSubstr("emergency number")));
}

TEST_F(SiteTabTest, TabGoesThroughTheFormAndThenTheDive) {
    const QStringList order = tab_order(*tab_, *child<QWidget>(*tab_, "site_name"));
    const QStringList wanted{
        QStringLiteral("site_name"),          QStringLiteral("site_entry"),
        QStringLiteral("site_bottom_depth"),  QStringLiteral("site_water"),
        QStringLiteral("site_salinity"),      QStringLiteral("site_altitude"),
        QStringLiteral("site_latitude"),      QStringLiteral("site_meeting_place"),
        QStringLiteral("site_emergency_line"), QStringLiteral("site_emergency_plan"),
        QStringLiteral("conditions_water"),   QStringLiteral("conditions_air"),
        QStringLiteral("conditions_barometer"), QStringLiteral("conditions_visibility"),
        QStringLiteral("conditions_current"), QStringLiteral("conditions_waves"),
        QStringLiteral("rule_sets"),          QStringLiteral("quick_deepest"),
        QStringLiteral("quick_skills_depth"), QStringLiteral("quick_skills"),
        QStringLiteral("quick_tour"),         QStringLiteral("quick_draw"),
        QStringLiteral("profile_view"),       QStringLiteral("corner_table"),
        QStringLiteral("corner_add"),         QStringLiteral("corner_remove"),
        QStringLiteral("corner_follow"),      QStringLiteral("ear_chart"),
        QStringLiteral("lung_chart"),         QStringLiteral("why_surface_pressure")};
    QStringList found;
    for (const QString& name : order) {
        if (wanted.contains(name)) found << name;
    }
    EXPECT_EQ(found.join(u' ').toStdString(), wanted.join(u' ').toStdString());
}

TEST_F(SiteTabTest, EveryControlHasANameForEyesEarsAndScripts) {
    tab_->set_site_finder([] { return std::vector<Site>{}; });
    EXPECT_EQ(nameless_controls(*tab_).join(u' ').toStdString(), "");
    EXPECT_EQ(unnamed_controls(*tab_).join(u' ').toStdString(), "");
}

}  // namespace
}  // namespace leadline::testing
