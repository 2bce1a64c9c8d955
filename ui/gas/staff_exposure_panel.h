// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/gas/figure_panel.h"

namespace leadline {

class StaffExposureModel;

/// "Staff": what the dives of the last days leave to each member of staff for this one, and when
/// they may fly.
class StaffExposurePanel : public FigurePanel {
    Q_OBJECT
public:
    explicit StaffExposurePanel(SessionDocument& document, QWidget* parent = nullptr);

private:
    [[nodiscard]] bool has_rows() const override;
    void refresh_rows() override;
    [[nodiscard]] std::vector<GasSentence> answers() const override;
    [[nodiscard]] std::vector<GasSentence> reasons(const std::string& id) const override;

    StaffExposureModel* model_;
};

}  // namespace leadline
