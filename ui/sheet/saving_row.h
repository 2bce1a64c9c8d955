// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/sheet/pdf.h"
#include "ui/widgets/background_job.h"

class QProgressBar;
class QPushButton;
class QTimer;

namespace leadline {

/// Saves pages as a PDF beside the window: how far it is, and a button to stop. In sight only while
/// that takes longer than a moment. A save that is under way when the row goes comes to its end.
class SavingRow : public QWidget {
    Q_OBJECT
public:
    explicit SavingRow(QWidget* parent = nullptr);

    /// Starts to save the pages as they are now. Not while running().
    void save(const QString& path, std::vector<Page> pages, PdfInfo info, FileAccess access);
    /// How long it saves before it comes into sight; 0: it does so at once.
    void set_moment(int milliseconds) { moment_ms_ = milliseconds; }
    [[nodiscard]] bool running() const { return job_.running(); }

Q_SIGNALS:
    /// How it went, as write_pages_pdf() says; the row is still in sight then.
    void ended(const leadline::Result<int>& pages, const QString& path);

private:
    QProgressBar* bar_;
    QPushButton* stop_;
    QTimer* moment_;
    int moment_ms_ = 200;
    BackgroundJob job_;
};

}  // namespace leadline
