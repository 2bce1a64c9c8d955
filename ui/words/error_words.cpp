// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/error_words.h"

#include <QCoreApplication>

#include "ui/words/name_words.h"
#include "ui/words/range_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class ErrorTexts {
    Q_DECLARE_TR_FUNCTIONS(Errors)
};

/// Long texts from a file are cut: a message must stay readable.
QString shortened(const std::string& text) {
    constexpr qsizetype longest = 80;
    QString result = QString::fromStdString(text);
    for (QChar& letter : result) {
        if (!letter.isPrint()) letter = QChar(0xFFFD);
    }
    if (result.size() > longest) result = result.left(longest) + QChar(0x2026);
    return result;
}

/// A number as the window's language writes it; what a person wrote stays as it was written.
QString given_words(const Error& error) {
    const QString given = shortened(error.given);
    switch (error.code) {
        case ErrorCode::out_of_range:
        case ErrorCode::overfilled_cylinder:
        case ErrorCode::time_not_increasing:
        case ErrorCode::profile_not_closed:
        case ErrorCode::ends_at_higher_pressure: return number_words(given);
        default: return given;
    }
}

struct Parts {
    QString place;
    QString given;
    QString allowed;
};

QString file_sentence(const Error& error, const Parts& p) {
    switch (error.code) {
        case ErrorCode::file_unreadable:
            return ErrorTexts::tr("%1 cannot be read (%2). Check the name and the permissions.")
                .arg(p.place, p.given);
        case ErrorCode::file_unwritable:
            return ErrorTexts::tr(
                       "%1 cannot be written (%2). Choose another folder or free some space.")
                .arg(p.place, p.given);
        case ErrorCode::file_too_large:
            return ErrorTexts::tr("%1 is too large (%2 bytes; at most %3). Choose another file.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::not_json:
            return ErrorTexts::tr("Not valid JSON at %1: %2. Correct the text there.")
                .arg(p.place, p.given);
        case ErrorCode::nested_too_deep:
            return ErrorTexts::tr(
                       "Nested too deep at %1 (at most %2 levels). This is not a session file.")
                .arg(p.place, p.allowed);
        case ErrorCode::unsupported_version:
            return ErrorTexts::tr(
                       "The file has version %1; this program reads up to %2. Update Leadline.")
                .arg(p.given, p.allowed);
        case ErrorCode::not_found:
            return ErrorTexts::tr("%1 %2 was not found. It may have been removed meanwhile.")
                .arg(p.place, p.given);
        default: return {};
    }
}

QString records_sentence(const Error& error, const Parts& p) {
    switch (error.code) {
        case ErrorCode::database_failed:
            return ErrorTexts::tr(
                       "The records in %1 cannot be used (%2). Check the disk and the permissions, "
                       "or choose another file with --database.")
                .arg(p.place, p.given);
        case ErrorCode::database_newer:
            return ErrorTexts::tr(
                       "The records in %1 were written by a newer Leadline (schema %2; this one "
                       "knows %3). Update Leadline; nothing was changed.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::database_locked:
            return ErrorTexts::tr(
                       "The records in %1 are in use by another program. Close it and try again.")
                .arg(p.place);
        case ErrorCode::table_too_large:
            return p.place == QStringLiteral("rows")
                       ? ErrorTexts::tr("The list has %1 rows; at most %2 can be read. Split it.")
                             .arg(p.given, p.allowed)
                       : ErrorTexts::tr(
                             "The list has %1 columns; at most %2 can be read. Take out those that "
                             "are not needed.")
                             .arg(p.given, p.allowed);
        case ErrorCode::not_a_table:
            return p.given == QStringLiteral("quote_left_open")
                       ? ErrorTexts::tr(
                             "A quotation mark is opened in %1 of the list and never closed. Close "
                             "it, or save the list anew as CSV.")
                             .arg(p.place)
                       : ErrorTexts::tr(
                             "There are no rows to be read. Save the list as CSV (comma-separated "
                             "values) and choose that file.");
        case ErrorCode::not_found:
            return ErrorTexts::tr("%1 %2 was not found. It may have been removed meanwhile.")
                .arg(p.place, p.given);
        case ErrorCode::database_damaged:
            return ErrorTexts::
                tr("%1 is damaged or holds no records (%2). Put back a copy: Records, Copies of "
                   "the records. The damaged file is kept.")
                    .arg(p.place, p.given);
        case ErrorCode::database_gone:
            return ErrorTexts::tr(
                       "The records file %1 is not there, or another one took its place. Bring the "
                       "folder or disk back and try again; until then nothing can be saved.")
                .arg(p.place);
        case ErrorCode::database_read_only:
            return ErrorTexts::tr(
                       "The records in %1 may not be written (%2). Change the permissions of the "
                       "file and its folder, then try again.")
                .arg(p.place, p.given);
        case ErrorCode::disk_full:
            return ErrorTexts::tr(
                       "There is no room on the disk for %1 (%2). Free some space and try again; "
                       "what was saved before stands.")
                .arg(p.place, p.given);
        case ErrorCode::not_our_records:
            return ErrorTexts::tr(
                       "%1 holds no records of Leadline (%2). Choose another file; nothing was "
                       "changed.")
                .arg(p.place, p.given);
        case ErrorCode::cancelled:
            return ErrorTexts::tr("Stopped; nothing was changed (%1).").arg(p.place);
        default: return {};
    }
}

QString field_sentence(const Error& error, const Parts& p) {
    switch (error.code) {
        case ErrorCode::wrong_type:
            return ErrorTexts::tr("%1: %2 is not %3. Correct it.").arg(p.place, p.given, p.allowed);
        case ErrorCode::unknown_field:
            return ErrorTexts::tr("%1: there is no field \"%2\". Remove it or use one of: %3.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::missing_field:
            return ErrorTexts::tr("%1: the field \"%2\" is missing. Add it.").arg(p.place, p.given);
        case ErrorCode::out_of_range:
            return ErrorTexts::tr("%1: %2 is outside %3. Enter a value in that range.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::not_a_choice:
            return ErrorTexts::tr("%1: \"%2\" is not a choice. Use one of: %3.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::bad_text:
            return ErrorTexts::tr("%1: \"%2\" does not fit. Wanted: %3.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::bad_count:
            return ErrorTexts::tr("%1: has %2 entries, wanted %3.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::bad_date:
            return ErrorTexts::tr("%1: \"%2\" is not a date. Write it as 2026-07-31.")
                .arg(p.place, p.given);
        case ErrorCode::birth_date_in_future:
            return ErrorTexts::tr("%1: born on %2, after the session on %3. Correct the date.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::duplicate_id:
            return ErrorTexts::tr("%1: \"%2\" is there twice. Give each its own.")
                .arg(p.place, p.given);
        case ErrorCode::unknown_reference:
            return ErrorTexts::tr(
                       "%1: nothing is called \"%2\". Correct the name or add what it names.")
                .arg(p.place, p.given);
        case ErrorCode::overfilled_cylinder:
            return ErrorTexts::tr(
                       "%1: %2 bar is over the working pressure of %3 bar. Read the gauge again; "
                       "never use an overfilled cylinder.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::time_not_increasing:
            return ErrorTexts::tr(
                       "%1: %2 min is not later than the point before (%3 min). Times must grow.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::times_overlap:
            return ErrorTexts::tr(
                       "%1: starts at %2, while another lasts until %3. Correct the times.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::ends_before_start:
            return ErrorTexts::tr("%1: ends at %2, before it starts at %3. Correct the times.")
                .arg(p.place, p.given, p.allowed);
        case ErrorCode::profile_not_closed:
            return ErrorTexts::tr("%1: %2 m; the dive must start and end at the surface (0 m).")
                .arg(p.place, p.given);
        case ErrorCode::log_of_another_session:
            return ErrorTexts::
                tr("%1: the log is of %2; here it is %3. Open this session's own log, or enter it "
                   "by hand.")
                    .arg(p.place, p.given,
                         p.allowed.isEmpty() ? ErrorTexts::tr("nobody") : p.allowed);
        case ErrorCode::ends_at_higher_pressure:
            return ErrorTexts::tr(
                       "%1: %2 bar is more than the %3 bar at the start. Read the gauge again.")
                .arg(p.place, p.given, p.allowed);
        default: return {};
    }
}

QString vault_sentence(const Error& error, const Parts& p) {
    switch (error.code) {
        case ErrorCode::vault_not_set_up:
            return ErrorTexts::tr(
                "The health vault is not set up yet. Set it up in the menu Health vault.");
        case ErrorCode::vault_exists:
            return ErrorTexts::tr("These records have a health vault already. Unlock it instead.");
        case ErrorCode::vault_locked:
            return ErrorTexts::tr("The health vault is locked. Unlock it first.");
        case ErrorCode::vault_wrong_key:
            return error.place == "keyring"
                       ? ErrorTexts::tr(
                             "The key in this computer's keyring does not open the vault. Use "
                             "another way.")
                   : error.place == "recovery"
                       ? ErrorTexts::tr(
                             "This recovery key does not open the vault. Perhaps a newer one was "
                             "made.")
                       : ErrorTexts::tr("This passphrase does not open the vault.");
        case ErrorCode::vault_must_wait:
            return ErrorTexts::tr("After wrong tries the vault waits. Try again in %1 s.")
                .arg(p.given);
        case ErrorCode::vault_last_way:
            return ErrorTexts::tr("This is the last way into the vault. Add another one first.");
        case ErrorCode::passphrase_length:
            return ErrorTexts::
                tr("The passphrase has %1 characters; it needs %2. A few words in a row are easy "
                   "to keep.")
                    .arg(p.given, p.allowed);
        case ErrorCode::recovery_key_mistyped:
            return ErrorTexts::tr(
                "This is no recovery key: a sign is missing or mistyped. Compare it with the "
                "paper.");
        case ErrorCode::sealed_unreadable:
            return ErrorTexts::tr(
                       "%1 %2 cannot be opened: it is damaged, or was changed outside Leadline. "
                       "Nothing was removed. Take a backup, and ask the guest again.")
                .arg(p.place, p.given);
        case ErrorCode::key_stretching_failed:
            return ErrorTexts::
                tr("Not enough memory to check the passphrase (%1 needed). Close other programs "
                   "and try again.")
                    .arg(p.allowed);
        case ErrorCode::keyring_failed:
            return ErrorTexts::tr(
                       "This computer's keyring does not answer (%1). Use the passphrase or the "
                       "recovery key.")
                .arg(p.given);
        default: return {};
    }
}

}  // namespace

QString words(const Error& error, const QString& file) {
    const Parts parts{shortened(error.place.empty() ? std::string("/") : error.place),
                      given_words(error), range_words(error.allowed)};
    QString sentence = file_sentence(error, parts);
    if (sentence.isEmpty()) sentence = records_sentence(error, parts);
    if (sentence.isEmpty()) sentence = field_sentence(error, parts);
    if (sentence.isEmpty()) sentence = vault_sentence(error, parts);
    return file.isEmpty() ? sentence : with_colon(file, sentence);
}

}  // namespace leadline
