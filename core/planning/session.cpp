// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/session.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <numeric>
#include <set>
#include <string>

#include "core/physics/number_text.h"
#include "core/planning/text_length.h"

namespace leadline {
namespace {

std::string at(const char* list, std::size_t index, const char* field) {
    return "/" + std::string(list) + "/" + std::to_string(index) + "/" + field;
}

/// Collects the first error; later checks do nothing once one is found.
class Checker {
public:
    void range(double value, double least, double most, const std::string& place) {
        if (error_ || (value >= least && value <= most)) return;
        error_ = Error{ErrorCode::out_of_range, place, number_text(value),
                       number_text(least) + " to " + number_text(most)};
    }
    template <typename Quantity>
    void range(const std::optional<Quantity>& value, double least, double most,
               const std::string& place) {
        if (value) range(value->value(), least, most, place);
    }
    void fail(ErrorCode code, const std::string& place, const std::string& given,
              const std::string& allowed = {}) {
        if (!error_) error_ = Error{code, place, given, allowed};
    }
    void cylinder(const std::optional<Cylinder>& cylinder, const std::string& place) {
        if (!cylinder || error_) return;
        range(Celsius(cylinder->fill_temperature).value(), -20.0, 70.0,
              place + "/fill_temperature_c");
        const Result<Moles> content = cylinder_content(*cylinder, Bars(1.0));
        if (content) return;
        const std::string field = content.error().place;
        fail(content.error().code, place + field.substr(std::min(field.find('/'), field.size())),
             content.error().given, content.error().allowed);
    }
    /// A text no longer than the session file allows, so that what the window takes can be written
    /// and read again. Counted in characters (code points) of UTF-8, as the schema counts.
    void length(const std::string& text, std::size_t most, const std::string& place) {
        if (character_count(text) > most) {
            fail(ErrorCode::bad_text, place, text, "0 to " + std::to_string(most) + " characters");
        }
    }
    template <typename Key>
    void unique(std::set<Key>& seen, const Key& id, const std::string& place) {
        if (id.empty()) return fail(ErrorCode::bad_text, place, "", "1 or more characters");
        if (!seen.insert(id).second) fail(ErrorCode::duplicate_id, place, id.text);
    }
    template <typename Key>
    void known(const std::set<Key>& ids, const Key& id, const std::string& place) {
        if (!id.empty() && !ids.contains(id)) {
            fail(ErrorCode::unknown_reference, place, id.text);
        }
    }
    [[nodiscard]] Result<Done> result() const {
        if (error_) return *error_;
        return Done{};
    }

private:
    std::optional<Error> error_;
};

void check_site(const Session& session, Checker& checker) {
    const Site& site = session.site;
    checker.range(site.altitude.meters().value(), -430.0, 5000.0, "/site/altitude_m");
    checker.range(site.latitude.value(), -90.0, 90.0, "/site/latitude_deg");
    checker.range(site.salinity.value, 0.0, 42.0, "/site/salinity");
    if (site.bottom_depth) {
        checker.range(site.bottom_depth->meters().value(), 0.0, 200.0, "/site/bottom_depth_m");
    }
    const Conditions& today = session.conditions;
    checker.range(Celsius(today.water_temperature).value(), -2.0, 36.0,
                  "/conditions/water_temperature_c");
    checker.range(Celsius(today.air_temperature).value(), -20.0, 50.0,
                  "/conditions/air_temperature_c");
    if (today.barometer) {
        checker.range(today.barometer->value() / 100.0, 500.0, 1100.0,
                      "/conditions/barometer_hpa");
    }
    checker.range(today.visibility, 0.0, 100.0, "/conditions/visibility_m");
    checker.range(today.wave_height, 0.0, 10.0, "/conditions/wave_height_m");
    checker.range(session.meeting_time.minutes_after_midnight, 0, 1439, "/meeting_time");
    checker.range(session.dive_time.minutes_after_midnight, 0, 1439, "/dive_time");
    if (!session.date.ok()) checker.fail(ErrorCode::bad_date, "/date", to_text(session.date));
}

// The lengths are those of resources/schema/session.schema.json; a test compares them.

void check_texts(const Session& session, Checker& checker) {
    checker.length(session.title, 200, "/title");
    checker.length(session.site.name, 200, "/site/name");
    checker.length(session.site.meeting_place, 500, "/site/meeting_place");
    checker.length(session.site.emergency_line, 200, "/site/emergency_line");
    checker.length(session.site.emergency_plan, 2000, "/site/emergency_plan");
    for (std::size_t i = 0; i < session.staff.size(); ++i) {
        checker.length(session.staff[i].name, 200, at("staff", i, "name"));
    }
    for (std::size_t i = 0; i < session.groups.size(); ++i) {
        checker.length(session.groups[i].name, 200, at("groups", i, "name"));
    }
    for (std::size_t i = 0; i < session.overrules.size(); ++i) {
        checker.length(session.overrules[i].reason, 1000, at("overrules", i, "reason"));
        checker.length(session.overrules[i].by, 200, at("overrules", i, "by"));
    }
    for (std::size_t i = 0; i < session.guests.size(); ++i) {
        const Guest& guest = session.guests[i];
        checker.length(guest.name, 200, at("guests", i, "name"));
        checker.length(guest.note, 2000, at("guests", i, "note"));
        checker.length(guest.phone, 40, at("guests", i, "phone"));
        checker.length(guest.email, 254, at("guests", i, "email"));
        checker.length(guest.screening.edition, 100, at("guests", i, "screening/edition"));
        checker.length(guest.screening.checked_by, 200, at("guests", i, "screening/checked_by"));
        checker.length(guest.kit.suit, 100, at("guests", i, "kit/suit"));
        checker.length(guest.kit.bcd, 100, at("guests", i, "kit/bcd"));
        checker.length(guest.kit.fins, 100, at("guests", i, "kit/fins"));
        checker.length(guest.kit.mask, 100, at("guests", i, "kit/mask"));
        checker.length(guest.kit.regulator, 100, at("guests", i, "kit/regulator"));
    }
}

void check_guest(const Session& session, std::size_t index, Checker& checker) {
    const Guest& guest = session.guests[index];
    const auto place = [&](const char* field) { return at("guests", index, field); };
    if (guest.name.empty()) {
        checker.fail(ErrorCode::bad_text, place("name"), guest.name, "1 to 200 characters");
    }
    if (guest.birth_date) {
        if (!guest.birth_date->ok()) {
            checker.fail(ErrorCode::bad_date, place("birth_date"), to_text(*guest.birth_date));
        } else if (*guest.birth_date > session.date) {
            checker.fail(ErrorCode::birth_date_in_future, place("birth_date"),
                         to_text(*guest.birth_date), to_text(session.date));
        }
    }
    const auto real_day = [&](const std::optional<Date>& day, const char* field) {
        if (day && !day->ok()) checker.fail(ErrorCode::bad_date, place(field), to_text(*day));
    };
    real_day(guest.screening.checked_on, "screening/checked_on");
    real_day(guest.screening.approval_on, "screening/physician_approval_on");
    real_day(guest.briefing.checked_on, "briefing/checked_on");
    checker.range(guest.body_mass, 15.0, 250.0, place("mass_kg"));
    if (guest.body_height) {
        checker.range(guest.body_height->value() * 100.0, 80.0, 250.0, place("height_cm"));
    }
    if (guest.shoe_size_eu) checker.range(*guest.shoe_size_eu, 20.0, 55.0, place("shoe_size_eu"));
    checker.range(guest.measured_rmv, 5.0, 100.0, place("rmv_l_per_min"));
    if (guest.dives_before) checker.range(*guest.dives_before, 0, 20000, place("dives_before"));
    checker.range(guest.kit.lead, 0.0, 25.0, place("kit/lead_kg"));
    checker.cylinder(guest.kit.cylinder, place("kit/cylinder"));
}

void check_skills(const Session& session, Checker& checker) {
    const std::vector<Skill>& skills = session.skills;
    for (auto skill = skills.begin(); skill != skills.end(); ++skill) {
        if (std::find(skills.begin(), skill, *skill) != skill) {
            checker.fail(ErrorCode::duplicate_id,
                         "/skills/" + std::to_string(skill - skills.begin()),
                         std::to_string(static_cast<int>(*skill) + 1));
        }
    }
}

/// Minutes since the epoch of the site's own clock.
double minutes_of(Date date, TimeOfDay time) {
    const auto days = std::chrono::sys_days(date).time_since_epoch().count();
    return 1440.0 * static_cast<double>(days) + time.minutes_after_midnight;
}

double start_of(const EarlierDive& dive) { return minutes_of(dive.date, dive.start); }
double end_of(const EarlierDive& dive) { return start_of(dive) + dive.duration.value(); }

/// "2026-07-04 09:30"; a part of a minute is dropped.
std::string moment_text(double minutes) {
    const double day = std::floor(minutes / 1440.0);
    const std::chrono::sys_days date(std::chrono::days(static_cast<int>(day)));
    return to_text(Date(date)) + " " +
           to_text(TimeOfDay{static_cast<int>(minutes - 1440.0 * day)});
}

Date oldest_kept(Date date) {
    return std::chrono::sys_days(date) - std::chrono::days(earlier_dives_kept_days);
}

void check_earlier_dive(const Session& session, const EarlierDive& dive, const std::string& place,
                        Checker& checker) {
    if (!dive.date.ok()) {
        return checker.fail(ErrorCode::bad_date, place + "date", to_text(dive.date));
    }
    checker.range(dive.start.minutes_after_midnight, 0, 1439, place + "start");
    const double depth = dive.deepest.meters().value();
    if (!(depth > 0.0 && depth <= 60.0)) {
        checker.fail(ErrorCode::out_of_range, place + "deepest_m", number_text(depth),
                     "above 0, to 60");
    }
    checker.range(dive.duration.value(), 1.0, 240.0, place + "duration_min");
    checker.range(dive.ascents, 1, 30, place + "ascents");
    if (!checker.result() || !session.date.ok()) return;
    if (dive.date > session.date || dive.date < oldest_kept(session.date)) {
        checker.fail(ErrorCode::out_of_range, place + "date", to_text(dive.date),
                     to_text(oldest_kept(session.date)) + " to " + to_text(session.date));
    }
    const double latest = minutes_of(session.date, session.dive_time) - dive.duration.value();
    if (start_of(dive) > latest) {
        checker.fail(ErrorCode::out_of_range, place + "start", moment_text(start_of(dive)),
                     moment_text(minutes_of(oldest_kept(session.date), {})) + " to " +
                         moment_text(latest));
    }
}

/// Nobody is in two dives at once: the first dive in the list that starts during another.
void check_overlaps(const std::vector<EarlierDive>& dives, const std::string& place,
                    Checker& checker) {
    if (!checker.result()) return;
    std::vector<std::size_t> order(dives.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return start_of(dives[a]) < start_of(dives[b]);
    });
    for (std::size_t i = 1; i < order.size(); ++i) {
        const EarlierDive& before = dives[order[i - 1]];
        const EarlierDive& dive = dives[order[i]];
        if (start_of(dive) < end_of(before)) {
            checker.fail(ErrorCode::times_overlap,
                         place + "/" + std::to_string(order[i]) + "/start",
                         moment_text(start_of(dive)), moment_text(std::ceil(end_of(before))));
        }
    }
}

void check_exposure(const Session& session, std::size_t index, Checker& checker) {
    const StaffMember& member = session.staff[index];
    checker.range(member.extra_ascents, 0, 20, at("staff", index, "extra_ascents"));
    const std::string list = at("staff", index, "earlier_dives");
    const auto count = member.earlier_dives.size();
    if (count > most_earlier_dives) {
        checker.fail(ErrorCode::bad_count, list, std::to_string(count),
                     "0 to " + std::to_string(most_earlier_dives));
    }
    for (std::size_t i = 0; i < count && checker.result(); ++i) {
        check_earlier_dive(session, member.earlier_dives[i], list + "/" + std::to_string(i) + "/",
                           checker);
    }
    check_overlaps(member.earlier_dives, list, checker);
}

void check_lead_pieces(const std::vector<Kilograms>& pieces, Checker& checker) {
    const std::string list = "/stock/lead_pieces_kg";
    if (pieces.size() > most_lead_sizes) {
        checker.fail(ErrorCode::bad_count, list, std::to_string(pieces.size()),
                     "0 to " + std::to_string(most_lead_sizes));
    }
    for (std::size_t i = 0; i < pieces.size() && checker.result(); ++i) {
        const std::string place = list + "/" + std::to_string(i);
        checker.range(pieces[i].value(), 0.1, 10.0, place);
        const bool twice = std::any_of(pieces.begin(), pieces.begin() + std::ptrdiff_t(i),
                                       [&](Kilograms other) {
                                           return std::abs((other - pieces[i]).value()) < 0.001;
                                       });
        if (twice) {
            checker.fail(ErrorCode::duplicate_id, place, number_text(pieces[i].value()));
        }
    }
}

void check_stock(const Stock& stock, Checker& checker) {
    std::set<CylinderTypeId> types;
    for (std::size_t i = 0; i < stock.cylinders.size(); ++i) {
        const CylinderStock& held = stock.cylinders[i];
        if (find_cylinder_type(held.type) == nullptr) {
            checker.fail(ErrorCode::unknown_reference, at("stock/cylinders", i, "type"),
                         held.type.text);
        }
        checker.unique(types, held.type, at("stock/cylinders", i, "type"));
        checker.range(held.count, 0, 1000, at("stock/cylinders", i, "count"));
    }
    if (stock.suits.size() > most_suit_kinds) {
        checker.fail(ErrorCode::bad_count, "/stock/suits", std::to_string(stock.suits.size()),
                     "0 to " + std::to_string(most_suit_kinds));
    }
    std::set<std::string> suits;
    for (std::size_t i = 0; i < stock.suits.size(); ++i) {
        const SuitStock& held = stock.suits[i];
        const std::string place = at("stock/suits", i, "suit");
        if (held.suit.empty() || character_count(held.suit) > 100) {
            checker.fail(ErrorCode::bad_text, place, held.suit, "1 to 100 characters");
        }
        if (!suits.insert(held.suit).second) {
            checker.fail(ErrorCode::duplicate_id, place, held.suit);
        }
        checker.range(held.count, 0, 1000, at("stock/suits", i, "count"));
    }
    check_lead_pieces(stock.lead_pieces, checker);
}

template <typename Key, typename Items>
Key next_id(const std::string& stem, const Items& items) {
    std::size_t number = items.size() + 1;
    for (;; ++number) {
        Key id(stem + "-" + std::to_string(number));
        const bool taken = std::any_of(items.begin(), items.end(),
                                       [&](const auto& item) { return item.id == id; });
        if (!taken) return id;
    }
}

template <typename Items, typename Key>
auto* find_by_id(Items& items, const Key& id) {
    const auto found = std::find_if(items.begin(), items.end(),
                                    [&](const auto& item) { return item.id == id; });
    return found == items.end() ? nullptr : &*found;
}

}  // namespace

