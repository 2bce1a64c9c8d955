// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/planning/dates.h"
#include "core/planning/rules.h"

namespace leadline {

/// What is kept of a guest, by how long it may be needed.
enum class KeptKind {
    health,    ///< answers about health, and what is sealed
    contacts,  ///< phone number, e-mail address
    identity,  ///< name, birth date, language, sizes: all that tells who the guest is
};
inline constexpr int kept_kind_count = 3;

/// How long one kind is kept, counted from the day of the guest's last session.
struct RetentionRule {
    KeptKind kind{};
    int erase_after_months = 0;          ///< 1 to 600; then it is due
    std::optional<int> keep_at_least_months;  ///< removed earlier only after a warning
    std::string source;
    Standing standing = Standing::common_practice;
};

/// A centre's periods. They say what is due; nothing is erased by them.
struct RetentionRules {
    std::string title;
    std::string note;
    std::vector<RetentionRule> rules;  ///< each kind at most once
};

/// What is known of a person on record when it is asked what is due.
struct KeptFacts {
    std::int64_t person = 0;
    std::optional<Date> last_session;  ///< none: no session refers to the person any more
    bool has_health = false;
    bool has_contacts = false;
};

/// What of a person is due for erasure.
struct DueErasure {
    std::int64_t person = 0;
    std::vector<KeptKind> kinds;  ///< in the order of the enumeration, at least one
    std::optional<Date> since;    ///< the day on which the first of them fell due
    friend bool operator==(const DueErasure&, const DueErasure&) = default;
};

/// A day a number of calendar months later; the last of the month where there is no such day.
Date months_later(Date day, int months);

/// Who is due on a day, in the order given. A person whom no session refers to is due in every kind:
/// nothing is left that the record would be needed for.
std::vector<DueErasure> due_for_erasure(const RetentionRules& rules,
                                        const std::vector<KeptFacts>& facts, Date today);

/// The rule that asks to keep a kind longer than until today, if there is one.
const RetentionRule* keeps_longer(const RetentionRules& rules, std::optional<Date> last_session,
                                  Date today);

/// Whether the list of what is due should be shown again: a month has passed since it was looked at,
/// or it never was. A day in the future counts as never: the clock was wrong.
bool is_time_to_look(std::optional<Date> last_looked, Date today);

}  // namespace leadline
