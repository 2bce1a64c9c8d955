// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_list.h"

#include "ui/document/session_document.h"
#include "ui/guest_words/typed_text.h"
#include "ui/sheet/card_language.h"
#include "ui/sheet/cards.h"
#include "ui/widgets/theme.h"
#include "ui/words/finding_words.h"
#include "ui/words/guest_name.h"

namespace leadline {
namespace {

constexpr int guest_role = Qt::UserRole + 1;
constexpr int longest_name_listed = 60;

GuestId guest_of(const QListWidgetItem* entry) {
    return GuestId(entry != nullptr ? entry->data(guest_role).toString().toStdString()
                                    : std::string());
}

}  // namespace

CardList::CardList(SessionDocument& document, QWidget* parent)
    : QListWidget(parent), document_(document) {
    setObjectName(QStringLiteral("card_list"));
    setAccessibleName(tr("Guests and their cards"));
    setWordWrap(true);
    setTextElideMode(Qt::ElideRight);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setFrameShape(QFrame::NoFrame);
    setSpacing(2);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    connect(this, &QListWidget::itemChanged, this, &CardList::note_tick);
    connect(&document_, &SessionDocument::opened, this, [this] { left_out_.clear(); });
    connect(&document_, &SessionDocument::changed, this, &CardList::refresh);
    refresh();
}

void CardList::refresh() {
    filling_ = true;
    const Session& session = document_.session();
    const int rows = static_cast<int>(session.guests.size());
    while (count() > rows) delete takeItem(count() - 1);
    while (count() < rows) addItem(new QListWidgetItem);
    for (int row = 0; row < rows; ++row) {
        const Guest& guest = session.guests[static_cast<std::size_t>(row)];
        const std::vector<Finding> stops = blocking_findings(document_.plan(), guest);
        const QString shown_name = guest_name(guest.name);
        QListWidgetItem& entry = *item(row);
        entry.setData(guest_role, QString::fromStdString(guest.id.text));
        entry.setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        entry.setCheckState(left_out_.contains(guest.id) ? Qt::Unchecked : Qt::Checked);
        const QString shown = beginning(shown_name, longest_name_listed);
        const QString language = card_languages_in_brief(guest);
        if (stops.empty()) {
            entry.setText(QString(shown + u'\n' + tr("Ready · %1", "language").arg(language)));
            entry.setIcon(severity_icon(Severity::note, palette()));
        } else {
            const FindingText said = words(stops.front(), session, document_.units());
            entry.setText(QString(shown + u'\n' + tr("Stop: %1").arg(said.what) + u'\n' + language));
            entry.setIcon(severity_icon(Severity::stop, palette()));
        }
        QStringList told{shown_name, card_language_text(guest.language)};
        if (!guest.second_language.empty()) told << card_language_text(guest.second_language);
        entry.setToolTip(told.join(u'\n'));
    }
    if (currentRow() < 0 && count() > 0) setCurrentRow(0);
    filling_ = false;
    Q_EMIT selection_changed();
}

void CardList::note_tick(QListWidgetItem* entry) {
    if (filling_) return;
    const GuestId id = guest_of(entry);
    const bool wanted = entry->checkState() == Qt::Checked;
    const bool changed = wanted ? left_out_.erase(id) > 0 : left_out_.insert(id).second;
    if (changed) Q_EMIT selection_changed();
}

GuestId CardList::current_guest() const { return guest_of(currentItem()); }

std::vector<GuestId> CardList::selected_guests() const {
    std::vector<GuestId> ids;
    for (int row = 0; row < count(); ++row) {
        if (item(row)->isSelected()) ids.push_back(guest_of(item(row)));
    }
    return ids;
}

std::optional<Finding> CardList::current_stop() const {
    const Guest* guest = find_guest(document_.session(), current_guest());
    if (guest == nullptr) return std::nullopt;
    const std::vector<Finding> stops = blocking_findings(document_.plan(), *guest);
    if (stops.empty()) return std::nullopt;
    return stops.front();
}

void CardList::set_all_wanted(bool wanted) {
    left_out_.clear();
    if (!wanted) {
        for (const Guest& guest : document_.session().guests) left_out_.insert(guest.id);
    }
    refresh();
}

}  // namespace leadline
