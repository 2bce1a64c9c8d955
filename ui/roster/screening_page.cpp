// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/screening_page.h"

#include <QDate>
#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <algorithm>
#include <utility>

#include "core/files/questionnaire_file.h"
#include "core/planning/check_screening.h"
#include "core/planning/session_edits.h"
#include "ui/roster/earlier_dives_model.h"
#include "ui/roster/question_form.h"
#include "ui/words/error_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

/// Who is likely to make the check: who leads the guest's group, else the session.
std::string likely_checker(const Session& session, const Guest& guest) {
    const Group* group = find_group(session, guest.group);
    const StaffMember* member =
        group != nullptr ? find_staff(session, group->instructor) : nullptr;
    if (member == nullptr) member = find_staff(session, session.leader);
    return member != nullptr ? member->name : std::string();
}

}  // namespace

ScreeningPage::~ScreeningPage() = default;

void ScreeningPage::set_health_access(HealthAccess* access) {
    if (access_ != nullptr) access_->disconnect(this);
    access_ = access;
    was_open_ = vault_open();
    if (access != nullptr) {
        connect(access, &HealthAccess::state_changed, this, &ScreeningPage::vault_changed);
    }
    refresh();
}

void ScreeningPage::set_check_finder(CheckFinder finder) {
    finder_ = std::move(finder);
    offered_for_.reset();
    refresh();
}

void ScreeningPage::set_answers_kept(AnswersKept kept) {
    kept_ = kept;
    if (form_ != nullptr) form_->show_kept(kept);
}

void ScreeningPage::set_today(std::function<Date()> today) { today_ = std::move(today); }

// ---- drafts ------------------------------------------------------------------------------------

ScreeningPage::Draft* ScreeningPage::draft() {
    const auto found = drafts_.find(shown_);
    return found == drafts_.end() ? nullptr : &found->second;
}

bool ScreeningPage::vault_open() const {
    return access_ != nullptr && access_->state() == HealthAccess::State::open;
}

void ScreeningPage::vault_changed() {
    const bool open = vault_open();
    if (was_open_ && !open) {
        const bool any = !drafts_.empty();
        forget_all();
        if (any) say(tr("The vault is locked: what was open here has been put away."));
    }
    was_open_ = open;
    refresh();
}

void ScreeningPage::forget_all() {
    drafts_.clear();
    if (questions_ != nullptr) questions_->show_answers({}, std::nullopt);
    if (form_ != nullptr) form_->show_entry({}, false, {}, desk_.document().session().date);
    if (about_sealed_ != nullptr) about_sealed_->clear();
    if (draft_outcome_ != nullptr) draft_outcome_->clear();
}

ScreeningPage::Draft ScreeningPage::new_draft(const Guest& guest) const {
    const Session& session = desk_.document().session();
    const HealthCheck& check = guest.screening;
    Draft draft;
    draft.answers.edition = present_edition;
    const bool checked = check.outcome != ScreeningOutcome::unanswered;
    draft.entry.checked_on = checked && check.checked_on ? *check.checked_on
                                                         : std::min(today_(), session.date);
    draft.entry.checked_by = check.checked_by;
    if (draft.entry.checked_by.empty()) draft.entry.checked_by = last_checked_by_;
    if (draft.entry.checked_by.empty()) draft.entry.checked_by = likely_checker(session, guest);
    draft.entry.signature = check.signature;
    draft.entry.own_today = check.today;
    return draft;
}

