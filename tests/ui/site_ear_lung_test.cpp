// SPDX-License-Identifier: GPL-3.0-or-later
// The ear and the lung chart of the Site tab: what they say is what the plan has.
#include <gmock/gmock.h>

#include <QHelpEvent>
#include <QImage>
#include <QLabel>
#include <QMouseEvent>
#include <set>

#include "site_gas_walk.h"
#include "ui/site/ear_chart.h"
#include "ui/site/ear_lung_panel.h"
#include "ui/site/ear_lung_words.h"
#include "ui/site/lung_chart.h"
#include "ui/site/place_facts.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

constexpr double meters_per_foot = 0.3048;

class EarLungTest : public DocumentTest {
protected:
    void SetUp() override {
        open("salt-cove");
        panel_ = std::make_unique<EarLungPanel>(document_);
        ears_ = child<EarChart>(*panel_, "ear_chart");
        lungs_ = child<LungChart>(*panel_, "lung_chart");
        panel_->resize(1000, 520);
        panel_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(panel_.get()));
        ears_->clearFocus();  // a window of its own gives it to its first control
    }
    const Plan& plan() const { return document_.plan(); }
    const EarLungCharts& charts() const { return plan().ears_and_lungs; }
    /// Straight down, along the bottom, straight up.
    void dive(double meters, double meters_per_minute) {
        const double down = meters / meters_per_minute;
        Profile profile;
        profile.points = {{Minutes(0.0), Depth(), Phase::surface},
                          {Minutes(down), Depth(Meters(meters)), Phase::descent},
                          {Minutes(down + 10.0), Depth(Meters(meters)), Phase::tour},
                          {Minutes(down + 10.0 + meters / 3.0 + 0.1), Depth(), Phase::ascent}};
        ASSERT_TRUE(
            document_.edit({}, [&](Session& session) { session.profile = profile; }).has_value());
    }
    static void hover(MarkerChart& chart, const QPointF& at) {
        QMouseEvent move(QEvent::MouseMove, at, chart.mapToGlobal(at), Qt::NoButton, Qt::NoButton,
                         {});
        QCoreApplication::sendEvent(&chart, &move);
    }
    static void leave(MarkerChart& chart) {
        QEvent gone(QEvent::Leave);
        QCoreApplication::sendEvent(&chart, &gone);
    }
    static double at(const MarkerChart& chart) {
        return chart.marker() ? chart.marker()->meters().value() : -1.0;
    }
    static std::string all_text(const MarkerChart& chart) {
        std::string all;
        for (const ChartLabel& label : chart.labels()) all += label.text.toStdString() + "\n";
        return all;
    }
    static void expect_apart(const MarkerChart& chart) {
        const auto& labels = chart.labels();
        EXPECT_GE(labels.size(), 2U);
        const QRectF inside = QRectF(chart.rect()).adjusted(-1.0, -1.0, 1.0, 1.0);
        for (std::size_t i = 0; i < labels.size(); ++i) {
            EXPECT_TRUE(inside.contains(labels[i].box))
                << labels[i].text.toStdString() << " leaves the drawing";
            for (std::size_t j = i + 1; j < labels.size(); ++j) {
                EXPECT_FALSE(labels[i].box.intersects(labels[j].box))
                    << labels[i].text.toStdString() << " covers " << labels[j].text.toStdString();
            }
        }
    }

    std::unique_ptr<EarLungPanel> panel_;
    EarChart* ears_ = nullptr;
    LungChart* lungs_ = nullptr;
};

TEST_F(EarLungTest, AtEachClearingTheReadingIsThePlansOwnPeak) {
    for (const Depth depth : plan().environment.ladder.clear_at) {
        double peak = -1.0;
        for (const EarPoint& point : charts().ears.cleared) {
            if (std::abs((point.depth - depth).value()) < 1e-9) {
                peak = std::max(peak, point.difference.value());
            }
        }
        ASSERT_GT(peak, 0.0) << "the plan clears at " << depth.meters().value();
        EXPECT_NEAR(ear_reading(charts().ears, depth).cleared.value(), peak, 1.0);
    }
}

TEST_F(EarLungTest, NeverClearedReadsTheWaterAboveAndLocksWhereThePlanSays) {
    const Environment& place = plan().environment;
    EXPECT_NEAR(ear_reading(charts().ears, place.deepest).never_cleared.value(),
                place.ladder.uncleared_at_bottom.value(), 1.0);
    // A straight line between the corners against the curve of slightly denser water.
    EXPECT_NEAR(ear_reading(charts().ears, place.ladder.locks_at).never_cleared.value(),
                charts().locking.value(), 10.0);
    EXPECT_EQ(ear_reading(charts().ears, Depth()).never_cleared.value(), 0.0);
}

