// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <chrono>
#include <cmath>

#include "core/planning/air_order.h"
#include "sheets_support.h"
#include "ui/guest_words/guest_language.h"
#include "ui/guest_words/signal_words.h"
#include "ui/guest_words/typed_text.h"
#include "ui/sheet/beach_sheet.h"
#include "ui/sheet/card_content.h"
#include "ui/sheet/card_language.h"
#include "ui/sheet/emergency_sheet.h"
#include "ui/guest_words/isolates.h"
#include "ui/sheet/kit_sheet.h"
#include "ui/sheet/picture_sheet.h"
#include "ui/sheet/sheet_document.h"
#include "ui/sheet/skills_sheet.h"
#include "ui_fixture.h"

namespace leadline::testing {
namespace {

using ::testing::AllOf;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

/// A session and its plan, edited before it is planned.
struct Planned {
    Session session;
    Plan plan;
};

template <typename Edit>
Planned planned(const char* name, Edit edit) {
    Planned result{sample(name).session, {}};
    edit(result.session);
    const Result<Plan> made = plan(result.session, rules());
    EXPECT_TRUE(made.has_value());
    result.plan = made.value_or({});
    return result;
}

Planned planned(const char* name) {
    return planned(name, [](Session&) {});
}

BeachSheet beach_of(const Planned& one, UnitSystem units = UnitSystem::metric) {
    return beach_sheet(one.session, one.plan, one.session.groups.front(), units);
}

std::string text_of(const QString& text) {
    return QString(text).replace(QChar(0x00A0), QChar(u' ')).toStdString();
}

void expect_rounded_down(const QString& printed, Minutes time) {
    EXPECT_LE(printed.toDouble(), time.value());
    EXPECT_GT(printed.toDouble(), time.value() - 1.0);
}

TEST(BeachContent, TellsThePlansOwnNumbers) {
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning"}) {
        const Planned one = planned(name);
        const BeachSheet sheet = beach_of(one);
        const auto guests = guests_in(one.session, one.session.groups.front().id);
        ASSERT_EQ(sheet.guests.size(), guests.size());
        for (std::size_t i = 0; i < guests.size(); ++i) {
            const GuestGas* gas = find_gas(one.plan, guests[i]->id);
            ASSERT_NE(gas, nullptr);
            const BeachGuest& row = sheet.guests[i];
            // Pressures to act by never below the plan's, times never above it.
            EXPECT_GE(row.low.toDouble(), gas->signal_pressure.value() - 1e-6);
            EXPECT_LT(row.low.toDouble(), gas->signal_pressure.value() + 10.0);
            EXPECT_GE(row.turn.toDouble(), gas->turn_pressure.value() - 1e-6);
            EXPECT_LT(row.turn.toDouble(), gas->turn_pressure.value() + 1.0);
            EXPECT_GE(row.least.toDouble(), gas->minimum_gas.value() - 1e-6);
            EXPECT_LT(row.least.toDouble(), gas->minimum_gas.value() + 1.0);
            const GuestForecast* forecast = find_forecast(one.plan, guests[i]->id);
            ASSERT_NE(forecast, nullptr);
            expect_rounded_down(row.minutes, *forecast->reserve.middle);
            expect_rounded_down(row.early, *forecast->reserve.early);
            EXPECT_LT(row.early.toDouble(), row.minutes.toDouble());
            EXPECT_NEAR(row.rmv.toDouble(), gas->rmv.value(), 0.5);
        }
    }
}

TEST(BeachContent, HasTheCardsFigureForLowOnAir) {
    const Planned one = planned("harbour-morning");
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
        const BeachSheet sheet = beach_of(one, units);
        const auto guests = guests_in(one.session, one.session.groups.front().id);
        for (std::size_t i = 0; i < guests.size(); ++i) {
            Guest guest = *guests[i];
            guest.language = "en";
            guest.units = UnitHabit::house;
            const CardContent card = card_content(one.session, one.plan, guest, units);
            EXPECT_EQ(text_of(sheet.guests[i].low + u' ' + sheet.pressure_unit),
                      text_of(card.low_on_air.number + u' ' + card.low_on_air.unit));
        }
    }
}

