// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <functional>

#include "core/physics/result.h"
#include "core/records/sealing.h"

namespace leadline {

/// Where the desktop keeps secrets of the user who is logged in. Answers come later, in the thread
/// of the caller, and not at all once the context is gone. Replaced in tests.
class Keyring {
public:
    using Found = std::function<void(Result<SecretBytes>)>;
    using Finished = std::function<void(Result<Done>)>;
    Keyring() = default;
    Keyring(const Keyring&) = delete;
    Keyring& operator=(const Keyring&) = delete;
    virtual ~Keyring() = default;

    /// @returns by `found`: not_found when the keyring answers and has no such entry;
    ///          keyring_failed when none answers, or the user said no
    virtual void read(const QString& entry, QObject* context, Found found) = 0;
    virtual void write(const QString& entry, const SecretBytes& secret, QObject* context,
                       Finished finished) = 0;
    virtual void remove(const QString& entry, QObject* context, Finished finished) = 0;
};

/// The desktop's own keyring, through QtKeychain. Never a plain file.
class DesktopKeyring final : public Keyring {
public:
    void read(const QString& entry, QObject* context, Found found) override;
    void write(const QString& entry, const SecretBytes& secret, QObject* context,
               Finished finished) override;
    void remove(const QString& entry, QObject* context, Finished finished) override;
};

}  // namespace leadline
