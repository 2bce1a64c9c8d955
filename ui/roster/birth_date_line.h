// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>
#include <optional>

#include "core/planning/dates.h"
#include "core/physics/result.h"

namespace leadline {

/// A day as typed: "1990-05-17", "17/5/1990", "17 5 1990", "17 May 1990", "17 de mayo de 1990"; the
/// month in the window's language or in English. The day stands before the month; the year has
/// four digits, 1900 to 2200, since a guessed century could turn a child into an adult.
/// @returns the day; ErrorCode::bad_date otherwise
Result<Date> read_typed_date(const QString& text);

/// A line for a birth date that may be unknown. It is typed, not picked: for a birth year, forty
/// clicks in a calendar are no help.
class BirthDateLine : public QLineEdit {
    Q_OBJECT
public:
    explicit BirthDateLine(QWidget* parent = nullptr);

    /// Shows a date, or none; a line being typed in is left alone while its date is the same.
    void show_date(std::optional<Date> date);
    /// Puts the date shown last back in place of what was typed.
    void restore();
    /// A whole date up to this one is reported while it is typed; a later one, or none, only once
    /// the line is left or Return pressed.
    void set_latest(Date latest) { latest_ = latest; }

Q_SIGNALS:
    void edited(std::optional<Date> date);
    /// What stands there when the line is left is no date.
    void not_a_date(const QString& typed);

private:
    void typing();
    void finished();
    void report(std::optional<Date> date);

    std::optional<Date> shown_;   ///< reported or shown last
    std::optional<Date> before_;  ///< when typing began: what a refusal goes back to
    std::optional<Date> latest_;
    bool dirty_ = false;
};

}  // namespace leadline
