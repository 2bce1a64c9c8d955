// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "core/planning/finding.h"
#include "ui/sheet/card_layout.h"
#include "ui/sheet/cards.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/sheets.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTimer;

namespace leadline {

class CardEditor;
class CardList;
class PagePreview;
class SavingRow;
class SessionDocument;
class SheetBar;

/// Briefing Sheet: what does each guest take along, and the instructor? The choice of what to print,
/// whom it is for, and the pages exactly as printed.
class BriefingTab : public QWidget {
    Q_OBJECT
public:
    explicit BriefingTab(SessionDocument& document, QWidget* parent = nullptr);

    /// Asks where the PDF goes; an empty path means no. Replaced in tests.
    void set_pdf_path_chooser(std::function<QString()> chooser) {
        choose_pdf_path_ = std::move(chooser);
    }
    /// Says whether there is a printer. Replaced in tests.
    void set_printer_check(std::function<bool()> check) { has_printer_ = std::move(check); }
    [[nodiscard]] PagePreview* preview() const { return preview_; }
    [[nodiscard]] QString status() const;
    [[nodiscard]] SheetKind kind() const;

Q_SIGNALS:
    /// The user wants to put right what stops a card.
    void subject_requested(const leadline::Subject& subject);
    /// The user wants the briefing on a screen for guests.
    void guest_screen_requested();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void lay_out();
    QWidget* build_side();
    QWidget* build_card_side();
    QWidget* build_sheet_side();
    QWidget* build_pages();
    void connect_parts();
    /// Sets the pages anew, of the sheet in view only. Out of sight nothing is set until the tab is
    /// shown again: typing on another tab must not wait for pages that nobody sees.
    void refresh();
    void refresh_cards();
    void refresh_sheet();
    /// Shows what the chosen sheet asks for and hides the rest.
    void show_choices();
    void fill_groups();
    void fill_picture_languages();
    void update_buttons();
    /// Looks for letters without a font, a page at a time so that the window never waits.
    void look_for_letters();
    void choose_skills();
    void save_pdf();
    void say_saved(const Result<int>& pages, const QString& path);
    void print();
    void overrule();
    void say(const QString& text, Severity severity);
    static QString card_size_name(CardSize size);
    static QString about_text(SheetKind kind);
    [[nodiscard]] CardSize size() const;
    [[nodiscard]] Paper paper() const;
    [[nodiscard]] SheetChoice choice() const;
    [[nodiscard]] QString cards_summary(const CardSelection& selection) const;
    [[nodiscard]] QString sheet_summary() const;
    /// The first few, and how many more.
    static QString some_of(const QStringList& names);
    [[nodiscard]] PdfInfo pdf_info() const;

    SessionDocument& document_;
    bool stale_ = true;  ///< what is shown is older than the session
    TypeSetter setter_;  ///< remembers what it has measured
    CardSelection selection_;
    std::size_t next_page_to_look_at_ = 0;
    QStringList lines_without_letters_;
    SheetBar* bar_;
    CardList* list_;
    CardEditor* editor_;
    PagePreview* preview_;
    QTimer* letters_timer_;
    QComboBox* size_;
    QComboBox* paper_;
    QComboBox* group_;
    QComboBox* picture_language_;
    QComboBox* picture_second_;
    QPushButton* skills_;
    QPushButton* show_;
    QPushButton* overrule_;
    QPushButton* print_;
    QPushButton* save_;
    QPushButton* previous_;
    QPushButton* next_;
    QWidget* card_side_ = nullptr;
    QWidget* sheet_side_ = nullptr;
    QLabel* paper_label_;
    QLabel* group_label_;
    QLabel* picture_language_label_;
    QLabel* picture_second_label_;
    QLabel* about_;  ///< what the chosen sheet is
    QLabel* page_number_;
    QLabel* summary_;
    QLabel* letters_;
    SavingRow* saving_;
    QLabel* status_icon_;
    QLabel* status_;
    std::function<QString()> choose_pdf_path_;
    std::function<bool()> has_printer_;
};

}  // namespace leadline
