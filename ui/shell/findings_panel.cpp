// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/findings_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPainter>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "core/planning/overrule_key.h"
#include "ui/document/session_document.h"
#include "ui/shell/findings_model.h"
#include "ui/widgets/overrule_dialog.h"
#include "ui/widgets/theme.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int row_padding = 8;
constexpr int icon_side = 16;

/// Draws a finding as shape, word and name on the first line and what is wrong below, wrapped.
class FindingDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const auto* view = qobject_cast<const QListView*>(option.widget);
        const int width = view != nullptr ? view->viewport()->width() : option.rect.width();
        const QFontMetrics metrics(option.font);
        const QRect text = metrics.boundingRect(
            QRect(0, 0, text_width(width), 1000), Qt::TextWordWrap,
            index.data(FindingsModel::what_role).toString());
        return {width, text.height() + metrics.height() + 2 * row_padding + 2};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        painter->save();
        const bool selected = (option.state & QStyle::State_Selected) != 0;
        const bool overruled = index.data(FindingsModel::overruled_role).isValid();
        const auto severity =
            static_cast<Severity>(index.data(FindingsModel::severity_role).toInt());
        if (selected) painter->fillRect(option.rect, option.palette.alternateBase());
        const Inks colours = inks(option.palette);
        if (selected) painter->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())),
                                        colours.accent);
        const int left = option.rect.left() + row_padding + 4;
        const int top = option.rect.top() + row_padding;
        const QFontMetrics metrics(option.font);
        severity_icon(severity, option.palette)
            .paint(painter, left, top + (metrics.height() - icon_side) / 2, icon_side, icon_side);

        const int text_left = left + icon_side + 8;
        const int width = text_width(option.rect.width());
        QFont bold = option.font;
        bold.setBold(true);
        painter->setFont(bold);
        painter->setPen(overruled ? colours.faint : ink_of(severity, colours));
        const QString word = overruled ? QString(label(severity) + u" · " +
                                                 FindingsPanel::tr("set aside"))
                                       : label(severity);
        const QFontMetrics bold_metrics(bold);
        painter->drawText(QPoint(text_left, top + metrics.ascent()), word);
        const int name_left = text_left + bold_metrics.horizontalAdvance(word) + 8;
        painter->setFont(option.font);
        painter->setPen(option.palette.color(QPalette::Text));
        painter->drawText(
            QPoint(name_left, top + metrics.ascent()),
            metrics.elidedText(index.data(FindingsModel::about_role).toString(), Qt::ElideRight,
                               text_left + width - name_left));
        painter->setPen(colours.faint);
        painter->drawText(QRect(text_left, top + metrics.height() + 2, width, option.rect.height()),
                          Qt::TextWordWrap, index.data(FindingsModel::what_role).toString());
        painter->setPen(colours.rule);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        painter->restore();
    }

private:
    static int text_width(int row_width) {
        return std::max(40, row_width - 2 * row_padding - 4 - icon_side - 8);
    }
    static QColor ink_of(Severity severity, const Inks& colours) {
        switch (severity) {
            case Severity::stop: return colours.stop;
            case Severity::caution: return colours.caution;
            case Severity::note: return colours.note;
        }
        return colours.note;
    }
};

}  // namespace

