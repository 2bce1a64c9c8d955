// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/staff_exposure_panel.h"

#include <QLocale>

#include "core/body/tissues.h"
#include "ui/document/session_document.h"
#include "ui/gas/figure_table.h"
#include "ui/gas/staff_exposure_model.h"
#include "ui/gas/staff_exposure_words.h"

namespace leadline {

StaffExposurePanel::StaffExposurePanel(SessionDocument& document, QWidget* parent)
    : FigurePanel(document, parent), model_(new StaffExposureModel(document, this)) {
    setObjectName(QStringLiteral("staff_exposure_panel"));
    const auto percent = [](double factor) {
        return QLocale().toString(factor * 100.0, 'f', 0);
    };
    build(new FigureTable(*model_, QStringLiteral("exposure_table"),
                          tr("What earlier dives leave to each member of staff")),
          {QStringLiteral("exposure"),
           tr("Nobody on the staff yet. Add them on the Roster tab under Groups and staff, and "
              "enter their dives of the last seven days there with the button in the column Dives; "
              "then this says who is free to lead this dive."),
           tr("An aid for planning. What the diver's own computer, a physician and the makers say "
              "prevails. Tissues by ZH-L16C with gradient factors %1/%2, common practice.")
               .arg(percent(house_gradient_factors.low), percent(house_gradient_factors.high)),
           tr("Why? Staff")});
}

bool StaffExposurePanel::has_rows() const { return !document().session().staff.empty(); }

void StaffExposurePanel::refresh_rows() { model_->refresh(); }

std::vector<GasSentence> StaffExposurePanel::answers() const { return staff_answers(document()); }

std::vector<GasSentence> StaffExposurePanel::reasons(const std::string& id) const {
    return staff_reasons(document(), StaffId(id));
}

}  // namespace leadline
