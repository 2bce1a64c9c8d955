// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <functional>
#include <optional>

#include "core/physics/result.h"
#include "ui/roster/red_list_model.h"

class QLabel;
class QTableView;

namespace leadline {

/// The red list: whom to call in the days before. Nothing sealed is needed for it.
class RedListDialog : public QDialog {
    Q_OBJECT
public:
    /// @param sessions  those to come, or why they could not be read
    RedListDialog(const Result<std::vector<SessionToCome>>& sessions, const RuleBook& rules,
                  QWidget* parent = nullptr);

    /// Whom to show in which session, when the dialog was accepted.
    [[nodiscard]] std::optional<SessionRow> chosen_session() const { return session_; }
    [[nodiscard]] GuestId chosen_guest() const { return guest_; }
    /// Asks for a file to write; replaced in tests.
    std::function<QString()> choose_path;

private:
    void choose(int row);
    void write_pdf();

    RedListModel* model_;
    QTableView* table_;
    QLabel* message_;
    std::optional<SessionRow> session_;
    GuestId guest_;
};

}  // namespace leadline
