// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/debrief/debrief_model.h"

#include <QGuiApplication>
#include <algorithm>
#include <cmath>

#include "ui/document/session_document.h"
#include "ui/widgets/theme.h"
#include "ui/words/guest_name.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

std::vector<GuestId> guests_of(const std::optional<Review>& review) {
    std::vector<GuestId> guests;
    if (review) {
        for (const DiverReview& diver : review->divers) guests.push_back(diver.guest);
    }
    return guests;
}

bool editable(int column) {
    return column == DebriefModel::start_column || column == DebriefModel::end_column ||
           column == DebriefModel::duration_column;
}

/// Depths of others in the group stand in brackets; the plan's own are no news and left out.
QString depth_text(const DiverReview& diver, Depth depth, UnitSystem units) {
    switch (diver.depth_source) {
        case DepthSource::own_samples: return text(depth, units);
        case DepthSource::group_samples: return QStringLiteral("(%1)").arg(text(depth, units));
        case DepthSource::planned_profile: return QStringLiteral("–");
    }
    return {};
}

/// "27 → 40 L/min": the unit once.
QString from_to(const QString& planned, const QString& actual) {
    return planned.section(QChar(0x00A0), 0, 0) + QStringLiteral(" → ") + actual;
}

}  // namespace

QString change_words(const DiverReview& diver) {
    if (!diver.actual_rmv || diver.planned_rmv.value() <= 0.0) return {};
    const auto percent = static_cast<int>(
        std::lround((diver.actual_rmv->value() / diver.planned_rmv.value() - 1.0) * 100.0));
    if (percent > 0) return DebriefModel::tr("%1 % more").arg(percent);
    if (percent < 0) return DebriefModel::tr("%1 % less").arg(-percent);
    return DebriefModel::tr("as planned");
}

DebriefModel::DebriefModel(SessionDocument& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document), rows_(guests_of(document.review())) {
    connect(&document_, &SessionDocument::changed, this, &DebriefModel::refresh);
}

int DebriefModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int DebriefModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

void DebriefModel::refresh() {
    std::vector<GuestId> rows = guests_of(document_.review());
    if (rows != rows_) {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
    } else if (!rows_.empty()) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, column_count - 1));
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, column_count - 1);
    }
}

const DiverReview* DebriefModel::review_at(int row) const {
    if (row < 0 || row >= rowCount() || !document_.review()) return nullptr;
    const GuestId& id = rows_[static_cast<std::size_t>(row)];
    const auto& divers = document_.review()->divers;
    const auto found = std::find_if(divers.begin(), divers.end(),
                                    [&](const DiverReview& diver) { return diver.guest == id; });
    return found == divers.end() ? nullptr : &*found;
}

QString DebriefModel::name_of(const DiverReview& diver) const {
    const Guest* guest = find_guest(document_.session(), diver.guest);
    return guest != nullptr ? guest_name(guest->name) : QString();
}

QString DebriefModel::shown(const DiverReview& diver, int column) const {
    const UnitSystem units = document_.units();
    switch (column) {
        case name_column: return name_of(diver);
        case start_column: return text(diver.start_pressure, units);
        case end_column:
            return had_least(diver) ? tr("%1, least").arg(text(diver.end_pressure, units))
                                    : text(diver.end_pressure, units);
        case duration_column: return text(diver.duration);
        case ears_column: return {};  // the tick says it under its heading
        case rmv_column:
            return diver.actual_rmv
                       ? from_to(text(diver.planned_rmv, units), text(*diver.actual_rmv, units))
                       : tr("not yet known");
        case rmv_change_column: return change_words(diver);
        case planned_end_column: return text(diver.planned_end_pressure, units);
        case deepest_column: return depth_text(diver, diver.deepest, units);
        case mean_depth_column: return depth_text(diver, diver.mean_depth, units);
        case used_column:
            if (!diver.entered) return QStringLiteral("–");
            return from_to(text(diver.planned_used_volume, units), text(diver.used_volume, units));
        default: return {};
    }
}

bool DebriefModel::had_least(const DiverReview& diver) const {
    const auto& groups = document_.review()->groups;
    return std::any_of(groups.begin(), groups.end(), [&](const GroupReview& group) {
        return group.lowest_guest == diver.guest;
    });
}

std::optional<Severity> DebriefModel::gravest(const DiverReview& diver) const {
    std::optional<Severity> gravest;
    for (const Finding& finding : document_.review()->findings) {
        const auto* about = std::get_if<GuestId>(&finding.subject);
        if (about == nullptr || *about != diver.guest) continue;
        gravest = std::min(finding.severity, gravest.value_or(Severity::note));
    }
    return gravest;
}

