// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/health_store.h"

#include <QString>
#include <nlohmann/json.hpp>
#include <utility>

#include "core/records/sealing.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// Version of what is sealed: the names in payload_of() and what they are bound to.
constexpr int payload_version = 1;
constexpr std::size_t largest_content = 1024 * 1024;

/// A row of health_records.
struct SealedRecord {
    qint64 row = 0;
    qint64 person = 0;
    std::string kind;
    int version = payload_version;
    std::string made_at;
    Sealed sealed;
};

Error locked() {
    return Error{ErrorCode::vault_locked, {}, {}, {}};
}

Error unreadable(qint64 row) {
    return Error{ErrorCode::sealed_unreadable, "Record", std::to_string(row), {}};
}

QByteArray binding_of(const SealedRecord& record, const QByteArray& vault_id) {
    return Fields("leadline health_records 1")
        .add(vault_id)
        .add(record.row)
        .add(record.person)
        .add(record.kind)
        .add(record.version)
        .add(record.made_at)
        .bytes();
}

SealedRecord read_record(Row& row) {
    SealedRecord record;
    record.row = row.number();
    record.person = row.number();
    record.kind = row.text();
    record.version = row.small_number();
    record.made_at = row.text();
    record.sealed.nonce = row.bytes();
    record.sealed.bytes = row.bytes();
    return record;
}

/// A person, all who were merged into that one, and the one that it was merged into.
QString family_sql(const QString& statement) {
    return u"WITH RECURSIVE family(id) AS (SELECT ? "
           "UNION SELECT p.id FROM persons p JOIN family f ON p.merged_into = f.id "
           "UNION SELECT p.merged_into FROM persons p JOIN family f ON p.id = f.id "
           "  WHERE p.merged_into IS NOT NULL) "_qs +
           statement;
}

const QString record_columns =
    u"SELECT id, person_id, kind, version, made_at, nonce, sealed "
    "FROM health_records "_qs;

struct NamedPerson {
    std::string name;
    std::string birth_date;
};

Result<NamedPerson> read_person(const QSqlDatabase& database, qint64 person) {
    const auto found = Statement(database, u"SELECT name, birth_date FROM persons WHERE id = ?"_qs)
                           .first(
                               [](Row& row) {
                                   return NamedPerson{row.text(), row.text()};
                               },
                               person);
    if (!found) return found.error();
    if (!*found) return Error{ErrorCode::not_found, "person", std::to_string(person), {}};
    return **found;
}

/// The number that the next record gets, which must be known before it is sealed. Never one that
/// was used before, so that a removed record cannot be put back in place of another.
Result<qint64> next_row(const QSqlDatabase& database) {
    const auto last =
        Statement(database, u"SELECT seq FROM sqlite_sequence WHERE name = 'health_records'"_qs)
            .first([](Row& row) { return row.number(); });
    if (!last) return last.error();
    return last->value_or(0) + 1;
}

/// What is sealed, as JSON.
/// @returns bad_text when it is not UTF-8, without the text
Result<std::string> payload_of(const NamedPerson& person, const std::string& content) {
    try {
        return nlohmann::json{
            {"name", person.name}, {"birth_date", person.birth_date}, {"content", content}}
            .dump();
    } catch (const nlohmann::json::exception&) {
        return Error{ErrorCode::bad_text, "content", {}, "UTF-8"};
    }
}

std::string text_in(const nlohmann::json& payload, const char* name) {
    const auto found = payload.find(name);
    return found != payload.end() && found->is_string() ? found->get<std::string>() : std::string();
}

Result<HealthEntry> opened(const SealedRecord& record, const SecretBytes& key,
                           const QByteArray& vault_id) {
    const std::optional<HealthKind> kind = from_stored_name<HealthKind>(record.kind);
    const Result<SecretBytes> text = unseal(key, record.sealed, binding_of(record, vault_id));
    if (!kind || !text) return unreadable(record.row);
    const nlohmann::json payload = nlohmann::json::parse(text->view(), nullptr, false);
    if (!payload.is_object()) return unreadable(record.row);
    return HealthEntry{*kind, record.made_at, text_in(payload, "name"),
                       text_in(payload, "content")};
}

}  // namespace

