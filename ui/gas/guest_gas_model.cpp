// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_gas_model.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>
#include <algorithm>
#include <cmath>
#include <functional>

#include "ui/document/session_document.h"
#include "ui/gas/gas_words.h"
#include "ui/gas/guest_gas_edit.h"
#include "ui/gas/guest_gas_headers.h"
#include "ui/widgets/theme.h"
#include "ui/words/finding_words.h"
#include "ui/words/guest_name.h"
#include "ui/words/lever_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

const QString& dash() {
    static const QString text(QChar(0x2013));
    return text;
}

bool is_number(int column) {
    switch (column) {
        case GuestGasModel::name_column:
        case GuestGasModel::group_column:
        case GuestGasModel::cylinder_column:
        case GuestGasModel::breathing_column: return false;
        default: return true;
    }
}

double celsius(Kelvins temperature) {
    return std::round(Celsius(temperature).value() * 1e6) / 1e6;
}

}  // namespace

GuestGasModel::GuestGasModel(SessionDocument& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document) {
    for (const Guest& guest : document_.session().guests) ids_.push_back(guest.id);
    connect(&document_, &SessionDocument::changed, this, &GuestGasModel::refresh);
}

void GuestGasModel::refresh() {
    std::vector<GuestId> now;
    for (const Guest& guest : document_.session().guests) now.push_back(guest.id);
    if (now != ids_) {
        // The same guests, and perhaps new ones at the end or some gone: rows move in or out one by
        // one, and selection and scroll stay. Another order is another list.
        for (int row = rowCount() - 1; row >= 0; --row) {
            const auto at = ids_.begin() + row;
            if (std::find(now.begin(), now.end(), *at) != now.end()) continue;
            beginRemoveRows({}, row, row);
            ids_.erase(at);
            endRemoveRows();
        }
        for (std::size_t i = 0; i < now.size(); ++i) {
            const bool here = i < ids_.size() && ids_[i] == now[i];
            if (here || std::find(ids_.begin(), ids_.end(), now[i]) != ids_.end()) continue;
            const auto row = std::min(i, ids_.size());
            beginInsertRows({}, static_cast<int>(row), static_cast<int>(row));
            ids_.insert(ids_.begin() + static_cast<std::ptrdiff_t>(row), now[i]);
            endInsertRows();
        }
        if (ids_ != now) {
            beginResetModel();
            ids_ = now;
            endResetModel();
        }
    }
    if (!ids_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, column_count - 1));
}

int GuestGasModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ids_.size());
}

int GuestGasModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : column_count;
}

int GuestGasModel::row_of(const GuestId& id) const {
    const auto found = std::find(ids_.begin(), ids_.end(), id);
    return found == ids_.end() ? -1 : static_cast<int>(found - ids_.begin());
}

bool GuestGasModel::is_limiting(const GuestGas& gas) const {
    return is_likely_first(document_.plan(), gas);
}

QString GuestGasModel::cooling(const Guest& guest, const GuestGas& gas) const {
    const UnitSystem units = document_.units();
    const QString wet = text(gas.start_pressure, units, Rounding::down);
    const QString dry = text(guest.kit.cylinder->fill_pressure, units);
    if (dry == wet) return wet;
    return tr("%1 → %2").arg(dry.section(QChar(0x00A0), 0, 0), wet);
}

const Finding* GuestGasModel::finding_for(const GuestId& id, int column) const {
    const auto open = [&](FindingCode code) { return open_finding(document_.plan(), code, id); };
    switch (column) {
        case end_column: return open(FindingCode::ends_below_reserve);
        case minimum_column: return open(FindingCode::minimum_gas_above_reserve);
        case cylinder_column: return open(FindingCode::cylinder_missing);
        default: return nullptr;
    }
}

QString GuestGasModel::calculated(const GuestGas& gas, int column) const {
    if (!gas.has_cylinder) return dash();
    const UnitSystem units = document_.units();
    switch (column) {
        case end_column: return text(gas.end_pressure, units, Rounding::down);
        case minutes_column: {
            const GuestForecast* forecast = find_forecast(document_.plan(), gas.guest);
            const TimeBand band = forecast != nullptr
                                      ? forecast->reserve
                                      : TimeBand{{}, gas.minutes_to_reserve, {}};
            const bool first = is_limiting(gas) && !is_alone(document_.plan(), gas);
            return first ? tr("first, %1").arg(median_text(band)) : median_text(band);
        }
        case spread_column: {
            const GuestForecast* forecast = find_forecast(document_.plan(), gas.guest);
            const QString spread =
                forecast != nullptr ? spread_text(forecast->reserve) : QString();
            return spread.isEmpty() ? dash() : spread;
        }
        case ends_dive_column: {
            const GuestForecast* forecast = find_forecast(document_.plan(), gas.guest);
            return forecast != nullptr ? chance_text(forecast->ends_dive) : dash();
        }
        case turn_column: return text(gas.turn_pressure, units, Rounding::up);
        case leave_column: return text(gas.leave_pressure, units, Rounding::up);
        case minimum_column: return text(gas.minimum_gas, units, Rounding::up);
        case signal_column: return text(gas.signal_pressure, units, Rounding::up);
        default: return {};
    }
}

