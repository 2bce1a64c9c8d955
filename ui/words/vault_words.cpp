// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/vault_words.h"

#include <QCoreApplication>

#include "core/records/names.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class VaultTexts {
    Q_DECLARE_TR_FUNCTIONS(VaultWords)
};

QString label(VaultWay way) {
    switch (way) {
        case VaultWay::passphrase:
            return VaultTexts::tr("Passphrase");
        case VaultWay::keyring:
            return VaultTexts::tr("Keyring");
        case VaultWay::recovery:
            return VaultTexts::tr("Recovery key");
    }
    return {};
}

QString label(AuditEvent event) {
    switch (event) {
        case AuditEvent::vault_set_up:
            return VaultTexts::tr("Set the vault up");
        case AuditEvent::unlocked:
            return VaultTexts::tr("Unlocked");
        case AuditEvent::unlock_failed:
            return VaultTexts::tr("Failed to unlock");
        case AuditEvent::locked:
            return VaultTexts::tr("Locked");
        case AuditEvent::passphrase_changed:
            return VaultTexts::tr("Changed the passphrase");
        case AuditEvent::way_added:
            return VaultTexts::tr("Set a way to unlock");
        case AuditEvent::way_removed:
            return VaultTexts::tr("Removed a way to unlock");
        case AuditEvent::record_written:
            return VaultTexts::tr("Wrote a record");
        case AuditEvent::record_opened:
            return VaultTexts::tr("Opened a record");
        case AuditEvent::record_exported:
            return VaultTexts::tr("Exported records");
        case AuditEvent::record_erased:
            return VaultTexts::tr("Erased a record");
        case AuditEvent::record_erased_locked:
            return VaultTexts::tr("Erased a record without the vault's key");
        case AuditEvent::record_moved:
            return VaultTexts::tr("Moved a record to this guest");
        case AuditEvent::trail_broken:
            return VaultTexts::tr("Found this list broken");
    }
    return {};
}

}  // namespace

QString label(HealthKind kind) {
    switch (kind) {
        case HealthKind::screening:
            return VaultTexts::tr("Screening answers");
        case HealthKind::physician_note:
            return VaultTexts::tr("Physician's note");
        case HealthKind::emergency_contact:
            return VaultTexts::tr("Emergency contact");
        case HealthKind::signature:
            return VaultTexts::tr("Signature");
    }
    return {};
}

QString audit_event_words(const std::string& stored_event) {
    const auto event = from_stored_name<AuditEvent>(stored_event);
    return event ? label(*event) : QString::fromStdString(stored_event);
}

QString audit_detail_words(const std::string& stored_detail) {
    // "screening from 12": the kind is the first word.
    const std::string word = stored_detail.substr(0, stored_detail.find(' '));
    if (const auto kind = from_stored_name<HealthKind>(word)) return label(*kind);
    if (const auto way = from_stored_name<VaultWay>(word)) return label(*way);
    if (from_stored_name<AuditFault>(word) && word.size() < stored_detail.size()) {
        return VaultTexts::tr("at entry %1")
            .arg(QString::fromStdString(stored_detail.substr(word.size() + 1)));
    }
    return QString::fromStdString(stored_detail);
}

QString audit_fault_words(AuditFault fault, long long number) {
    const QString at = QString::number(number);
    switch (fault) {
        case AuditFault::entry_changed:
            return VaultTexts::tr("Broken at entry %1: it was changed outside Leadline.").arg(at);
        case AuditFault::entry_missing:
            return VaultTexts::tr("Broken at entry %1: it is missing.").arg(at);
        case AuditFault::end_cut:
            return VaultTexts::tr("Broken at entry %1: it and what came after were cut off.")
                .arg(at);
        case AuditFault::head_replaced:
            return VaultTexts::tr("Broken: entries up to %1 were written anew outside Leadline.")
                .arg(at);
        case AuditFault::seal_wrong:
            return VaultTexts::tr("Broken at entry %1: the seal over the list is missing or false.")
                .arg(at);
        case AuditFault::written_without_key:
            return VaultTexts::tr("Broken at entry %1: it was not written by an open vault.")
                .arg(at);
        case AuditFault::found_earlier:
            return VaultTexts::tr("This list was found broken before: see entry %1.").arg(at);
    }
    return {};
}

}  // namespace leadline
