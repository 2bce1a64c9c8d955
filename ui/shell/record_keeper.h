// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>
#include <memory>
#include <optional>

#include "core/records/check_store.h"
#include "core/records/database.h"
#include "core/records/guest_store.h"
#include "core/records/session_store.h"
#include "core/records/setting_store.h"
#include "core/records/site_store.h"
#include "core/records/staff_store.h"

namespace leadline {

class HealthStore;
class SessionDocument;

/// Keeps the open session in the user's records: every edit is saved when it is made; while another
/// program holds the records, saving is tried again until it works, and the window does not wait for
/// it. A session that came from a file (a sample, say) is not kept until the user says so.
class RecordKeeper : public QObject {
    Q_OBJECT
public:
    /// @param database  nullptr: nothing is kept (the records could not be opened)
    /// @param path      where the records should be, known also when they could not be opened
    RecordKeeper(SessionDocument& document, std::unique_ptr<Database> database,
                 QObject* parent = nullptr, QString path = {});

    [[nodiscard]] bool has_database() const { return database_ != nullptr; }
    /// The records, for the health vault in them and for dialogs that work on them; nullptr where they could not be opened.
    [[nodiscard]] Database* database() const { return database_.get(); }
    [[nodiscard]] QString database_path() const;
    /// The same, kept when the records are closed or could not be opened; empty for records in memory.
    [[nodiscard]] QString wanted_path() const { return path_; }
    /// Whether edits of the open session are saved as they are made.
    [[nodiscard]] bool is_kept() const { return keeping_; }

    /// Whether the open session has edits that could not be saved yet. They stand in the window only,
    /// until another program that held the records is done, or the next edit.
    [[nodiscard]] bool has_unsaved() const { return !unsaved_.isEmpty(); }
    /// Why they could not be saved.
    [[nodiscard]] QString unsaved_reason() const { return unsaved_; }
    /// Tries again to save, and waits up to two seconds for another program.
    /// @returns whether nothing is unsaved now
    bool save_again();

    /// Closes the records, for somebody who puts another file in their place.
    /// @returns Done; or why the open session cannot be saved, and then they stay open
    Result<Done> close_records();
    /// Opens the records again after close_records(), or after they could not be opened at first.
    /// The open session, when it is kept, is read anew; when it is no longer there, the newest, else
    /// `fresh` takes its place.
    Result<Done> reopen_records(const SessionFile& fresh);

    /// A session from a file: from now on nothing is saved.
    Result<Done> open_unkept(SessionFile file);
    /// A new session: becomes a row with its first edit.
    Result<Done> open_new(SessionFile file);
    Result<Done> open_row(SessionRow row);
    /// Opens the session that is open anew, where it comes from the records and these were changed
    /// beside it. What was done before can then not be undone any more. When it cannot be read it
    /// is told, and the session in the window is not kept any more.
    void reload();
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
    /// The last health check of a guest in another session on record.
    std::optional<HealthCheck> last_check(const Guest& guest);
    /// Sessions on record from a day on, as far as the red list needs them.
    Result<std::vector<SessionToCome>> sessions_to_come(Date from);
    std::vector<Site> sites();
    std::optional<QString> setting(const QString& name);
    /// @returns whether it is kept; where not, save_failed() says why, unless there are no records
    bool put_setting(const QString& name, const QString& value);
    [[nodiscard]] std::optional<SessionRow> current_row() const { return row_; }
    /// What seals records anew when a save finds that a guest is somebody else; nullptr: nobody.
    void set_health_store(HealthStore* health) { health_ = health; }
    [[nodiscard]] HealthStore* health_store() const { return health_; }

Q_SIGNALS:
    void kept_changed();
    /// Saving failed, or another program has held the records for two seconds; the message says why,
    /// once. The window still holds everything.
    void save_failed(const QString& message);
    void saved();
    void unsaved_changed(bool unsaved);
    /// The records are about to be closed: nobody else of this program may hold them.
    void about_to_close();
    void database_changed();

private:
    /// An insert that was tried and may have been written although it seemed to fail.
    struct Attempt {
        SessionRow newest_before;
        SessionFile file;
    };
    void save_edit();
    void save_unless_locked();
    /// What another program's hold is worth: a word at once, or only when it lasts.
    enum class Telling { at_once, when_it_lasts };
    void finish_saving(const Result<Done>& stored, Telling telling);
    void stop_trying();
    [[nodiscard]] std::optional<ShortWait> short_wait() const;
    Result<Done> store();
    Result<SessionRow> insert_once();
    void set_unsaved(const QString& reason);
    Result<Done> open(SessionFile file, bool keeping, std::optional<SessionRow> row);

    SessionDocument& document_;
    std::unique_ptr<Database> database_;
    QString path_;
    bool ever_opened_;
    QString unsaved_;
    QTimer* retry_;
    /// Valid while another program holds the records and an edit waits for it.
    QElapsedTimer locked_since_;
    bool said_ = false;  ///< that it does, since the last edit
    std::optional<Attempt> attempt_;
    HealthStore* health_ = nullptr;
    std::optional<SessionRow> row_;
    bool keeping_ = false;
    bool opening_ = false;
};

}  // namespace leadline
