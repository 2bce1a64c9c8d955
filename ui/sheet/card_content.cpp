// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_content.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "core/physics/air.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr double meters_per_foot = 0.3048;
constexpr double bar_step = 10.0;
constexpr double psi_step = 50.0;
// Keeps 50.0000001 bar from being shown as 60 when it must round up.
constexpr double slack = 1e-6;

QString tr(const char* source, const char* note = nullptr) {
    return QCoreApplication::translate("Card", source, note);
}

/// A name as people typed it, on one line.
QString line_of(const std::string& typed) { return QString::fromStdString(typed).simplified(); }

QString number_text(double value, int decimals) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'f', decimals);
}

/// At most one decimal, rounded down; a whole number without it.
QString rounded_down(double value) {
    const double tenths = std::floor(value * 10.0 + slack);
    return number_text(tenths / 10.0, std::fmod(tenths, 10.0) == 0.0 ? 0 : 1);
}

double rounded_up(double value, double step) { return std::ceil(value / step - slack) * step; }

struct Measure {
    QString number;
    QString unit;
    [[nodiscard]] QString joined() const { return number + QChar(0x00A0) + unit; }
};

Measure depth_measure(Meters depth, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        const double feet = std::floor(depth.value() / meters_per_foot + slack);
        return {number_text(feet, 0), tr("ft")};
    }
    return {rounded_down(depth.value()), tr("m")};
}

/// How often to clear the ears: rounded down, whole feet where there is at least one.
Measure step_measure(Meters step, UnitSystem units) {
    const double feet = step.value() / meters_per_foot;
    if (units == UnitSystem::metric || feet >= 1.0) return depth_measure(step, units);
    return {rounded_down(feet), tr("ft")};
}

/// The pressure as a gauge can be read, in the units of the card.
double shown_pressure(Bars pressure, UnitSystem units) {
    if (units == UnitSystem::imperial) return rounded_up(Psi(pressure).value(), psi_step);
    return rounded_up(pressure.value(), bar_step);
}

CardFigure pressure_figure(const QString& label, const QString& number, const QString& action,
                           UnitSystem units) {
    return {label, number, units == UnitSystem::imperial ? tr("psi") : tr("bar"), action, false};
}

void add_pressures(const GuestGas* gas, UnitSystem units, std::vector<CardFigure>& figures) {
    const bool known = gas != nullptr && gas->has_cylinder;
    const double low = known ? shown_pressure(gas->signal_pressure, units) : 0.0;
    if (known) {
        const double turn = shown_pressure(gas->turn_pressure, units);
        if (turn > low && gas->turn_pressure < gas->start_pressure) {
            figures.push_back(pressure_figure(tr("Half your air"), number_text(turn, 0),
                                              tr("show your instructor"), units));
        }
    }
    // Without a cylinder the card still asks for the figure: it is filled in by hand.
    figures.push_back(pressure_figure(tr("Low on air"), known ? number_text(low, 0) : QString(),
                                      tr("signal at once"), units));
    figures.back().strong = true;
}

Minutes planned_minutes(const Session& session, const Plan& plan, const Guest& guest) {
    const GroupGas* group = find_gas(plan, guest.group);
    return group != nullptr ? group->ends_at : duration(session.profile);
}

std::vector<CardFigure> figures_of(const Session& session, const Plan& plan, const Guest& guest,
                                   UnitSystem units) {
    std::vector<CardFigure> figures;
    add_pressures(find_gas(plan, guest.id), units, figures);
    const Measure depth = depth_measure(plan.environment.deepest.meters(), units);
    figures.push_back({tr("Deepest"), depth.number, depth.unit, tr("no deeper"), false});
    const double minutes = std::floor(planned_minutes(session, plan, guest).value() + slack);
    figures.push_back({tr("Time"), number_text(minutes, 0), tr("min"), tr("in the water"), false});
    return figures;
}

/// "Steel 12 L"; in imperial units by the air it holds when full, as cylinders are named there.
QString cylinder_name(const CylinderType& type, UnitSystem units) {
    QString size;
    if (units == UnitSystem::imperial) {
        const Cylinder full{type.id, type.working_pressure, Celsius(15.0)};
        const Moles content = cylinder_content(full, Bars(1.01325)).value_or(Moles(0.0));
        size = text(free_air_volume(content), units);
    } else {
        size = rounded_down(type.water_capacity.value()) + QChar(0x00A0) + tr("L");
    }
    return tr("%1 %2", "metal and size of a cylinder").arg(label(type.metal), size);
}

std::vector<CardFact> kit_of(const Kit& kit) {
    return {
        {tr("Suit"), line_of(kit.suit)},
        {tr("BCD"), line_of(kit.bcd)},
        {tr("Fins"), line_of(kit.fins)},
        {tr("Mask"), line_of(kit.mask)},
        {tr("Regulator"), line_of(kit.regulator)},
    };
}

void add_weights(const Kit& kit, UnitSystem units, CardContent& content) {
    const CylinderType* type = kit.cylinder ? find_cylinder_type(kit.cylinder->type) : nullptr;
    content.lead = {tr("Lead"), kit.lead ? text(*kit.lead, units) : QString()};
    content.cylinder = {tr("Cylinder"),
                        type != nullptr ? cylinder_name(*type, units) : QString()};
}

