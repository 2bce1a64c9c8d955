// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/screen_words.h"

#include <QCoreApplication>

namespace leadline {

QString screen_word(ScreenWord word, const GuestTongue& tongue) {
    switch (word) {
        case ScreenWord::welcome: return tongue.say(QT_TRANSLATE_NOOP("Guest", "Welcome"));
    }
    return {};
}

}  // namespace leadline
