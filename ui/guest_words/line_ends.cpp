// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/line_ends.h"

#include <unicode/brkiter.h>

#include <algorithm>
#include <memory>

#include "ui/guest_words/letters.h"

namespace leadline {
namespace {

constexpr QChar word_joiner(0x2060);

/// The letter before a place, past the marks that keep directions apart; null: none.
QChar letter_before(const QString& text, qsizetype at) {
    constexpr char16_t first_isolate = 0x2066;
    constexpr char16_t last_isolate = 0x2069;
    for (qsizetype k = at - 1; k >= 0; --k) {
        if (text[k].unicode() < first_isolate || text[k].unicode() > last_isolate) return text[k];
    }
    return {};
}

/// One for each thread: it holds the text it works on.
using Breaks = std::unique_ptr<icu::BreakIterator>;

/// Null where ICU cannot make it.
icu::BreakIterator* phrases() {
    thread_local const Breaks kept = [] {
        UErrorCode status = U_ZERO_ERROR;
        Breaks made(icu::BreakIterator::createLineInstance(
            icu::Locale("ja", nullptr, nullptr, "lw=phrase"), status));
        if (U_FAILURE(status) != 0) made.reset();
        return made;
    }();
    return kept.get();
}

/// Null where ICU cannot make it.
icu::BreakIterator* words() {
    thread_local const Breaks kept = [] {
        UErrorCode status = U_ZERO_ERROR;
        Breaks made(icu::BreakIterator::createWordInstance(icu::Locale("zh"), status));
        if (U_FAILURE(status) != 0) made.reset();
        return made;
    }();
    return kept.get();
}

/// The breaks of one text. ICU only borrows it: it lives as long as this.
class BreaksIn {
public:
    BreaksIn(icu::BreakIterator& breaks, const QString& text)
        : letters_(text.utf16(), static_cast<int32_t>(text.size())), breaks_(breaks) {
        breaks_.setText(letters_);
    }
    [[nodiscard]] bool has(qsizetype at) const {
        return breaks_.isBoundary(static_cast<int32_t>(at)) != 0;
    }

private:
    icu::UnicodeString letters_;
    icu::BreakIterator& breaks_;
};

/// Whether a line would begin inside a word although ICU lets a phrase end there.
bool parts_a_word(const QString& text, qsizetype at) {
    const QChar before = letter_before(text, at);
    const QChar after = text[at];
    if (is_han(before) && (is_han(after) || is_hiragana(after))) return true;
    if (!is_hiragana(before)) return false;
    const QStringView rest = QStringView(text).mid(at);
    const QString endings[] = {QStringLiteral("さい"), QStringLiteral("しょう"), QStringLiteral("てい")};
    return std::any_of(std::begin(endings), std::end(endings),
                       [&](const QString& ending) { return rest.startsWith(ending); });
}

void add_inside_phrases(const QString& text, std::vector<qsizetype>& poor) {
    icu::BreakIterator* kept = phrases();
    if (kept == nullptr) return;
    const BreaksIn ends(*kept, text);
    for (qsizetype at = 1; at < text.size(); ++at) {
        if (!letter_before(text, at).isLetterOrNumber() || !text[at].isLetterOrNumber()) continue;
        if (!ends.has(at) || parts_a_word(text, at)) poor.push_back(at);
    }
}

void add_inside_words(const QString& text, std::vector<qsizetype>& poor) {
    icu::BreakIterator* kept = words();
    if (kept == nullptr) return;
    const BreaksIn ends(*kept, text);
    for (qsizetype at = 1; at < text.size(); ++at) {
        if (is_han(text[at - 1]) && is_han(text[at]) && !ends.has(at)) poor.push_back(at);
    }
}

void add_before_last_letters(const QString& text, std::vector<qsizetype>& poor) {
    constexpr qsizetype short_text = 8;
    constexpr qsizetype kept_together = 3;
    qsizetype end = text.size();
    while (end > 0 && !text[end - 1].isLetterOrNumber()) --end;
    if (end < short_text) return;
    for (qsizetype at = end - kept_together + 1; at < end; ++at) {
        if (is_han(text[at - 1]) && is_han(text[at])) poor.push_back(at);
    }
}

void add_before_units(const QString& text, std::vector<qsizetype>& poor) {
    for (qsizetype at = 1; at < text.size(); ++at) {
        if (letter_before(text, at).isDigit() && is_east_asian(text[at])) poor.push_back(at);
    }
}

}  // namespace

std::vector<qsizetype> poor_line_ends(const QString& text) {
    std::vector<qsizetype> poor;
    if (std::none_of(text.begin(), text.end(), is_east_asian)) return poor;
    if (std::any_of(text.begin(), text.end(), is_kana)) {
        add_inside_phrases(text, poor);
    } else if (std::any_of(text.begin(), text.end(), is_han)) {
        add_inside_words(text, poor);
        add_before_last_letters(text, poor);
    }
    add_before_units(text, poor);
    std::sort(poor.begin(), poor.end());
    poor.erase(std::unique(poor.begin(), poor.end()), poor.end());
    return poor;
}

QString with_good_line_ends(const QString& text) {
    QString joined = text;
    const std::vector<qsizetype> poor = poor_line_ends(text);
    for (auto at = poor.rbegin(); at != poor.rend(); ++at) joined.insert(*at, word_joiner);
    return joined;
}

}  // namespace leadline
