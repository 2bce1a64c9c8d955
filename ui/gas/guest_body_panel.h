// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gas/figure_panel.h"

namespace leadline {

class GuestBodyModel;

/// "Warmth and lead": who gets cold first and when, how much lead each guest tries first, and what
/// both follow from. It says what is missing where there is no estimate.
class GuestBodyPanel : public FigurePanel {
    Q_OBJECT
public:
    explicit GuestBodyPanel(SessionDocument& document, QWidget* parent = nullptr);

private:
    [[nodiscard]] bool has_rows() const override;
    void refresh_rows() override;
    [[nodiscard]] std::vector<GasSentence> answers() const override;
    [[nodiscard]] std::vector<GasSentence> reasons(const std::string& id) const override;

    GuestBodyModel* model_;
};

}  // namespace leadline
