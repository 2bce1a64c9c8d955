// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/person_removal.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <array>
#include <string>

#include "core/records/audit_trail.h"
#include "core/records/backup.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

// The person and all merged into them, also by way of others.
const QString everybody = QStringLiteral(
    "WITH RECURSIVE everybody (id) AS (SELECT ? UNION SELECT p.id FROM persons p "
    "JOIN everybody e ON p.merged_into = e.id) ");
const QString of_everybody = QStringLiteral("person_id IN (SELECT id FROM everybody)");
const QString guests_of_everybody = QStringLiteral(
    "(session_id, guest_id) IN (SELECT session_id, guest_id FROM session_guests "
    "WHERE person_id IN (SELECT id FROM everybody))");
const QString sessions_of_everybody = QStringLiteral(
    "(SELECT session_id FROM session_guests WHERE person_id IN (SELECT id FROM everybody))");

// Whether an outcome of the health questions is kept of a guest of a session.
const QString is_checked = QStringLiteral(
    "(screening_outcome <> 'unanswered' OR screening_today <> 'unanswered' "
    "OR physician_approval_seen = 1)");

QString text_column(Row& row) { return row.qtext(); }

Result<int> number_of(const QSqlDatabase& database, const QString& sql, qint64 person) {
    const auto found = Statement(database, everybody + sql)
                           .first([](Row& row) { return row.small_number(); }, person);
    if (!found) return found.error();
    return found->value_or(0);
}

Result<Done> change(const QSqlDatabase& database, const QString& sql, qint64 person) {
    return Statement(database, everybody + sql).run(person);
}

/// Tables with rows of a guest's answers: all that name a session and a guest, but for the guest, the
/// log and what a merge remembers.
Result<std::vector<QString>> answer_tables(const QSqlDatabase& database) {
    return Statement(database,
                     u"SELECT m.name FROM sqlite_master m WHERE m.type = 'table' "
                     "AND m.name NOT IN ('session_guests', 'log_divers', 'log_samples', "
                     "'person_merge_guests') "
                     "AND EXISTS (SELECT 1 FROM pragma_table_info(m.name) WHERE name = 'session_id') "
                     "AND EXISTS (SELECT 1 FROM pragma_table_info(m.name) WHERE name = 'guest_id') "
                     "ORDER BY m.name"_qs)
        .all(text_column);
}

/// Tables with health records of a person, sealed or waiting for it, where this schema has them.
Result<std::vector<QString>> sealed_tables(const QSqlDatabase& database) {
    return Statement(database, u"SELECT m.name FROM sqlite_master m WHERE m.type = 'table' "
                               "AND m.name IN ('health_records', 'answers_to_seal') "
                               "AND EXISTS (SELECT 1 FROM pragma_table_info(m.name) "
                               "WHERE name = 'person_id')"_qs)
        .all(text_column);
}

struct ColumnOfTable {
    QString name;
    QString type;
    bool required = false;
    QString default_value;
};

Result<std::vector<ColumnOfTable>> columns_of(const QSqlDatabase& database, const QString& table) {
    return Statement(database, u"SELECT name, type, \"notnull\", dflt_value "
                               "FROM pragma_table_info(?) WHERE pk = 0"_qs)
        .all(
            [](Row& row) {
                ColumnOfTable column;
                column.name = row.qtext();
                column.type = row.qtext();
                column.required = row.yes();
                column.default_value = row.qtext();
                return column;
            },
            table);
}

/// What a column is when nothing is known.
QString empty_value(const ColumnOfTable& column) {
    if (!column.required) return u"NULL"_qs;
    if (!column.default_value.isEmpty()) return column.default_value;
    return column.type == u"TEXT"_qs ? u"''"_qs : u"0"_qs;
}

/// "SET" for every column but those that stay; some have a value of their own. What stays is listed
/// and not what goes, so that a column added later goes as well.
Result<QString> emptied(const QSqlDatabase& database, const QString& table,
                        const QStringList& stay, const QStringList& set) {
    const auto columns = columns_of(database, table);
    if (!columns) return columns.error();
    QStringList all = set;
    for (const ColumnOfTable& column : *columns) {
        const bool named = set.filter(column.name + u" = "_qs).size() > 0;
        if (stay.contains(column.name) || named) continue;
        all += column.name + u" = "_qs + empty_value(column);
    }
    return all.join(u", "_qs);
}

