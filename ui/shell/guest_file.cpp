// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/guest_file.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>

#include "ui/words/name_words.h"

namespace leadline {

namespace {

/// Names the context of this file's texts to lupdate.
class GuestFileTexts {
    Q_DECLARE_TR_FUNCTIONS(GuestFile)
};

QString plain(const std::string& text) { return QString::fromStdString(text); }

/// A table of two columns; a row without a value is left out.
class Facts {
public:
    void add(const QString& what, const QString& value) {
        if (value.isEmpty()) return;
        rows_ += QStringLiteral("<tr><th>") + what.toHtmlEscaped() + QStringLiteral("</th><td>") +
                 value.toHtmlEscaped().replace(u'\n', QStringLiteral("<br>")) +
                 QStringLiteral("</td></tr>\n");
    }
    [[nodiscard]] QString table() const {
        return rows_.isEmpty() ? QString()
                               : QString(QStringLiteral("<table>\n") + rows_ +
                                         QStringLiteral("</table>\n"));
    }

private:
    QString rows_;
};

QString heading(int level, const QString& text) {
    const QString tag = QStringLiteral("h%1>").arg(level);
    return u'<' + tag + text.toHtmlEscaped() + QStringLiteral("</") + tag + u'\n';
}

QString paragraph(const QString& text) {
    return QStringLiteral("<p>") + text.toHtmlEscaped() + QStringLiteral("</p>\n");
}

QString yes_or_no(bool yes) { return label(yes ? Answer::yes : Answer::no); }

void add_lasting(Facts& facts, const Guest& guest, UnitSystem units) {
    facts.add(GuestFileTexts::tr("Name"), plain(guest.name));
    if (guest.birth_date) facts.add(GuestFileTexts::tr("Born"), text(*guest.birth_date));
    facts.add(GuestFileTexts::tr("Language"), language_name(guest.language));
    facts.add(GuestFileTexts::tr("Phone"), plain(guest.phone));
    facts.add(GuestFileTexts::tr("E-mail"), plain(guest.email));
    if (guest.body_mass) facts.add(GuestFileTexts::tr("Weight"), text(*guest.body_mass, units));
    if (guest.body_height)
        facts.add(GuestFileTexts::tr("Height"), height_text(*guest.body_height, units));
    if (guest.shoe_size_eu)
        facts.add(GuestFileTexts::tr("Shoe size (EU)"), QString::number(*guest.shoe_size_eu));
    if (guest.measured_rmv)
        facts.add(GuestFileTexts::tr("Air use measured"), text(*guest.measured_rmv, units));
    if (guest.dives_before)
        facts.add(GuestFileTexts::tr("Dives before"), QString::number(*guest.dives_before));
}

void add_kit(Facts& facts, const Kit& kit, UnitSystem units) {
    facts.add(GuestFileTexts::tr("Suit"), plain(kit.suit));
    facts.add(GuestFileTexts::tr("Jacket"), plain(kit.bcd));
    facts.add(GuestFileTexts::tr("Fins"), plain(kit.fins));
    facts.add(GuestFileTexts::tr("Mask"), plain(kit.mask));
    facts.add(GuestFileTexts::tr("Regulator"), plain(kit.regulator));
    if (kit.lead) facts.add(GuestFileTexts::tr("Lead"), text(*kit.lead, units));
    if (!kit.cylinder) return;
    facts.add(GuestFileTexts::tr("Cylinder"), plain(kit.cylinder->type.text));
    facts.add(GuestFileTexts::tr("Filled to"), text(kit.cylinder->fill_pressure, units));
}

void add_check(Facts& facts, const HealthCheck& check) {
    facts.add(GuestFileTexts::tr("Health questions"), label(check.outcome));
    if (check.checked_on) facts.add(GuestFileTexts::tr("Asked on"), text(*check.checked_on));
    facts.add(GuestFileTexts::tr("Edition of the questions"), plain(check.edition));
    facts.add(GuestFileTexts::tr("Asked by"), plain(check.checked_by));
    facts.add(GuestFileTexts::tr("Physician's release seen"),
              yes_or_no(check.physician_approval_seen));
    if (check.approval_on)
        facts.add(GuestFileTexts::tr("Date on the release"), text(*check.approval_on));
    facts.add(GuestFileTexts::tr("On the day"), label(check.today));
    facts.add(GuestFileTexts::tr("Signature"), label(check.signature));
}

QString log_part(const LogEntry& entry, UnitSystem units) {
    Facts facts;
    facts.add(GuestFileTexts::tr("Pressure at the start"), text(entry.start_pressure, units));
    facts.add(GuestFileTexts::tr("Pressure at the end"), text(entry.end_pressure, units));
    facts.add(GuestFileTexts::tr("Time in the water"), text(entry.duration));
    facts.add(GuestFileTexts::tr("Trouble with ears"), yes_or_no(entry.ears_troubled));
    facts.add(GuestFileTexts::tr("Note"), plain(entry.note));
    QStringList samples;
    for (const DepthSample& sample : entry.samples) {
        samples += with_colon(text(sample.time), text(sample.depth, units));
    }
    facts.add(GuestFileTexts::tr("Depths"), samples.join(QStringLiteral("; ")));
    return heading(3, GuestFileTexts::tr("What happened")) + facts.table();
}

QString guest_part(const SessionFile& file, const Guest& guest, UnitSystem units) {
    Facts known;
    add_lasting(known, guest, units);
    for (const Group& group : file.session.groups) {
        if (group.id == guest.group) known.add(GuestFileTexts::tr("Group"), plain(group.name));
    }
    known.add(GuestFileTexts::tr("Breathing taken as"), label(guest.breathing));
    known.add(GuestFileTexts::tr("Certified"), yes_or_no(guest.certified));
    known.add(GuestFileTexts::tr("Guardian's consent seen"), yes_or_no(guest.guardian_consent));
    known.add(GuestFileTexts::tr("Note of the staff"), plain(guest.note));
    Facts kit;
    add_kit(kit, guest.kit, units);
    Facts checks;
    add_check(checks, guest.screening);
    QString part = heading(3, GuestFileTexts::tr("As known on the day")) + known.table();
    if (!kit.table().isEmpty()) part += heading(3, GuestFileTexts::tr("Kit")) + kit.table();
    part += heading(3, GuestFileTexts::tr("Checks")) + checks.table();
    const LogEntry* entry = file.log ? find_log(*file.log, guest.id) : nullptr;
    return entry != nullptr ? QString(part + log_part(*entry, units)) : part;
}

QString session_part(const DossierSession& dossier, UnitSystem units) {
    const Session& session = dossier.file.session;
    const QString title =
        session.title.empty() ? GuestFileTexts::tr("Session") : plain(session.title);
    Facts day;
    day.add(GuestFileTexts::tr("Date"), text(session.date));
    day.add(GuestFileTexts::tr("Dive at"), text(session.dive_time));
    day.add(GuestFileTexts::tr("Site"), plain(session.site.name));
    day.add(GuestFileTexts::tr("Water"), text(session.conditions.water_temperature, units));
    if (dossier.file.log) {
        day.add(GuestFileTexts::tr("In the water"),
                GuestFileTexts::tr("%1 to %2")
                    .arg(text(dossier.file.log->time_in), text(dossier.file.log->time_out)));
    }
    for (const Overrule& overrule : session.overrules) {
        day.add(GuestFileTexts::tr("Gone ahead despite a finding"),
                GuestFileTexts::tr("%1 (%2)").arg(plain(overrule.reason), plain(overrule.by)));
    }
    QString part = heading(2, title) + day.table();
    for (const Guest& guest : session.guests) part += guest_part(dossier.file, guest, units);
    return part;
}

QString sealed_part(const GuestDossier& dossier,
                    const std::optional<std::vector<SealedText>>& sealed) {
    if (dossier.sealed_records == 0 && (!sealed || sealed->empty())) return {};
    QString part = heading(2, GuestFileTexts::tr("Sealed health records"));
    if (!sealed) {
        return part + paragraph(GuestFileTexts::tr(
                                    "Records on file: %1. Sealed: open the vault to include them.")
                                    .arg(dossier.sealed_records));
    }
    Facts facts;
    for (const SealedText& record : *sealed) {
        facts.add(GuestFileTexts::tr("%1, %2").arg(record.kind, record.made_at), record.content);
    }
    return part + facts.table();
}

/// Own and plain: ink on paper, nothing from elsewhere.
QString style() {
    return QStringLiteral(
        "body{font-family:sans-serif;max-width:46em;margin:2em auto;padding:0 1em;color:#222}"
        "h1{font-size:1.5em}h2{font-size:1.2em;border-top:1px solid #999;padding-top:.8em;"
        "margin-top:1.6em}h3{font-size:1em;margin-bottom:.2em}"
        "table{border-collapse:collapse;width:100%}th{text-align:left;font-weight:normal;"
        "color:#555;width:45%;vertical-align:top;padding:.15em 1em .15em 0}"
        "td{padding:.15em 0;vertical-align:top}");
}

QJsonObject object_of(const std::string& json) {
    return QJsonDocument::fromJson(QByteArray::fromStdString(json)).object();
}

QJsonObject person_object(const Guest& guest) {
    QJsonObject person{{QStringLiteral("name"), plain(guest.name)},
                       {QStringLiteral("language"), plain(guest.language)},
                       {QStringLiteral("phone"), plain(guest.phone)},
                       {QStringLiteral("email"), plain(guest.email)}};
    if (guest.birth_date) {
        person[QStringLiteral("birth_date")] = plain(to_text(*guest.birth_date));
    }
    if (guest.body_mass) person[QStringLiteral("body_mass_kg")] = guest.body_mass->value();
    if (guest.body_height) person[QStringLiteral("body_height_m")] = guest.body_height->value();
    if (guest.shoe_size_eu) person[QStringLiteral("shoe_size_eu")] = *guest.shoe_size_eu;
    if (guest.measured_rmv) {
        person[QStringLiteral("measured_rmv_l_per_min")] = guest.measured_rmv->value();
    }
    if (guest.dives_before) person[QStringLiteral("dives_before")] = *guest.dives_before;
    return person;
}

}  // namespace

QString guest_page(const GuestDossier& dossier,
                   const std::optional<std::vector<SealedText>>& sealed, Date written_on,
                   UnitSystem units) {
    const QString title = GuestFileTexts::tr("What is kept of %1").arg(plain(dossier.person.name));
    Facts person;
    add_lasting(person, dossier.person, units);
    person.add(GuestFileTexts::tr("Also on record as"),
               dossier.merged_names.join(QStringLiteral("; ")));
    QString page =
        QStringLiteral("<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"><title>") +
        title.toHtmlEscaped() + QStringLiteral("</title><style>") + style() +
        QStringLiteral("</style></head><body>\n") + heading(1, title) +
        paragraph(
            GuestFileTexts::tr("Written on %1. All that the centre's records hold of this person: "
                               "nothing of other guests, nothing of staff but the name of who "
                               "decided something. Notes on a whole dive are left out, as they may "
                               "speak of others.")
                .arg(text(written_on))) +
        heading(2, GuestFileTexts::tr("Person")) + person.table();
    for (const DossierSession& session : dossier.sessions) page += session_part(session, units);
    if (dossier.sessions.empty()) page += paragraph(GuestFileTexts::tr("No session is on record."));
    return page + sealed_part(dossier, sealed) + QStringLiteral("</body></html>\n");
}

QByteArray guest_json(const GuestDossier& dossier,
                      const std::optional<std::vector<SealedText>>& sealed, Date written_on) {
    QJsonArray sessions;
    for (const DossierSession& session : dossier.sessions) {
        sessions += object_of(write_session(session.file));
    }
    QJsonObject file{{QStringLiteral("leadline_guest"), 1},
                     {QStringLiteral("written_on"), plain(to_text(written_on))},
                     {QStringLiteral("person"), person_object(dossier.person)},
                     {QStringLiteral("also_on_record_as"),
                      QJsonArray::fromStringList(dossier.merged_names)},
                     {QStringLiteral("sessions"), sessions},
                     {QStringLiteral("sealed_records"), dossier.sealed_records}};
    if (sealed) {
        QJsonArray records;
        for (const SealedText& record : *sealed) {
            records += QJsonObject{{QStringLiteral("kind"), record.kind},
                                   {QStringLiteral("made_at"), record.made_at},
                                   {QStringLiteral("content"), record.content}};
        }
        file[QStringLiteral("sealed")] = records;
    } else if (dossier.sealed_records > 0) {
        file[QStringLiteral("sealed")] = QStringLiteral("sealed: open the vault to include");
    }
    return QJsonDocument(file).toJson();
}

}  // namespace leadline