TEST(BeachContent, OrdersGuestsByWhoIsLowFirst) {
    const Planned one = planned("harbour-morning");
    const BeachSheet sheet = beach_of(one);
    const auto order = order_of_low_on_air(one.plan, one.session.groups.front().id);
    const auto guests = guests_in(one.session, one.session.groups.front().id);
    for (std::size_t place = 0; place < order.size(); ++place) {
        for (std::size_t i = 0; i < guests.size(); ++i) {
            if (guests[i]->id != order[place]) continue;
            EXPECT_EQ(sheet.guests[i].order, QString::number(place + 1));
        }
    }
    const Guest* first = find_guest(one.session, order.front());
    EXPECT_THAT(text_of(sheet.air), HasSubstr("first: " + first->name));
}

TEST(BeachContent, NamesTheForecastsFirstAndItsTimes) {
    int unlike_the_single_run = 0;
    for (const char* name : {"salt-cove", "mountain-lake", "harbour-morning"}) {
        const Planned one = planned(name);
        for (const Group& group : one.session.groups) {
            const GroupForecast* forecast = find_forecast(one.plan, group.id);
            ASSERT_NE(forecast, nullptr);
            const std::string air =
                text_of(beach_sheet(one.session, one.plan, group, UnitSystem::metric).air);
            EXPECT_THAT(air, HasSubstr(find_guest(one.session, forecast->likely_first)->name));
            const auto whole = [](Minutes time) {
                return std::to_string(static_cast<int>(std::floor(time.value()))) + " min";
            };
            ASSERT_TRUE(forecast->first_at_reserve.middle && forecast->first_at_reserve.early);
            EXPECT_THAT(air, HasSubstr("after about " + whole(*forecast->first_at_reserve.middle)));
            EXPECT_THAT(air, HasSubstr("before " + whole(*forecast->first_at_reserve.early)));
            const auto run = find_gas(one.plan, group.id)->reserve_reached;
            if (run && whole(*run) != whole(*forecast->first_at_reserve.middle)) {
                ++unlike_the_single_run;
            }
        }
    }
    EXPECT_GT(unlike_the_single_run, 0) << "the samples no longer tell the two apart";
}

TEST(BeachContent, SaysWhichMinutesTheTableGives) {
    Planned one = planned("mountain-lake");
    TypeSetter setter;
    const auto words_of = [&](const BeachSheet& sheet) {
        return text_of(all_words_on(beach_pages(sheet, Paper::a4, setter)));
    };
    const BeachSheet forecast = beach_of(one);
    ASSERT_TRUE(forecast.is_forecast);
    EXPECT_THAT(words_of(forecast), AllOf(HasSubstr("Low after"), HasSubstr("min (early)"),
                                          HasSubstr("each guest’s own forecast")));
    for (const BeachGuest& guest : forecast.guests) {
        EXPECT_THAT(words_of(forecast), HasSubstr(text_of(guest.minutes + u" (" + guest.early + u')')));
    }
    // Without a forecast the planned run is all there is, and the sheet says so.
    one.plan.forecasts.clear();
    const BeachSheet run = beach_of(one);
    ASSERT_FALSE(run.is_forecast);
    const auto guests = guests_in(one.session, one.session.groups.front().id);
    for (std::size_t i = 0; i < guests.size(); ++i) {
        EXPECT_EQ(run.guests[i].early, QString());
        expect_rounded_down(run.guests[i].minutes,
                            *find_gas(one.plan, guests[i]->id)->minutes_to_reserve);
    }
    EXPECT_THAT(words_of(run), AllOf(HasSubstr("min, plan"), HasSubstr("No forecast"),
                                     Not(HasSubstr("own forecast"))));
}

