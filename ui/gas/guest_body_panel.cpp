// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gas/guest_body_panel.h"

#include "ui/document/session_document.h"
#include "ui/gas/figure_table.h"
#include "ui/gas/guest_body_model.h"
#include "ui/gas/guest_body_words.h"

namespace leadline {

GuestBodyPanel::GuestBodyPanel(SessionDocument& document, QWidget* parent)
    : FigurePanel(document, parent), model_(new GuestBodyModel(document, this)) {
    setObjectName(QStringLiteral("guest_body_panel"));
    build(new FigureTable(*model_, QStringLiteral("body_table"),
                          tr("Warmth and lead of each guest")),
          {QStringLiteral("body"),
           tr("No guests yet. Add them on the Roster tab with weight, height, suit and cylinder "
              "(page Kit); then this says who gets cold first and how much lead to try."),
           tr("Estimates. Shivering or the sign “cold” ends the dive, whatever stands here. Lead is "
              "a starting value: check it at the surface before going down (common practice), and "
              "allow for the air that will be breathed: a guest light at the end floats up."),
           tr("Why? Warmth and lead")});
}

bool GuestBodyPanel::has_rows() const { return !document().session().guests.empty(); }

void GuestBodyPanel::refresh_rows() {
    model_->refresh();
    table().setColumnHidden(GuestBodyModel::group_column, document().session().groups.size() < 2);
}

std::vector<GasSentence> GuestBodyPanel::answers() const { return body_answers(document()); }

std::vector<GasSentence> GuestBodyPanel::reasons(const std::string& id) const {
    return body_reasons(document(), GuestId(id));
}

}  // namespace leadline
