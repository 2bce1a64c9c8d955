// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/guest_dates.h"

#include <unicode/smpdtfmt.h>
#include <unicode/timezone.h>

#include <QTime>
#include <map>
#include <memory>

namespace leadline {
namespace {

/// Making a format is slow; a language keeps its own. Null where ICU has none.
icu::DateFormat* day_format(const GuestLanguage& language) {
    static std::map<std::string, std::unique_ptr<icu::DateFormat>> kept;
    const auto known = kept.find(language.tag);
    if (known != kept.end()) return known->second.get();
    // Digits of the West, as everywhere on the card.
    const std::string name = language.locale.name().toStdString() + "@numbers=latn";
    UErrorCode status = U_ZERO_ERROR;
    std::unique_ptr<icu::DateFormat> format(icu::DateFormat::createInstanceForSkeleton(
        icu::UnicodeString("EEEdMMMM"), icu::Locale(name.c_str()), status));
    if (U_FAILURE(status) != 0) format.reset();
    if (format != nullptr) format->adoptTimeZone(icu::TimeZone::getGMT()->clone());
    return (kept[language.tag] = std::move(format)).get();
}

}  // namespace

QString guest_day(Date date, const GuestTongue& tongue) {
    icu::DateFormat* format = day_format(tongue.language());
    if (format == nullptr) return QString::fromStdString(to_text(date));
    const auto since = std::chrono::sys_days(date).time_since_epoch();
    const auto milliseconds =
        static_cast<UDate>(std::chrono::duration_cast<std::chrono::milliseconds>(since).count());
    icu::UnicodeString text;
    format->format(milliseconds, text);
    return QString::fromUtf16(text.getBuffer(), text.length());
}

QString guest_time(TimeOfDay time, const GuestTongue& tongue) {
    const int minutes = time.minutes_after_midnight;
    return tongue.locale().toString(QTime(minutes / 60, minutes % 60), QLocale::ShortFormat);
}

}  // namespace leadline
