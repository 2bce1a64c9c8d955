// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "core/planning/finding.h"
#include "ui/gas/pressure_chart.h"

class QComboBox;
class QLabel;
class QTableView;

namespace leadline {

class GuestGasModel;
class GuestGasProxy;
class SentenceList;
class SessionDocument;

/// "How long will the air last, and for whom?": the answer in a sentence a group, pressure against
/// time, and each guest's numbers with what they follow from.
class GasTab : public QWidget {
    Q_OBJECT
public:
    explicit GasTab(SessionDocument& document, QWidget* parent = nullptr);
    ~GasTab() override;

    /// Shows a guest's row and line, a group, or the group of a member of staff.
    void show_subject(const Subject& subject);
    /// The group shown; empty: all.
    [[nodiscard]] GroupId chosen_group() const;

protected:
    void showEvent(QShowEvent* event) override;

private:
    [[nodiscard]] QWidget* chooser_row();
    [[nodiscard]] QWidget* table_part();
    void refresh();
    void refresh_chooser();
    void refresh_chart();
    void refresh_columns();
    void choose_group(const GroupId& group);
    void choose_guest(const GuestId& guest);
    void selected_row_changed();
    void show_refusal(const QString& message);

    SessionDocument& document_;
    GuestGasModel* model_;
    GuestGasProxy* proxy_;
    SentenceList* answers_;
    SentenceList* instructors_;
    SentenceList* refusal_;
    QLabel* empty_;
    QWidget* chooser_;
    QComboBox* groups_;
    PressureChart* chart_;
    QTableView* table_;
    QWidget* body_;
    bool chart_is_stale_ = false;  ///< something changed while the tab was hidden
};

}  // namespace leadline
