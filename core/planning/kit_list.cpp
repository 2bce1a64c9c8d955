// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/kit_list.h"

#include <algorithm>
#include <map>
#include <set>

namespace leadline {
namespace {

std::string trimmed(const std::string& text) {
    constexpr const char* blanks = " \t\r\n";
    const auto from = text.find_first_not_of(blanks);
    if (from == std::string::npos) return {};
    return text.substr(from, text.find_last_not_of(blanks) - from + 1);
}

class Counter {
public:
    void add(const Guest& guest) {
        KitGap gap{guest.id, {}};
        add(KitItem::suit, guest.kit.suit, gap);
        add(KitItem::bcd, guest.kit.bcd, gap);
        add(KitItem::fins, guest.kit.fins, gap);
        add(KitItem::mask, guest.kit.mask, gap);
        add(KitItem::regulator, guest.kit.regulator, gap);
        if (guest.kit.lead) {
            totals_.lead += *guest.kit.lead;
            ++totals_.guests_with_lead;
        } else {
            gap.missing.push_back(KitItem::lead);
        }
        add(KitItem::cylinder, guest.kit.cylinder ? guest.kit.cylinder->type.text : "", gap);
        if (!gap.missing.empty()) totals_.gaps.push_back(gap);
    }
    void add(const StaffMember& member) {
        if (member.cylinder) ++count(KitItem::cylinder, member.cylinder->type.text);
    }
    KitTotals taken() {
        for (std::size_t item = 0; item < kit_item_count; ++item) {
            for (const auto& [label, number] : counts_[item]) {
                totals_.counts[item].push_back({label, number});
            }
        }
        return std::move(totals_);
    }

private:
    int& count(KitItem item, const std::string& label) {
        return counts_[static_cast<std::size_t>(item)][label];
    }
    void add(KitItem item, const std::string& label, KitGap& gap) {
        const std::string bare = trimmed(label);
        if (bare.empty()) {
            gap.missing.push_back(item);
        } else {
            ++count(item, bare);
        }
    }
    KitTotals totals_;
    std::map<std::string, int> counts_[kit_item_count];
};

/// Who of the staff goes with the guests that are counted.
std::set<StaffId> staff_of(const Session& session, const GroupId& group) {
    std::set<StaffId> ids;
    for (const Group& one : session.groups) {
        if (!group.text.empty() && one.id != group) continue;
        ids.insert(one.instructor);
        ids.insert(one.assistant);
    }
    return ids;
}

}  // namespace

KitTotals kit_totals(const Session& session, const GroupId& group) {
    Counter counter;
    for (const Guest& guest : session.guests) {
        if (group.text.empty() || guest.group == group) counter.add(guest);
    }
    const std::set<StaffId> staff = staff_of(session, group);
    for (const StaffMember& member : session.staff) {
        if (staff.contains(member.id)) counter.add(member);
    }
    return counter.taken();
}

}  // namespace leadline
