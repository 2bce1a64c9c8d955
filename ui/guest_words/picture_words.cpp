// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/picture_words.h"

#include <QCoreApplication>

namespace leadline {

QString picture_word(PictureWord word, const GuestTongue& tongue) {
    switch (word) {
        case PictureWord::title:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Talk with your hands"));
        case PictureWord::thumb_up:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest",
                "Thumb up means “go up”. It never means “good”. For “good”, make a ring."));
        case PictureWord::numbers_first:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Some people count in another way. Show each other your numbers first."));
        case PictureWord::numbers_shown:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "One sign at a time: %1 means %2."));
        case PictureWord::taken_down:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Fill a balloon at the top. Down it goes, and it shrinks."));
        case PictureWord::taken_up:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Fill it deep down. Up it goes, and it swells."));
        case PictureWord::like_lungs:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "So does the air in your lungs, if you hold it."));
    }
    return {};
}

}  // namespace leadline
