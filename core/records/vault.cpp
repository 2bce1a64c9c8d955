// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/vault.h"

#include <QString>
#include <algorithm>
#include <cstdint>
#include <utility>

#include "core/records/statement.h"

namespace leadline {

namespace {

constexpr int identity_size = 16;
constexpr qint64 longest_wait_s = 300;

Error error_of(ErrorCode code, std::string place = {}) {
    return Error{code, std::move(place), {}, {}};
}

Error no_such_way(VaultWay way) {
    return error_of(ErrorCode::not_found, std::string(stored_name(way)));
}

/// What a wrapped key is bound to: all that stands beside it.
QByteArray binding_of(const WrappedKey& wrapped) {
    return Fields("leadline vault_keys 1")
        .add(wrapped.vault_id)
        .add(stored_name(wrapped.way))
        .add(wrapped.salt)
        .add(wrapped.cost.passes)
        .add(wrapped.cost.memory_bytes)
        .bytes();
}

/// The key that wraps. What has at least 160 random bits needs no stretching.
Result<SecretBytes> wrapping_key(const WrappedKey& wrapped, const SecretBytes& secret) {
    if (wrapped.way == VaultWay::passphrase) {
        return stretched(secret.view(), wrapped.salt, wrapped.cost);
    }
    if (secret.size() < recovery_key_size || secret.size() > key_size) {
        return error_of(ErrorCode::vault_wrong_key, std::string(stored_name(wrapped.way)));
    }
    return derived_key(
        secret,
        Fields("leadline wrapping key 1").add(stored_name(wrapped.way)).add(wrapped.salt).bytes());
}

struct Tries {
    qint64 failed = 0;
    qint64 last_at_s = 0;
};

Result<Tries> read_tries(const QSqlDatabase& database) {
    const auto tries =
        Statement(database, u"SELECT failed, last_at_s FROM vault_tries"_qs).first([](Row& row) {
            return Tries{row.number(), row.number()};
        });
    if (!tries) return tries.error();
    return tries->value_or(Tries{});
}

Result<Done> write_tries(const QSqlDatabase& database, Tries tries) {
    return Statement(database,
                     u"INSERT OR REPLACE INTO vault_tries (id, failed, last_at_s) "
                     "VALUES (1, ?, ?)"_qs)
        .run(tries.failed, tries.last_at_s);
}

qint64 wait_after(qint64 failed) {
    constexpr qint64 doublings = 9;  // 2^9 is past the longest
    if (failed <= 0) return 0;
    return std::min(qint64(1) << std::min(failed - 1, doublings), longest_wait_s);
}

int left_to_wait(Tries tries, qint64 now) {
    const qint64 wait = wait_after(tries.failed);
    const qint64 passed = std::max<qint64>(now - tries.last_at_s, 0);
    return int(std::max<qint64>(wait - passed, 0));
}

Result<std::optional<QByteArray>> read_identity(const QSqlDatabase& database) {
    return Statement(database, u"SELECT vault_id FROM vault"_qs).first([](Row& row) {
        return row.bytes();
    });
}

Result<WrappedKey> read_way(const QSqlDatabase& database, VaultWay way) {
    const auto identity = read_identity(database);
    if (!identity) return identity.error();
    if (!*identity) return error_of(ErrorCode::vault_not_set_up);
    const auto read = [&](Row& row) {
        WrappedKey wrapped{way, **identity, row.bytes(), {}, {}};
        wrapped.cost.passes = row.number();
        wrapped.cost.memory_bytes = row.number();
        wrapped.key.nonce = row.bytes();
        wrapped.key.bytes = row.bytes();
        return wrapped;
    };
    auto found = Statement(database,
                           u"SELECT salt, passes, memory_bytes, nonce, wrapped "
                           "FROM vault_keys WHERE way = ?"_qs)
                     .first(read, way);
    if (!found) return found.error();
    if (!*found) return no_such_way(way);
    return std::move(**found);
}

Result<Done> write_identity(const QSqlDatabase& database, const QByteArray& vault_id,
                            const std::string& made_at) {
    return Statement(database, u"INSERT INTO vault (id, vault_id, made_at) VALUES (1, ?, ?)"_qs)
        .run(vault_id, made_at);
}

}  // namespace

Result<Done> check_passphrase(std::string_view utf8) {
    // Characters, as people count them: bytes that go on with one are left out.
    const auto length = std::count_if(utf8.begin(), utf8.end(), [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xc0U) != 0x80U;
    });
    if (length >= least_passphrase && length <= most_passphrase) return Done{};
    return Error{ErrorCode::passphrase_length,
                 {},
                 std::to_string(length),
                 std::to_string(least_passphrase) + " to " + std::to_string(most_passphrase)};
}

