// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/planning/plan.h"
#include "core/planning/session.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// One guest as the instructor has to know them on the beach. Figures without their unit, which
/// stands above the column; empty: a line to write on.
struct BeachGuest {
    QString name;
    QString who;        ///< age, language, what the health check came to (never an answer), signals
    QStringList flags;  ///< stops and cautions that stand: "Care: …"
    int stops = 0;      ///< so many of the flags, the first, are stops
    QStringList moved_flags;  ///< each of the flags as it stands away from the guest's row:
                              ///< "Care, Ana: …"
    QString kit;        ///< "Suit 5 mm M · BCD M · …"
    QString order;      ///< place in the order of low on air: "1"
    QString low;        ///< pressure at which to signal, rounded up as on the card
    QString turn;       ///< rounded up
    QString least;      ///< minimum gas, rounded up
    QString
        minutes;    ///< until low on air, forecast (middle) or, without one, planned; rounded down
    QString early;  ///< sooner in 10 of 100 dives; empty: `minutes` is planned
    QString rmv;
    friend bool operator==(const BeachGuest&, const BeachGuest&) = default;
};

struct BeachCorner {
    double minutes = 0.0;  ///< since the start, for the drawing
    double meters = 0.0;
    QString clock;  ///< "10:05"
    QString depth;  ///< "8.0 m", rounded down as on the card
    friend bool operator==(const BeachCorner&, const BeachCorner&) = default;
};

struct BeachSignal {
    QString picture;
    QString caption;
    friend bool operator==(const BeachSignal&, const BeachSignal&) = default;
};

/// What stands on a group's sheet for the beach: words and numbers in the instructor's language and
/// one system of units. For staff: it holds ages and what the health check came to.
struct BeachSheet {
    QString group;
    QString site;
    QString when;
    QString staff;
    QString emergency_line;      ///< empty: a line to write on
    QStringList emergency_plan;  ///< as entered, line by line
    QString pressure_unit;       ///< "bar"
    QString depth_unit;
    QString flow_unit;
    std::vector<BeachGuest> guests;
    bool is_forecast = false;  ///< the guests' minutes are forecast, not planned
    std::vector<BeachCorner> profile;
    QString times;           ///< "In 10:00, back by 10:31 …"
    QString air;             ///< who is low on air first, what the table's minutes are, the
                             ///< instructor's minimum gas
    QStringList air_checks;  ///< "5", "10": minutes, evenly to the end of the planned dive; at most six
    std::vector<BeachSignal> need;
    QStringList open;     ///< stops and cautions of the group, its staff and the session
    int open_stops = 0;   ///< so many of them, the first, are stops
    QStringList decided;  ///< overruled: what, why, by whom
    QString review;       ///< how far the translations can be trusted
    QString standing;
    QString units;  ///< "Metric units"
    friend bool operator==(const BeachSheet&, const BeachSheet&) = default;
};

inline constexpr std::size_t beach_guests_on_page = 8;

/// @param plan   plan(session, ...) of this very session
/// @param group  one of its groups
BeachSheet beach_sheet(const Session& session, const Plan& plan, const Group& group,
                       UnitSystem units);

/// The sheet on paper: a page with up to beach_guests_on_page guests, more where there are more or
/// where what is said of them asks for more room. Nothing that is open or decided, no flag and no
/// line of the emergency plan is left out: what finds no room beside the guests goes on on a page
/// of its own, and the guests' page says so.
std::vector<Page> beach_pages(const BeachSheet& sheet, Paper paper, TypeSetter& setter);

}  // namespace leadline
