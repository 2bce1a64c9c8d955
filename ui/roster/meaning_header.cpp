// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roster/meaning_header.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QEvent>
#include <QPainter>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QStringListModel>
#include <algorithm>

#include "ui/widgets/wheel_guard.h"
#include "ui/words/booking_text.h"

namespace leadline {
namespace {

constexpr int gap = 4;

QStringList meaning_names() {
    QStringList names;
    for (int i = 0; i < booking_field_count; ++i) names << label(static_cast<BookingField>(i));
    return names;
}

}  // namespace

MeaningHeader::MeaningHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setObjectName(QStringLiteral("booking_header"));
    setSectionsClickable(false);
    setHighlightSections(false);
    connect(this, &QHeaderView::sectionResized, this, &MeaningHeader::place_choices);
}

void MeaningHeader::set_meanings(const std::vector<BookingField>& fields) {
    for (QComboBox* choice : choices_) delete choice;
    choices_.clear();
    changed_last_ = 0;
    auto* names = new QStringListModel(meaning_names(), this);  // one for all
    for (std::size_t i = 0; i < fields.size(); ++i) {
        auto* choice = new QComboBox(viewport());
        choice->setModel(names);
        choice->setObjectName(QStringLiteral("meaning_%1").arg(i));
        const QString header =
            model() != nullptr
                ? model()->headerData(static_cast<int>(i) + 1, Qt::Horizontal).toString()
                : QString();
        choice->setAccessibleName(tr("Meaning of the column %1").arg(header));
        choice->setMaxVisibleItems(booking_field_count);
        choice->setCurrentIndex(static_cast<int>(fields[i]));
        choice->installEventFilter(this);
        guard_wheel(choice);
        connect(choice, &QComboBox::currentIndexChanged, this, [this, i] {
            changed_last_ = i;
            Q_EMIT meanings_changed();
        });
        choice->show();
        choices_.push_back(choice);
    }
    place_choices();
    updateGeometry();
    Q_EMIT geometriesChanged();
}

std::vector<BookingField> MeaningHeader::meanings() const {
    std::vector<BookingField> fields;
    for (const QComboBox* choice : choices_) {
        fields.push_back(static_cast<BookingField>(choice->currentIndex()));
    }
    if (changed_last_ >= fields.size()) return fields;
    const BookingField taken = fields[changed_last_];
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const bool again = i != changed_last_ && fields[i] == taken && taken != BookingField::note;
        if (again) fields[i] = BookingField::unused;
    }
    return fields;
}

void MeaningHeader::settle() {
    const std::vector<BookingField> fields = meanings();
    for (std::size_t i = 0; i < choices_.size(); ++i) {
        const QSignalBlocker quiet(choices_[i]);
        choices_[i]->setCurrentIndex(static_cast<int>(fields[i]));
    }
}

QSize MeaningHeader::sizeHint() const {
    QSize size = QHeaderView::sizeHint();
    if (!choices_.empty()) {
        size.setHeight(size.height() + choices_.front()->sizeHint().height() + gap);
    }
    return size;
}

void MeaningHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
    painter->save();
    painter->fillRect(rect, palette().brush(QPalette::Button));
    painter->setPen(palette().color(QPalette::Mid));
    painter->drawLine(rect.topRight(), rect.bottomRight());
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    painter->setPen(palette().color(QPalette::ButtonText));
    const QRect inner = rect.adjusted(2 * gap, gap, -gap, -gap);
    const QString text = model()->headerData(section, Qt::Horizontal).toString();
    painter->drawText(inner, Qt::AlignLeft | Qt::AlignTop | Qt::TextSingleLine,
                      fontMetrics().elidedText(text, Qt::ElideRight, inner.width()));
    painter->restore();
}

void MeaningHeader::updateGeometries() {
    QHeaderView::updateGeometries();
    place_choices();
}

void MeaningHeader::place_choices() {
    for (std::size_t i = 0; i < choices_.size(); ++i) {
        const int section = static_cast<int>(i) + 1;
        const int high = choices_[i]->sizeHint().height();
        choices_[i]->setGeometry(sectionViewportPosition(section) + gap / 2, height() - high - gap,
                                 sectionSize(section) - gap, high);
    }
}

bool MeaningHeader::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusOut) settle();
    if (event->type() == QEvent::FocusIn) {
        // The column of the choice that has the focus comes into sight.
        auto* view = qobject_cast<QAbstractItemView*>(parentWidget());
        for (std::size_t i = 0; view != nullptr && i < choices_.size(); ++i) {
            if (choices_[i] != watched || model() == nullptr || model()->rowCount() == 0) continue;
            const int row = std::max(view->indexAt({0, 0}).row(), 0);
            view->scrollTo(model()->index(row, static_cast<int>(i) + 1));
        }
        place_choices();
    }
    return QHeaderView::eventFilter(watched, event);
}

}  // namespace leadline
