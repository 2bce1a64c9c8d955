// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/name_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace leadline {
namespace {

QString tr(const char* source) { return QCoreApplication::translate("Names", source); }

}  // namespace

QString label(Severity severity) {
    switch (severity) {
        case Severity::stop: return tr("Stop");
        case Severity::caution: return tr("Care");
        case Severity::note: return tr("Note");
    }
    return {};
}

QString label(Phase phase) {
    switch (phase) {
        case Phase::surface: return tr("At the surface");
        case Phase::descent: return tr("Down");
        case Phase::skills: return tr("Skills");
        case Phase::tour: return tr("Tour");
        case Phase::ascent: return tr("Up");
    }
    return {};
}

QString label(BreathingClass breathing) {
    switch (breathing) {
        case BreathingClass::calm: return tr("Calm");
        case BreathingClass::average: return tr("Not known");
        case BreathingClass::nervous: return tr("Nervous");
        case BreathingClass::child: return tr("Child, at ease");
    }
    return {};
}

QString label(Current current) {
    switch (current) {
        case Current::none: return tr("None");
        case Current::slight: return tr("Slight");
        case Current::moderate: return tr("Moderate");
        case Current::strong: return tr("Strong");
    }
    return {};
}

QString label(Entry entry) {
    switch (entry) {
        case Entry::shore: return tr("From the shore");
        case Entry::boat: return tr("From a boat");
        case Entry::pool_steps: return tr("Down steps");
    }
    return {};
}

QString label(StaffRole role) {
    switch (role) {
        case StaffRole::instructor: return tr("Instructor");
        case StaffRole::assistant: return tr("Assistant");
    }
    return {};
}

QString label(CylinderMetal metal) {
    switch (metal) {
        case CylinderMetal::steel: return tr("Steel");
        case CylinderMetal::aluminium: return tr("Aluminium");
    }
    return {};
}

QString label(Answer answer) {
    switch (answer) {
        case Answer::unanswered: return tr("–");
        case Answer::no: return tr("No");
        case Answer::yes: return tr("Yes");
    }
    return {};
}

QString label(ScreeningOutcome outcome) {
    switch (outcome) {
        case ScreeningOutcome::unanswered: return tr("Not answered");
        case ScreeningOutcome::clear: return tr("Clear");
        case ScreeningOutcome::physician_required: return tr("Physician first");
        case ScreeningOutcome::does_not_dive: return tr("Does not dive");
    }
    return {};
}

QString label(Standing standing) {
    switch (standing) {
        case Standing::read: return tr("read in the source");
        case Standing::summary: return tr("from a summary of the source");
        case Standing::memory: return tr("from memory");
        case Standing::common_practice: return tr("common practice, no source");
    }
    return {};
}

QString label(DepthSource source) {
    switch (source) {
        case DepthSource::own_samples: return tr("own depths");
        case DepthSource::group_samples: return tr("depths of the group");
        case DepthSource::planned_profile: return tr("planned depths");
    }
    return {};
}

QString label(TodayOutcome outcome) {
    switch (outcome) {
        case TodayOutcome::unanswered: return tr("Not asked today");
        case TodayOutcome::clear: return tr("Clear today");
        case TodayOutcome::with_care: return tr("With care today");
        case TodayOutcome::not_today: return tr("Not today");
    }
    return {};
}

QString label(SignatureKind signature) {
    switch (signature) {
        case SignatureKind::none: return tr("Not signed");
        case SignatureKind::on_screen: return tr("Signed on the screen");
        case SignatureKind::on_paper: return tr("Signed on paper");
    }
    return {};
}

QString edition_words(const std::string& edition) {
    if (edition.empty()) return {};
    if (edition == own_form_edition) return tr("by the centre's own form");
    return tr("edition %1").arg(QString::fromStdString(edition));
}

QString needed(FindingCode code) {
    switch (code) {
        case FindingCode::birth_date_missing: return tr("birth date");
        case FindingCode::consent_missing: return tr("guardian's consent");
        case FindingCode::screening_unanswered: return tr("health questions");
        case FindingCode::screening_physician: return tr("physician's release");
        case FindingCode::screening_does_not_dive: return tr("to be told: does not dive");
        case FindingCode::screening_out_of_date: return tr("health check anew");
        case FindingCode::screening_in_future: return tr("date of the health check");
        case FindingCode::approval_older_than_check: return tr("physician's release anew");
        default: return {};
    }
}

QString label(TodayQuestion question) {
    switch (question) {
        case TodayQuestion::cold_or_blocked_ears: return tr("Cold or blocked ears");
        case TodayQuestion::alcohol_or_drugs: return tr("Alcohol or drugs");
        case TodayQuestion::new_medicine: return tr("New medicine");
        case TodayQuestion::flight_or_mountain_within_24_hours: return tr("Flight or mountain");
        case TodayQuestion::unwilling_or_very_afraid: return tr("Unwilling or very afraid");
        case TodayQuestion::cannot_swim: return tr("Cannot swim");
    }
    return {};
}

QString question(TodayQuestion question) {
    switch (question) {
        case TodayQuestion::cold_or_blocked_ears:
            return tr("Do you feel ill or unwell today, or have a cold, or ears or a nose that will not clear?");
        case TodayQuestion::alcohol_or_drugs:
            return tr("Have you had alcohol or any drug since last night?");
        case TodayQuestion::new_medicine:
            return tr("Have you taken any medicine today that you did not tell us about?");
        case TodayQuestion::flight_or_mountain_within_24_hours:
            return tr("Will you fly or drive over a mountain within the next 24 hours?");
        case TodayQuestion::unwilling_or_very_afraid:
            return tr("Would you rather not dive, are you very afraid of it, or did somebody talk you into it?");
        case TodayQuestion::cannot_swim: return tr("Are you unable to swim or float by yourself?");
    }
    return {};
}

QString kit_item(const QString& raw) {
    if (raw == u"suit") return tr("suit");
    if (raw == u"bcd") return tr("BCD");
    if (raw == u"fins") return tr("fins");
    if (raw == u"mask") return tr("mask");
    if (raw == u"regulator") return tr("regulator");
    if (raw == u"lead") return tr("lead");
    return raw;
}

QString language_name(const std::string& tag) {
    const QString text = QString::fromStdString(tag);
    const QLocale locale(text);
    if (locale.language() == QLocale::C || locale.language() == QLocale::AnyLanguage) return text;
    const QString name = QLocale::languageToString(locale.language());
    // Two scripts of one language are two things to read.
    const QString script = text.section(u'-', 1, 1);
    if (script.size() != 4) return name;
    return name + QStringLiteral(", ") + QLocale::scriptToString(locale.script());
}

QStringList common_languages() {
    return {QStringLiteral("en"), QStringLiteral("es"), QStringLiteral("fr"), QStringLiteral("de"),
            QStringLiteral("it"), QStringLiteral("pt"), QStringLiteral("nl"), QStringLiteral("pl"),
            QStringLiteral("ru"), QStringLiteral("zh-Hans"), QStringLiteral("zh-Hant"),
            QStringLiteral("ja"), QStringLiteral("ko"),
            QStringLiteral("ar"), QStringLiteral("sv"), QStringLiteral("da"), QStringLiteral("nb"),
            QStringLiteral("fi"), QStringLiteral("cs"), QStringLiteral("hu"), QStringLiteral("el"),
            QStringLiteral("tr"), QStringLiteral("he"), QStringLiteral("hi"), QStringLiteral("th"),
            QStringLiteral("vi"), QStringLiteral("id"), QStringLiteral("uk"),
            QStringLiteral("ro")};
}

}  // namespace leadline