TEST(BeachContent, CountsTheStopsThatStandFirst) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        session.guests[0].birth_date.reset();
        session.guests[0].kit.lead = Kilograms(1.0);
        session.conditions.visibility = Meters(1.0);
    });
    const BeachSheet sheet = beach_of(one);
    const auto stops = [](const QStringList& texts, QLatin1String start) {
        return std::count_if(texts.begin(), texts.end(),
                             [&](const QString& text) { return text.startsWith(start); });
    };
    EXPECT_GT(sheet.guests[0].stops, 0);
    EXPECT_LT(sheet.guests[0].stops, sheet.guests[0].flags.size());
    EXPECT_EQ(sheet.guests[0].stops, stops(sheet.guests[0].flags, QLatin1String("Stop:")));
    EXPECT_EQ(sheet.guests[0].stops,
              stops(sheet.guests[0].flags.mid(0, sheet.guests[0].stops), QLatin1String("Stop:")));
    EXPECT_EQ(sheet.open_stops, stops(sheet.open, QLatin1String("Stop,")));
    EXPECT_EQ(sheet.open_stops, stops(sheet.open.mid(0, sheet.open_stops), QLatin1String("Stop,")));
}

TEST(BeachContent, AnOldCheckOfSignalsIsNoCheck) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        BriefingCheck& check = session.guests[0].briefing;
        for (const HandSignal known : signals_to_know()) set_understood(check, known, true);
        check.checked_on = Date{std::chrono::year(2024), std::chrono::month(1), std::chrono::day(1)};
        session.guests[1].briefing = check;
        session.guests[1].briefing.checked_on.reset();
    });
    const BeachSheet sheet = beach_of(one);
    EXPECT_THAT(text_of(sheet.guests[0].who), HasSubstr("signals not asked"));
    EXPECT_THAT(text_of(sheet.guests[1].who), HasSubstr("signals not asked"));
}

TEST(BeachContent, HasWhereWhenWhoAndWhomToCall) {
    const Planned one = planned("mountain-lake");
    const BeachSheet sheet = beach_of(one);
    EXPECT_EQ(sheet.site, u"Hochsee, north shelf");
    EXPECT_THAT(text_of(sheet.when), AllOf(HasSubstr("13:00"), HasSubstr("14:15")));
    EXPECT_THAT(text_of(sheet.staff), AllOf(HasSubstr("Instructor Katharina Zangerl"),
                                            HasSubstr("Assistant Tadhg")));
    EXPECT_EQ(sheet.emergency_line, with_whole_numbers(QStringLiteral("+00 555 0118")));
    EXPECT_EQ(sheet.emergency_plan.size(), 4);
    EXPECT_THAT(text_of(sheet.emergency_plan.join(u' ')), HasSubstr("70 minutes by road"));
    EXPECT_EQ(sheet.need.size(), 5U);
    EXPECT_THAT(text_of(sheet.standing), HasSubstr("planning aid"));
    EXPECT_EQ(text_of(sheet.units), "Metric units");
}

TEST(BeachContent, TellsTheTimesByTheClock) {
    const Planned one = planned("mountain-lake");
    const BeachSheet sheet = beach_of(one);
    ASSERT_EQ(sheet.profile.size(), one.session.profile.points.size());
    EXPECT_EQ(sheet.profile.front().clock, u"14:15");
    EXPECT_EQ(sheet.profile.back().clock, u"14:37");  // 22.5 min later, a minute begun
    EXPECT_EQ(text_of(sheet.profile[4].depth), "5.0 m");
    EXPECT_THAT(text_of(sheet.times), AllOf(HasSubstr("In 14:15"), HasSubstr("14:37 (22 min)")));
    EXPECT_THAT(sheet.air_checks, ElementsAre(u"5", u"10", u"15", u"20"));
}

