// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/background_job.h"

#include <gmock/gmock.h>

#include <QAbstractEventDispatcher>
#include <QApplication>
#include <QProgressDialog>
#include <QPushButton>
#include <QSemaphore>
#include <QSignalSpy>
#include <QTest>
#include <QThread>
#include <QTimer>
#include <QWidget>
#include <atomic>
#include <memory>

namespace leadline::testing {
namespace {

/// Work that goes on until it is let go, as long as it is wanted.
class Gate {
public:
    /// @returns whether it was let go; false where it was stopped
    bool wait(const GoOn& go_on) {
        started_.release();
        while (!open_.tryAcquire(1, 1)) {
            if (!go_on(0.5)) return false;
        }
        return true;
    }
    /// Goes on without asking, as work that cannot be hurried.
    void wait_unasked() {
        started_.release();
        open_.acquire();
    }
    void until_started() { started_.acquire(); }
    void open() { open_.release(); }

private:
    QSemaphore started_;
    QSemaphore open_;
};

/// Delivers what is under way.
void let_messages_come() {
    QThread::currentThread()->eventDispatcher()->processEvents(QEventLoop::AllEvents);
    QCoreApplication::sendPostedEvents();
}

TEST(BackgroundJob, HandsOverWhatTheWorkGaveBack) {
    BackgroundJob job;
    QThread* worked_in = nullptr;
    std::unique_ptr<int> result;
    job.start(
        [&worked_in, given = std::make_unique<int>(6)](const GoOn&) {
            worked_in = QThread::currentThread();
            return std::make_unique<int>(*given * 7);
        },
        [&result](std::unique_ptr<int> value) {
            EXPECT_EQ(QThread::currentThread(), qApp->thread());
            result = std::move(value);
        });
    EXPECT_TRUE(job.running());
    EXPECT_FALSE(result);
    ASSERT_TRUE(QTest::qWaitFor([&] { return result != nullptr; }));
    EXPECT_EQ(*result, 42);
    EXPECT_NE(worked_in, qApp->thread());
    EXPECT_FALSE(job.running());
}

TEST(BackgroundJob, TellsEachPercentOnce) {
    BackgroundJob job;
    const QSignalSpy told(&job, &BackgroundJob::progressed);
    bool done = false;
    job.start(
        [](const GoOn& go_on) {
            for (int i = 0; i <= 4000; ++i) go_on(i / 4000.0);
            return 0;
        },
        [&done](int) { done = true; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return done; }));
    EXPECT_EQ(told.size(), 101);
    EXPECT_EQ(told.first().first().toDouble(), 0.0);
    EXPECT_EQ(told.last().first().toDouble(), 1.0);
}

TEST(BackgroundJob, CancelledWorkStillHandsOver) {
    BackgroundJob job;
    Gate gate;
    std::optional<bool> was_let_go;
    job.start([&gate](const GoOn& go_on) { return gate.wait(go_on); },
              [&was_let_go](bool let_go) { was_let_go = let_go; });
    gate.until_started();
    job.cancel();
    ASSERT_TRUE(QTest::qWaitFor([&] { return was_let_go.has_value(); }));
    EXPECT_FALSE(*was_let_go);
}

TEST(BackgroundJob, StoppedWorkHasEndedAndHandsOverNothing) {
    BackgroundJob job;
    Gate gate;
    std::atomic<bool> ended = false;
    bool handed_over = false;
    QList<bool> running;
    QObject::connect(&job, &BackgroundJob::running_changed, &job,
                     [&running](bool now) { running += now; });
    job.start(
        [&](const GoOn& go_on) {
            gate.wait(go_on);
            ended = true;
            return 0;
        },
        [&handed_over](int) { handed_over = true; });
    gate.until_started();
    job.stop();
    EXPECT_TRUE(ended);
    EXPECT_FALSE(job.running());
    let_messages_come();
    EXPECT_FALSE(handed_over);
    EXPECT_EQ(running, (QList<bool>{true, false}));
}

TEST(BackgroundJob, OnlyTheLastStartHandsOver) {
    BackgroundJob job;
    QList<int> results;
    QList<double> shares;
    QObject::connect(&job, &BackgroundJob::progressed, &job,
                     [&shares](double share) { shares += share; });
    for (int i = 0; i < 20; ++i) {
        QSemaphore at_end;
        job.start(
            [i, &at_end](const GoOn& go_on) {
                go_on(i / 100.0);
                at_end.release();
                return i;
            },
            [&results](int value) { results += value; });
        // Its messages are on their way when the next start makes it stale.
        at_end.acquire();
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return !results.isEmpty(); }));
    let_messages_come();
    EXPECT_EQ(results, QList<int>{19});
    EXPECT_EQ(shares, QList<double>{0.19});
}

