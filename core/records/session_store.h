// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtGlobal>
#include <optional>
#include <string>
#include <vector>

#include "core/files/session_file.h"
#include "core/physics/result.h"
#include "core/records/database.h"

namespace leadline {

class HealthStore;

/// Row of a session in the database.
struct SessionRow {
    qint64 value = 0;
    friend bool operator==(SessionRow, SessionRow) = default;
};

struct SessionSummary {
    SessionRow row;
    std::string title;
    Date date{};
    TimeOfDay dive_time;
    std::string site;
    int guests = 0;
    bool has_log = false;
};

/// Sessions with all that belongs to them: groups, staff, guests and their kit and screening, the
/// profile, overrules, and the log. Guests are also kept in the register of persons (GuestStore):
/// saving a session updates the person it refers to.
class SessionStore {
public:
    /// @param health  seals records anew for the person a guest turns out to be; nullptr: they stay
    ///                with the old person, who then points to the new one
    explicit SessionStore(Database& database, HealthStore* health = nullptr)
        : database_(database), health_(health) {}
    /// Adds a session; persons with the same name and birth date are taken to be the same.
    Result<SessionRow> insert(const SessionFile& file);
    /// Replaces a session's content, in one transaction.
    Result<Done> save(SessionRow row, const SessionFile& file);
    Result<SessionFile> load(SessionRow row);
    /// Newest first.
    Result<std::vector<SessionSummary>> list();
    /// A page of that list.
    Result<std::vector<SessionSummary>> page(int first, int count);
    /// The newest; nothing where there is none.
    Result<std::optional<SessionRow>> newest();
    Result<int> count();
    Result<Done> remove(SessionRow row);
    /// The highest number that a session was ever given.
    Result<SessionRow> newest_row();
    /// A session of just this content with a number after `after`: one that was written although
    /// its insert seemed to fail.
    Result<std::optional<SessionRow>> find_after(SessionRow after, const SessionFile& file);

private:
    Database& database_;
    HealthStore* health_;
};

}  // namespace leadline
