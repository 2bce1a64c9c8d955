// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/recovery_key.h"

#include <cctype>
#include <cstddef>
#include <cstdint>

namespace leadline {

namespace {

/// 32 signs of five bits: digits and capitals without 0, 1, I and O, which are taken for another.
constexpr std::string_view alphabet = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
static_assert(alphabet.size() == 32);

constexpr unsigned bits_of_a_sign = 5;
constexpr unsigned bits_of_a_byte = 8;
constexpr unsigned sign_mask = 0x1f;
constexpr std::size_t key_signs = recovery_key_size * bits_of_a_byte / bits_of_a_sign;
constexpr std::size_t check_signs = recovery_group_signs;
static_assert(key_signs + check_signs == std::size_t(recovery_key_groups * recovery_group_signs));

/// Four signs that depend on all of the key. A random mistake passes once in a million.
std::string checksum(const SecretBytes& key) {
    const SecretBytes hash = derived_key(key, Fields("leadline recovery key checksum 1").bytes());
    std::string signs;
    for (std::size_t i = 0; i < check_signs; ++i) signs += alphabet[hash.data()[i] & sign_mask];
    return signs;
}

std::string signs_of(const SecretBytes& key) {
    std::string signs;
    std::uint32_t held = 0;
    unsigned bits = 0;
    for (std::size_t i = 0; i < key.size(); ++i) {
        held = (held << bits_of_a_byte) | key.data()[i];
        for (bits += bits_of_a_byte; bits >= bits_of_a_sign; bits -= bits_of_a_sign) {
            signs += alphabet[(held >> (bits - bits_of_a_sign)) & sign_mask];
        }
    }
    return signs + checksum(key);
}

/// The bytes of `key_signs` signs of the alphabet.
SecretBytes bytes_of_signs(std::string_view signs) {
    SecretBytes key(recovery_key_size);
    std::uint32_t held = 0;
    unsigned bits = 0;
    std::size_t next = 0;
    for (const char sign : signs) {
        held = (held << bits_of_a_sign) | std::uint32_t(alphabet.find(sign));
        bits += bits_of_a_sign;
        if (bits < bits_of_a_byte) continue;
        bits -= bits_of_a_byte;
        key.data()[next++] = static_cast<unsigned char>((held >> bits) & 0xffU);
    }
    return key;
}

}  // namespace

SecretBytes new_recovery_key() {
    return SecretBytes::random(recovery_key_size);
}

std::vector<std::string> recovery_groups(const SecretBytes& key) {
    std::string signs = signs_of(key);
    std::vector<std::string> groups;
    for (std::size_t at = 0; at < signs.size(); at += recovery_group_signs) {
        groups.push_back(signs.substr(at, recovery_group_signs));
    }
    wipe(signs);
    return groups;
}

Result<SecretBytes> read_recovery_key(std::string_view text) {
    const Error mistyped{ErrorCode::recovery_key_mistyped, {}, {}, {}};
    std::string signs;
    signs.reserve(text.size());
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (std::isspace(byte) != 0 || letter == '-') continue;
        signs += static_cast<char>(std::toupper(byte));
    }
    const bool fits = signs.size() == key_signs + check_signs &&
                      signs.find_first_not_of(alphabet) == std::string::npos;
    SecretBytes key =
        fits ? bytes_of_signs(std::string_view(signs).substr(0, key_signs)) : SecretBytes();
    const bool right = fits && checksum(key) == signs.substr(key_signs);
    wipe(signs);
    if (!right) return mistyped;
    return key;
}

}  // namespace leadline
