// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/document/session_document.h"

class QVBoxLayout;

namespace leadline {

/// Findings as lines: shape, word, what is wrong, and what to do. Takes no room while there are
/// none.
class FindingList : public QWidget {
    Q_OBJECT
public:
    explicit FindingList(const QString& object_name, QWidget* parent = nullptr);
    void show_findings(const std::vector<const Finding*>& findings,
                       const SessionDocument& document);

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Line {
        Severity severity{};
        QString word;
        QString text;
        QString source;
        friend bool operator==(const Line&, const Line&) = default;
    };
    void rebuild();
    void add_line(const Line& line);

    std::vector<Line> lines_;
    QVBoxLayout* column_;
};

}  // namespace leadline