TEST(BeachContent, TheAirChecksLastToTheEndOfAnyDive) {
    const std::pair<double, const char*> dives[] = {
        {8.0, "5"},
        {35.0, "5 10 15 20 25 30"},
        {36.0, "10 20 30"},
        {70.0, "10 20 30 40 50 60"},
        {75.0, "15 30 45 60"},
        {240.0, "35 70 105 140 175 210"},
    };
    for (const auto& [lasts, checks] : dives) {
        const Planned one = planned("mountain-lake", [lasts = lasts](Session& session) {
            const Depth down(Meters(4.0));
            session.profile.points = {{Minutes(0.0), Depth(), Phase::surface},
                                      {Minutes(1.0), down, Phase::descent},
                                      {Minutes(lasts - 1.0), down, Phase::tour},
                                      {Minutes(lasts), Depth(), Phase::ascent}};
        });
        EXPECT_EQ(text_of(beach_of(one).air_checks.join(u' ')), checks) << lasts;
    }
}

TEST(BeachContent, SaysWhenTheAirEndsTheDiveEarly) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        session.guests.front().kit.cylinder->fill_pressure = Bars(110.0);
    });
    ASSERT_TRUE(one.plan.groups.front().cut_short);
    EXPECT_THAT(text_of(beach_of(one).times), HasSubstr("the air ends it"));
}

TEST(BeachContent, TellsOfKitAgeLanguageAndSignals) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        BriefingCheck& check = session.guests[0].briefing;
        check.checked_on = session.date;
        for (const HandSignal known : signals_to_know()) set_understood(check, known, true);
        set_understood(check, HandSignal::up, false);
        session.guests[1].birth_date.reset();
    });
    const BeachSheet sheet = beach_of(one);
    EXPECT_THAT(text_of(sheet.guests[0].who),
                AllOf(HasSubstr("47 years"), HasSubstr("German"), HasSubstr("signals 8 of 9")));
    EXPECT_THAT(text_of(sheet.guests[0].flags.join(u' ')), HasSubstr("not yet known: Go up"));
    EXPECT_THAT(text_of(sheet.guests[1].who),
                AllOf(HasSubstr("age not known"), HasSubstr("signals not asked")));
    EXPECT_THAT(text_of(sheet.guests[0].kit),
                AllOf(HasSubstr("7 mm L"), HasSubstr("BCD L"), HasSubstr("Fins 44-45"),
                      HasSubstr("Mask standard"), HasSubstr("R2"), HasSubstr("8 kg"),
                      HasSubstr("Steel 12 L")));
}

TEST(BeachContent, TellsWhatHealthChecksCameToAndNeverAnAnswer) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        session.guests[0].screening.outcome = ScreeningOutcome::physician_required;
        session.guests[0].screening.physician_approval_seen = false;
        session.guests[0].note = "SECRETNOTE";
        session.guests[0].body_mass = Kilograms(137.0);
        session.guests[0].phone = "SECRETPHONE";
    });
    TypeSetter setter;
    const BeachSheet sheet = beach_of(one);
    const std::string words = text_of(all_words_on(beach_pages(sheet, Paper::a4, setter)));
    EXPECT_THAT(text_of(sheet.guests[0].flags.join(u' ')),
                HasSubstr("Stop: The health questions call for a physician."));
    // Said once.
    EXPECT_THAT(text_of(sheet.guests[0].who), Not(HasSubstr("health")));
    EXPECT_THAT(words, HasSubstr("Stop: "));
    for (const char* secret : {"SECRET", "137", "1979"}) {
        EXPECT_THAT(words, Not(HasSubstr(secret)));
    }
}

TEST(BeachContent, SaysWhatIsOpenAndWhatWasDecided) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        session.conditions.visibility = Meters(1.0);
    });
    const BeachSheet sheet = beach_of(one);
    const std::string open = text_of(sheet.open.join(u'\n'));
    EXPECT_THAT(open, HasSubstr("Visibility is 1.0 m"));
    ASSERT_EQ(static_cast<std::size_t>(sheet.decided.size()), one.session.overrules.size());
    EXPECT_THAT(text_of(sheet.decided.join(u'\n')),
                AllOf(HasSubstr("a line is laid along its edge"), HasSubstr("Katharina Zangerl")));
    EXPECT_THAT(open, Not(HasSubstr("Note")));
}

