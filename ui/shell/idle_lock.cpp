// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/idle_lock.h"

#include <QCoreApplication>
#include <QDBusConnection>
#include <QEvent>

namespace leadline {
namespace {

bool is_input(QEvent::Type type) {
    switch (type) {
        case QEvent::KeyPress:
        case QEvent::MouseButtonPress:
        case QEvent::MouseMove:
        case QEvent::Wheel:
        case QEvent::TouchBegin:
        case QEvent::TouchUpdate:
        case QEvent::TabletPress:
        case QEvent::TabletMove:
            return true;
        default:
            return false;
    }
}

}  // namespace

IdleLock::IdleLock(QObject* parent) : QObject(parent) {
    timer_.setSingleShot(true);
    connect(&timer_, &QTimer::timeout, this, &IdleLock::idle);
    QCoreApplication::instance()->installEventFilter(this);
    // Where there is no such service, nothing is heard and the idle time alone locks.
    QDBusConnection bus = QDBusConnection::systemBus();
    if (bus.isConnected()) {
        bus.connect(QStringLiteral("org.freedesktop.login1"),
                    QStringLiteral("/org/freedesktop/login1"),
                    QStringLiteral("org.freedesktop.login1.Manager"),
                    QStringLiteral("PrepareForSleep"), this, SLOT(sleep_is_near(bool)));
    }
}

void IdleLock::set_wait(std::chrono::milliseconds wait) {
    wait_ = wait;
    if (timer_.isActive()) start();
}

void IdleLock::start() {
    if (wait_.count() > 0) {
        timer_.start(wait_);
    } else {
        timer_.stop();
    }
}

bool IdleLock::eventFilter(QObject* watched, QEvent* event) {
    if (timer_.isActive() && is_input(event->type())) timer_.start(wait_);
    return QObject::eventFilter(watched, event);
}

void IdleLock::sleep_is_near(bool going) {
    if (going) Q_EMIT idle();
}

}  // namespace leadline