TEST_F(EarLungTest, WhereTheWayPassesADepthTwiceTheMostIsRead) {
    EarTrace trace;
    trace.cleared = {{Minutes(0.0), Depth(), Pascals(0.0)},
                     {Minutes(1.0), Depth(Meters(2.0)), Pascals(2000.0)},
                     {Minutes(1.0), Depth(Meters(2.0)), Pascals(0.0)},
                     {Minutes(2.0), Depth(Meters(1.0)), Pascals(0.0)},
                     {Minutes(4.0), Depth(Meters(3.0)), Pascals(9000.0)}};
    trace.never_cleared = trace.cleared;
    EXPECT_NEAR(ear_reading(trace, Depth(Meters(2.0))).cleared.value(), 4500.0, 1e-9);
    EXPECT_NEAR(ear_reading(trace, Depth(Meters(1.0))).cleared.value(), 1000.0, 1e-9);
    EXPECT_EQ(ear_reading(trace, Depth(Meters(9.0))).cleared.value(), 0.0) << "nobody goes there";
}

TEST_F(EarLungTest, ArrowsMoveTheMarkerAndReadOutThePlan) {
    ears_->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(QTest::qWaitFor([&] { return ears_->hasFocus(); }));
    EXPECT_EQ(at(*ears_), plan().environment.deepest.meters().value());
    QTest::keyClick(ears_, Qt::Key_Home);
    EXPECT_EQ(at(*ears_), 0.0);
    for (int i = 0; i < 30; ++i) QTest::keyClick(ears_, Qt::Key_Right);
    EXPECT_NEAR(at(*ears_), 3.0, 1e-9);
    QTest::keyClick(ears_, Qt::Key_Up);
    EXPECT_NEAR(at(*ears_), 2.9, 1e-9);
    QTest::keyClick(ears_, Qt::Key_Down);
    const std::string read = ears_->reading().toStdString();
    EXPECT_THAT(read, HasSubstr("3.0\u00a0m deep"));
    EXPECT_THAT(read, HasSubstr("Cleared: 0.5\u00a0m, needs opening"));
    EXPECT_THAT(read, HasSubstr("Never cleared: 3.0\u00a0m, a scarred drum can tear"));
    EXPECT_THAT(ears_->accessibleDescription().toStdString(), HasSubstr("Never cleared: 3.0"));
    EXPECT_THAT(read, Not(HasSubstr("any drum")));
    QTest::keyClick(ears_, Qt::Key_PageUp);
    EXPECT_NEAR(at(*ears_), 2.2, 1e-9) << "a tenth of the way";
    QTest::keyClick(ears_, Qt::Key_End);
    QTest::keyClick(ears_, Qt::Key_Right);
    EXPECT_EQ(at(*ears_), plan().environment.deepest.meters().value()) << "held at the bottom";
    QTest::keyClick(ears_, Qt::Key_Home);
    QTest::keyClick(ears_, Qt::Key_PageUp);
    EXPECT_EQ(at(*ears_), 0.0);
}

TEST_F(EarLungTest, TheReadingNeverFallsShortOfTheFigureThatIsSaid) {
    // The tube locks at 1.06 m; the drawing says 1.0 m, and so does the marker there.
    ASSERT_GT(plan().environment.ladder.locks_at.meters().value(), 1.0);
    EXPECT_THAT(all_text(*ears_), HasSubstr("locks at 1.0"));
    hover(*ears_, {ears_->x_of(Depth(Meters(1.0))), ears_->plot().center().y()});
    EXPECT_THAT(ears_->reading().toStdString(),
                HasSubstr("Never cleared: 1.0\u00a0m, tube locked"));
    hover(*ears_, {ears_->x_of(Depth(Meters(0.9))), ears_->plot().center().y()});
    EXPECT_THAT(ears_->reading().toStdString(),
                HasSubstr("Never cleared: 0.9\u00a0m, needs"));
}

