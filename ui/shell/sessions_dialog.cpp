// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/sessions_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/shell/record_keeper.h"
#include "ui/shell/sessions_model.h"
#include "ui/widgets/screen_room.h"
#include "ui/words/error_words.h"

namespace leadline {

SessionsDialog::SessionsDialog(RecordKeeper& keeper, QWidget* parent)
    : QDialog(parent),
      keeper_(keeper),
      model_(new SessionsModel(keeper, this)),
      table_(new QTableView(this)) {
    setWindowTitle(tr("Sessions on record"));
    setObjectName(QStringLiteral("sessions_dialog"));
    resize(within_screen(*this, {720, 420}));
    table_->setObjectName(QStringLiteral("sessions_table"));
    table_->setAccessibleName(tr("Sessions on record"));
    table_->setModel(model_);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    // The width of what is in view: measuring a whole long list would take long.
    table_->horizontalHeader()->setResizeContentsPrecision(0);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(SessionsModel::title_column,
                                                     QHeaderView::Stretch);
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
    connect(table_, &QTableView::activated, this, accept_current);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &SessionsDialog::update_buttons);
    connect(remove_, &QPushButton::clicked, this, &SessionsDialog::remove_current);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(8);
    layout->addWidget(table_, 1);
    layout->addWidget(where);
    layout->addWidget(buttons);
    select_first();
}

void SessionsDialog::select_first() {
    if (model_->rowCount() > 0) table_->selectRow(0);
    update_buttons();
}

std::optional<SessionRow> SessionsDialog::current() const {
    const auto session = model_->session(table_->currentIndex().row());
    return session ? std::optional(session->row) : std::nullopt;
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
    const QString name =
        table_->currentIndex().siblingAtColumn(SessionsModel::title_column).data().toString();
    const auto answer = QMessageBox::question(
        this, tr("Delete session"),
        tr("Delete \"%1\" with its plan and log for good? The guests stay on record.").arg(name),
        QMessageBox::Yes | QMessageBox::No, QMessageBox::No);
    if (answer != QMessageBox::Yes) return;
    if (const Result<Done> done = keeper_.remove(*row); !done) {
        QMessageBox::warning(this, windowTitle(), words(done.error()));
    }
    model_->reload();
    select_first();
}

}  // namespace leadline
