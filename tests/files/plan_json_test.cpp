// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/plan_json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using nlohmann::json;

FindingWords spoken(const Finding& finding) {
    return {"what of " + name(finding.code), "remedy of " + name(finding.code)};
}

struct Planned {
    SessionFile file;
    RuleBook rules;
    Plan plan;
    json written;
};

Planned planned_sample(const std::string& sample) {
    Planned result;
    result.file = load_session(source_dir() / "sample-sessions" / (sample + ".json"));
    result.rules = load_rules();
    result.plan = plan(result.file.session, result.rules).value();
    result.written = json::parse(plan_to_json(result.file.session, result.plan, spoken));
    return result;
}

/// Keys of numbers that are counts, versions, ratios or steps of a scale: they have no unit.
bool is_plain(const std::string& key) {
    static const std::set<std::string> plain = {
        "leadline_plan", "leadline_review", "stops", "cautions", "notes", "overruled",
        "breath_expansion_ratio", "places_used", "places_allowed", "heads_in", "heads_out",
        "current_step", "allowed_current_step", "count", "standard_error", "expansion_ratio",
        "highest_saturation", "leading_compartment", "dives_today", "ascents_today",
        "days_in_a_row", "gain_in_chance", "other_group_chance_change"};
    const bool chance = key.starts_with("chance_");
    const bool lognormal = key.starts_with("rmv_") && (key.ends_with("sigma") ||
                                                       key.ends_with("factor"));
    return chance || lognormal || plain.contains(key);
}

bool has_unit(const std::string& key) {
    static const std::array<std::string, 18> units = {
        "_m", "_min", "_s", "_h", "_bar", "_c", "_l", "_mol", "_l_per_min", "_m_per_min",
        "_m_per_s2", "_kg_per_m3", "_years", "_kg", "_mm", "_clo", "_w", "_k"};
    return std::any_of(units.begin(), units.end(),
                       [&](const std::string& unit) { return key.ends_with(unit); });
}

void expect_units(const json& node, const std::string& key) {
    if (node.is_number()) {
        EXPECT_TRUE(has_unit(key) || is_plain(key)) << key;
    }
    EXPECT_FALSE(node.is_null()) << key;
    if (node.is_object()) {
        for (const auto& [name, child] : node.items()) expect_units(child, name);
    }
    if (node.is_array()) {
        for (const json& child : node) expect_units(child, key);
    }
}

TEST(PlanJson, GivesEveryQuantityItsUnit) {
    for (const auto& path : sample_paths()) {
        expect_units(planned_sample(path.stem().string()).written, "");
    }
}

TEST(PlanJson, CarriesThePlansNumbers) {
    const Planned sample = planned_sample("salt-cove");
    const json& written = sample.written;
    EXPECT_EQ(written["session"]["title"], sample.file.session.title);
    EXPECT_NEAR(written["environment"]["bottom_pressure_bar"].get<double>(),
                Bars(sample.plan.environment.bottom_pressure).value(), 1e-6);
    EXPECT_EQ(written["environment"]["deepest_m"], 8.0);
    EXPECT_EQ(written["environment"]["surface_pressure_from_barometer"], true);
    EXPECT_EQ(written["environment"]["surface_pressure_bar"], 1.0165);
    EXPECT_EQ(written["environment"]["ear_clearing"]["clear_at_m"].size(),
              sample.plan.environment.ladder.clear_at.size());
    EXPECT_EQ(written["limits"]["max_depth"]["value_m"], 12.0);
    EXPECT_EQ(written["limits"]["reserve_bar"], 50.0);
    EXPECT_EQ(written["readiness"]["may_dive"], true);
    ASSERT_EQ(written["guests"].size(), sample.plan.guests.size());
    for (std::size_t i = 0; i < sample.plan.guests.size(); ++i) {
        const GuestGas& gas = sample.plan.guests[i];
        const json& guest = written["guests"][i];
        EXPECT_EQ(guest["id"], gas.guest.text);
        EXPECT_EQ(guest["name"], sample.file.session.guests[i].name);
        EXPECT_NEAR(guest["rmv_l_per_min"].get<double>(), gas.rmv.value(), 1e-6);
        EXPECT_NEAR(guest["end_pressure_bar"].get<double>(), gas.end_pressure.value(), 1e-6);
        EXPECT_NEAR(guest["signal_pressure_bar"].get<double>(), gas.signal_pressure.value(), 1e-6);
        ASSERT_EQ(guest["pressure_curve"].size(), gas.curve.size());
        ASSERT_FALSE(gas.curve.empty());
        EXPECT_NEAR(guest["pressure_curve"].back()["gauge_bar"].get<double>(),
                    gas.curve.back().gauge.value(), 1e-6);
    }
    ASSERT_EQ(written["groups"].size(), 1U);
    EXPECT_EQ(written["groups"][0]["name"], "Blue");
    EXPECT_EQ(written["groups"][0]["limiting_guest"],
              sample.plan.groups[0].limiting_guest->text);
}

