// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/screen_room.h"

#include <QScreen>
#include <QStyle>
#include <QWidget>

namespace leadline {

QSize within_screen(const QWidget& window, QSize wanted) {
    const QScreen* screen = window.screen();
    if (screen == nullptr) return wanted;
    // Before it is shown, nobody knows how thick the frame will be: two title bars are enough.
    const int frame = 2 * window.style()->pixelMetric(QStyle::PM_TitleBarHeight, nullptr, &window);
    return wanted.boundedTo(screen->availableSize() - QSize(frame / 2, frame));
}

}  // namespace leadline
