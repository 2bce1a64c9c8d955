// SPDX-License-Identifier: GPL-3.0-or-later
// check_translation TEMPLATE.ts LANGUAGE.ts
// Says which texts of the template a language lacks, has unfinished or empty, or gives with other
// places to fill in (%1, %2, %n); 1 when there is any, so that the build of that language fails.
#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QStringList>
#include <QXmlStreamReader>
#include <cstdio>
#include <map>
#include <optional>
#include <tuple>

namespace {

using Key = std::tuple<QString, QString, QString>;  ///< context, source, comment

struct Message {
    QStringList forms;  ///< one, or one for each grammatical number
    bool finished = true;
};

QSet<QString> places_in(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%L?(\\d+|n)"));
    QSet<QString> found;
    for (auto match = place.globalMatch(text); match.hasNext();) {
        found.insert(match.next().captured(1));
    }
    return found;
}

Message read_translation(QXmlStreamReader& xml) {
    Message message;
    const QStringView type = xml.attributes().value(QStringLiteral("type"));
    message.finished = type.isEmpty();
    QString text;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isEndElement() && xml.name() == u"translation") break;
        if (xml.isStartElement() && xml.name() == u"numerusform") {
            message.forms << xml.readElementText();
        } else if (xml.isCharacters()) {
            text += xml.text();
        }
    }
    if (message.forms.isEmpty()) message.forms << text;
    return message;
}

std::optional<std::map<Key, Message>> read(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        std::fprintf(stderr, "%s: %s\n", qPrintable(path), qPrintable(file.errorString()));
        return std::nullopt;
    }
    std::map<Key, Message> messages;
    QXmlStreamReader xml(&file);
    QString context, source, comment;
    Message message;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"message") {
            source.clear();
            comment.clear();
            message = {};
        } else if (xml.isStartElement() && xml.name() == u"source") {
            source = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"comment") {
            comment = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == u"translation") {
            message = read_translation(xml);
        } else if (xml.isEndElement() && xml.name() == u"message") {
            messages[{context, source, comment}] = message;
        }
    }
    if (xml.hasError()) {
        std::fprintf(stderr, "%s:%lld: %s\n", qPrintable(path), xml.lineNumber(),
                     qPrintable(xml.errorString()));
        return std::nullopt;
    }
    return messages;
}

/// What is wrong with a translation; empty: nothing.
QString fault_of(const QString& source, const Message& message) {
    if (!message.finished) return QStringLiteral("unfinished");
    for (const QString& form : message.forms) {
        if (form.trimmed().isEmpty()) return QStringLiteral("empty");
        QSet<QString> wanted = places_in(source);
        QSet<QString> given = places_in(form);
        // A language may say "one" in words.
        if (message.forms.size() > 1) {
            wanted.remove(QStringLiteral("n"));
            given.remove(QStringLiteral("n"));
        }
        if (wanted != given) return QStringLiteral("other places to fill in");
    }
    return {};
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::fprintf(stderr, "check_translation TEMPLATE.ts LANGUAGE.ts\n");
        return 2;
    }
    const auto wanted = read(QString::fromLocal8Bit(argv[1]));
    const auto given = read(QString::fromLocal8Bit(argv[2]));
    if (!wanted || !given) return 2;
    int faults = 0;
    for (const auto& [key, ignored] : *wanted) {
        const auto& [context, source, comment] = key;
        const auto found = given->find(key);
        const QString fault =
            found == given->end() ? QStringLiteral("missing") : fault_of(source, found->second);
        if (fault.isEmpty()) continue;
        ++faults;
        std::fprintf(stderr, "%s: %s: %s: \"%s\"\n", argv[2], qPrintable(fault),
                     qPrintable(context), qPrintable(source));
    }
    if (faults > 0) std::fprintf(stderr, "%s: %d texts to translate\n", argv[2], faults);
    return faults > 0 ? 1 : 0;
}
