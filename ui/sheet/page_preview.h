// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <vector>

#include "ui/sheet/layout.h"
#include "ui/sheet/sheet_painter.h"

namespace leadline {

/// One sheet of paper on the screen, drawn by the painter that prints it: what is seen is what comes
/// out. Fits the page to the room, or shows it in its real size.
class PagePreview : public QScrollArea {
    Q_OBJECT
public:
    explicit PagePreview(QWidget* parent = nullptr);

    /// Shows other pages; stays on the page with the same number where there is one.
    void show_pages(std::vector<Page> pages);
    /// What to say when there are no pages.
    void set_empty_text(const QString& text);
    [[nodiscard]] const std::vector<Page>& pages() const { return pages_; }
    [[nodiscard]] int current() const { return current_; }
    [[nodiscard]] int count() const { return static_cast<int>(pages_.size()); }
    void set_current(int page);
    void set_real_size(bool real);

Q_SIGNALS:
    void page_changed();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    class Sheet;
    void fit();

    Sheet* sheet_;
    std::vector<Page> pages_;
    QString empty_text_;
    int current_ = 0;
    bool real_size_ = false;
};

}  // namespace leadline
