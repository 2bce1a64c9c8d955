// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "core/planning/session.h"

class QComboBox;
class QLabel;

namespace leadline {

class SessionDocument;

/// In which languages and units the cards of the selected guests are. Every change is one step that
/// can be undone, for all of them at once.
class CardEditor : public QWidget {
    Q_OBJECT
public:
    explicit CardEditor(SessionDocument& document, QWidget* parent = nullptr);

    /// Whose cards are edited; guests that are gone are passed over.
    void show_guests(const std::vector<GuestId>& guests);

private:
    void refresh();
    [[nodiscard]] std::vector<const Guest*> guests() const;
    void change(const QString& what, const std::function<void(Guest&)>& edit);

    SessionDocument& document_;
    std::vector<GuestId> ids_;
    QLabel* who_;
    QComboBox* language_;
    QComboBox* second_;
    QComboBox* units_;
    bool filling_ = false;
};

/// Fills a list with the guests' languages by their own names, drafts marked; further tags, for which
/// there is no translation, stand at the end and say so.
void fill_languages(QComboBox& box, const std::vector<std::string>& further);

}  // namespace leadline
