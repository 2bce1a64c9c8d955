// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <optional>
#include <type_traits>
#include <utility>

#include "core/physics/go_on.h"

class QWidget;

namespace leadline {

/// One piece of long work at a time in another thread, so that the window goes on. What it gives
/// back arrives in the window's thread, where the job itself is made and used; nothing arrives from
/// work that was stopped, or after the job is gone.
class BackgroundJob : public QObject {
    Q_OBJECT
public:
    /// What becomes of work that is stopped, or whose job goes, before its end.
    enum class AtStop {
        wait,    ///< stopped and waited for: it holds files or records that others need next
        finish,  ///< waited for to its own end: it makes what somebody counts on
        let_go,  ///< left to itself: it uses nothing but values of its own, and cannot be hurried
    };

    explicit BackgroundJob(QObject* parent = nullptr, AtStop at_stop = AtStop::wait);
    /// Stops the work, or waits for its end.
    ~BackgroundJob() override;

    [[nodiscard]] bool running() const { return run_ != nullptr; }
    /// Asks the work to stop; its result still arrives.
    void cancel();
    /// Stops the work (unless it is to finish) and forgets its result; waits for its end, unless it
    /// is let go.
    void stop();

    /// Starts work; other work is stopped first.
    /// @param work  `Value work(const GoOn&)`: runs in the other thread, touches nothing of this one,
    ///              asks its GoOn often; may hold what can only be moved
    /// @param done  `void done(Value)`: runs in this thread with what `work` gave back
    template <typename Work, typename Done>
    void start(Work work, Done done) {
        using Value = std::invoke_result_t<Work&, const GoOn&>;
        auto value = std::make_shared<std::optional<Value>>();
        // std::function wants to copy what it holds; keys cannot be copied.
        auto shared_work = std::make_shared<Work>(std::move(work));
        auto shared_done = std::make_shared<Done>(std::move(done));
        run([shared_work, value](const GoOn& go_on) { value->emplace((*shared_work)(go_on)); },
            [shared_done, value] { (*shared_done)(std::move(**value)); });
    }

    /// Does work on values of its own and hands what it gave back to `done`, unless the context is
    /// gone by then. Several may run at a time.
    template <typename Work, typename Done>
    static void once(QObject* context, Work work, Done done) {
        auto* job = new BackgroundJob(context, AtStop::let_go);
        job->start(std::move(work), [job, done = std::move(done)](auto value) mutable {
            job->deleteLater();
            done(std::move(value));
        });
    }

Q_SIGNALS:
    /// The share of the work that is done, 0 to 1.
    void progressed(double share);
    void running_changed(bool running);

private:
    struct Run;
    void run(std::function<void(const GoOn&)> work, std::function<void()> done);
    void finish(const Run* run);

    const AtStop at_stop_;
    std::shared_ptr<Run> run_;
};

/// Does what `start` starts and comes back when `job` has ended. A box says what is going on once
/// that takes longer than a moment, with a button to stop where that leaves nothing half done.
/// @returns whether it came to its end; false where it was stopped
bool wait_behind_box(QWidget* parent, const QString& label, bool may_stop, BackgroundJob& job,
                     const std::function<void()>& start);

/// Work beside the window that its user waits for (see wait_behind_box()).
/// @returns what `Value work(const GoOn&)` gave back; nothing where it was stopped
template <typename Work>
auto work_behind_box(QWidget* parent, const QString& label, bool may_stop, Work work) {
    std::optional<std::invoke_result_t<Work&, const GoOn&>> result;
    BackgroundJob job;
    const bool ended = wait_behind_box(parent, label, may_stop, job, [&] {
        job.start(std::move(work), [&result](auto value) { result.emplace(std::move(value)); });
    });
    if (!ended) result.reset();
    return result;
}

}  // namespace leadline
