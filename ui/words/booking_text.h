// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/files/booking_csv.h"

namespace leadline {

QString label(BookingField field);    ///< "Birth date"; unused: "Not used"
QString label(DateOrder order);       ///< "day, month, year (31/12/1990)"
QString label(MassUnit unit);         ///< "kilograms"
QString label(HeightUnit unit);       ///< "feet and inches (5'9\")"
QString label(TextEncoding encoding);
/// What is wrong or doubtful with a cell, and what to do.
QString sentence(const BookingMessage& message);
/// Who else it may be: "Same as Mara Lind in the roster".
QString sentence(const BookingDuplicate& duplicate);

}  // namespace leadline
