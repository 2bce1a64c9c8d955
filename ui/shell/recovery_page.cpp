// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/recovery_page.h"

#include <QDate>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <QPushButton>
#include <QRandomGenerator>
#include <QVBoxLayout>

#include "core/records/recovery_key.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/print.h"
#include "ui/shell/recovery_sheet.h"
#include "ui/shell/secret_field.h"
#include "ui/words/error_words.h"

namespace leadline {
namespace {

QFont plain_digits(const QFont& base) {
    QFont font = base;
    font.setPointSizeF(font.pointSizeF() * 1.6);
    font.setBold(true);
    font.setLetterSpacing(QFont::AbsoluteSpacing, 2);
    return font;
}

}  // namespace

RecoveryPage::RecoveryPage(QWidget* parent)
    : QWidget(parent),
      question_(new QLabel(this)),
      answer_(new QLineEdit(this)),
      said_(wrapped_text({}, this)) {
    choose_pdf_path = [this] {
        return QFileDialog::getSaveFileName(this, tr("Save the recovery key"),
                                            tr("recovery-key.pdf"), tr("PDF (*.pdf)"));
    };
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(24);
    grid->setVerticalSpacing(10);
    for (int i = 0; i < recovery_key_groups; ++i) {
        auto* number = new QLabel(QString::number(i + 1), this);
        number->setForegroundRole(QPalette::PlaceholderText);
        number->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        auto* group = new QLabel(this);
        group->setObjectName(QStringLiteral("recovery_group_%1").arg(i + 1));
        group->setFont(plain_digits(group->font()));
        group->setMinimumWidth(group->fontMetrics().horizontalAdvance(QStringLiteral("WWWW")));
        const int column = 2 * (i % groups_in_row);
        grid->addWidget(number, i / groups_in_row, column);
        grid->addWidget(group, i / groups_in_row, column + 1);
        groups_.push_back(group);
    }
    grid->setColumnStretch(2 * groups_in_row, 1);

    auto* print_button = new QPushButton(tr("&Print…"), this);
    print_button->setObjectName(QStringLiteral("recovery_print"));
    auto* save_button = new QPushButton(tr("&Save as PDF…"), this);
    save_button->setObjectName(QStringLiteral("recovery_save"));
    for (QPushButton* button : {print_button, save_button}) button->setAutoDefault(false);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(print_button);
    buttons->addWidget(save_button);
    buttons->addStretch(1);

    answer_->setObjectName(QStringLiteral("recovery_answer"));
    answer_->setMaxLength(recovery_group_signs);
    answer_->setMaximumWidth(answer_->fontMetrics().horizontalAdvance(QStringLiteral("WWWWWWWW")));
    question_->setObjectName(QStringLiteral("recovery_question"));
    question_->setBuddy(answer_);
    said_->setObjectName(QStringLiteral("recovery_said"));
    auto* proof = new QHBoxLayout;
    proof->addWidget(question_);
    proof->addWidget(answer_);
    proof->addStretch(1);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(wrapped_text(
        tr("This is the recovery key. It opens the vault when the passphrase is forgotten or this "
           "computer is lost. Put it on paper and lock it away; it is not shown again."),
        this));
    layout->addLayout(grid);
    layout->addLayout(buttons);
    layout->addWidget(said_);
    layout->addLayout(proof);
    layout->addWidget(wrapped_text(
        tr("Without passphrase and without this key nobody can open the vault any more."), this));
    layout->addStretch(1);
    connect(save_button, &QPushButton::clicked, this, &RecoveryPage::save_pdf);
    connect(print_button, &QPushButton::clicked, this, &RecoveryPage::print);
    connect(answer_, &QLineEdit::textChanged, this, &RecoveryPage::confirmed_changed);
}

void RecoveryPage::show_key(SecretBytes key, const QString& records) {
    key_ = std::move(key);
    records_ = records;
    std::size_t i = 0;
    for (const std::string& group : recovery_groups(key_)) {
        groups_[i]->setText(QString::fromStdString(group));
        groups_[i]->setAccessibleName(tr("Group %1: %2").arg(i + 1).arg(groups_[i]->text()));
        ++i;
    }
    asked_ = QRandomGenerator::global()->bounded(recovery_key_groups);
    question_->setText(tr("&Type group %1 from your paper:").arg(asked_ + 1));
    answer_->setFocus();
}

void RecoveryPage::forget() {
    key_.wipe();
    for (QLabel* group : groups_) {
        group->clear();
        group->setAccessibleName({});
    }
    answer_->clear();
}

bool RecoveryPage::is_confirmed() const {
    if (key_.empty()) return false;
    const std::string wanted = recovery_groups(key_).at(static_cast<std::size_t>(asked_));
    return answer_->text().trimmed().toUpper() == QString::fromStdString(wanted);
}

void RecoveryPage::save_pdf() {
    const QString path = choose_pdf_path();
    if (path.isEmpty() || key_.empty()) return;
    const QString today = QLocale().toString(QDate::currentDate(), QLocale::LongFormat);
    const Result<int> pages =
        write_pages_pdf(path, {recovery_sheet(key_, today, records_)}, tr("Recovery key"),
                        FileAccess::owner_only);
    said_->setText(
        pages ? tr("Saved to %1. Print it, lock the paper away and delete the file.").arg(path)
              : words(pages.error()));
}

void RecoveryPage::print() {
    if (key_.empty()) return;
    if (QPrinterInfo::availablePrinterNames().isEmpty()) {
        said_->setText(
            tr("No printer is installed on this computer. Write the key down, or save it "
               "as a PDF on a stick."));
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(tr("Recovery key"));
    prepare_printer(printer, Paper::a4);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    prepare_printer(printer, Paper::a4);
    const QString today = QLocale().toString(QDate::currentDate(), QLocale::LongFormat);
    const PrintOutcome outcome = print_pages(printer, {recovery_sheet(key_, today, records_)});
    said_->setText(outcome.pages == 1
                       ? tr("Sent to the printer. Check the paper before you go on.")
                       : tr("The printer did not take it. Check that it is switched on, or write "
                            "the key down."));
}

}  // namespace leadline
