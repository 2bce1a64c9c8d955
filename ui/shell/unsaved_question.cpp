// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/unsaved_question.h"

#include <QCoreApplication>
#include <QMessageBox>
#include <QPushButton>
#include <array>
#include <utility>

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class UnsavedTexts {
    Q_DECLARE_TR_FUNCTIONS(UnsavedQuestion)
};

}  // namespace

UnsavedAnswer ask_about_unsaved(const QString& reason, QWidget* parent) {
    QMessageBox box(QMessageBox::Warning, UnsavedTexts::tr("Not saved"),
                    UnsavedTexts::tr("The last changes to this session are not saved."),
                    QMessageBox::NoButton, parent);
    box.setObjectName(QStringLiteral("unsaved_question"));
    box.setInformativeText(reason);
    const auto add = [&box](const QString& text, const char* name, QMessageBox::ButtonRole role) {
        QPushButton* button = box.addButton(text, role);
        button->setObjectName(QString::fromLatin1(name));
        return button;
    };
    const std::array<std::pair<const QAbstractButton*, UnsavedAnswer>, 4> answers{{
        {add(UnsavedTexts::tr("&Try again"), "unsaved_try", QMessageBox::AcceptRole),
         UnsavedAnswer::try_again},
        {add(UnsavedTexts::tr("&Write to a file…"), "unsaved_write", QMessageBox::ActionRole),
         UnsavedAnswer::write_file},
        {add(UnsavedTexts::tr("&Lose them"), "unsaved_lose", QMessageBox::DestructiveRole),
         UnsavedAnswer::give_up},
        {add(UnsavedTexts::tr("&Go back"), "unsaved_stay", QMessageBox::RejectRole),
         UnsavedAnswer::stay},
    }};
    box.setDefaultButton(box.findChild<QPushButton*>(QStringLiteral("unsaved_try")));
    box.setEscapeButton(box.findChild<QPushButton*>(QStringLiteral("unsaved_stay")));
    box.exec();
    for (const auto& [button, answer] : answers) {
        if (box.clickedButton() == button) return answer;
    }
    return UnsavedAnswer::stay;
}

}  // namespace leadline
