// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <string>
#include <vector>

#include "core/planning/screening.h"

class QBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace leadline {

class AnswerChoice;

/// The questions put to one guest: those before the day with their closer ones, which unfold only
/// where they are asked, and those of the day. Holds the answers while they are given; whoever owns
/// the form lets them go.
class QuestionForm : public QWidget {
    Q_OBJECT
public:
    explicit QuestionForm(Questionnaire questionnaire, QWidget* parent = nullptr);

    [[nodiscard]] const Questionnaire& questionnaire() const { return questionnaire_; }
    /// Shows answers and asks what concerns somebody of that age; emits nothing.
    void show_answers(const HealthAnswers& answers, std::optional<int> age);
    [[nodiscard]] const HealthAnswers& answers() const { return answers_; }
    void focus_first();

Q_SIGNALS:
    void health_edited();
    void today_edited();
    /// A question took the focus by key: it should be scrolled into sight.
    void wants_sight(QWidget* question);

private:
    /// One question on the screen, in the order asked.
    struct Line {
        std::string id;                   ///< of a theme or a closer question
        std::optional<std::size_t> today; ///< place among those of the day
        AnswerChoice* choice = nullptr;
    };
    /// Questions that one button answers.
    struct Block {
        QPushButton* all_no = nullptr;
        std::vector<std::size_t> lines;
        bool today = false;
    };
    /// A theme's closer questions.
    struct Closer {
        std::size_t theme = 0;
        QWidget* part = nullptr;  ///< shown while they are asked
    };

    void build_health(QVBoxLayout* column);
    void build_closer(QVBoxLayout* column, std::size_t theme);
    void build_today(QVBoxLayout* column);
    std::size_t start_block(QBoxLayout* row, const QString& object_name, const QString& about,
                            bool today);
    void add_line(QBoxLayout* column, Line line, const QString& title, const QString& question,
                  const QString& object_name, std::size_t block);
    [[nodiscard]] Answer answer_of(const Line& line) const;
    void set(const Line& line, Answer answer);
    void edited(std::size_t line, Answer answer);
    void answer_rest(std::size_t block);
    void go_on(std::size_t from, int questions);
    void refresh();

    Questionnaire questionnaire_;
    HealthAnswers answers_;
    std::optional<int> age_;
    std::vector<Line> lines_;
    std::vector<Block> blocks_;
    std::vector<Closer> closer_;
};

}  // namespace leadline
