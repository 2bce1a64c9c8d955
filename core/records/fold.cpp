// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/fold.h"

#include <QChar>
#include <QList>

namespace leadline {

namespace {

bool is_mark(char32_t letter) {
    const QChar::Category category = QChar::category(letter);
    return category == QChar::Mark_NonSpacing || category == QChar::Mark_Enclosing;
}

/// What a letter, already in lower case, is searched as.
void append_plain(QString& text, char32_t letter) {
    switch (letter) {
        case U'ø': text += u'o'; return;
        case U'ł': text += u'l'; return;
        case U'đ':
        case U'ð': text += u'd'; return;
        case U'ı': text += u'i'; return;
        case U'ς': text += u'σ'; return;
        case U'‘':
        case U'’':
        case U'ʼ': text += u'\''; return;
        case U'ß': text += QLatin1String("ss"); return;
        case U'æ': text += QLatin1String("ae"); return;
        case U'œ': text += QLatin1String("oe"); return;
        case U'þ': text += QLatin1String("th"); return;
        default: text += QChar::fromUcs4(letter); return;
    }
}

}  // namespace

QString folded(const QString& name) {
    QString plain;
    for (const uint letter : name.normalized(QString::NormalizationForm_KD).toLower().toUcs4()) {
        if (!is_mark(char32_t(letter))) append_plain(plain, char32_t(letter));
    }
    return plain.simplified();
}

}  // namespace leadline
