// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/big_records.h"

#include <QStringList>
#include <array>
#include <chrono>
#include <random>
#include <vector>

#include "core/records/fold.h"
#include "core/records/statement.h"

namespace leadline::bench {

namespace {

using Random = std::mt19937;

int below(Random& random, int end) {
    return std::uniform_int_distribution<int>(0, end - 1)(random);
}

/// Names are not equally common: the square makes those at the front of a list more so.
int front_below(Random& random, int end) {
    const double share = std::uniform_real_distribution<double>(0.0, 1.0)(random);
    return int(share * share * double(end - 1));
}

QString made_of(Random& random, const QStringList& starts, const QStringList& ends, int middles) {
    static const QStringList middle{u"la"_qs, u"ri"_qs, u"no"_qs, u"ve"_qs, u"mo"_qs, u"sta"_qs,
                                    u"ke"_qs, u"dü"_qs, u"ñe"_qs, u"lø"_qs, u"bri"_qs, u"tan"_qs};
    QString name = starts[below(random, int(starts.size()))];
    for (int i = 0; i < middles; ++i) name += middle[below(random, int(middle.size()))];
    return name + ends[below(random, int(ends.size()))];
}

QStringList made(Random& random, int count, const QStringList& ends) {
    static const QStringList starts{
        u"Al"_qs,  u"Be"_qs,  u"Ca"_qs,  u"Da"_qs,  u"El"_qs,  u"Fi"_qs, u"Ga"_qs, u"He"_qs,
        u"I"_qs,   u"Jo"_qs,  u"Ka"_qs,  u"Li"_qs,  u"Ma"_qs,  u"Ne"_qs, u"O"_qs,  u"Pe"_qs,
        u"Ro"_qs,  u"Sa"_qs,  u"Te"_qs,  u"U"_qs,   u"Va"_qs,  u"We"_qs, u"Yo"_qs, u"Za"_qs,
        u"Šte"_qs, u"Łu"_qs,  u"Øy"_qs,  u"Ma"_qs,  u"An"_qs,  u"Ste"_qs, u"Kri"_qs, u"Jo"_qs};
    QStringList names;
    for (int i = 0; i < count; ++i) names += made_of(random, starts, ends, below(random, 3));
    return names;
}

QString two_digits(int value) { return u"%1"_qs.arg(value, 2, 10, QChar(u'0')); }

QString some_date(Random& random, int first_year, int years) {
    return QString::number(first_year + below(random, years)) + u"-"_qs +
           two_digits(1 + below(random, 12)) + u"-"_qs + two_digits(1 + below(random, 28));
}

struct Person {
    QString name;
    QString birth_date;
    QString phone;
    QString email;
};

class People {
public:
    explicit People(Random& random)
        : random_(random),
          first_(made(random, 900, {u"a"_qs, u"o"_qs, u"in"_qs, u"ek"_qs, u"is"_qs, u"é"_qs})),
          last_(made(random, 20'000, {u"berg"_qs, u"son"_qs, u"ský"_qs, u"mann"_qs, u"eira"_qs,
                                      u"sen"_qs, u"ova"_qs, u"ßer"_qs, u"ić"_qs})) {}

    Person make(int number) {
        Person person;
        const QString first = first_[front_below(random_, int(first_.size()))];
        const QString last = last_[front_below(random_, int(last_.size()))];
        person.name = first + u" "_qs + last;
        if (number % 50 == 0) person.name = han();
        // The register takes nobody twice: the number makes name and birth date one of a kind.
        person.birth_date = some_date(random_, 1945, 70);
        person.phone = u"+%1 %2 %3"_qs.arg(30 + below(random_, 60)).arg(100 + below(random_, 900))
                           .arg(1'000'000 + below(random_, 9'000'000));
        person.email = folded(first).remove(u' ') + u"."_qs + folded(last).remove(u' ') +
                       QString::number(number) + u"@post.example"_qs;
        return person;
    }

private:
    QString han() {
        static const QString signs = u"山田水川森林木村石井上下中大小野原島松竹梅花月星海空"_qs;
        QString name;
        for (int i = 0; i < 4; ++i) {
            if (i == 2) name += u' ';
            name += signs[below(random_, int(signs.size()))];
        }
        return name;
    }

