// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/session_document.h"

#include <QUndoCommand>
#include <QUndoStack>
#include <utility>

#include "ui/words/error_words.h"

namespace leadline {

/// One undoable edit: the whole of the file's values before and after. Sessions are small (tens of
/// kilobytes), so keeping both is simpler and safer than keeping differences.
class SessionDocument::Step : public QUndoCommand {
public:
    Step(SessionDocument& document, const QString& what, SessionFile after, QString merge_key)
        : QUndoCommand(what),
          document_(document),
          before_(document.file_),
          after_(std::move(after)),
          merge_key_(std::move(merge_key)) {}

    void undo() override { static_cast<void>(document_.apply(before_).has_value()); }
    void redo() override { static_cast<void>(document_.apply(after_).has_value()); }

    [[nodiscard]] int id() const override { return merge_key_.isEmpty() ? -1 : 1; }
    bool mergeWith(const QUndoCommand* other) override {
        const auto* next = dynamic_cast<const Step*>(other);
        if (next == nullptr || next->merge_key_ != merge_key_) return false;
        after_ = next->after_;
        if (after_ == before_) setObsolete(true);
        return true;
    }

private:
    SessionDocument& document_;
    SessionFile before_;
    SessionFile after_;
    QString merge_key_;
};

SessionDocument::SessionDocument(RuleBook rules, QObject* parent)
    : QObject(parent), rules_(std::move(rules)), undo_stack_(new QUndoStack(this)) {
    constexpr int steps_kept = 200;
    undo_stack_->setUndoLimit(steps_kept);
}

SessionDocument::~SessionDocument() = default;

void SessionDocument::set_units(UnitSystem units) {
    if (units_ == units) return;
    units_ = units;
    Q_EMIT changed();
}

Result<SessionDocument::Reckoned> SessionDocument::reckon(const SessionFile& file) const {
    Result<Plan> planned = leadline::plan(file.session, rules_);
    if (!planned) return planned.error();
    Reckoned result{std::move(planned).value(), std::nullopt};
    if (file.log) {
        Result<Review> reviewed = leadline::review(file.session, result.plan, *file.log, rules_);
        if (!reviewed) return reviewed.error();
        result.review = std::move(reviewed).value();
    }
    return result;
}

Result<Done> SessionDocument::apply(const SessionFile& file) {
    Result<Reckoned> result = ready_ ? Result<Reckoned>(std::move(*ready_)) : reckon(file);
    ready_.reset();
    if (!result) return result.error();
    file_ = file;
    plan_ = std::move(result->plan);
    review_ = std::move(result->review);
    Q_EMIT changed();
    return Done{};
}

Result<Done> SessionDocument::open(SessionFile file) {
    // Tabs hear of the new session before they refresh, so `opened` must come first; it is sent only
    // once the values are known to be sound.
    Result<Reckoned> result = reckon(file);
    if (!result) return result.error();
    if (file.log) {
        if (const Result<Done> checked = check(*file.log, file.session); !checked) return checked;
    }
    undo_stack_->clear();
    Q_EMIT opened();
    ready_ = std::move(result).value();
    return apply(file);
}

Result<Done> SessionDocument::push(const QString& what, SessionFile after,
                                   const QString& merge_key) {
    if (after == file_) return Done{};
    Result<Reckoned> result = reckon(after);
    Result<Done> sound = Done{};
    if (!result) {
        sound = result.error();
    } else if (after.log) {
        sound = check(*after.log, after.session);
    }
    if (!sound) {
        Q_EMIT refused(words(sound.error()));
        return sound;
    }
    ready_ = std::move(result).value();
    undo_stack_->push(new Step(*this, what, std::move(after), merge_key));
    return Done{};
}

Result<Done> SessionDocument::edit(const QString& what,
                                   const std::function<void(Session&)>& change,
                                   const QString& merge_key) {
    SessionFile after = file_;
    change(after.session);
    // A guest who is removed takes the own log entry along.
    if (after.log) {
        std::erase_if(after.log->divers, [&](const LogEntry& diver) {
            return find_guest(after.session, diver.guest) == nullptr;
        });
    }
    return push(what, std::move(after), merge_key);
}

Result<Done> SessionDocument::edit_log(
    const QString& what, const std::function<void(std::optional<DiveLog>&)>& change,
    const QString& merge_key) {
    SessionFile after = file_;
    change(after.log);
    return push(what, std::move(after), merge_key);
}

Session empty_session(Date today) {
    Session session;
    session.date = today;
    session.meeting_time = TimeOfDay{9 * 60};
    session.dive_time = TimeOfDay{10 * 60};
    session.site.salinity = PracticalSalinity{35.0};
    session.profile = standard_profile(Depth(Meters(8.0)), Depth(Meters(2.0)), Minutes(8.0),
                                       Minutes(18.0));
    session.staff.push_back({StaffId("staff-1"), {}, StaffRole::instructor, {}, std::nullopt});
    session.groups.push_back({GroupId("group-1"), "1", StaffId("staff-1"), StaffId()});
    session.rule_sets = {RuleSetId("house")};
    return session;
}

}  // namespace leadline
