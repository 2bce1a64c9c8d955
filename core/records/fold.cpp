// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/fold.h"

#include "core/files/name_folding.h"

namespace leadline {

QString folded(const QString& name) {
    const QStringView letters(name);
    const std::u16string plain =
        folded(std::u16string_view(letters.utf16(), static_cast<std::size_t>(letters.size())));
    // Not fromStdU16String(): it takes a first U+FEFF for a mark of byte order.
    return QString(reinterpret_cast<const QChar*>(plain.data()),
                   static_cast<qsizetype>(plain.size()));
}

}  // namespace leadline
