// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QPalette>
#include <QVariant>
#include <array>
#include <vector>

#include "ui/document/session_document.h"
#include "ui/roster/marks.h"

namespace leadline {

/// What the table tells of a guest, most wanted first.
enum class GuestColumn {
    name,
    findings,
    age,
    group,
    screening,
    consent,
    kit,
    cylinder,
    language,
};
inline constexpr int guest_column_count = 9;

/// The guests of a session as rows, in roster order. Refreshing keeps rows that stay, so that
/// selection and scroll position outlive an edit.
class GuestModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role {
        sort_role = Qt::UserRole + 1,  ///< number or text of one kind a column
        search_role,                   ///< folded name and group
    };

    /// @param document  outlives the model
    explicit GuestModel(const SessionDocument& document, QObject* parent = nullptr);

    /// Takes over the document's guests; tells views only what differs.
    void refresh();
    /// The palette marks are drawn for.
    void set_palette(const QPalette& palette);
    [[nodiscard]] GuestId id_at(int row) const;
    /// Row of a guest; -1 when there is none.
    [[nodiscard]] int row_of(const GuestId& id) const;
    /// Whether any guest needs a guardian's consent.
    [[nodiscard]] bool any_consent() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role) const override;

private:
    struct Cell {
        QString text;
        Mark mark = Mark::none;
        QVariant sort;
        friend bool operator==(const Cell&, const Cell&) = default;
    };
    struct Row {
        GuestId id;
        QString search;
        bool consent_matters = false;
        std::array<Cell, guest_column_count> cells;
        friend bool operator==(const Row&, const Row&) = default;
    };

    [[nodiscard]] Row row_for(const Guest& guest) const;
    [[nodiscard]] Cell findings_cell(const Guest& guest) const;
    [[nodiscard]] Cell consent_cell(const Guest& guest) const;
    [[nodiscard]] Cell kit_cell(const Guest& guest) const;
    [[nodiscard]] Cell group_cell(const Guest& guest) const;
    [[nodiscard]] QString tip(const Row& row, GuestColumn column) const;
    void take_out_missing(const std::vector<Row>& wanted);
    void put_in_new(const std::vector<Row>& wanted);

    const SessionDocument& document_;
    std::vector<Row> rows_;
    std::array<QIcon, 6> icons_;
};

}  // namespace leadline
