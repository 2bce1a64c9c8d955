// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/background_job.h"

#include <QMetaObject>
#include <QThread>

namespace leadline {

BackgroundJob::BackgroundJob(QObject* parent) : QObject(parent) {}

BackgroundJob::~BackgroundJob() { stop(); }

void BackgroundJob::cancel() {
    if (stopped_) *stopped_ = true;
}

void BackgroundJob::stop() {
    if (thread_ == nullptr) return;
    cancel();
    thread_->wait();
    delete std::exchange(thread_, nullptr);
    done_ = nullptr;
    // A message of its end that is still under way is of an older number.
    ++number_;
    Q_EMIT running_changed(false);
}

void BackgroundJob::run(std::function<void(const GoOn&)> work, std::function<void()> done) {
    stop();
    const int number = ++number_;
    stopped_ = std::make_shared<std::atomic<bool>>(false);
    done_ = std::move(done);
    const GoOn go_on = [this, stopped = stopped_, number, shown = -1](double share) mutable {
        const int percent = static_cast<int>(share * 100.0);
        if (percent != std::exchange(shown, percent)) {
            // The owner waits for this thread before it goes, so `this` is there.
            QMetaObject::invokeMethod(
                this,
                [this, number, share] {
                    if (number == number_) Q_EMIT progressed(share);
                },
                Qt::QueuedConnection);
        }
        return !*stopped;
    };
    thread_ = QThread::create([work = std::move(work), go_on] { work(go_on); });
    connect(thread_, &QThread::finished, this, [this, number] { finish(number); },
            Qt::QueuedConnection);
    thread_->start();
    Q_EMIT running_changed(true);
}

void BackgroundJob::finish(int number) {
    if (number != number_ || thread_ == nullptr) return;
    thread_->wait();
    delete std::exchange(thread_, nullptr);
    const std::function<void()> done = std::exchange(done_, nullptr);
    Q_EMIT running_changed(false);
    if (done) done();
}

}  // namespace leadline
