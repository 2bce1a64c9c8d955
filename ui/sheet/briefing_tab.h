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
    [[nodiscard]] PagePreview* preview() const { return preview_; }
    [[nodiscard]] QString status() const;

Q_SIGNALS:
    /// The user wants to put right what stops a card.
    void subject_requested(const leadline::Subject& subject);

private:
    QWidget* build_side();
    QWidget* build_pages();
    void refresh();
    void update_buttons();
    void save_pdf();
    void print();
    void overrule();
    void say(const QString& text, Severity severity);
    [[nodiscard]] CardSize size() const;

    SessionDocument& document_;
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
};

}  // namespace leadline