QString quoted_name() { return u"'"_qs + QString::fromUtf8(removed_name) + u"'"_qs; }

Result<Done> empty_guests(const QSqlDatabase& database, qint64 person) {
    const auto set = emptied(
        database, u"session_guests"_qs,
        {u"position"_qs, u"person_id"_qs, u"group_id"_qs, u"certified"_qs, u"breathing"_qs,
         u"regulator"_qs, u"lead_kg"_qs, u"cylinder_type"_qs, u"fill_pressure_bar"_qs,
         u"fill_temperature_k"_qs},
        {u"name = "_qs + quoted_name(), u"language = 'en'"_qs});
    if (!set) return set.error();
    return change(database, u"UPDATE session_guests SET "_qs + *set + u" WHERE "_qs + of_everybody,
                  person);
}

Result<Done> empty_persons(const QSqlDatabase& database, qint64 person) {
    const auto set = emptied(database, u"persons"_qs, {u"merged_into"_qs},
                             {u"name = "_qs + quoted_name(),
                              u"folded_name = lower("_qs + quoted_name() + u")"_qs,
                              u"language = 'en'"_qs, u"erased = 1"_qs});
    if (!set) return set.error();
    return change(database,
                  u"UPDATE persons SET "_qs + *set + u" WHERE id IN (SELECT id FROM everybody)"_qs,
                  person);
}

/// A text of a session in which the whole name may stand, and the column that says which session.
struct MentionColumn {
    const char* table;
    const char* column;
    const char* session;
};

constexpr std::array<MentionColumn, 6> mention_columns{{{"overrules", "reason", "session_id"},
                                                        {"session_groups", "name", "session_id"},
                                                        {"sessions", "title", "id"},
                                                        {"logs", "note", "session_id"},
                                                        {"session_guests", "note", "session_id"},
                                                        {"log_divers", "note", "session_id"}}};

/// Every name the guest had, long ones first, so that one that holds another goes whole. A name of
/// one word is left: it may be part of any word.
Result<std::vector<QString>> whole_names(const QSqlDatabase& database, qint64 person) {
    return Statement(database,
                     everybody + u"SELECT name FROM (SELECT name FROM persons "
                                 "WHERE id IN (SELECT id FROM everybody) "
                                 "UNION SELECT name FROM session_guests WHERE "_qs +
                         of_everybody +
                         u") WHERE instr(trim(name), ' ') > 0 ORDER BY length(name) DESC, name"_qs)
        .all(text_column, person);
}

/// A text with every one of the names replaced, however its letters are cased: SQLite would know
/// only the 26 letters of English.
QString without_names(QString text, const std::vector<QString>& names) {
    for (const QString& name : names) {
        text.replace(name.trimmed(), QString::fromUtf8(removed_name), Qt::CaseInsensitive);
    }
    return text;
}

QString of_these_sessions(const MentionColumn& mention, const QString& start) {
    return everybody +
           start.arg(QString::fromUtf8(mention.table), QString::fromUtf8(mention.column)) +
           u" WHERE "_qs + QString::fromUtf8(mention.session) + u" IN "_qs + sessions_of_everybody;
}

struct MentionText {
    QString text;
    int rows = 0;
};

/// The different texts of a column in these sessions that hold one of the names.
Result<std::vector<MentionText>> texts_with(const QSqlDatabase& database,
                                            const MentionColumn& mention,
                                            const std::vector<QString>& names, qint64 person) {
    auto texts = Statement(database, of_these_sessions(mention, u"SELECT %2, count(*) FROM %1"_qs) +
                                         u" GROUP BY 1"_qs)
                     .all(
                         [](Row& row) {
                             MentionText found;
                             found.text = row.qtext();
                             found.rows = row.small_number();
                             return found;
                         },
                         person);
    if (!texts) return texts;
    std::erase_if(*texts, [&names](const MentionText& found) {
        return without_names(found.text, names) == found.text;
    });
    return texts;
}

Result<int> count_mentions(const QSqlDatabase& database, qint64 person) {
    const auto names = whole_names(database, person);
    if (!names) return names.error();
    int count = 0;
    for (const MentionColumn& mention : mention_columns) {
        const auto texts = texts_with(database, mention, *names, person);
        if (!texts) return texts.error();
        for (const MentionText& found : *texts) count += found.rows;
    }
    return count;
}

