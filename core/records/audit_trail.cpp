// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/audit_trail.h"

#include <QDateTime>
#include <algorithm>
#include <utility>

#include "core/records/statement.h"

namespace leadline {

namespace {

/// An entry with the hash that stands beside it.
struct ChainLink {
    AuditEntry entry;
    QByteArray hash;
};

struct EndSeal {
    qint64 entries = 0;
    QByteArray head;
    QByteArray seal;
};

/// What the first entry is chained to.
QByteArray first_link() {
    return hash_of(Fields("leadline audit trail 1").bytes());
}

QByteArray link_hash(const QByteArray& before, const AuditEntry& entry) {
    return hash_of(Fields("leadline audit entry 1")
                       .add(before)
                       .add(entry.number)
                       .add(entry.at)
                       .add(entry.who)
                       .add(entry.event)
                       .add(entry.person)
                       .add(entry.record)
                       .add(entry.detail)
                       .bytes());
}

QByteArray end_seal(const SecretBytes& key, qint64 entries, const QByteArray& head) {
    return keyed_hash_of(key, Fields("leadline audit seal 1").add(entries).add(head).bytes());
}

QString select_sql(const QString& rest) {
    return u"SELECT number, at, who, event, person_id, record_id, detail, hash "
           "FROM health_openings "_qs +
           rest;
}

ChainLink read_link(Row& row) {
    ChainLink link;
    link.entry.number = row.number();
    link.entry.at = row.text();
    link.entry.who = row.text();
    link.entry.event = row.text();
    link.entry.person = row.number();
    link.entry.record = row.number();
    link.entry.detail = row.text();
    link.hash = row.bytes();
    return link;
}

Result<std::optional<ChainLink>> last_link(const QSqlDatabase& database) {
    return Statement(database, select_sql(u"ORDER BY number DESC LIMIT 1"_qs)).first(read_link);
}

Result<std::optional<EndSeal>> read_seal(const QSqlDatabase& database) {
    return Statement(database, u"SELECT entries, head, seal FROM health_openings_seal"_qs)
        .first([](Row& row) {
            return EndSeal{row.number(), row.bytes(), row.bytes()};
        });
}

/// Removing a guest takes the sealed records along, whether or not the vault is open.
bool made_while_locked(const AuditEntry& entry) {
    return entry.event == stored_name(AuditEvent::unlock_failed) ||
           entry.event == stored_name(AuditEvent::record_erased_locked);
}

using Fault = std::optional<std::pair<AuditFault, qint64>>;

/// The first fault of a stretch of the chain.
/// @param before  hash that its first entry is chained to
/// @param number  that its first entry must have
Fault fault_of_chain(const std::vector<ChainLink>& links, QByteArray before, qint64 number) {
    for (const ChainLink& link : links) {
        if (link.entry.number != number) return std::pair(AuditFault::entry_missing, number);
        if (!same_bytes(link.hash, link_hash(before, link.entry))) {
            return std::pair(AuditFault::entry_changed, number);
        }
        before = link.hash;
        ++number;
    }
    return std::nullopt;
}

/// The fault of the seal and of what comes after it.
/// @param links   an end of the chain that begins at or before the sealed entry
/// @param length  number of the last entry; 0: there is none
Fault fault_of_seal(const SecretBytes& key, const std::optional<EndSeal>& seal,
                    const std::vector<ChainLink>& links, qint64 length) {
    const qint64 sealed = seal ? seal->entries : 0;
    if (seal && !same_bytes(seal->seal, end_seal(key, seal->entries, seal->head))) {
        return std::pair(AuditFault::seal_wrong, std::min(sealed, length));
    }
    if (length < sealed) return std::pair(AuditFault::end_cut, length + 1);
    for (const ChainLink& link : links) {
        const qint64 number = link.entry.number;
        if (number == sealed && seal && !same_bytes(link.hash, seal->head)) {
            return std::pair(AuditFault::head_replaced, number);
        }
        if (number > sealed && !made_while_locked(link.entry)) {
            return std::pair(seal ? AuditFault::written_without_key : AuditFault::seal_wrong,
                             number);
        }
    }
    return std::nullopt;
}

AuditVerdict verdict_of(const Fault& fault, qint64 entries, bool seal_checked) {
    AuditVerdict verdict{entries, seal_checked};
    if (!fault) return verdict;
    verdict.fault = fault->first;
    verdict.first_broken = fault->second;
    return verdict;
}

std::string fault_text(const AuditVerdict& verdict) {
    return std::string(stored_name(verdict.fault.value_or(AuditFault::entry_changed))) + ' ' +
           std::to_string(verdict.first_broken);
}

}  // namespace

std::int64_t system_time() {
    return QDateTime::currentSecsSinceEpoch();
}

std::string utc_text(std::int64_t seconds) {
    return QDateTime::fromSecsSinceEpoch(seconds, Qt::UTC).toString(Qt::ISODate).toStdString();
}

Result<Done> AuditTrail::append(const Note& note, const SecretBytes* key) {
    if (key == nullptr) return add(note);
    const auto fault = fault_at_end(*key);
    if (!fault) return fault.error();
    return in_turn([&] { return *fault ? note_fault(note.who, **fault) : Done{}; },
                   [&] { return add(note); }, [&] { return write_seal(*key); });
}

Result<Done> AuditTrail::add(const Note& note) {
    const QSqlDatabase database = database_.connection();
    const auto last = last_link(database);
    if (!last) return last.error();
    const qint64 number = *last ? (*last)->entry.number + 1 : 1;
    const AuditEntry entry{
        number,      utc_text(clock_()), note.who,   std::string(stored_name(note.event)),
        note.person, note.record,        note.detail};
    const QByteArray hash = link_hash(*last ? (*last)->hash : first_link(), entry);
    return Statement(database,
                     u"INSERT INTO health_openings (number, at, who, event, person_id, "
                     "record_id, detail, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"_qs)
        .run(entry.number, entry.at, entry.who, entry.event, entry.person, entry.record,
             entry.detail, hash);
}

Result<Done> AuditTrail::write_seal(const SecretBytes& key) {
    const QSqlDatabase database = database_.connection();
    const auto last = last_link(database);
    if (!last) return last.error();
    if (!*last) return Done{};
    const qint64 entries = (*last)->entry.number;
    const QByteArray& head = (*last)->hash;
    return Statement(database,
                     u"INSERT OR REPLACE INTO health_openings_seal (id, entries, head, seal) "
                     "VALUES (1, ?, ?, ?)"_qs)
        .run(entries, head, end_seal(key, entries, head));
}

Result<std::optional<AuditVerdict>> AuditTrail::fault_at_end(const SecretBytes& key) {
    const QSqlDatabase database = database_.connection();
    const auto seal = read_seal(database);
    if (!seal) return seal.error();
    const qint64 sealed = *seal ? (*seal)->entries : 0;
    // From the sealed entry on: what came before is the matter of verify().
    const auto links = Statement(database, select_sql(u"WHERE number >= ? ORDER BY number"_qs))
                           .all(read_link, sealed);
    if (!links) return links.error();
    const auto last = last_link(database);
    if (!last) return last.error();
    const qint64 length = *last ? (*last)->entry.number : 0;
    Fault fault = fault_of_seal(key, *seal, *links, length);
    if (!fault && !links->empty()) {
        const bool from_seal = links->front().entry.number == sealed;
        const std::vector<ChainLink> tail(links->begin() + (from_seal ? 1 : 0), links->end());
        fault = fault_of_chain(tail, *seal ? (*seal)->head : first_link(), sealed + 1);
    }
    if (!fault) return std::optional<AuditVerdict>();
    return std::optional(verdict_of(fault, length, true));
}

Result<Done> AuditTrail::note_fault(const std::string& who, const AuditVerdict& verdict) {
    return add({AuditEvent::trail_broken, who, 0, 0, fault_text(verdict)});
}

Result<Done> AuditTrail::note_faults(const std::string& who, const SecretBytes& key) {
    const Result<AuditVerdict> verdict = verify(&key);
    if (!verdict) return verdict.error();
    if (!verdict->fault || verdict->fault == AuditFault::found_earlier) return Done{};
    const auto known = Statement(database_.connection(),
                                 u"SELECT count(*) FROM health_openings WHERE event = ? "
                                 "AND detail = ?"_qs)
                           .first([](Row& row) { return row.number(); },
                                  stored_name(AuditEvent::trail_broken), fault_text(*verdict));
    if (!known) return known.error();
    // A fault of the seal must be noted each time: the next seal hides it.
    const bool stays =
        verdict->fault == AuditFault::entry_changed || verdict->fault == AuditFault::entry_missing;
    if (stays && known->value_or(0) > 0) return Done{};
    return in_turn([&] { return note_fault(who, *verdict); }, [&] { return write_seal(key); });
}

Result<std::vector<AuditEntry>> AuditTrail::entries(int limit) {
    return Statement(database_.connection(), select_sql(u"ORDER BY number DESC LIMIT ?"_qs))
        .all([](Row& row) { return read_link(row).entry; }, std::max(limit, 0));
}

Result<AuditVerdict> AuditTrail::verify(const SecretBytes* key) {
    const QSqlDatabase database = database_.connection();
    const auto links = Statement(database, select_sql(u"ORDER BY number"_qs)).all(read_link);
    if (!links) return links.error();
    const auto seal = read_seal(database);
    if (!seal) return seal.error();
    const bool checks_seal = key != nullptr;
    const qint64 entries = qint64(links->size());
    const qint64 length = links->empty() ? 0 : links->back().entry.number;
    Fault fault = fault_of_chain(*links, first_link(), 1);
    // Without the key a cut end still shows where nobody took the trouble to cut the seal as well.
    if (!fault && !checks_seal && *seal && length < (*seal)->entries) {
        fault = std::pair(AuditFault::end_cut, length + 1);
    }
    if (!fault && checks_seal) fault = fault_of_seal(*key, *seal, *links, length);
    if (!fault) {
        const auto noted = std::find_if(links->begin(), links->end(), [](const ChainLink& link) {
            return link.entry.event == stored_name(AuditEvent::trail_broken);
        });
        if (noted != links->end()) {
            fault = std::pair(AuditFault::found_earlier, noted->entry.number);
        }
    }
    return verdict_of(fault, entries, checks_seal);
}

}  // namespace leadline
