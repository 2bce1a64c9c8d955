// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/body/breath_demo.h"
#include "ui/guest_screen/air_space_view.h"
#include "ui/guest_screen/screen_view.h"
#include "ui/guest_screen/water_scene.h"

namespace leadline {

/// Breathe always: a diver to move up and down, and what that does to air in a balloon, in lungs,
/// in the ear and in the mask, in this site's water.
class BreathView : public ScreenView {
    Q_OBJECT
public:
    explicit BreathView(GuestScreenControl& control, QWidget* parent = nullptr);
    bool take_key(int key) override;
    /// Moves the diver; beyond the surface or the deepest planned point, to the nearest.
    void move_to(double meters);
    [[nodiscard]] const BreathDemo& demo() const { return demo_; }
    [[nodiscard]] WaterScene* scene() const { return scene_; }

protected:
    void take_words() override;
    void arrange(bool portrait) override;
    void show_state(int state) override;
    void show_present() override;

private:
    struct Space {
        AirSpaceView* view = nullptr;
        GuestLabel* name = nullptr;
        GuestLabel* value = nullptr;
        GuestLabel* text = nullptr;
    };
    Space add_space(AirSpace space);
    void show_numbers(double meters);
    QBoxLayout* parts_;
    QBoxLayout* numbers_;
    QGridLayout* tiles_;
    std::vector<QWidget*> tile_widgets_;
    GuestLabel* never_hold_;
    GuestLabel* breathe_;
    GuestLabel* drag_;
    WaterScene* scene_;
    GuestLabel* depth_;
    GuestLabel* pressure_;
    GuestLabel* times_top_;
    Space balloon_;
    Space lungs_;
    Space ear_;
    Space mask_;
    GuestLabel* standing_;
    BreathDemo demo_;
    double wanted_ = 0.0;
};

}  // namespace leadline
