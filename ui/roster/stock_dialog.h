// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <QModelIndex>
#include <vector>

#include "core/planning/session.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace leadline {

class CountBox;
class EditTable;
class SessionDocument;
class SuitStockModel;

/// What the centre has to hand out: cylinders by kind, suits by label, sizes of lead pieces. Taken
/// over together, as one undoable step, with OK.
class StockDialog : public QDialog {
    Q_OBJECT
public:
    /// @param document  outlives the dialog
    explicit StockDialog(SessionDocument& document, QWidget* parent = nullptr);
    ~StockDialog() override;
    void accept() override;

private:
    QWidget* build_cylinders();
    QWidget* build_suits();
    QWidget* build_lead();
    [[nodiscard]] Stock stock() const;
    QString judge();
    void refresh();
    void say(const QString& text);
    void show_lead();
    void add_suit();
    void remove_suits();

    struct Kind {
        CylinderTypeId type;
        CountBox* count = nullptr;
    };
    SessionDocument& document_;
    std::vector<Kind> kinds_;
    SuitStockModel* suits_;
    EditTable* table_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* add_issued_ = nullptr;
    QLineEdit* lead_ = nullptr;
    QLabel* lead_words_ = nullptr;
    QLabel* message_icon_ = nullptr;
    QLabel* message_ = nullptr;
    QModelIndex wrong_;  ///< a suit's cell
    QString lead_shown_;  ///< as it stood when the dialog opened
};

}  // namespace leadline
