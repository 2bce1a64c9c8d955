// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/guest_screen_control.h"

#include <QDate>
#include <algorithm>

#include "core/planning/signal_check.h"
#include "ui/document/session_document.h"

namespace leadline {
namespace {

std::vector<PageStop> all_stops() {
    constexpr int signal_parts = (hand_signal_count + signals_on_a_page - 1) / signals_on_a_page;
    std::vector<PageStop> stops;
    const auto add = [&](ScreenPage page, int parts = 1) {
        for (int part = 0; part < parts; ++part) stops.push_back({page, part, parts});
    };
    add(ScreenPage::welcome);
    add(ScreenPage::kit);
    add(ScreenPage::breathe);
    add(ScreenPage::ears);
    add(ScreenPage::hand_signals, signal_parts);
    add(ScreenPage::numbers);
    add(ScreenPage::signal_check);
    add(ScreenPage::skills);
    add(ScreenPage::ends);
    add(ScreenPage::afterwards);
    return stops;
}

/// Pages on which a guest is picked; all others are read by the whole group.
bool is_personal(ScreenPage page) {
    return page == ScreenPage::kit || page == ScreenPage::signal_check;
}

Date current_day() {
    const QDate day = QDate::currentDate();
    return Date{std::chrono::year(day.year()),
                std::chrono::month(static_cast<unsigned>(day.month())),
                std::chrono::day(static_cast<unsigned>(day.day()))};
}

}  // namespace

GuestScreenControl::GuestScreenControl(SessionDocument& document, QObject* parent)
    : QObject(parent), today(current_day), document_(document), stops_(all_stops()) {
    timer_.setTimerType(Qt::CoarseTimer);
    connect(&timer_, &QTimer::timeout, this, &GuestScreenControl::turn_page);
    start_over();
    connect(&document_, &SessionDocument::opened, this, &GuestScreenControl::start_over);
    connect(&document_, &SessionDocument::changed, this, &GuestScreenControl::follow_document);
}

void GuestScreenControl::start_over() {
    const std::vector<Group>& groups = document_.session().groups;
    group_ = groups.empty() ? GroupId() : groups.front().id;
    guest_ = {};
    language_ = common_language();
    go_to(0);
}

void GuestScreenControl::follow_document() {
    if (find_group(document_.session(), group_) == nullptr) group_ = {};
    if (guest() == nullptr) guest_ = {};
    Q_EMIT content_changed();
}

std::string GuestScreenControl::common_language() const {
    const GuestLanguage* common = nullptr;
    for (const Guest* guest : guests()) {
        const GuestLanguage* language = find_guest_language(guest->language);
        if (language == nullptr || (common != nullptr && language != common)) return "en";
        common = language;
    }
    return common != nullptr ? common->tag : "en";
}

void GuestScreenControl::go_to(int index) {
    const int reached = std::clamp(index, 0, static_cast<int>(stops_.size()) - 1);
    set_blank(false);
    touch();
    if (reached == index_) return;
    index_ = reached;
    // What is read by all is nobody's own.
    if (!is_personal(stop().page)) guest_ = {};
    if (index_ + 1 == static_cast<int>(stops_.size())) set_running(false);
    Q_EMIT page_changed();
}

void GuestScreenControl::set_group(const GroupId& group) {
    if (group_ == group) return;
    group_ = group;
    const std::vector<const Guest*> shown = guests();
    const bool stays = std::any_of(shown.begin(), shown.end(),
                                   [&](const Guest* guest) { return guest->id == guest_; });
    if (!stays) guest_ = {};
    Q_EMIT content_changed();
}

std::vector<const Guest*> GuestScreenControl::guests() const {
    const Session& session = document_.session();
    if (find_group(session, group_) != nullptr) return guests_in(session, group_);
    std::vector<const Guest*> all;
    for (const Guest& guest : session.guests) all.push_back(&guest);
    return all;
}

const Guest* GuestScreenControl::guest() const {
    return find_guest(document_.session(), guest_);
}

void GuestScreenControl::set_guest(const GuestId& guest) {
    touch();
    if (guest_ == guest) return;
    guest_ = guest;
    Q_EMIT content_changed();
}

void GuestScreenControl::set_language(const std::string& tag) {
    touch();
    if (language_ == tag) return;
    language_ = tag;
    Q_EMIT content_changed();
}

bool GuestScreenControl::right_to_left() const {
    return direction ? direction() : tongue().language().right_to_left;
}

GuestFigures GuestScreenControl::figures() const {
    if (const Guest* picked = guest()) return {tongue(), units_of(*picked)};
    const UnitSystem house = document_.units();
    const std::vector<const Guest*> readers = guests();
    if (readers.empty()) return {tongue(), house};
    const UnitSystem first = units_of(*readers.front());
    const bool shared = std::all_of(readers.begin(), readers.end(), [&](const Guest* reader) {
        return units_of(*reader) == first;
    });
    if (shared) return {tongue(), first};
    return {tongue(), house,
            house == UnitSystem::metric ? UnitSystem::imperial : UnitSystem::metric};
}

UnitSystem GuestScreenControl::units_of(const Guest& guest) const {
    switch (guest.units) {
        case UnitHabit::house:
            return document_.units();
        case UnitHabit::metric:
            return UnitSystem::metric;
        case UnitHabit::imperial:
            return UnitSystem::imperial;
    }
    return document_.units();
}

void GuestScreenControl::set_running(bool running) {
    const bool last = index_ + 1 == static_cast<int>(stops_.size());
    const bool wanted = running && !last;
    if (wanted == is_running()) return;
    if (wanted) {
        timer_.start(seconds_ * 1000);
    } else {
        timer_.stop();
    }
    Q_EMIT running_changed();
}

void GuestScreenControl::set_seconds(int seconds) {
    const int wanted = std::clamp(seconds, least_page_seconds, most_page_seconds);
    if (wanted == seconds_) return;
    seconds_ = wanted;
    touch();
    Q_EMIT settings_changed();
}

void GuestScreenControl::turn_page() {
    next();
}

void GuestScreenControl::touch() {
    if (is_running()) timer_.start(seconds_ * 1000);
}

void GuestScreenControl::set_blank(bool blank) {
    if (blank_ == blank) return;
    blank_ = blank;
    if (blank_) set_running(false);
    Q_EMIT blank_changed();
}

void GuestScreenControl::set_calm(bool calm) {
    if (calm_ == calm) return;
    calm_ = calm;
    Q_EMIT settings_changed();
}

void GuestScreenControl::note_known(HandSignal hand_signal, int check_number) {
    const Guest* picked = guest();
    if (picked == nullptr) return;
    touch();
    const GuestId id = picked->id;
    const QString key = QString::fromStdString(id.text) + QStringLiteral("/briefing-%1");
    // A refusal is said by the document, in the window.
    (void)document_.edit(
        tr("Note known signals"),
        [&](Session& session) {
            Guest* guest = find_guest(session, id);
            if (guest == nullptr) return;
            // The first answer of a day takes the place of what another day left.
            guest->briefing = check_on(guest->briefing, today());
            set_understood(guest->briefing, hand_signal, true);
            guest->briefing.checked_on = today();
            guest->briefing.language = tongue().language().tag;
        },
        key.arg(check_number));
}

}  // namespace leadline
