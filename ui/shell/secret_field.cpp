// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/secret_field.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QProgressBar>

#include "core/records/vault.h"
#include "ui/widgets/screen_room.h"
#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr int longest_name = 200;

/// Names the context of this file's texts to lupdate.
class SecretFieldTexts {
    Q_DECLARE_TR_FUNCTIONS(VaultDialogs)
};

}  // namespace

QLineEdit* passphrase_field(const char* name, QWidget* parent) {
    // From here on there may be a passphrase in memory.
    shield_process_memory();
    auto* field = new QLineEdit(parent);
    field->setObjectName(QString::fromLatin1(name));
    field->setEchoMode(QLineEdit::Password);
    field->setInputMethodHints(Qt::ImhHiddenText | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText |
                               Qt::ImhNoAutoUppercase);
    field->setMaxLength(most_passphrase);
    // On a small screen the texts give way, never what one types into.
    field->setMinimumHeight(field->sizeHint().height());
    return field;
}

SecretBytes take_secret(QLineEdit& field) {
    QString text = field.text();
    field.setText(QString());
    QByteArray utf8 = text.toUtf8();
    SecretBytes secret =
        SecretBytes::copy_of({utf8.constData(), static_cast<std::size_t>(utf8.size())});
    wipe(utf8);
    wipe(text);
    return secret;
}

QComboBox* who_field(const QStringList& names, QWidget* parent) {
    auto* field = new QComboBox(parent);
    field->setObjectName(QStringLiteral("vault_who"));
    field->setEditable(true);
    field->setInsertPolicy(QComboBox::NoInsert);
    field->addItems(names);
    field->setCurrentIndex(names.isEmpty() ? -1 : 0);
    field->lineEdit()->setMaxLength(longest_name);
    field->lineEdit()->setPlaceholderText(SecretFieldTexts::tr("Your name"));
    field->setToolTip(SecretFieldTexts::tr("Stands in the audit trail."));
    return field;
}

QString who_in(const QComboBox& field) {
    return field.currentText().simplified();
}

QLabel* trouble_line(QWidget* parent) {
    auto* line = new QLabel(parent);
    line->setObjectName(QStringLiteral("vault_trouble"));
    line->setWordWrap(true);
    line->setTextFormat(Qt::PlainText);
    line->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    line->setMinimumHeight(2 * line->fontMetrics().lineSpacing());
    return line;
}

void say_trouble(QLabel& line, const QString& text) {
    QPalette palette = line.palette();
    palette.setColor(QPalette::WindowText, inks(palette).stop);
    line.setPalette(palette);
    line.setText(text);
    line.setAccessibleName(text);
}

QProgressBar* busy_bar(QWidget* parent) {
    auto* bar = new QProgressBar(parent);
    bar->setObjectName(QStringLiteral("vault_busy"));
    bar->setRange(0, 0);
    bar->setTextVisible(false);
    bar->setFixedHeight(bar->fontMetrics().height() / 3);
    bar->setAccessibleName(SecretFieldTexts::tr("Working"));
    QSizePolicy policy = bar->sizePolicy();
    policy.setRetainSizeWhenHidden(true);
    bar->setSizePolicy(policy);
    bar->hide();
    return bar;
}

void size_for_texts(QWidget& dialog, int width) {
    dialog.setMinimumWidth(width);
    QLayout* layout = dialog.layout();
    layout->activate();
    const int needed = layout->hasHeightForWidth() ? layout->totalHeightForWidth(width)
                                                   : layout->totalSizeHint().height();
    dialog.resize(within_screen(dialog, {width, needed}));
}

QLabel* wrapped_text(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace leadline