const Guest* find_guest(const Session& session, const GuestId& id) {
    return find_by_id(session.guests, id);
}
Guest* find_guest(Session& session, const GuestId& id) { return find_by_id(session.guests, id); }
const StaffMember* find_staff(const Session& session, const StaffId& id) {
    return find_by_id(session.staff, id);
}
const Group* find_group(const Session& session, const GroupId& id) {
    return find_by_id(session.groups, id);
}

std::vector<const Guest*> guests_in(const Session& session, const GroupId& id) {
    std::vector<const Guest*> found;
    for (const Guest& guest : session.guests) {
        if (guest.group == id) found.push_back(&guest);
    }
    return found;
}

GuestId next_guest_id(const Session& session) { return next_id<GuestId>("guest", session.guests); }
GroupId next_group_id(const Session& session) { return next_id<GroupId>("group", session.groups); }
StaffId next_staff_id(const Session& session) { return next_id<StaffId>("staff", session.staff); }

std::size_t merge_dives(std::vector<EarlierDive>& dives, const std::vector<EarlierDive>& more) {
    const std::size_t before = dives.size();
    for (const EarlierDive& dive : more) {
        const bool known = std::any_of(dives.begin(), dives.end(), [&](const EarlierDive& other) {
            return start_of(dive) < end_of(other) && start_of(other) < end_of(dive);
        });
        if (!known && dives.size() < most_earlier_dives) dives.push_back(dive);
    }
    return dives.size() - before;
}

