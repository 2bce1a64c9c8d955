// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace leadline {

/// A way to open the vault.
enum class VaultWay { passphrase, keyring, recovery };

/// What may happen to the vault and what lies in it.
enum class AuditEvent {
    vault_set_up,
    unlocked,
    unlock_failed,
    locked,
    passphrase_changed,
    way_added,
    way_removed,
    record_written,
    record_opened,
    record_exported,
    record_erased,
    record_erased_locked,  ///< with a guest who was removed; needs no key
    record_moved,  ///< to the person the guest turned out to be
    trail_broken,  ///< found when the vault was opened
};

/// What is wrong with a trail.
enum class AuditFault {
    entry_changed,        ///< an entry does not fit its hash
    entry_missing,        ///< a number is left out
    end_cut,              ///< fewer entries than were sealed
    head_replaced,        ///< the sealed end is not the one that stands there
    seal_wrong,           ///< the seal is missing, or was not made with the vault's key
    written_without_key,  ///< an entry after the seal that only an open vault makes
    found_earlier,        ///< the trail was found broken before, and says so
};

}  // namespace leadline
