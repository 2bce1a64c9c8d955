// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/known_guest_list.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QLineEdit>
#include <QStandardItemModel>
#include <algorithm>

#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

constexpr qsizetype least_letters = 2;
constexpr int name_role = Qt::UserRole + 1;

bool is_in(const Session& session, const Guest& person) {
    return std::any_of(session.guests.begin(), session.guests.end(), [&](const Guest& guest) {
        return guest.birth_date && guest.birth_date == person.birth_date &&
               guest.name == person.name;
    });
}

}  // namespace

KnownGuestList::KnownGuestList(QLineEdit& line)
    : QObject(&line),
      line_(line),
      completer_(new QCompleter(this)),
      model_(new QStandardItemModel(this)) {
    completer_->setModel(model_);
    // What fits is for the records to say (without accents, any word of the name), not for the
    // list.
    completer_->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    completer_->setCompletionRole(name_role);
    completer_->setWidget(&line);
    completer_->popup()->setObjectName(QStringLiteral("known_guests"));
    completer_->popup()->setAccessibleName(tr("Persons on record"));
    connect(completer_, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& index) {
                const auto row = static_cast<std::size_t>(index.row());
                if (index.isValid() && row < offered_.size()) Q_EMIT chosen(offered_[row].guest);
            });
}

void KnownGuestList::set_finder(GuestFinder finder) { finder_ = std::move(finder); }

void KnownGuestList::offer(const QString& typed, const Session& session) {
    const QString name = typed.trimmed();
    offered_.clear();
    if (finder_ && name.size() >= least_letters) offered_ = finder_(name);
    std::erase_if(offered_, [&](const KnownGuest& known) { return is_in(session, known.guest); });
    if (offered_.empty()) return close();

    model_->clear();
    for (const KnownGuest& known : offered_) {
        const QString person = QString::fromStdString(known.guest.name);
        const QString born = known.guest.birth_date
                                 ? tr("born %1").arg(spelled(*known.guest.birth_date))
                                 : tr("birth date not known");
        auto* item =
            new QStandardItem(person + QStringLiteral(" · ") + born + QStringLiteral(" · ") +
                              tr("%n sessions", nullptr, static_cast<int>(known.sessions)));
        item->setData(person, name_role);
        item->setEditable(false);
        model_->appendRow(item);
    }
    completer_->complete();
}

void KnownGuestList::close() { completer_->popup()->hide(); }

}  // namespace leadline
