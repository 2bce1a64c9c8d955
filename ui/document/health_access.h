// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <string>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/health_entry.h"
#include "core/planning/ids.h"

class QWidget;

namespace leadline {

/// How tabs reach what is sealed about the guests of the open session. They never hold more of it
/// than what they show, and let it go when the vault locks.
class HealthAccess : public QObject {
    Q_OBJECT
public:
    enum class State {
        not_kept,    ///< the session is not in the records: nothing can be sealed
        not_set_up,  ///< no vault has been made yet
        locked,
        open,
    };
    using QObject::QObject;

    [[nodiscard]] virtual State state() const = 0;
    /// Asks for what is missing (set-up, passphrase) in a dialog. Returns whether the vault is open.
    virtual bool ask_to_open(QWidget* parent) = 0;
    virtual void lock() = 0;
    /// Seals one record for a guest of the open session. Earlier ones of the kind stay as history.
    virtual Result<Done> put(const GuestId& guest, HealthKind kind, const std::string& content) = 0;
    /// Newest first. Every opening is written to the audit trail; a locked vault is an error.
    virtual Result<std::vector<HealthEntry>> open(const GuestId& guest, HealthKind kind) = 0;
    /// How many sealed records there are of a kind; needs no unlocking.
    [[nodiscard]] virtual int count(const GuestId& guest, HealthKind kind) const = 0;

Q_SIGNALS:
    void state_changed();
};

}  // namespace leadline
