// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/screen_words.h"

#include <QCoreApplication>

namespace leadline {

QString screen_word(ScreenWord word, const GuestTongue& tongue) {
    switch (word) {
        case ScreenWord::back:
            //: a button: to the page before
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Back"));
        case ScreenWord::next:
            //: a button: to the page after
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Next"));
        case ScreenWord::run:
            //: a button: the pages turn by themselves from here on
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Run"));
        case ScreenWord::pause:
            //: a button: the pages no longer turn by themselves
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Pause"));
        case ScreenWord::language:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Language"));
        case ScreenWord::page_of:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Page %1 of %2"));
        case ScreenWord::pick_name:
            //: above the first names of the guests
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Tap your name."));
        case ScreenWord::draft:
            //: stands on every page whose language is a draft
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "No speaker has checked this text yet. Ask if it is not clear."));
        case ScreenWord::standing:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "A planning aid. Your instructor decides."));
        case ScreenWord::no_guests:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "No guests yet."));
        case ScreenWord::welcome:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Welcome"));
        case ScreenWord::todays_dive:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Today’s dive"));
        case ScreenWord::where:
            //: label before a place
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Where"));
        case ScreenWord::with:
            //: label before the instructor’s name
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "With"));
        case ScreenWord::how_deep:
            //: label before a depth
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "How deep"));
        case ScreenWord::no_deeper:
            //: follows the label “How deep”
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "no deeper than %1"));
        case ScreenWord::how_long:
            //: label before a time
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "How long"));
        case ScreenWord::about_long:
            //: follows the label “How long”
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "about %1"));
        case ScreenWord::not_set:
            //: in place of a name or a place
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "not set yet"));
        case ScreenWord::may_stop:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "You may stop at any time. Just show it."));
        case ScreenWord::may_ask:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Ask about all that is not clear."));
        case ScreenWord::kit:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Your kit"));
        case ScreenWord::kit_empty:
            //: in place of a size
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "not chosen yet"));
        case ScreenWord::kit_try:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Try it all on. Does it pinch, leak or feel loose? Say so."));
        case ScreenWord::breathe:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Breathe all the time"));
        case ScreenWord::never_hold:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Never hold your breath"));
        case ScreenWord::drag:
            //: the guest drags a picture with the finger
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Move the diver up and down."));
        case ScreenWord::depth:
            //: label before a number
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Depth"));
        case ScreenWord::pressure:
            //: label before a number
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Pressure"));
        case ScreenWord::times_top:
            //: %1 is a factor, as in ×1.8
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "%1 the pressure at the top"));
        case ScreenWord::balloon:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Balloon"));
        case ScreenWord::balloon_says:
            //: a balloon
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Filled at the top, it shrinks on the way down."));
        case ScreenWord::lungs:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Lungs"));
        case ScreenWord::lungs_breathe:
            //: the lungs
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Breathe, and they stay the same size."));
        case ScreenWord::lungs_held:
            //: %2 is a factor, as in ×1.8
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "A breath held at %1 swells to %2 at the top."));
        case ScreenWord::lungs_tear:
            //: a held breath
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "It can tear a lung."));
        case ScreenWord::lungs_tear_by:
            //: to go up by %1 with a held breath can be enough to tear a lung
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Even %1 up can be enough."));
        case ScreenWord::ear_drum:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Ear drum"));
        case ScreenWord::ear_says:
            //: the ear drum
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "It bends in on the way down. Clear your ears."));
        case ScreenWord::ear_flat:
            //: the ear drum is not bent
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "flat"));
        case ScreenWord::ear_bent:
            //: the ear drum is bent in
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "bent in"));
        case ScreenWord::mask:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Mask"));
        case ScreenWord::mask_says:
            //: the mask
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest",
                "On the way down it pulls at your face. Breathe out a bit through your nose."));
        case ScreenWord::mask_loose:
            //: the mask
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "sits well"));
        case ScreenWord::mask_tight:
            //: the mask is sucked to the face
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "pulls"));
        case ScreenWord::size_here:
            //: %1 is a share, as in 55 %
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Size: %1"));
        case ScreenWord::at_top:
            //: the water’s surface, beside a scale of depth
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Top"));
        case ScreenWord::deepest_today:
            //: beside a scale of depth
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Deepest today"));
        case ScreenWord::diver:
            //: a person under water
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Diver"));
        case ScreenWord::ears:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Clear your ears"));
        case ScreenWord::ears_every:
            //: your ears
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Clear them every %1 on the way down, before they hurt."));
        case ScreenWord::ears_how:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Pinch your nose. Blow softly. Never blow hard."));
        case ScreenWord::ears_try:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Try it: go down. What if you do not clear?"));
        case ScreenWord::go_down:
            //: a button: go a little deeper
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Down"));
        case ScreenWord::go_up:
            //: a button: go a little less deep
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Up"));
        case ScreenWord::clear_now:
            //: a button
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Clear my ears"));
        case ScreenWord::ear_pressure:
            //: label before a pressure
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "On the ear drum"));
        case ScreenWord::ear_fine:
            //: state of the ears
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Fine"));
        case ScreenWord::ear_discomfort:
            //: state of the ears: it feels full, it does not hurt yet
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Pressure: clear now"));
        case ScreenWord::ear_pain:
            //: state of the ears
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Pain: stop and go up"));
        case ScreenWord::ear_locked:
            //: state of the ears: the tube to the ear is shut tight and does not open
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Locked: only going up helps"));
        case ScreenWord::ear_cleared:
            //: the ear drum
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Cleared. The drum is flat."));
        case ScreenWord::ear_up_first:
            //: to clear the ears
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Do not force it. Go up a bit first."));
        case ScreenWord::ear_signal:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Ears hurt? Stop, show it, go up a bit. Then try once more."));
        case ScreenWord::clear_here:
            //: beside a mark on a scale of depth
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "clear here"));
        case ScreenWord::signal_page:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Hand signals"));
        case ScreenWord::numbers:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "How much air do you have?"));
        case ScreenWord::numbers_how:
            //: the figures of a number, one after another
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Show each figure with one hand. This is %1:"));
        case ScreenWord::mixed_up:
            //: above two signals that are often mixed up
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Not the same"));
        case ScreenWord::thumb_up:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Thumb up: we go up. It does not mean “good”."));
        case ScreenWord::ring_ok:
            //: thumb and first finger make a ring
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "All is well? Make the ring."));
        case ScreenWord::check:
            //: hand signals
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Do you know them?"));
        case ScreenWord::check_start:
            //: a button
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Start"));
        case ScreenWord::check_again:
            //: a button
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Start over"));
        case ScreenWord::check_question:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "What does this signal say?"));
        case ScreenWord::check_right:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Yes, that is right."));
        case ScreenWord::check_wrong:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Not quite. It says: %1"));
        case ScreenWord::check_ask_again:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "We will ask it once more."));
        case ScreenWord::check_score:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Known: %1 of %2"));
        case ScreenWord::check_done:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "You know them all. Well done!"));
        case ScreenWord::check_noted:
            //: %1 is a date
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Your instructor has a note of it: %1"));
        case ScreenWord::known:
            //: a hand signal that the guest knows
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "known"));
        case ScreenWord::not_known:
            //: a hand signal that the guest does not know yet
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "not yet"));
        case ScreenWord::skills:
            //: what is practised in shallow water
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "What we try first"));
        case ScreenWord::skills_how:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Your instructor shows it. Then you try. Take your time."));
        case ScreenWord::no_skills:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Ask your instructor what we try today."));
        case ScreenWord::ends:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "When we go up"));
        case ScreenWord::ends_all:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "One goes up, we all go up."));
        case ScreenWord::ends_slow:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Go up slowly and breathe all the time."));
        case ScreenWord::end_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Your gauge reads %1 or less. Show it now."));
        case ScreenWord::end_air_unknown:
            //: the number on the gauge
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Your air is low. Ask which number to look for."));
        case ScreenWord::end_time:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "The time is up: %1."));
        case ScreenWord::end_wish:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "You want to go up. That is fine."));
        case ScreenWord::end_ears:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Your ears hurt or do not clear."));
        case ScreenWord::end_cold:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "You are cold, tired or scared."));
        case ScreenWord::end_sign:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Your instructor shows: go up."));
        case ScreenWord::end_lost:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "You see none of us. Look around for one minute, then go up slowly."));
        case ScreenWord::after:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "After the dive"));
        case ScreenWord::no_flying:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "No flights and no mountain roads for %1 h."));
        case ScreenWord::watch:
            //: signs of illness
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "For 48 h, watch for this:"));
        case ScreenWord::watch_numb:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "numb or tingling skin"));
        case ScreenWord::watch_weak:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "weak arms or legs"));
        case ScreenWord::watch_dizzy:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "dizzy, or odd sight"));
        case ScreenWord::watch_tired:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "very tired"));
        case ScreenWord::watch_joints:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "sore joints"));
        case ScreenWord::watch_breath:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "short of breath, or chest pain"));
        case ScreenWord::call:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Any of these? Call now: %1"));
        case ScreenWord::call_unknown:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Any of these? Call for help now. Ask your instructor for the number."));
        case ScreenWord::say_dived:
            return tongue.say(
                QT_TRANSLATE_NOOP("Guest", "Say that you have been diving. Do not wait."));
    }
    return {};
}

}  // namespace leadline
