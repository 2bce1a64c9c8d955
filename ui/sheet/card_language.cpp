// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_language.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "ui/guest_words/guest_language.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

class CardLanguageWords {
    Q_DECLARE_TR_FUNCTIONS(CardLanguage)
};

/// The language in which a card is that is asked for in one.
std::string card_tag(const std::string& asked) {
    const GuestLanguage* language = find_guest_language(asked);
    return language != nullptr ? language->tag : std::string("en");
}

}  // namespace

const GuestTongue& window_tongue() {
    return GuestTongue::of(QLocale().bcp47Name().toStdString());
}

QString guest_language_name(const std::string& tag) {
    return tag.empty() ? CardLanguageWords::tr("language not entered") : language_name(tag);
}

bool has_card_language(const std::string& tag) {
    return find_guest_language(tag) != nullptr;
}

QString card_language_text(const std::string& tag) {
    const GuestLanguage* language = find_guest_language(tag);
    if (tag.empty()) return CardLanguageWords::tr("Language not entered: the card is in English");
    if (language == nullptr) {
        return CardLanguageWords::tr("No %1 yet: the card is in English").arg(language_name(tag));
    }
    const QString name = language_name(language->tag);
    switch (language->review) {
        case ReviewState::written:
            return name;
        case ReviewState::drafted:
            return CardLanguageWords::tr("%1: a draft, not checked by a speaker").arg(name);
        case ReviewState::checked:
            return language->checked_by.isEmpty()
                       ? CardLanguageWords::tr("%1: checked by a speaker").arg(name)
                       : CardLanguageWords::tr("%1: checked by %2").arg(name, language->checked_by);
    }
    return name;
}

QString card_languages_in_brief(const Guest& guest) {
    const auto brief = [](const std::string& tag) -> QString {
        const GuestLanguage* language = find_guest_language(tag);
        if (language == nullptr) return {};
        const QString name = language_name(language->tag);
        return language->review == ReviewState::drafted
                   ? CardLanguageWords::tr("%1 (draft)", "a language").arg(name)
                   : name;
    };
    QString shown = brief(guest.language);
    if (shown.isEmpty()) {
        shown = CardLanguageWords::tr("English, no %1 yet", "a language")
                    .arg(guest_language_name(guest.language));
    }
    const GuestLanguage* other = find_guest_language(guest.second_language);
    const bool alike = other != nullptr && other->tag == card_tag(guest.language);
    if (guest.second_language.empty() || alike) return shown;
    const QString second = brief(guest.second_language);
    return second.isEmpty()
               ? CardLanguageWords::tr("%1, no %2 yet", "two languages")
                     .arg(shown, guest_language_name(guest.second_language))
               : CardLanguageWords::tr("%1 and %2", "two languages").arg(shown, second);
}

std::vector<const Guest*> guests_without_language(const std::vector<const Guest*>& guests) {
    std::vector<const Guest*> without;
    for (const Guest* guest : guests) {
        const bool second =
            guest->second_language.empty() || has_card_language(guest->second_language);
        if (!has_card_language(guest->language) || !second) without.push_back(guest);
    }
    return without;
}

QString review_text(const std::vector<const Guest*>& guests) {
    QStringList drafted;
    QStringList none;
    QStringList sentences;
    const auto note = [](QStringList& list, const QString& name) {
        if (!list.contains(name)) list << name;
    };
    const auto add = [&](const std::string& tag) {
        const GuestLanguage* language = find_guest_language(tag);
        if (language == nullptr) {
            note(none, guest_language_name(tag));
        } else if (language->review == ReviewState::drafted) {
            note(drafted, language_name(language->tag));
        } else if (language->review == ReviewState::checked) {
            note(sentences, card_language_text(tag) + u'.');
        }
    };
    for (const Guest* guest : guests) {
        add(guest->language);
        if (!guest->second_language.empty()) add(guest->second_language);
    }
    const QString comma = QStringLiteral(", ");
    if (!drafted.isEmpty()) {
        sentences.prepend(CardLanguageWords::tr("Cards in %1: drafted, not checked by a speaker.")
                              .arg(drafted.join(comma)));
    }
    if (!none.isEmpty()) {
        sentences.prepend(
            CardLanguageWords::tr("No cards in %1: in English instead.").arg(none.join(comma)));
    }
    return sentences.join(u' ');
}

}  // namespace leadline
