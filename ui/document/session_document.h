// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <optional>

#include "core/debrief/review.h"
#include "core/files/session_file.h"
#include "core/planning/plan.h"
#include "ui/words/quantity_text.h"

class QUndoStack;

namespace leadline {

/// The open session as the window sees it: what people typed, and the plan and review that follow
/// from it. Every tab reads from here and edits through here, so that a change in one is in all at
/// once, can be undone, and can be saved by whoever listens to changed().
///
/// Lives in the window's thread. plan() and review() are worked out anew inside every edit.
class SessionDocument : public QObject {
    Q_OBJECT
public:
    explicit SessionDocument(RuleBook rules, QObject* parent = nullptr);
    ~SessionDocument() override;

    [[nodiscard]] const Session& session() const { return file_.session; }
    [[nodiscard]] const std::optional<DiveLog>& log() const { return file_.log; }
    [[nodiscard]] const SessionFile& file() const { return file_; }
    [[nodiscard]] const Plan& plan() const { return plan_; }
    /// None without a log.
    [[nodiscard]] const std::optional<Review>& review() const { return review_; }
    [[nodiscard]] const RuleBook& rules() const { return rules_; }
    [[nodiscard]] QUndoStack* undo_stack() const { return undo_stack_; }

    [[nodiscard]] UnitSystem units() const { return units_; }
    void set_units(UnitSystem units);

    /// Opens another session; the undo history starts anew. On an error nothing changes.
    Result<Done> open(SessionFile file);

    /// Changes the session as one undoable step.
    /// @param what       what the step is called in the Undo menu, translated: "Change depth"
    /// @param change     edits a copy of the session
    /// @param merge_key  successive edits with the same non-empty key become one step (typing,
    ///                   dragging): name the field and the thing, "guest-3/name"
    /// @returns Done; or what is wrong with the result, in which case nothing has changed and
    ///          refused() has been emitted with the words for it
    Result<Done> edit(const QString& what, const std::function<void(Session&)>& change,
                      const QString& merge_key = {});
    /// Likewise for the log; setting it to nullopt removes it.
    Result<Done> edit_log(const QString& what,
                          const std::function<void(std::optional<DiveLog>&)>& change,
                          const QString& merge_key = {});

Q_SIGNALS:
    /// After every edit, undo, redo, open and change of units. Tabs refresh from it; they must keep
    /// the user's focus and cursor when what they show has not changed.
    void changed();
    /// Another session was opened: selections start anew. Emitted before changed().
    void opened();
    /// An edit was refused; the message says why and what to do.
    void refused(const QString& message);

private:
    class Step;
    /// What follows from a file's values.
    struct Reckoned {
        Plan plan;
        std::optional<Review> review;
    };
    Result<Reckoned> reckon(const SessionFile& file) const;
    /// Takes over values and what follows from them.
    Result<Done> apply(const SessionFile& file);
    Result<Done> push(const QString& what, SessionFile after, const QString& merge_key);

    RuleBook rules_;
    SessionFile file_;
    Plan plan_;
    std::optional<Review> review_;
    QUndoStack* undo_stack_;
    UnitSystem units_ = UnitSystem::metric;
    /// Reckoned already for the file that apply() is about to be called with, so that an edit costs
    /// one plan and not two.
    std::optional<Reckoned> ready_;
};

/// A new session to start from: today, house rules, an 8 m standard profile, nobody yet.
Session empty_session(Date today);

}  // namespace leadline
