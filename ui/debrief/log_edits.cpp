// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/debrief/log_edits.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <set>

#include "core/files/session_file.h"
#include "core/files/text_file.h"
#include "ui/document/resources.h"
#include "ui/document/session_document.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class LogEditTexts {
    Q_DECLARE_TR_FUNCTIONS(LogEdits)
};

std::set<StaffId> staff_in_water(const Session& session) {
    std::set<StaffId> staff;
    for (const Group& group : session.groups) {
        if (guests_in(session, group.id).empty()) continue;
        staff.insert(group.instructor);
        staff.insert(group.assistant);
    }
    staff.erase(StaffId());
    return staff;
}

/// Whether the file's log is of the people and the day of the open session.
Result<Done> check_same_session(const SessionFile& file, const Session& here) {
    if (file.session.date != here.date) {
        return Error{ErrorCode::log_of_another_session, "/date", to_text(file.session.date),
                     to_text(here.date)};
    }
    for (std::size_t i = 0; i < file.log->divers.size(); ++i) {
        const GuestId& id = file.log->divers[i].guest;
        const Guest* there = find_guest(file.session, id);
        const Guest* known = find_guest(here, id);
        if (there != nullptr && known != nullptr && there->name == known->name &&
            there->birth_date == known->birth_date) {
            continue;
        }
        return Error{ErrorCode::log_of_another_session,
                     "/log/divers/" + std::to_string(i) + "/guest",
                     there != nullptr ? there->name : id.text,
                     known != nullptr ? known->name : std::string()};
    }
    return Done{};
}

}  // namespace

DiveLog started_log(const Session& session, const Plan& plan) {
    constexpr int last_minute = 24 * 60 - 1;
    DiveLog log;
    log.time_in = session.dive_time;
    const int minutes = static_cast<int>(std::ceil(duration(session.profile).value()));
    log.time_out = TimeOfDay{std::min(last_minute, log.time_in.minutes_after_midnight + minutes)};
    log.heads_in = static_cast<int>(session.guests.size() + staff_in_water(session).size());
    for (const Guest& guest : session.guests) {
        LogEntry diver;
        diver.guest = guest.id;
        if (const GuestGas* gas = find_gas(plan, guest.id); gas != nullptr && gas->has_cylinder) {
            diver.start_pressure = Bars(std::floor(gas->start_pressure.value()));
        }
        diver.end_pressure = diver.start_pressure;
        log.divers.push_back(diver);
    }
    return log;
}

Result<Done> load_log(SessionDocument& document, const QString& path) {
    const Result<std::string> text = read_text_file(path.toStdString());
    if (!text) return text.error();
    Result<SessionFile> file =
        read_session(*text, resource_text(QStringLiteral("schema/session.schema.json")));
    if (!file) return file.error();
    if (!file->log) return Error{ErrorCode::missing_field, "/", "log", ""};
    if (const Result<Done> same = check_same_session(*file, document.session()); !same) return same;
    const DiveLog log = *file->log;
    return document.edit_log(LogEditTexts::tr("Open a log"),
                             [&](std::optional<DiveLog>& current) { current = log; });
}

int use_as_measured(SessionDocument& document, const std::vector<GuestId>& guests) {
    if (!document.review()) return 0;
    int changed = 0;
    const Review review = *document.review();
    const Result<Done> done =
        document.edit(LogEditTexts::tr("Use measured breathing"), [&](Session& session) {
            for (const DiverReview& diver : review.divers) {
                Guest* guest = find_guest(session, diver.guest);
                const bool wanted =
                    std::find(guests.begin(), guests.end(), diver.guest) != guests.end();
                if (guest == nullptr || !wanted || !diver.actual_rmv) continue;
                const double rounded = std::ceil(diver.actual_rmv->value() * 2.0 - 1e-9) / 2.0;
                if (rounded < 5.0 || rounded > 100.0) continue;
                guest->measured_rmv = LitersPerMinute(rounded);
                ++changed;
            }
        });
    return done ? changed : 0;
}

}  // namespace leadline
