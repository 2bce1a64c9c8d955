// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/print.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPrinter>

#include "ui/sheet/sheet_painter.h"

namespace leadline {
namespace {

constexpr double millimeters_per_inch = 25.4;

}  // namespace

void prepare_printer(QPrinter& printer, Paper paper) {
    printer.setFullPage(true);
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setPageSize(QPageSize(paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
}

PrintOutcome print_pages(QPrinter& printer, const std::vector<Page>& pages) {
    PrintOutcome outcome;
    QPainter painter;
    outcome.started = painter.begin(&printer);
    if (!outcome.started) return outcome;
    SheetPainter sheets;
    const double pixels_per_mm = printer.resolution() / millimeters_per_inch;
    for (const Page& page : pages) {
        if (outcome.pages > 0 && !printer.newPage()) break;
        sheets.paint(painter, page, pixels_per_mm);
        ++outcome.pages;
    }
    if (!painter.end()) outcome.pages = 0;
    return outcome;
}

}  // namespace leadline
