// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/guest_model.h"

#include <QGuiApplication>
#include <algorithm>

#include "core/records/fold.h"
#include "ui/roster/guest_facts.h"
#include "ui/widgets/plain_tip.h"
#include "ui/words/finding_words.h"
#include "ui/words/guest_name.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr std::size_t at(GuestColumn column) { return static_cast<std::size_t>(column); }

}  // namespace

GuestModel::GuestModel(const SessionDocument& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document) {
    set_palette(QGuiApplication::palette());
    refresh();
}

// ---- what a row says ---------------------------------------------------------------------------

GuestModel::Cell GuestModel::findings_cell(const Guest& guest) const {
    std::vector<Finding> own;
    for (const Finding* finding : findings_of(document_.plan(), guest.id)) own.push_back(*finding);
    const Readiness counts = readiness(own);
    constexpr int stop_weight = 1000;
    const int weight = counts.stops * stop_weight + counts.cautions;
    if (counts.stops > 0) return {count_text(counts), Mark::stop, weight};
    // A guest without fault of the own still stays out while the group or the session may not dive.
    if (card_is_blocked(document_.plan().findings, guest.id, guest.group)) {
        const bool group = std::any_of(
            document_.plan().findings.begin(), document_.plan().findings.end(),
            [&](const Finding& finding) {
                const auto* about = std::get_if<GroupId>(&finding.subject);
                return about != nullptr && *about == guest.group &&
                       finding.severity == Severity::stop && !finding.overruled_because;
            });
        return {group ? tr("Group: stop") : tr("Session: stop"), Mark::stop,
                stop_weight / 2 + counts.cautions};
    }
    if (counts.cautions > 0) return {count_text(counts), Mark::caution, weight};
    return {tr("Ready"), Mark::done, 0};
}

GuestModel::Cell GuestModel::consent_cell(const Guest& guest) const {
    if (!consent_matters(document_, guest)) return {tr("–"), Mark::none, 0};
    if (guest.guardian_consent) return {tr("Seen"), Mark::done, 1};
    return {tr("Missing"), Mark::stop, 2};
}

GuestModel::Cell GuestModel::kit_cell(const Guest& guest) const {
    const QString missing = missing_kit(document_.plan(), guest.id);
    if (missing.isEmpty()) return {tr("Complete"), Mark::done, 0};
    Mark mark = Mark::caution;
    for (const Finding* finding : findings_of(document_.plan(), guest.id)) {
        if (finding->code == FindingCode::kit_missing) mark = mark_of(finding->severity);
    }
    return {tr("No %1").arg(missing), mark, static_cast<int>(missing.count(u',')) + 1};
}

GuestModel::Cell GuestModel::group_cell(const Guest& guest) const {
    const auto& groups = document_.session().groups;
    const auto found = std::find_if(groups.begin(), groups.end(),
                                    [&](const Group& group) { return group.id == guest.group; });
    // Guests without a group come first: there something is left to do.
    if (found == groups.end()) return {tr("Not yet"), Mark::stop, -1};
    return {group_name(document_.session(), guest.group), Mark::none,
            static_cast<int>(found - groups.begin())};
}

GuestModel::Row GuestModel::row_for(const Guest& guest) const {
    Row row;
    row.id = guest.id;
    row.consent_matters = consent_matters(document_, guest);
    auto& cells = row.cells;
    const QString name = guest_name(guest.name);
    cells[at(GuestColumn::name)] = {name, Mark::none, folded(name)};
    cells[at(GuestColumn::findings)] = findings_cell(guest);
    const std::optional<int> age = age_of(document_.session(), guest);
    cells[at(GuestColumn::age)] = {age ? QString::number(*age) : tr("?"),
                                   age ? Mark::none : Mark::open, age.value_or(-1)};
    cells[at(GuestColumn::group)] = group_cell(guest);
    const ScreeningOutcome screened = outcome(guest.screening);
    cells[at(GuestColumn::screening)] = {label(screened), mark_of(screened),
                                         static_cast<int>(screened)};
    cells[at(GuestColumn::consent)] = consent_cell(guest);
    cells[at(GuestColumn::kit)] = kit_cell(guest);
    const QString cylinder = cylinder_text(guest.kit.cylinder, document_.units());
    cells[at(GuestColumn::cylinder)] = {
        cylinder.isEmpty() ? tr("None yet") : cylinder,
        cylinder.isEmpty() ? Mark::stop : Mark::none,
        guest.kit.cylinder ? guest.kit.cylinder->fill_pressure.value() : -1.0};
    const QString language = language_name(guest.language);
    cells[at(GuestColumn::language)] = {language, Mark::none, folded(language)};
    row.search = folded(name + u' ' + group_name(document_.session(), guest.group));
    return row;
}

