// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

class QGridLayout;
class QLabel;

namespace leadline {

class SessionDocument;

/// Ears on the way down and lungs on the way up: for each the answer in a sentence, the drawing,
/// and what matters more than any figure. Side by side where there is room, otherwise stacked.
class EarLungPanel : public QWidget {
    Q_OBJECT
public:
    explicit EarLungPanel(SessionDocument& document, QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Part {
        QLabel* title = nullptr;
        QLabel* sentence = nullptr;
        QWidget* chart = nullptr;
        QLabel* safety = nullptr;
    };
    [[nodiscard]] Part part(const QString& title, const QString& name, QWidget* chart);
    void arrange(int columns);
    void refresh();

    SessionDocument& document_;
    QGridLayout* grid_;
    Part ears_;
    Part lungs_;
    int columns_ = 0;
};

}  // namespace leadline
