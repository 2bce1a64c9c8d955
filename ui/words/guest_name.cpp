// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/guest_name.h"

#include <QCoreApplication>

namespace leadline {
namespace {

// The name in core/records/person_removal.h once more, where lupdate sees it. A test holds the two
// together.
constexpr const char* removed_guest = QT_TRANSLATE_NOOP("GuestNames", "Guest removed");

}  // namespace

QString guest_name(const std::string& name) {
    if (name != removed_guest) return QString::fromStdString(name);
    return QCoreApplication::translate("GuestNames", removed_guest);
}

}  // namespace leadline
