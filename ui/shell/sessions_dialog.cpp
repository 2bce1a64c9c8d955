// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/sessions_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/shell/record_keeper.h"
#include "ui/words/error_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {

SessionsDialog::SessionsDialog(RecordKeeper& keeper, QWidget* parent)
    : QDialog(parent), keeper_(keeper), table_(new QTableWidget(this)) {
    setWindowTitle(tr("Sessions on record"));
    setObjectName(QStringLiteral("sessions_dialog"));
    resize(720, 420);
    table_->setObjectName(QStringLiteral("sessions_table"));
    table_->setAccessibleName(tr("Sessions on record"));
    table_->setColumnCount(5);
    table_->setHorizontalHeaderLabels(
        {tr("Date"), tr("Dive"), tr("Session"), tr("Site"), tr("Guests")});
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setShowGrid(false);

    auto* where = new QLabel(tr("Kept in %1").arg(keeper_.database_path()), this);
    where->setTextInteractionFlags(Qt::TextSelectableByMouse);
    where->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    open_ = buttons->addButton(tr("&Open"), QDialogButtonBox::AcceptRole);
    open_->setObjectName(QStringLiteral("sessions_open"));
    remove_ = buttons->addButton(tr("&Delete…"), QDialogButtonBox::ActionRole);
    remove_->setObjectName(QStringLiteral("sessions_delete"));
    const auto accept_current = [this] {
        chosen_ = current();
        if (chosen_) accept();
    };
    connect(buttons, &QDialogButtonBox::accepted, this, accept_current);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(table_, &QTableWidget::itemActivated, this, accept_current);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &SessionsDialog::update_buttons);
    connect(remove_, &QPushButton::clicked, this, &SessionsDialog::remove_current);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(8);
    layout->addWidget(table_, 1);
    layout->addWidget(where);
    layout->addWidget(buttons);
    fill();
}

void SessionsDialog::fill() {
    const Result<std::vector<SessionSummary>> sessions = keeper_.sessions();
    table_->setRowCount(0);
    if (!sessions) {
        QMessageBox::warning(this, windowTitle(), words(sessions.error()));
        return;
    }
    table_->setRowCount(static_cast<int>(sessions->size()));
    int row = 0;
    for (const SessionSummary& session : *sessions) {
        auto* date = new QTableWidgetItem(text(session.date));
        date->setData(Qt::UserRole, session.row.value);
        table_->setItem(row, 0, date);
        table_->setItem(row, 1, new QTableWidgetItem(text(session.dive_time)));
        const QString title = session.title.empty() ? tr("(no name)")
                                                    : QString::fromStdString(session.title);
        table_->setItem(row, 2, new QTableWidgetItem(
                                    session.has_log ? tr("%1 (logged)").arg(title) : title));
        table_->setItem(row, 3, new QTableWidgetItem(QString::fromStdString(session.site)));
        table_->setItem(row, 4, new QTableWidgetItem(QString::number(session.guests)));
        ++row;
    }
    if (row > 0) table_->selectRow(0);
    update_buttons();
}

std::optional<SessionRow> SessionsDialog::current() const {
    const int row = table_->currentRow();
    if (row < 0 || table_->item(row, 0) == nullptr) return std::nullopt;
    return SessionRow{table_->item(row, 0)->data(Qt::UserRole).toLongLong()};
}

void SessionsDialog::update_buttons() {
    const std::optional<SessionRow> row = current();
    open_->setEnabled(row.has_value());
    // The open session is not deleted from under the window.
    remove_->setEnabled(row && row != keeper_.current_row());
}

void SessionsDialog::remove_current() {
    const std::optional<SessionRow> row = current();
    if (!row) return;
    const QString name = table_->item(table_->currentRow(), 2)->text();
    const auto answer = QMessageBox::question(
        this, tr("Delete session"),
        tr("Delete \"%1\" with its plan and log for good? The guests stay on record.").arg(name),
        QMessageBox::Yes | QMessageBox::No, QMessageBox::No);
    if (answer != QMessageBox::Yes) return;
    if (const Result<Done> done = keeper_.remove(*row); !done) {
        QMessageBox::warning(this, windowTitle(), words(done.error()));
    }
    fill();
}

}  // namespace leadline
