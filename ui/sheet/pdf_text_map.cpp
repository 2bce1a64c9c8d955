// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/pdf_text_map.h"

#include <QFont>
#include <QRegularExpression>
#include <QStringList>

#include "ui/sheet/type_setting.h"

namespace leadline {
namespace {

quint32 shape_of(const QRawFont& font, char16_t letter) {
    const QList<quint32> shapes = font.glyphIndexesForString(QString(QChar(letter)));
    return shapes.isEmpty() ? 0U : shapes.front();
}

}  // namespace

PdfTextMap::PdfTextMap(const std::vector<Page>& pages) {
    QStringList families;
    for (const Page& page : pages) {
        for (const SheetItem& item : page.items) {
            const auto* text = std::get_if<TextItem>(&item);
            if (text == nullptr) continue;
            for (const QString& family : sheet_font(text->points, false, text->face).families()) {
                if (!families.contains(family)) families << family;
            }
            for (const TextLine& line : text->lines) {
                for (const QChar letter : line.text) written_.insert(letter.unicode());
            }
        }
    }
    for (const QString& family : families) {
        for (const bool bold : {false, true}) {
            QFont own(family, 10);
            own.setBold(bold);
            const QRawFont font = QRawFont::fromFont(own);
            Face face{font, {}};
            for (const char16_t letter : written_) {
                const quint32 shape = shape_of(font, letter);
                // A plain space goes before one that does not break.
                if (shape != 0 && (!face.letters.contains(shape) || letter == u' ')) {
                    face.letters[shape] = letter;
                }
            }
            faces_.push_back(std::move(face));
        }
    }
}

char16_t PdfTextMap::letter_for(char16_t named) {
    const auto known = known_.constFind(named);
    if (known != known_.constEnd()) return *known;
    char16_t letter = named;
    for (const Face& face : faces_) {
        const quint32 shape = shape_of(face.font, named);
        const auto found = face.letters.constFind(shape);
        if (shape == 0 || found == face.letters.constEnd()) continue;
        letter = *found;
        break;
    }
    // A shape that Arabic takes inside a word stands for the letter itself.
    const QString plain = QString(QChar(letter)).normalized(QString::NormalizationForm_KC);
    if (plain.size() == 1 && written_.contains(plain.front().unicode())) {
        letter = plain.front().unicode();
    }
    known_[named] = letter;
    return letter;
}

QByteArray PdfTextMap::corrected(const QByteArray& map) {
    // The letters stand in brackets, four digits each; those beyond 16 bits take eight and are left.
    static const QRegularExpression letter(QStringLiteral("<([0-9A-Fa-f]{4})> "));
    QByteArray result;
    for (const QByteArray& line : map.split('\n')) {
        const qsizetype bracket = line.indexOf('[');
        if (bracket < 0) {
            result += line + '\n';
            continue;
        }
        const QString rest = QString::fromLatin1(line.mid(bracket));
        QString changed;
        qsizetype from = 0;
        for (auto found = letter.globalMatch(rest); found.hasNext();) {
            const QRegularExpressionMatch match = found.next();
            const auto named = static_cast<char16_t>(match.captured(1).toUInt(nullptr, 16));
            changed += rest.mid(from, match.capturedStart() - from);
            const char16_t right = written_.contains(named) ? named : letter_for(named);
            changed += QStringLiteral("<%1> ").arg(static_cast<unsigned int>(right), 4, 16, QLatin1Char('0'));
            from = match.capturedEnd();
        }
        result += line.left(bracket) + (changed + rest.mid(from)).toLatin1() + '\n';
    }
    result.chop(1);
    return result;
}

}  // namespace leadline