TEST(BackgroundJob, AnotherStartInTheHandOverIsKept) {
    BackgroundJob job;
    QList<int> results;
    job.start([](const GoOn&) { return 1; },
              [&](int value) {
                  results += value;
                  job.start([](const GoOn&) { return 2; }, [&](int next) { results += next; });
              });
    ASSERT_TRUE(QTest::qWaitFor([&] { return results.size() == 2; }));
    EXPECT_EQ(results, (QList<int>{1, 2}));
    EXPECT_FALSE(job.running());
}

TEST(BackgroundJob, WaitsForTheEndWhenItGoes) {
    Gate gate;
    std::atomic<bool> ended = false;
    bool handed_over = false;
    {
        BackgroundJob job;
        job.start(
            [&](const GoOn& go_on) {
                gate.wait(go_on);
                ended = true;
                return 0;
            },
            [&handed_over](int) { handed_over = true; });
        gate.until_started();
    }
    EXPECT_TRUE(ended);
    let_messages_come();
    EXPECT_FALSE(handed_over);
}

TEST(BackgroundJob, WhatIsToFinishIsNotToldToStopWhenItsJobGoes) {
    Gate gate;
    int asked = 0;
    bool told_to_stop = false;
    bool handed_over = false;
    {
        BackgroundJob job(nullptr, BackgroundJob::AtStop::finish);
        job.start(
            [&](const GoOn& go_on) {
                gate.wait_unasked();
                for (; asked < 20'000; ++asked) told_to_stop = told_to_stop || !go_on(0.5);
                return 0;
            },
            [&handed_over](int) { handed_over = true; });
        gate.until_started();
        gate.open();
    }
    EXPECT_EQ(asked, 20'000);
    EXPECT_FALSE(told_to_stop);
    let_messages_come();
    EXPECT_FALSE(handed_over);
}

TEST(BackgroundJob, OnceHandsOverToAContextThatIsThere) {
    QObject context;
    QList<int> results;
    for (int i = 0; i < 8; ++i) {
        BackgroundJob::once(
            &context, [i](const GoOn&) { return i; }, [&results](int value) { results += value; });
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return results.size() == 8; }));
    EXPECT_THAT(results, ::testing::UnorderedElementsAre(0, 1, 2, 3, 4, 5, 6, 7));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_TRUE(context.children().isEmpty());
}

TEST(BackgroundJob, OnceDropsWhatAContextThatIsGoneWouldGet) {
    const auto gate = std::make_shared<Gate>();
    const auto held = std::make_shared<int>(0);  // by the work and by the hand-over
    bool handed_over = false;
    {
        QObject context;
        BackgroundJob::once(
            &context,
            [gate, held](const GoOn&) {
                gate->wait_unasked();
                return 0;
            },
            [&handed_over, held](int) { handed_over = true; });
        gate->until_started();
        EXPECT_EQ(held.use_count(), 3);
    }
    // It did not wait for work that goes on; the hand-over is forgotten in this thread.
    EXPECT_EQ(held.use_count(), 2);
    gate->open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return held.use_count() == 1; }));
    let_messages_come();
    EXPECT_FALSE(handed_over);
}

TEST(WorkBehindBox, GivesBackWhatTheWorkGave) {
    QWidget window;
    const std::optional<int> result = work_behind_box(&window, QStringLiteral("Counting…"), true,
                                                      [](const GoOn&) { return 7; });
    EXPECT_EQ(result, 7);
}

TEST(WorkBehindBox, StopsAtTheButton) {
    QWidget window;
    window.show();
    Gate gate;
    bool clicked = false;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, &window, [&] {
        auto* box = window.findChild<QProgressDialog*>(QStringLiteral("work_box"));
        if (clicked || box == nullptr || !box->isVisible()) return;
        EXPECT_EQ(box->labelText().toStdString(), "Counting…");
        EXPECT_EQ(box->value(), 50);
        clicked = true;
        QTest::mouseClick(box->findChild<QPushButton*>(), Qt::LeftButton);
    });
    look.start(5);
    const std::optional<bool> result =
        work_behind_box(&window, QStringLiteral("Counting…"), true,
                        [&gate](const GoOn& go_on) { return gate.wait(go_on); });
    EXPECT_TRUE(clicked);
    EXPECT_FALSE(result);
}

TEST(WorkBehindBox, EscapeDoesNotStopWhatMustNotStop) {
    QWidget window;
    window.show();
    Gate gate;
    bool pressed = false;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, &window, [&] {
        auto* box = window.findChild<QProgressDialog*>(QStringLiteral("work_box"));
        if (pressed || box == nullptr || !box->isVisible()) return;
        EXPECT_EQ(box->findChild<QPushButton*>(), nullptr);
        QTest::keyClick(box, Qt::Key_Escape);
        pressed = true;
        EXPECT_TRUE(box->isVisible());
        gate.open();
    });
    look.start(5);
    const std::optional<bool> result =
        work_behind_box(&window, QStringLiteral("Removing…"), false,
                        [&gate](const GoOn& go_on) { return gate.wait(go_on); });
    EXPECT_TRUE(pressed);
    EXPECT_EQ(result, true);
}

}  // namespace
}  // namespace leadline::testing
