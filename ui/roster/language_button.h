// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QToolButton>
#include <string>
#include <vector>

class QAction;

namespace leadline {

/// The languages somebody speaks: the button says which, its menu ticks them. The menu stays open
/// while ticking.
class LanguageButton : public QToolButton {
    Q_OBJECT
public:
    explicit LanguageButton(QWidget* parent = nullptr);
    void show_languages(const std::vector<std::string>& tags);
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void edited(const std::vector<std::string>& tags);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QAction* add(const std::string& tag);
    void toggle(QAction* action);
    void show_text();

    std::vector<std::string> tags_;
};

}  // namespace leadline
