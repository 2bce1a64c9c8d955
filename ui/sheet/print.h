// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/sheet/layout.h"

class QPrinter;

namespace leadline {

/// Sets a printer to the paper, upright, measured from the paper's own corner.
void prepare_printer(QPrinter& printer, Paper paper);

/// How far printing came. All went well when `pages` is as many as were asked for.
struct PrintOutcome {
    bool started = false;
    int pages = 0;
};

/// Prints laid-out pages in their real size, with the painter of the preview. Pages that lie are
/// turned.
/// @param printer  prepared with prepare_printer(); its resolution may be any
PrintOutcome print_pages(QPrinter& printer, const std::vector<Page>& pages);

}  // namespace leadline
