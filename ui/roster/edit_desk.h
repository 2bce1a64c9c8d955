// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <functional>

#include "ui/document/session_document.h"

namespace leadline {

/// Where the editor's pages hand in what was typed: knows which guest is meant, and turns a refusal
/// into words that name the field.
class EditDesk : public QObject {
    Q_OBJECT
public:
    /// @param document  outlives the desk
    explicit EditDesk(SessionDocument& document, QObject* parent = nullptr);

    [[nodiscard]] SessionDocument& document() const { return document_; }
    void set_guest(const GuestId& guest) { guest_ = guest; }
    [[nodiscard]] const GuestId& guest_id() const { return guest_; }
    /// The guest shown; nullptr when none is.
    [[nodiscard]] const Guest* guest() const;

    /// Changes the guest at once, as one undoable step.
    /// @param field  the field's name as the window has it, "Birth date"
    /// @param key    names the field for merging: "birth_date"
    /// @returns empty, or why the change was refused; then nothing has changed
    QString change(const QString& field, const char* key,
                   const std::function<void(Guest&)>& change);
    /// Changes anything in the session.
    /// @param field  as above, put in front of a refusal
    QString change_session(const QString& what, const QString& field, const QString& merge_key,
                           const std::function<void(Session&)>& change);

private:
    SessionDocument& document_;
    GuestId guest_;
    bool busy_ = false;
};

}  // namespace leadline
