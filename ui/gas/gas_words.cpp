// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/gas_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

QString tr(const char* source) { return QCoreApplication::translate("GasTab", source); }

QString group_name(const Session& session, const GroupId& id) {
    const Group* group = find_group(session, id);
    if (group == nullptr) return {};
    const QString name = QString::fromStdString(group->name);
    // "Blue" stands for itself; a bare number or nothing at all needs the word.
    bool is_number = false;
    static_cast<void>(name.toInt(&is_number));
    return name.isEmpty() || is_number ? tr("Group %1").arg(name).trimmed() : name;
}

QString guest_name(const Session& session, const GuestId& id) {
    const Guest* guest = find_guest(session, id);
    return QString::fromStdString(guest != nullptr ? guest->name : id.text);
}

/// The gravest open finding that says the air of a guest of the group does not last.
std::optional<Severity> shortage(const Plan& plan, const GroupId& group) {
    std::optional<Severity> worst;
    for (const GuestGas& gas : plan.guests) {
        if (gas.group != group) continue;
        const Finding* finding = open_finding(plan, FindingCode::ends_below_reserve, gas.guest);
        if (finding != nullptr && (!worst || finding->severity < *worst)) {
            worst = finding->severity;
        }
    }
    return worst;
}

QString with_word(std::optional<Severity> severity, const QString& text) {
    return severity ? tr("%1 – %2").arg(label(*severity), text) : text;
}

}  // namespace

const Finding* open_finding(const Plan& plan, FindingCode code, const Subject& subject) {
    const auto found =
        std::find_if(plan.findings.begin(), plan.findings.end(), [&](const Finding& finding) {
            return finding.code == code && finding.subject == subject &&
                   !finding.overruled_because;
        });
    return found == plan.findings.end() ? nullptr : &*found;
}

QString whole_minutes(Minutes time) { return text(time, Rounding::down); }

GasSentence group_answer(const SessionDocument& document, const GroupGas& gas) {
    const Session& session = document.session();
    const QString group = group_name(session, gas.group);
    const std::vector<const Guest*> guests = guests_in(session, gas.group);
    if (guests.empty()) return {std::nullopt, tr("%1: nobody in this group yet.").arg(group)};
    if (!gas.limiting_guest) {
        return {Severity::caution,
                with_word(Severity::caution,
                          tr("%1: no cylinder is known. Enter cylinder and pressure in the table.")
                              .arg(group))};
    }
    const QString name = guest_name(session, *gas.limiting_guest);
    const QString reserve = text(document.plan().limits.reserve, document.units());
    const QString planned = text(duration(session.profile));
    if (gas.cut_short) {
        const std::optional<Severity> severity = shortage(document.plan(), gas.group);
        return {severity,
                with_word(severity,
                          tr("%1: %2 is first, and the air does not last. %2's air reaches %3 "
                             "after %4; the plan ends at %5.")
                              .arg(group, name, reserve, whole_minutes(gas.ends_at), planned))};
    }
    const QString reached =
        gas.reserve_reached
            ? tr("Staying down, %1's air would reach %2 after %3")
                  .arg(name, reserve, whole_minutes(*gas.reserve_reached))
            : tr("Staying down, %1's air would last longer than %2")
                  .arg(name, text(longest_profile));
    return {std::nullopt,
            tr("%1: the air lasts. %2 is first. %3; the plan ends at %4.")
                .arg(group, name, reached, planned)};
}

GasSentence instructor_answer(const SessionDocument& document, const GroupGas& gas) {
    const Session& session = document.session();
    const Group* group = find_group(session, gas.group);
    const QString name = group_name(session, gas.group);
    const StaffMember* instructor =
        group != nullptr ? find_staff(session, group->instructor) : nullptr;
    if (instructor == nullptr) return {std::nullopt, tr("%1: no instructor named yet.").arg(name)};
    const QString who = instructor->name.empty() ? tr("the instructor")
                                                 : QString::fromStdString(instructor->name);
    if (!gas.instructor_minimum_gas || !gas.instructor_at_ascent) {
        return {Severity::caution,
                with_word(Severity::caution,
                          tr("%1: no cylinder is known for %2, so the air for bringing a guest up "
                             "is not checked.")
                              .arg(name, who))};
    }
    const QString needed = text(*gas.instructor_minimum_gas, document.units(), Rounding::up);
    const QString left = text(*gas.instructor_at_ascent, document.units(), Rounding::down);
    const Finding* finding = open_finding(document.plan(), FindingCode::staff_gas_below_minimum,
                                          Subject(instructor->id));
    const std::optional<Severity> severity =
        finding != nullptr ? std::optional<Severity>(finding->severity) : std::nullopt;
    return {severity, with_word(severity, tr("%1: %2 needs %3 to bring a guest up, and is planned "
                                             "to have %4 at the ascent.")
                                              .arg(name, who, needed, left))};
}

std::vector<GasSentence> group_answers(const SessionDocument& document, const GroupId& group) {
    std::vector<GasSentence> answers;
    for (const GroupGas& gas : document.plan().groups) {
        if (group.empty() || gas.group == group) answers.push_back(group_answer(document, gas));
    }
    QStringList alone;
    for (const Guest& guest : document.session().guests) {
        if (guest.group.empty()) alone << QString::fromStdString(guest.name);
    }
    if (group.empty() && !alone.isEmpty()) {
        constexpr qsizetype named = 5;
        const QString more = alone.size() > named ? QStringLiteral(" …") : QString();
        answers.push_back({std::nullopt,
                           tr("In no group yet: %1. Put them into one on the Roster tab.")
                               .arg(alone.mid(0, named).join(QStringLiteral(", ")) + more)});
    }
    return answers;
}

std::vector<GasSentence> instructor_answers(const SessionDocument& document,
                                            const GroupId& group) {
    std::vector<GasSentence> answers;
    for (const GroupGas& gas : document.plan().groups) {
        if (!group.empty() && gas.group != group) continue;
        if (guests_in(document.session(), gas.group).empty()) continue;
        answers.push_back(instructor_answer(document, gas));
    }
    return answers;
}

}  // namespace leadline
