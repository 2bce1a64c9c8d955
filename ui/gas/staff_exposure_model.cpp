// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/staff_exposure_model.h"


#include "ui/document/session_document.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

/// Days in a row that can be told of: the session's and those before it that count.
constexpr int most_days = exposure_days + 1;

bool is_staff_number(int column) {
    return column != StaffExposureModel::name_column &&
           column != StaffExposureModel::verdict_column;
}

QString staff_heading(int column) {
    switch (column) {
        case StaffExposureModel::name_column:
            return StaffExposureModel::tr("Staff");
        case StaffExposureModel::verdict_column:
            return StaffExposureModel::tr("Verdict");
        case StaffExposureModel::no_stop_column:
            return StaffExposureModel::tr("No-stop\ntime left");
        case StaffExposureModel::planned_column:
            return StaffExposureModel::tr("Planned\nnow");
        case StaffExposureModel::share_column:
            return StaffExposureModel::tr("Share of\nthe limit");
        case StaffExposureModel::dives_column:
            return StaffExposureModel::tr("Dives\ntoday");
        case StaffExposureModel::ascents_column:
            return StaffExposureModel::tr("Times up\ntoday");
        case StaffExposureModel::days_column:
            return StaffExposureModel::tr("Days in\na row");
        case StaffExposureModel::interval_column:
            return StaffExposureModel::tr("Since the\nlast dive");
        case StaffExposureModel::no_fly_column:
            return StaffExposureModel::tr("Before\nflying");
        default:
            return {};
    }
}

QString heading_help(int column, const SessionDocument& document) {
    switch (column) {
        case StaffExposureModel::name_column:
            return StaffExposureModel::tr("Instructors and assistants of this session.");
        case StaffExposureModel::verdict_column:
            return StaffExposureModel::tr(
                "How this dive stands to the limits of the chosen rules, as "
                "far as earlier dives are on record.");
        case StaffExposureModel::no_stop_column:
            return StaffExposureModel::tr(
                       "Minutes at the deepest planned point, %1, until going "
                       "straight up would no longer be allowed, before this "
                       "session. Rounded down.")
                .arg(text(deepest(document.session().profile), document.units()));
        case StaffExposureModel::planned_column:
            return StaffExposureModel::tr("Time of this session's dive.");
        case StaffExposureModel::share_column:
            return StaffExposureModel::tr(
                "Of the nitrogen that the house allows for going straight "
                "up, the most used at any moment of this dive; ashore, "
                "before this session. 100 % is the limit. Rounded up.");
        case StaffExposureModel::dives_column:
            return StaffExposureModel::tr("Dives of this day, this one included.");
        case StaffExposureModel::ascents_column:
            return StaffExposureModel::tr(
                "Times at the surface this day, those expected in this "
                "session included.");
        case StaffExposureModel::days_column:
            return StaffExposureModel::tr("Days with a dive up to today.");
        case StaffExposureModel::interval_column:
            return StaffExposureModel::tr(
                "Surface interval up to this session's dive. Rounded down.");
        case StaffExposureModel::no_fly_column:
            return StaffExposureModel::tr(
                "Hours to stay off aircraft and passes after the last dive, "
                "by published guidance.");
        default:
            return {};
    }
}

}  // namespace

StaffExposureModel::StaffExposureModel(SessionDocument& document, QObject* parent)
    : IdRowModel(parent), document_(document) {
    refresh();
}

void StaffExposureModel::refresh() {
    std::vector<std::string> ids;
    for (const StaffExposure& exposure : document_.plan().exposures) {
        ids.push_back(exposure.staff.text);
    }
    follow(ids);
}

int StaffExposureModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

const Finding* StaffExposureModel::open_in(const StaffExposure& exposure, int column) const {
    const auto open = [&](FindingCode code) {
        const Finding* finding = exposure_finding(document_.plan(), code, exposure.staff);
        return finding != nullptr && !finding->overruled_because ? finding : nullptr;
    };
    switch (column) {
        case dives_column:
            return open(FindingCode::staff_dives_over_limit);
        case ascents_column:
            return open(FindingCode::staff_ascents_over_limit);
        case days_column:
            return open(FindingCode::staff_days_over_limit);
        case no_stop_column:
            return open(FindingCode::staff_needs_stop);
        default:
            return nullptr;
    }
}

