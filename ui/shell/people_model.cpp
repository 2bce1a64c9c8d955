// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/people_model.h"

#include <algorithm>
#include <utility>

#include "ui/words/error_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {

PeopleModel::PeopleModel(Database& database, QObject* parent)
    : QAbstractTableModel(parent), database_(database) {
    rows_.set_fetch([this](int first, int count) { return fetch(first, count); });
    search({});
}

void PeopleModel::search(const QString& text) {
    GuestStore store(database_);
    std::optional<std::vector<qint64>> found;
    int count = 0;
    bool cut = false;
    if (text.simplified().isEmpty()) {
        const Result<int> all = store.count();
        if (!all) return Q_EMIT failed(words(all.error()));
        count = *all;
    } else {
        Result<std::vector<qint64>> rows = store.find_rows(text, most_found + 1);
        if (!rows) return Q_EMIT failed(words(rows.error()));
        cut = rows->size() > std::size_t(most_found);
        if (cut) rows->resize(most_found);
        count = int(rows->size());
        found = std::move(*rows);
    }
    beginResetModel();
    text_ = text;
    found_ = std::move(found);
    count_ = count;
    cut_ = cut;
    rows_.clear();
    endResetModel();
}

void PeopleModel::list(std::vector<qint64> persons) {
    beginResetModel();
    text_.clear();
    count_ = int(persons.size());
    found_ = std::move(persons);
    cut_ = false;
    rows_.clear();
    endResetModel();
}

void PeopleModel::reload() {
    if (!found_ || !text_.isEmpty()) return search(text_);
    list(std::move(*found_));
}

std::vector<KnownGuest> PeopleModel::fetch(int first, int count) const {
    GuestStore store(database_);
    if (!found_) return store.page(first, count).value_or({});
    const int end = std::min(first + count, int(found_->size()));
    if (first >= end) return {};
    return store.read({found_->begin() + first, found_->begin() + end}).value_or({});
}

std::optional<KnownGuest> PeopleModel::person(int row) const {
    const KnownGuest* found = row < count_ ? rows_.at(row) : nullptr;
    return found != nullptr ? std::optional(*found) : std::nullopt;
}

int PeopleModel::row_of(qint64 person) const {
    if (!found_) return -1;
    const auto place = std::find(found_->begin(), found_->end(), person);
    return place == found_->end() ? -1 : int(place - found_->begin());
}

int PeopleModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count_;
}

int PeopleModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant PeopleModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole && index.column() == sessions_column) {
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const KnownGuest* person = rows_.at(index.row());
    if (person == nullptr) return {};
    const Guest& guest = person->guest;
    switch (index.column()) {
        case name_column: return QString::fromStdString(guest.name);
        case born_column:
            return guest.birth_date ? spelled(*guest.birth_date) : QString();
        case phone_column: return QString::fromStdString(guest.phone);
        case last_column:
            return person->last_session ? spelled(*person->last_session) : QString();
        case sessions_column: return QString::number(person->sessions);
        default: return {};
    }
}

QVariant PeopleModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case name_column: return tr("Name");
        case born_column: return tr("Born");
        case phone_column: return tr("Phone");
        case last_column: return tr("Last session");
        case sessions_column: return tr("Sessions");
        default: return {};
    }
}

}  // namespace leadline
