// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QBoxLayout;
class QCheckBox;
class QLabel;
class QPushButton;
class QTableView;

namespace leadline {

class ProfileModel;
class ProfileView;
class QuantityBox;
class SessionDocument;

/// The dive as drawing and as table, and the four numbers that draw a plain one.
class ProfilePanel : public QWidget {
    Q_OBJECT
public:
    explicit ProfilePanel(SessionDocument& document, QWidget* parent = nullptr);
    ~ProfilePanel() override;

    /// Puts the keyboard into the drawing.
    void focus_drawing();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QWidget* quick_row();
    [[nodiscard]] QWidget* corner_table();
    void refresh();
    void draw_plain_dive();
    void quick_number_changed();
    void select_row(int corner);
    void show_refusal(const QString& message);
    void update_buttons();

    SessionDocument& document_;
    ProfileView* view_;
    ProfileModel* model_;
    QBoxLayout* side_by_side_;
    QBoxLayout* quick_ = nullptr;
    QTableView* table_;
    QPushButton* add_;
    QPushButton* remove_;
    QCheckBox* follow_;
    QuantityBox* deepest_;
    QuantityBox* skills_depth_;
    QuantityBox* skills_;
    QuantityBox* tour_;
    QPushButton* draw_;
    QLabel* by_hand_;
    QLabel* refusal_;
    QLabel* refusal_icon_;
};

}  // namespace leadline