void ScreeningPage::load_sealed(Draft& draft, const Guest& guest) {
    if (!vault_open()) return;
    const auto all = [&](HealthKind kind) -> std::vector<HealthEntry> {
        if (access_->count(guest.id, kind) == 0) return {};
        Result<std::vector<HealthEntry>> found = access_->open(guest.id, kind);
        if (found) return std::move(*found);
        say(words(found.error()));
        return {};
    };
    const auto newest = [&](HealthKind kind) -> std::optional<HealthEntry> {
        std::vector<HealthEntry> found = all(kind);
        return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
    };
    const auto whose = [&](const HealthEntry& entry) {
        const Result<Date> day = parse_date(entry.made_at.substr(0, 10), {});
        const QString when =
            day ? spelled(*day) : QString::fromStdString(entry.made_at);
        if (entry.given_by.empty() || entry.given_by == guest.name) {
            return tr("Sealed on %1.").arg(when);
        }
        return tr("Sealed on %1 under the name %2: make sure that it is the same person.")
            .arg(when, QString::fromStdString(entry.given_by));
    };
    if (const auto entry = newest(HealthKind::physician_note)) {
        draft.sealed_note = draft.entry.physician_note = entry->content;
        draft.about_sealed = whose(*entry);
    }
    if (const auto entry = newest(HealthKind::emergency_contact)) {
        draft.sealed_contact = draft.entry.emergency_contact = entry->content;
        draft.about_sealed = whose(*entry);
    }
    // A record of nothing but a day's questions does not hide the answers before it.
    const std::vector<HealthEntry> sealed = all(HealthKind::screening);
    const auto entry = std::find_if(sealed.begin(), sealed.end(), [](const HealthEntry& one) {
        const Result<HealthAnswers> answers = read_answers(one.content);
        return !answers || !answers->by_id.empty();
    });
    if (entry != sealed.end()) {
        const Result<HealthAnswers> answers = read_answers(entry->content);
        if (!answers) {
            say(tr("The sealed answers of %1 are in a form this program does not know. Go "
                   "through the questions again.")
                    .arg(QString::fromStdString(entry->made_at)));
        } else if (answers->edition != present_edition) {
            draft.about_sealed = tr("The sealed answers are those of another edition (%1); the "
                                    "questions are asked anew.")
                                     .arg(QString::fromStdString(answers->edition));
        } else {
            // What the day came to is asked anew on every day.
            draft.answers.by_id = answers->by_id;
            draft.about_sealed = whose(*entry);
        }
    }
}

/// What the record is going to say.
HealthCheck ScreeningPage::check_of(const Draft& draft, const Guest& guest) const {
    HealthCheck check = guest.screening;
    if (draft.own_form) {
        if (draft.entry.own_outcome != ScreeningOutcome::unanswered) {
            check.outcome = draft.entry.own_outcome;
            check.edition = own_form_edition;
        }
        check.today = draft.entry.own_today;
    } else {
        if (draft.health_touched) {
            check.outcome = outcome_of(questions_->questionnaire(), draft.answers,
                                       age_on_day(desk_.document().session(), guest));
            check.edition = questions_->questionnaire().edition;
        }
        if (draft.today_touched) check.today = today_outcome_of(draft.answers);
    }
    if (check.outcome == ScreeningOutcome::unanswered) {
        HealthCheck none;
        none.today = check.today;
        return none;
    }
    const bool anew = draft.own_form ? draft.entry.own_outcome != ScreeningOutcome::unanswered
                                     : draft.health_touched;
    const Date day = desk_.document().session().date;
    // Without a health question asked, a check whose day is not known, or lies ahead, stays so.
    if (anew || (check.checked_on && *check.checked_on <= day)) {
        check.checked_on = draft.entry.checked_on;
    }
    check.checked_by = draft.entry.checked_by;
    check.signature = draft.entry.signature;
    // A release from before a new check covers it only when its date says so.
    const bool covers = check.approval_on && check.checked_on &&
                        *check.approval_on >= *check.checked_on && *check.approval_on <= day;
    if (anew && !covers) {
        check.physician_approval_seen = false;
        check.approval_on.reset();
    }
    return check;
}

bool ScreeningPage::changes_anything(const Draft& draft, const Guest& guest) const {
    return draft.health_touched || draft.today_touched || check_of(draft, guest) != guest.screening ||
           draft.entry.physician_note != draft.sealed_note ||
           draft.entry.emergency_contact != draft.sealed_contact;
}

