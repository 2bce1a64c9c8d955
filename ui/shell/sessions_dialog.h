// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <optional>

#include "core/records/session_store.h"

class QPushButton;
class QTableView;

namespace leadline {

class RecordKeeper;
class SessionsModel;

/// The sessions on record, newest first: open one, or delete one after asking.
class SessionsDialog : public QDialog {
    Q_OBJECT
public:
    explicit SessionsDialog(RecordKeeper& keeper, QWidget* parent);
    /// The session chosen with Open.
    [[nodiscard]] std::optional<SessionRow> chosen() const { return chosen_; }

private:
    void select_first();
    void update_buttons();
    void remove_current();
    [[nodiscard]] std::optional<SessionRow> current() const;

    RecordKeeper& keeper_;
    SessionsModel* model_;
    QTableView* table_;
    QPushButton* open_;
    QPushButton* remove_;
    std::optional<SessionRow> chosen_;
};

}  // namespace leadline
