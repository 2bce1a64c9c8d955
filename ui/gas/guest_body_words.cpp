// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_body_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <tuple>
#include <utility>

#include "ui/document/session_document.h"
#include "ui/gas/short_names.h"
#include "ui/words/finding_words.h"
#include "ui/words/guest_name.h"
#include "ui/words/lever_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr Minutes longest_known{240.0};

/// Names the context of this file's texts to lupdate.
class BodyTexts {
    Q_DECLARE_TR_FUNCTIONS(GuestBody)
};

QString number_of(Kilograms mass, UnitSystem units) {
    return text(mass, units).section(QChar(0x00A0), 0, 0);
}

QString brief_words(const Finding& finding, const GuestLead& lead) {
    switch (finding.code) {
        case FindingCode::cold_before_end:
            return BodyTexts::tr("May be too cold before the end");
        case FindingCode::bcd_cannot_hold:
            return BodyTexts::tr("The BCD may not hold this guest up");
        case FindingCode::cannot_stay_down:
            return BodyTexts::tr("May not stay down near the end");
        case FindingCode::lead_outside_range:
            return lead.carried > lead.high ? BodyTexts::tr("Carries more lead than expected")
                                            : BodyTexts::tr("Carries less lead than expected");
        default:
            return {};
    }
}

QString missing_words(WarmthGap gap) {
    switch (gap) {
        case WarmthGap::body_mass:
            return BodyTexts::tr("Weight is missing: Roster, Kit");
        case WarmthGap::body_height:
            return BodyTexts::tr("Height is missing: Roster, Kit");
        case WarmthGap::suit:
            return BodyTexts::tr("Suit in mm is missing: Roster, Kit");
        case WarmthGap::outside_range:
            return BodyTexts::tr(
                "Warmth: outside what the estimate holds for (check weight, height and age)");
        case WarmthGap::none:
            break;
    }
    return {};
}

QString missing_words(LeadGap gap) {
    switch (gap) {
        case LeadGap::body_mass:
            return missing_words(WarmthGap::body_mass);
        case LeadGap::body_height:
            return missing_words(WarmthGap::body_height);
        case LeadGap::suit:
            return missing_words(WarmthGap::suit);
        case LeadGap::cylinder:
            return BodyTexts::tr("Cylinder is missing: Roster, Kit");
        case LeadGap::outside_range:
            return BodyTexts::tr(
                "Lead: outside what the estimate holds for (check weight, height and age)");
        case LeadGap::none:
            break;
    }
    return {};
}

/// All that stands between a guest and the figures, each once.
QStringList missing(const GuestBody& body) {
    QStringList all;
    const auto add = [&](const QString& words) {
        if (!words.isEmpty() && !all.contains(words)) all << words;
    };
    add(missing_words(body.warmth->gap));
    add(missing_words(body.lead->gap));
    if (body.lead->gap == LeadGap::none && body.guest->kit.bcd.empty()) {
        add(BodyTexts::tr("BCD is missing, so what it holds up is not checked: Roster, Kit"));
    }
    return all;
}

/// Order of getting cold: too cold in the middle case, in the low case, feeling cold.
std::tuple<double, double, double> coldness(const GuestWarmth& warmth) {
    const auto minutes = [](const std::optional<Minutes>& time) {
        return time ? time->value() : HUGE_VAL;
    };
    return {minutes(warmth.middle), minutes(warmth.low), minutes(warmth.chilled)};
}

/// The guest of a group who is likely cold first; nullptr: no estimate, or warm for all of 240 min.
const GuestWarmth* first_cold(const SessionDocument& document, const GroupId& group) {
    const GuestWarmth* first = nullptr;
    for (const GuestWarmth& warmth : document.plan().warmth) {
        const Guest* guest = find_guest(document.session(), warmth.guest);
        if (guest == nullptr || guest->group != group || warmth.gap != WarmthGap::none) continue;
        if (!warmth.low && !warmth.chilled) continue;
        if (first == nullptr || coldness(warmth) < coldness(*first)) first = &warmth;
    }
    return first;
}

bool has_estimate(const SessionDocument& document, const GroupId& group) {
    const auto& all = document.plan().warmth;
    return std::any_of(all.begin(), all.end(), [&](const GuestWarmth& warmth) {
        const Guest* guest = find_guest(document.session(), warmth.guest);
        return guest != nullptr && guest->group == group && warmth.gap == WarmthGap::none;
    });
}

/// Others of the group who may be too cold before the planned end.
QString others_at_risk(const SessionDocument& document, const GroupId& group, const GuestId& but) {
    QStringList names;
    for (const Guest& guest : document.session().guests) {
        if (guest.group != group || guest.id == but) continue;
        if (open_finding(document.plan(), FindingCode::cold_before_end, guest.id) != nullptr) {
            names << guest_name(guest.name);
        }
    }
    return names.isEmpty() ? QString()
                           : u' ' + BodyTexts::tr("Perhaps too cold before the end, too: %1.")
                                        .arg(few_names(names));
}

