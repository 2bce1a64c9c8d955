// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "ui/guest_words/card_words.h"
#include "ui/guest_words/guest_punctuation.h"
#include "ui/guest_words/picture_words.h"
#include "ui/guest_words/signal_words.h"
#include "ui/guest_words/isolates.h"
#include "ui/sheet/picture_sheet.h"
#include "ui/sheet/sheet_words.h"

namespace leadline {
namespace {

constexpr double picture_meters_per_foot = 0.3048;

/// What the page says, in the languages chosen.
class PictureTongues {
public:
    PictureTongues(const std::string& language, const std::string& second)
        : tongues_{&GuestTongue::of(language)} {
        if (second.empty() || find_guest_language(second) == nullptr) return;
        const GuestTongue& other = GuestTongue::of(second);
        if (&other != tongues_.front()) tongues_.push_back(&other);
    }

    template <typename Say>
    [[nodiscard]] GuestTexts texts(Say say) const {
        GuestTexts all;
        for (const GuestTongue* tongue : tongues_) {
            all.push_back({say(*tongue), face_of(*tongue)});
        }
        return all;
    }
    [[nodiscard]] GuestTexts words(PictureWord word) const {
        return texts([&](const GuestTongue& tongue) { return picture_word(word, tongue); });
    }
    [[nodiscard]] GuestTexts words(CardWord word) const {
        return texts([&](const GuestTongue& tongue) { return card_word(word, tongue); });
    }
    [[nodiscard]] QString review() const {
        QStringList sentences;
        for (const GuestTongue* tongue : tongues_) {
            const QString said = translation_review(*tongue);
            if (!said.isEmpty()) sentences << said;
        }
        return sentences.join(u' ');
    }
    [[nodiscard]] const GuestTongue& first() const { return *tongues_.front(); }

private:
    static Typeface face_of(const GuestTongue& tongue) {
        return {tongue.language().font_family, tongue.language().right_to_left};
    }
    std::vector<const GuestTongue*> tongues_;
};

/// A number with its unit or sign. Beside others it keeps its own order; no need where all runs from
/// left to right.
QString kept_whole(const GuestTongue& tongue, const QString& text) {
    return tongue.language().right_to_left ? isolated(text) : text;
}

QString shown_number(const GuestTongue& tongue, double value, int decimals) {
    return tongue.locale().toString(value, 'f', decimals);
}

// Keeps 7.9999999 m from being shown as 7.9 when it is 8.
constexpr double picture_slack = 1e-6;

/// Rounded down, so that the deepest point is the very figure of the card. Whole where it is whole,
/// else with a tenth; feet are whole.
QString depth_text(const GuestTongue& tongue, Depth depth, UnitSystem units) {
    const double meters = depth.meters().value();
    if (units == UnitSystem::imperial) {
        const double feet = std::floor(meters / picture_meters_per_foot + picture_slack);
        return kept_whole(tongue, number_with_unit(shown_number(tongue, feet, 0),
                                                   card_word(CardWord::feet, tongue)));
    }
    const double tenths = std::floor(meters * 10.0 + picture_slack);
    const int decimals = std::fmod(tenths, 10.0) == 0.0 ? 0 : 1;
    return kept_whole(tongue, number_with_unit(shown_number(tongue, tenths / 10.0, decimals),
                                               card_word(CardWord::meters, tongue)));
}

/// How much air swells, rounded up, the safe side: never less than it does. What shrinks, to the
/// nearest.
QString factor_text(const GuestTongue& tongue, double factor) {
    const double shown = factor > 1.0 ? std::ceil(factor * 100.0 - picture_slack) / 100.0 : factor;
    const int decimals = factor == 1.0 ? 0 : 2;
    return kept_whole(tongue, QChar(0x00D7) + shown_number(tongue, shown, decimals));
}

PictureBalloon balloon_of(const GuestTongue& tongue, Depth depth, double factor, Liters volume,
                          UnitSystem units) {
    PictureBalloon balloon;
    balloon.scale = std::cbrt(factor);
    balloon.depth = depth_text(tongue, depth, units);
    if (units == UnitSystem::metric) {
        // What swells up, as its factor.
        const double liters = factor > 1.0
                                  ? std::ceil(volume.value() * 10.0 - picture_slack) / 10.0
                                  : volume.value();
        balloon.volume = kept_whole(tongue, number_with_unit(shown_number(tongue, liters, 1),
                                                             card_word(CardWord::liters, tongue)));
    }
    balloon.factor = factor_text(tongue, factor);
    return balloon;
}

/// A pressure as a gauge shows it, sign by sign and with its unit.
GuestTexts numbers_shown(const PictureTongues& tongues, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    const QString number = metric ? QStringLiteral("120") : QStringLiteral("1800");
    QStringList signs;
    for (const QChar digit : number) signs << QString(digit);
    return tongues.texts([&](const GuestTongue& tongue) {
        const QString unit = card_word(metric ? CardWord::bar : CardWord::psi, tongue);
        const QString arrow = QStringLiteral(" %1 ").arg(arrow_to_next_sign);
        const QString joined =
            tongue.language().right_to_left
                ? right_to_left_isolate + signs.join(arrow) + pop_isolate
                : isolated(signs.join(QStringLiteral(" – ")));
        const QString whole = number_with_unit(number, unit);
        return picture_word(PictureWord::numbers_shown, tongue)
            .arg(joined, isolated(whole));
    });
}

}  // namespace

PictureSheet picture_sheet(const Plan& plan, UnitSystem units, const std::string& language,
                           const std::string& second) {
    const PictureTongues tongues(language, second);
    PictureSheet sheet;
    sheet.title = tongues.words(PictureWord::title);
    for (int i = 0; i < hand_signal_count; ++i) {
        const auto one = static_cast<HandSignal>(i);
        sheet.hand_signals.push_back(
            {signal_picture(one), tongues.texts([&](const GuestTongue& tongue) {
                 return signal_caption(one, tongue);
             })});
    }
    sheet.thumb_up = tongues.words(PictureWord::thumb_up);
    for (int digit = 0; digit < 10; ++digit) {
        sheet.numbers.push_back({QStringLiteral(":/leadline/signals/number-%1.svg").arg(digit),
                                 {{QString::number(digit), Typeface{}}}});
    }
    sheet.numbers_first = tongues.words(PictureWord::numbers_first);
    sheet.numbers_shown = numbers_shown(tongues, units);
    sheet.taken_down = tongues.words(PictureWord::taken_down);
    sheet.taken_up = tongues.words(PictureWord::taken_up);
    for (const BalloonAt& balloon : plan.environment.balloons) {
        sheet.shrinking.push_back(balloon_of(tongues.first(), balloon.depth, balloon.shrinks_to,
                                             balloon.taken_down, units));
        sheet.swelling.push_back(
            balloon_of(tongues.first(), balloon.depth, balloon.swells_to, balloon.taken_up, units));
    }
    sheet.like_lungs = tongues.words(PictureWord::like_lungs);
    sheet.never_hold_breath = tongues.words(CardWord::never_hold_breath);
    sheet.standing = tongues.words(CardWord::standing);
    sheet.review = tongues.review();
    return sheet;
}

}  // namespace leadline
