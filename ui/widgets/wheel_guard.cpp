// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/wheel_guard.h"

#include <QEvent>
#include <QObject>
#include <QWidget>

namespace leadline {
namespace {

class WheelGuard : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* box = qobject_cast<QWidget*>(watched);
        if (event->type() != QEvent::Wheel || box == nullptr || box->hasFocus()) return false;
        // Not taken by the box, so that whatever scrolls around it gets the wheel.
        event->ignore();
        return true;
    }
};

}  // namespace

void guard_wheel(QWidget* box) {
    // Else the wheel itself would give the focus.
    box->setFocusPolicy(Qt::StrongFocus);
    box->installEventFilter(new WheelGuard(box));
}

}  // namespace leadline