TEST(BeachContent, LeavesRoomWhereNothingIsKnown) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        session.guests[0].kit = {};
        session.site.emergency_line.clear();
        session.site.emergency_plan.clear();
    });
    const BeachSheet sheet = beach_of(one);
    EXPECT_THAT(text_of(sheet.guests[0].kit), HasSubstr("Suit – · BCD –"));
    EXPECT_EQ(sheet.guests[0].low, QString());
    EXPECT_EQ(sheet.guests[0].order, QString());
    TypeSetter setter;
    const std::string words = text_of(all_words_on(beach_pages(sheet, Paper::a4, setter)));
    EXPECT_THAT(words, HasSubstr("not entered: write it here"));
    EXPECT_THAT(words, HasSubstr("No emergency plan is entered"));
}

TEST(BeachContent, KeepsToOneSystemOfUnits) {
    const Planned one = planned("mountain-lake");
    TypeSetter setter;
    const std::string words = text_of(
        all_words_on(beach_pages(beach_of(one, UnitSystem::imperial), Paper::letter, setter)));
    EXPECT_THAT(words, AllOf(HasSubstr("psi"), HasSubstr(" ft"), HasSubstr("cu ft")));
    EXPECT_THAT(words, Not(HasSubstr(" bar")));
    EXPECT_THAT(words, Not(HasSubstr("Steel 12 L")));
}

TEST(BeachContent, SaysHowFarTranslationsCanBeTrusted) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        for (Guest& guest : session.guests) guest.language = "en";
        session.guests.front().language = "xh";
    });
    EXPECT_THAT(text_of(beach_of(one).review), HasSubstr("No cards in Xhosa"));
    const Planned english = planned("mountain-lake", [](Session& session) {
        for (Guest& guest : session.guests) guest.language = "en-US";
    });
    EXPECT_EQ(beach_of(english).review, QString());
}

TEST(SkillsContent, HasTheSessionsSkillsWithTheirPurpose) {
    Planned one = planned("mountain-lake", [](Session& session) {
        session.skills = {Skill::clear_mask, Skill::share_air};
    });
    const SkillsSheet sheet = skills_sheet(one.session, one.session.groups.front());
    ASSERT_EQ(sheet.skills.size(), 2U);
    EXPECT_EQ(sheet.skills[0].picture, u":/leadline/skills/clear-mask.svg");
    EXPECT_FALSE(sheet.skills[1].purpose.isEmpty());
    EXPECT_EQ(sheet.guests.size(), 4U);
    TypeSetter setter;
    int boxes = 0;
    const auto pages = skills_pages(sheet, Paper::a4, setter);
    for (const SheetItem& item : pages.front().items) {
        const auto* box = std::get_if<RectItem>(&item);
        boxes += box != nullptr && box->width > 0.0 ? 1 : 0;
    }
    EXPECT_EQ(boxes, 8);
    one.session.skills.clear();
    EXPECT_THAT(text_of(all_words_on(skills_pages(
                    skills_sheet(one.session, one.session.groups.front()), Paper::a4, setter))),
                HasSubstr("No skills are chosen"));
}

TEST(KitContent, CountsAndNamesWhatIsMissing) {
    const Planned one = planned("mountain-lake", [](Session& session) {
        session.guests[1].kit.mask.clear();
        session.guests[1].kit.lead.reset();
    });
    const KitSheet sheet = kit_sheet(one.session, {}, UnitSystem::metric);
    ASSERT_EQ(sheet.missing.size(), 1);
    EXPECT_EQ(text_of(sheet.missing.front()), "Chiara Castellani: Mask, Lead");
    QString totals;
    for (const auto& [name, text] : sheet.totals) totals += name + u' ' + text + u'\n';
    EXPECT_THAT(text_of(totals), AllOf(HasSubstr("2 × 7 mm M, hood"), HasSubstr("18.5 kg in all"),
                                       HasSubstr("× Steel 12 L")));
    // Two guests' 12 L and those of the two of the staff.
    EXPECT_THAT(text_of(totals), HasSubstr("4 × Steel 12 L"));
    EXPECT_EQ(sheet.rows.size(), 6U);
    EXPECT_TRUE(sheet.rows.back().staff);
}

