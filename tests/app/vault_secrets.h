// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>
#include <utility>
#include <vector>

#include "core/planning/health_entry.h"
#include "core/records/recovery_key.h"

// What must never be found outside the vault. Invented words, so that nothing else can be taken for
// them.

namespace leadline::test {

inline constexpr const char* first_passphrase = "quelph marrow undertow seven";
inline constexpr const char* second_passphrase = "gribble lantern outfall nine";
inline constexpr const char* wrong_passphrase = "snorfel tidewrack by mistake";

inline constexpr std::array<std::pair<HealthKind, const char*>, 4> secret_contents{{
    {HealthKind::screening, "{\"lungs\":\"yes\",\"remark\":\"brontholisk since childhood\"}"},
    {HealthKind::physician_note, "Dr Vexmore: fit, no restriction for quandrosis"},
    {HealthKind::emergency_contact, "Ottoline Brask, sister, phone 0555 918273"},
    {HealthKind::signature, "M 918.25 33.5 L 17.125 44.75 L 626.375 81.5"},
}};

/// The recovery key of the test's vault, as it stands on paper.
inline std::string recovery_text() {
    std::string text;
    for (const std::string& group : recovery_groups(SecretBytes::copy_of("twenty secret bytes!"))) {
        text += text.empty() ? group : '-' + group;
    }
    return text;
}

/// Pieces that give a secret away, each as it would stand in a file.
inline std::vector<std::string> all_secrets() {
    std::vector<std::string> all{first_passphrase, second_passphrase, wrong_passphrase,
                                 "brontholisk",    "quandrosis",      "Ottoline Brask",
                                 "0555 918273",    "M 918.25 33.5",   "twenty secret bytes!"};
    const std::string key = recovery_text();
    all.push_back(key);
    all.push_back(key.substr(0, 14));
    std::string joined;
    for (const char sign : key) {
        if (sign != '-') joined += sign;
    }
    all.push_back(joined);
    return all;
}

}  // namespace leadline::test