Result<WrappedKey> wrap(const SecretBytes& data_key, VaultWay way, const SecretBytes& secret,
                        const QByteArray& vault_id, StretchingCost cost) {
    if (way == VaultWay::passphrase) {
        if (const Result<Done> fits = check_passphrase(secret.view()); !fits) return fits.error();
    } else {
        cost = {};
    }
    WrappedKey wrapped{way, vault_id, random_bytes(salt_size), cost, {}};
    const Result<SecretBytes> key = wrapping_key(wrapped, secret);
    if (!key) return key.error();
    wrapped.key = seal(*key, data_key.view(), binding_of(wrapped));
    return wrapped;
}

Result<SecretBytes> unwrap(const WrappedKey& wrapped, const SecretBytes& secret) {
    const Result<SecretBytes> key = wrapping_key(wrapped, secret);
    if (!key) return key.error();
    Result<SecretBytes> data_key = unseal(*key, wrapped.key, binding_of(wrapped));
    if (!data_key || data_key->size() != key_size) {
        return error_of(ErrorCode::vault_wrong_key, std::string(stored_name(wrapped.way)));
    }
    return data_key;
}

Result<NewVault> make_vault(VaultWay way, const SecretBytes& secret, StretchingCost cost) {
    shield_process_memory();
    NewVault made{random_bytes(identity_size),
                  SecretBytes::random(key_size),
                  leadline::new_recovery_key(),
                  {}};
    Result<WrappedKey> chosen = wrap(made.data_key, way, secret, made.vault_id, cost);
    if (!chosen) return chosen.error();
    Result<WrappedKey> paper =
        wrap(made.data_key, VaultWay::recovery, made.recovery_key, made.vault_id, {});
    if (!paper) return paper.error();
    made.wrapped = {std::move(*chosen), std::move(*paper)};
    return made;
}

Result<WrappedKey> rewrap(const WrappedKey& old, const SecretBytes& old_passphrase,
                          const SecretBytes& new_passphrase, StretchingCost cost) {
    if (const Result<Done> fits = check_passphrase(new_passphrase.view()); !fits) {
        return fits.error();
    }
    const Result<SecretBytes> data_key = unwrap(old, old_passphrase);
    if (!data_key) return data_key.error();
    return wrap(*data_key, VaultWay::passphrase, new_passphrase, old.vault_id, cost);
}

Vault::Vault(Database& database, UtcClock clock)
    : database_(database), clock_(clock), trail_(database, std::move(clock)) {}

Vault::~Vault() {
    lock();
}

Result<bool> Vault::is_set_up() const {
    const auto identity = read_identity(database_.connection());
    if (!identity) return identity.error();
    return identity->has_value();
}

Result<std::vector<VaultWay>> Vault::ways() const {
    auto ways =
        Statement(database_.connection(), u"SELECT way FROM vault_keys"_qs).all([](Row& row) {
            return row.choice<VaultWay>();
        });
    if (ways) std::sort(ways->begin(), ways->end());
    return ways;
}

Result<QByteArray> Vault::identity() const {
    const auto identity = read_identity(database_.connection());
    if (!identity) return identity.error();
    return identity->value_or(QByteArray());
}

Result<Done> Vault::set_up(NewVault made, const std::string& who) {
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const auto identity = read_identity(database);
    if (!identity) return identity.error();
    if (*identity) return error_of(ErrorCode::vault_exists);
    const SecretBytes audit_key =
        derived_key(made.data_key, Fields("leadline audit key 1").bytes());
    Result<Done> done = write_identity(database, made.vault_id, utc_text(clock_()));
    for (const WrappedKey& wrapped : made.wrapped) {
        if (done) done = write_way(wrapped);
    }
    if (done) {
        const std::string ways(stored_name(made.wrapped.front().way));
        done = in_turn(
            [&] { return write_tries(database, {}); },
            [&] {
                return trail_.append({AuditEvent::vault_set_up, who, 0, 0, ways}, &audit_key);
            },
            [&] { return transaction->commit(); });
    }
    if (done) keep_keys(std::move(made.data_key), made.vault_id, who);
    return done;
}

