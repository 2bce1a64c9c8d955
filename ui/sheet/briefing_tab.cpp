// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/briefing_tab.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/planning/overrule_key.h"
#include "ui/document/session_document.h"
#include "ui/sheet/card_list.h"
#include "ui/sheet/cards.h"
#include "ui/sheet/page_preview.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/print.h"
#include "ui/widgets/overrule_dialog.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/quantity_text.h"

namespace leadline {
namespace {

constexpr int side_width = 340;

QPushButton* button(const QString& text, const char* name, QWidget* parent) {
    auto* made = new QPushButton(text, parent);
    made->setObjectName(QString::fromLatin1(name));
    return made;
}

}  // namespace

BriefingTab::BriefingTab(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      list_(new CardList(document, this)),
      preview_(new PagePreview(this)),
      size_(new QComboBox(this)),
      show_(button(tr("Put &it right"), "briefing_show", this)),
      overrule_(button(tr("&Go ahead anyway…"), "briefing_overrule", this)),
      print_(button(tr("&Print…"), "briefing_print", this)),
      save_(button(tr("Save as P&DF…"), "briefing_save_pdf", this)),
      previous_(button(tr("‹ Back"), "briefing_previous", this)),
      next_(button(tr("Next ›"), "briefing_next", this)),
      page_number_(new QLabel(this)),
      summary_(new QLabel(this)),
      status_icon_(new QLabel(this)),
      status_(new QLabel(this)) {
    setObjectName(QStringLiteral("briefing_tab"));
    choose_pdf_path_ = [this] {
        return QFileDialog::getSaveFileName(this, tr("Save the cards"),
                                            QStringLiteral("cards.pdf"), tr("PDF (*.pdf)"));
    };
    has_printer_ = [] { return !QPrinterInfo::availablePrinterNames().isEmpty(); };
    size_->setObjectName(QStringLiteral("briefing_size"));
    size_->addItem(tr("A6, four to an A4 page"), static_cast<int>(CardSize::a6_on_a4));
    size_->addItem(tr("Quarter Letter, four to a page"),
                   static_cast<int>(CardSize::quarter_letter));
    status_->setObjectName(QStringLiteral("briefing_status"));
    status_->setWordWrap(true);
    summary_->setObjectName(QStringLiteral("briefing_summary"));
    summary_->setWordWrap(true);
    page_number_->setObjectName(QStringLiteral("briefing_page"));
    previous_->setAccessibleName(tr("Page before"));
    next_->setAccessibleName(tr("Next page"));

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(16, 16, 16, 16);
    layout->setSpacing(16);
    layout->addWidget(build_side());
    layout->addWidget(build_pages(), 1);

    connect(list_, &CardList::selection_changed, this, &BriefingTab::refresh);
    connect(list_, &QListWidget::currentRowChanged, this, &BriefingTab::update_buttons);
    connect(&document_, &SessionDocument::changed, this, &BriefingTab::refresh);
    connect(size_, &QComboBox::currentIndexChanged, this, &BriefingTab::refresh);
    connect(save_, &QPushButton::clicked, this, &BriefingTab::save_pdf);
    connect(print_, &QPushButton::clicked, this, &BriefingTab::print);
    connect(overrule_, &QPushButton::clicked, this, &BriefingTab::overrule);
    connect(show_, &QPushButton::clicked, this, [this] {
        if (const auto stop = list_->current_stop()) Q_EMIT subject_requested(stop->subject);
    });
    connect(previous_, &QPushButton::clicked, this,
            [this] { preview_->set_current(preview_->current() - 1); });
    connect(next_, &QPushButton::clicked, this,
            [this] { preview_->set_current(preview_->current() + 1); });
    connect(preview_, &PagePreview::page_changed, this, &BriefingTab::update_buttons);
    refresh();
}

QWidget* BriefingTab::build_side() {
    auto* side = new QWidget(this);
    side->setFixedWidth(side_width);
    auto* heading = new QLabel(tr("Cards &for"), side);
    QFont bold = heading->font();
    bold.setBold(true);
    bold.setPointSizeF(bold.pointSizeF() * 1.15);
    heading->setFont(bold);
    heading->setBuddy(list_);
    auto* all = button(tr("&All"), "briefing_all", side);
    auto* none = button(tr("N&one"), "briefing_none", side);
    connect(all, &QPushButton::clicked, this, [this] { list_->set_all_wanted(true); });
    connect(none, &QPushButton::clicked, this, [this] { list_->set_all_wanted(false); });
    auto* top = new QHBoxLayout;
    top->addWidget(heading, 1);
    top->addWidget(all);
    top->addWidget(none);
    auto* stops = new QHBoxLayout;
    stops->addWidget(show_);
    stops->addWidget(overrule_);
    stops->addStretch();
    auto* size_label = new QLabel(tr("Card si&ze"), side);
    size_label->setBuddy(size_);
    auto* actions = new QHBoxLayout;
    actions->addWidget(print_);
    actions->addWidget(save_);
    actions->addStretch();
    auto* status = new QHBoxLayout;
    status->addWidget(status_icon_, 0, Qt::AlignTop);
    status->addWidget(status_, 1);

    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addLayout(top);
    layout->addWidget(list_, 1);
    layout->addLayout(stops);
    layout->addWidget(summary_);
    layout->addWidget(size_label);
    layout->addWidget(size_);
    layout->addLayout(actions);
    layout->addLayout(status);
    return side;
}

QWidget* BriefingTab::build_pages() {
    auto* pages = new QWidget(this);
    auto* real = new QCheckBox(tr("Real size on s&creen"), pages);
    real->setObjectName(QStringLiteral("briefing_real_size"));
    connect(real, &QCheckBox::toggled, preview_, &PagePreview::set_real_size);
    auto* bar = new QHBoxLayout;
    bar->addWidget(previous_);
    bar->addWidget(page_number_);
    bar->addWidget(next_);
    bar->addStretch();
    bar->addWidget(real);
    auto* layout = new QVBoxLayout(pages);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addLayout(bar);
    layout->addWidget(preview_, 1);
    return pages;
}

CardSize BriefingTab::size() const {
    return static_cast<CardSize>(size_->currentData().toInt());
}

void BriefingTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void BriefingTab::refresh() {
    stale_ = !isVisible();
    if (stale_) return;
    const Session& session = document_.session();
    const CardSelection selection =
        select_cards(session, document_.plan(), document_.units(), list_->left_out());
    preview_->set_empty_text(session.guests.empty()
                                 ? tr("No guests yet. Add them on the Roster tab.")
                                 : tr("No card to show: every ticked guest has a stop, or none is "
                                      "ticked."));
    preview_->show_pages(card_pages(selection.cards, size()));
    const int count = selection.guests();
    QString text = count == 1 ? tr("1 card") : tr("%1 cards").arg(count);
    if (!selection.blocked.empty()) {
        text += QStringLiteral(" · ") + tr("%1 refused: a stop stands")
                                            .arg(selection.blocked.size());
    }
    int others = 0;
    for (const Guest& guest : session.guests) {
        others += guest.language.rfind("en", 0) == 0 ? 0 : 1;
    }
    if (others > 0) {
        text += u'\n' + tr("Cards are in English; %1 guests read another language best: go through "
                           "the pictures together.")
                            .arg(others);
    }
    summary_->setText(text);
    status_->clear();
    status_icon_->clear();
    update_buttons();
}

void BriefingTab::update_buttons() {
    const bool stopped = list_->current_stop().has_value();
    show_->setEnabled(stopped);
    overrule_->setEnabled(stopped);
    const bool any = preview_->count() > 0;
    print_->setEnabled(any);
    save_->setEnabled(any);
    previous_->setEnabled(preview_->current() > 0);
    next_->setEnabled(preview_->current() + 1 < preview_->count());
    page_number_->setText(any ? tr("Page %1 of %2").arg(preview_->current() + 1)
                                    .arg(preview_->count())
                              : tr("No pages"));
}

QString BriefingTab::status() const { return status_->text(); }

void BriefingTab::say(const QString& text, Severity severity) {
    constexpr int icon_side = 18;
    status_icon_->setPixmap(severity_icon(severity, palette()).pixmap(icon_side, icon_side));
    status_->setText(text);
}

void BriefingTab::save_pdf() {
    const QString path = choose_pdf_path_();
    if (path.isEmpty()) return;
    const Result<int> written = write_pages_pdf(
        path, preview_->pages(), QString::fromStdString(document_.session().title));
    if (!written) {
        say(words(written.error()), Severity::stop);
    } else {
        say(*written == 1 ? tr("1 page saved to %1").arg(path)
                          : tr("%1 pages saved to %2").arg(*written).arg(path),
            Severity::note);
    }
}

void BriefingTab::print() {
    if (!has_printer_()) {
        say(tr("No printer is installed on this computer. Save the cards as a PDF instead, or "
               "install a printer."),
            Severity::caution);
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(QString::fromStdString(document_.session().title));
    prepare_printer(printer, paper_of(size()));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    prepare_printer(printer, paper_of(size()));  // the cards fit no other paper
    const PrintOutcome outcome = print_pages(printer, preview_->pages());
    if (!outcome.started) {
        say(tr("The printer did not start. Check that it is switched on and try again."),
            Severity::stop);
    } else if (outcome.pages < preview_->count()) {
        say(tr("The printer stopped after %1 pages.").arg(outcome.pages), Severity::stop);
    } else {
        say(outcome.pages == 1 ? tr("1 page sent to the printer")
                               : tr("%1 pages sent to the printer").arg(outcome.pages),
            Severity::note);
    }
}

void BriefingTab::overrule() {
    const std::optional<Finding> stop = list_->current_stop();
    if (!stop) return;
    const StaffMember* leader = find_staff(document_.session(), document_.session().leader);
    OverruleDialog dialog(words(*stop, document_.session(), document_.units()),
                          leader != nullptr ? QString::fromStdString(leader->name) : QString(),
                          this);
    if (dialog.exec() != QDialog::Accepted) return;
    set_aside(document_, overrule_key(*stop), dialog);
}

}  // namespace leadline
