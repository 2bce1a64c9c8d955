// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/lever_model.h"

#include <algorithm>

#include "core/planning/levers.h"
#include "ui/document/session_document.h"

namespace leadline {

LeverModel::LeverModel(SessionDocument& document, QObject* parent)
    : QAbstractListModel(parent), document_(document), rows_(rows_now()) {}

std::vector<LeverModel::Row> LeverModel::rows_now() const {
    const Plan& plan = document_.plan();
    const Session& session = document_.session();
    const bool headings = group_.empty() && session.groups.size() > 1;
    double longest = 0.0;
    std::vector<Row> rows;
    GroupId last;
    for (const Lever& lever : plan.levers) {
        if (!group_.empty() && lever.group != group_) continue;
        if (headings && lever.group != last) {
            Row heading;
            heading.heading = true;
            heading.lever.group = lever.group;
            heading.text.what = group_label(session, lever.group);
            rows.push_back(heading);
            last = lever.group;
        }
        Row row;
        row.lever = lever;
        row.text = words(lever, plan, session, document_.units());
        rows.push_back(row);
        if (lever.gain) longest = std::max(longest, lever.gain->value());
    }
    for (Row& row : rows) {
        if (longest <= 0.0 || !row.lever.gain) continue;
        row.share = std::clamp(row.lever.gain->value() / longest, 0.0, 1.0);
    }
    return rows;
}

bool LeverModel::same_kind(const std::vector<Row>& rows) const {
    return std::equal(rows.begin(), rows.end(), rows_.begin(), rows_.end(),
                      [](const Row& a, const Row& b) {
                          return a.heading == b.heading && a.lever.kind == b.lever.kind &&
                                 a.lever.group == b.lever.group &&
                                 a.lever.guest == b.lever.guest;
                      });
}

void LeverModel::refresh() {
    std::vector<Row> rows = rows_now();
    // The same levers with other numbers: the chosen one stays chosen, the list where it is.
    if (same_kind(rows)) {
        rows_ = std::move(rows);
        if (!rows_.empty()) Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

void LeverModel::show_group(const GroupId& group) {
    if (group == group_) return;
    group_ = group;
    refresh();
}

int LeverModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

const Lever* LeverModel::lever_at(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= rowCount()) return nullptr;
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    return row.heading ? nullptr : &row.lever;
}

QVariant LeverModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (role) {
        case Qt::DisplayRole: return row.text.what;
        case Qt::AccessibleTextRole:
            return row.heading ? row.text.what : row.text.sentence;
        case Qt::ToolTipRole:
            // As rich text, which wraps.
            return row.heading ? QVariant()
                               : QVariant(QStringLiteral("<p>%1</p>")
                                              .arg(row.text.sentence.toHtmlEscaped()));
        case gain_role: return row.text.gain;
        case chance_role: return row.text.chance;
        case cost_role: return row.text.cost;
        case share_role: return row.share;
        case heading_role: return row.heading;
        default: return {};
    }
}

Qt::ItemFlags LeverModel::flags(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= rowCount()) return Qt::NoItemFlags;
    if (rows_[static_cast<std::size_t>(index.row())].heading) return Qt::ItemNeverHasChildren;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

bool LeverModel::apply(const QModelIndex& index) {
    const Lever* found = lever_at(index);
    if (found == nullptr) return false;
    const Lever lever = *found;  // the edit makes new rows
    const QString what = index.data().toString();
    return document_
        .edit(tr("Apply: %1").arg(what),
              [&](Session& session) { session = with_lever(session, lever); })
        .has_value();
}

}  // namespace leadline
