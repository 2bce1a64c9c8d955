// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/card_words.h"

#include <QCoreApplication>

namespace leadline {

QString card_word(CardWord word, const GuestTongue& tongue) {
    switch (word) {
        case CardWord::meet:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Meet"));
        case CardWord::with:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "With"));
        case CardWord::at:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "At"));
        case CardWord::low_on_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Low on air"));
        case CardWord::signal_at_once:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "signal now"));
        case CardWord::deepest:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Deepest"));
        case CardWord::time:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Time"));
        case CardWord::never_hold_breath:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Never hold your breath"));
        case CardWord::breath_reason:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Held air swells on the way up. It can tear a lung."));
        case CardWord::ears:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest",
                "Clear your ears every %1, before they hurt. Pain? Stop, signal, go up %2."));
        case CardWord::stay_close:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Stay in reach. Lost? Look for one minute, then go up slowly."));
        case CardWord::no_shame:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Cold, scared, tired? Signal. It is fine to stop."));
        case CardWord::at_the_top:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "At the top: fill your BCD, mask on."));
        case CardWord::not_good:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "not “good”"));
        case CardWord::no_flying:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "No flights, no mountain roads for %1 h."));
        case CardWord::watch_for:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "48 h: numb, dizzy, very tired, sore joints, short of breath?"));
        case CardWord::call:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Call"));
        case CardWord::understood:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Understood"));
        case CardWord::standing:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "A planning aid. Your instructor decides."));
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
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "cu ft"));
    }
    return {};
}

}  // namespace leadline
