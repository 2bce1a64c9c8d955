// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_refusal.h"

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/error_words.h"
#include "ui/words/range_words.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class ProfileRefusalTexts {
    Q_DECLARE_TR_FUNCTIONS(ProfileRefusal)
};

/// "/profile/points/3/time_min" -> "Corner 3"; "The dive" when no corner is meant.
QString corner_of(const std::string& place) {
    const QStringList parts = QString::fromStdString(place).split(u'/');
    bool is_number = false;
    const int index = parts.value(3).toInt(&is_number);
    if (!is_number) return ProfileRefusalTexts::tr("The dive");
    return index == 0 ? ProfileRefusalTexts::tr("The start")
                      : ProfileRefusalTexts::tr("Corner %1").arg(index);
}

}  // namespace

QString profile_refusal(const Error& error) {
    const QString corner = corner_of(error.place);
    const QString given = number_words(QString::fromStdString(error.given));
    const QString allowed = range_words(error.allowed);
    const bool time = error.place.ends_with("time_min");
    switch (error.code) {
        case ErrorCode::time_not_increasing:
            return ProfileRefusalTexts::tr(
                       "Not changed: %1 would be at %2 min, not later than the corner before it at "
                       "%3 min. Times must grow from corner to corner.")
                .arg(corner, given, allowed);
        case ErrorCode::out_of_range:
            return time ? ProfileRefusalTexts::tr(
                              "Not changed: %1 would be at %2 min; a dive may last %3 min.")
                              .arg(corner, given, allowed)
                        : ProfileRefusalTexts::tr(
                              "Not changed: %1 would be at %2 m; possible is %3 m.")
                              .arg(corner, given, allowed);
        case ErrorCode::profile_not_closed:
            return ProfileRefusalTexts::tr("Not changed: a dive starts and ends at the surface.");
        case ErrorCode::bad_count:
            return ProfileRefusalTexts::tr("Not changed: a dive has %1 corners with its start.")
                .arg(allowed);
        default:
            return ProfileRefusalTexts::tr("Not changed. %1").arg(words(error));
    }
}

}  // namespace leadline
