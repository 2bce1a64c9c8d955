// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_content.h"

#include <cmath>

#include "core/physics/air.h"
#include "ui/guest_words/card_words.h"
#include "ui/guest_words/guest_dates.h"
#include "ui/guest_words/guest_measures.h"
#include "ui/guest_words/guest_punctuation.h"
#include "ui/guest_words/signal_words.h"
#include "ui/guest_words/typed_text.h"
#include "ui/words/gauge_steps.h"

namespace leadline {
namespace {

constexpr double meters_per_foot = 0.3048;
// Keeps 50.0000001 bar from being shown as 60 when it must round up.
constexpr double slack = 1e-6;
// How far to go up when an ear hurts: common practice, no source.
constexpr double back_up_meters = 1.0;
constexpr double back_up_feet = 3.0;

/// The signals on the card, beside "low on air", which stands at its figure.
constexpr HandSignal card_signals[] = {
    HandSignal::ok,   HandSignal::something_wrong, HandSignal::ears,      HandSignal::stop,
    HandSignal::up,   HandSignal::down,            HandSignal::out_of_air, HandSignal::slow_down,
    HandSignal::look, HandSignal::cold,
};

struct Measure {
    QString number;
    QString unit;
    [[nodiscard]] QString joined() const { return number_with_unit(number, unit); }
};

double rounded_up(double value, double step) { return std::ceil(value / step - slack) * step; }

/// Numbers and measures as one guest reads them.
class Reader {
public:
    Reader(const GuestTongue& tongue, UnitSystem units) : tongue_(tongue), units_(units) {}

    [[nodiscard]] QString say(CardWord word) const { return card_word(word, tongue_); }
    [[nodiscard]] const GuestTongue& tongue() const { return tongue_; }

