// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <string>
#include <utility>

namespace leadline {

/// Identity of one kind of thing. The tag keeps a guest's id from being used as a group's.
template <typename Tag>
struct Id {
    std::string text;
    Id() = default;
    explicit Id(std::string value) : text(std::move(value)) {}
    [[nodiscard]] bool empty() const { return text.empty(); }
    friend bool operator==(const Id&, const Id&) = default;
    friend auto operator<=>(const Id&, const Id&) = default;
};

using GuestId = Id<struct GuestTag>;
using StaffId = Id<struct StaffTag>;
using GroupId = Id<struct GroupTag>;
using RuleSetId = Id<struct RuleSetTag>;
using CylinderTypeId = Id<struct CylinderTypeTag>;

}  // namespace leadline
