// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "core/records/guest_store.h"
#include "ui/shell/paged_rows.h"

namespace leadline {

/// The persons on record by name, or those a search found; read as they come into view.
class PeopleModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { name_column, born_column, phone_column, last_column, sessions_column, columns };
    /// A search lists no more: nobody reads further than that.
    static constexpr int most_found = 2000;

    explicit PeopleModel(Database& database, QObject* parent = nullptr);

    /// Lists whom a text finds; everybody for an empty one.
    void search(const QString& text);
    /// Lists these persons, in this order.
    void list(std::vector<qint64> persons);
    /// Reads anew what the list holds.
    void reload();
    [[nodiscard]] std::optional<KnownGuest> person(int row) const;
    /// The row of a person; -1 for one whose row is not known without reading all.
    [[nodiscard]] int row_of(qint64 person) const;
    /// Whether a search found more than are listed.
    [[nodiscard]] bool is_cut() const { return cut_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

Q_SIGNALS:
    void failed(const QString& message);

private:
    [[nodiscard]] std::vector<KnownGuest> fetch(int first, int count) const;

    Database& database_;
    QString text_;
    std::optional<std::vector<qint64>> found_;  ///< nothing: everybody
    int count_ = 0;
    bool cut_ = false;
    mutable PagedRows<KnownGuest> rows_;
};

}  // namespace leadline