Result<Done> replace_mentions(const QSqlDatabase& database, qint64 person) {
    const auto names = whole_names(database, person);
    if (!names) return names.error();
    for (const MentionColumn& mention : mention_columns) {
        const auto texts = texts_with(database, mention, *names, person);
        if (!texts) return texts.error();
        Statement replace(database,
                          of_these_sessions(mention, u"UPDATE %1 SET %2 = ?"_qs) + u" AND "_qs +
                              QString::fromUtf8(mention.column) + u" = ?"_qs);
        for (const MentionText& found : *texts) {
            const Result<Done> done =
                replace.run(person, without_names(found.text, *names), found.text);
            if (!done) return done;
        }
    }
    return Done{};
}

Result<Done> remove_health(const QSqlDatabase& database, qint64 person) {
    const auto answers = answer_tables(database);
    if (!answers) return answers.error();
    for (const QString& table : *answers) {
        const Result<Done> done = change(
            database, u"DELETE FROM "_qs + table + u" WHERE "_qs + guests_of_everybody, person);
        if (!done) return done;
    }
    const auto sealed = sealed_tables(database);
    if (!sealed) return sealed.error();
    for (const QString& table : *sealed) {
        const Result<Done> done =
            change(database, u"DELETE FROM "_qs + table + u" WHERE "_qs + of_everybody, person);
        if (!done) return done;
    }
    return change(database,
                  u"UPDATE session_guests SET screening_outcome = 'unanswered', "
                  "screening_checked_on = NULL, screening_edition = '', screening_checked_by = '', "
                  "physician_approval_seen = 0, physician_approval_on = NULL, "
                  "screening_today = 'unanswered', screening_signature = 'none' WHERE "_qs +
                      of_everybody,
                  person);
}

Result<Done> remove_contacts(const QSqlDatabase& database, qint64 person) {
    return in_turn(
        [&] {
            return change(database, u"UPDATE session_guests SET phone = '', email = '' WHERE "_qs +
                                        of_everybody,
                          person);
        },
        [&] {
            return change(database, u"UPDATE persons SET phone = '', email = '' "
                                    "WHERE id IN (SELECT id FROM everybody)"_qs,
                          person);
        });
}

Result<Done> remove_identity(const QSqlDatabase& database, qint64 person) {
    return in_turn(
        [&] { return remove_health(database, person); },
        [&] {
            return change(database,
                          u"UPDATE log_divers SET note = '' WHERE "_qs + guests_of_everybody,
                          person);
        },
        [&] { return replace_mentions(database, person); },
        [&] { return empty_guests(database, person); },
        [&] { return empty_persons(database, person); },
        [&] {
            return change(database,
                          u"DELETE FROM person_merges WHERE kept_id IN (SELECT id FROM everybody) "
                          "OR merged_id IN (SELECT id FROM everybody)"_qs,
                          person);
        },
        [&] {
            return change(database,
                          u"DELETE FROM persons_apart WHERE first_id IN (SELECT id FROM everybody) "
                          "OR second_id IN (SELECT id FROM everybody)"_qs,
                          person);
        });
}

/// A word that is taken out of the index of the search stays in it, marked as gone, until the index
/// is put together anew.
Result<Done> rewrite_index(const QSqlDatabase& database) {
    return in_turn(
        [&] {
            return execute(database,
                           u"INSERT INTO person_names (person_names) VALUES ('optimize')"_qs);
        },
        [&] {
            return execute(database,
                           u"INSERT INTO person_parts (person_parts) VALUES ('optimize')"_qs);
        });
}

/// Empties the write-ahead file, in which pages stand as they were.
Result<bool> sweep(const QSqlDatabase& database) {
    const auto busy = Statement(database, u"PRAGMA wal_checkpoint(TRUNCATE)"_qs)
                          .first([](Row& row) { return row.yes(); });
    if (!busy) return busy.error();
    return !busy->value_or(true);
}

Result<Done> check_is_there(const QSqlDatabase& database, qint64 person) {
    const auto found =
        Statement(database, u"SELECT 1 FROM persons WHERE id = ? AND erased = 0 "
                            "AND merged_into IS NULL"_qs)
            .first([](Row& row) { return row.number(); }, person);
    if (!found) return found.error();
    if (!*found) return Error{ErrorCode::not_found, "person", std::to_string(person), {}};
    return Done{};
}

