// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/backups_dialog.h"

#include <QDate>
#include <QDateTime>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QMessageBox>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <utility>

#include "core/records/check.h"
#include "core/records/export.h"
#include "ui/document/session_document.h"
#include "ui/shell/record_keeper.h"
#include "ui/shell/restore_dialog.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

enum Column { made_column, why_column, size_column, state_column, column_count };

QDateTime local_time(CopyTime time) {
    return QDateTime::fromMSecsSinceEpoch(time.time_since_epoch().count());
}

QString when(CopyTime time) {
    const QLocale locale;
    const QDateTime local = local_time(time);
    return locale.toString(
        local, BackupsDialog::tr("ddd d MMM yyyy  hh:mm", "date and time; the letters stay"));
}

QString why(CopyKind kind) {
    switch (kind) {
        case CopyKind::by_schedule: return BackupsDialog::tr("By itself");
        case CopyKind::by_hand: return BackupsDialog::tr("By hand");
        case CopyKind::before_restore: return BackupsDialog::tr("Before a copy was put back");
        case CopyKind::damaged: return BackupsDialog::tr("Damaged records, kept as they were");
    }
    return {};
}

/// A new session for records that hold none.
SessionFile fresh_session() {
    const QDate day = QDate::currentDate();
    SessionFile file{empty_session(Date{std::chrono::year(day.year()),
                                        std::chrono::month(static_cast<unsigned>(day.month())),
                                        std::chrono::day(static_cast<unsigned>(day.day()))}),
                     std::nullopt};
    file.session.leader = file.session.staff.front().id;
    return file;
}

}  // namespace

BackupsDialog::BackupsDialog(RecordKeeper& keeper, QWidget* parent)
    : QDialog(parent),
      keeper_(keeper),
      table_(new QTableWidget(this)),
      icon_(new QLabel(this)),
      message_(new QLabel(this)),
      progress_(new QProgressBar(this)),
      stop_(new QPushButton(tr("&Stop"), this)) {
    setWindowTitle(tr("Copies of the records"));
    setObjectName(QStringLiteral("backups_dialog"));
    resize(within_screen(*this, {760, 520}));
    choose_restore_file = [this] {
        return QFileDialog::getOpenFileName(
            this, tr("Put back from a file"), copies_folder(keeper_.wanted_path()),
            tr("Copies and exports (*.sqlite *.json);;All files (*)"));
    };
    choose_export_folder = [this] {
        return QFileDialog::getExistingDirectory(this, tr("Write everything into a folder"));
    };
    auto* intro = new QLabel(
        tr("While Leadline is open it makes a copy a day of records that have changed: it keeps the "
           "last 7 days, then one a week for 8 weeks and one a month for 12 months. They lie in the "
           "folder %1. A copy on the same disk does not help when the disk is lost: now and then "
           "take one to another place.")
            .arg(copies_folder(keeper_.wanted_path())),
        this);
    intro->setWordWrap(true);
    intro->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* erasing = new QLabel(
        tr("A copy still holds guests who were erased after it was made. To erase a guest for good, "
           "delete the copies from before as well. In a copy, too, only the vault is sealed."),
        this);
    erasing->setObjectName(QStringLiteral("backups_erasing"));
    erasing->setWordWrap(true);
    build_table();
    message_->setObjectName(QStringLiteral("backups_message"));
    message_->setWordWrap(true);
    message_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    progress_->setObjectName(QStringLiteral("backups_progress"));
    progress_->setAccessibleName(tr("Progress"));
    progress_->setRange(0, 100);
    stop_->setObjectName(QStringLiteral("backups_stop"));
    stop_->setAutoDefault(false);
    connect(stop_, &QPushButton::clicked, &job_, &BackgroundJob::cancel);
    connect(&job_, &BackgroundJob::progressed, this, [this](double share) {
        if (busy_) progress_->setValue(static_cast<int>(share * 100.0));
    });

    auto* line = new QHBoxLayout;
    line->addWidget(icon_);
    line->addWidget(message_, 1);
    line->addWidget(progress_);
    line->addWidget(stop_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(12);
    layout->addWidget(intro);
    layout->addWidget(table_, 1);
    layout->addWidget(erasing);
    layout->addLayout(line);
    layout->addWidget(build_buttons());
    progress_->hide();
    stop_->hide();
    fill();
}

void BackupsDialog::build_table() {
    table_->setObjectName(QStringLiteral("backups_table"));
    table_->setAccessibleName(tr("Copies of the records"));
    table_->setColumnCount(column_count);
    table_->setHorizontalHeaderLabels({tr("Made"), tr("Why"), tr("Size"), tr("Checked")});
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    constexpr int narrowest = 90;
    table_->horizontalHeader()->setMinimumSectionSize(narrowest);
    table_->horizontalHeader()->setSectionResizeMode(why_column, QHeaderView::Stretch);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &BackupsDialog::update_buttons);
}

