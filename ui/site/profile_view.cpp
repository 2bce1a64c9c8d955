// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_view.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/physics/water.h"
#include "ui/document/session_document.h"
#include "ui/site/profile_edit.h"
#include "ui/document/place_water.h"
#include "ui/site/profile_painter.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr double grab_radius = 12.0;
constexpr double dead_zone = 4.0;

double distance(const QPointF& a, const QPointF& b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

/// Distance from a point to a stretch of line.
double distance(const QPointF& at, const QLineF& line) {
    const QPointF along = line.p2() - line.p1();
    const double square = along.x() * along.x() + along.y() * along.y();
    if (square <= 0.0) return distance(at, line.p1());
    const QPointF from = at - line.p1();
    const double share =
        std::clamp((from.x() * along.x() + from.y() * along.y()) / square, 0.0, 1.0);
    return distance(at, line.pointAt(share));
}

}  // namespace

ProfileView::ProfileView(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
    setObjectName(QStringLiteral("profile_view"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Dive profile"));
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setSizePolicy(policy);
    connect(&document_, &SessionDocument::changed, this, &ProfileView::refresh);
    connect(&document_, &SessionDocument::opened, this, [this] {
        drag_.reset();
        select_corner(-1);
    });
    refresh();
}

// The page around it scrolls by this height: enough to draw in, and it takes what more there is.
QSize ProfileView::sizeHint() const { return {720, 17 * fontMetrics().height()}; }

QSize ProfileView::minimumSizeHint() const {
    const int line = fontMetrics().height();
    return {18 * line, 13 * line};
}

void ProfileView::refresh() {
    const int count = static_cast<int>(document_.session().profile.points.size());
    if (selected_ >= count) select_corner(-1);
    lay_out();
    describe();
}

void ProfileView::lay_out() {
    // While something is pulled the scale stands still; otherwise it would run from the pointer.
    const std::optional<ProfileScale> kept =
        drag_ ? std::optional<ProfileScale>(scene_.scale) : std::nullopt;
    scene_ = profile_scene(document_, QRectF(rect()), QFontMetricsF(font()), kept);
    update();
}

void ProfileView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    lay_out();
}

void ProfileView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        lay_out();
    }
}

bool ProfileView::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = dynamic_cast<QHelpEvent*>(event);
        const bool corner = help != nullptr && corner_near(QPointF(help->pos())) > 0;
        setToolTip(corner ? tr("Drag this corner, with Shift in small steps. With the keyboard: "
                               "Tab to the next corner, arrows, Insert, Delete.")
                          : QString());
    }
    if (event->type() == QEvent::ShortcutOverride && drag_) {
        const auto* key = dynamic_cast<QKeyEvent*>(event);
        if (key != nullptr && key->key() == Qt::Key_Escape) event->accept();
    }
    return QWidget::event(event);
}

void ProfileView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    ProfilePointer pointer;
    pointer.selected = selected_;
    pointer.focused = hasFocus();
    const auto& points = scene_.profile.points;
    if (pointer_ && !drag_) {
        pointer.hovered = corner_near(*pointer_);
        const Minutes time = scene_.scale.time_at(pointer_->x());
        if (scene_.scale.plot.contains(*pointer_) && time <= duration(scene_.profile)) {
            const Depth depth = depth_at(scene_.profile, time);
            pointer.reading_at = QPointF(scene_.scale.x(time), scene_.scale.y(depth));
            pointer.reading = reading_of(time, depth);
        }
    } else if (selected_ > 0 && (drag_ || hasFocus())) {
        const ProfilePoint& point = points[static_cast<std::size_t>(selected_)];
        pointer.reading_at = scene_.scale.at(point);
        pointer.reading = reading_of(point.time, point.depth);
    }
    paint_profile(painter, scene_, pointer, document_.units(), palette());
}

QString ProfileView::reading_of(Minutes time, Depth depth) const {
    const Result<WaterColumn> water = place_water(document_);
    const double tenths = std::round(time.value() * 10.0) / 10.0;
    const int decimals = tenths == std::round(tenths) ? 0 : 1;
    QString reading = tr("%1 min   %2")
                          .arg(locale().toString(tenths, 'f', decimals),
                               text(depth, document_.units()));
    if (water) {
        reading += tr("   %1 absolute").arg(text(water->absolute_pressure(depth),
                                                 document_.units()));
    }
    return reading;
}

