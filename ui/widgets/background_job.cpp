// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/background_job.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QMetaObject>
#include <QPointer>
#include <QProgressDialog>
#include <QSemaphore>
#include <QThread>
#include <QThreadPool>
#include <atomic>

namespace leadline {
namespace {

/// Apart from Qt's own pool, which has a thread for each processor: work that mostly waits for the
/// disk shall not keep other work waiting.
QThreadPool& threads() {
    static QThreadPool pool;
    static const bool prepared = [] {
        constexpr int more_than_ever_run = 16;
        pool.setMaxThreadCount(more_than_ever_run);
        // Work that was let go hands its result to the application, so that goes after it.
        qAddPostRoutine([] { threads().waitForDone(); });
        return true;
    }();
    Q_UNUSED(prepared)
    return pool;
}

}  // namespace

/// One start of a job; held by the job while the result is wanted, and by the thread.
struct BackgroundJob::Run {
    std::function<void()> done;
    std::atomic<bool> stopped = false;
    QSemaphore ended;
};

BackgroundJob::BackgroundJob(QObject* parent, AtStop at_stop)
    : QObject(parent), at_stop_(at_stop) {}

BackgroundJob::~BackgroundJob() { stop(); }

void BackgroundJob::cancel() {
    if (run_) run_->stopped = true;
}

void BackgroundJob::stop() {
    if (!run_) return;
    if (at_stop_ != AtStop::finish) cancel();
    // A message of it that is still under way finds that it is not the run any more.
    const std::shared_ptr<Run> run = std::exchange(run_, nullptr);
    // What it holds is of this thread and goes in this thread.
    run->done = nullptr;
    if (at_stop_ != AtStop::let_go) run->ended.acquire();
    Q_EMIT running_changed(false);
}

void BackgroundJob::run(std::function<void(const GoOn&)> work, std::function<void()> done) {
    Q_ASSERT(thread() == QCoreApplication::instance()->thread());
    stop();
    run_ = std::make_shared<Run>();
    run_->done = std::move(done);
    // The other thread only carries the pointer to the job; it is looked into in this one.
    const auto tell = [job = QPointer<BackgroundJob>(this), run = std::weak_ptr<Run>(run_)](
                          auto message) {
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [job, run, message] {
                const std::shared_ptr<Run> told = run.lock();
                if (job && told && job->run_ == told) message(*job, told.get());
            },
            Qt::QueuedConnection);
    };
    threads().start([work = std::move(work), tell, run = run_, shown = -1]() mutable {
        const GoOn go_on = [&](double share) {
            const int percent = static_cast<int>(share * 100.0);
            if (percent != std::exchange(shown, percent)) {
                tell([share](BackgroundJob& job, const Run*) { Q_EMIT job.progressed(share); });
            }
            return !run->stopped;
        };
        work(go_on);
        // Frees what the work held before anybody who waits goes on.
        work = nullptr;
        run->ended.release();
        tell([](BackgroundJob& job, const Run* ended) { job.finish(ended); });
    });
    Q_EMIT running_changed(true);
}

void BackgroundJob::finish(const Run* run) {
    if (run != run_.get()) return;
    const std::function<void()> done = std::move(std::exchange(run_, nullptr)->done);
    Q_EMIT running_changed(false);
    if (done) done();
}

bool wait_behind_box(QWidget* parent, const QString& label, bool may_stop, BackgroundJob& job,
                     const std::function<void()>& start) {
    constexpr int a_moment_ms = 200;
    constexpr int whole = 100;
    const QString stop = QCoreApplication::translate("BackgroundJob", "Stop");
    QProgressDialog box(label, may_stop ? stop : QString(), 0, 0, parent);
    box.setObjectName(QStringLiteral("work_box"));
    box.setWindowModality(Qt::WindowModal);
    box.setAutoClose(false);
    box.setAutoReset(false);
    box.setMinimumDuration(a_moment_ms);
    bool stopped = false;
    QEventLoop loop;
    QObject::connect(&job, &BackgroundJob::running_changed, &loop, [&](bool running) {
        if (!running) loop.quit();
    });
    QObject::connect(&job, &BackgroundJob::progressed, &box, [&](double share) {
        // Until the work says how far it is, the box only shows that there is some.
        if (box.maximum() == 0) box.setMaximum(whole);
        box.setValue(static_cast<int>(share * whole));
    });
    const auto leave = [&] {
        if (may_stop) {
            stopped = true;
            job.cancel();
            box.setLabelText(QCoreApplication::translate("BackgroundJob", "Stopping…"));
        }
        // It stays in the way until the work has ended: Escape closes it, whether it may or not, and
        // the window behind must not change what is worked on.
        box.show();
    };
    QObject::connect(&box, &QProgressDialog::canceled, &loop, leave);
    QObject::connect(&box, &QDialog::rejected, &loop, leave);
    // From now on it counts the moment, also when the work says at once how far it is.
    box.setValue(0);
    start();
    loop.exec();
    return !stopped;
}

}  // namespace leadline
