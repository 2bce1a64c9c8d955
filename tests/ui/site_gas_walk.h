// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

namespace leadline::testing {

/// Whether a widget is a control of its own that the keyboard reaches: not a part of a box, which
/// speaks through the box, and not its list, which is a window of its own.
inline bool is_control(const QWidget& widget, const QWidget& root) {
    return (widget.focusPolicy() & Qt::TabFocus) != 0 && widget.window() == root.window() &&
           qobject_cast<QAbstractSpinBox*>(widget.parentWidget()) == nullptr &&
           qobject_cast<QComboBox*>(widget.parentWidget()) == nullptr;
}

/// Controls that the keyboard reaches and that say nothing to a screen reader, by object name.
inline QStringList nameless_controls(const QWidget& root) {
    QStringList nameless;
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (!is_control(*widget, root)) continue;
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
        if (face == nullptr || face->text(QAccessible::Name).trimmed().isEmpty()) {
            nameless << QStringLiteral("%1 (%2)").arg(
                widget->objectName(), QString::fromLatin1(widget->metaObject()->className()));
        }
    }
    return nameless;
}

/// Controls without an object name, which no test or script could find.
inline QStringList unnamed_controls(const QWidget& root) {
    QStringList unnamed;
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (!is_control(*widget, root) || !widget->objectName().isEmpty()) continue;
        unnamed << QString::fromLatin1(widget->metaObject()->className());
    }
    return unnamed;
}

/// Object names of the controls in the order in which Tab reaches them, from one on.
inline QStringList tab_order(const QWidget& root, QWidget& first) {
    QStringList names;
    QWidget* widget = &first;
    do {
        if (root.isAncestorOf(widget) && is_control(*widget, root)) names << widget->objectName();
        widget = widget->nextInFocusChain();
    } while (widget != &first);
    return names;
}

}  // namespace leadline::testing
