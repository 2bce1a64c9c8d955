// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/background_work.h"

#include <QEventLoop>
#include <QProgressDialog>
#include <QThread>
#include <QTimer>
#include <utility>

#include "ui/words/error_words.h"

namespace leadline {

BackgroundWork::~BackgroundWork() { stop(); }

void BackgroundWork::start(const QString& database_path, Work work,
                           std::function<void(const QString&)> done) {
    stop();
    stop_ = std::make_shared<std::atomic_bool>(false);
    auto failure = std::make_shared<QString>();
    thread_ = QThread::create([database_path, work = std::move(work), stop = stop_, failure] {
        const Result<std::unique_ptr<Database>> database = Database::open(database_path);
        if (database) {
            work(**database, *stop);
        } else {
            *failure = words(database.error());
        }
    });
    connect(thread_, &QThread::finished, this, [this, done = std::move(done), failure] {
        thread_->deleteLater();
        thread_ = nullptr;
        done(*failure);
    });
    thread_->start();
}

void BackgroundWork::stop() {
    if (thread_ == nullptr) return;
    *stop_ = true;
    disconnect(thread_, nullptr, this, nullptr);
    thread_->wait();
    delete thread_;
    thread_ = nullptr;
}

std::optional<QString> work_apart(QWidget* parent, const QString& database_path,
                                  const QString& label, bool may_stop,
                                  BackgroundWork::Work work) {
    constexpr int a_moment_ms = 200;
    QProgressDialog box(label, may_stop ? BackgroundWork::tr("Stop") : QString(), 0, 0, parent);
    box.setObjectName(QStringLiteral("work_box"));
    box.setWindowModality(Qt::WindowModal);
    box.setMinimumDuration(a_moment_ms);
    QEventLoop loop;
    std::optional<QString> result;
    BackgroundWork background;
    background.start(database_path, std::move(work), [&](const QString& failure) {
        result = failure;
        loop.quit();
    });
    QObject::connect(&box, &QProgressDialog::canceled, &loop, [&] {
        // Escape closes the box; work that must not stop goes on all the same.
        if (!may_stop) return box.show();
        background.stop();
        loop.quit();
    });
    loop.exec();
    return result;
}

}  // namespace leadline
