// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/layout.h"

#include <QStringList>

namespace leadline {

QSizeF paper_size(Paper paper) {
    return paper == Paper::a4 ? QSizeF(210.0, 297.0) : QSizeF(215.9, 279.4);
}

QRectF rect_of(const SheetItem& item) {
    if (const auto* line = std::get_if<LineItem>(&item)) return line->rect();
    if (const auto* text = std::get_if<TextItem>(&item)) return text->rect;
    if (const auto* box = std::get_if<RectItem>(&item)) return box->rect;
    return std::get<PictureItem>(item).rect;
}

QStringList words_on(const Page& page) {
    QStringList words;
    for (const SheetItem& item : page.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr) continue;
        for (const TextLine& line : text->lines) words << line.text;
    }
    return words;
}

}  // namespace leadline
