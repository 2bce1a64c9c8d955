// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_body_model.h"

#include <QLocale>

#include "ui/document/session_document.h"
#include "ui/words/guest_name.h"
#include "ui/words/lever_words.h"

namespace leadline {
namespace {

QString unknown() {
    return QString(QChar(0x2013));
}

bool is_body_number(int column) {
    return column != GuestBodyModel::name_column && column != GuestBodyModel::group_column &&
           column != GuestBodyModel::note_column;
}

bool is_warmth(int column) {
    return column == GuestBodyModel::feels_cold_column ||
           column == GuestBodyModel::too_cold_column || column == GuestBodyModel::suit_column;
}

QString body_heading(int column) {
    switch (column) {
        case GuestBodyModel::name_column:
            return GuestBodyModel::tr("Guest");
        case GuestBodyModel::group_column:
            return GuestBodyModel::tr("Group");
        case GuestBodyModel::feels_cold_column:
            return GuestBodyModel::tr("Feels cold\nafter");
        case GuestBodyModel::too_cold_column:
            return GuestBodyModel::tr("Too cold\nafter");
        case GuestBodyModel::try_column:
            return GuestBodyModel::tr("Lead to try\nfirst");
        case GuestBodyModel::carried_column:
            return GuestBodyModel::tr("Lead\ncarried");
        case GuestBodyModel::surface_column:
            return GuestBodyModel::tr("Surface,\nfull");
        case GuestBodyModel::end_column:
            return GuestBodyModel::tr("Surface,\nat the end");
        case GuestBodyModel::depth_column:
            return GuestBodyModel::tr("At depth,\nfull");
        case GuestBodyModel::suit_column:
            return GuestBodyModel::tr("Suit");
        case GuestBodyModel::note_column:
            return GuestBodyModel::tr("Take care");
        default:
            return {};
    }
}

QString heading_help(int column) {
    switch (column) {
        case GuestBodyModel::name_column:
            return GuestBodyModel::tr("Guests; who is likely cold first of a group in bold.");
        case GuestBodyModel::group_column:
            return GuestBodyModel::tr("The guest's group.");
        case GuestBodyModel::feels_cold_column:
            return GuestBodyModel::tr(
                "The guest begins to feel cold, in the middle case. Rounded "
                "down.");
        case GuestBodyModel::too_cold_column:
            return GuestBodyModel::tr(
                "The body is as cold as it should get, in the middle case; in "
                "brackets from the worst to the best case. The first figure in "
                "brackets is the safe one. Rounded down.");
        case GuestBodyModel::try_column:
            return GuestBodyModel::tr(
                "Start the check at the surface with this much; in brackets "
                "from the least to the most it is likely to be, in the pieces "
                "in stock. A guest who floats at the end cannot be held down: check near the end too.");
        case GuestBodyModel::carried_column:
            return GuestBodyModel::tr(
                "What the guest carries: Roster, Kit. The next columns are for "
                "this much, or for what to try first while it is open.");
        case GuestBodyModel::surface_column:
            return GuestBodyModel::tr("With the full cylinder, BCD empty, lungs half full.");
        case GuestBodyModel::end_column:
            return GuestBodyModel::tr(
                "With the cylinder at the reserve, BCD empty, lungs half full: "
                "should be neutral.");
        case GuestBodyModel::depth_column:
            return GuestBodyModel::tr(
                "At the deepest planned point, suit squeezed, cylinder full, "
                "BCD empty: what the BCD must hold.");
        case GuestBodyModel::suit_column:
            return GuestBodyModel::tr("Thickness of the foam, read from the suit's label.");
        case GuestBodyModel::note_column:
            return GuestBodyModel::tr("What needs attention, and what is missing.");
        default:
            return {};
    }
}

}  // namespace

GuestBodyModel::GuestBodyModel(SessionDocument& document, QObject* parent)
    : IdRowModel(parent), document_(document) {
    refresh();
}

void GuestBodyModel::refresh() {
    std::vector<std::string> ids;
    for (const Guest& guest : document_.session().guests) ids.push_back(guest.id.text);
    follow(ids);
}

int GuestBodyModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QString GuestBodyModel::warmth_shown(const GuestBody& body, int column) const {
    const GuestWarmth& warmth = *body.warmth;
    if (warmth.gap != WarmthGap::none) return unknown();
    switch (column) {
        case feels_cold_column:
            return feels_cold_text(warmth);
        case too_cold_column:
            return too_cold_text(warmth);
        default:
            return tr("%1 mm").arg(QLocale().toString(warmth.suit_millimeters, 'g', 3));
    }
}

QString GuestBodyModel::lead_shown(const GuestBody& body, int column) const {
    const GuestLead& lead = *body.lead;
    const UnitSystem units = document_.units();
    if (column == carried_column) {
        return body.guest->kit.lead ? text(*body.guest->kit.lead, units) : tr("open");
    }
    if (lead.gap != LeadGap::none) return unknown();
    switch (column) {
        case try_column:
            return lead_text(lead, units);
        case surface_column:
            return lift_text(lead.at_surface_start, units);
        case end_column:
            return lift_text(lead.at_surface_reserve, units);
        case depth_column:
            return lift_text(lead.at_depth_start, units);
        default:
            return {};
    }
}

QString GuestBodyModel::shown(const GuestBody& body, int column) const {
    switch (column) {
        case name_column:
            return guest_name(body.guest->name);
        case group_column:
            return body.guest->group.empty() ? unknown()
                                             : group_label(document_.session(), body.guest->group);
        case note_column: {
            QStringList notes;
            for (const BodyNote& note : body_notes(document_, body.guest->id)) notes << note.brief;
            return notes.isEmpty() ? unknown() : notes.join(QStringLiteral("; "));
        }
        default:
            return is_warmth(column) ? warmth_shown(body, column) : lead_shown(body, column);
    }
}

/// The whole of what a cell has to say: its tooltip, and what a screen reader reads.
QString GuestBodyModel::told(const GuestBody& body, int column) const {
    if (column == suit_column && body.warmth->gap == WarmthGap::none) {
        const QLocale locale;
        return tr("%1 mm: %2 clo at the surface, %3 clo at depth")
            .arg(locale.toString(body.warmth->suit_millimeters, 'g', 3),
                 locale.toString(body.warmth->suit_clo_at_surface, 'f', 2),
                 locale.toString(body.warmth->suit_clo_at_depth, 'f', 2));
    }
    if (column == note_column) {
        QStringList notes;
        for (const BodyNote& note : body_notes(document_, body.guest->id)) notes << note.full;
        return notes.isEmpty() ? tr("Nothing") : notes.join(u' ');
    }
    if (column == name_column && is_first_cold(document_, body.guest->id)) {
        return tr("%1, likely cold first").arg(shown(body, column));
    }
    return shown(body, column);
}

QVariant GuestBodyModel::sorted(const GuestBody& body, int column) const {
    // Who lacks something comes before all others: there is something to be done.
    constexpr double nothing = -100.0;
    constexpr double never = 1000.0;
    const auto minutes = [&](const std::optional<Minutes>& time) {
        return body.warmth->gap != WarmthGap::none ? nothing : time ? time->value() : never;
    };
    const auto mass = [&](Kilograms value) {
        return body.lead->gap != LeadGap::none ? nothing : value.value();
    };
    switch (column) {
        case feels_cold_column:
            return minutes(body.warmth->chilled);
        case too_cold_column:
            return minutes(body.warmth->middle);
        case suit_column:
            return body.warmth->gap != WarmthGap::none ? nothing : body.warmth->suit_millimeters;
        case try_column:
            return mass(body.lead->middle);
        case carried_column:
            return body.guest->kit.lead ? body.guest->kit.lead->value() : nothing;
        case surface_column:
            return mass(body.lead->at_surface_start);
        case end_column:
            return mass(body.lead->at_surface_reserve);
        case depth_column:
            return mass(body.lead->at_depth_start);
        case note_column: {
            const std::vector<BodyNote> notes = body_notes(document_, body.guest->id);
            if (notes.empty()) return 100;
            return notes.front().severity ? static_cast<int>(*notes.front().severity) : 50;
        }
        default:
            return shown(body, column);
    }
}

QVariant GuestBodyModel::part(const std::string& id, int column, Part part) const {
    const auto body = guest_body(document_, GuestId(id));
    if (!body) return {};
    switch (part) {
        case Part::shown: return shown(*body, column);
        case Part::told: return told(*body, column);
        case Part::sorted: return sorted(*body, column);
        case Part::mark: {
            if (column != note_column) return {};
            const std::vector<BodyNote> notes = body_notes(document_, body->guest->id);
            if (notes.empty() || !notes.front().severity) return {};
            return static_cast<int>(*notes.front().severity);
        }
        case Part::strong:
            return column == try_column || ((column == name_column || column == too_cold_column) &&
                                            is_first_cold(document_, body->guest->id));
    }
    return {};
}

IdRowModel::Heading GuestBodyModel::heading(int column) const {
    return {body_heading(column), heading_help(column), is_body_number(column)};
}

}  // namespace leadline
