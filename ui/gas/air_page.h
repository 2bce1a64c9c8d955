// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/planning/plan.h"

class QBoxLayout;
class QTableView;

namespace leadline {

class GuestGasModel;
class GuestGasProxy;
class LeverChart;
class PressureChart;
class SentenceList;
class SessionDocument;

/// The air of the guests: pressure over time, what would buy more minutes, each guest's numbers.
class AirPage : public QWidget {
    Q_OBJECT
public:
    explicit AirPage(SessionDocument& document, QWidget* parent = nullptr);
    ~AirPage() override;

    /// The group shown; empty: all.
    [[nodiscard]] const GroupId& group() const;
    void show_group(const GroupId& group);
    /// Chooses a guest's row and line.
    void show_guest(const GuestId& guest);
    void focus_table();
    void refresh();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void set_up_table();
    void refresh_chart();
    void fit_table();
    void fit_names();
    void selected_row_changed();
    void show_refusal(const QString& message);

    SessionDocument& document_;
    GuestGasModel* model_;
    GuestGasProxy* proxy_;
    SentenceList* instructors_;
    SentenceList* refusal_;
    PressureChart* chart_;
    LeverChart* levers_;
    QTableView* table_;
    QBoxLayout* charts_ = nullptr;
    bool chart_is_stale_ = false;  ///< something changed while the page was hidden
};

}  // namespace leadline
