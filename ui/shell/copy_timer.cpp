// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/copy_timer.h"

#include <utility>

#include "core/records/check.h"
#include "ui/words/error_words.h"

namespace leadline {

CopyTimer::CopyTimer(QString database_path, QObject* parent, std::function<CopyTime()> clock)
    : QObject(parent), path_(std::move(database_path)), clock_(std::move(clock)) {
    timer_.setInterval(std::chrono::hours(1));
    timer_.setTimerType(Qt::VeryCoarseTimer);
    connect(&timer_, &QTimer::timeout, this, &CopyTimer::look);
}

void CopyTimer::start() {
    timer_.start();
    look();
}

void CopyTimer::pause() {
    timer_.stop();
    job_.stop();
}

void CopyTimer::look() {
    if (job_.running() || path_.isEmpty()) return;
    const CopyTime now = clock_();
    if (unchanged_at_ && !copy_is_due({*unchanged_at_}, now)) {
        Q_EMIT looked();
        return;
    }
    job_.start([path = path_, now, first = !checked_](
                         const GoOn& go_on) { return work(path, now, first, go_on); },
                     [this, now](const Look& look) { take(look, now); });
}

CopyTimer::Look CopyTimer::work(const QString& path, CopyTime now, bool first,
                                const GoOn& go_on) {
    Look look;
    if (first) {
        remove_leftovers(path, now);
        const Result<int> whole = check_records_file(path, CheckDepth::quick, go_on);
        if (!whole) {
            look.error = whole.error();
            return look;
        }
    }
    Result<ScheduledCopy> copy = keep_scheduled_copy(path, now, go_on);
    if (copy) {
        look.copy = std::move(*copy);
    } else {
        look.error = copy.error();
    }
    return look;
}

void CopyTimer::take(const Look& look, CopyTime at) {
    if (look.error) {
        const QString message = tr("No copy of the records was made. %1").arg(words(*look.error));
        // Said once, not every hour.
        const bool new_message = message != std::exchange(last_message_, message);
        if (look.error->code != ErrorCode::cancelled && new_message) Q_EMIT failed(message);
    } else {
        checked_ = true;
        last_message_.clear();
        unchanged_at_.reset();
        if (look.copy.made) Q_EMIT made(look.copy.made->path);
        if (look.copy.was_due && !look.copy.made) unchanged_at_ = at;
    }
    Q_EMIT looked();
}

}  // namespace leadline