void ProfileView::describe() {
    QString words = tr("%1, deepest %2. Tab goes from corner to corner; arrows move it, Insert "
                       "adds one, Delete removes it. The table beside it holds the same numbers.")
                        .arg(text(duration(scene_.profile)),
                             text(deepest(scene_.profile), document_.units()));
    if (selected_ > 0) {
        const ProfilePoint& point = scene_.profile.points[static_cast<std::size_t>(selected_)];
        words = tr("Corner %1 of %2, end of %3: %4")
                    .arg(selected_)
                    .arg(scene_.profile.points.size() - 1)
                    .arg(label(point.phase), reading_of(point.time, point.depth));
    }
    if (words == accessibleDescription()) return;
    setAccessibleDescription(words);
}

void ProfileView::select_corner(int index) {
    const int count = static_cast<int>(document_.session().profile.points.size());
    const int wanted = index > 0 && index < count ? index : -1;
    if (wanted == selected_) return;
    selected_ = wanted;
    keys_merge_.clear();
    describe();
    update();
    Q_EMIT corner_selected(selected_);
}

QString ProfileView::next_key(const char* stem) {
    ++serial_;
    return QStringLiteral("profile/%1-%2").arg(QLatin1String(stem)).arg(serial_);
}

bool ProfileView::commit(const QString& what, const Profile& profile, const QString& merge_key) {
    return document_
        .edit(what, [&](Session& session) { session.profile = profile; }, merge_key)
        .has_value();
}

int ProfileView::corner_near(const QPointF& at) const {
    int found = -1;
    double nearest = grab_radius;
    for (std::size_t i = 1; i < scene_.profile.points.size(); ++i) {
        const double away = distance(at, scene_.scale.at(scene_.profile.points[i]));
        if (away <= nearest) {
            nearest = away;
            found = static_cast<int>(i);
        }
    }
    return found;
}

int ProfileView::leg_near(const QPointF& at) const {
    constexpr double close = 7.0;
    for (std::size_t i = 0; i < scene_.legs.size(); ++i) {
        if (distance(at, scene_.legs[i].line) <= close) return static_cast<int>(i) + 1;
    }
    return -1;
}

void ProfileView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
    const int corner = corner_near(event->position());
    const int leg = corner > 0 ? -1 : leg_near(event->position());
    select_corner(corner);
    if (corner <= 0 && leg <= 0) return;
    if (leg > 0 && !leg_can_move(scene_.profile, static_cast<std::size_t>(leg))) return;
    Drag drag;
    drag.what = corner > 0 ? Drag::What::corner : Drag::What::leg;
    drag.index = static_cast<std::size_t>(corner > 0 ? corner : leg);
    drag.pressed = event->position();
    drag.before = scene_.profile;
    drag.merge_key = next_key("drag");
    drag_ = drag;
    update();
}

void ProfileView::mouseMoveEvent(QMouseEvent* event) {
    pointer_ = event->position();
    if (drag_ && (event->buttons() & Qt::LeftButton) != 0) {
        drag_to(event->position(), (event->modifiers() & Qt::ShiftModifier) != 0);
    } else {
        update_cursor(event->position());
    }
    update();
}

void ProfileView::drag_to(const QPointF& at, bool fine) {
    Drag& drag = *drag_;
    const QPointF way = at - drag.pressed;
    // A hand that pulls a corner down does not mean to change its time by a pixel's worth.
    drag.time_moves = drag.time_moves || std::abs(way.x()) > dead_zone;
    drag.depth_moves = drag.depth_moves || std::abs(way.y()) > dead_zone;
    const Snap snap = snap_for(document_.units(), fine);
    const ProfilePoint& was = drag.before.points[drag.index];
    const QPointF start = scene_.scale.at(was);
    const double depth =
        to_grid(scene_.scale.depth_at(start.y() + way.y()).meters().value(), snap.depth.value());
    if (drag.what == Drag::What::leg) {
        if (!drag.depth_moves) return;
        const Meters by(depth - was.depth.meters().value());
        commit(tr("Move a leg of the profile"),
               with_leg_lowered(drag.before, drag.index, by), drag.merge_key);
        return;
    }
    if (!drag.time_moves && !drag.depth_moves) return;
    const double time =
        to_grid(scene_.scale.time_at(start.x() + way.x()).value(), snap.time.value());
    commit(tr("Move a corner of the profile"),
           with_corner_at(drag.before, drag.index, drag.time_moves ? Minutes(time) : was.time,
                          drag.depth_moves ? Depth(Meters(depth)) : was.depth, later_),
           drag.merge_key);
}

