// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>

#include "core/planning/profile.h"
#include "ui/site/profile_edit.h"

namespace leadline {

class SessionDocument;

/// The corners of the profile as rows: time, depth, phase. Row 0 is the start.
class ProfileModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { time_column, depth_column, phase_column, column_count };

    explicit ProfileModel(SessionDocument& document, QObject* parent = nullptr);

    /// Whether a typed time moves the later corners along.
    void set_later_corners(LaterCorners later) { later_ = later; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Takes minutes, metres or a Phase as int (Qt::EditRole). False, and nothing changed, when the
    /// document refuses the profile.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    /// A typed value was refused; in words, for beside the table.
    void refused(const QString& message);

private:
    void refresh();
    [[nodiscard]] QVariant shown(const QModelIndex& index) const;
    [[nodiscard]] QVariant edited(const QModelIndex& index) const;

    SessionDocument& document_;
    Profile profile_;  ///< as last shown
    LaterCorners later_ = LaterCorners::follow;
};

}  // namespace leadline
