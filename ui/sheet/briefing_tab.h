// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "core/planning/finding.h"
#include "ui/sheet/card_layout.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace leadline {

class CardList;
class PagePreview;
class SessionDocument;

/// Briefing Sheet: what does each guest take along? The guests and the pages exactly as printed.
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

Q_SIGNALS:
    /// The user wants to put right what stops a card.
    void subject_requested(const leadline::Subject& subject);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* build_side();
    QWidget* build_pages();
    /// Sets the cards anew. Out of sight nothing is set until the tab is shown again: typing on
    /// another tab must not wait for pages that nobody sees.
    void refresh();
    void update_buttons();
    void save_pdf();
    void print();
    void overrule();
    void say(const QString& text, Severity severity);
    [[nodiscard]] CardSize size() const;

    SessionDocument& document_;
    bool stale_ = true;  ///< what is shown is older than the session
    CardList* list_;
    PagePreview* preview_;
    QComboBox* size_;
    QPushButton* show_;
    QPushButton* overrule_;
    QPushButton* print_;
    QPushButton* save_;
    QPushButton* previous_;
    QPushButton* next_;
    QLabel* page_number_;
    QLabel* summary_;
    QLabel* status_icon_;
    QLabel* status_;
    std::function<QString()> choose_pdf_path_;
    std::function<bool()> has_printer_;
};

}  // namespace leadline
