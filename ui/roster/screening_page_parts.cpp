// SPDX-License-Identifier: GPL-3.0-or-later
// How the screening page is built and what it shows; what it does stands in screening_page.cpp.
#include <QCheckBox>
#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/planning/check_screening.h"
#include "ui/document/resources.h"
#include "ui/roster/birth_date_line.h"
#include "ui/roster/earlier_dives_model.h"
#include "ui/roster/finding_list.h"
#include "ui/roster/guest_facts.h"
#include "ui/roster/marks.h"
#include "ui/roster/question_form.h"
#include "ui/roster/screening_page.h"
#include "ui/words/error_words.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

const QString& between() {
    static const QString dot = QStringLiteral(" · ");
    return dot;
}

QLabel* plain_label(const QString& object_name, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setObjectName(object_name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

void set_large(QLabel* label, double factor) {
    QFont font = label->font();
    font.setBold(true);
    font.setPointSizeF(font.pointSizeF() * factor);
    label->setFont(font);
}

void show_mark(QLabel* shape, Mark mark, const QLabel& beside) {
    const int side = beside.fontMetrics().height();
    shape->setPixmap(mark_icon(mark, beside.palette()).pixmap(side, side));
}

QHBoxLayout* marked_line(QLabel* shape, QLabel* text) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(shape, 0, Qt::AlignTop);
    row->addWidget(text, 1);
    return row;
}

}  // namespace

