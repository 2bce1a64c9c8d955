// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QTimer>
#include <functional>
#include <optional>

#include "core/records/backup.h"
#include "ui/widgets/background_job.h"

namespace leadline {

/// Makes copies of the records by schedule while the window is open: looks when it starts and every
/// hour after, and reads all pages of the records once, to find damage while there are copies.
/// Never in the way: the work is done beside the window, and what goes wrong is one message.
class CopyTimer : public QObject {
    Q_OBJECT
public:
    /// @param clock  the time; replaced in tests
    explicit CopyTimer(QString database_path, QObject* parent = nullptr,
                       std::function<CopyTime()> clock = current_time);

    /// Looks now, and every hour from now on.
    void start();
    /// Looks whether a copy is due, unless it is already looking.
    void look();
    /// Stops what is under way, waits for its end and looks no more until start(): somebody needs
    /// the records alone.
    void pause();
    [[nodiscard]] bool working() const { return job_.running(); }

Q_SIGNALS:
    void made(const QString& path);
    /// Nothing could be copied, or the records are damaged; the message says what to do.
    void failed(const QString& message);
    /// A look has ended, whatever came of it.
    void looked();

private:
    struct Look {
        std::optional<Error> error;
        ScheduledCopy copy;
    };
    static Look work(const QString& path, CopyTime now, bool first, const GoOn& go_on);
    void take(const Look& look, CopyTime at);

    QString path_;
    std::function<CopyTime()> clock_;
    QTimer timer_;
    BackgroundJob job_;
    bool checked_ = false;
    /// When nothing had changed at the last look, the next is worth while after the same time as
    /// after a copy.
    std::optional<CopyTime> unchanged_at_;
    QString last_message_;
};

}  // namespace leadline
