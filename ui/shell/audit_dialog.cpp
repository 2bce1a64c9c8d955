// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/audit_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/shell/audit_model.h"
#include "ui/shell/secret_field.h"
#include "ui/shell/vault_access.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"
#include "ui/words/vault_words.h"

namespace leadline {
namespace {

/// More than anybody reads; the whole trail is checked nevertheless.
constexpr int most_shown = 2000;

QString verdict_words(const AuditVerdict& verdict) {
    if (verdict.fault) return audit_fault_words(*verdict.fault, verdict.first_broken);
    const QString whole = AuditDialog::tr("%n entries, none changed or missing.", nullptr,
                                          static_cast<int>(verdict.entries));
    return verdict.seal_checked ? whole
                                : AuditDialog::tr(
                                      "%1 Whether the end was cut off shows only when the vault is "
                                      "unlocked.")
                                      .arg(whole);
}

}  // namespace

AuditDialog::AuditDialog(VaultAccess& access, QWidget* parent)
    : QDialog(parent),
      access_(access),
      model_(new AuditModel(this)),
      table_(new QTableView(this)),
      mark_(new QLabel(this)),
      verdict_(wrapped_text({}, this)) {
    setWindowTitle(tr("Audit trail of the health vault"));
    setObjectName(QStringLiteral("audit_dialog"));
    resize(within_screen(*this, {860, 480}));
    table_->setObjectName(QStringLiteral("audit_table"));
    table_->setAccessibleName(tr("Audit trail, newest first"));
    table_->setModel(model_);
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->horizontalHeader()->setStretchLastSection(true);
    verdict_->setObjectName(QStringLiteral("audit_verdict"));
    auto* line = new QHBoxLayout;
    line->setSpacing(8);
    line->addWidget(mark_, 0, Qt::AlignTop);
    line->addWidget(verdict_, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    QPushButton* again = buttons->addButton(tr("Check &again"), QDialogButtonBox::ActionRole);
    again->setObjectName(QStringLiteral("audit_again"));
    connect(again, &QPushButton::clicked, this, &AuditDialog::fill);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 20, 20, 16);
    layout->setSpacing(12);
    layout->addLayout(line);
    layout->addWidget(table_, 1);
    layout->addWidget(wrapped_text(
        tr("\"Who\" is the name given when unlocking; nobody checks it. A file put back to an "
           "older state as a whole is not noticed."),
        this));
    layout->addWidget(buttons);
    connect(&access_, &HealthAccess::state_changed, this, &AuditDialog::fill);
    fill();
    table_->setFocus();
}

void AuditDialog::fill() {
    Vault* vault = access_.vault();
    if (vault == nullptr) return;
    const Result<AuditVerdict> verdict = vault->trail().verify(vault->audit_key());
    Result<std::vector<AuditEntry>> entries = vault->trail().entries(most_shown);
    const std::vector<qint64> taken_out = access_.store()->taken_out().value_or({});
    const bool good = verdict && entries && !verdict->fault && taken_out.empty();
    constexpr int side = 18;
    mark_->setVisible(!good);
    mark_->setPixmap(severity_icon(Severity::stop, palette()).pixmap(side, side));
    if (!verdict || !entries) {
        verdict_->setText(words(verdict ? entries.error() : verdict.error()));
        return;
    }
    verdict_->setText(taken_out.empty() ? verdict_words(*verdict)
                                        : tr("%1 Records taken out of the file from outside: %2.")
                                              .arg(verdict_words(*verdict))
                                              .arg(taken_out.size()));
    std::map<qint64, QString> names;
    for (const AuditEntry& entry : *entries) {
        if (entry.person == 0 || names.contains(entry.person)) continue;
        names[entry.person] =
            QString::fromStdString(access_.store()->name_of(entry.person).value_or({}));
    }
    model_->set_entries(std::move(*entries), std::move(names));
    for (int column = 0; column + 1 < AuditModel::column_count; ++column) {
        table_->resizeColumnToContents(column);
        constexpr int widest = 220;
        table_->setColumnWidth(column, std::min(table_->columnWidth(column) + 12, widest));
    }
    if (model_->rowCount() > 0) table_->selectRow(0);
}

}  // namespace leadline
