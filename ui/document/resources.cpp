// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/resources.h"

#include <QDir>
#include <QFile>

#include "core/files/questionnaire_file.h"
#include "core/files/retention_file.h"
#include "core/files/rule_file.h"

namespace leadline {
namespace {

const QString& root() {
    static const QString path = QStringLiteral(":/leadline/");
    return path;
}

}  // namespace

std::string resource_text(const QString& name) {
    QFile file(root() + name);
    if (!file.open(QIODevice::ReadOnly)) return {};
    return file.readAll().toStdString();
}

Result<RuleBook> load_rule_book() {
    const std::string schema = resource_text(QStringLiteral("schema/rules.schema.json"));
    RuleBook book;
    std::vector<RuleSet> house;
    const QStringList names =
        QDir(root() + QStringLiteral("rules")).entryList({QStringLiteral("*.json")}, QDir::Files,
                                                         QDir::Name);
    for (const QString& name : names) {
        const QString file = QStringLiteral("rules/") + name;
        Result<RuleSet> set = read_rule_set(resource_text(file), schema);
        if (!set) {
            Error error = set.error();
            error.place = file.toStdString() + error.place;
            return error;
        }
        (set->id.text == "house" ? house : book.sets).push_back(*set);
    }
    book.sets.insert(book.sets.end(), house.begin(), house.end());
    return book;
}

Result<RetentionRules> load_retention_rules() {
    const QString file = QStringLiteral("retention/house.json");
    Result<RetentionRules> rules =
        read_retention_rules(resource_text(file),
                             resource_text(QStringLiteral("schema/retention.schema.json")));
    if (rules) return rules;
    Error error = rules.error();
    error.place = file.toStdString() + error.place;
    return error;
}

Result<Questionnaire> load_questionnaire() {
    const QString file = QStringLiteral("screening/questions-1.json");
    Result<Questionnaire> questionnaire = read_questionnaire(
        resource_text(file), resource_text(QStringLiteral("schema/questions.schema.json")));
    if (questionnaire) return questionnaire;
    Error error = questionnaire.error();
    error.place = file.toStdString() + error.place;
    return error;
}

}  // namespace leadline
