// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/place_scene.h"

#include <algorithm>

#include "ui/guest_words/screen_words.h"

namespace leadline {

WaterScene::Content place_scene(const Environment& place, const GuestFigures& figures,
                                const GuestTongue& tongue) {
    WaterScene::Content content;
    content.deepest = std::max(1.0, place.deepest.meters().value());
    content.ticks.push_back({0.0, screen_word(ScreenWord::at_top, tongue)});
    const double step = content.deepest > 12.0 ? 5.0 : (content.deepest > 6.0 ? 2.0 : 1.0);
    for (double depth = step; depth < content.deepest + 1e-9; depth += step) {
        content.ticks.push_back({depth, figures.at_most(Meters(depth))});
    }
    content.deepest_words = screen_word(ScreenWord::deepest_today, tongue) + QStringLiteral(": ") +
                            figures.at_most(place.deepest.meters());
    return content;
}

}  // namespace leadline
