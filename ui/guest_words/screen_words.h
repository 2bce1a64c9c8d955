// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/guest_words/guest_language.h"

namespace leadline {

/// The words of the guest screen, page by page. A child of ten reads the English ones with ease; a
/// test measures it.
enum class ScreenWord {
    // The frame of all pages.
    back,
    next,
    run,  ///< starts the pages running by themselves
    pause,
    language,  ///< for screen readers: the choice of language
    page_of,   ///< "%1" page, "%2" of how many
    pick_name,
    draft,     ///< where no speaker has checked the translation
    standing,  ///< beside every number that can hurt
    no_guests,
    // Welcome.
    welcome,
    todays_dive,
    where,
    with,
    how_deep,
    no_deeper,  ///< "%1" a depth
    how_long,
    about_long,  ///< "%1" a time
    not_set,
    may_stop,
    may_ask,
    // Kit.
    kit,
    kit_empty,  ///< a size nobody has chosen yet
    kit_try,
    // Breathing.
    breathe,
    never_hold,  ///< the largest line
    drag,
    depth,
    pressure,
    times_top,  ///< "%1" a factor: ×1.8
    balloon,
    balloon_says,
    lungs,
    lungs_breathe,
    lungs_held,  ///< "%1" a depth, "%2" a factor
    lungs_tear,
    lungs_tear_by,  ///< "%1" a height
    ear_drum,
    ear_says,
    ear_flat,
    ear_bent,
    mask,
    mask_says,
    mask_loose,
    mask_tight,
    size_here,  ///< "%1" percent of the size at the top
    at_top,
    deepest_today,
    diver,  ///< for screen readers: what is moved
    // Ears.
    ears,
    ears_every,  ///< "%1" a step of descent
    ears_how,
    ears_try,
    go_down,
    go_up,
    clear_now,
    ear_pressure,
    ear_fine,
    ear_discomfort,
    ear_pain,
    ear_locked,
    ear_cleared,   ///< after clearing
    ear_up_first,  ///< after clearing was tried in pain
    ear_signal,
    clear_here,  ///< beside the marks of the descent
    // Signals.
    signal_page,
    numbers,
    numbers_how,  ///< "%1" a pressure
    mixed_up,
    thumb_up,
    ring_ok,
    check,
    check_start,
    check_again,
    check_question,
    check_right,
    check_wrong,  ///< "%1" what the signal says
    check_ask_again,
    check_score,  ///< "%1" of "%2" signals
    check_done,
    check_noted,  ///< "%1" a date
    known,        ///< beside a tick
    not_known,    ///< beside an empty box
    // Skills.
    skills,
    skills_how,
    no_skills,
    // What ends the dive.
    ends,
    ends_all,
    ends_slow,
    end_air,  ///< "%1" a pressure
    end_air_unknown,
    end_time,  ///< "%1" a time
    end_wish,
    end_ears,
    end_cold,
    end_sign,
    end_lost,
    // Afterwards.
    after,
    no_flying,  ///< "%1" hours
    watch,
    watch_numb,
    watch_weak,
    watch_dizzy,
    watch_tired,
    watch_joints,
    watch_breath,
    call,  ///< "%1" an emergency number
    call_unknown,
    say_dived,
};
inline constexpr int screen_word_count = 109;

QString screen_word(ScreenWord word, const GuestTongue& tongue);

}  // namespace leadline
