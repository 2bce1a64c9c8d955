// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/earlier_dives_model.h"

#include <QDate>
#include <QLocale>
#include <QTime>
#include <algorithm>
#include <tuple>

#include "ui/roster/marks.h"
#include "ui/widgets/plain_tip.h"
#include "ui/words/name_words.h"

namespace leadline {

QDate qt_date(Date date) {
    return {static_cast<int>(date.year()), static_cast<int>(unsigned(date.month())),
            static_cast<int>(unsigned(date.day()))};
}

Date core_date(QDate date) {
    return Date{std::chrono::year(date.year()),
                std::chrono::month(static_cast<unsigned>(date.month())),
                std::chrono::day(static_cast<unsigned>(date.day()))};
}

EarlierDivesModel::EarlierDivesModel(UnitSystem units, QObject* parent)
    : QAbstractTableModel(parent), units_(units) {}

void EarlierDivesModel::show_dives(std::vector<EarlierDive> dives) {
    beginResetModel();
    dives_ = std::move(dives);
    std::stable_sort(dives_.begin(), dives_.end(), [](const auto& a, const auto& b) {
        return std::tie(a.date, a.start) > std::tie(b.date, b.start);
    });
    wrong_.reset();
    endResetModel();
}

int EarlierDivesModel::add(const EarlierDive& dive) {
    beginInsertRows({}, 0, 0);
    dives_.insert(dives_.begin(), dive);
    endInsertRows();
    return 0;
}

void EarlierDivesModel::remove(int row) {
    beginRemoveRows({}, row, row);
    dives_.erase(dives_.begin() + row);
    endRemoveRows();
}

void EarlierDivesModel::set_wrong(std::optional<QModelIndex> cell, const QString& why) {
    const std::optional<QPersistentModelIndex> before = wrong_;
    wrong_.reset();
    if (cell) wrong_ = QPersistentModelIndex(*cell);
    why_ = why;
    // The role says that no value has changed.
    for (const auto& index : {before, wrong_}) {
        if (index && index->isValid()) Q_EMIT dataChanged(*index, *index, {Qt::DecorationRole});
    }
}

void EarlierDivesModel::set_palette(const QPalette& palette) { palette_ = palette; }

int EarlierDivesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(dives_.size());
}

int EarlierDivesModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : dive_column_count;
}

QString EarlierDivesModel::shown(const EarlierDive& dive, DiveColumn column) const {
    switch (column) {
        case DiveColumn::date: return text(dive.date);
        case DiveColumn::start: return text(dive.start);
        case DiveColumn::deepest: return text(dive.deepest, units_, Rounding::up);
        case DiveColumn::duration: return text(dive.duration);
        case DiveColumn::ascents: return QLocale().toString(dive.ascents);
    }
    return {};
}

QVariant EarlierDivesModel::edited(const EarlierDive& dive, DiveColumn column) {
    constexpr int milliseconds = 60'000;
    switch (column) {
        case DiveColumn::date: return qt_date(dive.date);
        case DiveColumn::start:
            return QTime::fromMSecsSinceStartOfDay(dive.start.minutes_after_midnight *
                                                   milliseconds);
        case DiveColumn::deepest: return dive.deepest.meters().value();
        case DiveColumn::duration: return dive.duration.value();
        case DiveColumn::ascents: return dive.ascents;
    }
    return {};
}

QVariant EarlierDivesModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const EarlierDive& dive = dives_.at(static_cast<std::size_t>(index.row()));
    const auto column = static_cast<DiveColumn>(index.column());
    const bool wrong = wrong_ && *wrong_ == index;
    switch (role) {
        case Qt::DisplayRole: return shown(dive, column);
        case Qt::EditRole:
        case Qt::UserRole: return edited(dive, column);
        case Qt::DecorationRole:
            return wrong ? QVariant(mark_icon(Mark::stop, palette_)) : QVariant();
        case Qt::ToolTipRole:
        case Qt::AccessibleDescriptionRole: return wrong ? QVariant(plain_tip(why_)) : QVariant();
        case Qt::AccessibleTextRole:
            return with_colon(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                              shown(dive, column));
        case Qt::TextAlignmentRole:
            return int(Qt::AlignVCenter |
                       (column == DiveColumn::date ? Qt::AlignLeft : Qt::AlignRight));
        default: return {};
    }
}

QVariant EarlierDivesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return int(Qt::AlignVCenter | (section == 0 ? Qt::AlignLeft : Qt::AlignRight));
    }
    if (role == Qt::ToolTipRole && static_cast<DiveColumn>(section) == DiveColumn::ascents) {
        return tr("Times at the surface, the last one included.");
    }
    if (role != Qt::DisplayRole) return {};
    switch (static_cast<DiveColumn>(section)) {
        case DiveColumn::date: return tr("Date");
        case DiveColumn::start: return tr("Start");
        case DiveColumn::deepest: return tr("Deepest");
        case DiveColumn::duration: return tr("Minutes");
        case DiveColumn::ascents: return tr("Ascents");
    }
    return {};
}

Qt::ItemFlags EarlierDivesModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    return Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsEditable |
           Qt::ItemNeverHasChildren;
}

bool EarlierDivesModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole) return false;
    EarlierDive& dive = dives_.at(static_cast<std::size_t>(index.row()));
    constexpr int milliseconds = 60'000;
    switch (static_cast<DiveColumn>(index.column())) {
        case DiveColumn::date: dive.date = core_date(value.toDate()); break;
        case DiveColumn::start:
            dive.start = TimeOfDay{value.toTime().msecsSinceStartOfDay() / milliseconds};
            break;
        case DiveColumn::deepest: dive.deepest = Depth(Meters(value.toDouble())); break;
        case DiveColumn::duration: dive.duration = Minutes(value.toDouble()); break;
        case DiveColumn::ascents: dive.ascents = value.toInt(); break;
    }
    Q_EMIT dataChanged(index, index);
    return true;
}

}  // namespace leadline
