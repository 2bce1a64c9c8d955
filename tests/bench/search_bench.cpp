// SPDX-License-Identifier: GPL-3.0-or-later
// What a keystroke in the search for persons costs, over a stream of what people type.
//
//   leadline_search_bench RECORDS.sqlite [--sql FILE] [--rights]
//
// Makes the records (100 000 persons, 400 000 past dives, all invented) where the file does not exist.
// A keystroke is GuestStore::find() of what has been typed so far, twenty persons read with their
// numbers of sessions. --sql writes the index queries of the stream for the sqlite3 shell; see
// search_against_shell.sh. --rights also looks for duplicates and for what is due, and removes one
// person from the records, looking afterwards for the name in the bytes of the file.

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QTextStream>
#include <time.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <map>
#include <random>
#include <vector>

#include "core/records/duplicates.h"
#include "core/records/fold.h"
#include "core/records/guest_store.h"
#include "core/records/person_removal.h"
#include "core/records/person_search.h"
#include "core/records/session_store.h"
#include "core/records/statement.h"
#include "tests/bench/big_records.h"

namespace leadline::bench {
namespace {

using Clock = std::chrono::steady_clock;

/// Time this thread has worked: what other programs do at the same time does not count in it.
double worked_ms() {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return double(time.tv_sec) * 1e3 + double(time.tv_nsec) * 1e-6;
}

struct Keystroke {
    QString kind;
    QString text;
};

class Typist {
public:
    explicit Typist(Database& database) : store_(database), random_(4711) {}

    std::vector<Keystroke> type(int texts) {
        std::vector<Keystroke> stream;
        const int count = store_.count().value_or(1);
        for (int i = 0; i < texts; ++i) {
            const auto page = store_.page(int(random_() % std::uint32_t(count)), 1);
            if (!page || page->empty()) continue;
            const Guest& guest = page->front().guest;
            const QString name = QString::fromStdString(guest.name);
            switch (i % 8) {
                case 0: add(stream, u"name, plain letters"_qs, folded(name)); break;
                case 1: add(stream, u"name, as it stands"_qs, name); break;
                case 2: add(stream, u"last name"_qs, folded(name.section(u' ', -1))); break;
                case 3: add(stream, u"last, then first"_qs,
                            folded(name.section(u' ', -1) + u" "_qs + name.section(u' ', 0, 0)));
                    break;
                case 4: add(stream, u"name with a slip"_qs, with_a_slip(folded(name))); break;
                case 5: add(stream, u"phone"_qs, QString::fromStdString(guest.phone)); break;
                case 6: add(stream, u"e-mail"_qs, QString::fromStdString(guest.email)); break;
                default: add(stream, u"nobody"_qs, nobody()); break;
            }
        }
        return stream;
    }

private:
    static void add(std::vector<Keystroke>& stream, const QString& kind, const QString& text) {
        for (qsizetype i = 1; i <= text.size(); ++i) stream.push_back({kind, text.left(i)});
    }
    QString with_a_slip(QString name) {
        if (name.size() < 4) return name;
        const qsizetype place = 1 + qsizetype(random_() % std::uint32_t(name.size() - 2));
        name[place] = QChar(char16_t(u'a' + random_() % 26));
        return name;
    }
    QString nobody() {
        QString text;
        for (int i = 0; i < 12; ++i) {
            text += i == 6 ? QChar(u' ') : QChar(char16_t(u'a' + random_() % 26));
        }
        return text;
    }

