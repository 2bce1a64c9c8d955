// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/rule_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <string_view>

#include "ui/words/name_words.h"

namespace leadline {
namespace {

// The titles in resources/rules/*.json once more, where lupdate sees them: it reads no JSON. A test
// holds the two together.
constexpr std::array titles{
    QT_TRANSLATE_NOOP("RuleSets", "House rules of the centre"),
    QT_TRANSLATE_NOOP("RuleSets", "Flying after diving workshop, 2002"),
    QT_TRANSLATE_NOOP("RuleSets", "France, Code du sport"),
    QT_TRANSLATE_NOOP("RuleSets", "France, federation rules for children"),
    QT_TRANSLATE_NOOP("RuleSets", "ISO 11121:2017"),
    QT_TRANSLATE_NOOP("RuleSets", "Maldives, regulation of 2003"),
    QT_TRANSLATE_NOOP("RuleSets", "Queensland, recreational diving code"),
    QT_TRANSLATE_NOOP("RuleSets", "RSTC introductory scuba experience, 2001"),
    QT_TRANSLATE_NOOP("RuleSets", "Spain, Royal Decree 550/2020"),
    QT_TRANSLATE_NOOP("RuleSets", "Thailand, measures of 2025"),
};

/// In English a source stands in the sentence as it is; elsewhere in quotation marks, since its
/// words are English.
QString cited(std::string_view source) {
    return QCoreApplication::translate("RuleSets", "%1",
                                       "a source in English: put it into quotation marks")
        .arg(QString::fromUtf8(source.data(), qsizetype(source.size())));
}

}  // namespace

std::vector<std::string> translated_rule_titles() { return {titles.begin(), titles.end()}; }

QString rule_set_title(const std::string& title) {
    const auto found = std::find(titles.begin(), titles.end(), std::string_view(title));
    if (found == titles.end()) return QString::fromStdString(title);
    return QCoreApplication::translate("RuleSets", *found);
}

QString rule_source(const std::string& source) {
    constexpr std::string_view unsourced = "common practice, no source";
    const std::string_view whole(source);
    if (whole.empty()) return {};
    if (!whole.starts_with(unsourced)) return cited(whole);
    const QString none = label(Standing::common_practice);
    const std::string_view rest = whole.substr(unsourced.size());
    if (rest.empty()) return none;
    if (rest.starts_with(": ")) return with_colon(none, cited(rest.substr(2)));
    if (rest.starts_with("; ")) return none + QStringLiteral("; ") + cited(rest.substr(2));
    return none + cited(rest);
}

}  // namespace leadline
