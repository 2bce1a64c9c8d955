// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/planning/signal_check.h"
#include "ui/guest_screen/screen_view.h"

namespace leadline {

/// The short check: a picture, four answers, said kindly whether it was right, asked again until it
/// is. What is known is noted with the guest.
class SignalCheckView : public ScreenView {
    Q_OBJECT
public:
    explicit SignalCheckView(GuestScreenControl& control, QWidget* parent = nullptr);
    bool take_key(int key) override;
    void start();
    void answer(int choice);
    [[nodiscard]] const std::optional<SignalCheck>& check() const { return check_; }
    /// Where the order of questions starts; replaced in tests.
    std::function<std::uint64_t()> seed;

protected:
    void take_words() override;
    void arrange(bool portrait) override;

private:
    enum class Said { nothing, right, wrong };
    /// Ends what is asked, without a word.
    void drop();
    void show_question();
    void show_known();
    QBoxLayout* parts_;
    QVBoxLayout* asked_;
    QGridLayout* answers_;
    std::vector<QWidget*> answer_buttons_;
    GuestLabel* title_;
    GuestPicker* picker_;
    PictureView* picture_;
    GuestLabel* question_;
    PictureView* said_picture_;  ///< the signal that was told: the next one is asked already
    GuestLabel* said_words_;
    GuestButton* start_;
    QGridLayout* known_;
    std::vector<QWidget*> known_labels_;
    GuestLabel* score_;
    GuestLabel* noted_;
    std::optional<SignalCheck> check_;
    GuestId guest_;  ///< whose check it is
    int check_number_ = 0;
    int noted_count_ = 0;  ///< how many signals the session held when the check was last looked at
    Said said_ = Said::nothing;
    HandSignal last_ = HandSignal::ok;  ///< what `said_` is about
};

}  // namespace leadline