ScreeningPage::ScreeningPage(EditDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      today_([] { return core_date(QDate::currentDate()); }),
      shape_(new QLabel(this)),
      outcome_(plain_label(QStringLiteral("screening_outcome"), this)),
      details_(plain_label(QStringLiteral("screening_details"), this)),
      today_shape_(new QLabel(this)),
      today_label_(plain_label(QStringLiteral("screening_today"), this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    build_outcome(column);
    findings_ = new FindingList(QStringLiteral("findings_screening"), this);
    column->addWidget(findings_);
    build_release(column);
    build_offer(column);
    build_buttons(column);
    column->addStretch();
    // Ids are given again: no draft may pass from a guest who is gone to another.
    connect(&desk_.document(), &SessionDocument::changed, this, [this] {
        std::erase_if(drafts_, [&](const auto& entry) {
            return find_guest(desk_.document().session(), entry.first) == nullptr;
        });
    });
    connect(&desk_.document(), &SessionDocument::opened, this, [this] {
        forget_all();
        say({});
        offered_for_.reset();
        last_checked_by_.clear();
    });
}

// ---- building ----------------------------------------------------------------------------------

void ScreeningPage::build_outcome(QVBoxLayout* column) {
    set_large(outcome_, 1.3);
    details_->setForegroundRole(QPalette::PlaceholderText);
    column->addLayout(marked_line(shape_, outcome_));
    column->addWidget(details_);
    column->addLayout(marked_line(today_shape_, today_label_));
}

void ScreeningPage::build_release(QVBoxLayout* column) {
    release_ = new QWidget(this);
    release_->setObjectName(QStringLiteral("release_part"));
    approval_ = new QCheckBox(tr("Physician's &written release seen"), release_);
    approval_->setObjectName(QStringLiteral("approval_check"));
    approval_day_ = new BirthDateLine(release_);
    approval_day_->setObjectName(QStringLiteral("approval_date_edit"));
    approval_day_->setAccessibleName(tr("Date of the physician's release"));
    constexpr int letters = 20;
    approval_day_->setMaximumWidth(letters * fontMetrics().averageCharWidth());
    auto* dated = new QLabel(tr("dated"), release_);
    dated->setBuddy(approval_day_);
    approval_message_ = plain_label(QStringLiteral("approval_message"), release_);
    approval_message_->hide();
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(approval_);
    row->addStretch();
    auto* day = new QHBoxLayout;
    day->setSpacing(8);
    constexpr int under_check = 24;
    day->addSpacing(under_check);
    day->addWidget(dated);
    day->addWidget(approval_day_);
    day->addStretch();
    auto* lines = new QVBoxLayout(release_);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(4);
    lines->addLayout(row);
    lines->addLayout(day);
    lines->addWidget(approval_message_);
    column->addWidget(release_);
    const auto complain = [this](const QString& text) {
        approval_message_->setText(text);
        approval_message_->setVisible(!text.isEmpty());
    };
    connect(approval_, &QCheckBox::clicked, this, [this, complain](bool seen) {
        complain({});
        change_release(seen, std::nullopt);
    });
    connect(approval_day_, &BirthDateLine::edited, this,
            [this, complain](std::optional<Date> day_of_release) {
                complain({});
                change_release(true, day_of_release);
            });
    connect(approval_day_, &BirthDateLine::not_a_date, this,
            [complain](const QString& typed) {
                complain(tr("\"%1\" is not a date. Write it as 17/5/2026, with four digits for "
                            "the year.")
                             .arg(typed));
            });
}

void ScreeningPage::build_offer(QVBoxLayout* column) {
    offer_ = new QWidget(this);
    offer_->setObjectName(QStringLiteral("last_check_offer"));
    offer_->setAutoFillBackground(true);
    offer_->setBackgroundRole(QPalette::AlternateBase);
    offer_text_ = plain_label(QStringLiteral("last_check_text"), offer_);
    auto* same = new QPushButton(tr("Nothing changed: take it over"), offer_);
    same->setObjectName(QStringLiteral("last_check_take_over"));
    same->setAutoDefault(false);
    auto* anew = new QPushButton(tr("Check anew"), offer_);
    anew->setObjectName(QStringLiteral("last_check_anew"));
    anew->setAutoDefault(false);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(same);
    row->addWidget(anew);
    row->addStretch();
    auto* lines = new QVBoxLayout(offer_);
    lines->setContentsMargins(8, 8, 8, 8);
    lines->setSpacing(8);
    lines->addWidget(offer_text_);
    lines->addLayout(row);
    column->addWidget(offer_);
    connect(same, &QPushButton::clicked, this, &ScreeningPage::take_over);
    connect(anew, &QPushButton::clicked, this, &ScreeningPage::open_questions);
}

void ScreeningPage::build_buttons(QVBoxLayout* column) {
    buttons_ = new QWidget(this);
    open_questions_ = new QPushButton(tr("Open the &questions"), buttons_);
    open_questions_->setObjectName(QStringLiteral("open_questions"));
    open_own_form_ = new QPushButton(tr("By the centre's own &form"), buttons_);
    open_own_form_->setObjectName(QStringLiteral("open_own_form"));
    open_own_form_->setToolTip(
        tr("The guest filled in a form of the centre: only its outcome is recorded here."));
    auto* row = new QHBoxLayout(buttons_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    for (QPushButton* button : {open_questions_, open_own_form_}) {
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    row->addStretch();
    column->addWidget(buttons_);
    message_ = plain_label(QStringLiteral("screening_message"), this);
    message_->hide();
    column->addWidget(message_);
    connect(open_questions_, &QPushButton::clicked, this, &ScreeningPage::open_questions);
    connect(open_own_form_, &QPushButton::clicked, this, &ScreeningPage::open_own_form);
}

/// Built when it is first needed: hundreds of segments that most looks at a guest do not call for.
void ScreeningPage::build_panel() {
    if (panel_ != nullptr) return;
    Result<Questionnaire> questionnaire = load_questionnaire();
    if (!questionnaire) return say(words(questionnaire.error()));
    panel_ = new QWidget(this);
    panel_->setObjectName(QStringLiteral("check_panel"));
    about_sealed_ = plain_label(QStringLiteral("about_sealed"), panel_);
    about_sealed_->setForegroundRole(QPalette::PlaceholderText);
    questions_ = new QuestionForm(std::move(questionnaire).value(), panel_);
    form_ = new CheckForm(panel_);
    form_->show_kept(kept_);
    draft_shape_ = new QLabel(panel_);
    draft_outcome_ = plain_label(QStringLiteral("draft_outcome"), panel_);
    set_large(draft_outcome_, 1.0);
    record_ = new QPushButton(panel_);
    record_->setObjectName(QStringLiteral("record_check"));
    record_->setToolTip(tr("Ctrl+Return"));
    record_->setAutoDefault(false);
    close_ = new QPushButton(tr("Close without recording"), panel_);
    close_->setObjectName(QStringLiteral("close_check"));
    close_->setAutoDefault(false);
    auto* remark = plain_label(QStringLiteral("questions_remark"), panel_);
    remark->setText(tr("Short questions for talking it over. They diagnose nobody: the centre's "
                       "own form and the physician prevail."));
    remark->setForegroundRole(QPalette::PlaceholderText);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(record_);
    buttons->addWidget(close_);
    buttons->addStretch();
    auto* lines = new QVBoxLayout(panel_);
    lines->setContentsMargins(0, 8, 0, 0);
    lines->setSpacing(8);
    lines->addWidget(about_sealed_);
    lines->addWidget(questions_);
    constexpr int above_form = 8;
    lines->addSpacing(above_form);
    lines->addWidget(form_);
    lines->addLayout(marked_line(draft_shape_, draft_outcome_));
    panel_message_ = plain_label(QStringLiteral("check_message"), panel_);
    panel_message_->hide();
    lines->addWidget(panel_message_);
    lines->addLayout(buttons);
    lines->addWidget(remark);
    auto* column = qobject_cast<QVBoxLayout*>(layout());
    column->insertWidget(column->count() - 1, panel_);
    connect(questions_, &QuestionForm::health_edited, this, &ScreeningPage::health_edited);
    connect(questions_, &QuestionForm::today_edited, this, [this] {
        Draft* now = draft();
        const Guest* guest = desk_.guest();
        if (now == nullptr || guest == nullptr) return;
        now->answers = questions_->answers();
        now->today_touched = true;
        refresh_panel(*guest);
    });
    connect(questions_, &QuestionForm::wants_sight, this, &ScreeningPage::wants_sight);
    connect(form_, &CheckForm::edited, this, &ScreeningPage::entry_edited);
    connect(form_, &CheckForm::kept_chosen, this, [this](AnswersKept kept) {
        kept_ = kept;
        Q_EMIT answers_kept_chosen(kept);
    });
    connect(record_, &QPushButton::clicked, this, &ScreeningPage::record);
    connect(close_, &QPushButton::clicked, this, &ScreeningPage::close_panel);
}

// ---- showing -----------------------------------------------------------------------------------

void ScreeningPage::say(const QString& text) {
    const auto show = [](QLabel* label, const QString& said) {
        if (label == nullptr) return;
        label->setText(said);
        label->setVisible(!said.isEmpty());
    };
    // While a check is made the eye is at its foot, where the button is.
    const bool at_foot = panel_message_ != nullptr && draft() != nullptr;
    show(at_foot ? panel_message_ : message_, text);
    show(at_foot ? message_ : panel_message_, {});
}

void ScreeningPage::show_draft() {
    const Draft* now = draft();
    const Guest* guest = desk_.guest();
    if (now == nullptr || guest == nullptr) return;
    const Session& session = desk_.document().session();
    std::vector<std::string> staff;
    for (const StaffMember& member : session.staff) {
        if (!member.name.empty()) staff.push_back(member.name);
    }
    questions_->show_answers(now->answers, age_on_day(session, *guest));
    form_->show_entry(now->entry, now->own_form, staff, session.date);
}

void ScreeningPage::refresh() {
    const Guest* guest = desk_.guest();
    if (guest == nullptr) return;
    if (guest->id != shown_) {
        stash();
        say({});
        approval_message_->hide();
        shown_ = guest->id;
        show_draft();
    }
    refresh_outcome(*guest);
    refresh_release(*guest);
    refresh_offer(*guest);
    refresh_panel(*guest);
}

void ScreeningPage::refresh_outcome(const Guest& guest) {
    const HealthCheck& check = guest.screening;
    const ScreeningOutcome found = outcome(check);
    outcome_->setText(label(found));
    show_mark(shape_, mark_of(found), *outcome_);
    QStringList parts;
    if (check.outcome != ScreeningOutcome::unanswered) {
        parts << (check.checked_on ? tr("Checked on %1").arg(spelled(*check.checked_on))
                                   : tr("Checked, day not known"));
        if (!check.edition.empty()) parts << edition_words(check.edition);
        if (!check.checked_by.empty()) {
            parts << tr("by %1").arg(QString::fromStdString(check.checked_by));
        }
        parts << label(check.signature);
    }
    details_->setText(parts.join(between()));
    details_->setVisible(!parts.isEmpty());
    today_label_->setText(label(check.today));
    show_mark(today_shape_, mark_of(check.today), *today_label_);
}

void ScreeningPage::refresh_release(const Guest& guest) {
    const HealthCheck& check = guest.screening;
    release_->setVisible(check.outcome == ScreeningOutcome::physician_required);
    approval_->setChecked(check.physician_approval_seen);
    approval_day_->setEnabled(check.physician_approval_seen);
    approval_day_->set_latest(desk_.document().session().date);
    approval_day_->show_date(check.approval_on);
}

void ScreeningPage::refresh_offer(const Guest& guest) {
    const bool wanted =
        finder_ && guest.screening.outcome == ScreeningOutcome::unanswered && draft() == nullptr;
    if (wanted) {
        const bool known = offered_for_ && offered_for_->id == guest.id &&
                           offered_for_->name == guest.name &&
                           offered_for_->birth_date == guest.birth_date;
        if (!known) {
            offered_ = finder_(guest);
            offered_for_ = guest;
        }
    }
    const Session& session = desk_.document().session();
    const bool offers = wanted && offered_ &&
                        is_current(*offered_, screening_months(session, desk_.document().rules()),
                                   session.date);
    offer_->setVisible(offers);
    if (!offers) return;
    offer_text_->setText(tr("Checked on %1: %2. Has anything changed since?")
                             .arg(spelled(*offered_->checked_on),
                                  label(outcome(*offered_)).toLower()));
}

void ScreeningPage::refresh_panel(const Guest& guest) {
    const Draft* now = draft();
    buttons_->setVisible(now == nullptr);
    if (panel_ == nullptr) return;
    panel_->setVisible(now != nullptr);
    if (now == nullptr) return;
    const Session& session = desk_.document().session();
    const std::optional<int> age = age_on_day(session, guest);
    about_sealed_->setText(now->about_sealed);
    about_sealed_->setVisible(!now->about_sealed.isEmpty());
    questions_->setVisible(!now->own_form);
    // The birth date may have been corrected meanwhile.
    questions_->show_answers(now->answers, age);
    panel_->findChild<QLabel*>(QStringLiteral("questions_remark"))->setVisible(!now->own_form);
    const bool open = vault_open() && !now->sealing_failed;
    const QString remark =
        now->own_form ? tr("Only the outcome is recorded; the form stays with the centre.")
        : open        ? tr("Answers, note, contact and a signature drawn here are sealed in the vault.")
        : access_ == nullptr || access_->state() == HealthAccess::State::not_kept
            ? tr("This session is not in the records: only the outcome is kept, and the answers "
                 "go when you record.")
            : tr("The vault is not open: only the outcome is kept, and the answers go when you "
                 "record.");
    form_->set_sealing(open && !now->own_form, remark);

    const HealthCheck check = check_of(*now, guest);
    QStringList parts{tr("Comes to: %1").arg(label(check.outcome)), label(check.today)};
    if (!now->own_form && now->health_touched) {
        const int open_ones = leadline::open_questions(questions_->questionnaire(), now->answers, age);
        if (open_ones > 0) parts << tr("%n still open", nullptr, open_ones);
    }
    draft_outcome_->setText(parts.join(between()));
    show_mark(draft_shape_, mark_of(check.outcome), *draft_outcome_);
    record_->setText(now->sealing_failed ? tr("Record the outcome alone") : tr("Record"));
    record_->setEnabled(changes_anything(*now, guest));
}

}  // namespace leadline
