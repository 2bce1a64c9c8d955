// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/guest_language.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>
#include <QTranslator>
#include <map>

namespace leadline {
namespace {

struct Known {
    const char* tag;
    const char* locale;
    const char* own_name;
    const char* family;
    bool right_to_left;
};

// The family decides the shapes of Han characters: Chinese, Japanese and Korean differ.
constexpr Known known_languages[] = {
    {"en", "en_GB", "English", "Noto Sans", false},
    {"ar", "ar_AE", "العربية", "Noto Sans Arabic", true},
    {"de", "de_DE", "Deutsch", "Noto Sans", false},
    {"es", "es_ES", "Español", "Noto Sans", false},
    {"fr", "fr_FR", "Français", "Noto Sans", false},
    {"it", "it_IT", "Italiano", "Noto Sans", false},
    {"ja", "ja_JP", "日本語", "Noto Sans CJK JP", false},
    {"ko", "ko_KR", "한국어", "Noto Sans CJK KR", false},
    {"nl", "nl_NL", "Nederlands", "Noto Sans", false},
    {"pl", "pl_PL", "Polski", "Noto Sans", false},
    {"pt", "pt_PT", "Português", "Noto Sans", false},
    {"ru", "ru_RU", "Русский", "Noto Sans", false},
    {"zh-Hans", "zh_CN", "简体中文", "Noto Sans CJK SC", false},
};

QString words_file(const QString& tag) {
    return QStringLiteral(":/leadline/translations/guest_") + tag + QStringLiteral(".qm");
}

QJsonObject review_states() {
    QFile file(QStringLiteral(":/leadline/translations/review.json"));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QJsonDocument::fromJson(file.readAll()).object().value(u"guest").toObject();
}

GuestLanguage made(const Known& known, const QJsonObject& reviews) {
    GuestLanguage language;
    language.tag = known.tag;
    language.own_name = QString::fromUtf8(known.own_name);
    language.locale = QLocale(QString::fromLatin1(known.locale));
    // Digits of the West on every card: they are what the gauge shows.
    language.locale.setNumberOptions(QLocale::OmitGroupSeparator);
    language.font_family = QString::fromLatin1(known.family);
    language.right_to_left = known.right_to_left;
    const QJsonObject review = reviews.value(QString::fromStdString(language.tag)).toObject();
    const QString state = review.value(u"state").toString();
    if (state == u"written") language.review = ReviewState::written;
    if (state == u"checked") language.review = ReviewState::checked;
    language.checked_by = review.value(u"by").toString();
    return language;
}

}  // namespace

const std::vector<GuestLanguage>& guest_languages() {
    static const std::vector<GuestLanguage> languages = [] {
        std::vector<GuestLanguage> all;
        const QJsonObject reviews = review_states();
        for (const Known& known : known_languages) {
            // What was not built, for a text was missing, is not offered.
            const QString tag = QString::fromLatin1(known.tag);
            if (tag != u"en" && !QFile::exists(words_file(tag))) continue;
            all.push_back(made(known, reviews));
        }
        return all;
    }();
    return languages;
}

const GuestLanguage* find_guest_language(std::string_view tag) {
    // Letter case means nothing in a tag (RFC 5646, section 2.1.1), and some write "zh_TW".
    const QStringList parts = QString::fromUtf8(tag.data(), static_cast<qsizetype>(tag.size()))
                                  .trimmed()
                                  .toLower()
                                  .replace(u'_', u'-')
                                  .split(u'-');
    const std::vector<GuestLanguage>& languages = guest_languages();
    const auto find = [&](const QString& wanted) -> const GuestLanguage* {
        for (const GuestLanguage& language : languages) {
            if (QString::fromStdString(language.tag).toLower() == wanted) return &language;
        }
        return nullptr;
    };
    if (const GuestLanguage* exact = find(parts.join(u'-'))) return exact;
    const QString& primary = parts.front();
    if (primary == u"zh") {
        // Traditional characters are another script: many readers of one do not read the other. A
        // script that is named goes before what a region mostly writes.
        bool traditional = false;
        for (const char16_t* part : {u"hant", u"tw", u"hk", u"mo"}) {
            traditional = traditional || parts.contains(QStringView(part));
        }
        return traditional && !parts.contains(u"hans") ? nullptr : find(QStringLiteral("zh-hans"));
    }
    return find(primary);
}

GuestTongue::GuestTongue(const GuestLanguage& language)
    : language_(language), translator_(std::make_unique<QTranslator>()) {
    // English is the source; its file holds nothing.
    if (language.tag == "en") return;
    if (!translator_->load(words_file(QString::fromStdString(language.tag)))) {
        qFatal("The words of %s cannot be read.", language.tag.c_str());
    }
}

GuestTongue::~GuestTongue() = default;

const GuestTongue& GuestTongue::of(std::string_view tag) {
    static std::map<std::string, std::unique_ptr<GuestTongue>, std::less<>> tongues;
    const GuestLanguage* language = find_guest_language(tag);
    if (language == nullptr) language = &guest_languages().front();
    auto& tongue = tongues[language->tag];
    if (tongue == nullptr) tongue.reset(new GuestTongue(*language));
    return *tongue;
}

QString GuestTongue::say(const char* source) const {
    const QString translated = translator_->translate("Guest", source);
    return translated.isEmpty() ? QString::fromUtf8(source) : translated;
}

QString isolated(const QString& inserted) {
    constexpr QChar first_strong_isolate(0x2068);
    constexpr QChar pop_directional_isolate(0x2069);
    return first_strong_isolate + inserted + pop_directional_isolate;
}

}  // namespace leadline