TEST_F(EarLungTest, ThePointerReadsTheSameAndLeavesNothingBehind) {
    EXPECT_FALSE(ears_->marker().has_value());
    hover(*ears_, {ears_->x_of(Depth(Meters(4.0))), ears_->plot().center().y()});
    EXPECT_NEAR(at(*ears_), 4.0, 1e-9);
    EXPECT_THAT(ears_->reading().toStdString(), HasSubstr("4.0\u00a0m deep"));
    leave(*ears_);
    EXPECT_FALSE(ears_->marker().has_value());
    EXPECT_THAT(ears_->accessibleDescription().toStdString(), HasSubstr("Clear at least every"));
    hover(*ears_, {ears_->width() - 3.0, 40.0});
    EXPECT_FALSE(ears_->marker().has_value()) << "over the names of the thresholds";
}

TEST_F(EarLungTest, TheKeysGoOnFromWhereThePointerWas) {
    lungs_->setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return lungs_->hasFocus(); }));
    hover(*lungs_, {lungs_->x_of(Depth(Meters(3.0))), lungs_->plot().center().y()});
    QTest::keyClick(lungs_, Qt::Key_Right);
    EXPECT_NEAR(at(*lungs_), 3.5, 1e-9);
    leave(*lungs_);
    EXPECT_NEAR(at(*lungs_), 3.5, 1e-9) << "the keys' place stays while it has the focus";
}

TEST_F(EarLungTest, TheLungsMarkerGoesThroughEveryLimitOfThePlan) {
    lungs_->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(QTest::qWaitFor([&] { return lungs_->hasFocus(); }));
    QTest::keyClick(lungs_, Qt::Key_Home);
    for (const HeldBreathLimit& limit : charts().lungs) {
        EXPECT_EQ(at(*lungs_), limit.from.meters().value());
        const std::string read = lungs_->reading().toStdString();
        EXPECT_THAT(read, HasSubstr(text(limit.from.meters(), UnitSystem::metric).toStdString()));
        EXPECT_THAT(read, HasSubstr(growth_text(limit.expansion).toStdString()));
        if (limit.ascent) {
            EXPECT_THAT(read, HasSubstr("can tear after " +
                                        length_below(*limit.ascent, UnitSystem::metric)
                                            .toStdString()));
        } else {
            EXPECT_THAT(read, HasSubstr("surface before the limit"));
        }
        QTest::keyClick(lungs_, Qt::Key_Down);
    }
}

TEST_F(EarLungTest, EachColumnIsALimitOfThePlanAndTheDeepestIsThere) {
    for (const double meters : {1.0, 2.0, 5.3, 8.0, 12.0, 60.0}) {
        dive(meters, 5.0);
        ASSERT_FALSE(lungs_->columns().empty());
        EXPECT_EQ(lungs_->columns().back().from, plan().environment.deepest);
        EXPECT_LE(lungs_->columns().size(), 9U);
        for (const HeldBreathLimit& column : lungs_->columns()) {
            const bool planned = std::any_of(
                charts().lungs.begin(), charts().lungs.end(), [&](const HeldBreathLimit& limit) {
                    return limit.from == column.from && limit.expansion == column.expansion;
                });
            EXPECT_TRUE(planned) << column.from.meters().value();
        }
    }
}

TEST_F(EarLungTest, TheSentencesSayThePlansNumbers) {
    const std::string ears = child<QLabel>(*panel_, "ear_sentence")->text().toStdString();
    EXPECT_THAT(ears, HasSubstr("Clear at least every 0.5\u00a0m: 16 times on the way down"));
    EXPECT_THAT(ears, HasSubstr("The tube locks after 1.0\u00a0m without clearing."));
    EXPECT_THAT(ears, HasSubstr("Largest step for half of that: 0.5\u00a0m."));
    EXPECT_THAT(ears_->accessibleDescription().toStdString(), HasSubstr("16 times"));
    const std::string lungs = child<QLabel>(*panel_, "lung_sentence")->text().toStdString();
    EXPECT_THAT(lungs, HasSubstr("about 0.9\u00a0m of ascent"));
    EXPECT_THAT(lungs, HasSubstr("People were hurt from 1 m."));
    EXPECT_THAT(child<QLabel>(*panel_, "ear_safety")->text().toStdString(),
                HasSubstr("Never force."));
    EXPECT_THAT(child<QLabel>(*panel_, "lung_safety")->text().toStdString(),
                HasSubstr("physician"));
    dive(0.3, 2.0);
    EXPECT_THAT(child<QLabel>(*panel_, "ear_sentence")->text().toStdString(),
                HasSubstr("shallower than one step"));
    EXPECT_THAT(child<QLabel>(*panel_, "lung_sentence")->text().toStdString(),
                HasSubstr("no promise"));
}

