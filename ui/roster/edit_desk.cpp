// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/edit_desk.h"

#include <QScopedValueRollback>

#include "ui/words/error_words.h"

namespace leadline {

EditDesk::EditDesk(SessionDocument& document, QObject* parent)
    : QObject(parent), document_(document) {}

const Guest* EditDesk::guest() const { return find_guest(document_.session(), guest_); }

QString EditDesk::change(const QString& field, const char* key,
                         const std::function<void(Guest&)>& change) {
    const GuestId id = guest_;
    if (guest() == nullptr) return {};
    return change_session(tr("Change %1").arg(field.toLower()), field,
                          QString::fromStdString(id.text) + u'/' + QLatin1String(key),
                          [&](Session& session) {
                              if (Guest* guest = find_guest(session, id)) change(*guest);
                          });
}

QString EditDesk::change_session(const QString& what, const QString& field,
                                 const QString& merge_key,
                                 const std::function<void(Session&)>& change) {
    // A field that loses the focus while the window takes over an edit must not start another edit
    // inside it.
    if (busy_) return {};
    const QScopedValueRollback busy(busy_, true);
    const Result<Done> done = document_.edit(what, change, merge_key);
    if (done) return {};
    Error error = done.error();
    error.place = field.toStdString();
    return words(error);
}

}  // namespace leadline
