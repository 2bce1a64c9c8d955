// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/person_search.h"

#include <QSet>
#include <algorithm>
#include <optional>

#include "core/records/fold.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// More different words than a name of 200 characters has room for: nobody can have them all.
constexpr qsizetype most_words = 100;
/// The longest word a name of 200 characters can have, folded.
constexpr qsizetype longest_word = 800;
/// The trigram index knows nothing shorter.
constexpr qsizetype least_part = 3;
/// Below this a slip of the pen turns a word into any other.
constexpr qsizetype least_forgiven = 4;
constexpr qsizetype most_forgiven = 24;
/// Near words looked at, one typed word each.
constexpr int most_near = 60;
/// Up to as many are put in order; more are walked in order until enough are found.
constexpr int most_sorted = 1000;

/// Sorts behind every word that begins with what stands before it.
const QString last_sign = QString::fromUcs4(U"\U0010FFFF", 1);

qint64 read_id(Row& row) { return row.number(); }

/// Scripts whose names have no spaces between words; the same as in the migration.
bool is_sign(char32_t letter) {
    return (letter >= 0x1100 && letter <= 0x11FF) || (letter >= 0x2E80 && letter <= 0x9FFF) ||
           (letter >= 0xAC00 && letter <= 0xD7AF) || (letter >= 0xF900 && letter <= 0xFAFF) ||
           (letter >= 0x20000 && letter <= 0x2FA1F);
}

bool is_signs(const QString& word) {
    const QList<uint> letters = word.toUcs4();
    return std::all_of(letters.begin(), letters.end(),
                       [](uint letter) { return is_sign(char32_t(letter)); });
}

/// Code points as a text.
QString text_of(const QList<uint>& letters) {
    return QString::fromUcs4(reinterpret_cast<const char32_t*>(letters.constData()),
                             letters.size());
}

/// Words in quotes are texts to the index, whatever they are. They hold no quotes themselves.
QString quoted(const QString& word) { return u'"' + word + u'"'; }

/// What the index of names is asked for one word.
QString name_term(const QString& word) {
    if (!is_signs(word)) return u"name : "_qs + quoted(word) + u" *"_qs;
    QStringList signs;
    for (const uint sign : word.toUcs4()) signs += text_of({sign});
    return u"signs : "_qs + quoted(signs.join(u' '));
}

QString all_of_terms(const QStringList& terms) {
    return u"("_qs + terms.join(u") AND ("_qs) + u")"_qs;
}

/// The search of one text in the index of names.
class NameSearch {
public:
    NameSearch(const QSqlDatabase& database, const QString& first_word, QString query, bool single)
        : database_(database), first_(first_word), query_(std::move(query)), single_(single) {}

    Result<std::vector<qint64>> find(int limit) {
        const Result<bool> many = more_than_can_be_sorted();
        if (!many) return many.error();
        return *many ? walk(limit) : sort(limit);
    }

private:
    Result<bool> more_than_can_be_sorted() {
        const auto found =
            Statement(database_, u"SELECT count(*) FROM (SELECT 1 FROM person_names "
                                 "WHERE person_names MATCH ? LIMIT ?)"_qs)
                .first(read_id, query_, most_sorted + 1);
        if (!found) return found.error();
        return found->value_or(0) > most_sorted;
    }

    Result<std::vector<qint64>> sort(int limit) {
        return Statement(database_,
                         u"SELECT p.id FROM person_names n JOIN persons p ON p.id = n.rowid "
                         "WHERE n.person_names MATCH ? "
                         "ORDER BY substr(p.folded_name, 1, length(?)) = ? DESC, "
                         "p.folded_name, p.id LIMIT ?"_qs)
            .all(read_id, query_, first_, first_, limit);
    }

    /// In the order of names, until enough are found: where many fit, that is soon.
    Result<std::vector<qint64>> walk(int limit) {
        const QString fits = u" AND id IN (SELECT rowid FROM person_names "
                             "WHERE person_names MATCH ?)"_qs;
        const QString begins = u"SELECT id FROM persons WHERE merged_into IS NULL AND erased = 0 "
                               "AND folded_name >= ? AND folded_name < ?"_qs;
        const QString order = u" ORDER BY folded_name, id LIMIT ?"_qs;
        const QString end = first_ + last_sign;
        auto found = single_ ? Statement(database_, begins + order).all(read_id, first_, end, limit)
                             : Statement(database_, begins + fits + order)
                                   .all(read_id, first_, end, query_, limit);
        if (!found || int(found->size()) >= limit) return found;
        const auto others =
            Statement(database_, u"SELECT id FROM persons WHERE merged_into IS NULL AND erased = 0 "
                                 "AND NOT (folded_name >= ? AND folded_name < ?)"_qs +
                                     fits + order)
                .all(read_id, first_, end, query_, limit - int(found->size()));
        if (!others) return others;
        found->insert(found->end(), others->begin(), others->end());
        return found;
    }

