// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "ui/site/profile_edit.h"
#include "ui/site/profile_scene.h"

namespace leadline {

class SessionDocument;

/// The dive as a drawing: depth over time, with corners that can be dragged or moved by the
/// keyboard (Tab from corner to corner, arrows, Insert, Delete; Shift for small steps). A leg
/// between two inner corners can be dragged up and down as a whole; a double click adds a corner.
class ProfileView : public QWidget {
    Q_OBJECT
public:
    explicit ProfileView(SessionDocument& document, QWidget* parent = nullptr);

    [[nodiscard]] int selected_corner() const { return selected_; }
    /// Selects a corner; -1 or one that is not there: none.
    void select_corner(int index);
    [[nodiscard]] LaterCorners later_corners() const { return later_; }
    void set_later_corners(LaterCorners later) { later_ = later; }
    void add_corner_after_selected();
    void remove_selected_corner();
    [[nodiscard]] const ProfileScene& scene() const { return scene_; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void corner_selected(int index);

protected:
    bool event(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    /// What is being pulled, since where and from what.
    struct Drag {
        enum class What { corner, leg } what = What::corner;
        std::size_t index = 0;
        QPointF pressed;
        Profile before;
        QString merge_key;
        bool time_moves = false;   ///< the pointer has left the dead zone along this axis
        bool depth_moves = false;
    };

    void refresh();
    void lay_out();
    [[nodiscard]] int corner_near(const QPointF& at) const;
    [[nodiscard]] int leg_near(const QPointF& at) const;
    void drag_to(const QPointF& at, bool fine);
    void cancel_drag();
    void step_selected(int time_steps, int depth_steps, bool fine);
    bool commit(const QString& what, const Profile& profile, const QString& merge_key = {});
    void update_cursor(const QPointF& at);
    [[nodiscard]] QString reading_of(Minutes time, Depth depth) const;
    void describe();
    [[nodiscard]] QString next_key(const char* stem);

    SessionDocument& document_;
    ProfileScene scene_;
    LaterCorners later_ = LaterCorners::follow;
    int selected_ = -1;
    std::optional<QPointF> pointer_;
    std::optional<Drag> drag_;
    QString keys_merge_;  ///< one undo step for the arrow presses on one corner
    int serial_ = 0;
};

}  // namespace leadline