QString GuestGasModel::shown(const Guest& guest, const GuestGas& gas, int column) const {
    const UnitSystem units = document_.units();
    const auto& cylinder = guest.kit.cylinder;
    switch (column) {
        case name_column: return guest_name(guest.name);
        case group_column: {
            const Group* group = find_group(document_.session(), guest.group);
            return group != nullptr ? QString::fromStdString(group->name) : dash();
        }
        case cylinder_column: {
            const CylinderType* type = cylinder ? find_cylinder_type(cylinder->type) : nullptr;
            return type != nullptr ? text(*type, units) : tr("None yet");
        }
        case fill_column:
            if (!cylinder) return dash();
            return cylinder->fill_pressure.value() > 0.0 ? text(cylinder->fill_pressure, units)
                                                         : tr("Not read");
        case gas_temperature_column:
            return cylinder ? text(cylinder->fill_temperature, units) : dash();
        case breathing_column: return label(guest.breathing);
        case rmv_column:
            return gas.rmv_source == RmvSource::measured
                       ? tr("%1, measured").arg(text(gas.rmv, units))
                       : tr("%1, by class").arg(text(gas.rmv, units));
        case start_column: return gas.has_cylinder ? cooling(guest, gas) : dash();
        default: return calculated(gas, column);
    }
}

QVariant GuestGasModel::edited(const Guest& guest, int column) const {
    const auto& cylinder = guest.kit.cylinder;
    switch (column) {
        case cylinder_column:
            return cylinder ? QString::fromStdString(cylinder->type.text) : QString();
        case fill_column: return cylinder ? cylinder->fill_pressure.value() : QVariant();
        case gas_temperature_column:
            return cylinder ? celsius(cylinder->fill_temperature) : QVariant();
        case breathing_column: return static_cast<int>(guest.breathing);
        case rmv_column: return guest.measured_rmv ? guest.measured_rmv->value() : QVariant();
        default: return {};
    }
}

QVariant GuestGasModel::sorted(const Guest& guest, const GuestGas& gas, int column) const {
    // Guests without a cylinder sort before all others: they need something to be done.
    constexpr double nothing = -1.0;
    const auto& cylinder = guest.kit.cylinder;
    const auto number = [&](auto quantity) {
        return gas.has_cylinder ? quantity.value() : nothing;
    };
    switch (column) {
        case fill_column: return cylinder ? cylinder->fill_pressure.value() : nothing;
        case gas_temperature_column:
            return cylinder ? celsius(cylinder->fill_temperature) : -300.0;
        case cylinder_column: {
            const CylinderType* type = cylinder ? find_cylinder_type(cylinder->type) : nullptr;
            return type != nullptr
                       ? type->water_capacity.value() * 1000.0 + type->working_pressure.value()
                       : nothing;
        }
        case breathing_column: return static_cast<int>(guest.breathing);
        case rmv_column: return gas.rmv.value();
        case start_column: return number(gas.start_pressure);
        case end_column: return number(gas.end_pressure);
        case minutes_column:
            return number(gas.minutes_to_reserve.value_or(Minutes(longest_profile.value() + 1.0)));
        case spread_column: {
            const GuestForecast* forecast = find_forecast(document_.plan(), gas.guest);
            if (forecast == nullptr) return nothing;
            return forecast->reserve.early.value_or(Minutes(longest_profile.value() + 1.0))
                .value();
        }
        case ends_dive_column: {
            const GuestForecast* forecast = find_forecast(document_.plan(), gas.guest);
            return forecast != nullptr ? forecast->ends_dive : nothing;
        }
        case turn_column: return number(gas.turn_pressure);
        case leave_column: return number(gas.leave_pressure);
        case minimum_column: return number(gas.minimum_gas);
        case signal_column: return number(gas.signal_pressure);
        default: return shown(guest, gas, column);
    }
}

