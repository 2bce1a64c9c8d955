// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/site/rule_set_list.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/document/session_document.h"
#include "ui/widgets/theme.h"
#include "ui/words/rule_words.h"

namespace leadline {
namespace {

constexpr int id_role = Qt::UserRole;

QListWidgetItem* new_item(const std::string& id, const QString& title, const QString& note) {
    auto* item = new QListWidgetItem(title);
    item->setData(id_role, QString::fromStdString(id));
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    // Rich text, so that a long note is broken into lines.
    item->setToolTip(QStringLiteral("<p><b>%1</b></p><p>%2</p>")
                         .arg(title.toHtmlEscaped(), note.toHtmlEscaped()));
    item->setData(Qt::AccessibleDescriptionRole, note);
    item->setCheckState(Qt::Unchecked);
    return item;
}

}  // namespace

RuleSetList::RuleSetList(SessionDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), list_(new QListWidget) {
    list_->setObjectName(QStringLiteral("rule_sets"));
    list_->setAccessibleName(tr("Rule sets that apply"));
    list_->setTextElideMode(Qt::ElideRight);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setSpacing(2);
    auto* help = new QLabel(tr("Where several apply, the strictest value counts. Local law and "
                               "your centre's standard come first."));
    help->setWordWrap(true);
    help->setForegroundRole(QPalette::PlaceholderText);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(list_);
    column->addWidget(help);
    none_ = new QWidget;
    none_->setObjectName(QStringLiteral("rule_sets_none"));
    none_icon_ = new QLabel;
    auto* none_text = new QLabel(tr("Care: no rule set is ticked. Depth, age and the number of "
                                    "guests are not checked."));
    none_text->setWordWrap(true);
    auto* none_row = new QHBoxLayout(none_);
    none_row->setContentsMargins(0, 0, 0, 0);
    none_row->addWidget(none_icon_, 0, Qt::AlignTop);
    none_row->addWidget(none_text, 1);
    column->addWidget(none_);
    connect(list_, &QListWidget::itemChanged, this, &RuleSetList::item_changed);
    connect(&document_, &SessionDocument::changed, this, &RuleSetList::refresh);
    fill();
    refresh();
}

void RuleSetList::fill() {
    showing_ = true;
    for (const RuleSet& set : document_.rules().sets) {
        list_->addItem(new_item(set.id.text, rule_set_title(set.title),
                                QString::fromStdString(set.note)));
    }
    showing_ = false;
}

void RuleSetList::refresh() {
    showing_ = true;
    const auto& chosen = document_.session().rule_sets;
    for (int row = 0; row < list_->count(); ++row) {
        QListWidgetItem* item = list_->item(row);
        const RuleSetId id(item->data(id_role).toString().toStdString());
        const bool ticked = std::find(chosen.begin(), chosen.end(), id) != chosen.end();
        const Qt::CheckState state = ticked ? Qt::Checked : Qt::Unchecked;
        if (item->checkState() != state) item->setCheckState(state);
    }
    constexpr int side = 18;
    none_icon_->setPixmap(severity_icon(Severity::caution, palette()).pixmap(side, side));
    none_->setVisible(chosen.empty());
    fit_height();
    showing_ = false;
}

void RuleSetList::item_changed(QListWidgetItem* item) {
    if (showing_) return;
    const RuleSetId id(item->data(id_role).toString().toStdString());
    const bool ticked = item->checkState() == Qt::Checked;
    const Result<Done> done = document_.edit(
        ticked ? tr("Apply a rule set") : tr("Leave a rule set out"), [&](Session& session) {
            std::erase(session.rule_sets, id);
            if (ticked) session.rule_sets.push_back(id);
        });
    if (!done) refresh();
}

void RuleSetList::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    fit_height();  // only now have the rows their font
}

void RuleSetList::fit_height() {
    // The whole list stands open: the column around it scrolls.
    const int row = list_->sizeHintForRow(0) + 2 * list_->spacing();
    list_->setFixedHeight(list_->count() * row + 2 * list_->spacing() + 2 * list_->frameWidth());
}

}  // namespace leadline
