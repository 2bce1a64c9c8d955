// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/language_button.h"

#include <QAction>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QStringList>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <algorithm>

#include "ui/widgets/plain_tip.h"
#include "ui/words/name_words.h"

namespace leadline {

LanguageButton::LanguageButton(QWidget* parent) : QToolButton(parent) {
    setPopupMode(QToolButton::InstantPopup);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("language_menu"));
    menu->installEventFilter(this);
    setMenu(menu);
    for (const QString& tag : common_languages()) add(tag.toStdString());
    show_languages({});
}

QAction* LanguageButton::add(const std::string& tag) {
    QAction* action = menu()->addAction(language_name(tag));
    action->setCheckable(true);
    action->setData(QString::fromStdString(tag));
    connect(action, &QAction::triggered, this, [this, action] { toggle(action); });
    return action;
}

void LanguageButton::show_languages(const std::vector<std::string>& tags) {
    tags_ = tags;
    for (const std::string& tag : tags) {
        const auto actions = menu()->actions();
        const bool offered =
            std::any_of(actions.begin(), actions.end(), [&](const QAction* action) {
                return action->data().toString().toStdString() == tag;
            });
        if (!offered) add(tag);
    }
    for (QAction* action : menu()->actions()) {
        const std::string tag = action->data().toString().toStdString();
        action->setChecked(std::find(tags.begin(), tags.end(), tag) != tags.end());
    }
    show_text();
}

void LanguageButton::show_text() {
    QStringList names;
    for (const std::string& tag : tags_) names << language_name(tag);
    setText(names.isEmpty() ? tr("None yet") : names.join(QStringLiteral(", ")));
    setToolTip(plain_tip(text()));
}

void LanguageButton::toggle(QAction* action) {
    const std::string tag = action->data().toString().toStdString();
    std::vector<std::string> wanted = tags_;
    std::erase(wanted, tag);
    if (action->isChecked()) wanted.push_back(tag);
    Q_EMIT edited(wanted);
}

bool LanguageButton::eventFilter(QObject* watched, QEvent* event) {
    if (watched == menu()) {
        QAction* action = menu()->activeAction();
        const bool released = event->type() == QEvent::MouseButtonRelease;
        const bool space = event->type() == QEvent::KeyPress &&
                           static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space;
        if (action != nullptr && (released || space)) {
            action->trigger();
            return true;
        }
    }
    return QToolButton::eventFilter(watched, event);
}

void LanguageButton::paintEvent(QPaintEvent*) {
    // Drawn as a list of choices, which it is; a long list of languages is cut to fit.
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    option.initFrom(this);
    option.subControls = QStyle::SC_ComboBoxFrame | QStyle::SC_ComboBoxArrow;
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    const QRect room = style()->subControlRect(QStyle::CC_ComboBox, &option,
                                               QStyle::SC_ComboBoxEditField, nullptr);
    constexpr int beside = 8;
    option.currentText = fontMetrics().elidedText(text(), Qt::ElideRight, room.width() - beside);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
}

QSize LanguageButton::sizeHint() const {
    constexpr int letters = 14;
    constexpr int above = 8;
    return {letters * fontMetrics().averageCharWidth(), fontMetrics().height() + above};
}

}  // namespace leadline
