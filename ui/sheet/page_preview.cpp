// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/page_preview.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/widgets/theme.h"

namespace leadline {
namespace {

constexpr int margin = 16;
constexpr double millimeters_per_inch = 25.4;

}  // namespace

/// The paper with its content.
class PagePreview::Sheet : public QWidget {
public:
    explicit Sheet(PagePreview& preview) : QWidget(&preview), preview_(preview) {
        setObjectName(QStringLiteral("preview_sheet"));
    }

    void set_pixels_per_mm(double value) {
        pixels_per_mm_ = value;
        if (preview_.pages_.empty()) {
            setFixedSize(preview_.viewport()->size());
        } else {
            const QSizeF paper = page_size(page()) * value;
            setFixedSize(paper.toSize() + QSize(2 * margin, 2 * margin));
        }
        update();
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
        if (preview_.pages_.empty()) {
            painter.setPen(inks(palette()).faint);
            painter.drawText(rect().adjusted(margin, margin, -margin, -margin),
                             Qt::AlignCenter | Qt::TextWordWrap, preview_.empty_text_);
            return;
        }
        const QRectF paper(QPointF(margin, margin),
                           page_size(page()) * pixels_per_mm_);
        painter.fillRect(paper, Qt::white);  // paper is white in the dark look too
        painter.setPen(inks(palette()).rule);
        painter.drawRect(paper);
        painter.translate(paper.topLeft());
        painter_.paint(painter, page(), pixels_per_mm_);
    }

private:
    [[nodiscard]] const Page& page() const {
        return preview_.pages_[static_cast<std::size_t>(preview_.current_)];
    }
    PagePreview& preview_;
    SheetPainter painter_;
    double pixels_per_mm_ = 3.0;
};

PagePreview::PagePreview(QWidget* parent) : QScrollArea(parent), sheet_(new Sheet(*this)) {
    setObjectName(QStringLiteral("preview"));
    setAccessibleName(tr("Preview of the pages"));
    setWidget(sheet_);
    setAlignment(Qt::AlignCenter);
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    fit();
}

void PagePreview::show_pages(std::vector<Page> pages) {
    if (pages == pages_) return;
    pages_ = std::move(pages);
    current_ = std::clamp(current_, 0, std::max(0, count() - 1));
    fit();
    Q_EMIT page_changed();
}

void PagePreview::set_empty_text(const QString& text) {
    empty_text_ = text;
    sheet_->update();
}

void PagePreview::set_current(int page) {
    const int wanted = std::clamp(page, 0, std::max(0, count() - 1));
    if (wanted == current_) return;
    current_ = wanted;
    fit();
    Q_EMIT page_changed();
}

void PagePreview::set_real_size(bool real) {
    real_size_ = real;
    fit();
}

void PagePreview::fit() {
    if (pages_.empty()) {
        sheet_->set_pixels_per_mm(1.0);
        return;
    }
    double scale = logicalDpiX() / millimeters_per_inch;
    if (!real_size_) {
        const QSizeF paper = page_size(pages_[static_cast<std::size_t>(current_)]);
        const QSizeF room = viewport()->size() - QSize(2 * margin, 2 * margin);
        scale = std::max(0.5, std::min(room.width() / paper.width(),
                                       room.height() / paper.height()));
    }
    sheet_->set_pixels_per_mm(scale);
}

void PagePreview::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    fit();
}

void PagePreview::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_PageDown: set_current(current_ + 1); break;
        case Qt::Key_PageUp: set_current(current_ - 1); break;
        case Qt::Key_Home: set_current(0); break;
        case Qt::Key_End: set_current(count() - 1); break;
        default: QScrollArea::keyPressEvent(event);
    }
}

}  // namespace leadline
