// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QHeaderView>
#include <QLabel>
#include <QSet>
#include <QStringList>
#include <QTabBar>
#include <QWidget>

namespace leadline::testing {

/// Finds texts in sight that have less room than they need.
class CutOffTexts {
public:
    /// A widget and all in it that is in sight.
    void judge_all(const QWidget& root) {
        judge(root);
        for (const QWidget* widget : root.findChildren<QWidget*>()) {
            if (widget->isVisible()) judge(*widget);
        }
    }
    [[nodiscard]] QStringList found() const {
        QStringList lines(found_.begin(), found_.end());
        lines.sort();
        return lines;
    }

    void judge(const QWidget& widget) {
        if (const auto* label = qobject_cast<const QLabel*>(&widget);
            label != nullptr && !label->text().isEmpty()) {
            const int needed = label->wordWrap() ? label->heightForWidth(label->width())
                                                 : label->sizeHint().height();
            if (label->height() + 1 < needed) {
                note(widget, label->text(),
                     QStringLiteral("needs %1 px of height, has %2")
                         .arg(needed)
                         .arg(label->height()));
            }
            if (!label->wordWrap() && label->width() + 1 < label->minimumSizeHint().width()) {
                note(widget, label->text(),
                     QStringLiteral("needs %1 px, has %2")
                         .arg(label->minimumSizeHint().width())
                         .arg(label->width()));
            }
        }
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget);
            button != nullptr && !button->text().isEmpty()) {
            const int needed =
                button->fontMetrics().size(Qt::TextShowMnemonic, button->text()).width();
            if (button->width() < needed) {
                note(widget, button->text(),
                     QStringLiteral("needs %1 px, has %2").arg(needed).arg(button->width()));
            }
        }
        if (const auto* header = qobject_cast<const QHeaderView*>(&widget);
            header != nullptr && header->orientation() == Qt::Horizontal) {
            for (int section = 0; section < header->count(); ++section) {
                if (header->isSectionHidden(section)) continue;
                const QString text = header->model()
                                         ->headerData(section, Qt::Horizontal, Qt::DisplayRole)
                                         .toString();
                const int needed = header->fontMetrics().size(0, text).width();
                if (header->sectionSize(section) < needed) {
                    note(widget, text,
                         QStringLiteral("needs %1 px, has %2")
                             .arg(needed)
                             .arg(header->sectionSize(section)));
                }
            }
        }
        if (const auto* bar = qobject_cast<const QTabBar*>(&widget)) {
            for (int i = 0; i < bar->count(); ++i) {
                if (!bar->rect().contains(bar->tabRect(i))) {
                    note(widget, bar->tabText(i), QStringLiteral("out of sight"));
                }
            }
        }
        judge_place(widget);
    }

private:
    void note(const QWidget& widget, const QString& text, const QString& why) {
        found_.insert(QString::fromUtf8(widget.metaObject()->className()) + u' ' +
                      widget.objectName() + QStringLiteral(": \"") + text.left(60) +
                      QStringLiteral("\" ") + why);
    }
    /// Whether a widget that cannot be scrolled to stands outside of its parent.
    void judge_place(const QWidget& widget) {
        const QWidget* parent = widget.parentWidget();
        if (parent == nullptr || widget.isWindow() ||
            qobject_cast<const QLabel*>(&widget) == nullptr)
            return;
        if (widget.geometry().right() > parent->width()) {
            note(widget, {},
                 QStringLiteral("reaches %1 px out of its parent")
                     .arg(widget.geometry().right() - parent->width()));
        }
    }

    QSet<QString> found_;
};

}  // namespace leadline::testing
