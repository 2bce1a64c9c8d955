// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/removal_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>
#include <utility>

#include "ui/widgets/screen_room.h"
#include "ui/widgets/theme.h"
#include "ui/words/guest_name.h"
#include "ui/words/name_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {

namespace {

QLabel* wrapped(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

}  // namespace

RemovalDialog::RemovalDialog(const RemovalPreview& preview, const RetentionRule* keeps_longer,
                             QWidget* parent)
    : QDialog(parent),
      preview_(preview),
      all_(new QRadioButton(tr("&Everything that tells who it was"), this)),
      contacts_(new QRadioButton(tr("Only &phone and e-mail"), this)),
      health_(new QRadioButton(tr("Only &health answers"), this)),
      goes_(wrapped({}, this)),
      stays_(wrapped({}, this)),
      copies_(new QCheckBox(this)),
      sure_(new QCheckBox(tr("I know that this &cannot be undone"), this)) {
    setWindowTitle(tr("Remove a guest"));
    setObjectName(QStringLiteral("removal_dialog"));
    all_->setObjectName(QStringLiteral("removal_all"));
    contacts_->setObjectName(QStringLiteral("removal_contacts"));
    health_->setObjectName(QStringLiteral("removal_health"));
    goes_->setObjectName(QStringLiteral("removal_goes"));
    stays_->setObjectName(QStringLiteral("removal_stays"));
    copies_->setObjectName(QStringLiteral("removal_copies"));
    sure_->setObjectName(QStringLiteral("removal_sure"));
    all_->setChecked(true);

    auto* who = wrapped(QString::fromStdString(preview_.name), this);
    QFont bold = who->font();
    bold.setBold(true);
    who->setFont(bold);
    auto* facts = new QFormLayout;
    facts->setRowWrapPolicy(QFormLayout::DontWrapRows);
    for (const auto& [name, value] : {std::pair(tr("Goes"), goes_), std::pair(tr("Stays"), stays_)}) {
        auto* label = new QLabel(name, this);
        label->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::MinimumExpanding);
        label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        value->setAlignment(Qt::AlignTop | Qt::AlignLeft);
        facts->addRow(label, value);
    }
    copies_->setText(tr("Also delete older &copies of the records (%1)").arg(preview_.copies.size()));
    copies_->setToolTip(preview_.copies.join(u'\n'));
    copies_->setVisible(!preview_.copies.isEmpty());
    auto* copies_note = wrapped(tr("They were made before an update and still hold this guest and "
                                   "all others."),
                                this);
    copies_note->setVisible(!preview_.copies.isEmpty());

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    remove_ = buttons->addButton(tr("&Remove"), QDialogButtonBox::AcceptRole);
    remove_->setObjectName(QStringLiteral("removal_remove"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (QRadioButton* choice : {all_, contacts_, health_}) {
        connect(choice, &QRadioButton::toggled, this, &RemovalDialog::update_text);
    }
    connect(sure_, &QCheckBox::toggled, remove_, &QWidget::setEnabled);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(10);
    layout->addWidget(who);
    layout->addWidget(all_);
    layout->addWidget(contacts_);
    layout->addWidget(health_);
    // What is told scrolls where the screen is too low for it: no line of a warning may be cut off.
    auto* told = new QWidget(this);
    auto* lines = new QVBoxLayout(told);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(10);
    lines->addLayout(facts);
    if (keeps_longer != nullptr) {
        auto* row = new QHBoxLayout;
        auto* icon = new QLabel(this);
        icon->setPixmap(severity_icon(Severity::caution, palette()).pixmap(20, 20));
        auto* warning = wrapped(
            tr("Care: the last session is less than %1 months ago, and records of it may have to be "
               "kept that long (%2; %3). Local law comes first: ask before you remove.")
                .arg(*keeps_longer->keep_at_least_months)
                .arg(QString::fromStdString(keeps_longer->source), label(keeps_longer->standing)),
            this);
        warning->setObjectName(QStringLiteral("removal_warning"));
        row->addWidget(icon, 0, Qt::AlignTop);
        row->addWidget(warning, 1);
        lines->addLayout(row);
    }
    lines->addWidget(copies_);
    lines->addWidget(copies_note);
    if (preview_.backups > 0) {
        auto* backups = wrapped(
            tr("%n copies in Records > Copies of the records may still hold this guest. Delete "
               "them there, or they bring the guest back when one is restored.",
               nullptr, static_cast<int>(preview_.backups)),
            this);
        backups->setObjectName(QStringLiteral("removal_backups"));
        lines->addWidget(backups);
    }
    lines->addWidget(wrapped(tr("Files you wrote or printed, and copies kept elsewhere, are not "
                                "touched: remove them yourself."),
                             this));
    lines->addStretch();
    auto* area = new QScrollArea(this);
    area->setObjectName(QStringLiteral("removal_told"));
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(told);
    layout->addWidget(area, 1);
    setTabOrder(health_, area);
    setTabOrder(area, copies_);
    layout->addWidget(sure_);
    layout->addWidget(buttons);
    remove_->setEnabled(false);
    remove_->setAutoDefault(false);
    buttons->button(QDialogButtonBox::Cancel)->setDefault(true);
    update_text();
    size_for(*area);
}

void RemovalDialog::size_for(QScrollArea& told) {
    constexpr int width = 580;
    constexpr int least_lines = 5;
    told.setMinimumHeight(fontMetrics().height() * least_lines);
    setMinimumWidth(width);
    // Layouts in layouts keep the heights they found first: find them in the font that is shown.
    for (QLabel* label : findChildren<QLabel*>()) label->ensurePolished();
    told.widget()->layout()->activate();
    layout()->activate();
    const QMargins margins = layout()->contentsMargins();
    const int wanted = told.widget()->layout()->totalHeightForWidth(
        width - margins.left() - margins.right() -
        style()->pixelMetric(QStyle::PM_ScrollBarExtent));
    const int around = layout()->totalMinimumSize().height() - told.minimumHeight();
    resize(within_screen(*this, {width, around + wanted}));
}

KeptKind RemovalDialog::kind() const {
    if (contacts_->isChecked()) return KeptKind::contacts;
    return health_->isChecked() ? KeptKind::health : KeptKind::identity;
}

bool RemovalDialog::copies_too() const { return copies_->isChecked(); }

void RemovalDialog::update_text() {
    const QString health = tr("Health answers and sealed records: %1").arg(preview_.health_answers);
    const QString contacts = tr("Phone numbers and e-mail addresses: %1").arg(preview_.contacts);
    const QString sessions = tr("Sessions: %1, logged dives: %2").arg(preview_.sessions)
                                 .arg(preview_.logged_dives);
    switch (kind()) {
        case KeptKind::health:
            goes_->setText(health);
            stays_->setText(tr("%1, with the guest's name and all else").arg(sessions));
            return;
        case KeptKind::contacts:
            goes_->setText(contacts);
            stays_->setText(tr("%1, with the guest's name and all else").arg(sessions));
            return;
        case KeptKind::identity: break;
    }
    QStringList goes{tr("Name, birth date, language, sizes"), contacts, health,
                     tr("Notes of staff: %1").arg(preview_.notes)};
    if (preview_.mentions > 0) {
        goes += tr("The name in other texts of these sessions: %1").arg(preview_.mentions);
    }
    if (!preview_.merged_names.isEmpty()) {
        goes += tr("Merged into this guest: %1")
                    .arg(preview_.merged_names.join(QStringLiteral(", ")));
    }
    goes_->setText(goes.join(u'\n'));
    stays_->setText(tr("%1. In them stands \"%2\", with lead, cylinder and what was logged.")
                        .arg(sessions, guest_name(removed_name)));
}

}  // namespace leadline
