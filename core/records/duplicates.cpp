// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/duplicates.h"

#include <QHash>
#include <QStringList>
#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

#include "core/records/statement.h"

namespace leadline {

namespace {

constexpr qsizetype least_letters = 5;
/// Fewer digits than that are a beginning of a number.
constexpr qsizetype least_digits = 6;
/// As many last digits tell a number, written with its country or without.
constexpr qsizetype digits_that_count = 8;
constexpr std::size_t most_sharing_contact = 20;

struct Candidate {
    qint64 id = 0;
    QString name;
    QString birth_date;  ///< empty: not known
    QString phone;
    QString email;
};

Candidate read_candidate(Row& row) {
    Candidate person;
    person.id = row.number();
    person.name = row.qtext();
    person.birth_date = row.qtext();
    person.phone = row.qtext();
    person.email = row.qtext();
    if (person.phone.size() < least_digits) person.phone.clear();
    person.phone = person.phone.right(digits_that_count);
    return person;
}

/// Whether one text becomes the other by one letter put in, taken out, changed, or swapped with its
/// neighbour.
bool within_one_slip(const QString& first, const QString& second) {
    const QString& shorter = first.size() <= second.size() ? first : second;
    const QString& longer = first.size() <= second.size() ? second : first;
    if (longer.size() - shorter.size() > 1) return false;
    const auto [a, b] = std::mismatch(shorter.begin(), shorter.end(), longer.begin());
    const qsizetype at = a - shorter.begin();
    if (a == shorter.end()) return true;
    if (shorter.size() < longer.size()) return shorter.mid(at) == longer.mid(at + 1);
    if (shorter.mid(at + 1) == longer.mid(at + 1)) return true;
    return at + 1 < shorter.size() && shorter[at] == longer[at + 1] &&
           shorter[at + 1] == longer[at] && shorter.mid(at + 2) == longer.mid(at + 2);
}

/// The name with its last word first, and with its first word last.
QStringList turned(const QString& name) {
    QStringList words = name.split(u' ', Qt::SkipEmptyParts);
    if (words.size() < 2) return {};
    QStringList last_first = words;
    last_first.prepend(last_first.takeLast());
    words.append(words.takeFirst());
    return {last_first.join(u' '), words.join(u' ')};
}

using Alike = std::vector<const Candidate*>;

class PairFinder {
public:
    PairFinder(const std::vector<Candidate>& persons, std::set<std::pair<qint64, qint64>> apart)
        : persons_(persons), apart_(std::move(apart)) {}

    void compare_within(const Alike& group) {
        for (std::size_t i = 0; i < group.size(); ++i) {
            for (std::size_t j = i + 1; j < group.size(); ++j) compare(*group[i], *group[j]);
        }
    }

    std::vector<DuplicatePair> pairs() {
        std::sort(pairs_.begin(), pairs_.end(), [](const auto& a, const auto& b) {
            return std::tuple(rank(a), a.first, a.second) < std::tuple(rank(b), b.first, b.second);
        });
        return std::move(pairs_);
    }

private:
    static int rank(const DuplicatePair& pair) {
        const int signs = int(pair.same_birth_date) + int(pair.same_phone) + int(pair.same_email);
        return (pair.birth_dates_differ ? 20 : 0) + 4 * (3 - signs) + int(pair.names);
    }

    void compare(const Candidate& one, const Candidate& other) {
        const auto [first, second] = std::minmax(one.id, other.id);
        const NameLikeness names = likeness(one.name, other.name);
        if (names == NameLikeness::different || apart_.contains({first, second}) ||
            !seen_.emplace(first, second).second) {
            return;
        }
        DuplicatePair pair{first, second, names};
        const bool both = !one.birth_date.isEmpty() && !other.birth_date.isEmpty();
        pair.same_birth_date = both && one.birth_date == other.birth_date;
        pair.birth_dates_differ = both && one.birth_date != other.birth_date;
        pair.same_phone = !one.phone.isEmpty() && one.phone == other.phone;
        pair.same_email = !one.email.isEmpty() && one.email == other.email;
        pairs_.push_back(pair);
    }

    const std::vector<Candidate>& persons_;
    std::set<std::pair<qint64, qint64>> apart_;
    std::set<std::pair<qint64, qint64>> seen_;
    std::vector<DuplicatePair> pairs_;
};

QHash<QString, Alike> grouped(const std::vector<Candidate>& persons, QString Candidate::* by) {
    QHash<QString, Alike> groups;
    for (const Candidate& person : persons) {
        if (!(person.*by).isEmpty()) groups[person.*by].push_back(&person);
    }
    return groups;
}

}  // namespace

NameLikeness likeness(const QString& first, const QString& second) {
    if (first == second) return NameLikeness::same;
    if (std::min(first.size(), second.size()) < least_letters) return NameLikeness::different;
    const QStringList others = turned(second);
    if (others.contains(first)) return NameLikeness::reordered;
    if (within_one_slip(first, second)) return NameLikeness::one_slip;
    const bool near = std::any_of(others.begin(), others.end(), [&](const QString& other) {
        return within_one_slip(first, other);
    });
    return near ? NameLikeness::one_slip : NameLikeness::different;
}

Result<std::vector<DuplicatePair>> Duplicates::find(const GoOn& go_on) {
    const QSqlDatabase database = database_.connection();
    const auto persons =
        Statement(database, u"SELECT s.person_id, s.name, p.birth_date, s.phone, s.email "
                            "FROM person_search s JOIN persons p ON p.id = s.person_id"_qs)
            .all(read_candidate);
    if (!persons) return persons.error();
    const auto apart = Statement(database, u"SELECT first_id, second_id FROM persons_apart"_qs)
                           .all([](Row& row) {
                               const qint64 first = row.number();
                               return std::pair(first, row.number());
                           });
    if (!apart) return apart.error();
    PairFinder finder(*persons, {apart->begin(), apart->end()});
    int looked_at = 0;
    double share = 0.0;
    for (QString Candidate::* by :
         {&Candidate::birth_date, &Candidate::phone, &Candidate::email}) {
        const QHash<QString, Alike> groups = grouped(*persons, by);
        for (const Alike& group : groups) {
            constexpr int groups_between_questions = 256;
            share += 1.0 / (3.0 * static_cast<double>(groups.size()));
            if (++looked_at % groups_between_questions == 0 && go_on && !go_on(share)) {
                return Error{ErrorCode::cancelled, "duplicates", {}, {}};
            }
            if (by != &Candidate::birth_date && group.size() > most_sharing_contact) continue;
            finder.compare_within(group);
        }
    }
    return finder.pairs();
}

Result<Done> Duplicates::keep_apart(qint64 one, qint64 other) {
    const auto [first, second] = std::minmax(one, other);
    return Statement(database_.connection(),
                     u"INSERT INTO persons_apart (first_id, second_id) VALUES (?, ?) "
                     "ON CONFLICT DO NOTHING"_qs)
        .run(first, second);
}

}  // namespace leadline