TEST(EmergencyContent, HoldsThePlanAndNoGuest) {
    const Planned one = planned("mountain-lake");
    const EmergencySheet sheet = emergency_sheet(one.session, one.plan, UnitSystem::metric);
    EXPECT_EQ(sheet.number, with_whole_numbers(QStringLiteral("+00 555 0118")));
    EXPECT_EQ(sheet.steps.size(), 4);
    EXPECT_EQ(sheet.meeting_place, u"Boathouse");
    EXPECT_THAT(text_of(sheet.altitude), HasSubstr("1800 m above sea level"));
    EXPECT_THAT(text_of(sheet.depth), AllOf(HasSubstr("5.0 m"), HasSubstr("26.0 m")));
    TypeSetter setter;
    const std::string words = text_of(all_words_on(emergency_pages(sheet, Paper::a4, setter)));
    for (const Guest& guest : one.session.guests) {
        EXPECT_THAT(words, Not(HasSubstr(guest.name)));
    }
    EXPECT_THAT(text_of(emergency_sheet(one.session, one.plan, UnitSystem::imperial).altitude),
                HasSubstr("5906 ft"));
}

TEST(EmergencyContent, AsksToWriteInWhatIsNotEntered) {
    const Planned one = planned("salt-cove", [](Session& session) {
        session = bare_session(session);
    });
    const EmergencySheet sheet = emergency_sheet(one.session, one.plan, UnitSystem::metric);
    EXPECT_EQ(sheet.number, QString());
    EXPECT_EQ(sheet.altitude, QString());
    EXPECT_EQ(sheet.blanks.size(), 6);
    TypeSetter setter;
    const std::string words = text_of(all_words_on(emergency_pages(sheet, Paper::a4, setter)));
    EXPECT_THAT(words, HasSubstr("not entered: write it here"));
    EXPECT_THAT(words, HasSubstr("Nearest chamber, how far"));
}

TEST(PictureContent, HasTheTwoMixUpsAndThisSitesBalloons) {
    const Planned one = planned("mountain-lake");
    const PictureSheet sheet = picture_sheet(one.plan, UnitSystem::metric, "en", "");
    EXPECT_THAT(text_of(sheet.thumb_up.front().text),
                AllOf(HasSubstr("go up"), HasSubstr("never means “good”")));
    EXPECT_THAT(text_of(sheet.numbers_first.front().text), HasSubstr("another way"));
    EXPECT_THAT(text_of(sheet.numbers_shown.front().text), HasSubstr("120 bar"));
    ASSERT_EQ(sheet.shrinking.size(), one.plan.environment.balloons.size());
    for (std::size_t i = 0; i < sheet.shrinking.size(); ++i) {
        const BalloonAt& balloon = one.plan.environment.balloons[i];
        EXPECT_NEAR(sheet.shrinking[i].volume.section(QChar(0x00A0), 0, 0).toDouble(),
                    balloon.taken_down.value(), 0.051);
        // Never less than it swells.
        EXPECT_GE(sheet.swelling[i].factor.mid(1).toDouble(), balloon.swells_to - 1e-6);
        EXPECT_LT(sheet.swelling[i].factor.mid(1).toDouble(), balloon.swells_to + 0.01);
        const double swollen = sheet.swelling[i].volume.section(QChar(0x00A0), 0, 0).toDouble();
        EXPECT_GE(swollen, balloon.taken_up.value() - 1e-6);
        EXPECT_LT(swollen, balloon.taken_up.value() + 0.1);
    }
    EXPECT_EQ(text_of(sheet.shrinking[1].depth), "5 m");
}

