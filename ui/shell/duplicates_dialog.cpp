// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/duplicates_dialog.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QStringList>
#include <QVBoxLayout>
#include <utility>

#include "core/records/person_merge.h"
#include "ui/words/error_words.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {

namespace {

QString date_text(const std::optional<Date>& date) {
    return date ? spelled(*date) : QStringLiteral("–");
}

QString or_dash(const std::string& text) {
    return text.empty() ? QStringLiteral("–") : QString::fromStdString(text);
}

/// What is shown of a person, in the order of the rows.
QStringList facts_of(const KnownGuest& person) {
    return {date_text(person.guest.birth_date), or_dash(person.guest.phone),
            or_dash(person.guest.email),        language_name(person.guest.language),
            date_text(person.last_session),     QString::number(person.sessions)};
}

}  // namespace

DuplicatesDialog::DuplicatesDialog(Database& database, std::vector<DuplicatePair> pairs,
                                   HealthStore* health, QWidget* parent)
    : QDialog(parent),
      database_(database),
      health_(health),
      pairs_(std::move(pairs)),
      which_(new QLabel(this)),
      why_(new QLabel(this)),
      care_(new QLabel(this)),
      said_(new QLabel(this)),
      both_(new QWidget(this)),
      merge_(nullptr),
      apart_(nullptr),
      later_(nullptr),
      back_(nullptr) {
    setWindowTitle(tr("Who may be on record twice"));
    setObjectName(QStringLiteral("duplicates_dialog"));
    setMinimumWidth(620);
    which_->setObjectName(QStringLiteral("duplicates_which"));
    why_->setObjectName(QStringLiteral("duplicates_why"));
    said_->setObjectName(QStringLiteral("duplicates_said"));
    for (QLabel* label : {why_, care_, said_}) label->setWordWrap(true);
    care_->setText(tr("Look before you merge: brothers and sisters share a phone number, twins a "
                      "birth date. Measured air use of somebody else would mislead."));

    auto* grid = new QGridLayout(both_);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(16);
    grid->addWidget(new QLabel(tr("Keep"), both_), 0, 0);
    const QStringList names{tr("Born"),     tr("Phone"),        tr("E-mail"),
                            tr("Language"), tr("Last session"), tr("Sessions")};
    for (int side = 0; side < 2; ++side) {
        keep_[side] = new QRadioButton(both_);
        keep_[side]->setObjectName(QStringLiteral("duplicates_keep_%1").arg(side + 1));
        grid->addWidget(keep_[side], 0, side + 1);
        for (int row = 0; row < int(names.size()); ++row) {
            if (side == 0) grid->addWidget(new QLabel(names[row], both_), row + 1, 0);
            auto* value = new QLabel(both_);
            value->setTextFormat(Qt::PlainText);
            value->setWordWrap(true);
            value->setTextInteractionFlags(Qt::TextSelectableByMouse);
            grid->addWidget(value, row + 1, side + 1);
            values_.push_back(value);
        }
        grid->setColumnStretch(side + 1, 1);
        grid->setColumnMinimumWidth(side + 1, 240);
    }

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    merge_ = buttons->addButton(tr("One person: &merge"), QDialogButtonBox::ActionRole);
    merge_->setObjectName(QStringLiteral("duplicates_merge"));
    apart_ = buttons->addButton(tr("&Two persons"), QDialogButtonBox::ActionRole);
    apart_->setObjectName(QStringLiteral("duplicates_apart"));
    later_ = buttons->addButton(tr("&Not now"), QDialogButtonBox::ActionRole);
    later_->setObjectName(QStringLiteral("duplicates_later"));
    back_ = buttons->addButton(tr("Take &back"), QDialogButtonBox::ActionRole);
    back_->setObjectName(QStringLiteral("duplicates_back"));
    back_->setEnabled(false);
    // Enter alone merges nobody.
    for (QPushButton* button : {merge_, apart_, back_}) button->setAutoDefault(false);
    later_->setDefault(true);
    connect(merge_, &QPushButton::clicked, this, &DuplicatesDialog::merge);
    connect(apart_, &QPushButton::clicked, this, &DuplicatesDialog::keep_apart);
    connect(later_, &QPushButton::clicked, this, [this] {
        said_->clear();
        go_on();
    });
    connect(back_, &QPushButton::clicked, this, &DuplicatesDialog::take_back);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(10);
    layout->addWidget(which_);
    layout->addWidget(why_);
    layout->addWidget(both_);
    layout->addWidget(care_);
    layout->addStretch(1);
    layout->addWidget(said_);
    layout->addWidget(buttons);
    show_pair();
}

