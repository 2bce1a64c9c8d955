// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/short_names.h"

#include <QCoreApplication>

namespace leadline {
namespace {

constexpr qsizetype most_letters = 40;
constexpr qsizetype most_names = 5;

/// Names the context of this file's texts to lupdate.
class ShortNameTexts {
    Q_DECLARE_TR_FUNCTIONS(ShortNames)
};

}  // namespace

QString short_name(const QString& name) {
    if (name.isEmpty()) return ShortNameTexts::tr("(no name)");
    if (name.size() <= most_letters) return name;
    QString cut = name.left(most_letters - 1);
    if (cut.back().isHighSurrogate()) cut.chop(1);
    return cut.trimmed() + QChar(0x2026);
}

QString few_names(const QStringList& names) {
    QStringList shown;
    for (const QString& name : names.mid(0, most_names)) shown << short_name(name);
    const QString listed = shown.join(QStringLiteral(", "));
    return names.size() <= most_names
               ? listed
               : ShortNameTexts::tr("%1 and %n more", nullptr,
                                    static_cast<int>(names.size() - most_names))
                     .arg(listed);
}

bool all_of_many(const QStringList& names) {
    return names.size() > 2;
}

}  // namespace leadline
