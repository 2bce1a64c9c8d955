// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/booking_duplicates.h"

#include <algorithm>
#include <map>
#include <string>

#include "core/files/booking_values.h"
#include "core/files/name_folding.h"

namespace leadline {
namespace {

/// Somebody a row is compared with.
struct Known {
    FoldedName name;
    std::optional<Date> birth_date;
    BookingDuplicate who;
};

/// Those seen so far, found by what may make two of them one.
class Register {
public:
    explicit Register(std::size_t expected) { known_.reserve(expected); }

    void add(Known known, const std::string& email, const std::string& phone) {
        const std::size_t at = known_.size();
        if (known.birth_date) by_birth_[to_text(*known.birth_date)].push_back(at);
        by_name_[known.name.sorted].push_back(at);
        if (!email.empty()) by_email_.emplace(email, at);
        if (!phone.empty()) by_phone_.emplace(phone, at);
        known_.push_back(std::move(known));
    }

    [[nodiscard]] std::optional<BookingDuplicate> find(const FoldedName& name,
                                                       const std::optional<Date>& birth_date,
                                                       const std::string& email,
                                                       const std::string& phone) {
        if (birth_date) {
            if (const auto* found = born_then(name, *birth_date)) {
                return because(*found, DuplicateReason::birth_and_name);
            }
        }
        if (const auto* found = called_so(name, birth_date)) {
            return because(*found, DuplicateReason::same_name);
        }
        for (const auto& [index, key] : {std::pair(&by_email_, &email), {&by_phone_, &phone}}) {
            const auto found = key->empty() ? index->end() : index->find(*key);
            if (found == index->end()) continue;
            return because(known_[found->second], DuplicateReason::same_contact);
        }
        return std::nullopt;
    }

private:
    static BookingDuplicate because(const Known& known, DuplicateReason reason) {
        BookingDuplicate duplicate = known.who;
        duplicate.reason = reason;
        return duplicate;
    }

    [[nodiscard]] const Known* born_then(const FoldedName& name, Date birth_date) {
        const auto named = by_name_.find(name.sorted);
        if (named != by_name_.end() && !name.sorted.empty()) {
            for (const std::size_t at : named->second) {
                if (known_[at].birth_date == birth_date) return &known_[at];
            }
        }
        const auto found = by_birth_.find(to_text(birth_date));
        if (found == by_birth_.end()) return nullptr;
        for (const std::size_t at : found->second) {
            if (!maybe_near_names(known_[at].name, name)) continue;
            if (close_looks_ == most_close_looks) return nullptr;
            ++close_looks_;
            if (near_names(known_[at].name, name)) return &known_[at];
        }
        return nullptr;
    }

    [[nodiscard]] const Known* called_so(const FoldedName& name,
                                         const std::optional<Date>& birth_date) const {
        const auto found = by_name_.find(name.sorted);
        if (found == by_name_.end() || name.sorted.empty()) return nullptr;
        for (const std::size_t at : found->second) {
            if (!birth_date || !known_[at].birth_date) return &known_[at];
        }
        return nullptr;
    }

    int close_looks_ = 0;
    std::vector<Known> known_;
    std::map<std::string, std::vector<std::size_t>> by_birth_;
    std::map<std::u32string, std::vector<std::size_t>> by_name_;
    std::map<std::string, std::size_t> by_email_;
    std::map<std::string, std::size_t> by_phone_;
};

std::string email_key(const std::string& email) {
    return looks_like_email(email) ? folded_text(email) : std::string();
}

}  // namespace

void mark_duplicates(std::vector<BookingRow>& rows, const Session& session) {
    Register seen(session.guests.size() + rows.size());
    for (const Guest& guest : session.guests) {
        seen.add({folded_name(guest.name), guest.birth_date,
                  {DuplicateReason::same_name, guest.id, 0, guest.name}},
                 email_key(guest.email), phone_key(guest.phone));
    }
    for (BookingRow& row : rows) {
        const FoldedName name = folded_name(row.guest.name);
        const std::string email = email_key(row.guest.email);
        const std::string phone = phone_key(row.guest.phone);
        row.duplicate = seen.find(name, row.guest.birth_date, email, phone);
        seen.add({name, row.guest.birth_date,
                  {DuplicateReason::same_name, std::nullopt, row.line, row.guest.name}},
                 email, phone);
    }
}

}  // namespace leadline
