// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/person_page.h"

#include <QCheckBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QStringList>
#include <QVBoxLayout>
#include <algorithm>

#include "core/planning/session_edits.h"
#include "ui/roster/birth_date_line.h"
#include "ui/roster/count_box.h"
#include "ui/roster/fields.h"
#include "ui/roster/guest_facts.h"
#include "ui/roster/measures.h"
#include "ui/roster/roster_edits.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int longest_phone = 40;
constexpr int longest_email = 254;
constexpr int most_dives = 20000;

std::vector<ChoiceBox::Choice> language_choices() {
    std::vector<ChoiceBox::Choice> choices;
    for (const QString& tag : common_languages()) {
        choices.push_back({language_name(tag.toStdString()), tag});
    }
    std::sort(choices.begin(), choices.end(), [](const auto& a, const auto& b) {
        return QString::localeAwareCompare(a.label, b.label) < 0;
    });
    return choices;
}

std::vector<ChoiceBox::Choice> breathing_choices() {
    std::vector<ChoiceBox::Choice> choices;
    for (const BreathingClass breathing : {BreathingClass::average, BreathingClass::calm,
                                           BreathingClass::nervous, BreathingClass::child}) {
        choices.push_back({label(breathing), QString::number(static_cast<int>(breathing))});
    }
    return choices;
}

/// What the planned rate follows from, as far as it is more than the choice.
QString planned_words(const GuestGas& gas, const QString& rate) {
    const BreathingSpread& breathing = gas.breathing;
    const QString from = gas.rmv_source == RmvSource::measured
                             ? PersonPage::tr("as measured")
                             : PersonPage::tr("from the choice above");
    QStringList more;
    if (breathing.mass_factor > 1.0) more << PersonPage::tr("body mass");
    if (breathing.cold_factor > 1.0) more << PersonPage::tr("a suit thin for this water");
    if (breathing.current_factor > 1.0) more << PersonPage::tr("current");
    if (more.isEmpty()) return PersonPage::tr("Planned with %1, %2").arg(rate, from);
    return PersonPage::tr("Planned with %1, %2 and: %3")
        .arg(rate, from, more.join(PersonPage::tr(", ")));
}

}  // namespace