QString GuestModel::tip(const Row& row, GuestColumn column) const {
    if (column != GuestColumn::findings) return row.cells[at(column)].text;
    QStringList lines;
    for (const Finding* finding : findings_of(document_.plan(), row.id)) {
        const FindingText said = words(*finding, document_.session(), document_.units());
        const QString state =
            finding->overruled_because ? tr("Overruled") : label(finding->severity);
        lines << with_colon(state, said.what + u' ' + said.remedy);
    }
    return lines.isEmpty() ? row.cells[at(column)].text : lines.join(u'\n');
}

// ---- keeping up with the document --------------------------------------------------------------

void GuestModel::take_out_missing(const std::vector<Row>& wanted) {
    for (int row = rowCount() - 1; row >= 0; --row) {
        const GuestId id = id_at(row);
        const bool stays = std::any_of(wanted.begin(), wanted.end(),
                                       [&](const Row& other) { return other.id == id; });
        if (stays) continue;
        beginRemoveRows({}, row, row);
        rows_.erase(rows_.begin() + row);
        endRemoveRows();
    }
}

void GuestModel::put_in_new(const std::vector<Row>& wanted) {
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (i < rows_.size() && rows_[i].id == wanted[i].id) continue;
        const int row = static_cast<int>(i);
        beginInsertRows({}, row, row);
        rows_.insert(rows_.begin() + row, wanted[i]);
        endInsertRows();
    }
}

void GuestModel::refresh() {
    std::vector<Row> wanted;
    for (const Guest& guest : document_.session().guests) wanted.push_back(row_for(guest));
    take_out_missing(wanted);

    // What stays is in the wanted order, unless a session with the same ids in another was opened.
    auto next = wanted.begin();
    const bool in_order = std::all_of(rows_.begin(), rows_.end(), [&](const Row& row) {
        next = std::find_if(next, wanted.end(), [&](const Row& w) { return w.id == row.id; });
        return next != wanted.end();
    });
    if (!in_order) {
        beginResetModel();
        rows_ = std::move(wanted);
        endResetModel();
        return;
    }
    put_in_new(wanted);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (rows_[i] == wanted[i]) continue;
        rows_[i] = std::move(wanted[i]);
        const int row = static_cast<int>(i);
        Q_EMIT dataChanged(index(row, 0), index(row, guest_column_count - 1));
    }
}

void GuestModel::set_palette(const QPalette& palette) {
    for (std::size_t i = 0; i < icons_.size(); ++i) {
        icons_[i] = mark_icon(static_cast<Mark>(i), palette);
    }
    if (!rows_.empty()) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, guest_column_count - 1),
                           {Qt::DecorationRole});
    }
}

GuestId GuestModel::id_at(int row) const {
    const auto place = static_cast<std::size_t>(row);
    return row >= 0 && place < rows_.size() ? rows_[place].id : GuestId();
}

int GuestModel::row_of(const GuestId& id) const {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (rows_[i].id == id) return static_cast<int>(i);
    }
    return -1;
}

bool GuestModel::any_consent() const {
    return std::any_of(rows_.begin(), rows_.end(),
                       [](const Row& row) { return row.consent_matters; });
}

// ---- what views ask ----------------------------------------------------------------------------

int GuestModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int GuestModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : guest_column_count;
}

QVariant GuestModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const Cell& cell = row.cells[static_cast<std::size_t>(index.column())];
    const auto column = static_cast<GuestColumn>(index.column());
    switch (role) {
        case Qt::DisplayRole: return cell.text;
        case Qt::ToolTipRole: return plain_tip(tip(row, column));
        case Qt::DecorationRole:
            if (cell.mark == Mark::none) return {};
            return icons_[static_cast<std::size_t>(cell.mark)];
        case Qt::AccessibleTextRole:
            return with_colon(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                              cell.text);
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
        case sort_role: return cell.sort;
        case search_role: return row.search;
        default: return {};
    }
}

QVariant GuestModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical || section < 0 || section >= guest_column_count) return {};
    if (role == Qt::TextAlignmentRole) {
        return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
    }
    if (role != Qt::DisplayRole) return {};
    switch (static_cast<GuestColumn>(section)) {
        case GuestColumn::name: return tr("Guest");
        case GuestColumn::findings: return tr("Today");
        case GuestColumn::age: return tr("Age");
        case GuestColumn::group: return tr("Group");
        case GuestColumn::screening: return tr("Screening");
        case GuestColumn::consent: return tr("Consent");
        case GuestColumn::kit: return tr("Kit");
        case GuestColumn::cylinder: return tr("Cylinder");
        case GuestColumn::language: return tr("Language");
    }
    return {};
}

}  // namespace leadline