    Random& random_;
    QStringList first_;
    QStringList last_;
};

class Filler {
public:
    Filler(const QSqlDatabase& database, const BigRecords& size)
        : size_(size),
          random_(size.seed),
          add_person_(database,
                      u"INSERT OR IGNORE INTO persons (name, folded_name, birth_date, language, "
                      "phone, email) VALUES (?, ?, ?, ?, ?, ?)"_qs),
          add_session_(database, u"INSERT INTO sessions (title, date, meeting_time_min, "
                                 "dive_time_min) VALUES (?, ?, 540, 600)"_qs),
          add_site_(database,
                    u"INSERT INTO session_sites (session_id, name, altitude_m, latitude_deg, "
                    "salinity, bottom_depth_m, entry, meeting_place, emergency_line, "
                    "emergency_plan) VALUES (?, 'Test Cove', 0, 40, 35, 9, 'shore', '', '', '')"_qs),
          add_conditions_(database,
                          u"INSERT INTO conditions (session_id, water_temperature_k, "
                          "air_temperature_k, current) VALUES (?, 293.15, 298.15, 'none')"_qs),
          add_profile_(database, u"INSERT INTO profile_points (session_id, position, time_min, "
                                 "depth_m, phase) VALUES (?, 0, 0, 0, 'descent'), "
                                 "(?, 1, 2, 6, 'tour'), (?, 2, 22, 6, 'ascent'), "
                                 "(?, 3, 25, 0, 'surface')"_qs),
          add_guest_(database,
                     u"INSERT INTO session_guests (session_id, guest_id, position, person_id, "
                     "name, birth_date, language, physician_approval_seen, guardian_consent, "
                     "certified, breathing, suit, bcd, fins, mask, regulator, note, phone, email) "
                     "SELECT ?, ?, ?, id, name, birth_date, language, 0, 0, 0, 'average', '', '', "
                     "'', '', '', '', phone, email FROM persons WHERE id = ?"_qs),
          add_log_(database, u"INSERT INTO logs (session_id, time_in_min, time_out_min, heads_in, "
                             "heads_out, note) VALUES (?, 600, 630, ?, ?, '')"_qs),
          add_diver_(database,
                     u"INSERT INTO log_divers (session_id, guest_id, position, "
                     "start_pressure_bar, end_pressure_bar, duration_min, ears_troubled, note) "
                     "VALUES (?, ?, ?, 200, ?, 25, 0, '')"_qs) {}

    Result<Done> fill() {
        People people(random_);
        for (int i = 0; i < size_.persons; ++i) {
            const Person person = people.make(i);
            const Result<Done> added =
                add_person_.run(person.name, folded(person.name), person.birth_date, u"en"_qs,
                                person.phone, person.email);
            if (!added) return added;
        }
        for (int left = size_.dives; left > 0; left -= size_.guests_a_session) {
            const Result<Done> added = add_session(std::min(left, size_.guests_a_session));
            if (!added) return added;
        }
        return Done{};
    }

private:
    Result<Done> add_session(int guests) {
        const Result<Done> added = add_session_.run(u"First dives"_qs,
                                                    some_date(random_, 2006, 20));
        if (!added) return added;
        const qint64 session = add_session_.new_row();
        const Result<Done> content = in_turn(
            [&] { return add_site_.run(session); }, [&] { return add_conditions_.run(session); },
            [&] { return add_profile_.run(session, session, session, session); },
            [&] { return add_log_.run(session, guests, guests); });
        if (!content) return content;
        for (int i = 0; i < guests; ++i) {
            const QString id = u"guest-%1"_qs.arg(i + 1);
            const qint64 person = 1 + below(random_, size_.persons);
            const double end_pressure = 60 + below(random_, 60);
            const Result<Done> guest = in_turn(
                [&] { return add_guest_.run(session, id, i, person); },
                [&] { return add_diver_.run(session, id, i, end_pressure); });
            if (!guest) return guest;
        }
        return Done{};
    }

    BigRecords size_;
    Random random_;
    Statement add_person_;
    Statement add_session_;
    Statement add_site_;
    Statement add_conditions_;
    Statement add_profile_;
    Statement add_guest_;
    Statement add_log_;
    Statement add_diver_;
};

}  // namespace

Result<Done> fill(Database& database, const BigRecords& size) {
    Result<Transaction> transaction = Transaction::begin_writing(database.connection());
    if (!transaction) return transaction.error();
    Filler filler(database.connection(), size);
    return in_turn([&] { return filler.fill(); }, [&] { return transaction->commit(); });
}

}  // namespace leadline::bench