/// The count, and where it is over a limit that limit: "5, at most 4".
QString StaffExposureModel::counted(const StaffExposure& exposure, int column, int count) const {
    QString number = QString::number(count);
    if (column == days_column && count >= most_days) number = tr("%1 or more").arg(most_days);
    const Finding* finding = open_in(exposure, column);
    if (finding == nullptr || finding->values.size() < 2) return number;
    return tr("%1, at most %2").arg(number, text(finding->values[1], document_.units()));
}

QString StaffExposureModel::shown(const StaffExposure& exposure, int column) const {
    switch (column) {
        case name_column: {
            const StaffMember* member = find_staff(document_.session(), exposure.staff);
            return member != nullptr && !member->name.empty() ? QString::fromStdString(member->name)
                                                              : tr("(no name)");
        }
        case verdict_column:
            return staff_verdict(document_, exposure).word;
        case no_stop_column:
            return no_stop_text(exposure);
        case planned_column:
            return exposure.dives_now ? text(exposure.planned_time) : QString(QChar(0x2013));
        case share_column:
            return tissue_share_text(exposure);
        case dives_column:
            return counted(exposure, column, exposure.dives_today);
        case ascents_column:
            return counted(exposure, column, exposure.ascents_today);
        case days_column:
            return counted(exposure, column, exposure.days_in_a_row);
        case interval_column:
            return surface_interval_text(exposure);
        case no_fly_column:
            return no_fly_text(exposure);
        default:
            return {};
    }
}

/// The whole of what a cell has to say: its tooltip, and what a screen reader reads.
QString StaffExposureModel::told(const StaffExposure& exposure, int column) const {
    if (column == verdict_column) {
        const StaffVerdict verdict = staff_verdict(document_, exposure);
        return verdict.full == verdict.word ? verdict.word
                                            : tr("%1. %2").arg(verdict.word, verdict.full);
    }
    if (const Finding* finding = open_in(exposure, column)) {
        const FindingText said = words(*finding, document_.session(), document_.units());
        return tr("%1: %2 %3").arg(label(finding->severity), said.what, said.remedy);
    }
    if (column == no_fly_column && !exposure.no_fly_source.empty()) {
        return tr("%1 after the last dive: %2")
            .arg(no_fly_text(exposure), QString::fromStdString(exposure.no_fly_source));
    }
    return shown(exposure, column);
}

QVariant StaffExposureModel::sorted(const StaffExposure& exposure, int column) const {
    constexpr double never = 1e6;
    switch (column) {
        case verdict_column: {
            constexpr int within = 10;
            constexpr int ashore = 11;
            const StaffVerdict verdict = staff_verdict(document_, exposure);
            if (verdict.severity) return static_cast<int>(*verdict.severity);
            return exposure.dives_now ? within : ashore;
        }
        case no_stop_column:
            return exposure.no_stop_left ? exposure.no_stop_left->value() : never;
        case planned_column:
            return exposure.planned_time.value();
        case share_column:
            return exposure.highest_saturation;
        case dives_column:
            return exposure.dives_today;
        case ascents_column:
            return exposure.ascents_today;
        case days_column:
            return exposure.days_in_a_row;
        case interval_column:
            return exposure.surface_interval ? exposure.surface_interval->value() : never;
        case no_fly_column:
            return exposure.no_fly.value();
        default:
            return shown(exposure, column);
    }
}

QVariant StaffExposureModel::part(const std::string& id, int column, Part part) const {
    const StaffExposure* exposure = find_exposure(document_.plan(), StaffId(id));
    if (exposure == nullptr) return {};
    const auto severity = [&]() -> std::optional<Severity> {
        if (column == verdict_column) return staff_verdict(document_, *exposure).severity;
        const Finding* finding = open_in(*exposure, column);
        return finding != nullptr ? std::optional(finding->severity) : std::nullopt;
    };
    switch (part) {
        case Part::shown: return shown(*exposure, column);
        case Part::told: return told(*exposure, column);
        case Part::sorted: return sorted(*exposure, column);
        case Part::mark: return severity() ? QVariant(static_cast<int>(*severity())) : QVariant();
        case Part::strong: return column == verdict_column && severity().has_value();
    }
    return {};
}

IdRowModel::Heading StaffExposureModel::heading(int column) const {
    return {staff_heading(column), heading_help(column, document_), is_staff_number(column)};
}

}  // namespace leadline
