// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/pdf_path.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QRegularExpression>

namespace leadline {
namespace {

class PdfPathTexts {
    Q_DECLARE_TR_FUNCTIONS(PdfPath)
};

bool may_replace(QWidget* parent, const QString& path) {
    QMessageBox box(parent);
    box.setObjectName(QStringLiteral("replace_question"));
    box.setIcon(QMessageBox::Question);
    box.setWindowTitle(PdfPathTexts::tr("Save as PDF"));
    box.setTextFormat(Qt::PlainText);  // names may hold anything
    box.setText(PdfPathTexts::tr("A file %1 is there already. Replace it?")
                    .arg(QFileInfo(path).fileName()));
    QPushButton* replace =
        box.addButton(PdfPathTexts::tr("Replace"), QMessageBox::AcceptRole);
    replace->setObjectName(QStringLiteral("replace_accept"));
    QPushButton* other = box.addButton(PdfPathTexts::tr("Another name…"), QMessageBox::RejectRole);
    other->setObjectName(QStringLiteral("replace_other"));
    box.setDefaultButton(other);
    box.setEscapeButton(other);
    box.exec();
    return box.clickedButton() == replace;
}

}  // namespace

QString with_pdf_suffix(const QString& path) {
    const QFileInfo typed(path);
    const bool is_no_file = typed.exists() && !typed.isFile();
    if (typed.fileName().isEmpty() || is_no_file) return path;
    // "12.6" is a date, not a name with a suffix.
    static const QRegularExpression suffix(QStringLiteral("\\.[A-Za-z][A-Za-z0-9]{0,4}$"));
    if (suffix.match(path).hasMatch()) return path;
    return path.endsWith(u'.') ? path + QStringLiteral("pdf") : path + QStringLiteral(".pdf");
}

QString choose_pdf_path(QWidget* parent, const std::function<QString()>& choose) {
    for (;;) {
        const QString typed = choose();
        if (typed.isEmpty()) return {};
        const QString path = with_pdf_suffix(typed);
        // What was typed in full was asked about where it was typed.
        if (path == typed || !QFileInfo::exists(path) || may_replace(parent, path)) return path;
    }
}

}  // namespace leadline