std::vector<CardAdvice> advice_of(const Plan& plan, UnitSystem units) {
    const QString step = step_measure(plan.environment.ladder.step, units).joined();
    const Measure back = units == UnitSystem::imperial ? Measure{number_text(3.0, 0), tr("ft")}
                                                       : Measure{number_text(1.0, 0), tr("m")};
    return {
        {tr("Ears."),
         tr("Clear them every %1, before they hurt. Pain, or they won’t clear? Stop, signal, go "
            "up %2, try again. Never force.")
             .arg(step, back.joined())},
        {tr("Stay close:"),
         tr("within arm’s reach. Lost? Look around for up to a minute, then go up slowly.")},
        {tr("Water in your mask?"),
         tr("Hold its top, blow through your nose. In the mouthpiece? Blow out hard, then breathe "
            "gently.")},
        {tr("Out of air?"), tr("Signal and breathe from your instructor’s spare.")},
        {tr("Cold, scared, had enough?"), tr("Signal. It is no shame to stop.")},
        {tr("Back at the top:"), tr("fill your BCD, keep mask on and mouthpiece in.")},
    };
}

CardSignal hand_signal(const char* picture, const QString& caption) {
    return {QStringLiteral(":/leadline/signals/") + QLatin1String(picture) +
                QStringLiteral(".svg"),
            caption};
}

std::vector<CardSignal> signals_of() {
    return {
        hand_signal("ok", tr("OK")),
        hand_signal("something-wrong", tr("Problem")),
        hand_signal("ears", tr("Ears")),
        hand_signal("stop", tr("Stop")),
        hand_signal("up", tr("Up, not “good”")),
        hand_signal("down", tr("Down")),
        hand_signal("low-on-air", tr("Low on air")),
        hand_signal("out-of-air", tr("Out of air")),
    };
}

void add_meeting(const Session& session, const Guest& guest, CardContent& content) {
    const Group* group = find_group(session, guest.group);
    const StaffMember* instructor =
        group != nullptr ? find_staff(session, group->instructor) : nullptr;
    if (group != nullptr) content.group = subject_name(group->id, session).simplified();
    content.instructor = {tr("With"), instructor != nullptr ? line_of(instructor->name) : QString()};
    content.when = {tr("Meet"), tr("%1, %2", "date, meeting time")
                                    .arg(text(session.date), text(session.meeting_time))};
    content.where = {tr("At"), line_of(session.site.meeting_place)};
    if (content.where.value.isEmpty()) content.where.value = line_of(session.site.name);
}

void add_breath(const Plan& plan, UnitSystem units, CardContent& content) {
    const Measure depth = depth_measure(plan.environment.deepest.meters(), units);
    const double growth = rounded_up(plan.environment.breath_expansion_from_deepest, 0.1);
    content.breath_rule = tr("Never hold your breath");
    content.breath_reason =
        tr("Breathe all the time. Air held in at %1 swells this much on the way up: it can tear "
           "a lung.")
            .arg(depth.joined());
    content.breath_growth = QChar(0x00D7) + number_text(growth, 1);
}

void add_afterwards(const Session& session, const Plan& plan, CardContent& content) {
    const double hours = std::ceil(plan.limits.no_fly.value() - slack);
    content.after = {tr("Afterwards."),
                     tr("No flying and no mountain road for %1 h.").arg(number_text(hours, 0))};
    content.watch = {tr("For 48 h watch for"),
                     tr("tingling, numbness, odd tiredness, joint pain, dizziness, trouble "
                        "breathing.")};
    content.call = tr("If so, call");
    content.emergency_line = line_of(session.site.emergency_line);
    content.standing = tr("A planning aid. Your instructor decides.");
}

}  // namespace

CardContent card_content(const Session& session, const Plan& plan, const Guest& guest,
                         UnitSystem units) {
    CardContent content;
    content.guest = guest.id;
    content.name = line_of(guest.name);
    add_meeting(session, guest, content);
    content.kit = kit_of(guest.kit);
    add_weights(guest.kit, units, content);
    content.figures = figures_of(session, plan, guest, units);
    add_breath(plan, units, content);
    content.advice = advice_of(plan, units);
    content.hand_signals = signals_of();
    add_afterwards(session, plan, content);
    return content;
}

QStringList all_words(const CardContent& content) {
    QStringList words{content.name, content.group};
    const auto add = [&](const CardFact& fact) { words << fact.label << fact.value; };
    for (const CardFact* fact : {&content.instructor, &content.when, &content.where}) add(*fact);
    for (const CardFact& item : content.kit) add(item);
    add(content.lead);
    add(content.cylinder);
    for (const CardFigure& figure : content.figures) {
        words << figure.label << figure.number << figure.unit << figure.action;
    }
    words << content.breath_rule << content.breath_reason << content.breath_growth;
    for (const CardAdvice& advice : content.advice) words << advice.head << advice.text;
    for (const CardSignal& hand : content.hand_signals) words << hand.caption;
    words << content.after.head << content.after.text << content.watch.head << content.watch.text
          << content.call << content.emergency_line << content.standing;
    words.removeAll(QString());
    return words;
}

}  // namespace leadline
