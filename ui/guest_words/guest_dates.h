// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/planning/dates.h"
#include "ui/guest_words/guest_language.h"

namespace leadline {

/// A day as the guest's language writes it, with the weekday and without the year: "Sat, 20 June".
/// @source  order and words: Unicode Common Locale Data Repository, by way of ICU
QString guest_day(Date date, const GuestTongue& tongue);

/// A time of day as the guest's language writes it: "08:15".
QString guest_time(TimeOfDay time, const GuestTongue& tongue);

}  // namespace leadline
