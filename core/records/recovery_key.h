// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/physics/result.h"
#include "core/records/sealing.h"

// The key on paper: nine groups of four signs, as "7KPM-...". 32 signs hold 160 random bits, the
// last four a checksum, so that a slip of the pen is told from a wrong key.

namespace leadline {

inline constexpr int recovery_key_groups = 9;
inline constexpr int recovery_group_signs = 4;
inline constexpr std::size_t recovery_key_size = 20;

SecretBytes new_recovery_key();

/// The groups of a key of `recovery_key_size` bytes, as they are printed.
std::vector<std::string> recovery_groups(const SecretBytes& key);

/// The key from what was typed: small letters, spaces and dashes do not matter.
/// @returns recovery_key_mistyped, which never carries the text
Result<SecretBytes> read_recovery_key(std::string_view text);

}  // namespace leadline
