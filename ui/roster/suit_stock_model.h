// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QPersistentModelIndex>
#include <QStyledItemDelegate>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/planning/session.h"

namespace leadline {

enum class SuitColumn { suit, count, issued };
inline constexpr int suit_column_count = 3;

/// Suits in stock while they are typed: label, number, and how many of them guests have.
class SuitStockModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit SuitStockModel(const Session& session, QObject* parent = nullptr);

    [[nodiscard]] const std::vector<SuitStock>& suits() const { return suits_; }
    /// At the end. @returns its row
    int add(const SuitStock& suit);
    void remove(int row);
    /// Adds the labels guests have suits of, with as many as they have. @returns how many labels
    int add_issued();
    [[nodiscard]] bool lacks_issued() const;
    void set_wrong(std::optional<QModelIndex> cell, const QString& why);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

private:
    [[nodiscard]] int issued(const std::string& suit) const;
    [[nodiscard]] bool lists(const std::string& suit) const;

    std::vector<SuitStock> suits_;
    std::map<std::string, int> issued_;
    std::optional<QPersistentModelIndex> wrong_;
    QString why_;
};

/// A line for the label, a box for the number.
class SuitStockDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
};

}  // namespace leadline