Result<Done> count_answers(const QSqlDatabase& database, qint64 person, int& count) {
    const auto answers = answer_tables(database);
    if (!answers) return answers.error();
    const auto sealed = sealed_tables(database);
    if (!sealed) return sealed.error();
    const Result<int> checked = number_of(
        database, u"SELECT count(*) FROM session_guests WHERE "_qs + of_everybody + u" AND "_qs +
                      is_checked,
        person);
    if (!checked) return checked.error();
    count = *checked;
    for (const auto* tables : {&*answers, &*sealed}) {
        const QString& where = tables == &*answers ? guests_of_everybody : of_everybody;
        for (const QString& table : *tables) {
            const Result<int> found = number_of(
                database, u"SELECT count(*) FROM "_qs + table + u" WHERE "_qs + where, person);
            if (!found) return found.error();
            count += *found;
        }
    }
    return Done{};
}

/// Notes in the audit trail which sealed records are about to go. The vault may be locked, and this
/// may be another thread's connection: the next unlock seals the entries.
Result<Done> note_sealed(Database& database, qint64 person, const std::string& who) {
    struct Sealed {
        qint64 row = 0;
        qint64 person = 0;
        std::string kind;
    };
    const auto records =
        Statement(database.connection(),
                  everybody + u"SELECT id, person_id, kind FROM health_records WHERE "_qs +
                      of_everybody + u" ORDER BY id"_qs)
            .all(
                [](Row& row) {
                    Sealed sealed;
                    sealed.row = row.number();
                    sealed.person = row.number();
                    sealed.kind = row.text();
                    return sealed;
                },
                person);
    if (!records) return records.error();
    AuditTrail trail(database);
    for (const Sealed& sealed : *records) {
        const Result<Done> noted = trail.append(
            {AuditEvent::record_erased_locked, who, sealed.person, sealed.row, sealed.kind},
            nullptr);
        if (!noted) return noted;
    }
    return Done{};
}

QStringList copies_beside(const QString& path) {
    const QFileInfo info(path);
    QStringList copies;
    const QString pattern = info.fileName() + u".before-schema-*"_qs;
    for (const QString& name : info.dir().entryList({pattern}, QDir::Files, QDir::Name)) {
        copies += info.dir().filePath(name);
    }
    return copies;
}

}  // namespace

Result<RemovalPreview> PersonRemoval::preview(qint64 person) {
    const QSqlDatabase database = database_.connection();
    const Result<Transaction> transaction = Transaction::begin_reading(database);
    if (!transaction) return transaction.error();
    RemovalPreview preview;
    const auto count = [&](int& place, const QString& sql) -> Result<Done> {
        const Result<int> found = number_of(database, sql, person);
        if (!found) return found.error();
        place = *found;
        return Done{};
    };
    const QString guests = u" FROM session_guests WHERE "_qs + of_everybody;
    const Result<Done> counted = in_turn(
        [&] { return check_is_there(database, person); },
        [&] { return count(preview.sessions, u"SELECT count(DISTINCT session_id)"_qs + guests); },
        [&] {
            return count(preview.logged_dives,
                         u"SELECT count(*) FROM log_divers WHERE "_qs + guests_of_everybody);
        },
        [&] { return count_answers(database, person, preview.health_answers); },
        [&] {
            return count(preview.contacts,
                         u"SELECT count(*) FROM (SELECT phone FROM persons WHERE id IN "
                         "(SELECT id FROM everybody) UNION SELECT email FROM persons WHERE id IN "
                         "(SELECT id FROM everybody) UNION SELECT phone"_qs + guests +
                             u" UNION SELECT email"_qs + guests + u") WHERE phone <> ''"_qs);
        },
        [&] {
            return count(preview.notes,
                         u"SELECT (SELECT count(*)"_qs + guests +
                             u" AND note <> '') + (SELECT count(*) FROM log_divers "
                             "WHERE note <> '' AND "_qs + guests_of_everybody + u")"_qs);
        });
    if (!counted) return counted.error();
    const Result<int> mentions = count_mentions(database, person);
    if (!mentions) return mentions.error();
    preview.mentions = *mentions;
    const auto names = Statement(database, everybody +
                                               u"SELECT p.name, p.id = ?, "
                                               "(SELECT max(s.date) FROM session_guests g "
                                               "JOIN sessions s ON s.id = g.session_id "
                                               "WHERE g.person_id = p.id) FROM persons p "
                                               "WHERE p.id IN (SELECT id FROM everybody) "
                                               "ORDER BY p.folded_name, p.id"_qs)
                           .all(
                               [&preview](Row& row) {
                                   const QString name = row.qtext();
                                   if (!row.yes()) {
                                       preview.merged_names += name;
                                       return Done{};
                                   }
                                   preview.name = name.toStdString();
                                   preview.last_session = row.optional_date();
                                   return Done{};
                               },
                               person, person);
    if (!names) return names.error();
    preview.copies = copies_beside(database_.path());
    preview.backups = int(list_copies(database_.path()).size());
    return preview;
}