void DuplicatesDialog::show_pair() {
    // Merged with somebody else in the meantime, or removed.
    while (at_ < pairs_.size() && !are_shown(pairs_[at_])) ++at_;
    const bool any = at_ < pairs_.size();
    for (QWidget* part : {static_cast<QWidget*>(why_), both_, static_cast<QWidget*>(care_)}) {
        part->setVisible(any);
    }
    for (QPushButton* button : {merge_, apart_, later_}) button->setEnabled(any);
    if (!any) {
        which_->setText(pairs_.empty() ? tr("Nobody seems to be on record twice.")
                                       : tr("That was the last pair."));
        return;
    }
    const DuplicatePair& pair = pairs_[at_];
    const auto persons = GuestStore(database_).read({pair.first, pair.second});
    if (!persons) return say(words(persons.error()));
    if (persons->size() < 2) return go_on();
    which_->setText(tr("Pair %1 of %2").arg(at_ + 1).arg(pairs_.size()));
    QStringList signs;
    switch (pair.names) {
        case NameLikeness::same: signs += tr("same name"); break;
        case NameLikeness::reordered: signs += tr("same name, turned round"); break;
        case NameLikeness::one_slip: signs += tr("names one letter apart"); break;
        case NameLikeness::different: break;
    }
    if (pair.same_birth_date) signs += tr("same birth date");
    if (pair.same_phone) signs += tr("same phone number");
    if (pair.same_email) signs += tr("same e-mail");
    if (pair.birth_dates_differ) signs += tr("but the birth dates differ");
    why_->setText(tr("Signs: %1.").arg(signs.isEmpty() ? tr("none; you chose these two")
                                                         : signs.join(QStringLiteral(", "))));
    for (int side = 0; side < 2; ++side) show_person(side, (*persons)[std::size_t(side)]);
    // A birth date is not taken over from one to the other, so the one who has it is kept; else the
    // one seen last, who knows best.
    const bool born[2] = {(*persons)[0].guest.birth_date.has_value(),
                          (*persons)[1].guest.birth_date.has_value()};
    const bool second = born[0] != born[1]
                            ? born[1]
                            : (*persons)[1].last_session > (*persons)[0].last_session;
    keep_[second ? 1 : 0]->setChecked(true);
    for (int side = 0; side < 2; ++side) keep_[side]->setEnabled(born[side] || !born[1 - side]);
}

bool DuplicatesDialog::are_shown(const DuplicatePair& pair) {
    PersonMerges merges(database_);
    // When that cannot be read the pair stays, and the merge says why it cannot be done.
    return merges.is_shown(pair.first).value_or(true) &&
           merges.is_shown(pair.second).value_or(true);
}

void DuplicatesDialog::show_person(int side, const KnownGuest& person) {
    const QString name = QString::fromStdString(person.guest.name);
    constexpr int letters_shown = 26;
    const QString shown = keep_[side]->fontMetrics().elidedText(
        name, Qt::ElideRight, letters_shown * keep_[side]->fontMetrics().averageCharWidth());
    keep_[side]->setText(QString(shown).replace(u'&', QStringLiteral("&&")));
    keep_[side]->setAccessibleName(tr("Keep %1").arg(name));
    keep_[side]->setToolTip(name);
    const QStringList facts = facts_of(person);
    for (int row = 0; row < int(facts.size()); ++row) {
        values_[std::size_t(side * int(facts.size()) + row)]->setText(facts[row]);
    }
}

void DuplicatesDialog::merge() {
    const DuplicatePair& pair = pairs_[at_];
    const bool first = keep_[0]->isChecked();
    const QString now = QDateTime::currentDateTimeUtc().toString(Qt::ISODate);
    const Result<qint64> merged =
        PersonMerges(database_).merge(first ? pair.first : pair.second,
                                      first ? pair.second : pair.first, now);
    if (!merged) return say(words(merged.error()));
    last_merge_ = *merged;
    last_at_ = at_;
    back_->setEnabled(true);
    say(tr("Merged. All their sessions stand with the one kept."));
    Q_EMIT changed();
    go_on();
}

void DuplicatesDialog::keep_apart() {
    const DuplicatePair& pair = pairs_[at_];
    const Result<Done> kept = Duplicates(database_).keep_apart(pair.first, pair.second);
    if (!kept) return say(words(kept.error()));
    say(tr("Kept apart. They are not offered again."));
    go_on();
}

void DuplicatesDialog::go_on() {
    ++at_;
    show_pair();
}

void DuplicatesDialog::take_back() {
    const Result<Done> undone = PersonMerges(database_, health_).undo(last_merge_);
    if (!undone) return say(words(undone.error()));
    back_->setEnabled(false);
    at_ = last_at_;
    say(tr("Taken back: they are two persons again."));
    Q_EMIT changed();
    show_pair();
}

void DuplicatesDialog::say(const QString& text) { said_->setText(text); }

}  // namespace leadline
