// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/guest_words/guest_language.h"

namespace leadline {

/// What stands on the page of pictures beside the signals' own captions.
enum class PictureWord {
    title,
    thumb_up,       ///< the first mix-up: it never means "good"
    numbers_first,  ///< the second mix-up: people count on their fingers in different ways
    numbers_shown,  ///< "%1" the signs in their order, "%2" the number with its unit
    taken_down,     ///< above a balloon that was filled at the surface
    taken_up,       ///< above one that was filled at the deepest point
    like_lungs,
};

QString picture_word(PictureWord word, const GuestTongue& tongue);

}  // namespace leadline
