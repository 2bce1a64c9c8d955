// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>
#include <string>

class QSortFilterProxyModel;

namespace leadline {

class IdRowModel;

/// Shows an IdRowModel: sorted by the numbers behind the words, as wide as its columns and as high
/// as its rows, where there is room; from the thirteenth row on it scrolls.
class FigureTable : public QTableView {
    Q_OBJECT
public:
    FigureTable(IdRowModel& model, const QString& object_name, const QString& accessible_name,
                QWidget* parent = nullptr);

    /// Fits widths and height to what is shown now. Cells that are cut take what room there is.
    /// @param room  width the table may have, in pixels
    void fit(int room);
    /// Id of the current row; empty: none.
    [[nodiscard]] std::string current_id() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void current_changed();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    [[nodiscard]] int fitting_width(int column) const;

    QSortFilterProxyModel* proxy_;
    int room_ = 0;
};

}  // namespace leadline
