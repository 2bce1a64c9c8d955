// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_screen/kit_view.h"

#include "ui/guest_words/signal_words.h"

namespace leadline {
namespace {

constexpr double kit_picture_ems = 4.2;

/// What is chosen of a piece; nothing: not chosen yet. A gauge has no size of its own.
QString chosen(const Kit& kit, KitPart part, const GuestFigures& figures) {
    switch (part) {
        case KitPart::suit:
            return typed_text(kit.suit);
        case KitPart::bcd:
            return typed_text(kit.bcd);
        case KitPart::fins:
            return typed_text(kit.fins);
        case KitPart::mask:
            return typed_text(kit.mask);
        case KitPart::mouthpiece:
            return typed_text(kit.regulator);
        case KitPart::weights:
            return kit.lead ? figures.mass(*kit.lead) : QString();
        case KitPart::cylinder:
            return kit.cylinder ? figures.cylinder(kit.cylinder->type) : QString();
        case KitPart::gauge:
            return {};
    }
    return {};
}

}  // namespace

GuestKitView::GuestKitView(GuestScreenControl& control, QWidget* parent)
    : ScreenView(control, parent),
      title_(new GuestLabel(TextRole::title, TextInk::accent, this)),
      picker_(new GuestPicker(control, this)),
      grid_(screen_grid()),
      try_(new GuestLabel(TextRole::body, TextInk::ink, this)) {
    for (int k = 0; k < kit_part_count; ++k) {
        auto* tile = new PictureTile(kit_picture_ems, true, this);
        tile->setObjectName(QStringLiteral("kit_%1").arg(k));
        tiles_.push_back(tile);
    }
    auto* column = screen_column(this);
    column->addWidget(title_);
    column->addWidget(picker_);
    column->addLayout(grid_, 1);
    column->addWidget(try_);
}

bool GuestKitView::take_key(int key) {
    if (key != Qt::Key_Up && key != Qt::Key_Down) return false;
    picker_->step(key == Qt::Key_Down ? 1 : -1);
    return true;
}

void GuestKitView::take_words() {
    title_->setText(say(ScreenWord::kit));
    picker_->take_words();
    const Guest* guest = control().guest();
    const GuestFigures figures = control().figures();
    for (int k = 0; k < kit_part_count; ++k) {
        const auto part = static_cast<KitPart>(k);
        auto* tile = static_cast<PictureTile*>(tiles_[static_cast<std::size_t>(k)]);
        QString value;
        if (guest != nullptr && part != KitPart::gauge) {
            value = chosen(guest->kit, part, figures);
            if (value.isEmpty()) value = say(ScreenWord::kit_empty);
        }
        tile->set(kit_picture(part), kit_name(part, tongue()), value, kit_purpose(part, tongue()));
    }
    try_->setText(say(ScreenWord::kit_try));
}

void GuestKitView::arrange(bool portrait) {
    picker_->arrange(portrait);
    fill_grid(*grid_, tiles_, portrait ? 2 : 4);
}

}  // namespace leadline
