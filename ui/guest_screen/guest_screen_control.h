// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>
#include <functional>
#include <optional>
#include <vector>

#include "core/planning/plan.h"
#include "core/planning/session.h"
#include "ui/guest_screen/guest_figures.h"

namespace leadline {

class SessionDocument;

/// What a page of the guest screen is about, in the order shown.
enum class ScreenPage {
    welcome,
    kit,
    breathe,
    ears,
    hand_signals,  ///< several parts
    numbers,       ///< and the signals that are mixed up
    signal_check,
    skills,
    ends,
    afterwards,
};

/// A page to stop at: `part` counts the parts of one page from 0.
struct PageStop {
    ScreenPage page{};
    int part = 0;
    int parts = 1;
    friend bool operator==(const PageStop&, const PageStop&) = default;
};

inline constexpr int signals_on_a_page = 5;
inline constexpr int least_page_seconds = 3;
inline constexpr int most_page_seconds = 600;
inline constexpr int usual_page_seconds = 30;

/// Where the guest screen is: page, guest, group, language, running or not. Draws nothing. Changes
/// the session only by note_known().
class GuestScreenControl : public QObject {
    Q_OBJECT
public:
    explicit GuestScreenControl(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] SessionDocument& document() const { return document_; }
    [[nodiscard]] const std::vector<PageStop>& stops() const { return stops_; }
    [[nodiscard]] int index() const { return index_; }
    [[nodiscard]] const PageStop& stop() const { return stops_[static_cast<std::size_t>(index_)]; }
    /// Goes to a page; beyond the first or the last, to the nearest.
    void go_to(int index);
    void next() { go_to(index_ + 1); }
    void previous() { go_to(index_ - 1); }

    /// Whose briefing it is; empty: everybody of the session.
    [[nodiscard]] const GroupId& group() const { return group_; }
    void set_group(const GroupId& group);
    /// Those who are briefed, in roster order.
    [[nodiscard]] std::vector<const Guest*> guests() const;
    /// The guest who was picked; nullptr: none. Forgotten on pages that all read.
    [[nodiscard]] const Guest* guest() const;
    void set_guest(const GuestId& guest);

    [[nodiscard]] const GuestTongue& tongue() const { return GuestTongue::of(language_); }
    void set_language(const std::string& tag);
    [[nodiscard]] bool right_to_left() const;
    /// Takes the place of the language's direction; for tests.
    std::function<bool()> direction;
    /// In the picked guest's units; nobody picked: in those all who are briefed share, or in both.
    [[nodiscard]] GuestFigures figures() const;
    /// The units a guest reads.
    [[nodiscard]] UnitSystem units_of(const Guest& guest) const;

    [[nodiscard]] bool is_running() const { return timer_.isActive(); }
    /// Turns the pages by itself from here on; stops at the last.
    void set_running(bool running);
    [[nodiscard]] int seconds() const { return seconds_; }
    void set_seconds(int seconds);
    /// The time of a page is over.
    void turn_page();
    /// Somebody does something on the page: its time starts anew.
    void touch();
    /// Until the page turns by itself [ms]; -1: it does not.
    [[nodiscard]] int time_left() const { return timer_.remainingTime(); }

    [[nodiscard]] bool is_blank() const { return blank_; }
    void set_blank(bool blank);
    /// Nothing glides: states jump.
    [[nodiscard]] bool is_calm() const { return calm_; }
    void set_calm(bool calm);

    /// Notes that the picked guest told a signal right, with day and language, as one step of undo
    /// for each check.
    void note_known(HandSignal hand_signal, int check_number);
    /// The day on which signals are noted; replaced in tests.
    std::function<Date()> today;

Q_SIGNALS:
    void page_changed();
    /// The guest, the group, the language or the session.
    void content_changed();
    void running_changed();
    void blank_changed();
    /// Seconds or calm: to be kept.
    void settings_changed();

private:
    void follow_document();
    /// Another session: from the first page on, for its first group.
    void start_over();
    /// The language all read, where it is one and there; English otherwise.
    [[nodiscard]] std::string common_language() const;

    SessionDocument& document_;
    std::vector<PageStop> stops_;
    int index_ = 0;
    GroupId group_;
    GuestId guest_;
    std::string language_;
    QTimer timer_;
    int seconds_ = usual_page_seconds;
    bool blank_ = false;
    bool calm_ = false;
};

}  // namespace leadline
