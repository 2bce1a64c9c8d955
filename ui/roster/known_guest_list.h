// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <vector>

#include "core/planning/session.h"
#include "core/records/guest_store.h"

class QCompleter;
class QLineEdit;
class QStandardItemModel;

namespace leadline {

using GuestFinder = std::function<std::vector<KnownGuest>(const QString&)>;

/// Offers persons on record below the line in which a new guest's name is typed.
class KnownGuestList : public QObject {
    Q_OBJECT
public:
    explicit KnownGuestList(QLineEdit& line);
    void set_finder(GuestFinder finder);
    /// Looks a typed name up and opens the list below the line; closes it when nobody is found.
    /// Those already in the session are not offered again.
    void offer(const QString& typed, const Session& session);
    void close();

Q_SIGNALS:
    void chosen(const Guest& lasting);

private:
    QLineEdit& line_;
    GuestFinder finder_;
    QCompleter* completer_;
    QStandardItemModel* model_;
    std::vector<KnownGuest> offered_;
};

}  // namespace leadline