    /// What people typed, on one line, its numbers whole and in their own order. In a language that
    /// runs from right to left all of it keeps its own order.
    [[nodiscard]] QString typed(const std::string& text) const {
        return apart(with_whole_numbers(typed_line(text)));
    }
    [[nodiscard]] QString apart(const QString& text) const {
        return tongue_.language().right_to_left && !text.isEmpty() ? isolated(text) : text;
    }
    [[nodiscard]] QString number(double value, int decimals = 0) const {
        return tongue_.locale().toString(value, 'f', decimals);
    }
    /// At most one decimal, rounded down; a whole number without it.
    [[nodiscard]] QString rounded_down(double value) const {
        const double tenths = std::floor(value * 10.0 + slack);
        return number(tenths / 10.0, std::fmod(tenths, 10.0) == 0.0 ? 0 : 1);
    }
    [[nodiscard]] Measure depth(Meters depth) const {
        if (units_ == UnitSystem::metric) {
            return {rounded_down(depth.value()), say(CardWord::meters)};
        }
        return {number(std::floor(depth.value() / meters_per_foot + slack)), say(CardWord::feet)};
    }
    /// How often to clear the ears.
    [[nodiscard]] Measure step(Meters step) const {
        const ShownNumber shown = clearing_step_number(step, units_);
        return {number(shown.value, shown.decimals),
                say(units_ == UnitSystem::metric ? CardWord::meters : CardWord::feet)};
    }
    [[nodiscard]] Measure back_up() const {
        if (units_ == UnitSystem::metric) return {number(back_up_meters), say(CardWord::meters)};
        return {number(back_up_feet), say(CardWord::feet)};
    }
    /// As a gauge can be read, to the safe side.
    [[nodiscard]] Measure pressure(Bars pressure) const {
        if (units_ == UnitSystem::metric) {
            return {number(signal_reading(pressure, units_)), say(CardWord::bar)};
        }
        return {number(signal_reading(pressure, units_)), say(CardWord::psi)};
    }
    [[nodiscard]] Measure lead(Kilograms mass) const {
        if (units_ == UnitSystem::imperial) {
            return {number(Pounds(mass).value()), say(CardWord::pounds)};
        }
        const double part = std::abs(mass.value() - std::round(mass.value()));
        return {number(mass.value(), part < 0.05 ? 0 : 1), say(CardWord::kilograms)};
    }
    /// A cylinder's size; in imperial units by the air it holds when full, as it is named there.
    [[nodiscard]] Measure size(const CylinderType& type) const {
        if (units_ == UnitSystem::metric) {
            return {rounded_down(type.water_capacity.value()), say(CardWord::liters)};
        }
        constexpr double liters_per_cubic_foot = 28.316846592;
        const Cylinder full{type.id, type.working_pressure, Celsius(15.0)};
        const Moles content = cylinder_content(full, Bars(1.01325)).value_or(Moles(0.0));
        const double liters = free_air_volume(content).value();
        return {number(liters / liters_per_cubic_foot), say(CardWord::cubic_feet)};
    }

private:
    const GuestTongue& tongue_;
    UnitSystem units_;
};

UnitSystem units_of(const Guest& guest, UnitSystem house) {
    switch (guest.units) {
        case UnitHabit::house: return house;
        case UnitHabit::metric: return UnitSystem::metric;
        case UnitHabit::imperial: return UnitSystem::imperial;
    }
    return house;
}

void add_figures(const Session& session, const Plan& plan, const Guest& guest,
                 const Reader& reader, const Reader* gauge, CardContent& content) {
    const GuestGas* gas = find_gas(plan, guest.id);
    const bool known = gas != nullptr && gas->has_cylinder;
    // Without a cylinder the card still asks for the figure: it is filled in by hand, as read.
    const Measure low = (known ? reader : (gauge != nullptr ? *gauge : reader))
                            .pressure(known ? gas->signal_pressure : Bars(0.0));
    content.low_on_air = {reader.say(CardWord::low_on_air),
                          known ? low.number : QString(),
                          low.unit,
                          known && gauge != nullptr ? gauge->pressure(gas->signal_pressure).joined()
                                                    : QString(),
                          reader.say(CardWord::signal_at_once),
                          signal_picture(HandSignal::low_on_air)};
    const Measure depth = reader.depth(plan.environment.deepest.meters());
    content.deepest = {reader.say(CardWord::deepest), depth.number, depth.unit, {}, {}, {}};
    const GroupGas* group = find_gas(plan, guest.group);
    const Minutes planned = group != nullptr ? group->ends_at : duration(session.profile);
    content.time = {reader.say(CardWord::time),
                    reader.number(std::floor(planned.value() + slack)),
                    reader.say(CardWord::minutes), {}, {}, {}};
}

std::vector<CardKit> kit_of(const Kit& kit, const Reader& reader) {
    const CylinderType* type = kit.cylinder ? find_cylinder_type(kit.cylinder->type) : nullptr;
    const auto piece = [&](KitPart part, const QString& value) {
        return CardKit{kit_picture(part), kit_name(part, reader.tongue()), value};
    };
    return {
        piece(KitPart::suit, reader.typed(kit.suit)),
        piece(KitPart::bcd, reader.typed(kit.bcd)),
        piece(KitPart::fins, reader.typed(kit.fins)),
        piece(KitPart::mask, reader.typed(kit.mask)),
        piece(KitPart::mouthpiece, reader.typed(kit.regulator)),
        piece(KitPart::weights, kit.lead ? reader.apart(reader.lead(*kit.lead).joined()) : QString()),
        piece(KitPart::cylinder, type != nullptr ? reader.apart(reader.size(*type).joined()) : QString()),
    };
}

std::vector<CardSignal> signals_of(const Reader& reader) {
    std::vector<CardSignal> all;
    for (const HandSignal one : card_signals) {
        all.push_back({signal_picture(one), signal_caption(one, reader.tongue()),
                       one == HandSignal::up ? reader.say(CardWord::not_good) : QString()});
    }
    return all;
}

void add_meeting(const Session& session, const Guest& guest, const Reader& reader,
                 CardContent& content) {
    const Group* group = find_group(session, guest.group);
    const StaffMember* instructor =
        group != nullptr ? find_staff(session, group->instructor) : nullptr;
    if (group != nullptr) content.group = reader.typed(group->name);
    content.instructor = {reader.say(CardWord::with),
                          instructor != nullptr ? reader.typed(instructor->name) : QString()};
    content.when = {reader.say(CardWord::meet),
                    guest_day(session.date, reader.tongue()) + QStringLiteral(" · ") +
                        guest_time(session.meeting_time, reader.tongue())};
    content.where = reader.typed(session.site.meeting_place);
    if (content.where.isEmpty()) content.where = reader.typed(session.site.name);
}

}  // namespace

CardContent card_content(const Session& session, const Plan& plan, const Guest& guest,
                         UnitSystem house_units, std::string_view language) {
    const GuestTongue& tongue = GuestTongue::of(language);
    const UnitSystem units = units_of(guest, house_units);
    const Reader reader(tongue, units);
    const Reader house(tongue, house_units);

    CardContent content;
    content.guest = guest.id;
    content.language = tongue.language().tag;
    content.face = {tongue.language().font_family, tongue.language().right_to_left};
    content.name = reader.typed(guest.name);
    add_meeting(session, guest, reader, content);
    content.kit = kit_of(guest.kit, reader);
    add_figures(session, plan, guest, reader, units == house_units ? nullptr : &house, content);
    content.breath_rule = reader.say(CardWord::never_hold_breath);
    content.breath_reason = reader.say(CardWord::breath_reason);
    const double growth = rounded_up(plan.environment.breath_expansion_from_deepest, 0.1);
    content.breath_growth = reader.apart(QChar(0x00D7) + reader.number(growth, 1));
    content.advice = {
        reader.say(CardWord::ears)
            .arg(isolated(reader.step(plan.environment.ladder.step).joined()),
                 isolated(reader.back_up().joined())),
        reader.say(CardWord::stay_close),
        reader.say(CardWord::no_shame),
        reader.say(CardWord::at_the_top),
    };
    content.hand_signals = signals_of(reader);
    const double hours = std::ceil(plan.limits.no_fly.value() - slack);
    content.no_flying = reader.say(CardWord::no_flying).arg(isolated(reader.number(hours)));
    content.watch = reader.say(CardWord::watch_for);
    content.call = reader.say(CardWord::call);
    content.emergency_line = reader.typed(session.site.emergency_line);
    content.understood = reader.say(CardWord::understood);
    content.standing = reader.say(CardWord::standing);
    return content;
}

CardContent card_content(const Session& session, const Plan& plan, const Guest& guest,
                         UnitSystem house_units) {
    return card_content(session, plan, guest, house_units, guest.language);
}

QStringList all_words(const CardContent& content) {
    QStringList words{content.name,       content.group,           content.when.label,
                      content.when.value, content.instructor.label, content.instructor.value,
                      content.where};
    for (const CardKit& item : content.kit) words << item.value;
    for (const CardFigure* figure : {&content.low_on_air, &content.deepest, &content.time}) {
        words << figure->label << figure->number << figure->unit << figure->as_read
              << figure->action;
    }
    words << content.breath_rule << content.breath_reason << content.breath_growth;
    for (const QString& advice : content.advice) words << advice;
    for (const CardSignal& hand : content.hand_signals) words << hand.caption << hand.warning;
    words << content.no_flying << content.watch << content.call << content.emergency_line
          << content.understood << content.standing;
    words.removeAll(QString());
    return words;
}

}  // namespace leadline
