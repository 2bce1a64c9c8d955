// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/print.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPrinter>

#include "ui/sheet/sheet_painter.h"

namespace leadline {
namespace {

constexpr double mm_per_inch = 25.4;

QPageSize::PageSizeId page_size_id(Paper paper) {
    switch (paper) {
        case Paper::a4: return QPageSize::A4;
        case Paper::letter: return QPageSize::Letter;
        case Paper::a5: return QPageSize::A5;
        case Paper::a6: return QPageSize::A6;
    }
    return QPageSize::A4;
}

void turn(QPrinter& printer, const Page& page) {
    printer.setPageOrientation(page.landscape ? QPageLayout::Landscape : QPageLayout::Portrait);
}

}  // namespace

void prepare_printer(QPrinter& printer, Paper paper) {
    printer.setFullPage(true);
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setPageSize(QPageSize(page_size_id(paper)));
}

PrintOutcome print_pages(QPrinter& printer, const std::vector<Page>& pages) {
    PrintOutcome outcome;
    if (pages.empty()) return outcome;
    turn(printer, pages.front());
    QPainter painter;
    outcome.started = painter.begin(&printer);
    if (!outcome.started) return outcome;
    SheetPainter sheets;
    const double pixels_per_mm = printer.resolution() / mm_per_inch;
    for (const Page& page : pages) {
        turn(printer, page);
        if (outcome.pages > 0 && !printer.newPage()) break;
        sheets.paint(painter, page, pixels_per_mm);
        ++outcome.pages;
    }
    if (!painter.end()) outcome.pages = 0;
    return outcome;
}

}  // namespace leadline
