// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QToolButton;

namespace leadline {

class FigureTable;
class GuestBodyModel;
class SentenceList;
class SessionDocument;

/// "Warmth and lead": who gets cold first and when, how much lead each guest tries first, and what
/// both follow from. It says what is missing where there is no estimate.
class GuestBodyPanel : public QWidget {
    Q_OBJECT
public:
    explicit GuestBodyPanel(SessionDocument& document, QWidget* parent = nullptr);
    ~GuestBodyPanel() override;

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void follow_document();
    void lay_out();
    void refresh();
    void refresh_reasons();
    void show_reasons(bool shown);

    SessionDocument& document_;
    GuestBodyModel* model_;
    SentenceList* answers_;
    QLabel* empty_;
    QWidget* body_;
    FigureTable* table_;
    QToolButton* why_;
    SentenceList* reasons_;
    bool stale_ = false;  ///< something changed while the panel was hidden
};

}  // namespace leadline