TEST(PlanJson, CarriesTheForecastAndItsRuns) {
    const Planned sample = planned_sample("salt-cove");
    ASSERT_EQ(sample.written["forecasts"].size(), sample.plan.forecasts.size());
    const GroupForecast& forecast = sample.plan.forecasts.front();
    const json& written = sample.written["forecasts"][0];
    EXPECT_EQ(written["group"], forecast.group.text);
    EXPECT_EQ(written["likely_first"], forecast.likely_first.text);
    EXPECT_NEAR(written["chance_to_complete"].get<double>(), forecast.completes, 1e-6);
    EXPECT_NEAR(written["first_at_reserve"]["median_min"].get<double>(),
                forecast.first_at_reserve.middle->value(), 1e-6);
    EXPECT_EQ(written["runs"]["count"], forecast_runs);
    ASSERT_EQ(written["guests"].size(), forecast.guests.size());
    EXPECT_NEAR(written["guests"][0]["reserve"]["early_10_percent_min"].get<double>(),
                forecast.guests[0].reserve.early->value(), 1e-6);
}

TEST(PlanJson, CarriesLeversWarmthLeadStaffEarsAndLungs) {
    const Planned sample = planned_sample("salt-cove");
    const Plan& plan = sample.plan;
    ASSERT_FALSE(plan.levers.empty());
    ASSERT_EQ(sample.written["levers"].size(), plan.levers.size());
    EXPECT_NEAR(sample.written["levers"][0]["chance_to_complete"].get<double>(),
                plan.levers[0].completes, 1e-6);
    ASSERT_EQ(sample.written["warmth"].size(), plan.warmth.size());
    EXPECT_EQ(sample.written["warmth"][0]["id"], plan.warmth[0].guest.text);
    ASSERT_EQ(plan.warmth[0].gap, WarmthGap::none);
    EXPECT_NEAR(sample.written["warmth"][0]["heat_loss_w"].get<double>(),
                plan.warmth[0].heat_loss_watts, 1e-6);
    ASSERT_EQ(plan.lead[0].gap, LeadGap::none);
    EXPECT_NEAR(sample.written["lead"][0]["middle_kg"].get<double>(), plan.lead[0].middle.value(),
                1e-6);
    ASSERT_EQ(sample.written["staff"].size(), plan.exposures.size());
    EXPECT_NEAR(sample.written["staff"][0]["no_fly_h"].get<double>(),
                plan.exposures[0].no_fly.value(), 1e-6);
    ASSERT_EQ(sample.written["cylinders"].size(), cylinder_types().size());
    for (const json& cylinder : sample.written["cylinders"]) {
        EXPECT_LT(cylinder["lift_full_kg"].get<double>(), cylinder["lift_empty_kg"].get<double>());
    }
    const json& ears = sample.written["ears_and_lungs"];
    EXPECT_EQ(ears["cleared"].size(), plan.ears_and_lungs.ears.cleared.size());
    EXPECT_EQ(ears["held_breath"].size(), plan.ears_and_lungs.lungs.size());
    EXPECT_NEAR(ears["largest_step_m"].get<double>(), plan.ears_and_lungs.largest_step.value(),
                1e-6);
}

TEST(PlanJson, SaysWhatIsMissingForAnEstimate) {
    Planned sample = planned_sample("salt-cove");
    sample.file.session.guests[0].body_mass.reset();
    const Plan changed = plan(sample.file.session, sample.rules).value();
    const json written = json::parse(plan_to_json(sample.file.session, changed, spoken));
    EXPECT_EQ(written["warmth"][0]["missing"], "body_mass");
    EXPECT_EQ(written["lead"][0]["missing"], "body_mass");
    EXPECT_FALSE(written["warmth"][0].contains("heat_loss_w"));
}

TEST(PlanJson, CarriesFindings) {
    const Planned sample = planned_sample("mountain-lake");
    ASSERT_EQ(sample.written["findings"].size(), sample.plan.findings.size());
    const auto& findings = sample.written["findings"];
    const auto cold = std::find_if(findings.begin(), findings.end(), [](const json& finding) {
        return finding["code"] == "water_too_cold";
    });
    ASSERT_NE(cold, findings.end());
    EXPECT_EQ((*cold)["key"], "water_too_cold");
    EXPECT_EQ((*cold)["severity"], "caution");
    EXPECT_EQ((*cold)["subject"], (json{{"kind", "session"}, {"id", ""}}));
    EXPECT_EQ((*cold)["values"],
              (json{{"water_temperature_c", 14.0}, {"least_temperature_c", 18.0}}));
    EXPECT_EQ((*cold)["what"], "what of water_too_cold");
    EXPECT_EQ((*cold)["remedy"], "remedy of water_too_cold");
    EXPECT_EQ((*cold)["rule_set"], "House rules of the centre");
    EXPECT_EQ((*cold)["source"], "common practice, no source");
    EXPECT_THAT((*cold)["overruled_because"].get<std::string>(), testing::StartsWith("7 mm"));
}

