// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/planning/ids.h"

namespace leadline {

class SessionDocument;

/// Depth over time: the planned dive as water, each guest's logged depths as a line over it from the
/// planned start of the descent, named beside its end. The chosen guest stands out. A limit that was
/// exceeded is marked on the line with shape and words; the description for screen readers lists them.
class LogChart : public QWidget {
    Q_OBJECT
public:
    explicit LogChart(SessionDocument& document, QWidget* parent = nullptr);
    void set_current(const GuestId& guest);
    [[nodiscard]] QSize sizeHint() const override { return {600, 260}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    class Drawing;
    void refresh();
    SessionDocument& document_;
    GuestId current_;
};

}  // namespace leadline
