// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/booking_model.h"

#include <QApplication>
#include <QLocale>
#include <algorithm>

#include "ui/roster/birth_date_line.h"
#include "ui/roster/marks.h"
#include "ui/widgets/plain_tip.h"
#include "ui/words/booking_text.h"
#include "ui/words/name_words.h"

namespace leadline {

BookingModel::BookingModel(UnitSystem units, QObject* parent)
    : QAbstractTableModel(parent), units_(units), table_(std::make_shared<BookingTable>()) {}

void BookingModel::set_table(std::shared_ptr<const BookingTable> table) {
    beginResetModel();
    table_ = std::move(table);
    preview_ = {};
    choices_ = {};
    by_hand_.assign(table_->lines.size(), std::nullopt);
    endResetModel();
}

void BookingModel::set_preview(BookingPreview preview, const BookingChoices& choices) {
    preview_ = std::move(preview);
    choices_ = choices;
    if (rowCount() == 0) return;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    Q_EMIT ticks_changed();
}

const BookingRow* BookingModel::row_at(int row) const {
    const auto at = static_cast<std::size_t>(row);
    return row >= 0 && at < preview_.rows.size() ? &preview_.rows[at] : nullptr;
}

BookingField BookingModel::field_of(int column) const {
    const auto at = static_cast<std::size_t>(column - 1);
    return column > 0 && at < choices_.columns.size() ? choices_.columns[at] : BookingField::unused;
}

// ---- ticks -------------------------------------------------------------------------------------

bool BookingModel::is_ticked(int row) const {
    const BookingRow* booking = row_at(row);
    if (booking == nullptr) return false;
    return by_hand_[static_cast<std::size_t>(row)].value_or(!booking->is_repeat());
}

int BookingModel::ticked() const {
    int count = 0;
    for (int row = 0; row < rowCount(); ++row) count += is_ticked(row) ? 1 : 0;
    return count;
}

int BookingModel::ticked_with_error() const {
    int count = 0;
    for (int row = 0; row < rowCount(); ++row) {
        const BookingRow* booking = row_at(row);
        count += is_ticked(row) && booking->has_error() ? 1 : 0;
    }
    return count;
}

int BookingModel::repeats_left_out() const {
    int count = 0;
    for (int row = 0; row < rowCount(); ++row) {
        const BookingRow* booking = row_at(row);
        count += booking != nullptr && booking->is_repeat() && !is_ticked(row) ? 1 : 0;
    }
    return count;
}

void BookingModel::untick_errors() {
    for (int row = 0; row < rowCount(); ++row) {
        const BookingRow* booking = row_at(row);
        if (is_ticked(row) && booking->has_error()) by_hand_[static_cast<std::size_t>(row)] = false;
    }
    if (rowCount() == 0) return;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    Q_EMIT ticks_changed();
}

std::vector<Guest> BookingModel::guests() const {
    std::vector<Guest> guests;
    for (int row = 0; row < rowCount(); ++row) {
        if (!is_ticked(row)) continue;
        const BookingRow& booking = *row_at(row);
        Guest guest = booking.guest;
        if (booking.age && !guest.birth_date) {
            const std::string age =
                tr("Age %1 by the booking list").arg(*booking.age).toStdString();
            guest.note = guest.note.empty() ? age : guest.note + "\n" + age;
        }
        guests.push_back(std::move(guest));
    }
    return guests;
}

// ---- what is to be said ------------------------------------------------------------------------

QStringList BookingModel::sentences(const QModelIndex& index) const {
    const BookingRow* booking = index.isValid() ? row_at(index.row()) : nullptr;
    if (booking == nullptr) return {};
    QStringList errors;
    QStringList doubts;
    for (const BookingMessage& message : booking->messages) {
        // What concerns no column stands in the first.
        const int column = message.column ? static_cast<int>(*message.column) + 1 : 0;
        if (column == index.column()) (message.error ? errors : doubts) << sentence(message);
    }
    if (index.column() == 0 && booking->duplicate) {
        const QString who = sentence(*booking->duplicate);
        if (!booking->is_repeat()) {
            doubts << who;
        } else if (is_ticked(index.row())) {
            doubts << tr("%1; will be added anyway. Untick to leave it out.").arg(who);
        } else {
            doubts << tr("%1; will be left out. Tick to add it anyway.").arg(who);
        }
    }
    return errors + doubts;
}

bool BookingModel::is_error(const QModelIndex& index) const {
    const BookingRow* booking = index.isValid() ? row_at(index.row()) : nullptr;
    if (booking == nullptr || !is_ticked(index.row())) return false;
    return std::any_of(booking->messages.begin(), booking->messages.end(),
                       [&](const BookingMessage& message) {
                           const int column =
                               message.column ? static_cast<int>(*message.column) + 1 : 0;
                           return message.error && column == index.column();
                       });
}

QModelIndex BookingModel::next_problem(const QModelIndex& from, bool errors_only) const {
    const int count = rowCount();
    const int first = from.isValid() ? from.row() : 0;
    // The rest of the row, the rows after it, those from the start, and the row's beginning.
    for (int step = 0; step <= count; ++step) {
        const int row = (first + step) % std::max(count, 1);
        const BookingRow* booking = row_at(row);
        if (booking == nullptr || (booking->messages.empty() && !booking->duplicate)) continue;
        if (errors_only && !(is_ticked(row) && booking->has_error())) continue;
        for (int column = 0; column < columnCount(); ++column) {
            if (step == 0 && from.isValid() && column <= from.column()) continue;
            const QModelIndex cell = index(row, column);
            if (errors_only ? is_error(cell) : !sentences(cell).isEmpty()) return cell;
        }
    }
    return {};
}

// ---- the table ---------------------------------------------------------------------------------

int BookingModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table_->lines.size());
}

int BookingModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table_->columns.size()) + 1;
}

QString BookingModel::state_text(int row) const {
    const BookingRow* booking = row_at(row);
    if (booking == nullptr) return {};
    if (booking->is_repeat()) {
        return is_ticked(row) ? tr("Add anyway") : sentence(*booking->duplicate);
    }
    if (!is_ticked(row)) return tr("Leave out");
    return booking->has_error() ? tr("Cannot be added") : tr("Add");
}

QString BookingModel::raw_text(const QModelIndex& index) const {
    const auto& cells = table_->lines[static_cast<std::size_t>(index.row())].cells;
    const auto at = static_cast<std::size_t>(index.column() - 1);
    return at < cells.size() ? QString::fromStdString(cells[at]) : QString();
}

QString BookingModel::cell_text(const QModelIndex& index) const {
    const BookingRow* booking = row_at(index.row());
    const QString raw = raw_text(index);
    if (booking == nullptr || raw.isEmpty()) return raw;
    const Guest& guest = booking->guest;
    switch (field_of(index.column())) {
        case BookingField::birth_date:
            return guest.birth_date ? spelled(*guest.birth_date) : raw;
        case BookingField::mass: return guest.body_mass ? text(*guest.body_mass, units_) : raw;
        case BookingField::height:
            return guest.body_height ? height_text(*guest.body_height, units_) : raw;
        case BookingField::language:
            return sentences(index).isEmpty()
                       ? language_name(guest.language)
                       : raw;
        default: return QString(raw).replace(u'\n', u' ');
    }
}

QVariant BookingModel::mark_of_cell(const QModelIndex& index) const {
    const QPalette palette = QApplication::palette();
    if (is_error(index)) return mark_icon(Mark::stop, palette);
    if (index.column() == 0) {
        const BookingRow* booking = row_at(index.row());
        if (booking == nullptr) return {};
        if (booking->has_error() && is_ticked(index.row())) return mark_icon(Mark::stop, palette);
        if (booking->is_repeat()) return mark_icon(Mark::caution, palette);
        if (booking->duplicate) return mark_icon(Mark::note, palette);
        return {};
    }
    if (!sentences(index).isEmpty()) return mark_icon(Mark::caution, palette);
    return {};
}

QVariant BookingModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    switch (role) {
        case Qt::DisplayRole:
            return index.column() == 0 ? state_text(index.row()) : cell_text(index);
        case Qt::CheckStateRole:
            if (index.column() != 0) return {};
            return is_ticked(index.row()) ? Qt::Checked : Qt::Unchecked;
        case Qt::DecorationRole: return mark_of_cell(index);
        case Qt::ForegroundRole:
            // What is not taken over is faint.
            if (row_at(index.row()) != nullptr &&
                (!is_ticked(index.row()) ||
                 (index.column() > 0 && field_of(index.column()) == BookingField::unused))) {
                return QApplication::palette().brush(QPalette::PlaceholderText);
            }
            return {};
        case Qt::ToolTipRole: {
            QStringList lines = sentences(index);
            if (index.column() > 0 && cell_text(index) != raw_text(index)) {
                lines << tr("In the list: %1").arg(raw_text(index));
            }
            return plain_tip(lines.join(u'\n'));
        }
        case Qt::AccessibleTextRole: {
            QStringList said{index.data(Qt::DisplayRole).toString()};
            return (said + sentences(index)).join(QStringLiteral(". "));
        }
        default: return {};
    }
}

QVariant BookingModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal) {
        return int(Qt::AlignLeft | Qt::AlignTop);
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    if (orientation == Qt::Vertical) {
        return QLocale().toString(
            static_cast<qulonglong>(table_->lines[static_cast<std::size_t>(section)].number));
    }
    if (section == 0) return tr("To be added");
    const auto at = static_cast<std::size_t>(section - 1);
    if (at >= table_->columns.size()) return {};
    const QString header = QString::fromStdString(table_->columns[at].header).simplified();
    const QString shown = header.isEmpty() ? tr("Column %1").arg(section) : header;
    return role == Qt::ToolTipRole ? plain_tip(shown) : shown;
}

Qt::ItemFlags BookingModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const Qt::ItemFlags read = Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    return index.column() == 0 ? read | Qt::ItemIsUserCheckable : read;
}

bool BookingModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || index.column() != 0 || role != Qt::CheckStateRole) return false;
    if (row_at(index.row()) == nullptr) return false;
    by_hand_[static_cast<std::size_t>(index.row())] = value.toInt() == Qt::Checked;
    Q_EMIT dataChanged(index, index.siblingAtColumn(columnCount() - 1));
    Q_EMIT ticks_changed();
    return true;
}

}  // namespace leadline
