// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/card_editor.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QGridLayout>
#include <QLabel>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/guest_words/guest_language.h"
#include "ui/guest_words/typed_text.h"
#include "ui/sheet/card_language.h"
#include "ui/sheet/sheet_words.h"
#include "ui/widgets/wheel_guard.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

class CardEditorWords {
    Q_DECLARE_TR_FUNCTIONS(leadline::CardEditor)
};

constexpr int longest_name_edited = 40;

/// The row of a tag as the guest has it, or of the language that serves it.
int row_of(const QComboBox& box, const std::string& tag) {
    const int exact = box.findData(QString::fromStdString(tag));
    if (exact >= 0) return exact;
    const GuestLanguage* language = find_guest_language(tag);
    return language != nullptr ? box.findData(QString::fromStdString(language->tag)) : -1;
}

QString chosen(const QComboBox& box, int row) {
    return box.itemData(row).toString();
}

}  // namespace

void fill_languages(QComboBox& box, const std::vector<std::string>& further) {
    for (const GuestLanguage& language : guest_languages()) {
        const QString name =
            language.review == ReviewState::drafted
                ? CardEditorWords::tr("%1 (draft)", "a language").arg(language.own_name)
                : language.own_name;
        box.addItem(name, QString::fromStdString(language.tag));
    }
    for (const std::string& tag : further) {
        if (tag.empty() || row_of(box, tag) >= 0) continue;
        box.addItem(CardEditorWords::tr("%1 (no cards yet)", "a language").arg(language_name(tag)),
                    QString::fromStdString(tag));
    }
}

CardEditor::CardEditor(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      who_(new QLabel(this)),
      language_(new QComboBox(this)),
      second_(new QComboBox(this)),
      units_(new QComboBox(this)) {
    setObjectName(QStringLiteral("card_editor"));
    who_->setObjectName(QStringLiteral("card_editor_who"));
    who_->setTextFormat(Qt::PlainText);
    language_->setObjectName(QStringLiteral("card_language"));
    second_->setObjectName(QStringLiteral("card_second_language"));
    units_->setObjectName(QStringLiteral("card_units"));
    units_->addItem(tr("As this window"), static_cast<int>(UnitHabit::house));
    units_->addItem(tr("Metric"), static_cast<int>(UnitHabit::metric));
    units_->addItem(tr("Imperial"), static_cast<int>(UnitHabit::imperial));

    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(4);
    grid->addWidget(who_, 0, 0, 1, 2);
    int row = 1;
    const auto add = [&](const QString& words, QComboBox* box) {
        auto* words_label = new QLabel(words, this);
        words_label->setBuddy(box);
        box->setAccessibleName(QString(words).remove(u'&'));
        box->setPlaceholderText(tr("different"));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(8);
        guard_wheel(box);
        grid->addWidget(words_label, row, 0);
        grid->addWidget(box, row, 1);
        ++row;
    };
    add(tr("Card &language"), language_);
    add(tr("Second lang&uage"), second_);
    add(tr("Uni&ts"), units_);
    grid->setColumnStretch(1, 1);

    connect(language_, &QComboBox::activated, this, [this](int index) {
        const std::string tag = chosen(*language_, index).toStdString();
        change(tr("Change the card's language"), [&](Guest& guest) {
            guest.language = tag;
            if (guest.second_language == tag) guest.second_language.clear();
        });
    });
    connect(second_, &QComboBox::activated, this, [this](int index) {
        const std::string tag = chosen(*second_, index).toStdString();
        change(tr("Change the card's second language"), [&](Guest& guest) {
            // Twice the same language is one.
            guest.second_language = tag == guest.language ? std::string() : tag;
        });
    });
    connect(units_, &QComboBox::activated, this, [this](int index) {
        const auto habit = static_cast<UnitHabit>(units_->itemData(index).toInt());
        change(tr("Change the card's units"), [&](Guest& guest) { guest.units = habit; });
    });
    connect(&document_, &SessionDocument::changed, this, &CardEditor::refresh);
    refresh();
}

std::vector<const Guest*> CardEditor::guests() const {
    std::vector<const Guest*> found;
    for (const GuestId& id : ids_) {
        if (const Guest* guest = find_guest(document_.session(), id)) found.push_back(guest);
    }
    return found;
}

void CardEditor::show_guests(const std::vector<GuestId>& guests) {
    ids_ = guests;
    refresh();
}

void CardEditor::change(const QString& what, const std::function<void(Guest&)>& edit) {
    const std::vector<GuestId> ids = ids_;
    const Result<Done> done = document_.edit(what, [&](Session& session) {
        for (const GuestId& id : ids) {
            if (Guest* guest = find_guest(session, id)) edit(*guest);
        }
    });
    if (!done) refresh();  // the document has said why; show what holds
}

void CardEditor::refresh() {
    const std::vector<const Guest*> chosen_guests = guests();
    setEnabled(!chosen_guests.empty());
    std::vector<std::string> tags;
    for (const Guest* guest : chosen_guests) {
        tags.push_back(guest->language);
        tags.push_back(guest->second_language);
    }
    language_->clear();
    fill_languages(*language_, tags);
    second_->clear();
    second_->addItem(tr("None"), QString());
    fill_languages(*second_, tags);
    if (chosen_guests.empty()) {
        who_->setText(tr("Choose a guest to change the card."));
        for (QComboBox* box : {language_, second_, units_}) box->setCurrentIndex(-1);
        return;
    }
    if (chosen_guests.size() == 1) {
        const QString name = beginning(one_line(chosen_guests.front()->name), longest_name_edited);
        who_->setText(tr("Card of %1").arg(name));
    } else {
        who_->setText(tr("Cards of %n guests", nullptr, static_cast<int>(chosen_guests.size())));
    }
    const auto common = [&](auto value) {
        const auto first = value(*chosen_guests.front());
        const bool alike = std::all_of(chosen_guests.begin(), chosen_guests.end(),
                                       [&](const Guest* guest) { return value(*guest) == first; });
        return alike ? first : -1;
    };
    language_->setCurrentIndex(
        common([&](const Guest& guest) { return row_of(*language_, guest.language); }));
    second_->setCurrentIndex(common([&](const Guest& guest) {
        return guest.second_language.empty() ? 0 : row_of(*second_, guest.second_language);
    }));
    units_->setCurrentIndex(common(
        [&](const Guest& guest) { return units_->findData(static_cast<int>(guest.units)); }));
}

}  // namespace leadline
