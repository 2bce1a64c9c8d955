// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/language_menu.h"

#include <QAction>
#include <QActionGroup>
#include <QCoreApplication>
#include <QMenu>

#include "ui/shell/record_keeper.h"
#include "ui/words/window_language.h"

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class LanguageMenuTexts {
    Q_DECLARE_TR_FUNCTIONS(LanguageMenu)
};

}  // namespace

void add_language_menu(QMenu& menu, RecordKeeper& keeper, std::function<void(const QString&)> say) {
    QMenu* languages = menu.addMenu(LanguageMenuTexts::tr("&Language"));
    languages->setObjectName(QStringLiteral("window_language_menu"));
    auto* group = new QActionGroup(languages);
    const QString name = QString::fromLatin1(language_setting);
    // Other records may hold another choice.
    const auto read = [languages, group, name, &keeper] {
        languages->setEnabled(keeper.has_database());
        const QString chosen = keeper.setting(name).value_or(QString());
        for (QAction* action : group->actions()) {
            action->setChecked(action->data().toString() == chosen);
        }
    };
    const auto add = [&](const QString& tag, const QString& text) {
        QAction* action = languages->addAction(text);
        action->setObjectName(QStringLiteral("action_language_") + tag);
        action->setCheckable(true);
        action->setData(tag);
        group->addAction(action);
        QObject::connect(action, &QAction::triggered, languages, [=, &keeper] {
            if (keeper.put_setting(name, tag)) {
                say(LanguageMenuTexts::tr(
                    "Kept. The language changes when Leadline is started again."));
            } else {
                // The tick goes back to what is kept; the keeper has said why.
                read();
            }
        });
    };
    add({}, LanguageMenuTexts::tr("That of the &computer"));
    languages->addSeparator();
    for (const WindowLanguage& language : window_languages()) {
        add(language.tag, language.is_draft
                              ? LanguageMenuTexts::tr("%1 (draft)", "a language nobody has checked")
                                    .arg(language.own_name)
                              : language.own_name);
    }
    read();
    QObject::connect(&keeper, &RecordKeeper::database_changed, languages, read);
}

}  // namespace leadline
