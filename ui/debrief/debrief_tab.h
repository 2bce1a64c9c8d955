// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "core/planning/finding.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QStackedWidget;
class QTableView;
class QTimeEdit;

namespace leadline {

class DebriefModel;
struct GroupReview;
class LogChart;
class SessionDocument;

/// Debrief: what really happened, and what did we learn? Enter or open the log; planned against
/// actual for each guest; what was exceeded; breathing rates for the next plan.
class DebriefTab : public QWidget {
    Q_OBJECT
public:
    explicit DebriefTab(SessionDocument& document, QWidget* parent = nullptr);

    void show_subject(const Subject& subject);
    /// Asks for a session file with a log; an empty path means no. Replaced in tests.
    void set_log_path_chooser(std::function<QString()> chooser) {
        choose_log_path_ = std::move(chooser);
    }

protected:
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* build_empty();
    QWidget* build_log();
    QWidget* build_head();
    QWidget* build_findings();
    void connect_head();
    void refresh();
    void refresh_head();
    void refresh_findings();
    void fit_names();
    void start_log();
    void open_log();
    void remove_log();
    void use_measured(bool all);
    void say(const QString& text, Severity severity);
    [[nodiscard]] GuestId current_guest() const;
    [[nodiscard]] QString short_name(const QString& name) const;
    [[nodiscard]] QString answer_for(const GroupReview& group) const;
    [[nodiscard]] QString findings_html() const;

    SessionDocument& document_;
    DebriefModel* model_;
    QStackedWidget* pages_;
    QLabel* message_;
    QLabel* message_icon_;
    QTimeEdit* time_in_;
    QTimeEdit* time_out_;
    QSpinBox* heads_in_;
    QSpinBox* heads_out_;
    QLabel* heads_icon_;
    QLabel* heads_words_;
    QLineEdit* note_;
    QLabel* lowest_;
    QTableView* table_;
    LogChart* chart_;
    QLabel* findings_;
    QPushButton* use_one_;
    QPushButton* use_all_;
    std::function<QString()> choose_log_path_;
};

}  // namespace leadline
