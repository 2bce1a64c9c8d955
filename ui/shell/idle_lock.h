// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>
#include <chrono>

namespace leadline {

/// Says when nobody has touched keyboard, mouse, pen or screen for a while, and when the computer
/// is about to sleep.
class IdleLock : public QObject {
    Q_OBJECT
public:
    explicit IdleLock(QObject* parent);
    /// Zero: never.
    void set_wait(std::chrono::milliseconds wait);
    [[nodiscard]] std::chrono::milliseconds wait() const { return wait_; }
    /// Counts from now.
    void start();
    void stop() { timer_.stop(); }
    [[nodiscard]] bool is_running() const { return timer_.isActive(); }
    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    void idle();

private Q_SLOTS:
    /// The login service's word that the computer goes to sleep (true) or has woken up (false).
    void sleep_is_near(bool going);

private:
    QTimer timer_;
    std::chrono::milliseconds wait_{0};
};

}  // namespace leadline