void ProfileView::cancel_drag() {
    const Drag drag = *drag_;
    commit(tr("Move a corner of the profile"), drag.before, drag.merge_key);
    drag_.reset();
    lay_out();
}

void ProfileView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && drag_) {
        drag_.reset();
        lay_out();
    }
    QWidget::mouseReleaseEvent(event);
}

void ProfileView::mouseDoubleClickEvent(QMouseEvent* event) {
    drag_.reset();
    if (corner_near(event->position()) > 0 || leg_near(event->position()) < 0) return;
    Profile profile = scene_.profile;
    const auto added = add_corner_at(profile, scene_.scale.time_at(event->position().x()),
                                     snap_for(document_.units(), false));
    if (added && commit(tr("Add a corner to the profile"), profile)) {
        select_corner(static_cast<int>(*added));
    }
}

void ProfileView::update_cursor(const QPointF& at) {
    if (corner_near(at) > 0) return setCursor(Qt::SizeAllCursor);
    const int leg = leg_near(at);
    if (leg > 0 && leg_can_move(scene_.profile, static_cast<std::size_t>(leg))) {
        return setCursor(Qt::SizeVerCursor);
    }
    unsetCursor();
}

void ProfileView::leaveEvent(QEvent* event) {
    pointer_.reset();
    update();
    QWidget::leaveEvent(event);
}

void ProfileView::add_corner_after_selected() {
    const int last = static_cast<int>(scene_.profile.points.size()) - 1;
    // The leg after the selected corner; after the last corner there is none, so the one before.
    const int leg = selected_ < 0 ? 1 : std::min(selected_ + 1, last);
    Profile profile = scene_.profile;
    const auto added = add_corner(profile, static_cast<std::size_t>(leg));
    if (added && commit(tr("Add a corner to the profile"), profile)) {
        select_corner(static_cast<int>(*added));
    }
}

void ProfileView::remove_selected_corner() {
    if (selected_ < 0) return;
    const auto index = static_cast<std::size_t>(selected_);
    if (!corner_can_go(scene_.profile, index)) return;
    const Profile shorter = without_corner(scene_.profile, index);
    commit(tr("Remove a corner of the profile"), shorter);
}

void ProfileView::step_selected(int time_steps, int depth_steps, bool fine) {
    if (keys_merge_.isEmpty()) keys_merge_ = next_key("keys");
    commit(tr("Move a corner of the profile"),
           with_corner_stepped(scene_.profile, static_cast<std::size_t>(selected_), time_steps,
                               depth_steps, snap_for(document_.units(), fine), later_),
           keys_merge_);
}

void ProfileView::keyPressEvent(QKeyEvent* event) {
    const bool fine = (event->modifiers() & Qt::ShiftModifier) != 0;
    if (event->key() == Qt::Key_Escape && drag_) return cancel_drag();
    if (event->key() == Qt::Key_Insert) return add_corner_after_selected();
    if (selected_ > 0) {
        switch (event->key()) {
            case Qt::Key_Left: return step_selected(-1, 0, fine);
            case Qt::Key_Right: return step_selected(1, 0, fine);
            case Qt::Key_Up: return step_selected(0, -1, fine);
            case Qt::Key_Down: return step_selected(0, 1, fine);
            case Qt::Key_Delete:
            case Qt::Key_Backspace: return remove_selected_corner();
            default: break;
        }
    }
    QWidget::keyPressEvent(event);
}

bool ProfileView::focusNextPrevChild(bool next) {
    const int last = static_cast<int>(scene_.profile.points.size()) - 1;
    if (next && selected_ < last) {
        select_corner(selected_ < 0 ? 1 : selected_ + 1);
        return true;
    }
    if (!next && selected_ > 1) {
        select_corner(selected_ - 1);
        return true;
    }
    return QWidget::focusNextPrevChild(next);
}

void ProfileView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    if (event->reason() == Qt::TabFocusReason) select_corner(1);
    if (event->reason() == Qt::BacktabFocusReason) {
        select_corner(static_cast<int>(scene_.profile.points.size()) - 1);
    }
    update();
}

void ProfileView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    keys_merge_.clear();
    update();
}

}  // namespace leadline