QVariant GuestGasModel::tip(const Guest& guest, const GuestGas& gas, int column) const {
    if (const Finding* finding = finding_for(guest.id, column)) {
        const FindingText said = words(*finding, document_.session(), document_.units());
        return QStringLiteral("%1: %2 %3").arg(label(finding->severity), said.what, said.remedy);
    }
    return shown(guest, gas, column);
}

QVariant GuestGasModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const GuestId& id = ids_[static_cast<std::size_t>(index.row())];
    const Guest* guest = find_guest(document_.session(), id);
    const GuestGas* gas = find_gas(document_.plan(), id);
    if (guest == nullptr || gas == nullptr) return {};
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole: return shown(*guest, *gas, column);
        case Qt::EditRole: return edited(*guest, column);
        case Qt::ToolTipRole: return tip(*guest, *gas, column);
        case Qt::AccessibleTextRole:
            return with_colon(gas_heading(column).simplified(),
                              tip(*guest, *gas, column).toString());
        case Qt::TextAlignmentRole:
            return is_number(column) ? QVariant(Qt::AlignRight | Qt::AlignVCenter)
                                     : QVariant(Qt::AlignLeft | Qt::AlignVCenter);
        case Qt::DecorationRole:
            if (const Finding* finding = finding_for(id, column)) {
                return severity_icon(finding->severity, QGuiApplication::palette());
            }
            return {};
        case Qt::FontRole: {
            QFont font;
            font.setBold(is_limiting(*gas));
            return font;
        }
        case sort_role: return sorted(*guest, *gas, column);
        case guest_role: return QString::fromStdString(id.text);
        case group_role: return QString::fromStdString(guest->group.text);
        case limiting_role: return is_limiting(*gas);
        default: return {};
    }
}

QVariant GuestGasModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    switch (role) {
        case Qt::DisplayRole: return gas_heading(section);
        case Qt::ToolTipRole:
            return QStringLiteral("<p>%1</p>")
                .arg(gas_heading_help(section, document_.units()).toHtmlEscaped());
        case Qt::TextAlignmentRole:
            return is_number(section) ? QVariant(Qt::AlignRight | Qt::AlignBottom)
                                      : QVariant(Qt::AlignLeft | Qt::AlignBottom);
        default: return {};
    }
}

Qt::ItemFlags GuestGasModel::flags(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= rowCount()) return Qt::NoItemFlags;
    Qt::ItemFlags result = QAbstractTableModel::flags(index) | Qt::ItemNeverHasChildren;
    const Guest* guest =
        find_guest(document_.session(), ids_[static_cast<std::size_t>(index.row())]);
    if (guest == nullptr) return result;
    switch (index.column()) {
        case fill_column:
        case gas_temperature_column:
            if (guest->kit.cylinder) result |= Qt::ItemIsEditable;
            break;
        case cylinder_column:
        case breathing_column:
        case rmv_column: result |= Qt::ItemIsEditable; break;
        default: break;
    }
    return result;
}

bool GuestGasModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
    const GuestId id = ids_[static_cast<std::size_t>(index.row())];
    const Kelvins air = document_.session().conditions.air_temperature;
    QString what;
    std::function<void(Guest&)> change;
    switch (index.column()) {
        case cylinder_column:
            what = tr("Change a guest's cylinder");
            change = [&](Guest& guest) {
                set_cylinder_type(guest, value.toString().toStdString(), air);
            };
            break;
        case fill_column:
            what = tr("Change a guest's pressure");
            change = [&](Guest& guest) {
                guest.kit.cylinder->fill_pressure = Bars(value.toDouble());
            };
            break;
        case gas_temperature_column:
            what = tr("Change the temperature of a guest's air");
            change = [&](Guest& guest) {
                guest.kit.cylinder->fill_temperature = Celsius(value.toDouble());
            };
            break;
        case breathing_column:
            what = tr("Change how a guest breathes");
            change = [&](Guest& guest) {
                guest.breathing = static_cast<BreathingClass>(value.toInt());
            };
            break;
        case rmv_column:
            what = tr("Change a guest's RMV");
            change = [&](Guest& guest) {
                guest.measured_rmv.reset();
                if (value.isValid()) guest.measured_rmv = LitersPerMinute(value.toDouble());
            };
            break;
        default: return false;
    }
    const Result<Done> done = document_.edit(what, [&](Session& session) {
        if (Guest* guest = find_guest(session, id)) change(*guest);
    });
    if (!done) {
        const Guest* guest = find_guest(document_.session(), id);
        Q_EMIT refused(gas_refusal(done.error(), *guest, document_.units()));
    }
    return done.has_value();
}

}  // namespace leadline