TEST(PictureContent, KeepsNumbersWithTheirUnitsWhereReadingStartsOnTheRight) {
    const PictureSheet sheet =
        picture_sheet(planned("mountain-lake").plan, UnitSystem::metric, "ar", "");
    for (const PictureBalloon& balloon : sheet.shrinking) {
        for (const QString& text : {balloon.depth, balloon.volume, balloon.factor}) {
            EXPECT_TRUE(text.startsWith(first_strong_isolate)) << text_of(text);
            EXPECT_TRUE(text.endsWith(pop_isolate)) << text_of(text);
        }
    }
    EXPECT_TRUE(sheet.numbers_shown.front().text.contains(right_to_left_isolate +
                                                          QStringLiteral("1 ← 2 ← 0") + pop_isolate));
}

TEST(PictureContent, RunsFromTheRightWhereReadingDoesButForFigures) {
    const Planned one = planned("mountain-lake");
    TypeSetter setter;
    const auto middle_of = [&](const char* language, const QString& picture) {
        const auto pages = picture_pages(
            picture_sheet(one.plan, UnitSystem::metric, language, ""), Paper::a4, setter);
        for (const SheetItem& item : pages.front().items) {
            const auto* drawn = std::get_if<PictureItem>(&item);
            if (drawn != nullptr && drawn->name == picture) return drawn->rect.center().x();
        }
        return 0.0;
    };
    const QString first = signal_picture(HandSignal::ok);
    const QString next = signal_picture(HandSignal::something_wrong);
    EXPECT_LT(middle_of("en", first), middle_of("en", next));
    EXPECT_GT(middle_of("ar", first), middle_of("ar", next));
    const QString one_sign = QStringLiteral(":/leadline/signals/number-1.svg");
    const QString two_sign = QStringLiteral(":/leadline/signals/number-2.svg");
    EXPECT_GT(middle_of("ar", one_sign), 0.0);
    EXPECT_LT(middle_of("ar", one_sign), middle_of("ar", two_sign));
}

TEST(PictureContent, TheDeepestPointIsThatOfTheCard) {
    for (const double deepest : {8.0, 8.97, 11.8, 11.99, 14.999}) {
        const Planned one = planned("salt-cove", [&](Session& session) {
            for (ProfilePoint& point : session.profile.points) {
                if (point.depth.meters().value() > 0.0) point.depth = Depth(Meters(deepest));
            }
        });
        for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
            const CardFigure card =
                card_content(one.session, one.plan, one.session.guests.front(), units, "en").deepest;
            const PictureSheet sheet = picture_sheet(one.plan, units, "en", "");
            std::vector<QString> depths;
            for (const PictureBalloon& balloon : sheet.swelling) depths.push_back(balloon.depth);
            EXPECT_THAT(depths, Contains(card.number + QChar(0x00A0) + card.unit)) << deepest;
            // The staff's sheet leads nobody deeper than the card says.
            for (const BeachCorner& corner : beach_of(one, units).profile) {
                EXPECT_LE(corner.depth.section(QChar(0x00A0), 0, 0).toDouble(),
                          card.number.toDouble() + 1e-9)
                    << deepest;
            }
        }
    }
}

TEST(PictureContent, InImperialUnitsNamesNoLitres) {
    const Planned one = planned("mountain-lake");
    TypeSetter setter;
    const std::string words = text_of(all_words_on(picture_pages(
        picture_sheet(one.plan, UnitSystem::imperial, "en", ""), Paper::letter, setter)));
    EXPECT_THAT(words, AllOf(HasSubstr("16 ft"), HasSubstr("1800 psi")));
    EXPECT_THAT(words, Not(HasSubstr(" L ")));
    EXPECT_THAT(words, Not(HasSubstr(" bar")));
}