    QSqlDatabase database_;
    QString first_;
    QString query_;
    bool single_;
};

/// Those whose phone number or e-mail address has at least one of the words, and who fit them all.
Result<std::vector<qint64>> find_by_contact(const QSqlDatabase& database, const QStringList& words,
                                            const std::vector<qint64>& found, int limit) {
    QStringList long_words;
    for (const QString& word : words) {
        if (word.size() >= least_part) long_words += quoted(word);
    }
    if (long_words.isEmpty()) return std::vector<qint64>();
    const QString query = all_of_terms(long_words) + u" AND {phone email} : ("_qs +
                          long_words.join(u" OR "_qs) + u")"_qs;
    // Here the index only narrows down; each word is looked at again where it may stand.
    QStringList conditions;
    QStringList values;
    for (const QString& word : words) {
        conditions += is_signs(word) ? u"instr(s.name, ?) > 0"_qs
                                     : u"(instr(' ' || s.name, ' ' || ?) > 0 "
                                       "OR instr(s.phone, ?) > 0 OR instr(s.email, ?) > 0)"_qs;
        for (int i = is_signs(word) ? 2 : 0; i < 3; ++i) values += word;
    }
    const QString sql =
        u"SELECT f.person_id FROM (SELECT s.person_id FROM person_parts t "
        "JOIN person_search s ON s.person_id = t.rowid WHERE t.person_parts MATCH ? AND %1 "
        "LIMIT ?) f JOIN persons p ON p.id = f.person_id ORDER BY p.folded_name, p.id"_qs.arg(
            conditions.join(u" AND "_qs));
    auto hits = Statement(database, sql).all(read_id, query, values, most_sorted);
    if (!hits) return hits;
    std::erase_if(*hits, [&](qint64 id) {
        return std::find(found.begin(), found.end(), id) != found.end();
    });
    if (int(hits->size()) > limit) hits->resize(std::size_t(limit));
    return hits;
}

Result<std::vector<qint64>> find_exactly(const QSqlDatabase& database, const QStringList& words,
                                         int limit) {
    QStringList terms;
    for (const QString& word : words) terms += name_term(word);
    auto found = NameSearch(database, words.front(), all_of_terms(terms), words.size() == 1)
                     .find(limit);
    if (!found || int(found->size()) >= limit) return found;
    const auto others = find_by_contact(database, words, *found, limit - int(found->size()));
    if (!others) return others;
    found->insert(found->end(), others->begin(), others->end());
    return found;
}

Result<std::vector<qint64>> find_nearly(const QSqlDatabase& database, const QStringList& words,
                                        int limit) {
    QStringList terms;
    bool any = false;
    for (const QString& word : words) {
        const Result<QStringList> near = near_words(database, word);
        if (!near) return near.error();
        any = any || !near->isEmpty();
        QString term = name_term(word);
        for (const QString& other : *near) term += u" OR name : "_qs + quoted(other);
        terms += term;
    }
    if (!any) return std::vector<qint64>();
    return NameSearch(database, words.front(), all_of_terms(terms), false).find(limit);
}

/// Where and how a word on record may differ from what was typed.
struct NearPattern {
    QString start;  ///< what it begins with
    QString glob;   ///< the whole, with '?' for one letter and '*' for the rest
};

/// All slips but those in the first letter, of which the start is not known.
std::vector<NearPattern> near_patterns(const QList<uint>& typed) {
    const QString any = u"?"_qs;
    const QString rest = u"*"_qs;
    std::vector<NearPattern> patterns;
    const qsizetype count = typed.size();
    for (qsizetype i = 0; i < count; ++i) {
        const QString before = text_of(typed.first(i));
        const QString after = text_of(typed.sliced(i + 1));
        const bool last = i + 1 == count;
        const QString tail = last ? QString() : rest;
        patterns.push_back({before + after, before + after + tail});  // one too many
        if (last) {
            patterns.push_back({before, before + any});  // wrong
            break;
        }
        QList<uint> swapped = typed;
        swapped.swapItemsAt(i, i + 1);
        patterns.push_back({text_of(swapped), text_of(swapped) + rest});
        if (i == 0) continue;
        patterns.push_back({before, before + any + after + rest});                    // wrong
        patterns.push_back({before, before + any + text_of(typed.sliced(i)) + rest});  // missing
    }
    // Missing before the last letter.
    const QString start = text_of(typed.first(count - 1));
    patterns.push_back({start, start + any + text_of(typed.last(1)) + rest});
    return patterns;
}