TEST_F(EarLungTest, ALimitIsNeverSaidLaterThanItComes) {
    EXPECT_EQ(length_below(Meters(0.99), UnitSystem::metric).toStdString(), "0.9\u00a0m");
    EXPECT_EQ(length_below(Meters(0.3), UnitSystem::metric).toStdString(), "0.3\u00a0m");
    EXPECT_EQ(length_below(Meters(1.06), UnitSystem::imperial).toStdString(), "3.4\u00a0ft");
    EXPECT_EQ(growth_text(1.71).toStdString(), "×1.8");
    EXPECT_EQ(growth_text(2.0).toStdString(), "×2.0");
    EXPECT_EQ(interval_text(Seconds(3.9)).toStdString(), "3 s");
    EXPECT_EQ(interval_text(Seconds(0.5)).toStdString(), "less than a second");
}

TEST_F(EarLungTest, NamesOfLinesStandInTheDrawing) {
    const std::string ears = all_text(*ears_);
    for (const char* words : {"Needs opening", "Tube locks\nfrom 1.0",
                              "A scarred drum\ntore at 2.9", "A healthy drum\ntore at 4.8",
                              "Never cleared: locks at 1.0", "Cleared every 0.5",
                              "Metres of water"}) {
        EXPECT_THAT(ears, HasSubstr(words));
    }
    const std::string lungs = all_text(*lungs_);
    for (const char* words :
         {"A full breath held here", "0.9\u00a0m up: a lung can tear", "×1.8"}) {
        EXPECT_THAT(lungs, HasSubstr(words));
    }
}

TEST_F(EarLungTest, WithFeetNothingIsInMeters) {
    document_.set_units(UnitSystem::imperial);
    ears_->setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return ears_->hasFocus(); }));
    QTest::keyClick(ears_, Qt::Key_Home);
    QTest::keyClick(ears_, Qt::Key_Right);
    EXPECT_NEAR(at(*ears_), 0.5 * meters_per_foot, 1e-9);
    std::string all = all_text(*ears_) + all_text(*lungs_) + ears_->reading().toStdString();
    for (const char* name : {"ear_sentence", "ear_safety", "lung_sentence", "lung_safety"}) {
        all += child<QLabel>(*panel_, name)->text().toStdString();
    }
    EXPECT_THAT(all, HasSubstr("\u00a0ft"));
    EXPECT_THAT(all, HasSubstr("Feet of water"));
    EXPECT_THAT(all, Not(HasSubstr("\u00a0m")));
    EXPECT_THAT(all, Not(HasSubstr(" 1 m")));
}

TEST_F(EarLungTest, OddDivesAreDrawnAndWordsStandApart) {
    struct Dive {
        double meters, rate;
    };
    for (const Dive odd : {Dive{0.2, 1.0}, Dive{1.0, 1.0}, Dive{1.3, 2.0}, Dive{2.0, 4.0},
                           Dive{3.0, 30.0}, Dive{8.0, 60.0}, Dive{60.0, 30.0}, Dive{60.0, 3.0}}) {
        dive(odd.meters, odd.rate);
        for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
            document_.set_units(units);
            for (const int width : {420, 760, 1500}) {
                panel_->resize(width, panel_->heightForWidth(width));
                QCoreApplication::processEvents();
                SCOPED_TRACE(::testing::Message() << odd.meters << " m at " << odd.rate << ", "
                                                  << width << " wide");
                expect_apart(*ears_);
                expect_apart(*lungs_);
                for (MarkerChart* chart : {static_cast<MarkerChart*>(ears_),
                                           static_cast<MarkerChart*>(lungs_)}) {
                    const QImage drawn = chart->grab().toImage();
                    std::set<QRgb> inks;
                    for (int x = 0; x < drawn.width(); x += 3) {
                        for (int y = 0; y < drawn.height(); y += 3) inks.insert(drawn.pixel(x, y));
                    }
                    EXPECT_GT(inks.size(), 5U) << "it draws";
                }
            }
        }
    }
}

TEST_F(EarLungTest, BothLinesOfTheEarAreNamedInEveryDive) {
    for (double meters = 0.6; meters <= 60.0; meters *= 1.17) {
        dive(meters, 5.0);
        for (const int width : {420, 760, 900, 1500}) {
            panel_->resize(width, panel_->heightForWidth(width));
            QCoreApplication::processEvents();
            SCOPED_TRACE(::testing::Message() << meters << " m, " << width << " wide");
            EXPECT_THAT(all_text(*ears_), HasSubstr("Never cleared"));
            EXPECT_THAT(all_text(*ears_), HasSubstr("Cleared every"));
            expect_apart(*ears_);
            expect_apart(*lungs_);
        }
    }
}

