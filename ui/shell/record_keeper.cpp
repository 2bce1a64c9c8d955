// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/record_keeper.h"

#include <utility>

#include "ui/document/session_document.h"
#include "ui/words/error_words.h"

namespace leadline {

RecordKeeper::RecordKeeper(SessionDocument& document, std::unique_ptr<Database> database,
                           QObject* parent)
    : QObject(parent), document_(document), database_(std::move(database)) {
    connect(&document_, &SessionDocument::changed, this, &RecordKeeper::save);
}

QString RecordKeeper::database_path() const {
    return database_ ? database_->path() : QString();
}

Result<Done> RecordKeeper::open(SessionFile file, bool keeping, std::optional<SessionRow> row) {
    opening_ = true;
    const Result<Done> opened = document_.open(std::move(file));
    opening_ = false;
    if (!opened) return opened;
    keeping_ = keeping && database_ != nullptr;
    row_ = row;
    Q_EMIT kept_changed();
    return opened;
}

Result<Done> RecordKeeper::open_unkept(SessionFile file) {
    return open(std::move(file), false, std::nullopt);
}

Result<Done> RecordKeeper::open_new(SessionFile file) {
    return open(std::move(file), true, std::nullopt);
}

Result<Done> RecordKeeper::open_row(SessionRow row) {
    if (!database_) return Error{ErrorCode::not_found, "records", "", ""};
    Result<SessionFile> file = SessionStore(*database_).load(row);
    if (!file) return file.error();
    return open(std::move(file).value(), true, row);
}

Result<Done> RecordKeeper::keep() {
    if (!database_) return Error{ErrorCode::database_failed, database_path().toStdString(), "", ""};
    const Result<SessionRow> row = SessionStore(*database_).insert(document_.file());
    if (!row) return row.error();
    row_ = *row;
    keeping_ = true;
    Q_EMIT kept_changed();
    Q_EMIT saved();
    return Done{};
}

void RecordKeeper::save() {
    if (!keeping_ || opening_ || !database_) return;
    SessionStore store(*database_);
    if (!row_) {
        const Result<SessionRow> row = store.insert(document_.file());
        if (!row) {
            Q_EMIT save_failed(words(row.error()));
            return;
        }
        row_ = *row;
    } else if (const Result<Done> done = store.save(*row_, document_.file()); !done) {
        Q_EMIT save_failed(words(done.error()));
        return;
    }
    Q_EMIT saved();
}

Result<std::vector<SessionSummary>> RecordKeeper::sessions() {
    if (!database_) return std::vector<SessionSummary>{};
    return SessionStore(*database_).list();
}

Result<std::vector<SessionSummary>> RecordKeeper::sessions(int first, int count) {
    if (!database_) return std::vector<SessionSummary>{};
    return SessionStore(*database_).page(first, count);
}

int RecordKeeper::session_count() {
    return database_ ? SessionStore(*database_).count().value_or(0) : 0;
}

std::optional<SessionRow> RecordKeeper::newest_session() {
    if (!database_) return std::nullopt;
    return SessionStore(*database_).newest().value_or(std::nullopt);
}

Result<Done> RecordKeeper::remove(SessionRow row) {
    if (!database_) return Done{};
    return SessionStore(*database_).remove(row);
}

std::vector<KnownGuest> RecordKeeper::find_guests(const QString& text) {
    if (!database_) return {};
    return GuestStore(*database_).find(text).value_or({});
}

Result<std::vector<EarlierDive>> RecordKeeper::find_dives(const std::string& name, Date date,
                                                          TimeOfDay time) {
    constexpr int days_that_count = 7;
    if (!database_) return std::vector<EarlierDive>{};
    return StaffStore(*database_).earlier_dives_of(name, date, time, days_that_count);
}

std::vector<Site> RecordKeeper::sites() {
    if (!database_) return {};
    return SiteStore(*database_).list().value_or({});
}

std::optional<QString> RecordKeeper::setting(const QString& name) {
    if (!database_) return std::nullopt;
    return SettingStore(*database_).get(name).value_or(std::nullopt);
}

void RecordKeeper::put_setting(const QString& name, const QString& value) {
    if (!database_) return;
    if (const Result<Done> done = SettingStore(*database_).put(name, value); !done) {
        Q_EMIT save_failed(words(done.error()));
    }
}

}  // namespace leadline
