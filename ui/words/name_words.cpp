// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/name_words.h"

#include <unicode/uloc.h>

#include <QCoreApplication>
#include <QLocale>

namespace leadline {
namespace {

/// Names the context of this file's texts to lupdate.
class NameTexts {
    Q_DECLARE_TR_FUNCTIONS(Names)
};

}  // namespace

QString label(Severity severity) {
    switch (severity) {
        case Severity::stop:
            return NameTexts::tr("Stop");
        case Severity::caution:
            return NameTexts::tr("Care");
        case Severity::note:
            return NameTexts::tr("Note");
    }
    return {};
}

QString label(Phase phase) {
    switch (phase) {
        case Phase::surface:
            return NameTexts::tr("At the surface");
        case Phase::descent:
            return NameTexts::tr("Down");
        case Phase::skills:
            return NameTexts::tr("Skills");
        case Phase::tour:
            return NameTexts::tr("Tour");
        case Phase::ascent:
            return NameTexts::tr("Up");
    }
    return {};
}

QString label(BreathingClass breathing) {
    switch (breathing) {
        case BreathingClass::calm:
            return NameTexts::tr("Calm");
        case BreathingClass::average:
            return NameTexts::tr("Not known");
        case BreathingClass::nervous:
            return NameTexts::tr("Nervous");
        case BreathingClass::child:
            return NameTexts::tr("Child, at ease");
    }
    return {};
}

QString label(Current current) {
    switch (current) {
        case Current::none:
            return NameTexts::tr("None");
        case Current::slight:
            return NameTexts::tr("Slight");
        case Current::moderate:
            return NameTexts::tr("Moderate");
        case Current::strong:
            return NameTexts::tr("Strong");
    }
    return {};
}

QString label(Entry entry) {
    switch (entry) {
        case Entry::shore:
            return NameTexts::tr("From the shore");
        case Entry::boat:
            return NameTexts::tr("From a boat");
        case Entry::pool_steps:
            return NameTexts::tr("Down steps");
    }
    return {};
}

QString label(StaffRole role) {
    switch (role) {
        case StaffRole::instructor:
            return NameTexts::tr("Instructor");
        case StaffRole::assistant:
            return NameTexts::tr("Assistant");
    }
    return {};
}

QString label(CylinderMetal metal) {
    switch (metal) {
        case CylinderMetal::steel:
            return NameTexts::tr("Steel");
        case CylinderMetal::aluminium:
            return NameTexts::tr("Aluminium");
    }
    return {};
}

QString label(Answer answer) {
    switch (answer) {
        case Answer::unanswered:
            return NameTexts::tr("–");
        case Answer::no:
            return NameTexts::tr("No");
        case Answer::yes:
            return NameTexts::tr("Yes");
    }
    return {};
}

QString label(ScreeningOutcome outcome) {
    switch (outcome) {
        case ScreeningOutcome::unanswered:
            return NameTexts::tr("Not answered");
        case ScreeningOutcome::clear:
            return NameTexts::tr("Clear");
        case ScreeningOutcome::physician_required:
            return NameTexts::tr("Physician first");
        case ScreeningOutcome::does_not_dive:
            return NameTexts::tr("Does not dive");
    }
    return {};
}

QString label(Standing standing) {
    switch (standing) {
        case Standing::read:
            return NameTexts::tr("read in the source");
        case Standing::summary:
            return NameTexts::tr("from a summary of the source");
        case Standing::memory:
            return NameTexts::tr("from memory");
        case Standing::common_practice:
            return NameTexts::tr("common practice, no source");
    }
    return {};
}

QString label(DepthSource source) {
    switch (source) {
        case DepthSource::own_samples:
            return NameTexts::tr("own depths");
        case DepthSource::group_samples:
            return NameTexts::tr("depths of the group");
        case DepthSource::planned_profile:
            return NameTexts::tr("planned depths");
    }
    return {};
}

QString label(TodayOutcome outcome) {
    switch (outcome) {
        case TodayOutcome::unanswered:
            return NameTexts::tr("Not asked today");
        case TodayOutcome::clear:
            return NameTexts::tr("Clear today");
        case TodayOutcome::with_care:
            return NameTexts::tr("With care today");
        case TodayOutcome::not_today:
            return NameTexts::tr("Not today");
    }
    return {};
}

QString label(SignatureKind signature) {
    switch (signature) {
        case SignatureKind::none:
            return NameTexts::tr("Not signed");
        case SignatureKind::on_screen:
            return NameTexts::tr("Signed on the screen");
        case SignatureKind::on_paper:
            return NameTexts::tr("Signed on paper");
    }
    return {};
}

QString edition_words(const std::string& edition) {
    if (edition.empty()) return {};
    if (edition == own_form_edition) return NameTexts::tr("by the centre's own form");
    return NameTexts::tr("edition %1").arg(QString::fromStdString(edition));
}

QString needed(FindingCode code) {
    switch (code) {
        case FindingCode::birth_date_missing:
            return NameTexts::tr("birth date");
        case FindingCode::consent_missing:
            return NameTexts::tr("guardian's consent");
        case FindingCode::screening_unanswered:
            return NameTexts::tr("health questions");
        case FindingCode::screening_physician:
            return NameTexts::tr("physician's release");
        case FindingCode::screening_does_not_dive:
            return NameTexts::tr("to be told: does not dive");
        case FindingCode::screening_out_of_date:
            return NameTexts::tr("health check anew");
        case FindingCode::screening_in_future:
            return NameTexts::tr("date of the health check");
        case FindingCode::approval_older_than_check:
            return NameTexts::tr("physician's release anew");
        default: return {};
    }
}

QString label(TodayQuestion question) {
    switch (question) {
        case TodayQuestion::cold_or_blocked_ears:
            return NameTexts::tr("Cold or blocked ears");
        case TodayQuestion::alcohol_or_drugs:
            return NameTexts::tr("Alcohol or drugs");
        case TodayQuestion::new_medicine:
            return NameTexts::tr("New medicine");
        case TodayQuestion::flight_or_mountain_within_24_hours:
            return NameTexts::tr("Flight or mountain");
        case TodayQuestion::unwilling_or_very_afraid:
            return NameTexts::tr("Unwilling or very afraid");
        case TodayQuestion::cannot_swim:
            return NameTexts::tr("Cannot swim");
    }
    return {};
}

QString question(TodayQuestion question) {
    switch (question) {
        case TodayQuestion::cold_or_blocked_ears:
            return NameTexts::tr(
                "Do you feel ill or unwell today, or have a cold, or ears or a nose that will not "
                "clear?");
        case TodayQuestion::alcohol_or_drugs:
            return NameTexts::tr("Have you had alcohol or any drug since last night?");
        case TodayQuestion::new_medicine:
            return NameTexts::tr(
                "Have you taken any medicine today that you did not tell us about?");
        case TodayQuestion::flight_or_mountain_within_24_hours:
            return NameTexts::tr("Will you fly or drive over a mountain within the next 24 hours?");
        case TodayQuestion::unwilling_or_very_afraid:
            return NameTexts::tr(
                "Would you rather not dive, are you very afraid of it, or did somebody talk you "
                "into it?");
        case TodayQuestion::cannot_swim:
            return NameTexts::tr("Are you unable to swim or float by yourself?");
    }
    return {};
}

QString kit_item(const QString& raw) {
    if (raw == u"suit") return NameTexts::tr("suit");
    if (raw == u"bcd") return NameTexts::tr("BCD");
    if (raw == u"fins") return NameTexts::tr("fins");
    if (raw == u"mask") return NameTexts::tr("mask");
    if (raw == u"regulator") return NameTexts::tr("regulator");
    if (raw == u"lead") return NameTexts::tr("lead");
    return raw;
}

QString with_colon(const QString& name, const QString& text) {
    return NameTexts::tr("%1: %2", "a name, and what is said of it").arg(name, text);
}

QString language_name(const std::string& tag) {
    const QString text = QString::fromStdString(tag);
    const QLocale locale(text);
    if (locale.language() == QLocale::C || locale.language() == QLocale::AnyLanguage) return text;
    const QLocale window;
    const QByteArray shown_in = window.language() == QLocale::C ? "en" : window.name().toLatin1();
    constexpr int longest = 100;
    char16_t name[longest];
    UErrorCode trouble = U_ZERO_ERROR;
    // Two scripts of one language are two things to read: "Chinese (Simplified)".
    const bool has_script = text.section(u'-', 1, 1).size() == 4;
    const auto display = has_script ? uloc_getDisplayName : uloc_getDisplayLanguage;
    const std::int32_t letters =
        display(tag.c_str(), shown_in.constData(), name, longest, &trouble);
    if (U_FAILURE(trouble) != 0 || letters <= 0) return text;
    return QString::fromUtf16(name, letters);
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
