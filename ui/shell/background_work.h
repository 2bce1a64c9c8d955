// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>

#include "core/records/database.h"

class QThread;
class QWidget;

namespace leadline {

/// Work on the records away from the window, with a connection of its own. At most one at a time.
class BackgroundWork : public QObject {
    Q_OBJECT
public:
    /// @param stop  becomes true when the work is not wanted any more
    using Work = std::function<void(Database& database, const std::atomic_bool& stop)>;

    using QObject::QObject;
    /// Stops, and waits for, what is running.
    ~BackgroundWork() override;

    /// Starts. `done` is called on this thread when the work is over, unless it was stopped; the text
    /// is empty, or says why the records could not be opened.
    void start(const QString& database_path, Work work, std::function<void(const QString&)> done);
    [[nodiscard]] bool is_running() const { return thread_ != nullptr; }
    void stop();

private:
    QThread* thread_ = nullptr;
    std::shared_ptr<std::atomic_bool> stop_;
};

/// Runs work away from the window and comes back when it is over. A box says what is going on once it
/// takes longer than a moment; with a button to stop it where that leaves nothing half done.
/// @returns an empty text; or why the records could not be opened; nothing where it was stopped
std::optional<QString> work_apart(QWidget* parent, const QString& database_path,
                                  const QString& label, bool may_stop,
                                  BackgroundWork::Work work);

}  // namespace leadline
