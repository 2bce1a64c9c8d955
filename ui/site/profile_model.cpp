// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/profile_model.h"

#include <QLocale>
#include <array>
#include <cmath>

#include "ui/document/session_document.h"
#include "ui/site/profile_refusal.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr std::array phases{Phase::surface, Phase::descent, Phase::skills, Phase::tour,
                            Phase::ascent};

/// Minutes with a tenth where there is one: "3 min", "17.5 min".
QString minutes_text(Minutes time) {
    const double tenths = std::round(time.value() * 10.0) / 10.0;
    const int decimals = tenths == std::round(tenths) ? 0 : 1;
    return ProfileModel::tr("%1 min").arg(QLocale().toString(tenths, 'f', decimals));
}

}  // namespace

ProfileModel::ProfileModel(SessionDocument& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document), profile_(document.session().profile) {
    connect(&document_, &SessionDocument::changed, this, &ProfileModel::refresh);
}

void ProfileModel::refresh() {
    const Profile& now = document_.session().profile;
    const int before = rowCount();
    const int after = static_cast<int>(now.points.size());
    // Rows are told apart from the first that differs, so that a selection above it stays.
    int same = 0;
    while (same < std::min(before, after) &&
           profile_.points[static_cast<std::size_t>(same)] ==
               now.points[static_cast<std::size_t>(same)]) {
        ++same;
    }
    if (after > before) {
        const int first = std::min(same, before);
        beginInsertRows({}, first, first + after - before - 1);
        profile_ = now;
        endInsertRows();
    } else if (after < before) {
        const int first = std::min(same, after);
        beginRemoveRows({}, first, first + before - after - 1);
        profile_ = now;
        endRemoveRows();
    } else {
        profile_ = now;
    }
    if (after > 0) Q_EMIT dataChanged(index(0, 0), index(after - 1, column_count - 1));
}

int ProfileModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(profile_.points.size());
}

int ProfileModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

QVariant ProfileModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) {
        if (role != Qt::DisplayRole) return {};
        return section == 0 ? tr("Start") : QLocale().toString(section);
    }
    if (role == Qt::DisplayRole) {
        switch (section) {
            case time_column: return tr("Time");
            case depth_column: return tr("Depth");
            case phase_column: return tr("What on the way");
            default: return {};
        }
    }
    if (role == Qt::ToolTipRole) {
        switch (section) {
            case time_column: return tr("Minutes after the start");
            case depth_column: return tr("Depth of the group at that time");
            case phase_column: return tr("What the group does on the way to this corner");
            default: return {};
        }
    }
    return {};
}

QVariant ProfileModel::shown(const QModelIndex& index) const {
    const ProfilePoint& point = profile_.points[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
        case time_column: return minutes_text(point.time);
        case depth_column: return text(point.depth, document_.units());
        case phase_column: return index.row() == 0 ? tr("Start") : label(point.phase);
        default: return {};
    }
}

QVariant ProfileModel::edited(const QModelIndex& index) const {
    const ProfilePoint& point = profile_.points[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
        case time_column: return point.time.value();
        case depth_column: return point.depth.meters().value();
        case phase_column: return static_cast<int>(point.phase);
        default: return {};
    }
}

QVariant ProfileModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    switch (role) {
        case Qt::DisplayRole: return shown(index);
        case Qt::EditRole: return edited(index);
        case Qt::TextAlignmentRole:
            return index.column() == phase_column ? QVariant(Qt::AlignLeft | Qt::AlignVCenter)
                                                  : QVariant(Qt::AlignRight | Qt::AlignVCenter);
        default: return {};
    }
}

Qt::ItemFlags ProfileModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    Qt::ItemFlags result = QAbstractTableModel::flags(index) | Qt::ItemNeverHasChildren;
    const bool start = index.row() == 0;
    const bool end = index.row() + 1 == rowCount();
    if (!start && !(end && index.column() == depth_column)) result |= Qt::ItemIsEditable;
    return result;
}

bool ProfileModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
    const auto row = static_cast<std::size_t>(index.row());
    Profile profile = document_.session().profile;
    if (row >= profile.points.size()) return false;
    ProfilePoint& point = profile.points[row];
    QString what;
    switch (index.column()) {
        case time_column: {
            what = tr("Change the time of a corner");
            const Minutes change(value.toDouble() - point.time.value());
            point.time = Minutes(value.toDouble());
            if (later_ == LaterCorners::follow) {
                for (std::size_t i = row + 1; i < profile.points.size(); ++i) {
                    profile.points[i].time = profile.points[i].time + change;
                }
            }
            break;
        }
        case depth_column:
            what = tr("Change the depth of a corner");
            point.depth = Depth(Meters(value.toDouble()));
            break;
        case phase_column: {
            const int chosen = value.toInt();
            if (chosen < 0 || chosen >= static_cast<int>(phases.size())) return false;
            what = tr("Change what is done on a leg");
            point.phase = phases[static_cast<std::size_t>(chosen)];
            break;
        }
        default: return false;
    }
    const Result<Done> done =
        document_.edit(what, [&](Session& session) { session.profile = profile; });
    if (!done) Q_EMIT refused(profile_refusal(done.error()));
    return done.has_value();
}

}  // namespace leadline
