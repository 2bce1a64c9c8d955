// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/signal_words.h"

#include <QCoreApplication>

#include "ui/guest_words/picture_path.h"

namespace leadline {
QString signal_picture(HandSignal hand_signal) {
    switch (hand_signal) {
        case HandSignal::ok: return picture_path("signals/ok");
        case HandSignal::something_wrong: return picture_path("signals/something-wrong");
        case HandSignal::ears: return picture_path("signals/ears");
        case HandSignal::stop: return picture_path("signals/stop");
        case HandSignal::up: return picture_path("signals/up");
        case HandSignal::down: return picture_path("signals/down");
        case HandSignal::low_on_air: return picture_path("signals/low-on-air");
        case HandSignal::out_of_air: return picture_path("signals/out-of-air");
        case HandSignal::share_air: return picture_path("signals/share-air");
        case HandSignal::look: return picture_path("signals/look");
        case HandSignal::come_here: return picture_path("signals/come-here");
        case HandSignal::stay_together: return picture_path("signals/stay-together");
        case HandSignal::hold_hands: return picture_path("signals/hold-hands");
        case HandSignal::level_off: return picture_path("signals/level-off");
        case HandSignal::slow_down: return picture_path("signals/slow-down");
        case HandSignal::cold: return picture_path("signals/cold");
        case HandSignal::how_much_air: return picture_path("signals/how-much-air");
        case HandSignal::ok_at_surface: return picture_path("signals/ok-at-surface");
        case HandSignal::help_at_surface: return picture_path("signals/help-at-surface");
    }
    return {};
}

QString signal_caption(HandSignal hand_signal, const GuestTongue& tongue) {
    switch (hand_signal) {
        case HandSignal::ok:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "OK"));
        case HandSignal::something_wrong:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Problem"));
        case HandSignal::ears:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Ears"));
        case HandSignal::stop:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Stop"));
        case HandSignal::up:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Go up"));
        case HandSignal::down:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Go down"));
        case HandSignal::low_on_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Low on air"));
        case HandSignal::out_of_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "No air"));
        case HandSignal::share_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Share air"));
        case HandSignal::look:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Look"));
        case HandSignal::come_here:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Come here"));
        case HandSignal::stay_together:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Stay close"));
        case HandSignal::hold_hands:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Hold hands"));
        case HandSignal::level_off:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "This deep"));
        case HandSignal::slow_down:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Slow"));
        case HandSignal::cold:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Cold"));
        case HandSignal::how_much_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "How much air?"));
        case HandSignal::ok_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "OK, at the top"));
        case HandSignal::help_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Help, at the top"));
    }
    return {};
}

QString signal_meaning(HandSignal hand_signal, const GuestTongue& tongue) {
    switch (hand_signal) {
        case HandSignal::ok:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "All is well. Is all well with you?"));
        case HandSignal::something_wrong:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Something is wrong."));
        case HandSignal::ears:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "My ears hurt, or do not clear."));
        case HandSignal::stop:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Stop and stay where you are."));
        case HandSignal::up:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Go up: the dive is over. It never means “good”."));
        case HandSignal::down:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Go down."));
        case HandSignal::low_on_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "I am low on air."));
        case HandSignal::out_of_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "I have no air. Give me yours now."));
        case HandSignal::share_air:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Let me breathe from your spare mouthpiece."));
        case HandSignal::look:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Look, over there."));
        case HandSignal::come_here:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Come to me."));
        case HandSignal::stay_together:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Stay close together."));
        case HandSignal::hold_hands:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Let us hold hands."));
        case HandSignal::level_off:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Stay at this depth."));
        case HandSignal::slow_down:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Slow down."));
        case HandSignal::cold:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "I am cold."));
        case HandSignal::how_much_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "How much air do you have?"));
        case HandSignal::ok_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "All is well. Made at the surface."));
        case HandSignal::help_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Help me. Made at the surface."));
    }
    return {};
}

QString signal_making(HandSignal hand_signal, const GuestTongue& tongue) {
    switch (hand_signal) {
        case HandSignal::ok:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Thumb and first finger make a ring."));
        case HandSignal::something_wrong:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Rock a flat hand, then point at what is wrong."));
        case HandSignal::ears:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Point at your ear."));
        case HandSignal::stop:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Hold up a flat hand."));
        case HandSignal::up:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Fist with the thumb up, moving up."));
        case HandSignal::down:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Fist with the thumb down, moving down."));
        case HandSignal::low_on_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Hold a fist at your chest."));
        case HandSignal::out_of_air:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Cut across your throat with a flat hand."));
        case HandSignal::share_air:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Move your fingers to your mouth and away."));
        case HandSignal::look:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Two fingers from your eyes to the thing."));
        case HandSignal::come_here:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Wave your hand towards you."));
        case HandSignal::stay_together:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Put two first fingers side by side."));
        case HandSignal::hold_hands:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Clasp your hands."));
        case HandSignal::level_off:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Slide a flat hand from side to side."));
        case HandSignal::slow_down:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Press a flat hand down, twice."));
        case HandSignal::cold:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Cross your arms and rub them."));
        case HandSignal::how_much_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Lay two fingers on your palm."));
        case HandSignal::ok_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Make a big ring over your head with both arms."));
        case HandSignal::help_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Wave one straight arm over your head, slowly."));
    }
    return {};
}

}  // namespace leadline
