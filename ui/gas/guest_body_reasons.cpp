// SPDX-License-Identifier: GPL-3.0-or-later
// The sources behind the figures of warmth and lead.
#include <QCoreApplication>
#include <QLocale>

#include "core/body/warmth.h"
#include "core/planning/lead.h"
#include "ui/document/session_document.h"
#include "ui/gas/guest_body_words.h"
#include "ui/gas/short_names.h"
#include "ui/words/guest_name.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class BodyReasonTexts {
    Q_DECLARE_TR_FUNCTIONS(GuestBody)
};

QString decimal(double value, int places) {
    return QLocale().toString(value, 'f', places);
}

/// A difference of temperature: "0.4 °C", "0.7 °F".
QString kelvins_text(double kelvins, UnitSystem units) {
    const bool imperial = units == UnitSystem::imperial;
    return BodyReasonTexts::tr("%1 %2").arg(
        decimal(imperial ? kelvins * 1.8 : kelvins, 1),
        imperial ? BodyReasonTexts::tr("°F") : BodyReasonTexts::tr("°C"));
}

QString warmth_of(const GuestBody& body, const SessionDocument& document) {
    const GuestWarmth& warmth = *body.warmth;
    const QString depth = text(deepest(document.session().profile), document.units());
    const QString core = warmth.core_fall_kelvin > 0.0
                             ? BodyReasonTexts::tr("the core cools by %1 over the planned dive")
                                   .arg(kelvins_text(warmth.core_fall_kelvin, document.units()))
                             : BodyReasonTexts::tr("the core does not cool over the planned dive");
    return BodyReasonTexts::tr(
               "Suit %1 mm: %2 clo at the surface, squeezed to %3 clo at %4. Ten minutes after "
               "reaching depth the body loses %5 W; %6.")
        .arg(decimal(warmth.suit_millimeters, 1), decimal(warmth.suit_clo_at_surface, 2),
             decimal(warmth.suit_clo_at_depth, 2), depth, decimal(warmth.heat_loss_watts, 0), core);
}

QString lead_of(const GuestBody& body, const SessionDocument& document) {
    const GuestLead& lead = *body.lead;
    const UnitSystem units = document.units();
    const QString with =
        body.guest->kit.lead
            ? BodyReasonTexts::tr("with the %1 carried").arg(text(lead.carried, units))
            : BodyReasonTexts::tr("with the %1 to try first, as none is entered")
                  .arg(text(lead.carried, units));
    const QString bcd =
        body.guest->kit.bcd.empty()
            ? BodyReasonTexts::tr("no BCD is entered")
            : BodyReasonTexts::tr("the BCD is taken to lift %1").arg(text(lead.bcd_lift, units));
    return BodyReasonTexts::tr("Lead %1; %2, the guest %3 at depth with %4 left; %5.")
        .arg(lead_text(lead, units), with, lift_text(lead.at_depth_reserve, units),
             text(document.plan().limits.reserve, units), bcd);
}

void add_guest(const SessionDocument& document, const GuestId& guest,
               std::vector<GasSentence>& reasons) {
    const auto body = guest_body(document, guest);
    if (!body) return;
    QStringList said;
    if (body->warmth->gap == WarmthGap::none) said << warmth_of(*body, document);
    if (body->lead->gap == LeadGap::none) said << lead_of(*body, document);
    for (const BodyNote& note : body_notes(document, guest)) {
        said << (note.full.endsWith(u'.') ? note.full : note.full + u'.');
    }
    if (said.isEmpty()) return;
    reasons.push_back(
        {std::nullopt, with_colon(short_name(guest_name(body->guest->name)), said.join(u' '))});
}

/// "Cylinders in this water, empty and full: Steel 12 L sinks 0.9 kg and 3.9 kg; …"
QString cylinders_in_this_water(const SessionDocument& document) {
    const UnitSystem units = document.units();
    const auto lift = [units](Kilograms kilograms) -> QString {
        return kilograms.value() < 0.0
                   ? BodyReasonTexts::tr("sinks %1").arg(text(-kilograms, units))
                   : BodyReasonTexts::tr("lifts %1").arg(text(kilograms, units));
    };
    QStringList kinds;
    for (const CylinderLift& cylinder : document.plan().cylinders) {
        const CylinderType* type = find_cylinder_type(cylinder.type);
        if (type == nullptr) continue;
        kinds << BodyReasonTexts::tr("%1: empty %2, full %3")
                     .arg(text(*type, units), lift(cylinder.empty), lift(cylinder.full));
    }
    return BodyReasonTexts::tr(
               "Cylinders in this water, by usual models (from memory; the maker's "
               "figures prevail). %1.")
        .arg(kinds.join(QStringLiteral("; ")));
}

}  // namespace

std::vector<GasSentence> body_reasons(const SessionDocument& document, const GuestId& guest) {
    const UnitSystem units = document.units();
    std::vector<GasSentence> reasons;
    const auto say = [&](const QString& said) { reasons.push_back({std::nullopt, said}); };
    add_guest(document, guest, reasons);
    say(BodyReasonTexts::tr(
            "Too cold: the core is at %1 (ISO 9886:2004, from memory) or the body has lost 3 kcal "
            "for each kg of its mass (Webb and others, Proposed thermal limits for divers, 1976, "
            "from "
            "memory), were the group to stay at the depth from which the final ascent starts. In "
            "brackets from a leaner guest who keeps stiller in a suit of poorer fit to a fatter "
            "one who "
            "moves in one of good fit. Rely on the first, the safe side. Rounded down.")
            .arg(text(least_core, units)));
    say(BodyReasonTexts::tr(
        "Feels cold: a net loss of 40 Wh/m² of a standard body (ISO 11079:2007, from memory)."));
    say(BodyReasonTexts::tr(
        "Warmth is a heat balance of core and shell, in the form of Gagge 1971 (from memory): body "
        "surface by DuBois and DuBois 1916, fat by Deurenberg and others 1991, oxygen uptake by "
        "Knafelc 1989 and Arieli and others 1997. The suit's gas cells are squeezed by Boyle's law "
        "and conduct by Maxwell's relation; 1 clo is 0.155 m²K/W. Shivering, which makes heat, is "
        "left out: the safe side. Nobody has measured novices or children on such dives."));
    say(BodyReasonTexts::tr(
            "Lead by Archimedes, for being neutral at the surface at the end of the dive: cylinder "
            "at "
            "the reserve, lungs half full, BCD empty, and nothing more for comfort. Density of the "
            "body by "
            "Siri 1961, lungs by Quanjer and others 1993 (from memory; children: no source), foam "
            "of "
            "150 to 250 kg/m³, lead 11 340 kg/m³. Regulator, BCD, fins and mask together pull down "
            "%1: "
            "common practice, no source. Spreads are added in squares (JCGM 100:2008).")
            .arg(text(Kilograms(1.0), units)));
    say(BodyReasonTexts::tr(
            "Try first is the middle in the pieces that are in stock, or in whole kilograms. Too "
            "heavy "
            "is the greater danger, but a guest too light floats up when the cylinder is nearly "
            "empty: at the surface with a full one, a guest should sink by what the air weighs. "
            "What "
            "the BCD lifts is taken from its size (S %1, M %2, L %3), the lower end of jackets as "
            "sold, from memory; the maker's figure prevails.")
            .arg(text(*bcd_lift_of("S"), units), text(*bcd_lift_of("M"), units),
                 text(*bcd_lift_of("L"), units)));
    say(cylinders_in_this_water(document));
    return reasons;
}

}  // namespace leadline
