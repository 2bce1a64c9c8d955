// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

class QGridLayout;
class QLabel;
class QToolButton;

namespace leadline {

class SessionDocument;

/// The numbers of the place as the plan has them: pressure, density, ears, breath, speeds. Behind
/// each, on "Why?", stands how it is found and by whom.
class PlaceNumbers : public QWidget {
    Q_OBJECT
public:
    explicit PlaceNumbers(SessionDocument& document, QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Row {
        QLabel* name = nullptr;
        QLabel* value = nullptr;
        QToolButton* why = nullptr;
        QLabel* reason = nullptr;
    };
    void add_row(const QString& id);
    /// Lays the rows out in columns beside each other.
    void arrange(int banks);
    void refresh();

    SessionDocument& document_;
    QGridLayout* grid_;
    int banks_ = 0;
    std::vector<Row> rows_;
};

}  // namespace leadline
