// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet/briefing_tab.h"

#include <QApplication>
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <QPushButton>
#include <QTimer>
#include <algorithm>

#include "core/planning/overrule_key.h"
#include "ui/document/session_document.h"
#include "ui/guest_words/guest_language.h"
#include "ui/guest_words/typed_text.h"
#include "ui/sheet/card_editor.h"
#include "ui/sheet/card_language.h"
#include "ui/sheet/card_list.h"
#include "ui/sheet/missing_letters.h"
#include "ui/sheet/page_preview.h"
#include "ui/sheet/pdf_path.h"
#include "ui/sheet/print.h"
#include "ui/sheet/saving_row.h"
#include "ui/sheet/sheet_bar.h"
#include "ui/sheet/sheet_document.h"
#include "ui/sheet/sheet_words.h"
#include "ui/sheet/skills_dialog.h"
#include "ui/widgets/overrule_dialog.h"
#include "ui/widgets/theme.h"
#include "ui/words/error_words.h"
#include "ui/words/finding_words.h"
#include "ui/words/name_words.h"

namespace leadline {
namespace {

constexpr int most_names = 4;
constexpr int longest_name_shown = 24;
constexpr int longest_list_shown = 200;

QString short_name(const Guest& guest) {
    return beginning(one_line(guest.name), longest_name_shown);
}

QString document_name(SheetKind kind) {
    switch (kind) {
        case SheetKind::cards:
            return QStringLiteral("cards.pdf");
        case SheetKind::beach:
            return QStringLiteral("beach-sheet.pdf");
        case SheetKind::skills:
            return QStringLiteral("skills.pdf");
        case SheetKind::kit:
            return QStringLiteral("kit-list.pdf");
        case SheetKind::emergency:
            return QStringLiteral("emergency-plan.pdf");
        case SheetKind::pictures:
            return QStringLiteral("pictures.pdf");
    }
    return {};
}

}  // namespace

BriefingTab::BriefingTab(SessionDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      bar_(new SheetBar(this)),
      list_(new CardList(document, this)),
      editor_(new CardEditor(document, this)),
      preview_(new PagePreview(this)),
      letters_timer_(new QTimer(this)),
      size_(new QComboBox(this)),
      paper_(new QComboBox(this)),
      group_(new QComboBox(this)),
      picture_language_(new QComboBox(this)),
      picture_second_(new QComboBox(this)),
      skills_(new QPushButton(tr("Choose s&kills…"), this)),
      show_(new QPushButton(tr("Put &it right"), this)),
      overrule_(new QPushButton(tr("&Go ahead anyway…"), this)),
      print_(new QPushButton(tr("&Print…"), this)),
      save_(new QPushButton(tr("Save as P&DF…"), this)),
      previous_(new QPushButton(tr("‹ Back"), this)),
      next_(new QPushButton(tr("Next ›"), this)),
      paper_label_(new QLabel(this)),
      group_label_(new QLabel(this)),
      picture_language_label_(new QLabel(this)),
      picture_second_label_(new QLabel(this)),
      about_(new QLabel(this)),
      page_number_(new QLabel(this)),
      summary_(new QLabel(this)),
      letters_(new QLabel(this)),
      saving_(new SavingRow(this)),
      status_icon_(new QLabel(this)),
      status_(new QLabel(this)) {
    setObjectName(QStringLiteral("briefing_tab"));
    choose_pdf_path_ = [this] {
        return QFileDialog::getSaveFileName(this, tr("Save as PDF"), document_name(kind()),
                                            tr("PDF (*.pdf)"));
    };
    has_printer_ = [] { return !QPrinterInfo::availablePrinterNames().isEmpty(); };
    letters_timer_->setInterval(0);
    lay_out();
    connect_parts();
    show_choices();
    refresh();
}

void BriefingTab::connect_parts() {
    connect(bar_, &SheetBar::chosen, this, [this] {
        show_choices();
        refresh();
    });
    // The list says so after each change of the session too, once its own rows are up to date.
    connect(list_, &CardList::selection_changed, this, &BriefingTab::refresh);
    connect(list_, &QListWidget::currentRowChanged, this, &BriefingTab::update_buttons);
    connect(list_, &QListWidget::itemSelectionChanged, this,
            [this] { editor_->show_guests(list_->selected_guests()); });
    for (QComboBox* box : {size_, paper_, group_, picture_language_, picture_second_}) {
        connect(box, &QComboBox::currentIndexChanged, this, &BriefingTab::refresh);
    }
    connect(skills_, &QPushButton::clicked, this, &BriefingTab::choose_skills);
    connect(save_, &QPushButton::clicked, this, &BriefingTab::save_pdf);
    connect(saving_, &SavingRow::ended, this, &BriefingTab::say_saved);
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
    connect(letters_timer_, &QTimer::timeout, this, &BriefingTab::look_for_letters);
    editor_->show_guests(list_->selected_guests());
}

SheetKind BriefingTab::kind() const {
    return bar_->kind();
}

CardSize BriefingTab::size() const {
    return static_cast<CardSize>(size_->currentData().toInt());
}

Paper BriefingTab::paper() const {
    return kind() == SheetKind::cards ? paper_of(size())
                                      : static_cast<Paper>(paper_->currentData().toInt());
}

SheetChoice BriefingTab::choice() const {
    return {kind(), paper(), GroupId(group_->currentData().toString().toStdString()),
            picture_language_->currentData().toString().toStdString(),
            picture_second_->currentData().toString().toStdString()};
}

void BriefingTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void BriefingTab::refresh() {
    stale_ = !isVisible();
    if (stale_) return;
    if (kind() == SheetKind::cards) {
        refresh_cards();
    } else {
        refresh_sheet();
    }
    lines_without_letters_.clear();
    letters_->clear();
    letters_->hide();
    next_page_to_look_at_ = 0;
    letters_timer_->start();
    status_->clear();
    status_icon_->clear();
    update_buttons();
}

void BriefingTab::refresh_cards() {
    const Session& session = document_.session();
    selection_ = select_cards(session, document_.plan(), document_.units(), list_->left_out());
    preview_->set_empty_text(session.guests.empty()
                                 ? tr("No guests yet. Add them on the Roster tab.")
                                 : tr("No card to show: every ticked guest has a stop, or none is "
                                      "ticked."));
    preview_->show_pages(card_pages(selection_.cards, size(), setter_));
    summary_->setText(cards_summary(selection_));
}

void BriefingTab::refresh_sheet() {
    fill_groups();
    if (kind() == SheetKind::pictures) fill_picture_languages();
    preview_->set_empty_text(tr("No groups yet. Make them on the Roster tab."));
    preview_->show_pages(
        sheet_pages(choice(), document_.session(), document_.plan(), document_.units(), setter_));
    summary_->setText(sheet_summary());
}

QString BriefingTab::cards_summary(const CardSelection& selection) const {
    const Session& session = document_.session();
    QStringList lines{tr("%n cards", nullptr, selection.guests())};
    if (!selection.blocked.empty()) {
        lines.front() += QStringLiteral(" · ") + tr("%n refused: a stop stands", nullptr,
                                                    static_cast<int>(selection.blocked.size()));
    }
    // By name: they have to be told, and go through the pictures with somebody.
    QStringList in_english;
    QStringList one_face;
    for (const MissingLanguage& missing : selection.missing) {
        const Guest* guest = find_guest(session, missing.guest);
        if (guest == nullptr) continue;
        QStringList& names = missing.second ? one_face : in_english;
        names << tr("%1 (%2)", "guest, language")
                     .arg(short_name(*guest), guest_language_name(missing.tag));
    }
    if (!in_english.isEmpty()) {
        lines << tr("In English, as there is no translation yet: %1.").arg(some_of(in_english));
    }
    if (!one_face.isEmpty()) {
        lines << tr("Without the second language, for the same reason: %1.").arg(some_of(one_face));
    }
    QStringList cut;
    int too_full = 0;
    for (const Page& page : preview_->pages()) {
        for (const CutText& text : cut_texts(page)) {
            if (!cut.contains(text.shown)) cut << text.shown;
        }
        too_full += static_cast<int>(page.too_full.size());
    }
    if (!cut.isEmpty()) {
        lines << tr("Cut for want of room; shorten it or choose larger cards: %1")
                     .arg(beginning(some_of(cut), longest_list_shown));
    }
    if (too_full > 0) {
        lines << tr("%n cards have no room for all their words: read them before you hand them out.",
                    nullptr, too_full);
    }
    return lines.join(u'\n');
}

QString BriefingTab::some_of(const QStringList& names) {
    const QString first = names.mid(0, most_names).join(QStringLiteral(", "));
    const auto more = static_cast<int>(names.size()) - most_names;
    return more > 0 ? tr("%1 and %n more", nullptr, more).arg(first) : first;
}

QString BriefingTab::sheet_summary() const {
    const Session& session = document_.session();
    QStringList lines{tr("%n pages", nullptr, preview_->count())};
    if (is_for_group(kind())) {
        const auto without = std::count_if(
            session.guests.begin(), session.guests.end(),
            [&](const Guest& guest) { return find_group(session, guest.group) == nullptr; });
        if (without > 0 && kind() != SheetKind::kit) {
            lines << tr("%n guests are in no group and stand on no sheet.", nullptr,
                        static_cast<int>(without));
        }
    }
    if (kind() == SheetKind::emergency && session.site.emergency_line.empty()) {
        lines << tr(
            "No number is entered: the page leaves room to write it. Enter it on the Site "
            "tab.");
    }
    if (kind() == SheetKind::pictures) {
        for (const QComboBox* box : {picture_language_, picture_second_}) {
            const std::string tag = box->currentData().toString().toStdString();
            const GuestLanguage* language = find_guest_language(tag);
            if (language != nullptr && language->review == ReviewState::drafted) {
                lines << card_language_text(tag) + u'.';
            }
        }
    }
    return lines.join(u'\n');
}

void BriefingTab::look_for_letters() {
    const std::vector<Page>& pages = preview_->pages();
    if (next_page_to_look_at_ >= pages.size()) {
        letters_timer_->stop();
        return;
    }
    for (const UnprintableText& text : unprintable_letters(pages[next_page_to_look_at_])) {
        if (!lines_without_letters_.contains(text.line)) lines_without_letters_ << text.line;
    }
    ++next_page_to_look_at_;
    if (lines_without_letters_.isEmpty()) return;
    letters_->setText(tr("No font here has the letters of: %1. They would print as empty boxes. "
                         "Install a font for them.")
                          .arg(beginning(some_of(lines_without_letters_), longest_list_shown)));
    letters_->show();
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
    page_number_->setText(
        any ? tr("Page %1 of %2").arg(preview_->current() + 1).arg(preview_->count())
            : tr("No pages"));
}

QString BriefingTab::status() const {
    return status_->text();
}

void BriefingTab::say(const QString& text, Severity severity) {
    constexpr int icon_side = 18;
    status_icon_->setPixmap(severity_icon(severity, palette()).pixmap(icon_side, icon_side));
    status_->setText(text);
}

PdfInfo BriefingTab::pdf_info() const {
    const Session& session = document_.session();
    return kind() == SheetKind::cards ? card_document(session, selection_.cards)
                                      : sheet_document(choice(), session);
}

void BriefingTab::save_pdf() {
    if (saving_->running()) {
        say(tr("The pages before are still being saved. Wait a moment, or stop that."),
            Severity::note);
        return;
    }
    const QString path = choose_pdf_path(this, choose_pdf_path_);
    if (path.isEmpty()) return;
    status_->clear();
    status_icon_->clear();
    // The beach sheet tells ages and what health checks came to.
    const FileAccess access =
        kind() == SheetKind::beach ? FileAccess::owner_only : FileAccess::usual;
    saving_->save(path, preview_->pages(), pdf_info(), access);
}

void BriefingTab::say_saved(const Result<int>& pages, const QString& path) {
    // The row goes now: whoever stands on its button is taken back to where the saving began.
    if (saving_->isAncestorOf(QApplication::focusWidget())) save_->setFocus();
    if (pages) {
        say(tr("%n pages saved to %1", nullptr, *pages).arg(path), Severity::note);
    } else {
        const bool stopped = pages.error().code == ErrorCode::cancelled;
        say(words(pages.error()), stopped ? Severity::note : Severity::stop);
    }
}

void BriefingTab::print() {
    if (!has_printer_()) {
        say(tr("No printer is installed on this computer. Save the pages as a PDF instead, or "
               "install a printer."),
            Severity::caution);
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(pdf_info().title);
    prepare_printer(printer, paper());
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    prepare_printer(printer, paper());  // the pages fit no other paper
    const PrintOutcome outcome = print_pages(printer, preview_->pages());
    if (!outcome.started) {
        say(tr("The printer did not start. Check that it is switched on and try again."),
            Severity::stop);
    } else if (outcome.pages < preview_->count()) {
        say(tr("The printer stopped after %n pages.", nullptr, outcome.pages), Severity::stop);
    } else {
        say(tr("%n pages sent to the printer", nullptr, outcome.pages), Severity::note);
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

void BriefingTab::choose_skills() {
    SkillsDialog dialog(document_.session().skills, this);
    if (dialog.exec() != QDialog::Accepted) return;
    const std::vector<Skill> chosen = dialog.chosen();
    const Result<Done> done =
        document_.edit(tr("Choose skills"), [&](Session& session) { session.skills = chosen; });
    if (!done) say(words(done.error()), Severity::stop);
}

}  // namespace leadline
