// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtGlobal>
#include <optional>
#include <string>
#include <vector>

#include "core/physics/result.h"
#include "core/records/database.h"
#include "core/records/session_store.h"

namespace leadline {

/// A session to come with what is needed to tell who must still bring something: its title, date,
/// time, rule sets and overrules, and of each guest name, birth date, phone, e-mail, consent and
/// the health check. Everything else is empty.
struct SessionToCome {
    SessionRow row;
    Session session;
};

/// What the records know of health checks over all sessions.
class CheckStore {
public:
    explicit CheckStore(Database& database) : database_(database) {}

    /// The latest dated check of somebody of that name and birth date, by the day of the check.
    /// None without a birth date: too little is known to take one person for another.
    /// @param except  a session not to look at: the open one
    Result<std::optional<HealthCheck>> last_check(const std::string& name,
                                                  const std::optional<Date>& birth_date,
                                                  std::optional<SessionRow> except);
    /// Sessions on record from a day on, by date and time.
    Result<std::vector<SessionToCome>> to_come(Date from);

private:
    Database& database_;
};

/// An answer of yes from before answers were sealed.
struct AnswerToSeal {
    qint64 id = 0;
    qint64 person = 0;     ///< row in the register of persons
    std::string name;      ///< of that person
    SessionRow session;    ///< in which it was given
    Date date{};           ///< of that session
    std::string question;  ///< "lungs", "cold_or_blocked_ears": as the earlier form named it
};

/// Answers that stand open in an older database's records until a vault takes them.
Result<std::vector<AnswerToSeal>> answers_to_seal(Database& database);
/// Takes out answers that have been sealed. All of them or, on an error, none.
Result<Done> forget_answers_to_seal(Database& database, const std::vector<qint64>& ids);

}  // namespace leadline
