// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/red_list_dialog.h"

#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPdfWriter>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QTextDocument>
#include <QVBoxLayout>

#include "ui/roster/measures.h"
#include "ui/widgets/screen_room.h"
#include "ui/words/error_words.h"

namespace leadline {

RedListDialog::RedListDialog(const Result<std::vector<SessionToCome>>& sessions,
                             const RuleBook& rules, QWidget* parent)
    : QDialog(parent),
      model_(new RedListModel(sessions ? *sessions : std::vector<SessionToCome>{}, rules, this)),
      table_(new QTableView(this)),
      message_(new QLabel(this)) {
    setObjectName(QStringLiteral("red_list_dialog"));
    setWindowTitle(tr("Red list"));
    choose_path = [this] {
        return QFileDialog::getSaveFileName(this, tr("Save the list"),
                                            QStringLiteral("red-list.pdf"), tr("PDF (*.pdf)"));
    };
    auto* what = new QLabel(tr("Who must still see a physician, bring consent, answer or renew, "
                               "over all sessions on record from today on. Only outcomes are "
                               "looked at; nothing is unlocked."),
                            this);
    what->setWordWrap(true);
    what->setForegroundRole(QPalette::PlaceholderText);
    table_->setObjectName(QStringLiteral("red_list_table"));
    table_->setAccessibleName(tr("Red list"));
    table_->setModel(model_);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->setAlternatingRowColors(true);
    table_->setWordWrap(true);
    table_->verticalHeader()->hide();
    // What is needed gets the room; long names and titles are cut, with the whole in the tooltip.
    table_->resizeColumnsToContents();
    constexpr int widest_letters = 22;
    const int widest = widest_letters * fontMetrics().averageCharWidth();
    for (int column = 1; column < red_list_column_count; ++column) {
        if (table_->columnWidth(column) > widest) table_->setColumnWidth(column, widest);
    }
    table_->horizontalHeader()->setSectionResizeMode(static_cast<int>(RedListColumn::needs),
                                                     QHeaderView::Stretch);
    table_->horizontalHeader()->setHighlightSections(false);
    message_->setObjectName(QStringLiteral("red_list_message"));
    message_->setTextFormat(Qt::PlainText);
    message_->setWordWrap(true);
    message_->setAlignment(Qt::AlignCenter);
    const bool any = model_->rowCount() > 0;
    table_->setVisible(any);
    if (!sessions) {
        message_->setText(words(sessions.error()));
    } else if (!any) {
        message_->setText(tr("Nobody is waiting for anything."));
    }
    message_->setVisible(!any);

    auto* open = new QPushButton(tr("&Open the session"), this);
    open->setObjectName(QStringLiteral("red_list_open"));
    open->setEnabled(any);
    auto* save = new QPushButton(tr("&Save as PDF…"), this);
    save->setObjectName(QStringLiteral("red_list_save"));
    save->setEnabled(any);
    save->setAutoDefault(false);
    auto* close = new QPushButton(tr("&Close"), this);
    close->setObjectName(QStringLiteral("red_list_close"));
    close->setAutoDefault(false);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spacing);
    buttons->addWidget(open);
    buttons->addWidget(save);
    buttons->addStretch();
    buttons->addWidget(close);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(margin);
    column->addWidget(what);
    column->addWidget(table_, 1);
    column->addWidget(message_, any ? 0 : 1);
    column->addLayout(buttons);
    resize(within_screen(*this, sizeHint().expandedTo({900, 420})));

    connect(open, &QPushButton::clicked, this, [this] { choose(table_->currentIndex().row()); });
    connect(table_, &QTableView::activated, this,
            [this](const QModelIndex& index) { choose(index.row()); });
    connect(save, &QPushButton::clicked, this, &RedListDialog::write_pdf);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    if (any) {
        table_->setCurrentIndex(model_->index(0, 0));
        table_->setFocus();
    } else {
        close->setFocus();
    }
}

void RedListDialog::choose(int row) {
    if (row < 0 || row >= model_->rowCount()) return;
    session_ = model_->session_at(row);
    guest_ = model_->guest_at(row);
    accept();
}

void RedListDialog::write_pdf() {
    const QString path = choose_path();
    if (path.isEmpty()) return;
    QFile file(path);
    const bool opened = file.open(QIODevice::WriteOnly);
    if (opened) {
        QPdfWriter writer(&file);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setTitle(tr("Red list"));
        QTextDocument page;
        page.setHtml(model_->html());
        page.print(&writer);
    }
    const bool written = opened && file.flush() && file.error() == QFile::NoError;
    message_->setText(written ? tr("Saved to %1. It holds names and phone numbers: keep it safe.")
                                    .arg(path)
                              : words(Error{ErrorCode::file_unwritable, path.toStdString(),
                                            file.errorString().toStdString(), {}}));
    message_->show();
}

}  // namespace leadline
