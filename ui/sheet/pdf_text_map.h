// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QHash>
#include <QRawFont>
#include <QSet>
#include <vector>

#include "ui/sheet/layout.h"

namespace leadline {

/// Puts right which letter a shape in a PDF stands for. Fonts give some letters the same shape as
/// others (a space and a tab; a Han character and the radical it is listed under), and the writer of
/// the document names any one of them: copied and searched text would hold letters that nobody wrote.
class PdfTextMap {
public:
    explicit PdfTextMap(const std::vector<Page>& pages);

    /// A ToUnicode map in which every letter is one that stands on the pages, where one of those has
    /// its shape.
    [[nodiscard]] QByteArray corrected(const QByteArray& map);

private:
    [[nodiscard]] char16_t letter_for(char16_t named);
    struct Face {
        QRawFont font;
        QHash<quint32, char16_t> letters;  ///< by shape
    };
    QSet<char16_t> written_;
    std::vector<Face> faces_;
    QHash<char16_t, char16_t> known_;
};

}  // namespace leadline
