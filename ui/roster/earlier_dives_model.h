// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QPalette>
#include <optional>
#include <vector>

#include "core/planning/session.h"
#include "ui/words/quantity_text.h"

namespace leadline {

enum class DiveColumn { date, start, deepest, duration, ascents };
inline constexpr int dive_column_count = 5;

/// Earlier dives while they are typed, one a row. What a row holds is judged by whoever shows it,
/// together with the session.
class EarlierDivesModel : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit EarlierDivesModel(UnitSystem units, QObject* parent = nullptr);

    /// Newest first.
    void show_dives(std::vector<EarlierDive> dives);
    [[nodiscard]] const std::vector<EarlierDive>& dives() const { return dives_; }
    /// At the top. @returns its row
    int add(const EarlierDive& dive);
    void remove(int row);
    /// Marks the cell that is wrong; none takes the mark away.
    void set_wrong(std::optional<QModelIndex> cell, const QString& why);
    void set_palette(const QPalette& palette);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

private:
    [[nodiscard]] QString shown(const EarlierDive& dive, DiveColumn column) const;
    [[nodiscard]] static QVariant edited(const EarlierDive& dive, DiveColumn column);

    UnitSystem units_;
    std::vector<EarlierDive> dives_;
    std::optional<QPersistentModelIndex> wrong_;
    QString why_;
    QPalette palette_;
};

/// Qt's date of a core's, and back.
QDate qt_date(Date date);
Date core_date(QDate date);

}  // namespace leadline