void Vault::keep_keys(SecretBytes data_key, QByteArray vault_id, const std::string& who) {
    record_key_ = derived_key(data_key, Fields("leadline record key 1").bytes());
    audit_key_ = derived_key(data_key, Fields("leadline audit key 1").bytes());
    data_key_ = std::move(data_key);
    vault_id_ = std::move(vault_id);
    who_ = who;
}

Result<int> Vault::seconds_to_wait() const {
    const Result<Tries> tries = read_tries(database_.connection());
    if (!tries) return tries.error();
    return left_to_wait(*tries, clock_());
}

Result<WrappedKey> Vault::begin_try(VaultWay way) {
    shield_process_memory();
    const QSqlDatabase database = database_.connection();
    if (way != VaultWay::passphrase) return read_way(database, way);
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    Result<WrappedKey> wrapped = read_way(database, way);
    if (!wrapped) return wrapped;
    const Result<Tries> tries = read_tries(database);
    if (!tries) return tries.error();
    const qint64 now = clock_();
    if (const int seconds = left_to_wait(*tries, now); seconds > 0) {
        return Error{ErrorCode::vault_must_wait, {}, std::to_string(seconds), {}};
    }
    const Result<Done> counted = in_turn(
        [&] {
            return write_tries(database, {tries->failed + 1, now});
        },
        [&] { return transaction->commit(); });
    if (!counted) return counted.error();
    return wrapped;
}

Result<Done> Vault::note_failed_try(VaultWay way, const std::string& who) {
    Result<Transaction> transaction = Transaction::begin_writing(database_.connection());
    if (!transaction) return transaction.error();
    const std::string name(stored_name(way));
    return in_turn(
        [&] {
            return trail_.append({AuditEvent::unlock_failed, who, 0, 0, name}, audit_key());
        },
        [&] { return transaction->commit(); });
}

Result<Done> Vault::finish_try(VaultWay way, Result<SecretBytes> data_key, const std::string& who) {
    if (!data_key) {
        if (data_key.error().code == ErrorCode::vault_wrong_key) {
            const Result<Done> noted = note_failed_try(way, who);
            if (!noted) return noted;
        }
        return data_key.error();
    }
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const auto identity = read_identity(database);
    if (!identity) return identity.error();
    if (!*identity) return error_of(ErrorCode::vault_not_set_up);
    const SecretBytes audit_key = derived_key(*data_key, Fields("leadline audit key 1").bytes());
    const std::string name(stored_name(way));
    Result<Done> done =
        in_turn([&] { return write_tries(database, {}); },
                [&] { return trail_.note_faults(who, audit_key); },
                [&] {
                    return trail_.append({AuditEvent::unlocked, who, 0, 0, name}, &audit_key);
                },
                [&] { return transaction->commit(); });
    if (done) keep_keys(std::move(*data_key), **identity, who);
    return done;
}

Result<Done> Vault::open(VaultWay way, const SecretBytes& secret, const std::string& who) {
    const Result<WrappedKey> wrapped = begin_try(way);
    if (!wrapped) return wrapped.error();
    return finish_try(way, unwrap(*wrapped, secret), who);
}

Result<Done> Vault::open_with_passphrase(const SecretBytes& passphrase, const std::string& who) {
    return open(VaultWay::passphrase, passphrase, who);
}

Result<Done> Vault::open_with_keyring_key(const SecretBytes& key, const std::string& who) {
    return open(VaultWay::keyring, key, who);
}

Result<Done> Vault::open_with_recovery_key(std::string_view typed, const std::string& who) {
    const Result<SecretBytes> key = read_recovery_key(typed);
    if (!key) return key.error();
    return open(VaultWay::recovery, *key, who);
}

void Vault::lock() {
    if (!is_open()) return;
    if (Result<Transaction> transaction = Transaction::begin_writing(database_.connection());
        transaction) {
        static_cast<void>(
            in_turn(
                [&] {
                    return trail_.append({AuditEvent::locked, who_, 0, 0, {}}, &audit_key_);
                },
                [&] { return transaction->commit(); })
                .has_value());
    }
    data_key_.wipe();
    record_key_.wipe();
    audit_key_.wipe();
    vault_id_.clear();
    who_.clear();
}

