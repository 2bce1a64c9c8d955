// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/restore_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/widgets/screen_room.h"
#include "ui/words/error_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

qint64 count(const RestorePreview& preview, SessionPresence presence) {
    return std::count_if(
        preview.sessions.begin(), preview.sessions.end(),
        [presence](const SessionChange& change) { return change.presence == presence; });
}

/// The figures of one table; zeros when the schema has none of that name.
TableChange figures_of(const RestorePreview& preview, const QString& table) {
    const auto found = std::find_if(preview.tables.begin(), preview.tables.end(),
                                    [&](const TableChange& one) { return one.table == table; });
    return found == preview.tables.end() ? TableChange{} : *found;
}

QTableWidgetItem* number_item(qint64 value) {
    auto* item = new QTableWidgetItem(QString::number(value));
    item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    return item;
}

QTableWidget* plain_table(const QStringList& columns, QWidget* parent) {
    auto* table = new QTableWidget(parent);
    table->setColumnCount(static_cast<int>(columns.size()));
    table->setHorizontalHeaderLabels(columns);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    constexpr int narrowest = 90;
    table->horizontalHeader()->setMinimumSectionSize(narrowest);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    return table;
}

}  // namespace

RestoreDialog::RestoreDialog(const QString& name, const RestorePreview& preview, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Put back a copy"));
    setObjectName(QStringLiteral("restore_dialog"));
    resize(within_screen(*this, {680, 480}));
    auto* heading = new QLabel(tr("Put back the copy %1?").arg(name), this);
    heading->setWordWrap(true);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    auto* what = new QLabel(summary(preview), this);
    what->setObjectName(QStringLiteral("restore_summary"));
    what->setWordWrap(true);

    auto* tabs = new QTabWidget(this);
    tabs->setObjectName(QStringLiteral("restore_tabs"));
    tabs->setAccessibleName(tr("What would change"));
    tabs->addTab(session_table(preview), tr("&Sessions that change"));
    tabs->addTab(content_table(preview), tr("&All tables"));

    auto* safety = new QLabel(
        tr("The records as they are now are kept as a copy of their own, so that this can be taken "
           "back. Close Leadline on other screens first."),
        this);
    safety->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    QPushButton* accept = buttons->addButton(tr("&Put this copy back"), QDialogButtonBox::AcceptRole);
    accept->setObjectName(QStringLiteral("restore_accept"));
    accept->setAutoDefault(false);
    // Enter alone replaces nothing.
    QPushButton* cancel = buttons->button(QDialogButtonBox::Cancel);
    cancel->setObjectName(QStringLiteral("restore_cancel"));
    cancel->setDefault(true);
    cancel->setFocus();
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(12);
    layout->addWidget(heading);
    layout->addWidget(what);
    layout->addWidget(tabs, 1);
    layout->addWidget(safety);
    layout->addWidget(buttons);
}

QString RestoreDialog::summary(const RestorePreview& preview) const {
    const TableChange guests = figures_of(preview, QStringLiteral("persons"));
    const TableChange logs = figures_of(preview, QStringLiteral("logs"));
    QStringList lines;
    if (preview.unreadable_now) {
        lines += tr("The records of now cannot be compared: %1").arg(words(*preview.unreadable_now));
        lines += tr("The copy holds %1 sessions, %2 guests in the register and %3 logs.")
                     .arg(preview.sessions.size())
                     .arg(guests.rows_in_copy)
                     .arg(logs.rows_in_copy);
        return lines.join(u'\n');
    }
    const auto line = [](const QString& what, qint64 lost, qint64 back, qint64 changed) {
        if (lost + back + changed == 0) return tr("%1: no change.").arg(what);
        return tr("%1: %2 would be lost, %3 would come back, %4 would change back.")
            .arg(what)
            .arg(lost)
            .arg(back)
            .arg(changed);
    };
    lines += line(tr("Sessions"), count(preview, SessionPresence::only_now),
                  count(preview, SessionPresence::only_in_copy),
                  count(preview, SessionPresence::different));
    lines += line(tr("Guests in the register"), guests.only_now, guests.only_in_copy,
                  guests.different);
    lines += line(tr("Logs"), logs.only_now, logs.only_in_copy, logs.different);
    return lines.join(u'\n');
}

QTableWidget* RestoreDialog::session_table(const RestorePreview& preview) {
    QTableWidget* table = plain_table({tr("Date"), tr("Session"), tr("What would happen")}, this);
    table->setObjectName(QStringLiteral("restore_sessions"));
    table->setAccessibleName(tr("Sessions that would change"));
    table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    table->setRowCount(static_cast<int>(preview.sessions.size()));
    int row = 0;
    for (const SessionChange& change : preview.sessions) {
        QString fate = tr("lost");
        if (change.presence == SessionPresence::only_in_copy) fate = tr("comes back");
        if (change.presence == SessionPresence::different) fate = tr("changes back");
        table->setItem(row, 0, new QTableWidgetItem(text(change.date)));
        table->setItem(row, 1, new QTableWidgetItem(change.title.empty()
                                                        ? tr("(no name)")
                                                        : QString::fromStdString(change.title)));
        table->setItem(row, 2, new QTableWidgetItem(fate));
        ++row;
    }
    return table;
}

QTableWidget* RestoreDialog::content_table(const RestorePreview& preview) {
    QTableWidget* table = plain_table({tr("Table"), tr("Rows now"), tr("In the copy"),
                                       tr("Lost"), tr("Come back"), tr("Change back")},
                                      this);
    table->setObjectName(QStringLiteral("restore_tables"));
    table->setAccessibleName(tr("Rows of every table"));
    table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table->setRowCount(static_cast<int>(preview.tables.size()));
    int row = 0;
    for (const TableChange& change : preview.tables) {
        table->setItem(row, 0, new QTableWidgetItem(change.table));
        int column = 1;
        for (const qint64 value : {change.rows_now, change.rows_in_copy, change.only_now,
                                   change.only_in_copy, change.different}) {
            table->setItem(row, column++, number_item(value));
        }
        ++row;
    }
    return table;
}

}  // namespace leadline