TEST(SheetsOfStaff, TurnNoNumberAround) {
    const Planned one = planned("salt-cove", [](Session& session) {
        session.site.emergency_line = "\u202E112";
        session.site.emergency_plan = "Oxygen\u202E 15 L\n\u2067Radio 16";
        session.site.name = "Salt\u0007 Cove \u202E2";
        session.guests.front().name = "Ana \u202D12";
        session.groups.front().name = "\u2067Blue 1";
    });
    TypeSetter setter;
    for (const SheetKind kind : {SheetKind::beach, SheetKind::skills, SheetKind::kit,
                                 SheetKind::emergency, SheetKind::pictures}) {
        SheetChoice choice;
        choice.kind = kind;
        const QString words = all_words_on(
            sheet_pages(choice, one.session, one.plan, UnitSystem::metric, setter));
        EXPECT_FALSE(words.isEmpty());
        for (const QChar letter : words) {
            const bool turns = letter.unicode() >= 0x202A && letter.unicode() <= 0x202E;
            EXPECT_FALSE(turns || letter.category() == QChar::Other_Control)
                << static_cast<int>(kind) << ' ' << static_cast<int>(letter.unicode());
        }
    }
    EXPECT_EQ(emergency_sheet(one.session, one.plan, UnitSystem::metric).number, u"112");
    EXPECT_EQ(sheet_document(SheetChoice{}, one.session).title.contains(QChar(0x202E)), false);
}

TEST(TranslationReview, StandsInTheFootWhereDraftedWordsAre) {
    const Planned one = planned("mountain-lake");
    TypeSetter setter;
    const auto words_of = [&](const char* language, const char* second) {
        return text_of(all_words_on(picture_pages(
            picture_sheet(one.plan, UnitSystem::metric, language, second), Paper::a4, setter)));
    };
    ASSERT_EQ(find_guest_language("de")->review, ReviewState::drafted);
    EXPECT_THAT(words_of("de", ""), HasSubstr(text_of(card_language_text("de")) + "."));
    EXPECT_THAT(words_of("en", "fr"), HasSubstr(text_of(card_language_text("fr")) + "."));
    EXPECT_THAT(words_of("en", ""), Not(HasSubstr("draft")));
    QLocale::setDefault(QLocale(QStringLiteral("de")));
    const SkillsSheet skills = skills_sheet(one.session, one.session.groups.front());
    EXPECT_THAT(text_of(skills.standing), HasSubstr(text_of(card_language_text("de"))));
    QLocale::setDefault(QLocale::c());
    EXPECT_THAT(text_of(skills_sheet(one.session, one.session.groups.front()).standing),
                Not(HasSubstr("draft")));
}

TEST(SheetDocument, IsNamedByItsKindAndItsLanguages) {
    const Session session = planned("mountain-lake").session;
    SheetChoice choice;
    choice.kind = SheetKind::pictures;
    choice.language = "de";
    choice.second_language = "ar";
    const PdfInfo pictures = sheet_document(choice, session);
    EXPECT_THAT(text_of(pictures.title), HasSubstr(": Pictures"));
    EXPECT_THAT(pictures.languages, ElementsAre(u"de", u"ar"));
    choice.second_language = "de-AT";
    EXPECT_THAT(sheet_document(choice, session).languages, ElementsAre(u"de"));
    choice.kind = SheetKind::kit;
    EXPECT_THAT(text_of(sheet_document(choice, session).title), HasSubstr(": Kit list"));
    EXPECT_THAT(sheet_document(choice, session).languages, ElementsAre(u"en"));
}

TEST(CardLanguages, SaysWhichCardAGuestGets) {
    EXPECT_EQ(card_language_text("en"), u"English");
    EXPECT_THAT(text_of(card_language_text("xh")), HasSubstr("No Xhosa yet"));
    EXPECT_THAT(text_of(card_language_text("")), HasSubstr("not entered"));
    Guest guest;
    guest.language = "xh";
    guest.second_language = "en";
    EXPECT_EQ(text_of(card_languages_in_brief(guest)), "English, no Xhosa yet");
}

}  // namespace
}  // namespace leadline::testing
