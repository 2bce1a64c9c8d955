// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/question_form.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <utility>

#include "ui/roster/answer_choice.h"
#include "ui/words/name_words.h"
#include "ui/words/question_words.h"

namespace leadline {
namespace {

constexpr int between_questions = 10;
constexpr int indent = 20;

/// "lungs.asthma" -> "answer_lungs_asthma"
QString object_name(const std::string& id) {
    return QStringLiteral("answer_") + QString::fromStdString(id).replace(u'.', u'_');
}

/// Names of the day's questions for tests and style, in their order.
constexpr std::array today_names{"cold_or_blocked_ears",
                                 "alcohol_or_drugs",
                                 "new_medicine",
                                 "flight_or_mountain_within_24_hours",
                                 "unwilling_or_very_afraid",
                                 "cannot_swim"};
static_assert(today_names.size() == today_question_count);

QLabel* bold_label(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

}  // namespace

QuestionForm::QuestionForm(Questionnaire questionnaire, QWidget* parent)
    : QWidget(parent), questionnaire_(std::move(questionnaire)) {
    setObjectName(QStringLiteral("question_form"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(between_questions);
    build_health(column);
    build_today(column);
    refresh();
}

// ---- building ----------------------------------------------------------------------------------

std::size_t QuestionForm::start_block(QBoxLayout* row, const QString& object_name,
                                      const QString& about, bool today) {
    auto* button = new QPushButton(this);
    button->setObjectName(object_name);
    button->setAccessibleName(tr("%1: no to all that are open").arg(about));
    button->setAutoDefault(false);
    row->addWidget(button);
    const std::size_t place = blocks_.size();
    blocks_.push_back({button, {}, today});
    connect(button, &QPushButton::clicked, this, [this, place] { answer_rest(place); });
    return place;
}

void QuestionForm::add_line(QBoxLayout* column, Line line, const QString& title,
                            const QString& question, const QString& object_name,
                            std::size_t block) {
    const std::size_t place = lines_.size();
    auto* choice = new AnswerChoice(title.isEmpty() ? question : title, object_name, this);
    line.choice = choice;
    auto* whole = new QLabel(question, this);
    whole->setWordWrap(true);
    whole->setTextFormat(Qt::PlainText);
    if (title.isEmpty()) {
        auto* row = new QHBoxLayout;
        row->setSpacing(8);
        row->addWidget(whole, 1);
        row->addWidget(choice, 0, Qt::AlignTop);
        column->addLayout(row);
    } else {
        auto* row = new QHBoxLayout;
        row->setSpacing(8);
        auto* name = new QLabel(title, this);
        name->setTextFormat(Qt::PlainText);
        name->setWordWrap(true);
        row->addWidget(name, 1, Qt::AlignBottom);
        row->addWidget(choice);
        whole->setForegroundRole(QPalette::PlaceholderText);
        auto* both = new QVBoxLayout;
        both->setSpacing(2);
        both->addLayout(row);
        both->addWidget(whole);
        column->addLayout(both);
    }
    connect(choice, &AnswerChoice::edited, this,
            [this, place](Answer answer) { edited(place, answer); });
    connect(choice, &AnswerChoice::moved, this,
            [this, place](int questions) { go_on(place, questions); });
    blocks_[block].lines.push_back(place);
    lines_.push_back(std::move(line));
}

void QuestionForm::build_health(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->addWidget(bold_label(tr("Health, before the day"), this), 1);
    const std::size_t block =
        start_block(row, QStringLiteral("all_no_health"), tr("Health"), false);
    column->addLayout(row);
    for (std::size_t i = 0; i < questionnaire_.themes.size(); ++i) {
        const QuestionTheme& theme = questionnaire_.themes[i];
        if (!theme.from_age) {
            add_line(column, {theme.id, std::nullopt, nullptr}, health_question(theme.title),
                     health_question(theme.question), object_name(theme.id), block);
        }
        if (!theme.follow_ups.empty()) build_closer(column, i);
    }
}

void QuestionForm::build_closer(QVBoxLayout* column, std::size_t theme) {
    const QuestionTheme& asked = questionnaire_.themes[theme];
    const QString title = health_question(asked.title);
    auto* part = new QWidget(this);
    part->setObjectName(QStringLiteral("closer_") + QString::fromStdString(asked.id));
    auto* beside = new QHBoxLayout(part);
    beside->setContentsMargins(asked.from_age ? 0 : indent / 2, 0, 0, 0);
    beside->setSpacing(indent / 2);
    if (!asked.from_age) {
        auto* rule = new QFrame(part);
        rule->setFrameShape(QFrame::VLine);
        rule->setForegroundRole(QPalette::Mid);
        beside->addWidget(rule);
    }
    auto* lines = new QVBoxLayout;
    lines->setSpacing(8);
    auto* row = new QHBoxLayout;
    auto* heading = new QLabel(asked.from_age ? title : tr("%1, more closely").arg(title), part);
    heading->setTextFormat(Qt::PlainText);
    heading->setWordWrap(true);
    row->addWidget(heading, 1, Qt::AlignBottom);
    const std::size_t block = start_block(
        row, QStringLiteral("all_no_") + QString::fromStdString(asked.id), title, false);
    lines->addLayout(row);
    for (const FollowUp& follow_up : asked.follow_ups) {
        add_line(lines, {follow_up.id, std::nullopt, nullptr}, {},
                 health_question(follow_up.question), object_name(follow_up.id), block);
    }
    beside->addLayout(lines, 1);
    column->addWidget(part);
    closer_.push_back({theme, part});
}

void QuestionForm::build_today(QVBoxLayout* column) {
    column->addSpacing(between_questions);
    auto* row = new QHBoxLayout;
    row->addWidget(bold_label(tr("Today, before kitting up"), this), 1);
    const std::size_t block =
        start_block(row, QStringLiteral("all_no_today"), tr("Today"), true);
    column->addLayout(row);
    for (std::size_t i = 0; i < today_question_count; ++i) {
        const auto asked = static_cast<TodayQuestion>(i);
        add_line(column, {{}, i, nullptr}, label(asked), question(asked),
                 object_name(today_names[i]), block);
    }
}

// ---- answering ---------------------------------------------------------------------------------

Answer QuestionForm::answer_of(const Line& line) const {
    return line.today ? answers_.today.at(*line.today) : answer_to(answers_, line.id);
}

void QuestionForm::set(const Line& line, Answer answer) {
    if (line.today) {
        answers_.today.at(*line.today) = answer;
    } else {
        set_answer(answers_, line.id, answer);
    }
}

void QuestionForm::edited(std::size_t line, Answer answer) {
    set(lines_[line], answer);
    refresh();
    if (lines_[line].today) {
        Q_EMIT today_edited();
    } else {
        Q_EMIT health_edited();
    }
}

void QuestionForm::answer_rest(std::size_t block) {
    for (const std::size_t line : blocks_[block].lines) {
        // A yes is never wiped out in passing.
        if (answer_of(lines_[line]) == Answer::unanswered) set(lines_[line], Answer::no);
    }
    const bool today = blocks_[block].today;
    refresh();
    if (today) {
        Q_EMIT today_edited();
    } else {
        Q_EMIT health_edited();
    }
}

void QuestionForm::go_on(std::size_t from, int questions) {
    auto place = static_cast<std::ptrdiff_t>(from);
    const int step = questions > 0 ? 1 : -1;
    // Questions that are not asked of this guest are passed over.
    do {
        place += step;
        if (place < 0 || place >= std::ssize(lines_)) return;
    } while (!lines_[static_cast<std::size_t>(place)].choice->isVisibleTo(this));
    AnswerChoice* next = lines_[static_cast<std::size_t>(place)].choice;
    next->take_focus();
    Q_EMIT wants_sight(next);
}

void QuestionForm::focus_first() {
    if (lines_.empty()) return;
    lines_.front().choice->take_focus();
    Q_EMIT wants_sight(lines_.front().choice);
}

// ---- showing -----------------------------------------------------------------------------------

void QuestionForm::show_answers(const HealthAnswers& answers, std::optional<int> age) {
    answers_ = answers;
    age_ = age;
    refresh();
}

void QuestionForm::refresh() {
    for (const Closer& closer : closer_) {
        closer.part->setVisible(
            asks_follow_ups(questionnaire_.themes[closer.theme], answers_, age_));
    }
    for (const Line& line : lines_) line.choice->show_answer(answer_of(line));
    for (const Block& block : blocks_) {
        const auto any = [&](Answer answer) {
            return std::any_of(block.lines.begin(), block.lines.end(), [&](std::size_t line) {
                return answer_of(lines_[line]) == answer;
            });
        };
        const bool health = &block == &blocks_.front();
        const bool yes = any(Answer::yes);
        if (block.today) {
            block.all_no->setText(yes ? tr("All others no to&day") : tr("All no to&day"));
        } else if (health) {
            block.all_no->setText(yes ? tr("All &others no") : tr("All n&o"));
        } else {
            block.all_no->setText(yes ? tr("All others no") : tr("All no"));
        }
        block.all_no->setEnabled(any(Answer::unanswered));
    }
}

}  // namespace leadline