Result<Done> HealthStore::note(AuditEvent event, qint64 person, qint64 record,
                               const std::string& detail) {
    return vault_.trail().append({event, vault_.who(), person, record, detail}, vault_.audit_key());
}

Result<qint64> HealthStore::person_of(SessionRow session, const GuestId& guest) {
    const auto found = Statement(database_.connection(),
                                 u"SELECT person_id FROM session_guests "
                                 "WHERE session_id = ? AND guest_id = ?"_qs)
                           .first([](Row& row) { return row.number(); }, session.value, guest);
    if (!found) return found.error();
    if (!*found) return Error{ErrorCode::not_found, "guest", guest.text, {}};
    return **found;
}

Result<std::string> HealthStore::name_of(qint64 person) {
    const Result<NamedPerson> named = read_person(database_.connection(), person);
    if (named) return named->name;
    if (named.error().code == ErrorCode::not_found) return std::string();
    return named.error();
}

Result<qint64> HealthStore::put(qint64 person, std::optional<SessionRow> session, HealthKind kind,
                                const std::string& content) {
    if (!vault_.is_open()) return locked();
    if (content.size() > largest_content) {
        return Error{ErrorCode::out_of_range, "content", std::to_string(content.size()) + " bytes",
                     "up to " + std::to_string(largest_content) + " bytes"};
    }
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const Result<NamedPerson> named = read_person(database, person);
    if (!named) return named.error();
    const Result<qint64> row = next_row(database);
    if (!row) return row;
    Result<std::string> payload = payload_of(*named, content);
    if (!payload) return payload.error();
    SealedRecord record{
        *row, person, std::string(stored_name(kind)), payload_version, vault_.now_text(), {}};
    record.sealed =
        seal(*vault_.record_key(), *payload, binding_of(record, vault_.opened_identity()));
    wipe(*payload);
    const qint64 session_row = session ? session->value : 0;
    const Result<Done> written = in_turn(
        [&] {
            return Statement(database,
                             u"INSERT INTO health_records (id, person_id, session_id, "
                             "kind, version, made_at, nonce, sealed) "
                             "VALUES (?, ?, nullif(?, 0), ?, ?, ?, ?, ?)"_qs)
                .run(record.row, record.person, session_row, record.kind, record.version,
                     record.made_at, record.sealed.nonce, record.sealed.bytes);
        },
        [&] { return note(AuditEvent::record_written, person, record.row, record.kind); },
        [&] { return transaction->commit(); });
    if (!written) return written.error();
    return record.row;
}

Result<std::vector<HealthEntry>> HealthStore::open(qint64 person, HealthKind kind) {
    if (!vault_.is_open()) return locked();
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const auto records =
        Statement(database, family_sql(record_columns + u"WHERE person_id IN family AND kind = ? "
                                                        "ORDER BY id DESC"_qs))
            .all(read_record, person, kind);
    if (!records) return records.error();
    std::vector<HealthEntry> entries;
    for (const SealedRecord& record : *records) {
        Result<HealthEntry> entry = opened(record, *vault_.record_key(), vault_.opened_identity());
        if (!entry) return entry.error();
        entries.push_back(std::move(*entry));
        const Result<Done> noted =
            note(AuditEvent::record_opened, record.person, record.row, record.kind);
        if (!noted) return noted.error();
    }
    const Result<Done> committed = transaction->commit();
    if (!committed) return committed.error();
    return entries;
}

Result<int> HealthStore::count(qint64 person, HealthKind kind) {
    const auto found =
        Statement(database_.connection(), family_sql(u"SELECT count(*) FROM health_records "
                                                     "WHERE person_id IN family AND kind = ?"_qs))
            .first([](Row& row) { return row.small_number(); }, person, kind);
    if (!found) return found.error();
    return found->value_or(0);
}

Result<Done> HealthStore::note_export(qint64 person, HealthKind kind) {
    if (!vault_.is_open()) return locked();
    Result<Transaction> transaction = Transaction::begin_writing(database_.connection());
    if (!transaction) return transaction.error();
    return in_turn(
        [&] {
            return note(AuditEvent::record_exported, person, 0, std::string(stored_name(kind)));
        },
        [&] { return transaction->commit(); });
}

