// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/record_keeper.h"

#include <QUndoStack>
#include <chrono>
#include <utility>

#include "ui/document/session_document.h"
#include "ui/words/error_words.h"

namespace leadline {

namespace {

/// Short of what an eye takes for a standstill, with room for the writing itself.
constexpr std::chrono::milliseconds edit_wait{20};
constexpr std::chrono::milliseconds until_next_try{250};
/// Another program that writes is done sooner as a rule: only then it is worth a message.
constexpr std::chrono::milliseconds quiet_wait{2000};
constexpr std::chrono::milliseconds until_next_try_once_said{1000};

bool is_locked(const Result<Done>& stored) {
    return !stored && stored.error().code == ErrorCode::database_locked;
}

}  // namespace

RecordKeeper::RecordKeeper(SessionDocument& document, std::unique_ptr<Database> database,
                           QObject* parent, QString path)
    : QObject(parent),
      document_(document),
      database_(std::move(database)),
      path_(database_ ? database_->path() : std::move(path)),
      ever_opened_(database_ != nullptr),
      retry_(new QTimer(this)) {
    // Records in memory have no file to copy or to replace.
    if (path_ == QStringLiteral(":memory:")) path_.clear();
    retry_->setSingleShot(true);
    retry_->setObjectName(QStringLiteral("save_retry"));
    connect(retry_, &QTimer::timeout, this, &RecordKeeper::save_unless_locked);
    connect(&document_, &SessionDocument::changed, this, &RecordKeeper::save_edit);
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
    attempt_.reset();
    set_unsaved({});
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

void RecordKeeper::reload() {
    if (!row_ || !keeping_) return;
    const Result<Done> done = open_row(*row_);
    if (done) return;
    // What stands in the window is no longer what stands on record: saved again it would bring back
    // a guest who was removed.
    keeping_ = false;
    row_.reset();
    attempt_.reset();
    set_unsaved({});
    Q_EMIT kept_changed();
    Q_EMIT save_failed(words(done.error()));
}

Result<Done> RecordKeeper::keep() {
    if (keeping_ && row_) return Done{};
    const Result<Done> stored = store();
    if (!stored) return stored;
    keeping_ = true;
    Q_EMIT kept_changed();
    Q_EMIT saved();
    return Done{};
}

void RecordKeeper::save_edit() {
    // What was said and closed is said once more to somebody who goes on typing.
    said_ = false;
    save_unless_locked();
}

void RecordKeeper::save_unless_locked() {
    if (!keeping_ || opening_) return;
    const Result<Done> stored = [&] {
        const std::optional<ShortWait> wait = short_wait();
        return store();
    }();
    finish_saving(stored, Telling::when_it_lasts);
}

void RecordKeeper::finish_saving(const Result<Done>& stored, Telling telling) {
    set_unsaved(stored ? QString() : words(stored.error()));
    if (stored) {
        Q_EMIT saved();
        return;
    }
    if (!is_locked(stored)) {
        stop_trying();
        Q_EMIT save_failed(unsaved_);
        return;
    }
    if (!locked_since_.isValid()) locked_since_.start();
    const bool lasts = locked_since_.hasExpired(quiet_wait.count());
    const bool say_so = !said_ && (lasts || telling == Telling::at_once);
    if (say_so) {
        said_ = true;
        Q_EMIT save_failed(unsaved_);
    }
    retry_->start(said_ ? until_next_try_once_said : until_next_try);
}

void RecordKeeper::stop_trying() {
    retry_->stop();
    locked_since_.invalidate();
    said_ = false;
}

std::optional<ShortWait> RecordKeeper::short_wait() const {
    if (!database_) return std::nullopt;
    return std::optional<ShortWait>(std::in_place, *database_, edit_wait);
}

bool RecordKeeper::save_again() {
    if (has_unsaved() && keeping_) finish_saving(store(), Telling::at_once);
    return !has_unsaved();
}

Result<Done> RecordKeeper::store() {
    if (!database_) return Error{ErrorCode::database_gone, path_.toStdString(), {}, {}};
    if (row_) return SessionStore(*database_, health_).save(*row_, document_.file());
    const Result<SessionRow> row = insert_once();
    if (!row) return row.error();
    row_ = *row;
    return Done{};
}

Result<SessionRow> RecordKeeper::insert_once() {
    SessionStore sessions(*database_, health_);
    if (attempt_) {
        // The earlier try may stand although it was not acknowledged: then it is the one.
        const auto written = sessions.find_after(attempt_->newest_before, attempt_->file);
        if (!written) return written.error();
        if (*written) {
            const Result<Done> saved_now = sessions.save(**written, document_.file());
            if (!saved_now) return saved_now.error();
            attempt_.reset();
            return **written;
        }
    }
    const Result<SessionRow> newest = sessions.newest_row();
    if (!newest) return newest;
    attempt_ = Attempt{*newest, document_.file()};
    const Result<SessionRow> row = sessions.insert(document_.file());
    if (row) attempt_.reset();
    return row;
}

void RecordKeeper::set_unsaved(const QString& reason) {
    const bool before = has_unsaved();
    unsaved_ = reason;
    if (reason.isEmpty()) stop_trying();
    if (before != has_unsaved()) Q_EMIT unsaved_changed(has_unsaved());
}

Result<Done> RecordKeeper::close_records() {
    if (has_unsaved()) {
        const Result<Done> stored = store();
        if (!stored) return stored;
        set_unsaved({});
    }
    Q_EMIT about_to_close();
    database_.reset();
    return Done{};
}

Result<Done> RecordKeeper::reopen_records(const SessionFile& fresh) {
    if (!database_) {
        Result<std::unique_ptr<Database>> opened = Database::open(path_);
        if (!opened) return opened.error();
        database_ = std::move(opened).value();
        Q_EMIT database_changed();
    }
    const Result<std::vector<SessionSummary>> found = sessions();
    if (!found) return found.error();
    const bool first = !std::exchange(ever_opened_, true);
    // What was typed while there were no records stays in the window.
    const bool start_anew = first && document_.undo_stack()->count() == 0;
    if (start_anew && !found->empty()) return open_row(found->front().row);
    if (!keeping_ || !row_) {
        Q_EMIT kept_changed();
        return Done{};
    }
    const Session& open_now = document_.session();
    for (const SessionSummary& session : *found) {
        // A number may have been given to another session since the copy was made.
        const bool same = session.row == *row_ && (session.title == open_now.title ||
                                                   session.date == open_now.date);
        if (same) return open_row(session.row);
    }
    return found->empty() ? open_new(fresh) : open_row(found->front().row);
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

std::optional<HealthCheck> RecordKeeper::last_check(const Guest& guest) {
    if (!database_) return std::nullopt;
    return CheckStore(*database_)
        .last_check(guest.name, guest.birth_date, row_)
        .value_or(std::nullopt);
}

Result<std::vector<SessionToCome>> RecordKeeper::sessions_to_come(Date from) {
    if (!database_) return std::vector<SessionToCome>{};
    return CheckStore(*database_).to_come(from);
}

std::vector<Site> RecordKeeper::sites() {
    if (!database_) return {};
    return SiteStore(*database_).list().value_or({});
}

std::optional<QString> RecordKeeper::setting(const QString& name) {
    if (!database_) return std::nullopt;
    return SettingStore(*database_).get(name).value_or(std::nullopt);
}

bool RecordKeeper::put_setting(const QString& name, const QString& value) {
    if (!database_) return false;
    const Result<Done> done = [&] {
        const std::optional<ShortWait> wait = short_wait();
        return SettingStore(*database_).put(name, value);
    }();
    if (!done) Q_EMIT save_failed(words(done.error()));
    return done.has_value();
}

}  // namespace leadline