QString when_too_cold(const GuestWarmth& warmth) {
    return warmth.middle ? BodyTexts::tr("likely after %1").arg(too_cold_text(warmth))
                         : BodyTexts::tr("likely not within %1, in a bad case after %2")
                               .arg(text(longest_known), whole_minutes(*warmth.low));
}

/// @param prefix  the group's name with a colon; empty where there is one group alone
GasSentence warmth_answer(const SessionDocument& document, const GroupId& group,
                          const QString& prefix) {
    const QString planned =
        BodyTexts::tr("Planned: %1.").arg(text(duration(document.session().profile)));
    const GuestWarmth* first = first_cold(document, group);
    if (first == nullptr) {
        return {std::nullopt, prefix + BodyTexts::tr("Nobody is likely to get cold within %1. %2")
                                           .arg(text(longest_known), planned)};
    }
    const Guest* guest = find_guest(document.session(), first->guest);
    const QString name = short_name(guest_name(guest->name));
    const QString feels = first->chilled ? whole_minutes(*first->chilled) : QString();
    if (!first->low) {
        return {std::nullopt,
                prefix + BodyTexts::tr(
                             "Nobody is likely to get too cold within %1. First to feel cold: %2, "
                             "after about %3. %4")
                             .arg(text(longest_known), name, feels, planned)};
    }
    const QString risk = others_at_risk(document, group, guest->id);
    const Finding* finding = open_finding(document.plan(), FindingCode::cold_before_end, guest->id);
    const QString too_cold = when_too_cold(*first);
    QString said =
        feels.isEmpty()
            ? BodyTexts::tr("First to get too cold: %1, %2. %3").arg(name, too_cold, planned)
            : BodyTexts::tr("First to get too cold: %1, %2. Likely feels cold from %3 on. %4")
                  .arg(name, too_cold, feels, planned);
    said = prefix + said + risk;
    if (finding == nullptr && risk.isEmpty()) return {std::nullopt, said};
    const Severity severity = finding != nullptr ? finding->severity : Severity::caution;
    return {severity, BodyTexts::tr("%1 – %2").arg(label(severity), said)};
}

void add_warmth_answers(const SessionDocument& document, std::vector<GasSentence>& answers) {
    const Session& session = document.session();
    std::vector<GroupId> groups;
    for (const Group& group : session.groups) groups.push_back(group.id);
    groups.push_back(GroupId());  // those in none
    std::vector<GroupId> known;
    std::copy_if(groups.begin(), groups.end(), std::back_inserter(known),
                 [&](const GroupId& group) { return has_estimate(document, group); });
    const bool named = session.groups.size() > 1;
    for (const GroupId& group : known) {
        QString prefix;
        if (named) {
            const QString who = group.empty() ? BodyTexts::tr("In no group yet")
                                              : short_name(group_label(session, group));
            prefix = BodyTexts::tr("%1: ").arg(who);
        }
        answers.push_back(warmth_answer(document, group, prefix));
    }
}

void add_lead_answers(const SessionDocument& document, std::vector<GasSentence>& answers) {
    const Plan& plan = document.plan();
    constexpr std::size_t most_named = 3;
    std::vector<GasSentence> heavy;
    QStringList light;
    bool known = false;
    for (const GuestLead& lead : plan.lead) {
        known = known || lead.gap == LeadGap::none;
        const Guest* guest = find_guest(document.session(), lead.guest);
        if (guest == nullptr) continue;
        const QString name = guest_name(guest->name);
        if (const Finding* finding = open_finding(plan, FindingCode::bcd_cannot_hold, lead.guest)) {
            const FindingText said = words(*finding, document.session(), document.units());
            heavy.push_back({finding->severity, BodyTexts::tr("%1 – %2: %3 %4")
                                                    .arg(label(finding->severity), short_name(name),
                                                         said.what, said.remedy)});
        }
        if (open_finding(plan, FindingCode::cannot_stay_down, lead.guest) != nullptr) light << name;
    }
    for (std::size_t i = 0; i < heavy.size() && i < most_named; ++i) answers.push_back(heavy[i]);
    if (heavy.size() > most_named) {
        answers.push_back(
            {Severity::caution,
             BodyTexts::tr("%1 – too heavy for the BCD, perhaps, %2 more: see the table.")
                 .arg(label(Severity::caution))
                 .arg(heavy.size() - most_named)});
    }
    if (!light.isEmpty()) {
        answers.push_back(
            {std::nullopt, BodyTexts::tr("May not stay down with a nearly empty cylinder: %1.")
                               .arg(few_names(light))});
    }
    if (known && heavy.empty() && light.isEmpty()) {
        answers.push_back(
            {std::nullopt, BodyTexts::tr("Lead: as far as there is an estimate, nobody is too "
                                         "heavy for the BCD or too light at the end.")});
    }
}