Result<std::vector<qint64>> HealthStore::taken_out() {
    return Statement(database_.connection(),
                     u"SELECT o.record_id FROM health_openings o WHERE o.event = ? "
                     "AND o.record_id NOT IN (SELECT id FROM health_records) "
                     "AND o.record_id NOT IN (SELECT e.record_id FROM health_openings e "
                     "                        WHERE e.event IN (?, ?)) ORDER BY o.record_id"_qs)
        .all([](Row& row) { return row.number(); }, stored_name(AuditEvent::record_written),
             stored_name(AuditEvent::record_erased),
             stored_name(AuditEvent::record_erased_locked));
}

Result<int> HealthStore::erase(qint64 person) {
    if (!vault_.is_open()) return locked();
    const QSqlDatabase database = database_.connection();
    Result<Transaction> transaction = Transaction::begin_writing(database);
    if (!transaction) return transaction.error();
    const auto records =
        Statement(database,
                  family_sql(record_columns + u"WHERE person_id IN family ORDER BY id"_qs))
            .all(read_record, person);
    if (!records) return records.error();
    Statement remove(database, u"DELETE FROM health_records WHERE id = ?"_qs);
    for (const SealedRecord& record : *records) {
        const Result<Done> removed = in_turn(
            [&] { return remove.run(record.row); },
            [&] {
                return note(AuditEvent::record_erased, record.person, record.row, record.kind);
            });
        if (!removed) return removed.error();
    }
    const Result<Done> committed = transaction->commit();
    if (!committed) return committed.error();
    return int(records->size());
}

Result<Done> HealthStore::move_record(qint64 row, qint64 to) {
    const QSqlDatabase database = database_.connection();
    const auto record =
        Statement(database, record_columns + u"WHERE id = ?"_qs).first(read_record, row);
    if (!record) return record.error();
    if (!*record) return Done{};
    const Result<SecretBytes> text = unseal(*vault_.record_key(), (*record)->sealed,
                                            binding_of(**record, vault_.opened_identity()));
    if (!text) return Done{};
    SealedRecord moved = **record;
    moved.person = to;
    moved.sealed =
        seal(*vault_.record_key(), text->view(), binding_of(moved, vault_.opened_identity()));
    return in_turn(
        [&] {
            return Statement(database, u"UPDATE health_records SET person_id = ?, nonce = ?, "
                                       "sealed = ? WHERE id = ?"_qs)
                .run(to, moved.sealed.nonce, moved.sealed.bytes, row);
        },
        [&] {
            return note(AuditEvent::record_moved, to, row,
                        moved.kind + " from " + std::to_string((*record)->person));
        });
}

Result<Done> HealthStore::move(qint64 from, qint64 to) {
    if (!vault_.is_open()) return locked();
    const auto rows = Statement(database_.connection(),
                                u"SELECT id FROM health_records WHERE person_id = ? ORDER BY id"_qs)
                          .all([](Row& row) { return row.number(); }, from);
    if (!rows) return rows.error();
    for (const qint64 row : *rows) {
        const Result<Done> moved = move_record(row, to);
        if (!moved) return moved;
    }
    return Done{};
}

Result<Done> HealthStore::move(qint64 from, qint64 to, SessionRow session) {
    if (!vault_.is_open()) return locked();
    const auto rows =
        Statement(database_.connection(),
                  u"WITH RECURSIVE whole (id) AS (SELECT ? UNION SELECT p.id FROM persons p "
                  "JOIN whole w ON p.merged_into = w.id) "
                  "SELECT id FROM health_records WHERE session_id = ? AND person_id <> ? "
                  "AND person_id IN (SELECT id FROM whole) ORDER BY id"_qs)
            .all([](Row& row) { return row.number(); }, from, session.value, to);
    if (!rows) return rows.error();
    for (const qint64 row : *rows) {
        const Result<Done> moved = move_record(row, to);
        if (!moved) return moved;
    }
    return Done{};
}

}  // namespace leadline
