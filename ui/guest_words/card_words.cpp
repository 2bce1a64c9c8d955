// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/card_words.h"

#include <QCoreApplication>

namespace leadline {

QString card_word(CardWord word, const GuestTongue& tongue) {
    switch (word) {
        case CardWord::meet:
            //: Card, before day and time: "Meet Sat 4 July, 09:30".
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Meet"));
        case CardWord::with:
            //: Card, before the instructor's name: "With Ana".
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "With"));
        case CardWord::low_on_air:
            //: Card, above the pressure in large type; the name of a hand signal as well.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Low on air"));
        case CardWord::signal_at_once:
            //: Card, below that pressure: show the hand signal at once. Two or three short words.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "signal now"));
        case CardWord::deepest:
            //: Card, above a depth in large type: the deepest point of the dive. One short word.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Deepest"));
        case CardWord::time:
            //: Card, above minutes in large type: how long the dive is. One short word.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Time"));
        case CardWord::never_hold_breath:
            //: Card, the largest words: the one rule. Keep it short.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Never hold your breath"));
        case CardWord::breath_reason:
            //: Card, below that rule. Beside it stands by how much the air swells: "×1.8".
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Going up, held air swells: lungs can tear."));
        case CardWord::ears:
            //: Card. %1: a step of descent ("1 m"). %2: how far to go up ("1 m").
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Clear ears early, every %1. Pain? Stop, signal, go up %2."));
        case CardWord::stay_close:
            //: Card: so close to the instructor that an arm reaches. When apart: look around.
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Stay within reach. Lost? Look around 1\u00A0minute, go up slowly."));
        case CardWord::no_shame:
            //: Card: whoever does not feel well gives a signal, and may end the dive.
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Cold, scared, tired? Signal. Quitting is fine."));
        case CardWord::at_the_top:
            //: Card: back at the surface.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "At the top: fill BCD, mask on."));
        case CardWord::not_good:
            //: Card, under the picture of a raised thumb, which means "go up": never "good".
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "not “good”"));
        case CardWord::no_flying:
            //: Card, after the dive. %1: a number of hours.
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "%1 h: no flights, no mountains."));
        case CardWord::watch_for:
            //: Card, after the dive: whoever feels this within 48 hours calls the number beside it.
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "48 h: numb, dizzy, very tired, joint pain, breathless?"));
        case CardWord::call:
            //: Card, before the emergency number; without a colon.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Call"));
        case CardWord::understood:
            //: Card, beside a box that the guest ticks.
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Understood"));
        case CardWord::standing:
            //: Card, small: what the card is, and who decides.
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Planning aid. Your instructor decides."));
        case CardWord::bar:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "bar"));
        case CardWord::psi:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "psi"));
        case CardWord::meters:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "m"));
        case CardWord::feet:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "ft"));
        case CardWord::minutes:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "min"));
        case CardWord::kilograms:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "kg"));
        case CardWord::pounds:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "lb"));
        case CardWord::liters:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "L"));
        case CardWord::cubic_feet:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "ft³"));
    }
    return {};
}

}  // namespace leadline
