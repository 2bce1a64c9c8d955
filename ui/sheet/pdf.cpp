// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/pdf.h"

#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include "ui/sheet/sheet_painter.h"

namespace leadline {
namespace {

constexpr int dots_per_inch = 1200;
constexpr double dots_per_mm = dots_per_inch / 25.4;

QPageLayout page_layout(Paper paper) {
    const QPageSize size(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter);
    return QPageLayout(size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0));
}

Error unwritable(const QString& path, const QString& reason) {
    return {ErrorCode::file_unwritable, path.toStdString(), reason.toStdString(), {}};
}

/// Draws the pages; false when the painter could not begin or go on.
bool draw_pages(QPdfWriter& writer, const std::vector<Page>& pages) {
    QPainter painter;
    if (!painter.begin(&writer)) return false;
    SheetPainter sheets;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0 && !(writer.setPageLayout(page_layout(pages[i].paper)) && writer.newPage())) {
            return false;
        }
        sheets.paint(painter, pages[i], dots_per_mm);
    }
    return painter.end();
}

}  // namespace

Result<int> write_pages_pdf(const QString& path, const std::vector<Page>& pages,
                            const QString& title, FileAccess access) {
    if (pages.empty()) return Error{ErrorCode::bad_count, "pages", "0", "1 or more"};
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return unwritable(path, file.errorString());
    // Before the first byte is in it.
    if (access == FileAccess::owner_only &&
        !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner)) {
        file.cancelWriting();
        return unwritable(path, file.errorString());
    }
    {
        QPdfWriter writer(&file);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Leadline"));
        writer.setResolution(dots_per_inch);
        writer.setPageLayout(page_layout(pages.front().paper));
        if (!draw_pages(writer, pages)) {
            file.cancelWriting();
            return unwritable(path, file.errorString());
        }
    }
    if (!file.commit()) return unwritable(path, file.errorString());
    return static_cast<int>(pages.size());
}

Result<int> write_cards_pdf(const QString& path, const std::vector<CardContent>& cards,
                            CardSize size, const QString& title) {
    return write_pages_pdf(path, card_pages(cards, size), title);
}

}  // namespace leadline