void add_missing(const SessionDocument& document, std::vector<GasSentence>& answers) {
    std::vector<std::pair<QString, QStringList>> gaps;
    for (const Guest& guest : document.session().guests) {
        const auto body = guest_body(document, guest.id);
        if (!body) continue;
        for (const QString& gap : missing(*body)) {
            auto found = std::find_if(gaps.begin(), gaps.end(),
                                      [&](const auto& known) { return known.first == gap; });
            if (found == gaps.end()) found = gaps.insert(gaps.end(), {gap, {}});
            found->second << guest_name(guest.name);
        }
    }
    for (const auto& [gap, names] : gaps) {
        const bool all = static_cast<std::size_t>(names.size()) == document.session().guests.size();
        answers.push_back(
            {std::nullopt, BodyTexts::tr("%1 (%2).")
                               .arg(gap, all && all_of_many(names) ? BodyTexts::tr("all guests")
                                                                   : few_names(names))});
    }
}

}  // namespace

std::optional<GuestBody> guest_body(const SessionDocument& document, const GuestId& guest) {
    const Plan& plan = document.plan();
    const auto is_theirs = [&](const auto& part) { return part.guest == guest; };
    const Guest* found = find_guest(document.session(), guest);
    const auto warmth = std::find_if(plan.warmth.begin(), plan.warmth.end(), is_theirs);
    const auto lead = std::find_if(plan.lead.begin(), plan.lead.end(), is_theirs);
    if (found == nullptr || warmth == plan.warmth.end() || lead == plan.lead.end()) return {};
    return GuestBody{found, &*warmth, &*lead};
}

QString too_cold_text(const GuestWarmth& warmth) {
    if (warmth.low && !warmth.middle) {
        return BodyTexts::tr("over %1 (from %2)")
            .arg(text(longest_known), whole_minutes(*warmth.low).section(QChar(0x00A0), 0, 0));
    }
    return band_text(TimeBand{warmth.low, warmth.middle, warmth.high});
}

QString feels_cold_text(const GuestWarmth& warmth) {
    return median_text(TimeBand{{}, warmth.chilled, {}});
}

QString lift_text(Kilograms lift, UnitSystem units) {
    const Kilograms size(std::abs(lift.value()));
    const QString written = text(size, units);
    if (QLocale().toDouble(written.section(QChar(0x00A0), 0, 0)) == 0.0)
        return BodyTexts::tr("neutral");
    return lift.value() < 0.0 ? BodyTexts::tr("sinks %1").arg(written)
                              : BodyTexts::tr("floats %1").arg(written);
}

QString lead_text(const GuestLead& lead, UnitSystem units) {
    const QString low = number_of(lead.low, units);
    const QString high = number_of(lead.high, units);
    const QString first = text(lead.middle, units);
    return low == high ? first : BodyTexts::tr("%1 (%2 to %3)").arg(first, low, high);
}

std::vector<BodyNote> body_notes(const SessionDocument& document, const GuestId& guest) {
    std::vector<BodyNote> notes;
    const auto body = guest_body(document, guest);
    if (!body) return notes;
    for (const Finding& finding : document.plan().findings) {
        if (finding.subject != Subject(guest)) continue;
        const QString brief = brief_words(finding, *body->lead);
        if (brief.isEmpty()) continue;
        const FindingText said = words(finding, document.session(), document.units());
        if (finding.overruled_because) {
            notes.push_back(
                {finding.code, std::nullopt, BodyTexts::tr("%1 (set aside)").arg(brief),
                 BodyTexts::tr("%1 Set aside: %2")
                     .arg(said.what, QString::fromStdString(*finding.overruled_because))});
        } else {
            notes.push_back(
                {finding.code, finding.severity, brief,
                 BodyTexts::tr("%1: %2 %3").arg(label(finding.severity), said.what, said.remedy)});
        }
    }
    // Whoever is too heavy for the BCD or floats up has the wrong lead: that need not be said
    // twice.
    const bool said = std::any_of(notes.begin(), notes.end(), [](const BodyNote& note) {
        return note.code == FindingCode::bcd_cannot_hold ||
               note.code == FindingCode::cannot_stay_down;
    });
    if (said) {
        std::erase_if(notes, [](const BodyNote& note) {
            return note.code == FindingCode::lead_outside_range;
        });
    }
    std::stable_sort(notes.begin(), notes.end(), [](const BodyNote& a, const BodyNote& b) {
        return a.severity.value_or(Severity::note) < b.severity.value_or(Severity::note);
    });
    for (const QString& gap : missing(*body))
        notes.push_back({std::nullopt, std::nullopt, gap, gap});
    return notes;
}

bool is_first_cold(const SessionDocument& document, const GuestId& guest) {
    const Guest* found = find_guest(document.session(), guest);
    const GuestWarmth* first = found != nullptr ? first_cold(document, found->group) : nullptr;
    return first != nullptr && first->guest == guest;
}

std::vector<GasSentence> body_answers(const SessionDocument& document) {
    std::vector<GasSentence> answers;
    add_warmth_answers(document, answers);
    add_lead_answers(document, answers);
    add_missing(document, answers);
    return answers;
}

}  // namespace leadline
