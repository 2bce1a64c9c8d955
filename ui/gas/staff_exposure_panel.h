// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QToolButton;

namespace leadline {

class FigureTable;
class SentenceList;
class SessionDocument;
class StaffExposureModel;

/// "Staff": what the dives of the last days leave to each member of staff for this one, and when
/// they may fly.
class StaffExposurePanel : public QWidget {
    Q_OBJECT
public:
    explicit StaffExposurePanel(SessionDocument& document, QWidget* parent = nullptr);
    ~StaffExposurePanel() override;

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
    StaffExposureModel* model_;
    SentenceList* answers_;
    QLabel* empty_;
    QWidget* body_;
    FigureTable* table_;
    QToolButton* why_;
    SentenceList* reasons_;
    bool stale_ = false;  ///< something changed while the panel was hidden
};

}  // namespace leadline