TEST_F(EarLungTest, LabelsStandApartInTheSamplesAndWithLargeLetters) {
    for (const char* name : {"harbour-morning", "mountain-lake", "salt-cove", "finished-dive"}) {
        open(name);
        for (const double scale : {1.0, 1.5}) {
            QFont letters = panel_->font();
            letters.setPointSizeF(10.5 * scale);
            panel_->setFont(letters);
            panel_->resize(900, panel_->heightForWidth(900));
            QCoreApplication::processEvents();
            SCOPED_TRACE(::testing::Message() << name << " at " << scale);
            expect_apart(*ears_);
            expect_apart(*lungs_);
        }
    }
}

TEST_F(EarLungTest, TheMarkerDoesNotStayBelowAShallowerDive) {
    ears_->setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return ears_->hasFocus(); }));
    QTest::keyClick(ears_, Qt::Key_End);
    ASSERT_NEAR(at(*ears_), 8.0, 1e-9);
    dive(4.0, 4.0);
    EXPECT_FALSE(ears_->marker().has_value());
    QTest::keyClick(ears_, Qt::Key_Left);
    EXPECT_NEAR(at(*ears_), 4.0, 1e-9);
}

TEST_F(EarLungTest, WhatChangedWhileHiddenIsThereWhenSeenAgain) {
    panel_->hide();
    dive(5.0, 5.0);
    document_.set_units(UnitSystem::imperial);
    panel_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(panel_.get()));
    EXPECT_THAT(all_text(*ears_), HasSubstr("Feet of water"));
    EXPECT_EQ(lungs_->columns().back().from, Depth(Meters(5.0)));
    EXPECT_NEAR(ears_->x_of(Depth(Meters(5.0))), ears_->plot().right(), 1e-9);
}

TEST_F(EarLungTest, TheTipGivesTheLiteraturesUnit) {
    hover(*ears_, {ears_->x_of(Depth(Meters(2.0))), ears_->plot().center().y()});
    const QPoint spot = QPointF(ears_->x_of(Depth(Meters(2.0))), 100.0).toPoint();
    QHelpEvent help(QEvent::ToolTip, spot, ears_->mapToGlobal(spot));
    QCoreApplication::sendEvent(ears_, &help);
    const std::string tip = ears_->toolTip().toStdString();
    for (const char* words : {"At 2.0", "10 mmHg to 30 mmHg", "80 mmHg", "221 mmHg", "368 mmHg"}) {
        EXPECT_THAT(tip, HasSubstr(words));
    }
}

TEST_F(EarLungTest, ChartsStandBesideEachOtherOnlyWithRoom) {
    panel_->resize(1200, 500);
    ASSERT_TRUE(QTest::qWaitFor([&] { return lungs_->x() > ears_->x(); }));
    EXPECT_EQ(lungs_->y(), ears_->y());
    panel_->resize(500, 1000);
    ASSERT_TRUE(QTest::qWaitFor([&] { return lungs_->y() > ears_->y(); }));
    EXPECT_EQ(lungs_->x(), ears_->x());
    EXPECT_LE(panel_->minimumSizeHint().width(), 500);
}

TEST_F(EarLungTest, NumbersOfThePlaceHoldTheLargestStep) {
    const std::vector<PlaceFact> facts = place_facts(document_);
    const auto value = [&](const char* id) {
        const auto found = std::find_if(facts.begin(), facts.end(), [&](const PlaceFact& fact) {
            return fact.id == QLatin1String(id);
        });
        return found == facts.end() ? std::string() : found->value.toStdString();
    };
    EXPECT_EQ(value("largest_step"),
              length_below(charts().largest_step, UnitSystem::metric).toStdString());
    EXPECT_EQ(value("ears_lock"), "1.0\u00a0m");
    EXPECT_THAT(value("breath_danger"), HasSubstr("0.9"));
    EXPECT_EQ(value("breath_growth"), "×1.8");
}

TEST_F(EarLungTest, EveryControlHasANameAndADescription) {
    EXPECT_EQ(nameless_controls(*panel_).join(u' ').toStdString(), "");
    EXPECT_EQ(unnamed_controls(*panel_).join(u' ').toStdString(), "");
    EXPECT_FALSE(ears_->accessibleDescription().isEmpty());
    EXPECT_FALSE(lungs_->accessibleDescription().isEmpty());
}

}  // namespace
}  // namespace leadline::testing
