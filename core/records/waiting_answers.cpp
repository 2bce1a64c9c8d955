// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/waiting_answers.h"

#include <map>
#include <utility>
#include <vector>

#include "core/files/enum_names.h"
#include "core/files/questionnaire_file.h"
#include "core/records/check_store.h"
#include "core/records/statement.h"

namespace leadline {

namespace {

/// Answers to one asking, and the rows in which they wait.
struct WaitingRecord {
    HealthAnswers answers;
    std::vector<qint64> ids;
};

/// By person and session.
using WaitingRecords = std::map<std::pair<qint64, qint64>, WaitingRecord>;

WaitingRecords grouped(const std::vector<AnswerToSeal>& waiting) {
    WaitingRecords records;
    for (const AnswerToSeal& answer : waiting) {
        WaitingRecord& record = records[{answer.person, answer.session.value}];
        record.answers.edition = earlier_edition;
        record.ids.push_back(answer.id);
        if (const auto today = enum_value<TodayQuestion>(answer.question)) {
            record.answers.today.at(static_cast<std::size_t>(*today)) = Answer::yes;
        } else {
            set_answer(record.answers, answer.question, Answer::yes);
        }
    }
    return records;
}

}  // namespace

Result<int> seal_waiting_answers(Database& database, HealthStore& health) {
    const Result<std::vector<AnswerToSeal>> waiting = answers_to_seal(database);
    if (!waiting) return waiting.error();
    int sealed = 0;
    for (const auto& [key, record] : grouped(*waiting)) {
        const auto& [person, session] = key;
        const Result<qint64> put = health.put(person, SessionRow{session}, HealthKind::screening,
                                              write_answers(record.answers));
        if (!put) return put.error();
        const Result<Done> forgotten = forget_answers_to_seal(database, record.ids);
        if (!forgotten) return forgotten.error();
        sealed += static_cast<int>(record.ids.size());
    }
    // The pages on which they stood open are in the write-ahead file too. While another program
    // reads the records it cannot be emptied: then that happens when it closes them.
    if (sealed > 0) {
        static_cast<void>(
            execute(database.connection(), u"PRAGMA wal_checkpoint(TRUNCATE)"_qs).has_value());
    }
    return sealed;
}

}  // namespace leadline
