// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/window_language.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLibraryInfo>
#include <QTranslator>
#include <algorithm>
#include <memory>

namespace leadline {
namespace {

struct NamedLanguage {
    const char* tag;
    const char* own_name;
};

constexpr NamedLanguage named_languages[] = {
    {"en", "English"}, {"de", "Deutsch"}, {"es", "Español"}, {"fr", "Français"}};

const QString english = QStringLiteral("en");

QString texts_file(const QString& tag) {
    return QStringLiteral(":/leadline/translations/leadline_") + tag + QStringLiteral(".qm");
}

QJsonObject review_states() {
    QFile file(QStringLiteral(":/leadline/translations/review.json"));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QJsonDocument::fromJson(file.readAll()).object().value(u"window").toObject();
}

bool is_offered(const QString& tag) {
    return std::ranges::any_of(window_languages(),
                               [&](const WindowLanguage& language) { return language.tag == tag; });
}

/// Installed as long as it lives.
std::unique_ptr<QTranslator> installed(const QString& path) {
    auto translator = std::make_unique<QTranslator>();
    if (!translator->load(path)) return nullptr;
    QCoreApplication::installTranslator(translator.get());
    return translator;
}

}  // namespace

const std::vector<WindowLanguage>& window_languages() {
    static const std::vector<WindowLanguage> languages = [] {
        std::vector<WindowLanguage> all;
        const QJsonObject reviews = review_states();
        for (const NamedLanguage& named : named_languages) {
            const QString tag = QString::fromLatin1(named.tag);
            // What was not built, for a text was missing, is not offered.
            if (tag != english && !QFile::exists(texts_file(tag))) continue;
            const QString state = reviews.value(tag).toObject().value(u"state").toString();
            all.push_back({tag, QString::fromUtf8(named.own_name),
                           state != u"written" && state != u"checked"});
        }
        return all;
    }();
    return languages;
}

QString language_for(const QString& chosen, const QStringList& wanted) {
    if (is_offered(chosen)) return chosen;
    for (const QString& tag : wanted) {
        const QString language = tag.section(u'-', 0, 0);
        if (is_offered(language)) return language;
    }
    return english;
}

QLocale locale_for(const QString& tag, const QLocale& system) {
    const QLocale own(tag);
    const bool neutral = system.language() == QLocale::C && tag == english;
    if (neutral || system.language() == own.language()) return system;
    if (system.territory() == QLocale::AnyTerritory) return own;
    return QLocale(own.language(), system.territory());
}

void speak(const QString& tag) {
    // The one searched first is installed last. English counts lie below all; it is not the
    // language of a place that Qt's own texts would need.
    static std::vector<std::unique_ptr<QTranslator>> speaking;
    speaking.clear();  // each takes itself out
    const auto add = [](const QString& path) {
        if (auto translator = installed(path)) speaking.push_back(std::move(translator));
    };
    add(texts_file(english));
    if (tag == english || !is_offered(tag)) return;
    const QString folder = QLibraryInfo::path(QLibraryInfo::TranslationsPath);
    add(folder + QStringLiteral("/qtbase_") + tag + QStringLiteral(".qm"));
    add(texts_file(tag));
}

}  // namespace leadline