FindingsPanel::FindingsPanel(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new FindingsModel(document, this)),
      list_(new QListView(this)),
      title_(new QLabel(this)),
      detail_(new QLabel(this)),
      go_(new QPushButton(tr("&Show"), this)),
      overrule_(new QPushButton(tr("Go ahead &anyway…"), this)) {
    setObjectName(QStringLiteral("findings_panel"));
    title_->setObjectName(QStringLiteral("findings_title"));
    QFont heading = title_->font();
    heading.setPointSizeF(heading.pointSizeF() * 1.15);
    heading.setBold(true);
    title_->setFont(heading);
    list_->setObjectName(QStringLiteral("findings_list"));
    list_->setAccessibleName(tr("Findings"));
    list_->setModel(model_);
    list_->setItemDelegate(new FindingDelegate(list_));
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setResizeMode(QListView::Adjust);
    // Without it a list that only becomes narrower keeps its rows too low for the wrapped words.
    list_->setWordWrap(true);
    list_->setFrameShape(QFrame::NoFrame);
    detail_->setObjectName(QStringLiteral("finding_detail"));
    detail_->setWordWrap(true);
    detail_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    go_->setObjectName(QStringLiteral("finding_go"));
    overrule_->setObjectName(QStringLiteral("finding_overrule"));

    auto* buttons = new QHBoxLayout;
    buttons->addWidget(go_);
    buttons->addWidget(overrule_);
    buttons->addStretch();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 8, 8, 8);
    layout->setSpacing(8);
    layout->addWidget(title_);
    layout->addWidget(list_, 1);
    layout->addWidget(detail_);
    layout->addLayout(buttons);

    const auto go = [this] {
        if (const Finding* finding = model_->finding_at(list_->currentIndex().row())) {
            Q_EMIT subject_requested(*finding);
        }
    };
    connect(go_, &QPushButton::clicked, this, go);
    connect(list_, &QListView::activated, this, go);
    connect(overrule_, &QPushButton::clicked, this, [this] {
        const Finding* finding = model_->finding_at(list_->currentIndex().row());
        if (finding == nullptr) return;
        finding->overruled_because ? withdraw() : overrule();
    });
    connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &FindingsPanel::show_current);
    connect(model_, &QAbstractItemModel::modelReset, this, &FindingsPanel::show_current);
    show_current();
}

void FindingsPanel::focus_list() {
    list_->setFocus();
    if (!list_->currentIndex().isValid()) list_->setCurrentIndex(model_->index(0));
}

void FindingsPanel::show_current() {
    title_->setText(model_->rowCount() == 0 ? tr("Nothing found")
                                            : tr("Findings (%1)").arg(model_->rowCount()));
    const int row = list_->currentIndex().row();
    const Finding* finding = model_->finding_at(row);
    go_->setVisible(finding != nullptr);
    overrule_->setVisible(finding != nullptr && finding->severity != Severity::note);
    detail_->setVisible(model_->rowCount() > 0);
    if (finding == nullptr) {
        detail_->setText(tr("Choose one to see what to do."));
        return;
    }
    const FindingText text = model_->text_at(row);
    QString full = QStringLiteral("<p>") + text.remedy.toHtmlEscaped() + QStringLiteral("</p>");
    if (finding->overruled_because) {
        full += QStringLiteral("<p>") +
                tr("Set aside because: %1")
                    .arg(QString::fromStdString(*finding->overruled_because).toHtmlEscaped()) +
                QStringLiteral("</p>");
    }
    full += QStringLiteral("<p><small>") +
            (text.source.isEmpty()
                 ? tr("A check of the program itself.")
                 : tr("From: %1").arg(text.source.toHtmlEscaped())) +
            QStringLiteral("</small></p>");
    detail_->setText(full);
    overrule_->setText(finding->overruled_because ? tr("&Withdraw") : tr("Go ahead &anyway…"));
}

void FindingsPanel::overrule() {
    const int row = list_->currentIndex().row();
    const std::string finding_key = overrule_key(*model_->finding_at(row));
    const StaffMember* leader = find_staff(document_.session(), document_.session().leader);
    OverruleDialog dialog(model_->text_at(row),
                          leader != nullptr ? QString::fromStdString(leader->name) : QString(),
                          this);
    if (dialog.exec() != QDialog::Accepted) return;
    set_aside(document_, finding_key, dialog);
}

void FindingsPanel::withdraw() {
    withdraw_decision(document_, *model_->finding_at(list_->currentIndex().row()));
}

}  // namespace leadline
