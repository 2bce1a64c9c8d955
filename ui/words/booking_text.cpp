// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/booking_text.h"

#include <QCoreApplication>

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class BookingTexts {
    Q_DECLARE_TR_FUNCTIONS(Bookings)
};

/// What stood in the list, made fit to stand in a sentence.
QString shown(const std::string& text) {
    QString result = QString::fromStdString(text);
    for (QChar& letter : result) {
        if (letter == u'\n') letter = u' ';
    }
    return result;
}

}  // namespace

QString label(BookingField field) {
    switch (field) {
        case BookingField::unused:
            return BookingTexts::tr("Not used");
        case BookingField::name:
            return BookingTexts::tr("Name");
        case BookingField::first_name:
            return BookingTexts::tr("First name");
        case BookingField::last_name:
            return BookingTexts::tr("Family name");
        case BookingField::birth_date:
            return BookingTexts::tr("Birth date");
        case BookingField::age:
            return BookingTexts::tr("Age");
        case BookingField::language:
            return BookingTexts::tr("Language");
        case BookingField::mass:
            return BookingTexts::tr("Weight");
        case BookingField::height:
            return BookingTexts::tr("Height");
        case BookingField::shoe_size:
            return BookingTexts::tr("Shoe size");
        case BookingField::phone:
            return BookingTexts::tr("Phone");
        case BookingField::email:
            return BookingTexts::tr("E-mail");
        case BookingField::dives:
            return BookingTexts::tr("Dives before");
        case BookingField::note:
            return BookingTexts::tr("Note");
    }
    return {};
}

QString label(DateOrder order) {
    switch (order) {
        case DateOrder::day_month_year:
            return BookingTexts::tr("day, month, year (31/12/1990)");
        case DateOrder::month_day_year:
            return BookingTexts::tr("month, day, year (12/31/1990)");
        case DateOrder::year_month_day:
            return BookingTexts::tr("year, month, day (1990/12/31)");
    }
    return {};
}

QString label(MassUnit unit) {
    switch (unit) {
        case MassUnit::kilograms:
            return BookingTexts::tr("kilograms");
        case MassUnit::pounds:
            return BookingTexts::tr("pounds");
    }
    return {};
}

QString label(HeightUnit unit) {
    switch (unit) {
        case HeightUnit::centimeters:
            return BookingTexts::tr("centimetres");
        case HeightUnit::meters:
            return BookingTexts::tr("metres");
        case HeightUnit::inches:
            return BookingTexts::tr("inches");
        case HeightUnit::feet_and_inches:
            return BookingTexts::tr("feet and inches (5'9\")");
    }
    return {};
}

QString label(TextEncoding encoding) {
    switch (encoding) {
        case TextEncoding::utf8:
            return BookingTexts::tr("UTF-8");
        case TextEncoding::utf16:
            return BookingTexts::tr("UTF-16");
        case TextEncoding::windows_1252:
            return BookingTexts::tr("Windows-1252");
    }
    return {};
}

QString sentence(const BookingMessage& message) {
    const QString given = shown(message.given);
    const QString allowed = shown(message.allowed);
    switch (message.problem) {
        case BookingProblem::name_missing:
            return BookingTexts::tr(
                "There is no name. Choose the column with the names, or untick the row.");
        case BookingProblem::text_too_long:
            return BookingTexts::tr(
                       "%1 characters; at most %2 can be kept. Shorten it in the list.")
                .arg(given, allowed);
        case BookingProblem::not_a_date:
            return BookingTexts::tr(
                       "\"%1\" is not a date in this order. Check it, or choose the order of dates "
                       "above.")
                .arg(given);
        case BookingProblem::birth_in_future:
            return BookingTexts::tr("\"%1\" is after the session on %2. Check the year.")
                .arg(given, allowed);
        case BookingProblem::not_a_mass:
            return BookingTexts::tr(
                       "\"%1\" is not a weight. Wanted: a number, with kg or lb behind it if you "
                       "like.")
                .arg(given);
        case BookingProblem::not_a_height:
            return BookingTexts::tr("\"%1\" is not a height. Wanted: 175, 1.75 m or 5'9\".")
                .arg(given);
        case BookingProblem::mass_out_of_range:
            return BookingTexts::tr(
                       "\"%1\" is outside 15 to 250 kg. Check the number and the unit above.")
                .arg(given);
        case BookingProblem::height_out_of_range:
            return BookingTexts::tr(
                       "\"%1\" is outside 80 to 250 cm. Check the number and the unit above.")
                .arg(given);
        case BookingProblem::unit_not_chosen:
            return BookingTexts::tr(
                       "\"%1\" can be read in more than one way. Answer the question above.")
                .arg(given);
        case BookingProblem::year_of_two_digits:
            return BookingTexts::tr("\"%1\": the year was taken for %2. Check it with the guest.")
                .arg(given, allowed);
        case BookingProblem::age_unlikely:
            return BookingTexts::tr("%1 years old on the day. Check the birth date.").arg(given);
        case BookingProblem::age_without_birth_date:
            return BookingTexts::tr(
                       "Age %1 goes into the note. Ask for the birth date: without it the rules on "
                       "age cannot be checked.")
                .arg(given);
        case BookingProblem::age_contradicts_birth:
            return BookingTexts::tr(
                       "The list says %1 years, the birth date %2. One of them is wrong; ask the "
                       "guest.")
                .arg(given, allowed);
        case BookingProblem::not_an_age:
            return BookingTexts::tr("\"%1\" is not an age. Left out.").arg(given);
        case BookingProblem::unknown_language:
            return BookingTexts::tr(
                       "\"%1\" is no language known here. English is put; choose another in the "
                       "Roster.")
                .arg(given);
        case BookingProblem::not_a_shoe_size:
            return BookingTexts::tr("\"%1\" is no European shoe size (20 to 55). Left empty.")
                .arg(given);
        case BookingProblem::not_a_number_of_dives:
            return BookingTexts::tr("\"%1\" is not a number of dives. Left empty.").arg(given);
        case BookingProblem::odd_email:
            return BookingTexts::tr(
                       "\"%1\" does not look like an e-mail address. Taken over as it is.")
                .arg(given);
        case BookingProblem::odd_phone:
            return BookingTexts::tr(
                       "\"%1\" does not look like a phone number. Taken over as it is.")
                .arg(given);
        case BookingProblem::unread_letters:
            return BookingTexts::tr(
                       "\"%1\": some letters could not be read. Correct them in the Roster.")
                .arg(given);
    }
    return {};
}

QString sentence(const BookingDuplicate& duplicate) {
    const QString name = shown(duplicate.name);
    const bool in_roster = duplicate.guest.has_value();
    if (duplicate.reason == DuplicateReason::same_contact) {
        return in_roster
                   ? BookingTexts::tr("Same phone or e-mail as %1 in the roster: family, perhaps.")
                         .arg(name)
                   : BookingTexts::tr("Same phone or e-mail as %1 in row %2: family, perhaps.")
                         .arg(name)
                         .arg(duplicate.line);
    }
    return in_roster ? BookingTexts::tr("Same as %1 in the roster").arg(name)
                     : BookingTexts::tr("Same as %1 in row %2").arg(name).arg(duplicate.line);
}

}  // namespace leadline
