// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/planning/plan.h"
#include "ui/sheet/layout.h"
#include "ui/sheet/type_setting.h"
#include "ui/words/quantity_text.h"

namespace leadline {

/// A text in one or two of the guests' languages, each with its typeface.
struct GuestText {
    QString text;
    Typeface face;
    friend bool operator==(const GuestText&, const GuestText&) = default;
};
using GuestTexts = std::vector<GuestText>;

struct PictureCaption {
    QString picture;
    GuestTexts captions;
    friend bool operator==(const PictureCaption&, const PictureCaption&) = default;
};

/// A balloon at a depth, drawn to scale.
struct PictureBalloon {
    double scale = 1.0;  ///< diameter against that when it was filled
    QString depth;       ///< "5 m"
    QString volume;      ///< "4.0 L"; empty in imperial units
    QString factor;      ///< "×0.67"
    friend bool operator==(const PictureBalloon&, const PictureBalloon&) = default;
};

/// The page of pictures for guests with whom no language is shared: all signals, the numbers, the two
/// mix-ups, and what pressure does to air at this site.
struct PictureSheet {
    GuestTexts title;
    std::vector<PictureCaption> hand_signals;  ///< all of them, the most needed first
    GuestTexts thumb_up;
    std::vector<PictureCaption> numbers;       ///< 0 to 9, captioned with the figure
    GuestTexts numbers_first;
    GuestTexts numbers_shown;
    GuestTexts taken_down;
    std::vector<PictureBalloon> shrinking;  ///< filled at the surface, from the top down
    GuestTexts taken_up;
    std::vector<PictureBalloon> swelling;   ///< filled at each depth, as it is at the surface
    GuestTexts like_lungs;
    GuestTexts never_hold_breath;
    GuestTexts standing;
    QString review;  ///< how far the translations can be trusted, for the instructor; may be empty
    friend bool operator==(const PictureSheet&, const PictureSheet&) = default;
};

/// @param language  tag of a guest language; English where there is none such
/// @param second    another, under the first; empty: none
/// @param plan      has the balloon's volumes
PictureSheet picture_sheet(const Plan& plan, UnitSystem units, const std::string& language,
                           const std::string& second);

/// One page.
std::vector<Page> picture_pages(const PictureSheet& sheet, Paper paper, TypeSetter& setter);

}  // namespace leadline
