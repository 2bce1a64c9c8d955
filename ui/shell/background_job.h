// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include "core/records/go_on.h"

class QThread;

namespace leadline {

/// One piece of long work at a time in a thread of its own, so that the window goes on. What it
/// gives back arrives in the thread that owns the job.
class BackgroundJob : public QObject {
    Q_OBJECT
public:
    explicit BackgroundJob(QObject* parent = nullptr);
    /// Stops the work and waits for its end.
    ~BackgroundJob() override;

    [[nodiscard]] bool running() const { return thread_ != nullptr; }
    /// Asks the work to stop; its result still arrives.
    void cancel();
    /// Stops the work, waits for its end and forgets its result.
    void stop();

    /// Starts work; other work is stopped first.
    /// @param work  runs in the other thread; touches nothing of this one; asks its GoOn often
    /// @param done  runs in this thread with what `work` gave back
    template <typename Value>
    void start(std::function<Value(const GoOn&)> work, std::function<void(Value)> done) {
        auto value = std::make_shared<std::optional<Value>>();
        run([work = std::move(work), value](const GoOn& go_on) { value->emplace(work(go_on)); },
            [done = std::move(done), value] { done(std::move(**value)); });
    }

Q_SIGNALS:
    /// The share of the work that is done, 0 to 1.
    void progressed(double share);
    void running_changed(bool running);

private:
    void run(std::function<void(const GoOn&)> work, std::function<void()> done);
    void finish(int number);

    QThread* thread_ = nullptr;
    std::shared_ptr<std::atomic<bool>> stopped_;
    std::function<void()> done_;
    int number_ = 0;
};

}  // namespace leadline
