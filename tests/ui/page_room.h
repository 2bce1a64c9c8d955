// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <QTabWidget>
#include <algorithm>
#include <vector>

namespace leadline::testing {

/// The areas in sight on the page of a tab that give their content what it needs and scroll the
/// rest: their own least size says nothing of what is in them.
inline std::vector<const QScrollArea*> areas_in_sight(const QTabWidget& tabs) {
    std::vector<const QScrollArea*> areas;
    const auto take = [&](QWidget* widget) {
        const auto* area = qobject_cast<QScrollArea*>(widget);
        if (area == nullptr || !area->isVisible() || !area->widgetResizable()) return;
        areas.push_back(area);
    };
    take(tabs.currentWidget());
    for (QScrollArea* area : tabs.currentWidget()->findChildren<QScrollArea*>()) take(area);
    return areas;
}

/// What the content of an area needs at least.
inline QSize needed_by(const QScrollArea& area) {
    return area.widget()->minimumSizeHint().expandedTo(area.widget()->minimumSize());
}

/// Whether all of a rectangle in a widget can be seen: no area around it hides a part.
inline bool is_in_sight(const QWidget& widget, const QRect& rectangle) {
    QRect rest = rectangle;
    const QWidget* at = &widget;
    while (true) {
        if (!at->rect().contains(rest)) return false;
        if (at->isWindow() || at->parentWidget() == nullptr) return at->isVisible();
        rest.translate(at->pos());
        at = at->parentWidget();
    }
}

}  // namespace leadline::testing
