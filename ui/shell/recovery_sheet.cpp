// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/recovery_sheet.h"

#include <QCoreApplication>

#include "core/records/recovery_key.h"
#include "ui/sheet/type_setting.h"

namespace leadline {
namespace {

constexpr double margin_mm = 25.0;
constexpr double width_mm = 160.0;

/// Names the context of this file's texts to lupdate.
class RecoverySheetTexts {
    Q_DECLARE_TR_FUNCTIONS(RecoverySheet)
};

TextStyle style(double points, bool bold, int most_lines) {
    TextStyle made;
    made.points = points;
    made.least_points = points * 0.6;
    made.bold = bold;
    made.most_lines = most_lines;
    return made;
}

}  // namespace

Page recovery_sheet(const SecretBytes& recovery_key, const QString& made_on,
                    const QString& records) {
    TypeSetter setter;
    Page page;
    page.frames = {QRectF(QPointF(0, 0), paper_size(Paper::a4))};
    const auto put = [&](const QString& text, double top, double height, double points, bool bold,
                         int lines) {
        page.items.emplace_back(setter.set({text, 0}, QRectF(margin_mm, top, width_mm, height),
                                           style(points, bold, lines)));
    };
    put(RecoverySheetTexts::tr("Recovery key of the health vault"), 25, 10, 18, true, 1);
    put(RecoverySheetTexts::tr("Made on %1").arg(made_on), 37, 6, 10, false, 1);

    constexpr double top_mm = 55.0;
    constexpr double row_mm = 17.0;
    constexpr double cell_mm = width_mm / groups_in_row;
    constexpr double number_mm = 10.0;
    int number = 0;
    for (const std::string& group : recovery_groups(recovery_key)) {
        const double left = margin_mm + cell_mm * (number % groups_in_row);
        const double top = top_mm + row_mm * (number / groups_in_row);
        ++number;
        page.items.emplace_back(setter.set({QString::number(number), 0},
                                           QRectF(left, top + 2.5, number_mm, 6),
                                           style(9, false, 1)));
        page.items.emplace_back(setter.set({QString::fromStdString(group), 0},
                                           QRectF(left + number_mm, top, cell_mm - number_mm, 11),
                                           style(20, true, 1)));
    }
    page.items.emplace_back(
        LineItem{QLineF(margin_mm, 48, margin_mm + width_mm, 48), 0.2, Ink::grey});
    page.items.emplace_back(
        LineItem{QLineF(margin_mm, 110, margin_mm + width_mm, 110), 0.2, Ink::grey});
    put(RecoverySheetTexts::tr(
            "Whoever has this paper and the records can read every guest's health answers. Keep it "
            "locked away, apart from the computer. Do not photograph it."),
        116, 20, 11, false, 4);
    put(RecoverySheetTexts::tr(
            "It opens the vault when the passphrase is forgotten or the computer's keyring is "
            "lost: "
            "choose \"Use the recovery key\" when unlocking. The nine groups hold no 0, 1, I or O. "
            "Small letters will do."),
        138, 22, 11, false, 4);
    put(RecoverySheetTexts::tr(
            "Without passphrase and without this paper nobody can open the vault any more, nor can "
            "the makers of Leadline."),
        162, 16, 11, true, 3);
    put(RecoverySheetTexts::tr("Records: %1").arg(records), 184, 12, 9, false, 3);
    return page;
}

}  // namespace leadline
