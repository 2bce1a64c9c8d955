// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace leadline {

/// What kind of thing is wrong. Words for people are made from it outside the core.
enum class ErrorCode {
    file_unreadable,        ///< place: the file; given: the system's reason
    file_unwritable,        ///< place: the file; given: the system's reason
    file_too_large,         ///< place: the file; given: its size; allowed: the limit
    not_json,               ///< place: line and column; given: the parser's complaint
    nested_too_deep,        ///< place: where; allowed: the limit
    wrong_type,             ///< place: JSON pointer; given: the value; allowed: the type wanted
    unknown_field,          ///< place: JSON pointer of the object; given: the name; allowed: names
    missing_field,          ///< place: JSON pointer of the object; given: the name
    out_of_range,           ///< place: field or quantity; given: the value; allowed: the range
    not_a_choice,           ///< place: field; given: the value; allowed: the choices
    bad_text,               ///< place: field; given: the text; allowed: the form wanted
    bad_count,              ///< place: list; given: its length; allowed: the range
    bad_date,               ///< place: field; given: the text
    birth_date_in_future,   ///< place: field; given: the date; allowed: the session's date
    duplicate_id,           ///< place: the second of the two; given: the id
    unknown_reference,      ///< place: field; given: the id that nothing carries
    overfilled_cylinder,    ///< place: field; given: the fill; allowed: the working pressure
    time_not_increasing,    ///< place: the later point; given: its time; allowed: later than
    times_overlap,          ///< place: the later of two; given: its start; allowed: the other's end
    ends_before_start,      ///< place: the log; given: the end; allowed: the start
    profile_not_closed,     ///< place: profile; given: the first or last depth; allowed: 0 m
    ends_at_higher_pressure,///< place: the log; given: end pressure; allowed: start pressure
    log_of_another_session, ///< place: what differs; given: in the log's file; allowed: here
    unsupported_version,    ///< place: file; given: the version; allowed: the newest known
    database_failed,        ///< place: the file; given: the driver's message
    database_newer,         ///< place: the file; given: its schema; allowed: the newest known
    database_locked,        ///< place: the file
    database_damaged,       ///< place: the file; given: what was found
    database_gone,          ///< place: the file, which is no longer there, or another one is
    database_read_only,     ///< place: the file; given: the driver's message
    disk_full,              ///< place: the file; given: the system's reason
    not_our_records,        ///< place: the file; given: what it is instead
    cancelled,              ///< place: what was stopped by the user
    not_found,              ///< place: what was looked for; given: the id
    table_too_large,        ///< place: "rows" or "columns"; given: how many; allowed: the limit
    not_a_table,            ///< place: "row 7" or empty; given: why: "quote_left_open", "no_text"
    vault_not_set_up,       ///< nothing can be sealed yet
    vault_exists,           ///< the records have a vault already
    vault_locked,           ///< it must be opened first
    vault_wrong_key,        ///< place: the way tried; it does not open the vault
    vault_must_wait,        ///< given: seconds until the next try is taken
    vault_last_way,         ///< place: the way; without it nothing would open the vault
    passphrase_length,      ///< given: its length in characters; allowed: the range
    recovery_key_mistyped,  ///< no text: a mistyped key is nearly the key
    sealed_unreadable,      ///< place: what; given: its row; damaged, or altered from outside
    key_stretching_failed,  ///< allowed: the memory it needs
    keyring_failed,         ///< given: the keyring's reason
};

/// An expected failure: which kind, where, what was given and what would be allowed. Pure data; the
/// texts in it are raw values and names, never sentences.
struct Error {
    ErrorCode code{};
    std::string place;    ///< where: a file, a JSON pointer, or the name of a quantity
    std::string given;    ///< what stood there
    std::string allowed;  ///< what may stand there
    friend bool operator==(const Error&, const Error&) = default;
};

/// Either a value or an Error. Small stand-in for C++23's std::expected with the same member names;
/// [[nodiscard]], so that a dropped error is a compiler warning (and warnings are errors here).
template <typename T>
class [[nodiscard]] Result {
public:
    Result(T value) : state_(std::move(value)) {}          // NOLINT: implicit by design
    Result(Error error) : state_(std::move(error)) {}      // NOLINT: implicit by design
    [[nodiscard]] bool has_value() const { return std::holds_alternative<T>(state_); }
    explicit operator bool() const { return has_value(); }
    /// The value. Precondition: has_value(); throws std::bad_variant_access otherwise.
    [[nodiscard]] const T& value() const& { return std::get<T>(state_); }
    [[nodiscard]] T& value() & { return std::get<T>(state_); }
    [[nodiscard]] T&& value() && { return std::get<T>(std::move(state_)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }
    /// The error. Precondition: !has_value(); throws std::bad_variant_access otherwise.
    [[nodiscard]] const Error& error() const { return std::get<Error>(state_); }
    [[nodiscard]] T value_or(T other) const { return has_value() ? value() : std::move(other); }

private:
    std::variant<T, Error> state_;
};

/// For operations that give nothing back but may fail.
struct Done {
    friend bool operator==(Done, Done) = default;
};

}  // namespace leadline