Result<RemovalOutcome> PersonRemoval::remove(qint64 person, KeptKind kind,
                                             const std::string& who) {
    const QSqlDatabase database = database_.connection();
    {
        Result<Transaction> transaction = Transaction::begin_writing(database);
        if (!transaction) return transaction.error();
        const Result<Done> done = in_turn(
            [&] { return check_is_there(database, person); },
            [&] {
                return kind == KeptKind::contacts ? Done{} : note_sealed(database_, person, who);
            },
            [&]() -> Result<Done> {
                switch (kind) {
                    case KeptKind::health: return remove_health(database, person);
                    case KeptKind::contacts: return remove_contacts(database, person);
                    case KeptKind::identity: break;
                }
                return remove_identity(database, person);
            },
            [&] { return kind == KeptKind::health ? Done{} : rewrite_index(database); },
            [&] { return transaction->commit(); });
        if (!done) return done.error();
    }
    const Result<bool> swept = sweep(database);
    // What was removed is removed; a file that could not be emptied is told and no failure.
    return RemovalOutcome{swept.value_or(false)};
}

Result<int> PersonRemoval::remove_copies() {
    int removed = 0;
    for (const QString& path : copies_beside(database_.path())) {
        QFile copy(path);
        if (!copy.remove()) {
            return Error{ErrorCode::file_unwritable, path.toStdString(),
                         copy.errorString().toStdString(), {}};
        }
        ++removed;
    }
    return removed;
}

Result<std::vector<KeptFacts>> kept_facts(Database& database, Date last_session_before) {
    const QSqlDatabase connection = database.connection();
    const auto answers = answer_tables(connection);
    if (!answers) return answers.error();
    const auto sealed = sealed_tables(connection);
    if (!sealed) return sealed.error();
    // Answers and contacts of those merged into a person are the person's too.
    const QString guests =
        u"SELECT w.top FROM whole w JOIN session_guests a ON a.person_id = w.id "_qs;
    QStringList health;
    for (const QString& table : *answers) {
        health += guests + u"JOIN "_qs + table +
                  u" b ON b.session_id = a.session_id AND b.guest_id = a.guest_id"_qs;
    }
    for (const QString& table : *sealed) {
        health += u"SELECT w.top FROM whole w JOIN "_qs + table + u" b ON b.person_id = w.id"_qs;
    }
    health += guests + u"WHERE "_qs + is_checked;
    const QString sql =
        u"WITH RECURSIVE whole (id, top) AS (SELECT id, id FROM persons "
        "WHERE merged_into IS NULL AND erased = 0 UNION SELECT m.id, w.top FROM persons m "
        "JOIN whole w ON m.merged_into = w.id) "
        "SELECT p.id, l.last, p.id IN (SELECT w.top FROM whole w JOIN persons q ON q.id = w.id "
        "WHERE q.phone <> '' OR q.email <> '' UNION %1 WHERE a.phone <> '' OR a.email <> ''), "
        "p.id IN (%2) FROM persons p "
        "LEFT JOIN (SELECT g.person_id, max(s.date) AS last FROM session_guests g "
        "JOIN sessions s ON s.id = g.session_id GROUP BY g.person_id) l ON l.person_id = p.id "
        "WHERE p.merged_into IS NULL AND p.erased = 0 AND (l.last IS NULL OR l.last < ?) "
        "ORDER BY l.last, p.folded_name, p.id"_qs.arg(guests, health.join(u" UNION "_qs));
    return Statement(connection, sql)
        .all(
            [](Row& row) {
                KeptFacts facts;
                facts.person = row.number();
                facts.last_session = row.optional_date();
                facts.has_contacts = row.yes();
                facts.has_health = row.yes();
                return facts;
            },
            last_session_before);
}

}  // namespace leadline
