// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/lever_chart.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QUndoStack>
#include <QVBoxLayout>

#include "ui/document/session_document.h"
#include "ui/gas/lever_delegate.h"
#include "ui/gas/lever_model.h"
#include "ui/gas/short_names.h"

namespace leadline {
namespace {

QLabel* wrapping(const QString& name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setMinimumHeight(label->fontMetrics().height());
    return label;
}

}  // namespace

LeverChart::LeverChart(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new LeverModel(document, this)),
      title_(new QLabel(tr("What would &buy more minutes"))),
      figures_(new QLabel(tr("all last the plan"))),
      hint_(wrapping(QStringLiteral("lever_hint"))),
      empty_(wrapping(QStringLiteral("lever_empty"))),
      list_(new QListView),
      done_(done_row()) {
    setObjectName(QStringLiteral("lever_chart"));
    title_->setObjectName(QStringLiteral("lever_title"));
    QFont heading = font();
    heading.setBold(true);
    title_->setFont(heading);
    title_->setBuddy(list_);
    hint_->setForegroundRole(QPalette::PlaceholderText);
    hint_->setText(tr("A click or Enter makes the change; each judged alone."));
    figures_->setObjectName(QStringLiteral("lever_figures"));
    figures_->setForegroundRole(QPalette::PlaceholderText);

    list_->setObjectName(QStringLiteral("lever_list"));
    list_->setAccessibleName(tr("What would buy more minutes"));
    list_->setModel(model_);
    list_->setItemDelegate(new LeverDelegate(list_));
    list_->setSelectionMode(QAbstractItemView::NoSelection);
    list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list_->setResizeMode(QListView::Adjust);
    // Rows follow the width too, not only the height, as costs wrap.
    list_->setWordWrap(true);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setFrameShape(QFrame::NoFrame);
    list_->viewport()->setAttribute(Qt::WA_Hover);
    list_->viewport()->setCursor(Qt::PointingHandCursor);
    list_->viewport()->setAutoFillBackground(false);
    list_->installEventFilter(this);
    list_->setMinimumHeight(fontMetrics().height() * 8);
    // The page is scrolled by what it holds, not by every bar of twelve guests.
    list_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(0, 0, 0, 0);
    head->addWidget(title_, 1);
    head->addWidget(figures_);
    column->addLayout(head);
    column->addWidget(hint_);
    column->addWidget(list_, 1);
    column->addWidget(empty_);
    column->addWidget(done_);
    column->addStretch(0);

    connect(list_, &QListView::clicked, this, &LeverChart::apply);
    connect(&document_, &SessionDocument::changed, this, &LeverChart::refresh);
    connect(&document_, &SessionDocument::opened, this, [this] { undo_index_ = -1; });
    // The stack counts a step only after the document has changed.
    connect(document_.undo_stack(), &QUndoStack::indexChanged, this, &LeverChart::refresh);
    refresh();
}

QWidget* LeverChart::done_row() {
    auto* row = new QWidget;
    done_text_ = wrapping(QStringLiteral("lever_done"));
    undo_ = new QPushButton(tr("Take &it back"));
    undo_->setObjectName(QStringLiteral("lever_undo"));
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(8, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(done_text_, 1);
    layout->addWidget(undo_, 0, Qt::AlignTop);
    connect(undo_, &QPushButton::clicked, this, [this] {
        document_.undo_stack()->undo();
    });
    row->hide();
    return row;
}

void LeverChart::show_group(const GroupId& group) {
    model_->show_group(group);
    refresh();
}

void LeverChart::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (is_stale_) refresh();
}

void LeverChart::refresh() {
    // Typing on another tab does not wait for bars nobody sees.
    is_stale_ = !isVisible();
    if (is_stale_) return;
    const int row = list_->currentIndex().row();
    model_->refresh();
    if (row >= 0) stand_on(row);
    const bool any = model_->rowCount() > 0;
    const bool focus = list_->hasFocus() || undo_->hasFocus();
    list_->setVisible(any);
    hint_->setVisible(any);
    figures_->setVisible(any);
    empty_->setVisible(!any);
    const bool reckoned = !document_.plan().forecasts.empty();
    empty_->setText(reckoned ? tr("Nothing here would help: the air is not what limits this dive.")
                             : tr("Once a guest has a cylinder and its pressure, the changes that "
                                  "would help stand here."));
    done_->setVisible(undo_index_ >= 0 && undo_index_ == document_.undo_stack()->index());
    // What had the keyboard may just have gone.
    if (focus && any) list_->setFocus(Qt::OtherFocusReason);
    if (focus && !any && !done_->isHidden()) undo_->setFocus(Qt::OtherFocusReason);
}

void LeverChart::stand_on(int row) {
    const auto is_bar = [&](int at) {
        return model_->lever_at(model_->index(at)) != nullptr;
    };
    const int count = model_->rowCount();
    for (int away = 0; away < count; ++away) {
        for (const int at : {row - away, row + away}) {
            if (at < 0 || at >= count || !is_bar(at)) continue;
            if (list_->currentIndex().row() != at) list_->setCurrentIndex(model_->index(at));
            return;
        }
    }
}

void LeverChart::apply(const QModelIndex& index) {
    if (model_->lever_at(index) == nullptr) return;
    const QString what = index.data().toString();
    list_->setCurrentIndex(index);
    done_text_->setText(tr("Done: %1.").arg(short_name(what)));
    done_text_->setToolTip(what);
    // Known before the edit, which refreshes this.
    undo_index_ = document_.undo_stack()->index() + 1;
    if (!model_->apply(index)) undo_index_ = -1;
    refresh();
}

bool LeverChart::eventFilter(QObject* watched, QEvent* event) {
    if (watched == list_ && event->type() == QEvent::KeyPress) {
        const auto* key = dynamic_cast<QKeyEvent*>(event);
        const bool enters = key != nullptr && (key->key() == Qt::Key_Return ||
                                               key->key() == Qt::Key_Enter ||
                                               key->key() == Qt::Key_Space);
        if (enters && key->modifiers().testAnyFlags(Qt::ControlModifier | Qt::AltModifier)) {
            return false;
        }
        if (enters && !key->isAutoRepeat()) {
            apply(list_->currentIndex());
            return true;
        }
        if (enters) return true;
    }
    if (watched == list_ && event->type() == QEvent::FocusIn && !list_->currentIndex().isValid()) {
        stand_on(0);
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace leadline