void ScreeningPage::stash() {
    Draft* before = draft();
    if (before == nullptr || form_ == nullptr) return;
    before->entry = form_->entry();
    // A drawing does not outlast the look at another guest.
    if (before->entry.signature == SignatureKind::on_screen && !form_->signature_path().isEmpty()) {
        before->entry.signature = SignatureKind::none;
    }
}

/// A new check is of today, not signed yet, and by whoever asks now, not by who asked last time.
void ScreeningPage::start_anew(Draft& draft, const Guest& guest) {
    const Session& session = desk_.document().session();
    draft.entry.checked_on = std::min(today_(), session.date);
    draft.entry.checked_by =
        last_checked_by_.empty() ? likely_checker(session, guest) : last_checked_by_;
    draft.entry.signature = SignatureKind::none;
}

void ScreeningPage::health_edited() {
    Draft* now = draft();
    const Guest* guest = desk_.guest();
    if (now == nullptr || guest == nullptr) return;
    now->answers = questions_->answers();
    now->entry = form_->entry();
    if (!now->health_touched) {
        now->health_touched = true;
        start_anew(*now, *guest);
        show_draft();
    }
    refresh_panel(*guest);
}

void ScreeningPage::entry_edited() {
    Draft* now = draft();
    const Guest* guest = desk_.guest();
    if (now == nullptr || guest == nullptr) return;
    const ScreeningOutcome before = now->entry.own_outcome;
    now->entry = form_->entry();
    if (now->own_form && before == ScreeningOutcome::unanswered &&
        now->entry.own_outcome != before) {
        start_anew(*now, *guest);
        show_draft();
    }
    refresh_panel(*guest);
}

// ---- doing -------------------------------------------------------------------------------------

void ScreeningPage::open_questions() {
    const Guest* guest = desk_.guest();
    if (guest == nullptr) return;
    say({});
    const GuestId id = guest->id;
    if (access_ != nullptr && (access_->state() == HealthAccess::State::locked ||
                               access_->state() == HealthAccess::State::not_set_up)) {
        access_->ask_to_open(this);
    }
    // The dialog may have let other things happen.
    guest = desk_.guest();
    if (guest == nullptr || guest->id != id) return;
    build_panel();
    if (panel_ == nullptr) return;
    Draft fresh = new_draft(*guest);
    load_sealed(fresh, *guest);
    drafts_[id] = std::move(fresh);
    show_draft();
    refresh();
    questions_->focus_first();
}

void ScreeningPage::open_own_form() {
    const Guest* guest = desk_.guest();
    if (guest == nullptr) return;
    say({});
    build_panel();
    if (panel_ == nullptr) return;
    Draft fresh = new_draft(*guest);
    fresh.own_form = true;
    drafts_[guest->id] = std::move(fresh);
    show_draft();
    refresh();
    if (auto* first = form_->findChild<QWidget*>(QStringLiteral("own_outcome_combo"))) {
        first->setFocus();
        Q_EMIT wants_sight(first);
    }
}

void ScreeningPage::close_panel() {
    drafts_.erase(shown_);
    if (questions_ != nullptr) questions_->show_answers({}, std::nullopt);
    if (form_ != nullptr) form_->show_entry({}, false, {}, desk_.document().session().date);
    say({});
    refresh();
    open_questions_->setFocus();
    Q_EMIT wants_sight(open_questions_);
}

/// The answers without those to closer questions that are not asked any more.
HealthAnswers ScreeningPage::asked(const Draft& draft, const Guest& guest) const {
    HealthAnswers answers = draft.answers;
    const std::optional<int> age = age_on_day(desk_.document().session(), guest);
    for (const QuestionTheme& theme : questions_->questionnaire().themes) {
        if (asks_follow_ups(theme, draft.answers, age)) continue;
        for (const FollowUp& follow_up : theme.follow_ups) answers.by_id.erase(follow_up.id);
    }
    return answers;
}

