// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/checks.h"

namespace leadline {
namespace {

/// Slack for limits met exactly: 9 m/min typed as 8 m in 53.3 s is not a breach.
constexpr double slack = 1e-6;

class PlaceChecks {
public:
    explicit PlaceChecks(const CheckContext& context) : context_(context) {}

    std::vector<Finding> run() {
        depth();
        water();
        sea();
        speeds();
        ears();
        if (context_.session.site.emergency_line.empty()) {
            Finding finding;
            finding.code = FindingCode::emergency_line_missing;
            finding.severity = Severity::stop;
            found_.push_back(finding);
        }
        if (context_.session.rule_sets.empty()) {
            Finding finding;
            finding.code = FindingCode::no_rules_chosen;
            finding.severity = Severity::stop;
            found_.push_back(finding);
        }
        return std::move(found_);
    }

private:
    /// Adds a finding when the number breaks a limit of the kind; `above`: too much is a breach.
    void limit(FindingCode code, RuleKind kind, double number, bool above, FindingValue shown,
               const std::function<FindingValue(double)>& allowed) {
        const std::optional<Limit> broken =
            broken_limit(context_, kind, std::nullopt, [&](const Rule& rule) {
                return above ? number > rule.value + slack : number < rule.value - slack;
            });
        if (broken) {
            found_.push_back(finding_of(code, {}, *broken, {shown, allowed(broken->value)}));
        }
    }

    void depth() {
        const Depth deepest = context_.environment.deepest;
        const auto as_depth = [](double value) { return Depth(Meters(value)); };
        const std::size_t before = found_.size();
        limit(FindingCode::depth_over_limit, RuleKind::max_depth_m, deepest.meters().value(), true,
              deepest, as_depth);
        if (found_.size() == before) {
            limit(FindingCode::depth_over_usual, RuleKind::usual_depth_m,
                  deepest.meters().value(), true, deepest, as_depth);
        }
        if (const std::optional<Depth> bottom = context_.session.site.bottom_depth) {
            limit(FindingCode::bottom_below_limit, RuleKind::max_bottom_depth_m,
                  bottom->meters().value(), true, *bottom, as_depth);
        }
    }

    void water() {
        const Kelvins water = context_.session.conditions.water_temperature;
        limit(FindingCode::water_too_cold, RuleKind::min_water_temperature_c,
              Celsius(water).value(), false, water,
              [](double value) { return Kelvins(Celsius(value)); });
        const Minutes planned = duration(context_.session.profile);
        const std::optional<Limit> broken =
            broken_limit(context_, RuleKind::max_minutes, std::nullopt, [&](const Rule& rule) {
                return Celsius(water).value() < rule.threshold.value_or(100.0) &&
                       planned.value() > rule.value + slack;
            });
        if (broken) {
            found_.push_back(finding_of(
                FindingCode::minutes_over_limit, {}, *broken,
                {planned, Minutes(broken->value), Kelvins(Celsius(broken->threshold.value_or(36.0)))}));
        }
    }

    void sea() {
        const Conditions& today = context_.session.conditions;
        const auto as_meters = [](double value) { return Meters(value); };
        if (today.visibility) {
            limit(FindingCode::visibility_low, RuleKind::min_visibility_m,
                  today.visibility->value(), false, *today.visibility, as_meters);
        }
        if (today.wave_height) {
            limit(FindingCode::waves_high, RuleKind::max_wave_height_m,
                  today.wave_height->value(), true, *today.wave_height, as_meters);
        }
        const int current = static_cast<int>(today.current);
        limit(FindingCode::current_strong, RuleKind::max_current, current, true, current,
              [](double value) { return static_cast<int>(value); });
    }

    void speeds() {
        const auto as_rate = [](double value) { return MetersPerMinute(value); };
        limit(FindingCode::ascent_too_fast, RuleKind::max_ascent_rate_m_per_min,
              context_.environment.fastest_ascent.value(), true,
              context_.environment.fastest_ascent, as_rate);
        limit(FindingCode::descent_too_fast, RuleKind::max_descent_rate_m_per_min,
              context_.environment.fastest_descent.value(), true,
              context_.environment.fastest_descent, as_rate);
    }

    void ears() {
        // From the rule itself: the ladder ends at the longest step it can be drawn for.
        const ClearingLadder& ladder = context_.environment.ladder;
        const std::optional<Limit> rule = strictest(
            context_.rules, context_.session.rule_sets, RuleKind::clearing_step_m);
        const Meters step = rule ? Meters(rule->value) : ladder.step;
        if (step < ladder.locks_at.meters()) return;
        Finding finding;
        finding.code = FindingCode::ear_step_over_locking;
        finding.severity = Severity::stop;
        finding.values = {step, ladder.locks_at.meters()};
        found_.push_back(finding);
    }

    const CheckContext& context_;
    std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> check_place(const CheckContext& context) { return PlaceChecks(context).run(); }

}  // namespace leadline
