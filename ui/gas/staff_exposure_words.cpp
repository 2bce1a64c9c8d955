// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/staff_exposure_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/body/tissues.h"
#include "ui/document/session_document.h"
#include "ui/gas/short_names.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"
#include "ui/words/rule_words.h"

namespace leadline {
namespace {

constexpr std::array exposure_codes{
    FindingCode::staff_needs_stop, FindingCode::staff_dives_over_limit,
    FindingCode::staff_ascents_over_limit, FindingCode::staff_days_over_limit};

/// Names the context of this file's texts to lupdate.
class ExposureTexts {
    Q_DECLARE_TR_FUNCTIONS(StaffExposure)
};

QString staff_name(const SessionDocument& document, const StaffId& id) {
    const StaffMember* member = find_staff(document.session(), id);
    return short_name(QString::fromStdString(member != nullptr ? member->name : id.text));
}

QString what_and_remedy(const SessionDocument& document, const Finding& finding) {
    const FindingText said = words(finding, document.session(), document.units());
    return ExposureTexts::tr("%1 %2").arg(said.what, said.remedy);
}

/// The findings about one's exposure, open ones and those set aside.
std::vector<const Finding*> findings_of(const Plan& plan, const StaffId& staff) {
    std::vector<const Finding*> found;
    for (const FindingCode code : exposure_codes) {
        if (const Finding* finding = exposure_finding(plan, code, staff)) found.push_back(finding);
    }
    return found;
}

QString limit_words(const SessionDocument& document, RuleKind kind, const QString& sentence) {
    const std::optional<Limit> limit =
        strictest(document.rules(), document.session().rule_sets, kind);
    if (!limit) return {};
    return sentence.arg(QLocale().toString(limit->value, 'g', 4),
                        rule_set_title(limit->rule_set),
                        rule_source(limit->source));
}

QString limits_reason(const SessionDocument& document) {
    QStringList said;
    for (const QString& one :
         {limit_words(document, RuleKind::staff_dives_per_day,
                      ExposureTexts::tr("At most %1 dives a day (%2: %3).")),
          limit_words(document, RuleKind::staff_ascents_per_day,
                      ExposureTexts::tr("At most %1 times up a day (%2: %3).")),
          limit_words(document, RuleKind::staff_days_in_a_row,
                      ExposureTexts::tr("At most %1 days with a dive in a row (%2: %3)."))}) {
        if (!one.isEmpty()) said << one;
    }
    if (said.isEmpty())
        return ExposureTexts::tr("Limits: the chosen rule sets name none for staff.");
    return ExposureTexts::tr("Limits: %1").arg(said.join(u' '));
}

QString half_times(int compartment) {
    QStringList times;
    for (const Compartment& one : zh_l16c) {
        if (one.number == compartment) times << QLocale().toString(one.half_time, 'g', 4);
    }
    return times.join(QStringLiteral(" / "));
}

QString own_reason(const SessionDocument& document, const StaffExposure& exposure) {
    const QString name = staff_name(document, exposure.staff);
    const QString when = exposure.dives_now ? ExposureTexts::tr("at the worst moment of this dive")
                                            : ExposureTexts::tr("before this session");
    QString said;
    if (exposure.leading_compartment > 0) {
        said = ExposureTexts::tr(
                   "%1: going straight up %2 would use %3 of what the house allows; nearest to its "
                   "limit is tissue %4 of 16 (half-time %5 min).")
                   .arg(name, when, tissue_share_text(exposure))
                   .arg(exposure.leading_compartment)
                   .arg(half_times(exposure.leading_compartment));
    } else {
        said = ExposureTexts::tr("%1: no load above that of the surface.").arg(name);
    }
    if (!exposure.no_fly_source.empty()) {
        said +=
            u' ' + ExposureTexts::tr("Before flying %1: %2.")
                       .arg(no_fly_text(exposure), QString::fromStdString(exposure.no_fly_source));
    }
    return said;
}

}  // namespace

const StaffExposure* find_exposure(const Plan& plan, const StaffId& staff) {
    const auto found =
        std::find_if(plan.exposures.begin(), plan.exposures.end(),
                     [&](const StaffExposure& exposure) { return exposure.staff == staff; });
    return found == plan.exposures.end() ? nullptr : &*found;
}

const Finding* exposure_finding(const Plan& plan, FindingCode code, const StaffId& staff) {
    const auto found =
        std::find_if(plan.findings.begin(), plan.findings.end(), [&](const Finding& finding) {
            return finding.code == code && finding.subject == Subject(staff);
        });
    return found == plan.findings.end() ? nullptr : &*found;
}

StaffVerdict staff_verdict(const SessionDocument& document, const StaffExposure& exposure) {
    StaffVerdict verdict;
    bool aside = false;
    bool stop = false;
    QStringList full;
    for (const Finding* finding : findings_of(document.plan(), exposure.staff)) {
        const QString said = what_and_remedy(document, *finding);
        if (finding->overruled_because) {
            aside = true;
            full << ExposureTexts::tr("%1 Set aside: %2")
                        .arg(said, QString::fromStdString(*finding->overruled_because));
            continue;
        }
        full << said;
        stop = stop || finding->code == FindingCode::staff_needs_stop;
        if (!verdict.severity || finding->severity < *verdict.severity) {
            verdict.severity = finding->severity;
        }
    }
    verdict.full = full.join(u' ');
    if (verdict.severity) {
        verdict.word = with_colon(
            label(*verdict.severity),
            stop ? ExposureTexts::tr("needs a stop") : ExposureTexts::tr("over a limit"));
    } else if (aside) {
        verdict.word = ExposureTexts::tr("Over a limit, set aside");
    } else if (!exposure.dives_now) {
        verdict.word = ExposureTexts::tr("Does not dive now");
    } else {
        verdict.word = ExposureTexts::tr("Within limits");
    }
    if (verdict.full.isEmpty()) verdict.full = verdict.word;
    return verdict;
}

QString long_time_text(Minutes time) {
    // A hair of slack keeps 60 min from being shown as 59.
    const auto minutes = static_cast<int>(std::floor(time.value() + 1e-6));
    constexpr int hour = 60;
    constexpr int day = 24 * hour;
    const QChar space(0x00A0);
    if (minutes < hour) return ExposureTexts::tr("%1 min").arg(minutes).replace(u' ', space);
    if (minutes < day) {
        return ExposureTexts::tr("%1 h %2 min")
            .arg(minutes / hour)
            .arg(minutes % hour)
            .replace(u' ', space);
    }
    if (minutes < 2 * day)
        return ExposureTexts::tr("%1 h").arg(minutes / hour).replace(u' ', space);
    return ExposureTexts::tr("%n days", nullptr, minutes / day).replace(u' ', space);
}

QString surface_interval_text(const StaffExposure& exposure) {
    return exposure.surface_interval ? long_time_text(*exposure.surface_interval)
                                     : ExposureTexts::tr("No record");
}

QString no_stop_text(const StaffExposure& exposure) {
    return exposure.no_stop_left ? whole_minutes(*exposure.no_stop_left)
                                 : ExposureTexts::tr("over 24 h")
                                       .replace(QStringLiteral("24 "), QStringLiteral("24\u00A0"));
}

QString tissue_share_text(const StaffExposure& exposure) {
    constexpr double percent = 100.0;
    constexpr double slack = 1e-6;
    const double shown = std::ceil(exposure.highest_saturation * percent - slack);
    return ExposureTexts::tr("%1 %")
        .arg(QLocale().toString(std::max(0.0, shown), 'f', 0))
        .replace(u' ', QChar(0x00A0));
}

QString no_fly_text(const StaffExposure& exposure) {
    if (exposure.no_fly.value() <= 0.0) return QString(QChar(0x2013));
    return ExposureTexts::tr("%1 h")
        .arg(QLocale().toString(std::ceil(exposure.no_fly.value()), 'f', 0))
        .replace(u' ', QChar(0x00A0));
}

std::vector<GasSentence> staff_answers(const SessionDocument& document) {
    const Plan& plan = document.plan();
    std::vector<GasSentence> answers;
    std::vector<GasSentence> aside;
    QStringList within;
    QStringList ashore;
    QStringList unrecorded;
    for (const StaffExposure& exposure : plan.exposures) {
        const StaffMember* member = find_staff(document.session(), exposure.staff);
        if (member == nullptr) continue;
        const QString name = QString::fromStdString(member->name);
        bool open = false;
        bool any = false;
        for (const Finding* finding : findings_of(plan, exposure.staff)) {
            any = true;
            const QString said = what_and_remedy(document, *finding);
            if (finding->overruled_because) {
                aside.push_back(
                    {std::nullopt,
                     ExposureTexts::tr("%1: %2 Set aside: %3")
                         .arg(short_name(name),
                              words(*finding, document.session(), document.units()).what,
                              QString::fromStdString(*finding->overruled_because))});
                continue;
            }
            open = true;
            answers.push_back(
                {finding->severity, ExposureTexts::tr("%1 – %2: %3")
                                        .arg(label(finding->severity), short_name(name), said)});
        }
        if (!open && !any) (exposure.dives_now ? within : ashore) << name;
        if (member->earlier_dives.empty()) unrecorded << name;
    }
    std::stable_sort(answers.begin(), answers.end(),
                     [](const auto& a, const auto& b) { return *a.severity < *b.severity; });
    answers.insert(answers.end(), aside.begin(), aside.end());
    if (!within.isEmpty()) {
        answers.push_back(
            {std::nullopt, ExposureTexts::tr("Within the limits: %1.").arg(few_names(within))});
    }
    if (!ashore.isEmpty()) {
        answers.push_back(
            {std::nullopt,
             ExposureTexts::tr("Does not dive in this session: %1.").arg(few_names(ashore))});
    }
    if (!unrecorded.isEmpty()) {
        answers.push_back(
            {std::nullopt,
             ExposureTexts::tr(
                 "Taken as rested, as no earlier dive is on record: %1. Enter dives on the Roster "
                 "tab, Groups and staff, with the button in the column Dives.")
                 .arg(few_names(unrecorded))});
    }
    return answers;
}

std::vector<GasSentence> staff_reasons(const SessionDocument& document, const StaffId& staff) {
    const UnitSystem units = document.units();
    std::vector<GasSentence> reasons;
    const auto say = [&](const QString& said) { reasons.push_back({std::nullopt, said}); };
    if (const StaffExposure* exposure = find_exposure(document.plan(), staff)) {
        say(own_reason(document, *exposure));
    }
    say(limits_reason(document));
    say(ExposureTexts::tr(
            "Nitrogen in sixteen tissues by ZH-L16C (Bühlmann, Tauchmedizin, 1995; Bühlmann, Völlm "
            "and "
            "Nussberger, 2002; partly from memory), with gradient factors %1/%2 of the house: "
            "common "
            "practice, no source. With %2 at the surface no time without a stop is longer than in "
            "the "
            "DCIEM table of 1992 (to %3) or in the U.S. Navy's Revision 7 (to %4). What is left "
            "without a stop is at the deepest planned point before this session, rounded down.")
            .arg(QLocale().toString(house_gradient_factors.low * 100.0, 'f', 0),
                 QLocale().toString(house_gradient_factors.high * 100.0, 'f', 0),
                 text(Depth(Meters(45.0)), units, Rounding::down),
                 text(Depth(Meters(58.0)), units, Rounding::down)));
    say(ExposureTexts::tr(
            "What is not known of an earlier dive is taken as what loads more: down at once at %1, "
            "at "
            "the deepest point for all of its time, up at %2; at an altitude as if just come from "
            "the "
            "sea. Expected ascents with a guest come on top of the planned time, and no gas lost "
            "on "
            "them is credited. Dives of the %3 days before this one count.")
            .arg(text(assumed_descent_rate, units), text(assumed_ascent_rate, units))
            .arg(exposure_days));
    say(ExposureTexts::tr(
            "Flying: %1 h after a single dive, %2 h after repeated dives, %3 h after a dive with "
            "stops: "
            "the longer of the DAN workshop of 2002 and the UHMS workshop of 1989.")
            .arg(no_fly_single.value())
            .arg(no_fly_repeated.value())
            .arg(no_fly_after_stops.value()));
    say(ExposureTexts::tr(
        "Outside the model: bubbles and what repeated ascents do to them, cold, work, dehydration "
        "and age. Each ascent carries its own risk."));
    return reasons;
}

}  // namespace leadline
