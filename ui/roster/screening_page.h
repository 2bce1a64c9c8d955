// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QWidget>
#include <functional>
#include <map>
#include <optional>
#include <string>

#include "core/planning/screening.h"
#include "ui/document/health_access.h"
#include "ui/roster/check_form.h"
#include "ui/roster/edit_desk.h"

class QBoxLayout;
class QCheckBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace leadline {

class BirthDateLine;
class FindingList;
class QuestionForm;

/// Looks up the last health check on record of a guest of the open session.
using CheckFinder = std::function<std::optional<HealthCheck>(const Guest&)>;

/// What a guest's health check came to, and the questions when they are gone through. The session
/// gets the outcome alone, as one step; the answers are held here while they are given, and sealed
/// where there is a vault that is open.
class ScreeningPage : public QWidget {
    Q_OBJECT
public:
    explicit ScreeningPage(EditDesk& desk, QWidget* parent = nullptr);
    ~ScreeningPage() override;
    void refresh();
    void focus_first();
    /// Where what stands against the guest is shown, right below the outcome.
    [[nodiscard]] FindingList* findings() const { return findings_; }

    /// @param access  nullptr: nothing is sealed. May go before the page does
    void set_health_access(HealthAccess* access);
    void set_check_finder(CheckFinder finder);
    void set_answers_kept(AnswersKept kept);
    /// The day that counts as today; for tests.
    void set_today(std::function<Date()> today);

Q_SIGNALS:
    /// A question took the focus by key: it should be scrolled into sight.
    void wants_sight(QWidget* question);
    void answers_kept_chosen(AnswersKept kept);

protected:
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    /// A check while it is made: answers and what else was entered for one guest.
    struct Draft {
        bool own_form = false;
        HealthAnswers answers;
        bool health_touched = false;
        bool today_touched = false;
        CheckEntry entry;
        std::string sealed_note;     ///< as it stands in the vault
        std::string sealed_contact;  ///< likewise
        QString about_sealed;        ///< whose the sealed answers shown are, and of when
        bool sealing_failed = false; ///< the next try records the outcome alone
    };

    void build_outcome(QVBoxLayout* column);
    void build_offer(QVBoxLayout* column);
    void build_release(QVBoxLayout* column);
    void build_buttons(QVBoxLayout* column);
    void build_panel();

    void open_questions();
    void open_own_form();
    void close_panel();
    void record();
    void take_over();
    void change_release(bool seen, std::optional<Date> day);

    [[nodiscard]] bool vault_open() const;
    void vault_changed();
    void forget_all();
    [[nodiscard]] Draft new_draft(const Guest& guest) const;
    void load_sealed(Draft& draft, const Guest& guest);
    [[nodiscard]] HealthAnswers asked(const Draft& draft, const Guest& guest) const;
    [[nodiscard]] Result<Done> seal(const Draft& draft, const Guest& guest) const;
    [[nodiscard]] HealthCheck check_of(const Draft& draft, const Guest& guest) const;
    [[nodiscard]] bool changes_anything(const Draft& draft, const Guest& guest) const;
    [[nodiscard]] Draft* draft();
    void stash();
    void start_anew(Draft& draft, const Guest& guest);
    void health_edited();
    void entry_edited();

    void show_draft();
    void refresh_outcome(const Guest& guest);
    void refresh_offer(const Guest& guest);
    void refresh_release(const Guest& guest);
    void refresh_panel(const Guest& guest);
    void say(const QString& text);

    EditDesk& desk_;
    QPointer<HealthAccess> access_;
    CheckFinder finder_;
    std::function<Date()> today_;
    AnswersKept kept_ = AnswersKept::flagged;
    bool was_open_ = false;
    GuestId shown_;
    std::map<GuestId, Draft> drafts_;
    std::string last_checked_by_;
    std::optional<HealthCheck> offered_;
    std::optional<Guest> offered_for_;

    QLabel* shape_;
    QLabel* outcome_;
    QLabel* details_;
    QLabel* today_shape_;
    QLabel* today_label_;
    FindingList* findings_ = nullptr;
    QWidget* offer_ = nullptr;
    QLabel* offer_text_ = nullptr;
    QWidget* release_ = nullptr;
    QCheckBox* approval_ = nullptr;
    BirthDateLine* approval_day_ = nullptr;
    QLabel* approval_message_ = nullptr;
    QWidget* buttons_ = nullptr;
    QPushButton* open_questions_ = nullptr;
    QPushButton* open_own_form_ = nullptr;
    QLabel* message_ = nullptr;
    QWidget* panel_ = nullptr;
    QLabel* panel_message_ = nullptr;
    QLabel* about_sealed_ = nullptr;
    QuestionForm* questions_ = nullptr;
    CheckForm* form_ = nullptr;
    QLabel* draft_shape_ = nullptr;
    QLabel* draft_outcome_ = nullptr;
    QPushButton* record_ = nullptr;
    QPushButton* close_ = nullptr;
};

}  // namespace leadline
