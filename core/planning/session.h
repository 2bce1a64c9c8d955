// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/body/breathing.h"
#include "core/physics/quantities.h"
#include "core/physics/water.h"
#include "core/planning/briefing.h"
#include "core/planning/cylinder.h"
#include "core/planning/dates.h"
#include "core/planning/ids.h"
#include "core/planning/profile.h"
#include "core/planning/screening.h"

namespace leadline {

/// Kit handed to a guest. Sizes are what the label says; an empty text means not yet found.
struct Kit {
    std::string suit;       ///< "5 mm M"
    std::string bcd;        ///< "M"
    std::string fins;       ///< "40-41"
    std::string mask;       ///< "standard", "small", "-3.0 dioptres"
    std::string regulator;  ///< number on the set, "R4"
    std::optional<Kilograms> lead;     ///< 0 to 25 kg
    std::optional<Cylinder> cylinder;  ///< none: not yet issued
    friend bool operator==(const Kit&, const Kit&) = default;
};

struct Guest {
    GuestId id;
    std::string name;  ///< as it should stand on the card; 1 to 200 characters
    std::optional<Date> birth_date;
    std::string language = "en";         ///< BCP 47 tag of the language the guest reads best
    std::string second_language;         ///< another, for a card in two languages; may be empty
    UnitHabit units = UnitHabit::house;  ///< of the guest's card and screen
    std::string phone;                   ///< as the guest writes it, up to 40 characters; may be empty
    std::string email;                   ///< up to 254 characters; may be empty
    std::optional<Kilograms> body_mass;  ///< 15 to 250 kg
    std::optional<Meters> body_height;   ///< 0.8 to 2.5 m
    std::optional<double> shoe_size_eu;  ///< 20 to 55
    HealthCheck screening;
    bool guardian_consent = false;  ///< documented consent of a guardian, for a minor
    bool certified = false;         ///< a certified companion: uses a place, needs no teaching
    BreathingClass breathing = BreathingClass::average;
    std::optional<LitersPerMinute> measured_rmv;  ///< from an own past dive, 5 to 100 L/min
    std::optional<int> dives_before;  ///< in the guest's life, 0 to 20 000; none: not asked
    Kit kit;
    BriefingCheck briefing;
    GroupId group;     ///< empty: not yet in a group
    std::string note;  ///< for staff; never printed on the card
    friend bool operator==(const Guest&, const Guest&) = default;
};

enum class StaffRole { instructor, assistant };

/// A dive a member of staff made before this session; what the body still carries of it counts.
struct EarlierDive {
    Date date{std::chrono::year(2026), std::chrono::month(1), std::chrono::day(1)};
    TimeOfDay start;     ///< when the diver left the surface
    Depth deepest;       ///< above 0, to 60 m
    Minutes duration{};  ///< from leaving the surface to being back for good, 1 to 240 min
    int ascents = 1;     ///< times the diver came up to the surface, the last included; 1 to 30
    friend bool operator==(const EarlierDive& a, const EarlierDive& b) {
        return a.date == b.date && a.start == b.start && a.deepest == b.deepest &&
               a.duration.value() == b.duration.value() && a.ascents == b.ascents;
    }
};

/// Dives longer ago than this many days (a year) are no longer of use.
inline constexpr int earlier_dives_kept_days = 366;
inline constexpr int most_earlier_dives = 100;
inline constexpr int most_lead_sizes = 20;
inline constexpr int most_suit_kinds = 100;

struct StaffMember {
    StaffId id;
    std::string name;
    StaffRole role = StaffRole::instructor;
    std::vector<std::string> languages;  ///< BCP 47 tags spoken well enough to brief in
    std::optional<Cylinder> cylinder;
    /// Up to 100 dives in any order, all over before this session's dive time, none during another
    /// and none more than `earlier_dives_kept_days` old; those of the last seven days matter.
    std::vector<EarlierDive> earlier_dives{};
    /// Times this person is expected to go up (with a guest, or to train an ascent) and down again
    /// during the planned dive; 0 to 20.
    int extra_ascents = 0;
    friend bool operator==(const StaffMember&, const StaffMember&) = default;
};

/// Guests with one instructor in the water.
struct Group {
    GroupId id;
    std::string name;  ///< what is called out on the beach: "Blue"
    StaffId instructor;
    StaffId assistant;  ///< empty: none
    friend bool operator==(const Group&, const Group&) = default;
};

enum class Entry { shore, boat, pool_steps };

struct Site {
    std::string name;
    Altitude altitude;
    Degrees latitude{0.0};
    PracticalSalinity salinity;
    std::optional<Depth> bottom_depth;  ///< the deepest a guest could sink there
    Entry entry = Entry::shore;
    std::string meeting_place;
    std::string emergency_line;  ///< the number to call, as printed on every card
    std::string emergency_plan;  ///< free text: oxygen, phone, nearest chamber, way out
    friend bool operator==(const Site&, const Site&) = default;
};

enum class Current { none, slight, moderate, strong };

/// What the sea does today.
struct Conditions {
    Kelvins water_temperature{293.15};  ///< the coldest the guests will meet; -2 to 36 C
    Kelvins air_temperature{293.15};    ///< -20 to 50 C
    std::optional<Pascals> barometer;   ///< reading at the site itself, not reduced to sea level
    std::optional<Meters> visibility;   ///< 0 to 100 m
    Current current = Current::none;
    std::optional<Meters> wave_height;  ///< 0 to 10 m
    friend bool operator==(const Conditions&, const Conditions&) = default;
};

/// Cylinders of one kind that the centre has, issued ones included.
struct CylinderStock {
    CylinderTypeId type;
    int count = 0;  ///< 0 to 1000
    friend bool operator==(const CylinderStock&, const CylinderStock&) = default;
};

/// Suits of one kind that the centre has, issued ones included.
struct SuitStock {
    std::string suit;  ///< as Kit::suit: "7 mm M"; 1 to 100 characters
    int count = 0;     ///< 0 to 1000
    friend bool operator==(const SuitStock&, const SuitStock&) = default;
};

/// What the centre has to hand out. An empty list: not recorded, so nothing is known to be missing.
struct Stock {
    std::vector<CylinderStock> cylinders;  ///< each kind once
    std::vector<SuitStock> suits;          ///< up to 100, each label once
    /// Up to 20 sizes kept, 0.1 to 10 kg, no two within a gram; empty: whole kilograms.
    std::vector<Kilograms> lead_pieces;
    friend bool operator==(const Stock&, const Stock&) = default;
};

/// An instructor's decision to go ahead despite a finding, with the reason, which is printed.
struct Overrule {
    std::string finding;  ///< key() of the finding
    std::string reason;   ///< at least one word
    std::string by;       ///< who decided
    friend bool operator==(const Overrule&, const Overrule&) = default;
};

/// One briefing and dive: what people typed. A plain value; everything else follows from it.
struct Session {
    std::string title;
    Date date{std::chrono::year(2026), std::chrono::month(1), std::chrono::day(1)};
    TimeOfDay meeting_time;  ///< when guests come together
    TimeOfDay dive_time;     ///< when the first group enters the water
    StaffId leader;          ///< who leads; empty: not named
    Site site;
    Conditions conditions;
    Profile profile;
    std::vector<StaffMember> staff;
    std::vector<Group> groups;
    std::vector<Guest> guests;
    Stock stock;
    std::vector<Skill> skills = standard_skills();  ///< to be practised, each once, in this order
    std::vector<RuleSetId> rule_sets;  ///< the sets that apply; the strictest value counts
    std::vector<Overrule> overrules;
    friend bool operator==(const Session&, const Session&) = default;
};

const Guest* find_guest(const Session& session, const GuestId& id);
Guest* find_guest(Session& session, const GuestId& id);
const StaffMember* find_staff(const Session& session, const StaffId& id);
const Group* find_group(const Session& session, const GroupId& id);
/// Guests of a group, in roster order.
std::vector<const Guest*> guests_in(const Session& session, const GroupId& id);

/// An id not yet used in the session: "guest-7".
GuestId next_guest_id(const Session& session);
GroupId next_group_id(const Session& session);
StaffId next_staff_id(const Session& session);

/// Adds dives to a list, but none that starts or ends during one there already: two accounts of one
/// dive are one dive, and the account that stands stays. At most `most_earlier_dives` in all.
/// @returns how many were added
std::size_t merge_dives(std::vector<EarlierDive>& dives, const std::vector<EarlierDive>& more);

/// Takes out earlier dives that are too old to be kept, as a later date of the session makes them.
void drop_old_dives(Session& session);

/// Checks everything that no single field can tell: ranges, double ids, references to nothing, a
/// fill over the working pressure, a birth in the future, the profile. Both the file reader and the
/// window call it, so that neither can let in what the other refuses.
/// @returns Done, or the first error with its place as a JSON pointer into the session file
Result<Done> check(const Session& session);

}  // namespace leadline
