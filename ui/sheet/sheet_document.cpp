// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/sheet_document.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/guest_words/guest_language.h"
#include "ui/sheet/sheet_words.h"

namespace leadline {
namespace {

class SheetNames {
    Q_DECLARE_TR_FUNCTIONS(SheetNames)
};

}  // namespace

QString sheet_name(SheetKind kind) {
    switch (kind) {
        case SheetKind::cards:
            return SheetNames::tr("Cards");
        case SheetKind::beach:
            return SheetNames::tr("Beach sheet");
        case SheetKind::skills:
            return SheetNames::tr("Skills");
        case SheetKind::kit:
            return SheetNames::tr("Kit list");
        case SheetKind::emergency:
            return SheetNames::tr("Emergency plan");
        case SheetKind::pictures:
            return SheetNames::tr("Pictures");
    }
    return {};
}

PdfInfo sheet_document(const SheetChoice& choice, const Session& session) {
    PdfInfo info;
    info.title = one_line(session.title);
    const QString sheet = sheet_name(choice.kind);
    info.title = info.title.isEmpty()
                     ? sheet
                     : SheetNames::tr("%1: %2", "session: sheet").arg(info.title, sheet);
    const StaffMember* leader = find_staff(session, session.leader);
    if (leader != nullptr) info.author = one_line(leader->name);
    if (choice.kind == SheetKind::pictures) {
        info.languages << QString::fromStdString(GuestTongue::of(choice.language).language().tag);
        const GuestLanguage* second = find_guest_language(choice.second_language);
        if (second != nullptr) info.languages << QString::fromStdString(second->tag);
        info.languages.removeDuplicates();
    } else {
        const bool plain = QLocale().language() == QLocale::C;
        info.languages << (plain ? QStringLiteral("en") : QLocale().bcp47Name());
    }
    return info;
}

}  // namespace leadline
