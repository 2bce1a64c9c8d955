// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <vector>

#include "core/planning/briefing.h"

class QListWidget;

namespace leadline {

/// Which skills are practised in this session: a list to tick, with what each is for.
class SkillsDialog : public QDialog {
    Q_OBJECT
public:
    explicit SkillsDialog(const std::vector<Skill>& chosen, QWidget* parent = nullptr);

    /// Those ticked, in the order in which they are taught.
    [[nodiscard]] std::vector<Skill> chosen() const;

private:
    QListWidget* list_;
};

}  // namespace leadline