    GuestStore store_;
    std::mt19937 random_;
};

template <typename Work>
auto timed(QTextStream& out, const char* what, Work work) {
    const auto begin = Clock::now();
    const double worked_before = worked_ms();
    auto result = work();
    out << what << ": " << std::chrono::duration<double, std::milli>(Clock::now() - begin).count()
        << " ms, worked " << worked_ms() - worked_before << " ms" << Qt::endl;
    return result;
}

/// What the window asks of the records before it can be used, and the lists of long dialogs.
void report_start(QTextStream& out, const QString& path) {
    const auto opened = timed(out, "open the records", [&] { return Database::open(path); });
    if (!opened) return;
    Database& database = **opened;
    static_cast<void>(timed(out, "load the newest session", [&] {
        SessionStore store(database);
        const auto newest = store.newest();
        return newest && *newest && store.load(**newest);
    }));
    static_cast<void>(timed(out, "first page of sessions", [&] {
        SessionStore store(database);
        return store.count().has_value() && store.page(0, 64).has_value();
    }));
    static_cast<void>(timed(out, "last page of sessions", [&] {
        SessionStore store(database);
        return store.page(store.count().value_or(64) - 64, 64).has_value();
    }));
    static_cast<void>(timed(out, "first page of guests", [&] {
        GuestStore store(database);
        return store.count().has_value() && store.page(0, 64).has_value();
    }));
    static_cast<void>(timed(out, "last page of guests", [&] {
        GuestStore store(database);
        return store.page(store.count().value_or(64) - 64, 64).has_value();
    }));
}

double at(std::vector<double>& sorted, double share) {
    const auto place = std::size_t(std::ceil(share * double(sorted.size())));
    return sorted[std::clamp<std::size_t>(place, 1, sorted.size()) - 1];
}

void report(QTextStream& out, const QString& kind, std::vector<double> times) {
    std::sort(times.begin(), times.end());
    out << QStringLiteral("%1 %2 keystrokes: median %3, p95 %4, p99 %5, most %6 ms\n")
               .arg(kind, -22).arg(times.size(), 6).arg(at(times, 0.5), 0, 'f', 2)
               .arg(at(times, 0.95), 0, 'f', 2).arg(at(times, 0.99), 0, 'f', 2)
               .arg(times.back(), 0, 'f', 2);
}

QString sql_text(QString text) { return u"'"_qs + text.replace(u'\'', u"''"_qs) + u"'"_qs; }

/// The same search for the shell: the words at the start of words in a name, put in order.
QString shell_query(const QString& text) {
    QStringList terms;
    for (const QString& word : search_words(text)) terms += u"name : \""_qs + word + u"\" *"_qs;
    if (terms.isEmpty()) return {};
    return u"SELECT p.id FROM person_names n JOIN persons p ON p.id = n.rowid "
           "WHERE n.person_names MATCH "_qs + sql_text(terms.join(u" AND "_qs)) +
           u" ORDER BY p.folded_name, p.id LIMIT 20;\n"_qs;
}

int run_rights(const QString& path) {
    QTextStream out(stdout);
    const auto opened = Database::open(path);
    if (!opened) return 2;
    Database& database = **opened;
    const auto pairs =
        timed(out, "duplicates", [&] { return Duplicates(database).find(); });
    const Date today(std::chrono::year(2026), std::chrono::month(7), std::chrono::day(4));
    const auto facts = timed(out, "kept facts", [&] { return kept_facts(database, today); });
    const auto page = GuestStore(database).page(50'000, 1);
    if (!pairs || !facts || !page || page->empty()) return 2;
    out << pairs->size() << " pairs, " << facts->size() << " persons" << Qt::endl;
    const KnownGuest person = page->front();
    const auto count_in_file = [&] {
        QByteArray bytes;
        for (const QString& name : {path, QString(path + u"-wal"_qs)}) {
            QFile file(name);
            if (file.open(QIODevice::ReadOnly)) bytes += file.readAll();
        }
        return bytes.count(QByteArray::fromStdString(person.guest.email));
    };
    out << "address in the file before: " << count_in_file() << Qt::endl;
    PersonRemoval removal(database);
    static_cast<void>(timed(out, "preview", [&] { return removal.preview(person.row); }));
    const auto removed =
        timed(out, "removal", [&] { return removal.remove(person.row, KeptKind::identity); });
    if (!removed) return 2;
    out << "address in the file after: " << count_in_file() << ", swept: " << removed->swept
        << Qt::endl;
    return 0;
}

int run(const QString& path, const QString& sql_path) {
    QTextStream out(stdout);
    const bool is_new = !QFileInfo::exists(path);
    const auto opened = Database::open(path);
    if (!opened) {
        out << QString::fromStdString(opened.error().given) << Qt::endl;
        return 2;
    }
    Database& database = **opened;
    if (is_new) {
        const auto begin = Clock::now();
        if (const Result<Done> filled = fill(database, {}); !filled) {
            out << QString::fromStdString(filled.error().given) << Qt::endl;
            return 2;
        }
        out << "made in " << std::chrono::duration<double>(Clock::now() - begin).count() << " s"
            << Qt::endl;
    }
    report_start(out, path);
    const std::vector<Keystroke> stream = Typist(database).type(800);
    GuestStore store(database);
    std::map<QString, std::vector<double>> times;
    std::vector<double> all;
    std::vector<double> worked;
    std::vector<double> empty;
    std::map<QString, std::vector<double>> by_length;
    std::pair<double, QString> slowest;
    for (const Keystroke& key : stream) {
        const auto begin = Clock::now();
        const double worked_before = worked_ms();
        const auto found = store.find(key.text);
        const double ms =
            std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
        worked.push_back(worked_ms() - worked_before);
        by_length[QStringLiteral("%1 signs typed").arg(std::min<qsizetype>(key.text.size(), 9))]
            .push_back(worked.back());
        if (!found) return 2;
        times[key.kind].push_back(ms);
        all.push_back(ms);
        if (found->empty()) empty.push_back(ms);
        slowest = std::max(slowest, {worked.back(), key.text});
    }
    for (const auto& [kind, list] : times) report(out, kind, list);
    if (!empty.empty()) report(out, u"found nobody"_qs, empty);
    report(out, u"all"_qs, all);
    report(out, u"all, time worked"_qs, worked);
    for (const auto& [length, list] : by_length) report(out, length, list);
    out << "slowest: \"" << slowest.second << "\"" << Qt::endl;

    if (sql_path.isEmpty()) return 0;
    QFile sql(sql_path);
    if (!sql.open(QIODevice::WriteOnly)) return 2;
    std::size_t queries = 0;
    const auto begin = Clock::now();
    const double worked_before = worked_ms();
    for (const Keystroke& key : stream) {
        const QString query = shell_query(key.text);
        if (query.isEmpty() || key.kind == u"phone" || key.kind == u"e-mail") continue;
        sql.write(query.toUtf8());
        static_cast<void>(store.find_rows(key.text, 20).has_value());
        ++queries;
    }
    out << queries << " name keystrokes here, row numbers only: "
        << std::chrono::duration<double, std::milli>(Clock::now() - begin).count()
        << " ms elapsed, " << worked_ms() - worked_before << " ms worked, in all" << Qt::endl;
    return 0;
}

}  // namespace
}  // namespace leadline::bench

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    if (words.size() < 2) return 2;
    const qsizetype sql = words.indexOf(QStringLiteral("--sql"));
    const int searched =
        leadline::bench::run(words[1], sql > 0 ? words.value(sql + 1) : QString());
    if (searched != 0 || !words.contains(QStringLiteral("--rights"))) return searched;
    return leadline::bench::run_rights(words[1]);
}
