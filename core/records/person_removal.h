// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QtGlobal>
#include <optional>
#include <string>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/retention.h"
#include "core/records/database.h"

namespace leadline {

/// Name under which a removed guest stands in old sessions.
inline constexpr const char* removed_name = "Guest removed";

/// What removing a person would do, counted before anybody decides.
struct RemovalPreview {
    std::string name;
    QStringList merged_names;  ///< persons merged into this one; they go too
    std::optional<Date> last_session;
    int sessions = 0;          ///< they stay, the guest in them without name
    int logged_dives = 0;      ///< they stay, without notes
    int health_answers = 0;    ///< answers given and sealed records; they go
    int contacts = 0;          ///< phone numbers and addresses; they go
    int notes = 0;             ///< notes of staff about the guest; they go
    int mentions = 0;          ///< other texts of these sessions with the whole name in them
    QStringList copies;        ///< older copies of the records beside the file: they are not changed
    int backups = 0;           ///< copies of the records; those made since the guest came hold them
};

struct RemovalOutcome {
    /// The write-ahead file was emptied. It is not while another program reads the records: what was
    /// removed goes from the disk when that program closes them.
    bool swept = false;
};

/// Erases what is known of a person.
class PersonRemoval {
public:
    explicit PersonRemoval(Database& database) : database_(database) {}

    /// @returns not_found for a person who is not there or was removed
    Result<RemovalPreview> preview(qint64 person);

    /// Removes one kind, in one transaction, of the person and of all merged into them.
    ///
    /// health: answers and sealed records. contacts: phone and e-mail. identity: everything; sessions
    /// and logs stay with "Guest removed". Of a guest's row then stays what the plan and the log need
    /// (place, group, lead, cylinder, breathing, certified, the regulator's number); every other
    /// column becomes empty, those of later schemas too. The whole name (of two words or more) is
    /// replaced in the title, the reasons of overrules, the names of groups and the notes of these
    /// sessions, in capital letters or small. Afterwards
    /// the index of the search is written anew without the person, and the write-ahead file emptied.
    /// The audit trail says which sealed records went.
    /// @param who  who asked for it, for the trail; empty: not known
    Result<RemovalOutcome> remove(qint64 person, KeptKind kind, const std::string& who = {});

    /// Deletes older copies of the records beside the file.
    /// @returns how many; file_unwritable for the first that could not be deleted
    Result<int> remove_copies();

private:
    Database& database_;
};

/// What due_for_erasure() needs to know of everybody whose last session was before a day, or who has
/// none.
Result<std::vector<KeptFacts>> kept_facts(Database& database, Date last_session_before);

}  // namespace leadline
