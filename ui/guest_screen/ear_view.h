// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/body/ear_trial.h"
#include "ui/guest_screen/air_space_view.h"
#include "ui/guest_screen/screen_view.h"
#include "ui/guest_screen/water_scene.h"

namespace leadline {

/// Ears: the way down with its marks where to clear; and what happens to somebody who does not.
class EarView : public ScreenView {
    Q_OBJECT
public:
    explicit EarView(GuestScreenControl& control, QWidget* parent = nullptr);
    bool take_key(int key) override;
    void move_to(double meters);
    void clear();
    [[nodiscard]] const EarTrial& trial() const { return trial_; }
    [[nodiscard]] WaterScene* scene() const { return scene_; }
    [[nodiscard]] EarStateTile* state() const { return state_; }

protected:
    void take_words() override;
    void arrange(bool portrait) override;
    [[nodiscard]] int state_count() const override { return 4; }
    void show_state(int state) override;
    void show_present() override { show_trial(); }

private:
    enum class Said { nothing, cleared, up_first };
    void show_trial();
    QBoxLayout* parts_;
    QBoxLayout* buttons_;
    GuestLabel* title_;
    GuestLabel* every_;
    PictureView* pinch_;
    GuestLabel* how_;
    GuestLabel* try_;
    WaterScene* scene_;
    AirSpaceView* ear_;
    EarStateTile* state_;
    GuestLabel* depth_;
    GuestLabel* pressure_;
    GuestLabel* said_words_;
    GuestButton* down_;
    GuestButton* up_;
    GuestButton* clear_;
    GuestLabel* signal_;
    GuestLabel* standing_;
    EarTrial trial_;
    Pascals surface_{};  ///< of the water in which the trial is
    bool started_ = false;
    Said said_ = Said::nothing;
};

}  // namespace leadline