bool is_forgiven(const QString& word) {
    if (word.size() < least_forgiven || word.size() > most_forgiven || is_signs(word)) return false;
    return std::all_of(word.begin(), word.end(),
                       [](QChar letter) { return letter.isLetter() || letter.isSurrogate(); });
}

}  // namespace

QStringList search_words(const QString& text) {
    QStringList words;
    QString word;
    const auto close_word = [&] {
        const bool number = std::all_of(word.begin(), word.end(),
                                        [](QChar sign) { return sign.isDigit(); });
        while (number && word.size() > 1 && word.startsWith(u'0')) word.remove(0, 1);
        if (!word.isEmpty()) words += word;
        word.clear();
    };
    for (const uint letter : folded(text).toUcs4()) {
        if (QChar::isLetterOrNumber(char32_t(letter))) {
            word += QChar::fromUcs4(char32_t(letter));
        } else {
            close_word();
        }
    }
    close_word();
    words.removeDuplicates();
    return words;
}

Result<QStringList> near_words(const QSqlDatabase& database, const QString& word) {
    if (!is_forgiven(word)) return QStringList();
    QSet<QString> found;
    const auto look = [&](Statement& statement, const QString& start,
                          const QString& glob) -> Result<Done> {
        const auto words = statement.all([](Row& row) { return row.qtext(); }, start,
                                         QString(start + last_sign), glob, most_near);
        if (!words) return words.error();
        for (const QString& other : *words) found.insert(other);
        return Done{};
    };
    const QList<uint> typed = word.toUcs4();
    Statement by_start(database, u"SELECT word FROM name_words WHERE word >= ? AND word < ? "
                                 "AND word GLOB ? ORDER BY word LIMIT ?"_qs);
    for (const NearPattern& pattern : near_patterns(typed)) {
        const Result<Done> looked = look(by_start, pattern.start, pattern.glob);
        if (!looked) return looked.error();
    }
    // The first letter wrong, or missing.
    Statement by_rest(database, u"SELECT word FROM name_words WHERE substr(word, 2) >= ? "
                                "AND substr(word, 2) < ? AND word GLOB ? ORDER BY word LIMIT ?"_qs);
    for (const QString& rest : {text_of(typed.sliced(1)), word}) {
        const Result<Done> looked = look(by_rest, rest, u"*"_qs);
        if (!looked) return looked.error();
    }
    QStringList words(found.begin(), found.end());
    words.sort();
    return QStringList(words.mid(0, most_near));
}

Result<std::vector<qint64>> find_persons(const QSqlDatabase& database, const QString& text,
                                         int limit) {
    if (limit <= 0) return std::vector<qint64>();
    const QStringList words = search_words(text);
    if (words.isEmpty() && text.simplified().isEmpty()) return persons_from(database, 0, limit);
    const bool too_long = std::any_of(words.begin(), words.end(), [](const QString& word) {
        return word.size() > longest_word;
    });
    if (words.isEmpty() || words.size() > most_words || too_long) return std::vector<qint64>();
    auto found = find_exactly(database, words, limit);
    if (!found || !found->empty()) return found;
    return find_nearly(database, words, limit);
}

Result<int> count_persons(const QSqlDatabase& database) {
    const auto found = Statement(database, u"SELECT count(*) FROM persons "
                                           "WHERE merged_into IS NULL AND erased = 0"_qs)
                           .first([](Row& row) { return row.small_number(); });
    if (!found) return found.error();
    return found->value_or(0);
}

Result<std::vector<qint64>> persons_from(const QSqlDatabase& database, int first, int count) {
    return Statement(database, u"SELECT id FROM persons WHERE merged_into IS NULL AND erased = 0 "
                               "ORDER BY folded_name, id LIMIT ? OFFSET ?"_qs)
        .all(read_id, std::max(count, 0), std::max(first, 0));
}

}  // namespace leadline