void drop_old_dives(Session& session) {
    if (!session.date.ok()) return;
    for (StaffMember& member : session.staff) {
        std::erase_if(member.earlier_dives, [&](const EarlierDive& dive) {
            return dive.date.ok() && dive.date < oldest_kept(session.date);
        });
    }
}

Result<Done> check(const Session& session) {
    Checker checker;
    check_site(session, checker);
    check_texts(session, checker);
    std::set<StaffId> staff;
    for (std::size_t i = 0; i < session.staff.size(); ++i) {
        checker.unique(staff, session.staff[i].id, at("staff", i, "id"));
        checker.cylinder(session.staff[i].cylinder, at("staff", i, "cylinder"));
        check_exposure(session, i, checker);
    }
    checker.known(staff, session.leader, "/leader");
    std::set<GroupId> groups;
    for (std::size_t i = 0; i < session.groups.size(); ++i) {
        checker.unique(groups, session.groups[i].id, at("groups", i, "id"));
        checker.known(staff, session.groups[i].instructor, at("groups", i, "instructor"));
        checker.known(staff, session.groups[i].assistant, at("groups", i, "assistant"));
    }
    std::set<GuestId> guests;
    for (std::size_t i = 0; i < session.guests.size(); ++i) {
        checker.unique(guests, session.guests[i].id, at("guests", i, "id"));
        checker.known(groups, session.guests[i].group, at("guests", i, "group"));
        check_guest(session, i, checker);
    }
    check_stock(session.stock, checker);
    check_skills(session, checker);
    for (std::size_t i = 0; i < session.overrules.size(); ++i) {
        const std::string& reason = session.overrules[i].reason;
        if (reason.find_first_not_of(" \t\r\n") == std::string::npos) {
            checker.fail(ErrorCode::bad_text, at("overrules", i, "reason"), reason,
                         "1 or more words");
        }
    }
    const Result<Done> found = checker.result();
    return found ? check(session.profile) : found;
}

}  // namespace leadline