TEST(PlanJson, NamesTheItemsAndDaysOfAFinding) {
    Plan plan;
    Finding kit;
    kit.code = FindingCode::kit_missing;
    kit.subject = GuestId("guest-1");
    kit.text = "suit,fins";
    Finding screening;
    screening.code = FindingCode::screening_out_of_date;
    screening.text = "2025-07-04";
    screening.values = {12};
    Finding ratio;
    ratio.code = FindingCode::ratio_exceeded;
    ratio.subject = GroupId("group-1");
    ratio.reason = RatioReason::children;
    ratio.values = {5, 2};
    plan.findings = {kit, screening, ratio};
    const json written = json::parse(plan_to_json({}, plan, {}))["findings"];
    EXPECT_EQ(written[0]["items"], (json{"suit", "fins"}));
    EXPECT_EQ(written[0]["subject"], (json{{"kind", "guest"}, {"id", "guest-1"}}));
    EXPECT_FALSE(written[0].contains("what"));
    EXPECT_EQ(written[1]["text"], "2025-07-04");
    EXPECT_EQ(written[1]["values"], (json{{"valid_months", 12}}));
    EXPECT_EQ(written[2]["key"], "ratio_exceeded:group-1");
    EXPECT_EQ(written[2]["ratio_reason"], "children");
    EXPECT_EQ(written[2]["values"], (json{{"places_used", 5}, {"places_allowed", 2}}));
    EXPECT_FALSE(written[2].contains("overruled_because"));
}

TEST(PlanJson, LeavesOutWhatIsNoNumber) {
    Plan plan;
    plan.guests.emplace_back();
    plan.guests[0].has_cylinder = true;
    plan.guests[0].end_pressure = Bars(std::numeric_limits<double>::quiet_NaN());
    plan.guests[0].turn_pressure = Bars(std::numeric_limits<double>::infinity());
    const json written = json::parse(plan_to_json({}, plan, {}));
    expect_units(written, "");
    EXPECT_FALSE(written["guests"][0].contains("end_pressure_bar"));
    EXPECT_FALSE(written["guests"][0].contains("turn_pressure_bar"));
    EXPECT_TRUE(written["guests"][0].contains("leave_pressure_bar"));
    EXPECT_FALSE(written["guests"][0].contains("time_to_reserve_min"));
}

TEST(PlanJson, GivesNoGasWithoutACylinder) {
    Plan plan;
    plan.guests.emplace_back();
    const json guest = json::parse(plan_to_json({}, plan, {}))["guests"][0];
    EXPECT_EQ(guest["has_cylinder"], false);
    EXPECT_FALSE(guest.contains("end_pressure_bar"));
    EXPECT_FALSE(guest.contains("pressure_curve"));
}

TEST(ReviewJson, CarriesTheReviewsNumbers) {
    const Planned sample = planned_sample("finished-dive");
    const Session& session = sample.file.session;
    const Result<Review> reviewed =
        review(session, sample.plan, *sample.file.log, sample.rules);
    ASSERT_TRUE(reviewed);
    const json written = json::parse(review_to_json(session, *reviewed, spoken));
    expect_units(written, "");
    ASSERT_EQ(written["divers"].size(), 4U);
    const json& fast = written["divers"][1];
    EXPECT_EQ(fast["guest"], "guest-2");
    EXPECT_EQ(fast["ears_troubled"], true);
    EXPECT_EQ(fast["depth_source"], "own_samples");
    EXPECT_NEAR(fast["fastest_ascent_m_per_min"].get<double>(),
                reviewed->divers[1].fastest_ascent.value(), 1e-6);
    EXPECT_NEAR(fast["actual_rmv_l_per_min"].get<double>(),
                reviewed->divers[1].actual_rmv->value(), 1e-6);
    EXPECT_EQ(written["divers"][3]["depth_source"], "group_samples");
    EXPECT_EQ(written["groups"][0]["lowest_guest"], "guest-3");
    ASSERT_EQ(written["findings"].size(), reviewed->findings.size());
    EXPECT_EQ(written["findings"][0]["what"],
              "what of " + name(reviewed->findings[0].code));
}

}  // namespace
}  // namespace leadline::files_test
