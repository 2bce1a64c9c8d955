// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/screening_page.h"

#include <QCheckBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/records/names.h"
#include "ui/roster/answer_choice.h"
#include "ui/roster/finding_list.h"
#include "ui/roster/marks.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

QString object_name(std::string_view stored) {
    return QStringLiteral("answer_") +
           QString::fromUtf8(stored.data(), static_cast<qsizetype>(stored.size()));
}

template <std::size_t count>
bool holds(const std::array<Answer, count>& answers, Answer answer) {
    return std::find(answers.begin(), answers.end(), answer) != answers.end();
}

QLabel* heading(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setWordWrap(true);
    return label;
}

}  // namespace

ScreeningPage::ScreeningPage(EditDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      shape_(new QLabel(this)),
      outcome_(new QLabel(this)),
      all_no_(new QPushButton(this)),
      all_no_today_(new QPushButton(this)),
      approval_(new QCheckBox(tr("Physician's &written approval seen"), this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    build_outcome(column);
    build_health(column);
    build_today(column);
    column->addStretch();
    connect_questions();
}

// ---- building ----------------------------------------------------------------------------------

void ScreeningPage::build_outcome(QBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    outcome_->setObjectName(QStringLiteral("screening_outcome"));
    QFont font = outcome_->font();
    font.setBold(true);
    font.setPointSizeF(font.pointSizeF() * 1.3);
    outcome_->setFont(font);
    row->addWidget(shape_);
    row->addWidget(outcome_, 1);
    column->addLayout(row);
    findings_ = new FindingList(QStringLiteral("findings_screening"), this);
    column->addWidget(findings_);
    approval_->setObjectName(QStringLiteral("approval_check"));
    column->addWidget(approval_);
    connect(approval_, &QCheckBox::clicked, this, [this](bool seen) {
        desk_.change(tr("Physician's approval"), "approval",
                     [&](Guest& guest) { guest.screening.physician_approval_seen = seen; });
    });
}

AnswerChoice* ScreeningPage::add_question(QBoxLayout* column, const QString& name,
                                          const QString& question, const QString& object_name) {
    auto* choice = new AnswerChoice(name, object_name, this);
    auto* title = new QHBoxLayout;
    title->setSpacing(8);
    title->addWidget(new QLabel(name, this), 1, Qt::AlignBottom);
    title->addWidget(choice);
    auto* whole = new QLabel(question, this);
    whole->setWordWrap(true);
    whole->setForegroundRole(QPalette::PlaceholderText);
    auto* both = new QVBoxLayout;
    both->setSpacing(2);
    both->addLayout(title);
    both->addWidget(whole);
    column->addLayout(both);
    return choice;
}

void ScreeningPage::build_health(QBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->addWidget(heading(tr("Health, before the day"), this), 1);
    all_no_->setObjectName(QStringLiteral("all_no_health"));
    row->addWidget(all_no_);
    column->addLayout(row);
    for (std::size_t i = 0; i < health_.size(); ++i) {
        const auto theme = static_cast<HealthTheme>(i);
        health_[i] = add_question(column, label(theme), question(theme),
                                  object_name(stored_name(theme)));
    }
    connect(all_no_, &QPushButton::clicked, this, [this] { answer_rest(false); });
}

void ScreeningPage::build_today(QBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->addWidget(heading(tr("Today, before kitting up"), this), 1);
    all_no_today_->setObjectName(QStringLiteral("all_no_today"));
    row->addWidget(all_no_today_);
    column->addLayout(row);
    for (std::size_t i = 0; i < today_.size(); ++i) {
        const auto asked = static_cast<TodayQuestion>(i);
        today_[i] = add_question(column, label(asked), question(asked),
                                 object_name(stored_name(asked)));
    }
    auto* remark = new QLabel(
        tr("Short questions for talking it over. The centre's own form and the physician prevail."),
        this);
    remark->setWordWrap(true);
    remark->setForegroundRole(QPalette::PlaceholderText);
    column->addWidget(remark);
    connect(all_no_today_, &QPushButton::clicked, this, [this] { answer_rest(true); });
}

void ScreeningPage::connect_questions() {
    for (std::size_t i = 0; i < today_.size(); ++i) {
        connect(today_[i], &AnswerChoice::edited, this, [this, i](Answer answer) {
            const QString name = label(static_cast<TodayQuestion>(i));
            desk_.change(name, ("today-" + std::to_string(i)).c_str(),
                         [&](Guest& guest) { guest.screening.today.at(i) = answer; });
        });
        connect(today_[i], &AnswerChoice::moved, this,
                [this, i](int questions) { go_on(health_theme_count + i, questions); });
    }
    for (std::size_t i = 0; i < health_.size(); ++i) {
        connect(health_[i], &AnswerChoice::edited, this, [this, i](Answer answer) {
            const QString name = label(static_cast<HealthTheme>(i));
            desk_.change(name, ("health-" + std::to_string(i)).c_str(),
                         [&](Guest& guest) { guest.screening.health.at(i) = answer; });
        });
        connect(health_[i], &AnswerChoice::moved, this,
                [this, i](int questions) { go_on(i, questions); });
    }
}

// ---- answering ---------------------------------------------------------------------------------

void ScreeningPage::go_on(std::size_t from, int questions) {
    const int wanted = static_cast<int>(from) + questions;
    if (wanted < 0 || wanted >= static_cast<int>(today_.size() + health_.size())) return;
    const auto place = static_cast<std::size_t>(wanted);
    AnswerChoice* next =
        place < health_.size() ? health_[place] : today_[place - health_.size()];
    next->take_focus();
    Q_EMIT wants_sight(next);
}

void ScreeningPage::answer_rest(bool today) {
    const QString name = today ? tr("Today's questions") : tr("Health questions");
    desk_.change(name, today ? "all_no_today" : "all_no_health", [&](Guest& guest) {
        const auto answer = [](Answer& given) {
            // A yes is never wiped out in passing.
            if (given == Answer::unanswered) given = Answer::no;
        };
        if (today) {
            std::for_each(guest.screening.today.begin(), guest.screening.today.end(), answer);
        } else {
            std::for_each(guest.screening.health.begin(), guest.screening.health.end(), answer);
        }
    });
}

// ---- showing -----------------------------------------------------------------------------------

void ScreeningPage::refresh() {
    const Guest* guest = desk_.guest();
    if (guest == nullptr) return;
    const Screening& screening = guest->screening;
    for (std::size_t i = 0; i < health_.size(); ++i) health_[i]->show_answer(screening.health[i]);
    for (std::size_t i = 0; i < today_.size(); ++i) today_[i]->show_answer(screening.today[i]);
    approval_->setChecked(screening.physician_approval_seen);
    all_no_->setText(holds(screening.health, Answer::yes) ? tr("All &others no") : tr("All n&o"));
    all_no_today_->setText(holds(screening.today, Answer::yes) ? tr("All others no to&day")
                                                               : tr("All no to&day"));
    all_no_->setEnabled(holds(screening.health, Answer::unanswered));
    all_no_today_->setEnabled(holds(screening.today, Answer::unanswered));
    refresh_outcome(screening);
}

void ScreeningPage::refresh_outcome(const Screening& screening) {
    const ScreeningOutcome found = outcome(screening);
    outcome_->setText(label(found));
    const int side = outcome_->fontMetrics().height();
    shape_->setPixmap(mark_icon(mark_of(found), palette()).pixmap(side, side));
}

void ScreeningPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) refresh();
}

void ScreeningPage::focus_first() { health_[0]->take_focus(); }

}  // namespace leadline