QString DebriefModel::tip(const DiverReview& diver, int column) const {
    switch (column) {
        case name_column: return name_of(diver);
        case rmv_column:
        case rmv_change_column:
            return tr("Air used, over the pressure along the dive (%1). Planned: %2.")
                .arg(label(diver.depth_source), text(diver.planned_rmv, document_.units()));
        case deepest_column:
        case mean_depth_column: return tr("From %1.").arg(label(diver.depth_source));
        default: return {};
    }
}

QVariant DebriefModel::number(const DiverReview& diver, int column) const {
    switch (column) {
        case start_column: return diver.start_pressure.value();
        case end_column: return diver.end_pressure.value();
        case duration_column: return diver.duration.value();
        default: return shown(diver, column);
    }
}

QVariant DebriefModel::data(const QModelIndex& index, int role) const {
    const DiverReview* diver = index.isValid() ? review_at(index.row()) : nullptr;
    if (diver == nullptr) return {};
    switch (role) {
        case Qt::DisplayRole: return shown(*diver, index.column());
        case Qt::EditRole: return number(*diver, index.column());
        case Qt::ToolTipRole: return tip(*diver, index.column());
        case Qt::DecorationRole: {
            const auto severity =
                index.column() == name_column ? gravest(*diver) : std::optional<Severity>();
            return severity ? severity_icon(*severity, QGuiApplication::palette()) : QVariant();
        }
        case Qt::AccessibleTextRole: {
            if (index.column() == ears_column) {
                return diver->ears_troubled ? tr("Trouble") : tr("Fine");
            }
            const auto severity =
                index.column() == name_column ? gravest(*diver) : std::optional<Severity>();
            const QString shown_text = shown(*diver, index.column());
            return severity ? shown_text + QStringLiteral(", ") + label(*severity) : shown_text;
        }
        case Qt::CheckStateRole:
            if (index.column() != ears_column) return {};
            return static_cast<int>(diver->ears_troubled ? Qt::Checked : Qt::Unchecked);
        case Qt::TextAlignmentRole:
            return static_cast<int>((index.column() == name_column || index.column() == ears_column
                                         ? Qt::AlignLeft
                                         : Qt::AlignRight) |
                                    Qt::AlignVCenter);
        case guest_role: return QString::fromStdString(diver->guest.text);
        default: return {};
    }
}

QVariant DebriefModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case name_column: return tr("Guest");
        case start_column: return tr("Start");
        case end_column: return tr("End");
        case duration_column: return tr("Time");
        case ears_column: return tr("Ear\ntrouble");
        case rmv_column: return tr("Breathed,\nplan → actual");
        case rmv_change_column: return tr("Than\nplanned");
        case planned_end_column: return tr("Planned\nend");
        case deepest_column: return tr("Deepest");
        case mean_depth_column: return tr("Mean\ndepth");
        case used_column: return tr("Air used,\nplan → actual");
        default: return {};
    }
}

Qt::ItemFlags DebriefModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (!index.isValid()) return flags;
    if (editable(index.column())) flags |= Qt::ItemIsEditable;
    if (index.column() == ears_column) flags |= Qt::ItemIsUserCheckable;
    return flags;
}

bool DebriefModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const DiverReview* diver = index.isValid() ? review_at(index.row()) : nullptr;
    if (diver == nullptr) return false;
    if (role == Qt::CheckStateRole && index.column() == ears_column) {
        return edit_diver(diver->guest, ears_column, value.toInt() == Qt::Checked ? 1.0 : 0.0);
    }
    bool is_number = false;
    const double typed = value.toDouble(&is_number);
    if (role != Qt::EditRole || !editable(index.column()) || !is_number) return false;
    return edit_diver(diver->guest, index.column(), typed);
}

bool DebriefModel::edit_diver(const GuestId& id, int column, double value) {
    const QString key = QStringLiteral("log/") + QString::fromStdString(id.text) + u'/' +
                        QString::number(column);
    return document_
        .edit_log(
            tr("Change the log"),
            [&](std::optional<DiveLog>& log) {
                if (!log) return;
                for (LogEntry& diver : log->divers) {
                    if (diver.guest != id) continue;
                    switch (column) {
                        case start_column:
                            // A log just started: nothing was breathed yet, so the end goes along.
                            if (diver.end_pressure.value() == diver.start_pressure.value()) {
                                diver.end_pressure = Bars(value);
                            }
                            diver.start_pressure = Bars(value);
                            break;
                        case end_column: diver.end_pressure = Bars(value); break;
                        case duration_column: diver.duration = Minutes(value); break;
                        case ears_column: diver.ears_troubled = value > 0.5; break;
                        default: break;
                    }
                }
            },
            key)
        .has_value();
}

int DebriefModel::row_of(const GuestId& id) const {
    const auto found = std::find(rows_.begin(), rows_.end(), id);
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

}  // namespace leadline
