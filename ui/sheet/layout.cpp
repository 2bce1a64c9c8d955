// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/layout.h"

#include <QStringList>

namespace leadline {
namespace {

/// Where things of one frame lie in another.
class Placing {
public:
    Placing(const QRectF& from, const QRectF& to, bool mirrored)
        : from_(from), to_(to), scale_(to.width() / from.width()), mirrored_(mirrored) {}

    void operator()(TextItem& item) const {
        item.rect = moved(item.rect);
        item.points *= scale_;
        for (TextLine& line : item.lines) {
            const QRectF box = moved(QRectF(line.left, line.baseline, line.width, 0.0));
            line.left = box.left();
            line.width = box.width();
            line.baseline = box.top();
        }
    }
    void operator()(LineItem& item) const {
        item.line = QLineF(moved(item.line.p1()), moved(item.line.p2()));
        item.width *= scale_;
    }
    void operator()(RectItem& item) const {
        item.rect = moved(item.rect);
        item.corner *= scale_;
        item.width *= scale_;
    }
    void operator()(PictureItem& item) const { item.rect = moved(item.rect); }
    void operator()(QrItem& item) const { item.rect = moved(item.rect); }

private:
    [[nodiscard]] QPointF moved(const QPointF& at) const {
        const double x = mirrored_ ? from_.right() - at.x() : at.x() - from_.left();
        return {to_.left() + x * scale_, to_.top() + (at.y() - from_.top()) * scale_};
    }
    [[nodiscard]] QRectF moved(const QRectF& rect) const {
        const QPointF corner = mirrored_ ? rect.topRight() : rect.topLeft();
        return {moved(corner), rect.size() * scale_};
    }
    QRectF from_;
    QRectF to_;
    double scale_;
    bool mirrored_;
};

}  // namespace

QSizeF paper_size(Paper paper) {
    switch (paper) {
        case Paper::a4: return {210.0, 297.0};
        case Paper::letter: return {215.9, 279.4};
        case Paper::a5: return {148.0, 210.0};
        case Paper::a6: return {105.0, 148.0};
    }
    return {210.0, 297.0};
}

QSizeF page_size(const Page& page) {
    const QSizeF size = paper_size(page.paper);
    return page.landscape ? size.transposed() : size;
}

QRectF rect_of(const SheetItem& item) {
    if (const auto* line = std::get_if<LineItem>(&item)) return line->rect();
    if (const auto* text = std::get_if<TextItem>(&item)) return text->rect;
    if (const auto* box = std::get_if<RectItem>(&item)) return box->rect;
    if (const auto* code = std::get_if<QrItem>(&item)) return code->rect;
    return std::get<PictureItem>(item).rect;
}

void place(std::vector<SheetItem>& items, const QRectF& from, const QRectF& to, bool mirrored) {
    const Placing placing(from, to, mirrored);
    for (SheetItem& item : items) std::visit(placing, item);
}

std::vector<CutText> cut_texts(const Page& page) {
    std::vector<CutText> cut;
    for (const SheetItem& item : page.items) {
        const auto* text = std::get_if<TextItem>(&item);
        if (text == nullptr || !text->elided) continue;
        QStringList lines;
        for (const TextLine& line : text->lines) lines << line.text;
        QString shown = lines.join(u' ');
        // The marks that keep directions apart are for setting only.
        shown.removeIf([](QChar one) { return one.unicode() >= 0x2066 && one.unicode() <= 0x2069; });
        cut.push_back({shown});
    }
    return cut;
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