PersonPage::PersonPage(EditDesk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      form_(new FieldForm(this)),
      name_(new TypedLine(QStringLiteral("name_edit"), longest_name, this)),
      known_(new KnownGuestList(*name_)),
      birth_date_(new BirthDateLine(this)),
      language_(new ChoiceBox(QStringLiteral("language_combo"), this)),
      group_(new ChoiceBox(QStringLiteral("group_combo"), this)),
      consent_(new QCheckBox(tr("&Written consent seen"), this)),
      companion_(new QCheckBox(tr("Certified diver"), this)),
      dives_(new CountBox(QStringLiteral("dives_before_box"), 0, most_dives, this)),
      phone_(new TypedLine(QStringLiteral("phone_edit"), longest_phone, this)),
      email_(new TypedLine(QStringLiteral("email_edit"), longest_email, this)),
      breathing_(new ChoiceBox(QStringLiteral("breathing_combo"), this)),
      rmv_(new ClearableBox(QuantityKind::rmv, QStringLiteral("rmv_box"), this)),
      note_(new QPlainTextEdit(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(form_);
    column->addStretch();
    build_person();
    build_breathing();
    build_note();
}

// ---- building ----------------------------------------------------------------------------------

void PersonPage::build_person() {
    name_field_ = form_->add(tr("&Name"), name_);
    birth_date_->setObjectName(QStringLiteral("birth_date_edit"));
    birth_date_field_ = form_->add(tr("&Born"), birth_date_);
    age_ = form_->add_remark(QStringLiteral("age_label"));
    language_->offer(language_choices());
    form_->add(tr("&Language"), language_);
    form_->add(tr("Gro&up"), group_);
    consent_->setObjectName(QStringLiteral("consent_check"));
    consent_field_ = form_->add(tr("Guardian"), consent_);
    companion_->setObjectName(QStringLiteral("companion_check"));
    companion_->setToolTip(tr("Comes along, uses a place in the group and needs no teaching."));
    form_->add(tr("Companion"), companion_);
    dives_->allow_empty();
    dives_->setToolTip(tr("In the guest's life, before this one. Empty: not asked."));
    form_->add(tr("Dives made before"), dives_);
    build_contact();
    consent_->setAccessibleName(tr("Guardian's written consent seen"));
    companion_->setAccessibleName(tr("Companion, a certified diver"));

    wire_name();
    wire_birth_date();
    wire_dives();
    connect(language_, &QComboBox::activated, this, [this] {
        const std::string tag = language_->choice().toStdString();
        desk_.change(tr("Language"), "language", [&](Guest& guest) { guest.language = tag; });
    });
    connect(group_, &QComboBox::activated, this, [this] {
        const GroupId id(group_->choice().toStdString());
        desk_.change(tr("Group"), "group", [&](Guest& guest) { guest.group = id; });
    });
    connect(consent_, &QCheckBox::clicked, this, [this](bool on) {
        desk_.change(tr("Consent"), "consent", [&](Guest& guest) { guest.guardian_consent = on; });
    });
    connect(companion_, &QCheckBox::clicked, this, [this](bool on) {
        desk_.change(tr("Companion"), "companion", [&](Guest& guest) { guest.certified = on; });
    });
}

void PersonPage::build_contact() {
    form_->add(tr("Phone"), phone_);
    form_->add(tr("E-mail"), email_);
    connect(phone_, &QLineEdit::textEdited, this, [this] {
        desk_.change(tr("Phone"), "phone",
                     [&](Guest& guest) { guest.phone = phone_->trimmed(); });
    });
    connect(email_, &QLineEdit::textEdited, this, [this] {
        desk_.change(tr("E-mail"), "email",
                     [&](Guest& guest) { guest.email = email_->trimmed(); });
    });
}

void PersonPage::wire_dives() {
    connect(dives_, &CountBox::edited, this, [this](std::optional<int> dives) {
        desk_.change(tr("Dives made before"), "dives_before",
                     [&](Guest& guest) { guest.dives_before = dives; });
    });
}

void PersonPage::wire_name() {
    connect(name_, &QLineEdit::textEdited, this, [this] {
        const std::string name = name_->trimmed();
        if (name.empty()) {
            name_field_->complain(tr("Name: a guest needs one. The last one is kept."));
            return known_->close();
        }
        name_field_->complain(
            desk_.change(tr("Name"), "name", [&](Guest& guest) { guest.name = name; }));
        const Guest* guest = desk_.guest();
        if (guest != nullptr && nothing_lasting(*guest)) {
            known_->offer(name_->text(), desk_.document().session());
        }
    });
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        const Guest* guest = desk_.guest();
        if (guest == nullptr || !name_->trimmed().empty()) return;
        name_->show_text(guest->name);
    });
    connect(known_, &KnownGuestList::chosen, this, &PersonPage::take_over);
}

void PersonPage::wire_birth_date() {
    const QString field = tr("Birth date");
    connect(birth_date_, &BirthDateLine::edited, this, [this, field](std::optional<Date> date) {
        const Date day = desk_.document().session().date;
        const QString refusal = desk_.change(
            field, "birth_date", [&](Guest& guest) { correct_birth_date(guest, date, day); });
        birth_date_field_->complain(refusal);
        if (const Guest* guest = desk_.guest()) birth_date_->show_date(guest->birth_date);
    });
    connect(birth_date_, &BirthDateLine::not_a_date, this, [this, field](const QString& typed) {
        birth_date_field_->complain(
            tr("%1: \"%2\" is not a date. Write it as 17/5/1990, with four digits for the year.")
                .arg(field, typed));
    });
}

void PersonPage::build_breathing() {
    form_->add_heading(tr("Breathing"));
    breathing_->offer(breathing_choices());
    form_->add(tr("Brea&thes"), breathing_);
    rmv_->setToolTip(tr("Air used a minute at the surface, from an own past dive."));
    form_->add(tr("&Measured"), rmv_);
    planned_rmv_ = form_->add_remark(QStringLiteral("planned_rmv_label"));
    connect(breathing_, &QComboBox::activated, this, [this] {
        const auto breathing = static_cast<BreathingClass>(breathing_->choice().toInt());
        desk_.change(tr("Breathing"), "breathing",
                     [&](Guest& guest) { guest.breathing = breathing; });
    });
    connect(rmv_, &QuantityBox::edited, this, [this](std::optional<double> rmv) {
        desk_.change(tr("Measured breathing"), "rmv", [&](Guest& guest) {
            guest.measured_rmv = rmv ? std::optional(LitersPerMinute(*rmv)) : std::nullopt;
        });
    });
}

