// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>
#include <string>
#include <vector>

#include "ui/words/window_language.h"

namespace leadline::testing {

inline const QString english = QStringLiteral("en");

/// Speaks a language while it lives, then English as all other tests expect it.
class Speaking {
public:
    explicit Speaking(const QString& tag) {
        speak(tag);
        QLocale::setDefault(locale_for(tag, QLocale::c()));
    }
    ~Speaking() {
        speak(english);
        QLocale::setDefault(QLocale::c());
    }
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;
};

/// The languages the window is offered in.
inline std::vector<std::string> offered_tags() {
    std::vector<std::string> tags;
    for (const WindowLanguage& language : window_languages()) {
        tags.push_back(language.tag.toStdString());
    }
    return tags;
}

}  // namespace leadline::testing
