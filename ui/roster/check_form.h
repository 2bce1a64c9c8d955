// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "core/planning/screening.h"
#include "ui/roster/earlier_dives_delegate.h"
#include "ui/roster/fields.h"

class QPlainTextEdit;
class QPushButton;

namespace leadline {

class SignaturePad;

/// What is entered beside the answers before a check is recorded.
struct CheckEntry {
    ScreeningOutcome own_outcome = ScreeningOutcome::unanswered;  ///< by the centre's own form
    TodayOutcome own_today = TodayOutcome::unanswered;            ///< likewise
    Date checked_on{};
    std::string checked_by;
    SignatureKind signature = SignatureKind::none;
    std::string physician_note;     ///< sealed
    std::string emergency_contact;  ///< sealed
};

/// Day, name, signature and what is only kept sealed, as a form under the questions.
class CheckForm : public QWidget {
    Q_OBJECT
public:
    explicit CheckForm(QWidget* parent = nullptr);

    /// @param own_form  only the outcome of the centre's own form is entered
    /// @param staff     names to choose from
    /// @param latest    the session's day: no check is later
    void show_entry(const CheckEntry& entry, bool own_form, const std::vector<std::string>& staff,
                    Date latest);
    [[nodiscard]] CheckEntry entry() const;
    [[nodiscard]] QString signature_path() const;
    /// Says where what is entered goes, and offers what can only be kept sealed where it can be.
    void set_sealing(bool sealing, const QString& remark);
    void show_kept(AnswersKept kept);
    [[nodiscard]] AnswersKept kept() const;

Q_SIGNALS:
    void edited();
    void kept_chosen(AnswersKept kept);

private:
    void build_own_form();
    void build_signature();
    void build_sealed();
    void offer_signatures();
    void refresh_pad();

    FieldForm* form_;
    ChoiceBox* own_outcome_;
    ChoiceBox* own_today_;
    DayEdit* day_;
    ChoiceBox* by_;
    ChoiceBox* signature_;
    SignaturePad* pad_;
    QPushButton* again_;
    QPlainTextEdit* note_;
    TypedLine* contact_;
    ChoiceBox* kept_;
    QLabel* remark_ = nullptr;
    Field* own_outcome_field_ = nullptr;
    Field* own_today_field_ = nullptr;
    Field* pad_field_ = nullptr;
    Field* note_field_ = nullptr;
    Field* contact_field_ = nullptr;
    Field* kept_field_ = nullptr;
    bool own_form_ = false;
    bool sealing_ = false;
    bool drawn_before_ = false;
};

}  // namespace leadline
