// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <vector>

#include "ui/sheet/beach_page.h"

namespace leadline {

/// The pages on which a group's sheet goes on: what found no room beside the guests, in larger
/// type.
class BeachRestPages {
public:
    /// @param pages  of the sheet, to which these are added; @param pens  one for each
    BeachRestPages(const BeachSheet& sheet, Paper paper, double number_width, TypeSetter& setter,
                   std::deque<Page>& pages, std::vector<SheetPen>& pens)
        : sheet_(sheet),
          paper_(paper),
          number_width_(number_width),
          setter_(setter),
          pages_(pages),
          pens_(pens) {}

    void set(const BeachRest& rest);

private:
    void begin();
    void head(const QString& words);
    /// A paragraph, on another page where it does not fit on this.
    void paragraph(const Phrase& words, double points);
    SheetPen& pen() { return pens_.back(); }

    const BeachSheet& sheet_;
    Paper paper_;
    double number_width_;
    TypeSetter& setter_;
    std::deque<Page>& pages_;
    std::vector<SheetPen>& pens_;
    double y_ = 0.0;
    double bottom_ = 0.0;
};

}  // namespace leadline
