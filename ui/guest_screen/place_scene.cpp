// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/place_scene.h"

#include <algorithm>

#include "ui/guest_words/guest_punctuation.h"
#include "ui/guest_words/screen_words.h"

namespace leadline {

WaterScene::Content place_scene(const Environment& place, const GuestFigures& figures,
                                const GuestTongue& tongue) {
    WaterScene::Content content;
    content.deepest = std::max(1.0, place.deepest.meters().value());
    content.ticks.push_back({0.0, screen_word(ScreenWord::at_top, tongue)});
    // Marks at whole numbers of the units read.
    const bool feet = figures.units() == UnitSystem::imperial;
    const double unit = feet ? 0.3048 : 1.0;
    const double deepest = content.deepest / unit;
    const double step = feet ? (deepest > 40.0 ? 10.0 : (deepest > 6.0 ? 5.0 : 1.0))
                             : (deepest > 12.0 ? 5.0 : (deepest > 6.0 ? 2.0 : 1.0));
    for (double mark = step; mark < deepest + 1e-9; mark += step) {
        content.ticks.push_back({mark * unit, figures.depth_mark(mark)});
    }
    content.deepest_words = labelled(screen_word(ScreenWord::deepest_today, tongue),
                                     figures.at_most(place.deepest.meters()), tongue);
    return content;
}

}  // namespace leadline
