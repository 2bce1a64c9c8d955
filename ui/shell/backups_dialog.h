// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QMap>
#include <functional>
#include <optional>
#include <vector>

#include "core/planning/finding.h"
#include "core/records/backup.h"
#include "core/records/restore.h"
#include "ui/widgets/background_job.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;

namespace leadline {

class RecordKeeper;

/// The copies of the records: which there are and whether they are whole; make one, put one back,
/// delete one, write everything out. All work is done beside the window and can be stopped.
class BackupsDialog : public QDialog {
    Q_OBJECT
public:
    BackupsDialog(RecordKeeper& keeper, QWidget* parent);

    void reject() override;
    [[nodiscard]] bool working() const { return busy_; }
    /// What the line above the buttons says.
    [[nodiscard]] QString message() const;

    /// Asks for a file to put back, or a folder to write everything into; replaced in tests.
    std::function<QString()> choose_restore_file;
    std::function<QString()> choose_export_folder;

Q_SIGNALS:
    /// Work has ended, the checking of the copies apart.
    void finished_work();

private:
    void build_table();
    QWidget* build_buttons();
    void fill();
    void check_copies();
    void update_buttons();
    void make_now();
    void restore_selected();
    void restore_from_file();
    void preview(const QString& path, const QString& name);
    void ask_and_restore(const QString& path, const QString& name, const RestorePreview& preview);
    void restore(const QString& path, const QString& name);
    void delete_selected();
    void write_everything();
    void start_work(const QString& what);
    void end_work();
    void say(const QString& text, Severity severity);
    [[nodiscard]] std::optional<RecordCopy> selected() const;

    RecordKeeper& keeper_;
    std::vector<RecordCopy> copies_;
    /// By path: what the check of this session found; an empty text for a whole copy.
    QMap<QString, QString> checked_;
    BackgroundJob job_;
    bool busy_ = false;
    QTableWidget* table_;
    QLabel* icon_;
    QLabel* message_;
    QProgressBar* progress_;
    QPushButton* stop_;
    QPushButton* make_ = nullptr;
    QPushButton* restore_ = nullptr;
    QPushButton* from_file_ = nullptr;
    QPushButton* delete_ = nullptr;
    QPushButton* export_ = nullptr;
};

}  // namespace leadline
