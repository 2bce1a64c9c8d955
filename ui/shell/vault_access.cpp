// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/vault_access.h"

#include <algorithm>
#include <utility>

#include "core/records/waiting_answers.h"
#include "ui/document/session_document.h"
#include "ui/shell/record_keeper.h"
#include "ui/shell/vault_set_up_dialog.h"
#include "ui/shell/vault_unlock_dialog.h"
#include "ui/widgets/background_job.h"
#include "ui/words/vault_words.h"

namespace leadline {
namespace {

/// Under which name the keyring keeps the key of a vault.
QString keyring_entry(const QByteArray& vault_id) {
    return QStringLiteral("health-vault-") + QString::fromLatin1(vault_id.toHex());
}

Error no_records() {
    return Error{ErrorCode::not_found, "records", {}, {}};
}

}  // namespace

VaultAccess::VaultAccess(SessionDocument& document, RecordKeeper& keeper, QObject* parent)
    : HealthAccess(parent),
      document_(document),
      keeper_(keeper),
      keyring_(std::make_unique<DesktopKeyring>()) {
    attach();
    connect(&keeper_, &RecordKeeper::about_to_close, this, &VaultAccess::detach);
    connect(&keeper_, &RecordKeeper::database_changed, this, &VaultAccess::attach);
    connect(&keeper_, &RecordKeeper::kept_changed, this, &VaultAccess::refresh);
    connect(&keeper_, &RecordKeeper::saved, this, &VaultAccess::refresh);
    told_ = state();
    told_vault_ = vault_state();
}

VaultAccess::~VaultAccess() {
    keeper_.set_health_store(nullptr);
}

void VaultAccess::attach() {
    detach();
    if (keeper_.database() == nullptr) return;
    vault_ = std::make_unique<Vault>(*keeper_.database());
    store_ = std::make_unique<HealthStore>(*keeper_.database(), *vault_);
    keeper_.set_health_store(store_.get());
    refresh();
}

void VaultAccess::detach() {
    if (!vault_) return;
    vault_->lock();
    keeper_.set_health_store(nullptr);
    store_.reset();
    vault_.reset();
    refresh();
}

void VaultAccess::seal_what_waits() {
    if (!vault_ || !vault_->is_open()) return;
    // What cannot be sealed now waits for the next unlock; nothing is lost.
    const Result<int> sealed = seal_waiting_answers(*keeper_.database(), *store_);
    if (sealed && *sealed > 0) Q_EMIT waiting_sealed(*sealed);
}

std::optional<std::vector<SealedText>> VaultAccess::read_all(qint64 person) {
    if (!vault_ || !vault_->is_open()) return std::nullopt;
    std::vector<SealedText> texts;
    for (const HealthKind kind : {HealthKind::screening, HealthKind::physician_note,
                                  HealthKind::emergency_contact, HealthKind::signature}) {
        const Result<int> count = store_->count(person, kind);
        if (!count) return std::nullopt;
        if (*count == 0) continue;
        if (!store_->note_export(person, kind)) return std::nullopt;
        Result<std::vector<HealthEntry>> entries = store_->open(person, kind);
        if (!entries) return std::nullopt;
        for (const HealthEntry& entry : *entries) {
            texts.push_back({label(kind), QString::fromStdString(entry.made_at),
                             QString::fromStdString(entry.content)});
        }
    }
    return texts;
}

HealthAccess::State VaultAccess::vault_state() const {
    if (!vault_) return State::not_kept;
    if (vault_->is_open()) return State::open;
    return vault_->is_set_up().value_or(false) ? State::locked : State::not_set_up;
}

HealthAccess::State VaultAccess::state() const {
    const bool kept = keeper_.is_kept() && keeper_.current_row().has_value();
    return kept ? vault_state() : State::not_kept;
}

void VaultAccess::refresh() {
    const State now = state();
    const State vault_now = vault_state();
    if (told_ == now && told_vault_ == vault_now) return;
    told_ = now;
    told_vault_ = vault_now;
    Q_EMIT state_changed();
}

bool VaultAccess::ask_to_open(QWidget* parent) {
    if (state() == State::not_set_up) {
        VaultSetUpDialog(*this, parent).exec();
    } else if (state() == State::locked) {
        VaultUnlockDialog(*this, parent).exec();
    }
    return state() == State::open;
}

void VaultAccess::lock() {
    if (vault_) vault_->lock();
    refresh();
}

Result<qint64> VaultAccess::person_of(const GuestId& guest) const {
    if (!store_ || !keeper_.is_kept() || !keeper_.current_row()) return no_records();
    return store_->person_of(*keeper_.current_row(), guest);
}

Result<Done> VaultAccess::put(const GuestId& guest, HealthKind kind, const std::string& content) {
    const Result<qint64> person = person_of(guest);
    if (!person) return person.error();
    const Result<qint64> row = store_->put(*person, keeper_.current_row(), kind, content);
    if (!row) return row.error();
    return Done{};
}

Result<std::vector<HealthEntry>> VaultAccess::open(const GuestId& guest, HealthKind kind) {
    const Result<qint64> person = person_of(guest);
    if (!person) return person.error();
    return store_->open(*person, kind);
}

int VaultAccess::count(const GuestId& guest, HealthKind kind) const {
    const Result<qint64> person = person_of(guest);
    return person ? store_->count(*person, kind).value_or(0) : 0;
}

bool VaultAccess::has_way(VaultWay way) const {
    if (!vault_) return false;
    const std::vector<VaultWay> ways = vault_->ways().value_or({});
    return std::find(ways.begin(), ways.end(), way) != ways.end();
}

QString VaultAccess::records_path() const {
    return keeper_.database_path();
}

QStringList VaultAccess::staff_names() const {
    QStringList names;
    const Session& session = document_.session();
    for (const StaffMember& member : session.staff) {
        const QString name = QString::fromStdString(member.name).trimmed();
        if (name.isEmpty() || names.contains(name)) continue;
        if (member.id == session.leader) {
            names.prepend(name);
        } else {
            names.append(name);
        }
    }
    return names;
}

void VaultAccess::make(SecretBytes passphrase, QObject* context, Made made) {
    shield_process_memory();
    BackgroundJob::once(
        context,
        [passphrase = std::move(passphrase), cost = cost_](const GoOn&) {
            return make_vault(VaultWay::passphrase, passphrase, cost);
        },
        std::move(made));
}

void VaultAccess::make_with_keyring(QObject* context, Made made) {
    const SecretBytes key = SecretBytes::random(key_size);
    auto vault = std::make_shared<Result<NewVault>>(make_vault(VaultWay::keyring, key, cost_));
    if (!*vault) {
        made(vault->error());
        return;
    }
    keyring_->write(keyring_entry((*vault)->vault_id), key, context,
                    [vault, made = std::move(made)](const Result<Done>& written) {
                        if (written) {
                            made(std::move(*vault));
                        } else {
                            made(written.error());
                        }
                    });
}

void VaultAccess::forget_keyring_key(const QByteArray& vault_id) {
    // If the keyring refuses, a key is left that opens nothing.
    keyring_->remove(keyring_entry(vault_id), this, [](const Result<Done>&) {});
}

Result<Done> VaultAccess::keep(NewVault made, const QString& who) {
    if (!vault_) return no_records();
    Result<Done> done = vault_->set_up(std::move(made), who.toStdString());
    seal_what_waits();
    refresh();
    return done;
}

void VaultAccess::unlock(SecretBytes passphrase, const QString& who, QObject* context,
                         Finished finished) {
    Result<WrappedKey> wrapped = vault_ ? vault_->begin_try(VaultWay::passphrase) : no_records();
    if (!wrapped) {
        finished(wrapped.error());
        return;
    }
    BackgroundJob::once(
        context,
        [wrapped = std::move(*wrapped), passphrase = std::move(passphrase)](const GoOn&) {
            return unwrap(wrapped, passphrase);
        },
        [this, who, finished = std::move(finished)](Result<SecretBytes> key) {
            // The records may have been closed meanwhile.
            Result<Done> done = vault_ ? vault_->finish_try(VaultWay::passphrase, std::move(key),
                                                            who.toStdString())
                                       : no_records();
            seal_what_waits();
            refresh();
            finished(std::move(done));
        });
}

void VaultAccess::unlock_with_keyring(const QString& who, QObject* context, Finished finished) {
    if (!vault_) {
        finished(no_records());
        return;
    }
    keyring_->read(keyring_entry(vault_->identity().value_or({})), context,
                   [this, who, finished = std::move(finished)](const Result<SecretBytes>& key) {
                       if (!key) {
                           finished(key.error());
                           return;
                       }
                       Result<Done> done =
                           vault_ ? vault_->open_with_keyring_key(*key, who.toStdString())
                                  : no_records();
                       seal_what_waits();
                       refresh();
                       finished(std::move(done));
                   });
}

Result<Done> VaultAccess::unlock_with_recovery_key(const SecretBytes& typed, const QString& who) {
    if (!vault_) return no_records();
    Result<Done> done = vault_->open_with_recovery_key(typed.view(), who.toStdString());
    seal_what_waits();
    refresh();
    return done;
}

void VaultAccess::change_passphrase(SecretBytes old_passphrase, SecretBytes new_passphrase,
                                    QObject* context, Finished finished) {
    if (const Result<Done> fits = check_passphrase(new_passphrase.view()); !fits) {
        finished(fits);
        return;
    }
    Result<WrappedKey> wrapped = vault_ ? vault_->begin_try(VaultWay::passphrase) : no_records();
    if (!wrapped) {
        finished(wrapped.error());
        return;
    }
    BackgroundJob::once(
        context,
        [wrapped = std::move(*wrapped), old_passphrase = std::move(old_passphrase),
         new_passphrase = std::move(new_passphrase),
         cost = cost_](const GoOn&) { return rewrap(wrapped, old_passphrase, new_passphrase, cost); },
        [this, finished = std::move(finished)](Result<WrappedKey> rewrapped) {
            if (!vault_) return finished(no_records());
            const std::string who = vault_->who();
            finished(vault_->change_passphrase(std::move(rewrapped), who));
        });
}

void VaultAccess::add_passphrase(SecretBytes passphrase, QObject* context, Finished finished) {
    Result<SecretBytes> data_key = vault_ ? vault_->data_key_to_wrap() : no_records();
    if (!data_key) {
        finished(data_key.error());
        return;
    }
    BackgroundJob::once(
        context,
        [data_key = std::move(*data_key), passphrase = std::move(passphrase), cost = cost_,
         vault_id = vault_->opened_identity()](const GoOn&) {
            return wrap(data_key, VaultWay::passphrase, passphrase, vault_id, cost);
        },
        [this, finished = std::move(finished)](const Result<WrappedKey>& wrapped) {
            if (!vault_) return finished(no_records());
            if (wrapped) {
                finished(vault_->add_way(*wrapped));
            } else {
                finished(wrapped.error());
            }
        });
}

Result<Done> VaultAccess::replace_recovery_key(const SecretBytes& key) {
    if (!vault_) return no_records();
    return vault_->add_way(VaultWay::recovery, key, {});
}

}  // namespace leadline
