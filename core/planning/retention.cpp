// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/retention.h"

#include <algorithm>

namespace leadline {

namespace {

bool applies(KeptKind kind, const KeptFacts& facts) {
    switch (kind) {
        case KeptKind::health: return facts.has_health;
        case KeptKind::contacts: return facts.has_contacts;
        case KeptKind::identity: return true;
    }
    return false;
}

}  // namespace

Date months_later(Date day, int months) {
    const Date moved = day + std::chrono::months(months);
    return moved.ok() ? moved : Date(moved.year() / moved.month() / std::chrono::last);
}

std::vector<DueErasure> due_for_erasure(const RetentionRules& rules,
                                        const std::vector<KeptFacts>& facts, Date today) {
    std::vector<DueErasure> due;
    for (const KeptFacts& person : facts) {
        DueErasure found{person.person, {}, std::nullopt};
        for (const RetentionRule& rule : rules.rules) {
            if (!applies(rule.kind, person)) continue;
            if (person.last_session) {
                const Date day = months_later(*person.last_session, rule.erase_after_months);
                if (day > today) continue;
                found.since = found.since ? std::min(*found.since, day) : day;
            }
            found.kinds.push_back(rule.kind);
        }
        if (found.kinds.empty()) continue;
        std::sort(found.kinds.begin(), found.kinds.end());
        due.push_back(std::move(found));
    }
    return due;
}

const RetentionRule* keeps_longer(const RetentionRules& rules, std::optional<Date> last_session,
                                  Date today) {
    const RetentionRule* longest = nullptr;
    for (const RetentionRule& rule : rules.rules) {
        if (!last_session || !rule.keep_at_least_months) continue;
        if (months_later(*last_session, *rule.keep_at_least_months) <= today) continue;
        if (longest == nullptr || *rule.keep_at_least_months > *longest->keep_at_least_months) {
            longest = &rule;
        }
    }
    return longest;
}

bool is_time_to_look(std::optional<Date> last_looked, Date today) {
    return !last_looked || *last_looked > today || months_later(*last_looked, 1) <= today;
}

}  // namespace leadline