void PersonPage::build_note() {
    note_->setObjectName(QStringLiteral("note_edit"));
    note_->setTabChangesFocus(true);
    note_->setPlaceholderText(tr("For staff. Never printed. Not for health."));
    constexpr int lines = 4;
    note_->setFixedHeight(lines * fontMetrics().lineSpacing() + 16);
    Field* field = form_->add(tr("N&ote"), note_);
    connect(note_, &QPlainTextEdit::textChanged, this, [this, field] {
        if (note_->toPlainText().size() > longest_note) {
            const QSignalBlocker quiet(note_);
            note_->setPlainText(note_->toPlainText().left(longest_note));
            note_->moveCursor(QTextCursor::End);
            field->complain(tr("Note: holds 2000 characters; the rest was cut off."));
        } else {
            field->complain({});
        }
        const std::string note = note_->toPlainText().toStdString();
        desk_.change(tr("Note"), "note", [&](Guest& guest) { guest.note = note; });
    });
}

// ---- showing -----------------------------------------------------------------------------------

void PersonPage::set_guest_finder(GuestFinder finder) { known_->set_finder(std::move(finder)); }

void PersonPage::take_over(const Guest& known) {
    const QString name = QString::fromStdString(known.name);
    const GuestId id = desk_.guest_id();
    const QString refusal = desk_.change_session(
        tr("Take over %1 from the records").arg(name), tr("Record"), {}, [&](Session& session) {
            Guest* guest = find_guest(session, id);
            if (guest == nullptr) return;
            correct_birth_date(*guest, known.birth_date, session.date);
            fill_lasting(*guest, known);
        });
    name_field_->complain(refusal);
    name_->setFocus();
}

void PersonPage::start_guest() {
    known_->close();
    form_->clear_complaints();
    birth_date_->restore();
    if (const Guest* guest = desk_.guest()) name_->show_text(guest->name);
}

void PersonPage::refresh() {
    const Guest* guest = desk_.guest();
    if (guest == nullptr) return;
    // An emptied name is still being typed.
    if (!name_->hasFocus() || !name_->trimmed().empty()) name_->show_text(guest->name);
    birth_date_->set_latest(desk_.document().session().date);
    birth_date_->show_date(guest->birth_date);
    refresh_choices(*guest);
    consent_->setChecked(guest->guardian_consent);
    form_->set_shown(consent_field_, consent_matters(desk_.document(), *guest));
    phone_->show_text(guest->phone);
    email_->show_text(guest->email);
    companion_->setChecked(guest->certified);
    dives_->show_count(guest->dives_before);
    rmv_->set_units(desk_.document().units());
    rmv_->show_value(guest->measured_rmv ? std::optional(guest->measured_rmv->value())
                                         : std::nullopt);
    const QString note = QString::fromStdString(guest->note);
    if (note_->toPlainText() != note) {
        const QSignalBlocker quiet(note_);
        note_->setPlainText(note);
    }
    refresh_remarks(*guest);
}

void PersonPage::refresh_choices(const Guest& guest) {
    const Session& session = desk_.document().session();
    std::vector<ChoiceBox::Choice> groups{{tr("Not yet"), QString()}};
    for (const Group& group : session.groups) {
        const StaffMember* leader = find_staff(session, group.instructor);
        QString name = group_name(session, group.id);
        if (leader != nullptr) name += QStringLiteral(" · ") + staff_name(*leader);
        groups.push_back({name, QString::fromStdString(group.id.text)});
    }
    group_->offer(groups);
    group_->show_choice(QString::fromStdString(guest.group.text));
    language_->show_choice(QString::fromStdString(guest.language));
    breathing_->show_choice(QString::number(static_cast<int>(guest.breathing)));
}

void PersonPage::refresh_remarks(const Guest& guest) {
    const std::optional<int> age = age_of(desk_.document().session(), guest);
    age_->setText(age ? tr("%1 years old on the day").arg(*age) : tr("Age not known"));
    const GuestGas* gas = find_gas(desk_.document().plan(), guest.id);
    if (gas == nullptr) return planned_rmv_->clear();
    const QString rate = text(gas->rmv, desk_.document().units());
    planned_rmv_->setText(planned_words(*gas, rate));
}

void PersonPage::focus_name() {
    name_->setFocus(Qt::ShortcutFocusReason);
    name_->selectAll();
}

QString PersonPage::complaints() const { return form_->complaints(); }

}  // namespace leadline