QWidget* BackupsDialog::build_buttons() {
    auto* rows = new QWidget(this);
    auto* layout = new QHBoxLayout(rows);
    layout->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const char* name, void (BackupsDialog::*act)()) {
        auto* button = new QPushButton(text, rows);
        button->setObjectName(QString::fromLatin1(name));
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, act);
        layout->addWidget(button);
        return button;
    };
    make_ = add(tr("&Make a copy now"), "backups_make", &BackupsDialog::make_now);
    restore_ = add(tr("&Put back…"), "backups_restore", &BackupsDialog::restore_selected);
    from_file_ = add(tr("Put back from a &file…"), "backups_from_file",
                     &BackupsDialog::restore_from_file);
    delete_ = add(tr("&Delete…"), "backups_delete", &BackupsDialog::delete_selected);
    export_ = add(tr("&Write everything out…"), "backups_export",
                  &BackupsDialog::write_everything);
    layout->addStretch(1);
    auto* close = new QPushButton(tr("&Close"), rows);
    close->setObjectName(QStringLiteral("backups_close"));
    close->setAutoDefault(false);
    connect(close, &QPushButton::clicked, this, &BackupsDialog::reject);
    layout->addWidget(close);
    return rows;
}

QString BackupsDialog::message() const { return message_->text(); }

void BackupsDialog::say(const QString& text, Severity severity) {
    constexpr int icon_side = 20;
    icon_->setPixmap(text.isEmpty()
                         ? QPixmap()
                         : severity_icon(severity, palette()).pixmap(icon_side, icon_side));
    message_->setText(text);
}

std::optional<RecordCopy> BackupsDialog::selected() const {
    const int row = table_->currentRow();
    if (row < 0 || row >= static_cast<int>(copies_.size())) return std::nullopt;
    return copies_[static_cast<std::size_t>(row)];
}

void BackupsDialog::fill() {
    const std::optional<RecordCopy> before = selected();
    copies_ = list_copies(keeper_.wanted_path());
    table_->setRowCount(static_cast<int>(copies_.size()));
    int row = 0;
    int current = 0;
    for (const RecordCopy& copy : copies_) {
        if (before && before->path == copy.path) current = row;
        auto* size = new QTableWidgetItem(locale().formattedDataSize(copy.bytes, 1));
        size->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        const auto found = checked_.constFind(copy.path);
        QString state = tr("checking…");
        if (found != checked_.constEnd()) {
            state = found->isEmpty() ? tr("whole") : tr("not whole");
        }
        if (copy.kind == CopyKind::damaged) state = tr("not whole");
        auto* state_item = new QTableWidgetItem(state);
        if (found != checked_.constEnd()) state_item->setToolTip(*found);
        table_->setItem(row, made_column, new QTableWidgetItem(when(copy.made)));
        table_->setItem(row, why_column, new QTableWidgetItem(why(copy.kind)));
        table_->setItem(row, size_column, size);
        table_->setItem(row, state_column, state_item);
        ++row;
    }
    if (row > 0) table_->selectRow(current);
    update_buttons();
    check_copies();
}

void BackupsDialog::check_copies() {
    if (busy_) return;
    QStringList paths;
    for (const RecordCopy& copy : copies_) {
        if (copy.kind != CopyKind::damaged && !checked_.contains(copy.path)) paths += copy.path;
    }
    if (paths.isEmpty()) return;
    using Found = QMap<QString, QString>;
    job_.start(
        [paths](const GoOn& go_on) {
            Found found;
            for (const QString& path : paths) {
                const Result<int> whole =
                    check_records_file(path, CheckDepth::thorough, go_on);
                if (!whole && whole.error().code == ErrorCode::cancelled) break;
                // Newer ones are whole for the program that wrote them.
                found[path] = whole ? QString() : words(whole.error());
            }
            return found;
        },
        [this](Found found) {
            checked_.insert(found);
            fill();
        });
}

void BackupsDialog::update_buttons() {
    const std::optional<RecordCopy> copy = selected();
    const bool idle = !busy_;
    make_->setEnabled(idle && keeper_.has_database());
    restore_->setEnabled(idle && copy && copy->kind != CopyKind::damaged);
    from_file_->setEnabled(idle);
    delete_->setEnabled(idle && copy);
    export_->setEnabled(idle && keeper_.has_database());
    table_->setEnabled(idle);
}

void BackupsDialog::start_work(const QString& what) {
    busy_ = true;
    say(what, Severity::note);
    progress_->setValue(0);
    progress_->show();
    stop_->show();
    stop_->setFocus();
    update_buttons();
}

void BackupsDialog::end_work() {
    busy_ = false;
    progress_->hide();
    stop_->hide();
    fill();
    table_->setFocus();
    Q_EMIT finished_work();
}

