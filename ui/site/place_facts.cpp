// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/place_facts.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/body/ears.h"
#include "core/body/lungs.h"
#include "ui/document/session_document.h"
#include "ui/site/ear_lung_words.h"
#include "ui/words/rule_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class PlaceFactTexts {
    Q_DECLARE_TR_FUNCTIONS(PlaceNumbers)
};

QString number(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }

QString in_mmhg(Pascals pressure) {
    return number(pressure / millimeters_of_mercury(1.0), 0);
}

QString density_text(KilogramsPerCubicMeter density, UnitSystem units) {
    if (units == UnitSystem::imperial) {
        const units::density::pounds_per_cubic_foot_t pounds = density;
        return number(pounds.value(), 1) + PlaceFactTexts::tr(" lb/cu ft");
    }
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(density.value(), 'f', 0) + PlaceFactTexts::tr(" kg/m³");
}

QString limit_text(const std::optional<Limit>& limit, UnitSystem units) {
    if (!limit) return {};
    return PlaceFactTexts::tr(" At most %1 by %2.")
        .arg(text(MetersPerMinute(limit->value), units), rule_set_title(limit->rule_set));
}

class Facts {
public:
    explicit Facts(const SessionDocument& document)
        : document_(document), place_(document.plan().environment), units_(document.units()) {}

    std::vector<PlaceFact> run() {
        pressures();
        ears();
        breath();
        speeds();
        return std::move(facts_);
    }

private:
    void add(const char* id, const QString& name, const QString& value, const QString& reason) {
        facts_.push_back({QLatin1String(id), name, value, reason});
    }

    void pressures() {
        const Session& session = document_.session();
        add("surface_pressure", PlaceFactTexts::tr("Pressure at the surface"),
            text(place_.surface_pressure, units_),
            place_.from_barometer
                ? PlaceFactTexts::tr("The barometer reading at the site.")
                : PlaceFactTexts::tr(
                      "Standard atmosphere at %1 of altitude (ICAO Doc 7488, 1993); weather moves "
                      "it by up to 5 %. A barometer reading at the site takes its place.")
                      .arg(text(Meters(session.site.altitude.meters()), units_)));
        add("bottom_pressure",
            PlaceFactTexts::tr("Pressure at %1").arg(text(place_.deepest, units_)),
            text(place_.bottom_pressure, units_),
            PlaceFactTexts::tr(
                "Surface pressure + density × gravity × depth (hydrostatics); gravity %1 m/s² by "
                "the latitude (WGS 84).")
                .arg(number(place_.gravity.value(), 3)));
        add("density", PlaceFactTexts::tr("Density of the water"),
            density_text(place_.density, units_),
            PlaceFactTexts::tr(
                "From salinity %1 and %2 (equation of state of sea water 1980: Fofonoff and "
                "Millard, UNESCO 44, 1983). The coldest water is the densest: the safe side.")
                .arg(number(session.site.salinity.value, 1),
                     text(session.conditions.water_temperature, units_)));
    }

    void ears() {
        const ClearingLadder& ladder = place_.ladder;
        add("clearing", PlaceFactTexts::tr("Clear the ears"),
            PlaceFactTexts::tr("every %1, every %2")
                .arg(length_below(ladder.step, units_), interval_text(ladder.interval)),
            PlaceFactTexts::tr(
                "The step of the rules, and the time it takes at the fastest planned descent, %1. "
                "Slower is always better.")
                .arg(text(place_.fastest_descent, units_)));
        add("largest_step", PlaceFactTexts::tr("Largest step to clear in"),
            length_below(document_.plan().ears_and_lungs.largest_step, units_),
            PlaceFactTexts::tr(
                "The water of this step weighs half of the %1 mmHg at which the tube locks, taken "
                "where a metre weighs most. Which share to use is common practice.")
                .arg(in_mmhg(ladder.locking)));
        add("ear_pressure", PlaceFactTexts::tr("On the eardrum before clearing"),
            PlaceFactTexts::tr("at most %1 mmHg of %2")
                .arg(in_mmhg(ladder.largest_difference), in_mmhg(ladder.locking)),
            PlaceFactTexts::tr(
                "Density × gravity × step. From %1 mmHg on muscles can no longer open the tube to "
                "the ear (80 to 90 in the literature; the lower end is the safe side).")
                .arg(in_mmhg(ladder.locking)));
        add("ears_lock", PlaceFactTexts::tr("Never cleared, ears lock at"),
            length_below(ladder.locks_at.meters(), units_),
            PlaceFactTexts::tr(
                "The depth whose water weighs %1 mmHg. Then: go up until it opens, never push.")
                .arg(in_mmhg(ladder.locking)));
    }

    void breath() {
        add("breath_growth", PlaceFactTexts::tr("A breath held from there grows"),
            growth_text(place_.breath_expansion_from_deepest),
            PlaceFactTexts::tr(
                "Pressure at %1 / pressure at the surface (Boyle's law). The lung cannot follow: "
                "never hold the breath.")
                .arg(text(place_.deepest, units_)));
        add("breath_danger", PlaceFactTexts::tr("Breath held: danger after"),
            PlaceFactTexts::tr("%1 of way up")
                .arg(length_below(place_.breath_danger_ascent, units_)),
            PlaceFactTexts::tr(
                "With full lungs: the height of water that weighs %1 mmHg, at which a lung can "
                "tear "
                "(Schaefer and others, 1958; Malhotra and Wright, 1961; from memory; the lower end "
                "of 70 to 80).")
                .arg(in_mmhg(lung_tearing_lowest)));
    }

    void speeds() {
        add("fastest_descent", PlaceFactTexts::tr("Fastest way down"),
            text(place_.fastest_descent, units_),
            PlaceFactTexts::tr("Depth / time of the steepest leg down."));
        add("fastest_ascent", PlaceFactTexts::tr("Fastest way up"),
            text(place_.fastest_ascent, units_),
            PlaceFactTexts::tr("Depth / time of the steepest leg up.") +
                limit_text(document_.plan().limits.max_ascent_rate, units_));
    }

    const SessionDocument& document_;
    const Environment& place_;
    UnitSystem units_;
    std::vector<PlaceFact> facts_;
};

}  // namespace

std::vector<PlaceFact> place_facts(const SessionDocument& document) {
    return Facts(document).run();
}

}  // namespace leadline