Result<Done> Vault::write_way(const WrappedKey& wrapped) {
    return Statement(database_.connection(),
                     u"INSERT OR REPLACE INTO vault_keys (way, salt, passes, memory_bytes, nonce, "
                     "wrapped, made_at) VALUES (?, ?, ?, ?, ?, ?, ?)"_qs)
        .run(wrapped.way, wrapped.salt, wrapped.cost.passes, wrapped.cost.memory_bytes,
             wrapped.key.nonce, wrapped.key.bytes, utc_text(clock_()));
}

Result<Done> Vault::change_ways(AuditEvent event, const WrappedKey& wrapped,
                                const std::string& who) {
    Result<Transaction> transaction = Transaction::begin_writing(database_.connection());
    if (!transaction) return transaction.error();
    const std::string name(stored_name(wrapped.way));
    return in_turn([&] { return write_way(wrapped); },
                   [&] {
                       return trail_.append({event, who, 0, 0, name}, audit_key());
                   },
                   [&] { return transaction->commit(); });
}

Result<Done> Vault::change_passphrase(Result<WrappedKey> rewrapped, const std::string& who) {
    if (!is_open()) return error_of(ErrorCode::vault_locked);
    if (!rewrapped) {
        if (rewrapped.error().code == ErrorCode::vault_wrong_key) {
            const Result<Done> noted = note_failed_try(VaultWay::passphrase, who);
            if (!noted) return noted;
        }
        return rewrapped.error();
    }
    return in_turn([&] { return write_tries(database_.connection(), {}); },
                   [&] { return change_ways(AuditEvent::passphrase_changed, *rewrapped, who); });
}

Result<Done> Vault::change_passphrase(const SecretBytes& old_passphrase,
                                      const SecretBytes& new_passphrase, StretchingCost cost,
                                      const std::string& who) {
    if (!is_open()) return error_of(ErrorCode::vault_locked);
    if (const Result<Done> fits = check_passphrase(new_passphrase.view()); !fits) return fits;
    const Result<WrappedKey> old = begin_try(VaultWay::passphrase);
    if (!old) return old.error();
    return change_passphrase(rewrap(*old, old_passphrase, new_passphrase, cost), who);
}

Result<SecretBytes> Vault::data_key_to_wrap() const {
    if (!is_open()) return error_of(ErrorCode::vault_locked);
    return data_key_.clone();
}

Result<Done> Vault::add_way(VaultWay way, const SecretBytes& secret, StretchingCost cost) {
    if (!is_open()) return error_of(ErrorCode::vault_locked);
    const Result<WrappedKey> wrapped = wrap(data_key_, way, secret, vault_id_, cost);
    if (!wrapped) return wrapped.error();
    return add_way(*wrapped);
}

Result<Done> Vault::add_way(const WrappedKey& wrapped) {
    if (!is_open()) return error_of(ErrorCode::vault_locked);
    return change_ways(AuditEvent::way_added, wrapped, who_);
}

Result<Done> Vault::remove_way(VaultWay way) {
    if (!is_open()) return error_of(ErrorCode::vault_locked);
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const Result<std::vector<VaultWay>> present = ways();
    if (!present) return present.error();
    const std::string name(stored_name(way));
    if (std::find(present->begin(), present->end(), way) == present->end()) return no_such_way(way);
    if (present->size() == 1) return error_of(ErrorCode::vault_last_way, name);
    return in_turn(
        [&] { return Statement(database, u"DELETE FROM vault_keys WHERE way = ?"_qs).run(way); },
        [&] {
            return trail_.append({AuditEvent::way_removed, who_, 0, 0, name}, &audit_key_);
        },
        [&] { return transaction->commit(); });
}

Result<SecretBytes> Vault::new_recovery_key() {
    if (!is_open()) return error_of(ErrorCode::vault_locked);
    SecretBytes key = leadline::new_recovery_key();
    const Result<Done> added = add_way(VaultWay::recovery, key, {});
    if (!added) return added.error();
    return key;
}

const SecretBytes* Vault::record_key() const {
    return is_open() ? &record_key_ : nullptr;
}

const SecretBytes* Vault::audit_key() const {
    return is_open() ? &audit_key_ : nullptr;
}

}  // namespace leadline