void BackupsDialog::reject() {
    // While something is at work, closing means stopping it.
    if (busy_) {
        job_.cancel();
        return;
    }
    job_.stop();
    QDialog::reject();
}

void BackupsDialog::make_now() {
    start_work(tr("Making a copy…"));
    using Made = Result<RecordCopy>;
    job_.start(
        [path = keeper_.wanted_path(), now = current_time()](const GoOn& go_on) {
            return make_copy(path, CopyKind::by_hand, now, go_on);
        },
        [this](Made made) {
            if (made) {
                checked_[made->path] = QString();
                say(tr("Made and checked: %1").arg(QFileInfo(made->path).fileName()),
                    Severity::note);
            } else {
                say(words(made.error()), Severity::stop);
            }
            end_work();
        });
}

void BackupsDialog::restore_selected() {
    const std::optional<RecordCopy> copy = selected();
    if (copy) preview(copy->path, tr("made %1").arg(when(copy->made)));
}

void BackupsDialog::restore_from_file() {
    const QString path = choose_restore_file();
    if (!path.isEmpty()) preview(path, QFileInfo(path).fileName());
}

void BackupsDialog::preview(const QString& path, const QString& name) {
    start_work(tr("Reading the copy…"));
    using Found = Result<RestorePreview>;
    job_.start(
        [records = keeper_.wanted_path(), path](const GoOn& go_on) {
            return preview_restore(records, path, go_on);
        },
        [this, path, name](const Found& found) {
            if (!found) {
                say(words(found.error()), Severity::stop);
                end_work();
                return;
            }
            ask_and_restore(path, name, *found);
        });
}

void BackupsDialog::ask_and_restore(const QString& path, const QString& name,
                                    const RestorePreview& preview) {
    RestoreDialog dialog(name, preview, this);
    if (dialog.exec() != QDialog::Accepted) {
        say(tr("Nothing was changed."), Severity::note);
        end_work();
        return;
    }
    restore(path, name);
}

void BackupsDialog::restore(const QString& path, const QString& name) {
    const Result<Done> closed = keeper_.close_records();
    if (!closed) {
        say(tr("Nothing was changed, because the open session is not saved. %1")
                .arg(words(closed.error())),
            Severity::stop);
        end_work();
        return;
    }
    start_work(tr("Putting the copy back…"));
    using Restored = Result<std::optional<RecordCopy>>;
    job_.start(
        [records = keeper_.wanted_path(), path, now = current_time()](const GoOn& go_on) {
            return restore_copy(records, path, now, go_on);
        },
        [this, name](const Restored& restored) {
            const Result<Done> opened = keeper_.reopen_records(fresh_session());
            if (!restored) {
                say(words(restored.error()), Severity::stop);
            } else if (!opened) {
                say(words(opened.error()), Severity::stop);
            } else {
                say(tr("The copy %1 is in place. What stood there before is in the list.").arg(name),
                    Severity::note);
            }
            end_work();
        });
}

void BackupsDialog::delete_selected() {
    const std::optional<RecordCopy> copy = selected();
    if (!copy) return;
    QMessageBox question(
        QMessageBox::Question, tr("Delete a copy"),
        tr("Delete the copy made %1 for good? The records themselves stay.").arg(when(copy->made)),
        QMessageBox::NoButton, this);
    question.setObjectName(QStringLiteral("backups_delete_question"));
    QPushButton* yes = question.addButton(tr("&Delete it"), QMessageBox::DestructiveRole);
    yes->setObjectName(QStringLiteral("backups_delete_yes"));
    question.setDefaultButton(question.addButton(QMessageBox::Cancel));
    question.exec();
    if (question.clickedButton() != yes) return;
    // It may be under check.
    job_.stop();
    const Result<Done> removed = remove_copy(*copy);
    say(removed ? tr("Deleted.") : words(removed.error()),
        removed ? Severity::note : Severity::stop);
    fill();
}

void BackupsDialog::write_everything() {
    const QString parent_folder = choose_export_folder();
    if (parent_folder.isEmpty()) return;
    const QString folder =
        parent_folder + QStringLiteral("/leadline-records-") +
        QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyy-MM-dd'T'HH-mm-ss'Z'"));
    start_work(tr("Writing everything out…"));
    using Written = Result<Done>;
    job_.start(
        [path = keeper_.wanted_path(), folder](const GoOn& go_on) {
            return export_records(path, folder, go_on);
        },
        [this, folder](const Written& written) {
            if (written) {
                say(tr("Written to %1. Names, phone numbers and outcomes stand open in it: keep it safe.").arg(folder),
                    Severity::note);
            } else {
                say(words(written.error()), Severity::stop);
            }
            end_work();
        });
}

}  // namespace leadline
