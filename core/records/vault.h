// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/physics/result.h"
#include "core/records/audit_trail.h"
#include "core/records/database.h"
#include "core/records/recovery_key.h"
#include "core/records/sealing.h"
#include "core/records/vault_names.h"

// One random data key seals all that is kept sealed. It stands in the records only wrapped, once
// for each way to open the vault, so that a passphrase can be changed without sealing anything
// anew.
//
// Stretching a passphrase takes about a second and must not hold up the window. So opening is in
// three parts: begin_try() reads from the records, unwrap() works on values and may run in any
// thread, finish_try() is back in the records' thread.

namespace leadline {

/// A passphrase's length in characters. Long and free rather than short and decorated: no sorts of
/// signs are asked for (Grassi and others, Digital Identity Guidelines: Authentication and
/// Lifecycle Management, NIST SP 800-63B, 2017, section 5.1.1, from memory; it asks for 8, and this
/// guards a file that can be guessed at without us). The upper end only keeps mistakes out.
inline constexpr int least_passphrase = 12;
inline constexpr int most_passphrase = 256;
/// @returns passphrase_length, without the passphrase
Result<Done> check_passphrase(std::string_view utf8);

/// The data key, wrapped for one way.
struct WrappedKey {
    VaultWay way{};
    QByteArray vault_id;
    QByteArray salt;
    StretchingCost cost;  ///< zeroes where nothing is stretched
    Sealed key;
};

/// Wraps a data key. Long work for a passphrase, see stretched().
/// @param secret  a passphrase in UTF-8, a recovery key, or a key of `key_size` bytes for a keyring
Result<WrappedKey> wrap(const SecretBytes& data_key, VaultWay way, const SecretBytes& secret,
                        const QByteArray& vault_id, StretchingCost cost);

/// The data key. Long work for a passphrase.
/// @returns vault_wrong_key with the way as place; key_stretching_failed
Result<SecretBytes> unwrap(const WrappedKey& wrapped, const SecretBytes& secret);

/// A vault that is not in the records yet.
struct NewVault {
    QByteArray vault_id;
    SecretBytes data_key;
    SecretBytes recovery_key;         ///< for the paper
    std::vector<WrappedKey> wrapped;  ///< by the way chosen, and by the recovery key
};

/// Makes one. Long work for a passphrase. @returns passphrase_length; key_stretching_failed
Result<NewVault> make_vault(VaultWay way, const SecretBytes& secret, StretchingCost cost);

/// The same data key wrapped for a new passphrase, or the failure of unwrap() or wrap(). Long work.
Result<WrappedKey> rewrap(const WrappedKey& old, const SecretBytes& old_passphrase,
                          const SecretBytes& new_passphrase, StretchingCost cost);

/// The vault of one file of records: whether it is open, and the keys while it is.
class Vault {
public:
    explicit Vault(Database& database, UtcClock clock = system_time);
    /// Locks.
    ~Vault();
    Vault(const Vault&) = delete;
    Vault& operator=(const Vault&) = delete;

    Result<bool> is_set_up() const;
    [[nodiscard]] bool is_open() const { return !data_key_.empty(); }
    /// Ways that there are, in the order of VaultWay.
    Result<std::vector<VaultWay>> ways() const;
    /// Identity of the vault, under which a keyring keeps its key; empty before it is set up.
    Result<QByteArray> identity() const;
    /// Who said to have unlocked it; empty while locked.
    [[nodiscard]] const std::string& who() const { return who_; }

    /// Puts a new vault into the records and opens it. @returns vault_exists
    Result<Done> set_up(NewVault made, const std::string& who);

    /// Seconds until a passphrase may be tried: after the first wrong one 1, then 2, 4, ... at most
    /// 300. A clock that was put back does not shorten it, nor lengthen it beyond that. It holds up
    /// who sits at this program, and nobody who has the file and a program of their own: those the
    /// cost of stretching holds up.
    Result<int> seconds_to_wait() const;
    /// What unwrap() needs. Counts a passphrase as wrong until finish_try() says otherwise, so that
    /// ending the program does not save a try.
    /// @returns vault_not_set_up; vault_must_wait; not_found for a way there is not
    Result<WrappedKey> begin_try(VaultWay way);
    /// Opens the vault with what unwrap() gave, or notes the failure, and gives it back.
    Result<Done> finish_try(VaultWay way, Result<SecretBytes> data_key, const std::string& who);

    /// The three parts in one, for who can wait. Places of errors never hold a secret.
    Result<Done> open_with_passphrase(const SecretBytes& passphrase, const std::string& who);
    Result<Done> open_with_keyring_key(const SecretBytes& key, const std::string& who);
    /// @param typed  as read from the paper. @returns recovery_key_mistyped too, which is no try
    Result<Done> open_with_recovery_key(std::string_view typed, const std::string& who);

    /// Overwrites the keys. Never fails: what cannot be noted in the trail is locked all the same.
    void lock();

    /// Puts another passphrase in place of the old one; see rewrap(). Only the wrapped key changes.
    /// The old passphrase is a try like any other: begin_try() before, and an Error here for a
    /// failed one. Needs the open vault, so that the trail is sealed over it.
    Result<Done> change_passphrase(Result<WrappedKey> rewrapped, const std::string& who);
    Result<Done> change_passphrase(const SecretBytes& old_passphrase,
                                   const SecretBytes& new_passphrase, StretchingCost cost,
                                   const std::string& who);
    /// Adds a way, or replaces its secret. Needs the open vault.
    Result<Done> add_way(VaultWay way, const SecretBytes& secret, StretchingCost cost);
    /// For the long work of add_way() elsewhere: a copy of the data key, for wrap().
    Result<SecretBytes> data_key_to_wrap() const;
    Result<Done> add_way(const WrappedKey& wrapped);
    /// @returns vault_last_way; not_found; vault_locked
    Result<Done> remove_way(VaultWay way);
    /// The old key opens nothing any more. @returns the new one, for the paper
    Result<SecretBytes> new_recovery_key();

    /// For the stores of this room, while it is open; nullptr otherwise.
    [[nodiscard]] const SecretBytes* record_key() const;
    [[nodiscard]] const SecretBytes* audit_key() const;
    [[nodiscard]] const QByteArray& opened_identity() const { return vault_id_; }
    [[nodiscard]] std::string now_text() const { return utc_text(clock_()); }
    AuditTrail& trail() { return trail_; }

private:
    void keep_keys(SecretBytes data_key, QByteArray vault_id, const std::string& who);
    Result<Done> note_failed_try(VaultWay way, const std::string& who);
    Result<Done> write_way(const WrappedKey& wrapped);
    Result<Done> change_ways(AuditEvent event, const WrappedKey& wrapped, const std::string& who);
    Result<Done> open(VaultWay way, const SecretBytes& secret, const std::string& who);

    Database& database_;
    UtcClock clock_;
    AuditTrail trail_;
    SecretBytes data_key_;
    SecretBytes record_key_;
    SecretBytes audit_key_;
    QByteArray vault_id_;
    std::string who_;
};

}  // namespace leadline
