// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QModelIndex>
#include <functional>
#include <string>
#include <vector>

#include "core/physics/result.h"
#include "core/planning/session.h"

class QLabel;
class QPushButton;
class QStackedWidget;

namespace leadline {

class CountBox;
class EarlierDivesModel;
class EditTable;
class SessionDocument;

/// Looks up dives that somebody of this name made before a day and time, by the logs on record.
using DiveFinder = std::function<Result<std::vector<EarlierDive>>(const std::string& name,
                                                                  Date date, TimeOfDay time)>;

/// The dives a member of staff made before this session, and the ascents expected during it. Taken
/// over together, as one undoable step, with OK.
class EarlierDivesDialog : public QDialog {
    Q_OBJECT
public:
    /// @param document  outlives the dialog
    /// @param finder    empty: there are no records to ask
    EarlierDivesDialog(SessionDocument& document, const StaffId& member, DiveFinder finder,
                       QWidget* parent = nullptr);
    ~EarlierDivesDialog() override;
    void accept() override;

protected:
    void changeEvent(QEvent* event) override;

private:
    QWidget* build_table();
    QWidget* build_buttons();
    QWidget* build_message();
    QWidget* build_ascents();
    [[nodiscard]] QString name() const;
    [[nodiscard]] EarlierDive suggested() const;
    /// The session with what the dialog holds.
    [[nodiscard]] Session changed() const;
    /// What is wrong with that; empty when nothing is. Marks the cell.
    QString judge();
    void add();
    void remove();
    void take_from_records();
    void refresh();
    void say(const QString& text, bool wrong);

    SessionDocument& document_;
    StaffId member_;
    DiveFinder finder_;
    EarlierDivesModel* model_;
    QStackedWidget* stack_ = nullptr;
    EditTable* table_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* take_ = nullptr;
    CountBox* ascents_ = nullptr;
    QLabel* message_icon_ = nullptr;
    QLabel* message_ = nullptr;
    QModelIndex wrong_;
};

}  // namespace leadline
