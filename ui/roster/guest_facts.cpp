// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/guest_facts.h"

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int of_age_years = 18;

/// Names the context of this file's texts to lupdate.
class GuestFactTexts {
    Q_DECLARE_TR_FUNCTIONS(Roster)
};

bool is_about(const Finding& finding, const GuestId& guest) {
    const auto* about = std::get_if<GuestId>(&finding.subject);
    return about != nullptr && *about == guest;
}

}  // namespace

std::vector<const Finding*> findings_of(const Plan& plan, const GuestId& guest) {
    std::vector<const Finding*> found;
    for (const Finding& finding : plan.findings) {
        if (is_about(finding, guest)) found.push_back(&finding);
    }
    return found;
}

GuestPage page_of(FindingCode code) {
    switch (code) {
        case FindingCode::screening_unanswered:
        case FindingCode::screening_physician:
        case FindingCode::screening_does_not_dive:
        case FindingCode::screening_today_flagged:
        case FindingCode::screening_today_unanswered:
        case FindingCode::screening_out_of_date:
        case FindingCode::screening_in_future:
        case FindingCode::approval_older_than_check:
        case FindingCode::screening_not_signed:
        case FindingCode::screening_edition_older: return GuestPage::screening;
        case FindingCode::kit_missing:
        case FindingCode::cylinder_missing:
        case FindingCode::bcd_cannot_hold:
        case FindingCode::cannot_stay_down:
        case FindingCode::lead_outside_range:
        case FindingCode::cold_before_end:
        case FindingCode::ends_below_reserve:
        case FindingCode::minimum_gas_above_reserve: return GuestPage::kit;
        default: return GuestPage::person;
    }
}

std::optional<int> age_of(const Session& session, const Guest& guest) {
    if (!guest.birth_date) return std::nullopt;
    return age_in_years(*guest.birth_date, session.date);
}

bool consent_matters(const SessionDocument& document, const Guest& guest) {
    if (guest.guardian_consent) return true;
    const std::optional<int> age = age_of(document.session(), guest);
    if (age && *age < of_age_years) return true;
    for (const Finding& finding : document.plan().findings) {
        if (finding.code != FindingCode::consent_missing) continue;
        if (is_about(finding, guest.id)) return true;
    }
    return false;
}

QString group_name(const Session& session, const GroupId& group) {
    const Group* found = find_group(session, group);
    if (found == nullptr) return {};
    return found->name.empty() ? GuestFactTexts::tr("(no name)")
                               : QString::fromStdString(found->name);
}

QString staff_name(const StaffMember& member) {
    if (!member.name.empty()) return QString::fromStdString(member.name);
    return member.role == StaffRole::instructor ? GuestFactTexts::tr("Instructor, no name yet")
                                                : GuestFactTexts::tr("Assistant, no name yet");
}

QString missing_kit(const Plan& plan, const GuestId& guest) {
    for (const Finding& finding : plan.findings) {
        if (finding.code != FindingCode::kit_missing || !is_about(finding, guest)) continue;
        QStringList items;
        for (const QString& raw : QString::fromStdString(finding.text).split(u',')) {
            items << kit_item(raw);
        }
        return items.join(QStringLiteral(", "));
    }
    return {};
}

QString cylinder_text(const std::optional<Cylinder>& cylinder, UnitSystem units) {
    if (!cylinder) return {};
    const CylinderType* type = find_cylinder_type(cylinder->type);
    const QString kind =
        type != nullptr ? text(*type, units) : QString::fromStdString(cylinder->type.text);
    return text(cylinder->fill_pressure, units) + QStringLiteral(" · ") + kind;
}

QString count_text(const Readiness& counts) {
    QStringList parts;
    if (counts.stops > 0)
        parts << GuestFactTexts::tr("%n stops", nullptr, static_cast<int>(counts.stops));
    if (counts.cautions > 0)
        parts << GuestFactTexts::tr("%n care", nullptr, static_cast<int>(counts.cautions));
    return parts.join(QStringLiteral(", "));
}

}  // namespace leadline
