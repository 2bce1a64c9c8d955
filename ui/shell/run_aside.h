// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QMetaObject>
#include <QPointer>
#include <QThreadPool>
#include <memory>
#include <utility>

namespace leadline {

/// Does work in another thread and hands its value to `then` in the thread of the window, unless
/// the context is gone by then.
/// @param work  touches nothing that the window's thread uses; gives back a value that can be moved
template <typename Work, typename Then>
void run_aside(QObject* context, Work work, Then then) {
    using Value = decltype(work());
    // std::function wants to copy what it holds; keys cannot be copied.
    auto shared_work = std::make_shared<Work>(std::move(work));
    auto shared_then = std::make_shared<Then>(std::move(then));
    QThreadPool::globalInstance()->start(
        [shared_work, shared_then, context = QPointer<QObject>(context)]() mutable {
            auto value = std::make_shared<Value>((*shared_work)());
            shared_work.reset();
            QMetaObject::invokeMethod(
                QCoreApplication::instance(),
                [shared_then, context, value] {
                    if (context) (*shared_then)(std::move(*value));
                },
                Qt::QueuedConnection);
        });
}

}  // namespace leadline
