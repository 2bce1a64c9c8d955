// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>

#include "core/records/database.h"
#include "core/records/guest_store.h"
#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "core/records/site_store.h"
#include "core/records/staff_store.h"

namespace leadline {

class SessionDocument;

/// Keeps the open session in the user's records: every edit is saved when it is made. A session that
/// came from a file (a sample, say) is not kept until the user says so.
class RecordKeeper : public QObject {
    Q_OBJECT
public:
    /// @param database  nullptr: nothing is kept (the records could not be opened)
    RecordKeeper(SessionDocument& document, std::unique_ptr<Database> database,
                 QObject* parent = nullptr);

    [[nodiscard]] bool has_database() const { return database_ != nullptr; }
    /// The records, for dialogs that work on them; nullptr where they could not be opened.
    [[nodiscard]] Database* database() const { return database_.get(); }
    [[nodiscard]] QString database_path() const;
    /// Whether edits of the open session are saved as they are made.
    [[nodiscard]] bool is_kept() const { return keeping_; }

    /// A session from a file: from now on nothing is saved.
    Result<Done> open_unkept(SessionFile file);
    /// A new session: becomes a row with its first edit.
    Result<Done> open_new(SessionFile file);
    Result<Done> open_row(SessionRow row);
    /// Puts the open session into the records and keeps it from now on.
    Result<Done> keep();

    Result<std::vector<SessionSummary>> sessions();
    Result<std::vector<SessionSummary>> sessions(int first, int count);
    [[nodiscard]] int session_count();
    /// The newest session on record, where there is one.
    std::optional<SessionRow> newest_session();
    Result<Done> remove(SessionRow row);
    std::vector<KnownGuest> find_guests(const QString& text);
    /// Dives by the logs on record of somebody of this name in the seven days before a time.
    Result<std::vector<EarlierDive>> find_dives(const std::string& name, Date date, TimeOfDay time);
    std::vector<Site> sites();
    std::optional<QString> setting(const QString& name);
    void put_setting(const QString& name, const QString& value);
    [[nodiscard]] std::optional<SessionRow> current_row() const { return row_; }

Q_SIGNALS:
    void kept_changed();
    /// Saving failed; the message says why. The window still holds everything, and the next edit
    /// tries again.
    void save_failed(const QString& message);
    void saved();

private:
    void save();
    Result<Done> open(SessionFile file, bool keeping, std::optional<SessionRow> row);

    SessionDocument& document_;
    std::unique_ptr<Database> database_;
    std::optional<SessionRow> row_;
    bool keeping_ = false;
    bool opening_ = false;
};

}  // namespace leadline
