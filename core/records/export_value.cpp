// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/export_value.h"

#include <QByteArray>
#include <QMetaType>
#include <QString>
#include <cmath>
#include <cstdint>
#include <limits>

namespace leadline {

nlohmann::ordered_json json_of(const QVariant& value) {
    using Json = nlohmann::ordered_json;
    if (value.isNull()) return nullptr;
    switch (value.typeId()) {
        case QMetaType::QByteArray:
            return Json{{"base64", value.toByteArray().toBase64().toStdString()}};
        case QMetaType::LongLong:
            return value.toLongLong();
        case QMetaType::Double: {
            const double number = value.toDouble();
            if (std::isfinite(number)) return number;
            return Json{{"real", number > 0.0 ? "inf" : "-inf"}};
        }
        default: return value.toString().toStdString();
    }
}

Result<QVariant> value_of_json(const nlohmann::json& value, const std::string& place) {
    if (value.is_null()) return QVariant();
    if (value.is_string()) {
        const QString text = QString::fromStdString(value.get_ref<const std::string&>());
        return QVariant(text.isNull() ? QString(QLatin1String("")) : text);
    }
    if (value.is_number_float()) return QVariant(value.get<double>());
    const bool too_large =
        value.is_number_unsigned() &&
        value.get<std::uint64_t>() > std::uint64_t(std::numeric_limits<qint64>::max());
    if (value.is_number_integer() && !too_large) {
        return QVariant(qlonglong(value.get<std::int64_t>()));
    }
    if (value.is_object() && value.size() == 1 && value.begin()->is_string()) {
        const std::string& text = value.begin()->get_ref<const std::string&>();
        if (value.begin().key() == "real" && (text == "inf" || text == "-inf")) {
            const double infinity = std::numeric_limits<double>::infinity();
            return QVariant(text == "inf" ? infinity : -infinity);
        }
        const auto decoded = QByteArray::fromBase64Encoding(
            QByteArray::fromStdString(text), QByteArray::AbortOnBase64DecodingErrors);
        if (value.begin().key() == "base64" && decoded) {
            // A null array would be bound as NULL.
            return QVariant(decoded.decoded.isNull() ? QByteArray("") : decoded.decoded);
        }
    }
    return Error{ErrorCode::wrong_type, place, value.type_name(), "value"};
}

}  // namespace leadline
