// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/suit_stock_model.h"

#include <QApplication>
#include <QLineEdit>
#include <QLocale>
#include <algorithm>

#include "ui/roster/count_box.h"
#include "ui/roster/marks.h"
#include "ui/roster/measures.h"
#include "ui/widgets/plain_tip.h"

namespace leadline {
namespace {

constexpr int longest_label = 100;

}  // namespace

SuitStockModel::SuitStockModel(const Session& session, QObject* parent)
    : QAbstractTableModel(parent), suits_(session.stock.suits) {
    for (const Guest& guest : session.guests) {
        if (!guest.kit.suit.empty()) ++issued_[guest.kit.suit];
    }
}

int SuitStockModel::issued(const std::string& suit) const {
    const auto found = issued_.find(suit);
    return found == issued_.end() ? 0 : found->second;
}

bool SuitStockModel::lists(const std::string& suit) const {
    return std::any_of(suits_.begin(), suits_.end(),
                       [&](const SuitStock& held) { return held.suit == suit; });
}

int SuitStockModel::add(const SuitStock& suit) {
    const int row = rowCount();
    beginInsertRows({}, row, row);
    suits_.push_back(suit);
    endInsertRows();
    return row;
}

void SuitStockModel::remove(int row) {
    beginRemoveRows({}, row, row);
    suits_.erase(suits_.begin() + row);
    endRemoveRows();
}

int SuitStockModel::add_issued() {
    int added = 0;
    for (const auto& [suit, count] : issued_) {
        if (lists(suit)) continue;
        add({suit, count});
        ++added;
    }
    return added;
}

bool SuitStockModel::lacks_issued() const {
    return std::any_of(issued_.begin(), issued_.end(),
                       [&](const auto& issue) { return !lists(issue.first); });
}

void SuitStockModel::set_wrong(std::optional<QModelIndex> cell, const QString& why) {
    const std::optional<QPersistentModelIndex> before = wrong_;
    wrong_.reset();
    if (cell) wrong_ = QPersistentModelIndex(*cell);
    why_ = why;
    for (const auto& index : {before, wrong_}) {
        if (index && index->isValid()) Q_EMIT dataChanged(*index, *index, {Qt::DecorationRole});
    }
}

int SuitStockModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(suits_.size());
}

int SuitStockModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : suit_column_count;
}

QVariant SuitStockModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const SuitStock& held = suits_.at(static_cast<std::size_t>(index.row()));
    const auto column = static_cast<SuitColumn>(index.column());
    const bool wrong = wrong_ && *wrong_ == index;
    const QString label = QString::fromStdString(held.suit);
    if (role == Qt::TextAlignmentRole) {
        return int(Qt::AlignVCenter |
                   (column == SuitColumn::suit ? Qt::AlignLeft : Qt::AlignRight));
    }
    if (role == Qt::DecorationRole && wrong) {
        return mark_icon(Mark::stop, QApplication::palette());
    }
    if (role == Qt::ToolTipRole) return plain_tip(wrong ? why_ : label);
    const bool edits = role == Qt::EditRole || role == Qt::UserRole;
    if (role != Qt::DisplayRole && !edits) return {};
    if (column == SuitColumn::suit) return label;
    const int number = column == SuitColumn::count ? held.count : issued(held.suit);
    return edits ? QVariant(number) : QVariant(QLocale().toString(number));
}

QVariant SuitStockModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return int(Qt::AlignVCenter | (section == 0 ? Qt::AlignLeft : Qt::AlignRight));
    }
    if (role != Qt::DisplayRole) return {};
    switch (static_cast<SuitColumn>(section)) {
        case SuitColumn::suit: return tr("Suit");
        case SuitColumn::count: return tr("In stock");
        case SuitColumn::issued: return tr("Handed out");
    }
    return {};
}

Qt::ItemFlags SuitStockModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const Qt::ItemFlags read = Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    const bool fixed = static_cast<SuitColumn>(index.column()) == SuitColumn::issued;
    return fixed ? read : read | Qt::ItemIsEditable;
}

bool SuitStockModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole) return false;
    SuitStock& held = suits_.at(static_cast<std::size_t>(index.row()));
    switch (static_cast<SuitColumn>(index.column())) {
        case SuitColumn::suit: held.suit = value.toString().simplified().toStdString(); break;
        case SuitColumn::count: held.count = value.toInt(); break;
        case SuitColumn::issued: return false;
    }
    Q_EMIT dataChanged(index.siblingAtColumn(0), index.siblingAtColumn(suit_column_count - 1));
    return true;
}

QWidget* SuitStockDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                         const QModelIndex& index) const {
    QWidget* editor = nullptr;
    if (static_cast<SuitColumn>(index.column()) == SuitColumn::count) {
        editor = new CountBox({}, 0, most_pieces, parent);
    } else {
        editor = QStyledItemDelegate::createEditor(parent, option, index);
        if (auto* line = qobject_cast<QLineEdit*>(editor)) line->setMaxLength(longest_label);
    }
    editor->setObjectName(QStringLiteral("suit_stock_editor"));
    editor->setAccessibleName(
        index.model()->headerData(index.column(), Qt::Horizontal).toString());
    return editor;
}

void SuitStockDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* count = qobject_cast<CountBox*>(editor);
    if (count == nullptr) return QStyledItemDelegate::setEditorData(editor, index);
    count->show_count(index.data(Qt::EditRole).toInt());
    count->selectAll();
}

void SuitStockDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                     const QModelIndex& index) const {
    auto* count = qobject_cast<CountBox*>(editor);
    if (count == nullptr) return QStyledItemDelegate::setModelData(editor, model, index);
    count->interpretText();
    model->setData(index, count->count().value_or(0));
}

}  // namespace leadline
