// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/rule_words.h"

#include <QCoreApplication>
#include <string_view>

#include "ui/words/name_words.h"

namespace leadline {
namespace {

// The title in resources/rules/house.json once more, where lupdate sees it: it reads no JSON. A test
// holds the two together.
constexpr const char* house_title = QT_TRANSLATE_NOOP("RuleSets", "House rules of the centre");

}  // namespace

QString rule_set_title(const std::string& title) {
    if (title != house_title) return QString::fromStdString(title);
    return QCoreApplication::translate("RuleSets", house_title);
}

QString rule_source(const std::string& source) {
    constexpr std::string_view unsourced = "common practice, no source";
    if (!std::string_view(source).starts_with(unsourced)) return QString::fromStdString(source);
    return label(Standing::common_practice) +
           QString::fromStdString(source.substr(unsourced.size()));
}

}  // namespace leadline
