// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "ui/widgets/quantity_box.h"

namespace leadline::testing {
namespace {

void type(QuantityBox& box, const char* text) {
    box.setFocus();
    box.selectAll();
    QTest::keyClicks(&box, QString::fromUtf8(text));
    QTest::keyClick(&box, Qt::Key_Return);
}

TEST(QuantityBoxTest, HoldsMetresWhateverItShows) {
    QuantityBox box(QuantityKind::depth);
    box.show_value(8.0);
    box.set_units(UnitSystem::imperial);
    EXPECT_NEAR(box.value(), 26.0, 0.5);
    EXPECT_EQ(box.metric_value(), 8.0) << "showing feet must not move the depth";
}

TEST(QuantityBoxTest, TypingReportsTheMetricValueOnce) {
    QuantityBox box(QuantityKind::depth);
    QSignalSpy edited(&box, &QuantityBox::edited);
    type(box, "9.5");
    ASSERT_EQ(edited.count(), 1);
    EXPECT_EQ(box.metric_value(), 9.5);
}

TEST(QuantityBoxTest, PointAndCommaAreTheDecimalSignInEveryLanguage) {
    for (const char* tag : {"C", "de_DE", "en_US", "fr_FR"}) {
        for (const char* typed : {"9.5", "9,5"}) {
            QuantityBox box(QuantityKind::depth);
            box.setLocale(QLocale(QString::fromLatin1(tag)));
            type(box, typed);
            EXPECT_EQ(box.metric_value(), 9.5) << tag << " " << typed;
        }
    }
}

TEST(QuantityBoxTest, AFractionWhereNoneFitsIsRefusedAndNotReadAsMore) {
    for (const char* tag : {"C", "de_DE", "en_US"}) {
        for (const char* typed : {"2.5", "2,5"}) {
            QuantityBox box(QuantityKind::water_temperature);
            box.setLocale(QLocale(QString::fromLatin1(tag)));
            box.show_value(18.0);
            type(box, typed);
            EXPECT_EQ(box.metric_value(), 18.0) << tag << " " << typed;
        }
    }
}

TEST(QuantityBoxTest, ShowingAValueReportsNothing) {
    QuantityBox box(QuantityKind::depth);
    QSignalSpy edited(&box, &QuantityBox::edited);
    box.show_value(12.0);
    box.set_units(UnitSystem::imperial);
    EXPECT_EQ(edited.count(), 0);
}

TEST(QuantityBoxTest, CanBeEmptyWhenAllowed) {
    QuantityBox box(QuantityKind::visibility);
    box.allow_empty(QStringLiteral("not known"));
    box.show_value(std::nullopt);
    EXPECT_EQ(box.text().toStdString(), "not known");
    type(box, "6");
    EXPECT_EQ(box.metric_value(), 6.0);
}

TEST(QuantityBoxTest, TheWheelDoesNothingWithoutFocus) {
    QuantityBox box(QuantityKind::depth);
    box.show_value(8.0);
    QWheelEvent wheel(QPointF(5, 5), box.mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, 120),
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&box, &wheel);
    EXPECT_EQ(box.metric_value(), 8.0);
}

TEST(QuantityBoxTest, CannotBeTypedOutOfRange) {
    QuantityBox box(QuantityKind::depth);
    box.show_value(8.0);
    type(box, "900");
    EXPECT_LE(box.metric_value().value_or(0.0), 60.0);
}

}  // namespace
}  // namespace leadline::testing
