// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <array>

#include "core/planning/screening.h"
#include "ui/roster/edit_desk.h"

class QBoxLayout;
class QCheckBox;
class QLabel;
class QPushButton;

namespace leadline {

class AnswerChoice;
class FindingList;

/// The health questions, those of the day, and what they come to.
class ScreeningPage : public QWidget {
    Q_OBJECT
public:
    explicit ScreeningPage(EditDesk& desk, QWidget* parent = nullptr);
    void refresh();
    void focus_first();
    /// Where what stands against the guest is shown, right below the outcome.
    [[nodiscard]] FindingList* findings() const { return findings_; }

Q_SIGNALS:
    /// A question took the focus by key: it should be scrolled into sight.
    void wants_sight(QWidget* question);

protected:
    void changeEvent(QEvent* event) override;

private:
    void build_outcome(QBoxLayout* column);
    void build_health(QBoxLayout* column);
    void build_today(QBoxLayout* column);
    /// The short name with the answer beside it, and the whole question below.
    AnswerChoice* add_question(QBoxLayout* column, const QString& name, const QString& question,
                               const QString& object_name);
    void connect_questions();
    void go_on(std::size_t from, int questions);
    void answer_rest(bool today);
    void refresh_outcome(const Screening& screening);

    EditDesk& desk_;
    QLabel* shape_;
    QLabel* outcome_;
    FindingList* findings_ = nullptr;
    QPushButton* all_no_;
    QPushButton* all_no_today_;
    QCheckBox* approval_;
    std::array<AnswerChoice*, health_theme_count> health_{};
    std::array<AnswerChoice*, today_question_count> today_{};
};

}  // namespace leadline
