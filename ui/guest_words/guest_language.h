// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

class QTranslator;

namespace leadline {

/// How far a translation can be trusted.
enum class ReviewState {
    written,  ///< the language in which the text was written
    drafted,  ///< nobody who speaks it has checked it
    checked,  ///< checked by a speaker, as it stands now
};

/// A language in which guests are briefed.
struct GuestLanguage {
    std::string tag;       ///< BCP 47, as in Guest::language: "de", "zh-Hans"
    QString own_name;      ///< in the language itself: "Deutsch"; no flags
    QLocale locale;        ///< for numbers and dates
    QString font_family;   ///< an open typeface with its script, embedded in what is printed
    bool right_to_left = false;
    ReviewState review = ReviewState::drafted;
    QString checked_by;    ///< of `checked`
};

/// All there are, in the order in which they are offered: English first, then by own name.
/// @source  review states: resources/translations/review.json
const std::vector<GuestLanguage>& guest_languages();

/// The language for a guest's tag ("pt-BR" finds "pt", "ZH-cn" finds "zh-Hans"); nullptr where there
/// is none, so that nobody is given another language without being told.
const GuestLanguage* find_guest_language(std::string_view tag);

/// A guest's language with its words. Made once a language and kept. For the window's thread.
class GuestTongue {
public:
    /// The tongue for a tag; English where there is none (see find_guest_language()).
    static const GuestTongue& of(std::string_view tag);
    ~GuestTongue();
    GuestTongue(const GuestTongue&) = delete;
    GuestTongue& operator=(const GuestTongue&) = delete;

    /// A text in this language. Every text that is asked for stands in ui/guest_words, marked with
    /// QT_TRANSLATE_NOOP("Guest", ...); the build checks that no language lacks one.
    [[nodiscard]] QString say(const char* source) const;
    [[nodiscard]] const GuestLanguage& language() const { return language_; }
    [[nodiscard]] const QLocale& locale() const { return language_.locale; }

private:
    explicit GuestTongue(const GuestLanguage& language);
    const GuestLanguage& language_;
    std::unique_ptr<QTranslator> translator_;
};

/// Puts a name, a number or anything else of another direction into a text: wrapped so that it keeps
/// its own order in right-to-left text and the text keeps its (Unicode Standard Annex 9, isolates).
QString isolated(const QString& inserted);

}  // namespace leadline