Result<Done> ScreeningPage::seal(const Draft& draft, const Guest& guest) const {
    const auto put = [&](HealthKind kind, const std::string& content) {
        return access_->put(guest.id, kind, content);
    };
    if (!draft.own_form && (draft.health_touched || draft.today_touched)) {
        const Result<Done> done =
            put(HealthKind::screening, write_answers(to_be_kept(asked(draft, guest), form_->kept())));
        if (!done) return done;
    }
    if (draft.entry.physician_note != draft.sealed_note) {
        const Result<Done> done = put(HealthKind::physician_note, draft.entry.physician_note);
        if (!done) return done;
    }
    if (draft.entry.emergency_contact != draft.sealed_contact) {
        const Result<Done> done =
            put(HealthKind::emergency_contact, draft.entry.emergency_contact);
        if (!done) return done;
    }
    const std::string path = form_->signature_path().toStdString();
    if (draft.entry.signature == SignatureKind::on_screen && !path.empty()) {
        return put(HealthKind::signature, path);
    }
    return Done{};
}

void ScreeningPage::record() {
    const Guest* guest = desk_.guest();
    Draft* now = draft();
    if (guest == nullptr || now == nullptr || !record_->isEnabled()) return;
    now->entry = form_->entry();
    HealthCheck check = check_of(*now, *guest);
    const bool drawn = !form_->signature_path().isEmpty();
    const bool stood = guest->screening.signature == SignatureKind::on_screen &&
                       guest->screening.checked_on == check.checked_on && !now->health_touched;
    if (check.signature == SignatureKind::on_screen && !drawn && !stood) {
        say(tr("Nothing is signed yet. Sign on the strip, or choose another way."));
        return;
    }
    if (vault_open() && !now->sealing_failed) {
        // Sealed first: were the outcome recorded before, a failure here would lose the answers.
        if (const Result<Done> sealed = seal(*now, *guest); !sealed) {
            now->sealing_failed = true;
            say(tr("Not recorded: the answers could not be sealed. %1 Try again after locking and "
                   "opening the vault, or record the outcome alone.")
                    .arg(words(sealed.error())));
            refresh_panel(*guest);
            return;
        }
    } else if (check.signature == SignatureKind::on_screen && !stood) {
        check.signature = SignatureKind::none;  // a drawing that is not kept is no signature
    }
    const GuestId id = guest->id;
    const QString refusal = desk_.change_session(
        tr("Record the health check"), tr("Health check"), {}, [&](Session& session) {
            if (Guest* changed = find_guest(session, id)) changed->screening = check;
            forget_screening_overrules(session, id);
        });
    if (!refusal.isEmpty()) return say(refusal);
    last_checked_by_ = check.checked_by;
    close_panel();
    say(tr("Recorded."));
}

void ScreeningPage::take_over() {
    if (!offered_) return;
    HealthCheck check = *offered_;
    check.today = TodayOutcome::unanswered;
    const GuestId id = desk_.guest_id();
    const QString refusal = desk_.change_session(
        tr("Take over the last health check"), tr("Health check"), {}, [&](Session& session) {
            if (Guest* changed = find_guest(session, id)) changed->screening = check;
            forget_screening_overrules(session, id);
        });
    say(refusal);
    open_questions_->setFocus();
}

void ScreeningPage::change_release(bool seen, std::optional<Date> day) {
    desk_.change(tr("Physician's release"), "approval", [&](Guest& guest) {
        guest.screening.physician_approval_seen = seen;
        guest.screening.approval_on = seen ? day : std::nullopt;
    });
}

// ---- events ------------------------------------------------------------------------------------

void ScreeningPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) refresh();
}

void ScreeningPage::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && (event->modifiers() & Qt::ControlModifier) != 0 && draft() != nullptr) {
        return record();
    }
    QWidget::keyPressEvent(event);
}

void ScreeningPage::focus_first() {
    const Draft* now = draft();
    if (now == nullptr || now->own_form) return open_questions_->setFocus();
    questions_->focus_first();
}

}  // namespace leadline
