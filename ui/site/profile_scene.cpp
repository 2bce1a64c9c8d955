// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_scene.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/document/session_document.h"
#include "ui/site/profile_labels.h"
#include "ui/words/name_words.h"
#include "ui/words/rule_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class ProfileSceneTexts {
    Q_DECLARE_TR_FUNCTIONS(ProfileView)
};

QString titled(const QString& level, const std::string& rule_set) {
    return rule_set.empty() ? level : with_colon(level, rule_set_title(rule_set));
}

std::vector<DepthLine> depth_lines(const SessionDocument& document) {
    const UnitSystem units = document.units();
    const Depth planned = document.plan().environment.deepest;
    std::vector<DepthLine> lines;
    const auto add = [&](DepthLine::Kind kind, Depth depth, const QString& text) {
        lines.push_back({kind, depth, text, planned > depth, true});
    };
    if (const auto& limit = document.plan().limits.max_depth) {
        const Depth depth{Meters(limit->value)};
        add(DepthLine::Kind::limit, depth,
            titled(ProfileSceneTexts::tr("At most %1").arg(text(depth, units, Rounding::down)),
                   limit->rule_set));
    }
    if (const auto usual = strictest_for_age(document.rules(), document.session().rule_sets,
                                             RuleKind::usual_depth_m, std::nullopt)) {
        const Depth depth{Meters(usual->value)};
        add(DepthLine::Kind::usual, depth,
            titled(ProfileSceneTexts::tr("Usual %1").arg(text(depth, units)), usual->rule_set));
    }
    if (const auto bottom = document.session().site.bottom_depth) {
        add(DepthLine::Kind::bottom, *bottom,
            ProfileSceneTexts::tr("Bottom %1").arg(text(*bottom, units)));
    }
    return lines;
}

/// Allowed rate and severity, when the plan has a finding about too fast a way.
struct RateLimit {
    MetersPerMinute allowed{};
    Severity severity = Severity::stop;
};

std::optional<RateLimit> broken_rate(const Plan& plan, FindingCode code) {
    for (const Finding& finding : plan.findings) {
        if (finding.code != code || finding.values.size() < 2) continue;
        if (const auto* allowed = std::get_if<MetersPerMinute>(&finding.values[1])) {
            return RateLimit{*allowed, finding.severity};
        }
    }
    return std::nullopt;
}

/// What a leg is called: its phase with its minutes when level, with its speed when it goes down or
/// up; with a word when that is too fast.
ProfileLeg leg_between(const ProfilePoint& from, const ProfilePoint& to,
                       const ProfileScale& scale, const SessionDocument& document) {
    constexpr double speed_worth_naming = 1.0;  // m/min
    constexpr double slack = 1e-6;
    const MetersPerMinute rate = (to.depth - from.depth) / (to.time - from.time);
    const MetersPerMinute speed(std::abs(rate.value()));
    ProfileLeg leg;
    leg.line = QLineF(scale.at(from), scale.at(to));
    leg.downward = rate.value() > 0.0;
    leg.steep = speed.value() >= speed_worth_naming &&
                std::abs(leg.line.dy()) > 0.35 * std::abs(leg.line.dx());
    leg.text = label(to.phase) + u' ';
    if (speed.value() < speed_worth_naming) {
        leg.text += text(to.time - from.time);
        return leg;
    }
    leg.text += text(speed, document.units());
    if (to.phase != Phase::descent && to.phase != Phase::ascent) {
        leg.text +=
            u' ' + (leg.downward ? ProfileSceneTexts::tr("down") : ProfileSceneTexts::tr("up"));
    }
    const auto limit = broken_rate(document.plan(), leg.downward ? FindingCode::descent_too_fast
                                                                 : FindingCode::ascent_too_fast);
    if (limit && speed.value() > limit->allowed.value() + slack) {
        leg.warning = limit->severity;
        leg.text += u'\n' + ProfileSceneTexts::tr("too fast: at most %1")
                                .arg(text(limit->allowed, document.units()));
    }
    return leg;
}

/// Points on the descents where the clearing ladder has a rung.
std::vector<QPointF> clearing_marks(const ProfileScene& scene, const ClearingLadder& ladder) {
    std::vector<QPointF> marks;
    double reached = 0.0;  // ears once cleared at a depth need it again only deeper
    for (std::size_t i = 1; i < scene.profile.points.size(); ++i) {
        const ProfilePoint& from = scene.profile.points[i - 1];
        const ProfilePoint& to = scene.profile.points[i];
        const double start = from.depth.meters().value();
        const double end = to.depth.meters().value();
        for (const Depth rung : ladder.clear_at) {
            const double depth = rung.meters().value();
            if (depth <= start || depth > end + 1e-9 || depth <= reached) continue;
            const double share = (depth - start) / (end - start);
            marks.push_back(scene.legs[i - 1].line.pointAt(std::min(1.0, share)));
        }
        reached = std::max(reached, end);
    }
    return marks;
}

}  // namespace

ProfileScene profile_scene(const SessionDocument& document, const QRectF& area,
                           const QFontMetricsF& metrics,
                           const std::optional<ProfileScale>& scale) {
    ProfileScene scene;
    scene.profile = document.session().profile;
    scene.lines = depth_lines(document);
    const double left = metrics.horizontalAdvance(ProfileSceneTexts::tr("88.8 m")) + 8.0;
    const double sky = metrics.height() + 20.0;
    const QRectF plot = area.adjusted(left, sky, -16.0, -(metrics.height() + 12.0));
    std::vector<Depth> depths;
    for (const DepthLine& line : scene.lines) depths.push_back(line.depth);
    scene.scale = scale ? *scale : fitting_scale(plot, scene.profile, depths);
    scene.scale.plot = plot;
    for (DepthLine& line : scene.lines) {
        line.in_view = line.depth.meters().value() <= scene.scale.meters;
        if (!line.in_view) line.text += ProfileSceneTexts::tr(" (below this view)");
    }
    scene.depth_marks = depth_marks(scene.scale, document.units(), metrics.height() * 1.8);
    scene.time_marks =
        time_marks(scene.scale, metrics.horizontalAdvance(ProfileSceneTexts::tr("240 min")) + 16.0);
    for (std::size_t i = 1; i < scene.profile.points.size(); ++i) {
        scene.legs.push_back(leg_between(scene.profile.points[i - 1], scene.profile.points[i],
                                         scene.scale, document));
    }
    const ClearingLadder& ladder = document.plan().environment.ladder;
    scene.clearing_marks = clearing_marks(scene, ladder);
    const QString clearing =
        ProfileSceneTexts::tr("Clear ears every %1").arg(text(ladder.step, document.units()));
    scene.labels = place_labels(scene, area.adjusted(left, 4.0, -8.0, -(metrics.height() + 12.0)),
                                metrics, clearing);
    return scene;
}

}  // namespace leadline
