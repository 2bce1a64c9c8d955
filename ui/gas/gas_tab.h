// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "core/planning/finding.h"

class QComboBox;
class QLabel;
class QTabBar;
class QToolButton;
class QVBoxLayout;

namespace leadline {

class AirPage;
class SentenceList;
class SessionDocument;

/// "How long will it last, and for whom?": the answer in a sentence a group, what may go wrong and
/// why one click away, and under them the pages they follow from.
class GasTab : public QWidget {
    Q_OBJECT
public:
    explicit GasTab(SessionDocument& document, QWidget* parent = nullptr);
    ~GasTab() override;

    /// Shows a guest's row and line, a group, or the group of a member of staff, on the page that
    /// the findings about them are on.
    void show_subject(const Subject& subject);
    /// The group shown; empty: all.
    [[nodiscard]] GroupId chosen_group() const;

private:
    enum Page { air_page, body_page, staff_page };
    /// The page that an open finding about a subject belongs to.
    [[nodiscard]] int page_of(const Subject& subject) const;
    [[nodiscard]] QWidget* chooser_row();
    [[nodiscard]] QToolButton* disclosure(const QString& text, const QString& name,
                                          SentenceList* list);
    void add_page(QWidget* page, const QString& name);
    void show_page(int page);
    void refresh();
    void refresh_chooser();
    void refresh_disclosures();
    void choose_group(const GroupId& group);

    SessionDocument& document_;
    SentenceList* answers_;
    SentenceList* trouble_;
    SentenceList* reasons_;
    QLabel* empty_;
    QWidget* chooser_ = nullptr;
    QLabel* groups_caption_ = nullptr;
    QComboBox* groups_ = nullptr;
    QToolButton* show_trouble_ = nullptr;
    QToolButton* show_reasons_ = nullptr;
    QTabBar* switch_;
    std::vector<QWidget*> pages_;
    QVBoxLayout* pages_layout_ = nullptr;
    AirPage* air_;
    QWidget* body_;
};

}  // namespace leadline
