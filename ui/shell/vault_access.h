// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <functional>
#include <memory>
#include <optional>

#include "core/records/health_store.h"
#include "core/records/vault.h"
#include "ui/document/health_access.h"
#include "ui/shell/guest_file.h"
#include "ui/shell/keyring.h"

namespace leadline {

class RecordKeeper;
class SessionDocument;

/// The vault of the records for the window and its tabs. Long work (stretching a passphrase) runs
/// in another thread; its outcome comes to `finished`, unless the context is gone: then a try that
/// was begun has counted as a wrong one.
class VaultAccess final : public HealthAccess {
    Q_OBJECT
public:
    using Finished = std::function<void(Result<Done>)>;
    using Made = std::function<void(Result<NewVault>)>;

    VaultAccess(SessionDocument& document, RecordKeeper& keeper, QObject* parent = nullptr);
    ~VaultAccess() override;

    [[nodiscard]] State state() const override;
    bool ask_to_open(QWidget* parent) override;
    void lock() override;
    Result<Done> put(const GuestId& guest, HealthKind kind, const std::string& content) override;
    Result<std::vector<HealthEntry>> open(const GuestId& guest, HealthKind kind) override;
    [[nodiscard]] int count(const GuestId& guest, HealthKind kind) const override;

    /// The state of the vault itself, whether or not the open session is kept. `not_kept` when
    /// there are no records at all.
    [[nodiscard]] State vault_state() const;
    /// For the dialogs; nullptr when there are no records.
    [[nodiscard]] Vault* vault() const { return vault_.get(); }
    [[nodiscard]] HealthStore* store() const { return store_.get(); }
    [[nodiscard]] bool has_way(VaultWay way) const;
    /// The file of the records.
    [[nodiscard]] QString records_path() const;
    /// Names of the session's staff, its leader first.
    [[nodiscard]] QStringList staff_names() const;

    /// Replaced in tests.
    void set_keyring(std::unique_ptr<Keyring> keyring) { keyring_ = std::move(keyring); }
    void set_cost(StretchingCost cost) { cost_ = cost; }

    /// Makes a vault that is not kept yet: the recovery key must be on paper first.
    void make(SecretBytes passphrase, QObject* context, Made made);
    /// The same with a key in this computer's keyring; a keyring that does not answer is an error.
    void make_with_keyring(QObject* context, Made made);
    /// Takes the entry out of the keyring again, when its vault was not kept.
    void forget_keyring_key(const QByteArray& vault_id);
    Result<Done> keep(NewVault made, const QString& who);

    void unlock(SecretBytes passphrase, const QString& who, QObject* context, Finished finished);
    void unlock_with_keyring(const QString& who, QObject* context, Finished finished);
    Result<Done> unlock_with_recovery_key(const SecretBytes& typed, const QString& who);
    void change_passphrase(SecretBytes old_passphrase, SecretBytes new_passphrase, QObject* context,
                           Finished finished);
    /// Where there was none: needs the open vault.
    void add_passphrase(SecretBytes passphrase, QObject* context, Finished finished);
    Result<Done> replace_recovery_key(const SecretBytes& key);
    /// All sealed records of a person, for the guest's own file; the trail says that they were
    /// written out. Nothing while the vault is locked, or when one cannot be opened.
    std::optional<std::vector<SealedText>> read_all(qint64 person);
    /// Tells everybody whose state may have changed.
    void refresh();

Q_SIGNALS:
    /// Answers that an older version kept open were sealed.
    void waiting_sealed(int answers);

private:
    /// The vault lies in the records' file and goes with it.
    void attach();
    void detach();
    /// What an older schema kept open is sealed as soon as there is an open vault.
    void seal_what_waits();
    Result<qint64> person_of(const GuestId& guest) const;

    SessionDocument& document_;
    RecordKeeper& keeper_;
    std::unique_ptr<Keyring> keyring_;
    std::unique_ptr<Vault> vault_;
    std::unique_ptr<HealthStore> store_;
    StretchingCost cost_ = moderate_cost();
    std::optional<State> told_;
    std::optional<State> told_vault_;
};

}  // namespace leadline
