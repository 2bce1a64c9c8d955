// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/rule_words.h"

#include <QCoreApplication>

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

}  // namespace leadline
