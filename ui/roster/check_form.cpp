// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/check_form.h"

#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <initializer_list>

#include "ui/roster/earlier_dives_model.h"
#include "ui/roster/measures.h"
#include "ui/roster/signature_pad.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int longest_contact = 200;

template <typename Enum>
QString value_of(Enum choice) {
    return QString::number(static_cast<int>(choice));
}

template <typename Enum>
Enum chosen(const ChoiceBox& box) {
    return static_cast<Enum>(box.choice().toInt());
}

template <typename Enum>
std::vector<ChoiceBox::Choice> choices_of(std::initializer_list<Enum> offered) {
    std::vector<ChoiceBox::Choice> choices;
    for (const Enum choice : offered) choices.push_back({label(choice), value_of(choice)});
    return choices;
}

}  // namespace

CheckForm::CheckForm(QWidget* parent)
    : QWidget(parent),
      form_(new FieldForm(this)),
      own_outcome_(new ChoiceBox(QStringLiteral("own_outcome_combo"), this)),
      own_today_(new ChoiceBox(QStringLiteral("own_today_combo"), this)),
      day_(new DayEdit(this)),
      by_(new ChoiceBox(QStringLiteral("checked_by_combo"), this)),
      signature_(new ChoiceBox(QStringLiteral("signature_combo"), this)),
      pad_(new SignaturePad(this)),
      again_(new QPushButton(tr("Sign again"), this)),
      note_(new QPlainTextEdit(this)),
      contact_(new TypedLine(QStringLiteral("emergency_contact_edit"), longest_contact, this)),
      kept_(new ChoiceBox(QStringLiteral("answers_kept_combo"), this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(form_);
    form_->add_heading(tr("For the record"));
    build_own_form();
    day_->setObjectName(QStringLiteral("check_date_edit"));
    form_->add(tr("Checked on"), day_);
    form_->add(tr("Checked by"), by_);
    build_signature();
    build_sealed();
    connect(day_, &QDateEdit::dateChanged, this, &CheckForm::edited);
    for (ChoiceBox* box : {own_outcome_, own_today_, by_}) {
        connect(box, &QComboBox::activated, this, &CheckForm::edited);
    }
}

// ---- building ----------------------------------------------------------------------------------

void CheckForm::build_own_form() {
    own_outcome_->offer({{tr("Choose…"), value_of(ScreeningOutcome::unanswered)},
                         {label(ScreeningOutcome::clear), value_of(ScreeningOutcome::clear)},
                         {label(ScreeningOutcome::physician_required),
                          value_of(ScreeningOutcome::physician_required)},
                         {label(ScreeningOutcome::does_not_dive),
                          value_of(ScreeningOutcome::does_not_dive)}});
    own_today_->offer(choices_of({TodayOutcome::unanswered, TodayOutcome::clear,
                                  TodayOutcome::with_care, TodayOutcome::not_today}));
    own_outcome_field_ = form_->add(tr("Own form"), own_outcome_);
    own_outcome_->setAccessibleName(tr("Outcome by the centre's own form"));
    own_today_field_ = form_->add(tr("Today"), own_today_);
    own_today_->setAccessibleName(tr("Outcome of the questions of the day"));
}

void CheckForm::build_signature() {
    form_->add(tr("Signature"), signature_);
    auto* part = new QWidget(this);
    part->setObjectName(QStringLiteral("signature_part"));
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(pad_);
    again_->setObjectName(QStringLiteral("signature_clear"));
    again_->setAutoDefault(false);
    column->addWidget(again_, 0, Qt::AlignLeft);
    pad_field_ = form_->add(QString(), part);
    connect(signature_, &QComboBox::activated, this, [this] {
        refresh_pad();
        Q_EMIT edited();
    });
    connect(pad_, &SignaturePad::signed_on, this, [this] {
        again_->setEnabled(true);
        Q_EMIT edited();
    });
    connect(again_, &QPushButton::clicked, this, [this] {
        pad_->clear();
        again_->setEnabled(false);
        Q_EMIT edited();
    });
}

void CheckForm::build_sealed() {
    contact_field_ = form_->add(tr("Emergency contact"), contact_);
    contact_->setPlaceholderText(tr("Name and phone"));
    note_->setObjectName(QStringLiteral("physician_note_edit"));
    note_->setTabChangesFocus(true);
    note_->setPlaceholderText(tr("What the physician wrote"));
    constexpr int lines = 3;
    note_->setFixedHeight(lines * fontMetrics().lineSpacing() + 16);
    note_field_ = form_->add(tr("Physician's note"), note_);
    kept_->offer({{tr("What was answered yes"), value_of(AnswersKept::flagged)},
                  {tr("All answers"), value_of(AnswersKept::all)}});
    kept_field_ = form_->add(tr("Seal"), kept_);
    kept_->setAccessibleName(tr("Which answers are sealed"));
    remark_ = form_->add_remark(QStringLiteral("sealing_remark"));
    connect(contact_, &QLineEdit::textEdited, this, &CheckForm::edited);
    connect(note_, &QPlainTextEdit::textChanged, this, [this] {
        if (note_->toPlainText().size() > longest_note) {
            const QSignalBlocker quiet(note_);
            note_->setPlainText(note_->toPlainText().left(longest_note));
            note_->moveCursor(QTextCursor::End);
            note_field_->complain(tr("Note: holds 2000 characters; the rest was cut off."));
        } else {
            note_field_->complain({});
        }
        Q_EMIT edited();
    });
    connect(kept_, &QComboBox::activated, this, [this] { Q_EMIT kept_chosen(kept()); });
}

// ---- showing -----------------------------------------------------------------------------------

void CheckForm::show_entry(const CheckEntry& entry, bool own_form,
                           const std::vector<std::string>& staff, Date latest) {
    own_form_ = own_form;
    form_->set_shown(own_outcome_field_, own_form);
    form_->set_shown(own_today_field_, own_form);
    own_outcome_->show_choice(value_of(entry.own_outcome));
    own_today_->show_choice(value_of(entry.own_today));
    {
        const QSignalBlocker quiet(day_);
        day_->setMaximumDate(qt_date(latest));
        day_->setDate(qt_date(entry.checked_on));
    }
    std::vector<ChoiceBox::Choice> names{{tr("Nobody named"), QString()}};
    for (const std::string& name : staff) {
        const QString shown = QString::fromStdString(name);
        names.push_back({shown, shown});
    }
    by_->offer(names);
    by_->show_choice(QString::fromStdString(entry.checked_by));
    pad_->clear();
    again_->setEnabled(false);
    drawn_before_ = entry.signature == SignatureKind::on_screen;
    offer_signatures();
    signature_->show_choice(value_of(entry.signature));
    {
        const QSignalBlocker quiet(note_);
        note_->setPlainText(QString::fromStdString(entry.physician_note));
    }
    note_field_->complain({});
    contact_->setText(QString::fromStdString(entry.emergency_contact));
    refresh_pad();
}

void CheckForm::offer_signatures() {
    // A drawing can only be kept sealed; one that was made before stays what it was.
    if (sealing_ || drawn_before_) {
        signature_->offer(choices_of(
            {SignatureKind::none, SignatureKind::on_paper, SignatureKind::on_screen}));
    } else {
        signature_->offer(choices_of({SignatureKind::none, SignatureKind::on_paper}));
    }
}

void CheckForm::refresh_pad() {
    form_->set_shown(pad_field_,
                     sealing_ && chosen<SignatureKind>(*signature_) == SignatureKind::on_screen);
}

void CheckForm::set_sealing(bool sealing, const QString& remark) {
    sealing_ = sealing;
    form_->set_shown(note_field_, sealing);
    form_->set_shown(contact_field_, sealing);
    form_->set_shown(kept_field_, sealing && !own_form_);
    remark_->setText(remark);
    offer_signatures();
    refresh_pad();
}

void CheckForm::show_kept(AnswersKept kept) { kept_->show_choice(value_of(kept)); }

AnswersKept CheckForm::kept() const { return chosen<AnswersKept>(*kept_); }

CheckEntry CheckForm::entry() const {
    CheckEntry entry;
    entry.own_outcome = chosen<ScreeningOutcome>(*own_outcome_);
    entry.own_today = chosen<TodayOutcome>(*own_today_);
    entry.checked_on = core_date(day_->date());
    entry.checked_by = by_->choice().toStdString();
    entry.signature = chosen<SignatureKind>(*signature_);
    entry.physician_note = note_->toPlainText().toStdString();
    entry.emergency_contact = contact_->trimmed();
    return entry;
}

QString CheckForm::signature_path() const { return pad_->svg_path(); }

}  // namespace leadline
