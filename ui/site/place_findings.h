// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/planning/finding.h"

class QGridLayout;
class QLabel;

namespace leadline {

class SessionDocument;

/// Whether a finding speaks of the place or the profile, and so belongs on the Site tab.
bool is_about_place(const Finding& finding);

/// "What can go wrong here?": the findings about place and profile, each with the shape and the
/// word of its severity.
class PlaceFindings : public QWidget {
    Q_OBJECT
public:
    explicit PlaceFindings(SessionDocument& document, QWidget* parent = nullptr);

private:
    struct Row {
        QLabel* icon = nullptr;
        QLabel* text = nullptr;
    };
    void refresh();
    void show_row(std::size_t index, const std::optional<Severity>& severity,
                  const QString& words, const QString& help);

    SessionDocument& document_;
    QGridLayout* grid_;
    std::vector<Row> rows_;
};

}  // namespace leadline
