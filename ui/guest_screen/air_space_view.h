// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <memory>

#include "core/body/ear_trial.h"
#include "ui/guest_screen/screen_parts.h"

class QSvgRenderer;

namespace leadline {

enum class AirSpace { balloon, lungs, ear, mask };

/// A space of air in or about the body, drawn as the water presses on it. In black on white.
class AirSpaceView : public QWidget, public ScaledPart {
    Q_OBJECT
public:
    AirSpaceView(AirSpace space, double ems, QWidget* parent = nullptr);
    ~AirSpaceView() override;
    /// @param share  balloon and mask: width as a share of that at the surface, 0 to 1. Lungs: how
    ///               wide a breath held here would be at the surface, 1 and more. Ear: how far the
    ///               drum bends, 0 flat to 1
    void set_share(double share);
    [[nodiscard]] double share() const { return share_; }
    void set_scale(const TypeScale& scale) override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paint_balloon(QPainter& painter) const;
    void paint_lungs(QPainter& painter) const;
    void paint_ear(QPainter& painter) const;
    void paint_mask(QPainter& painter) const;
    AirSpace space_;
    double ems_;
    double share_ = 1.0;
    TypeScale scale_;
    std::unique_ptr<QSvgRenderer> lungs_;
};

/// How ears feel, as a shape and words; the ground turns dark with pain.
class EarStateTile : public ScreenTile {
    Q_OBJECT
public:
    explicit EarStateTile(QWidget* parent = nullptr);
    void set_state(EarFeeling feeling, const QString& words);
    [[nodiscard]] EarFeeling state() const { return feeling_; }
    [[nodiscard]] QString words() const { return words_->text(); }
    void set_scale(const TypeScale& scale) override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    EarFeeling feeling_ = EarFeeling::fine;
    TypeScale scale_;
    QWidget* room_;  ///< of the shape
    GuestLabel* words_;
};

}  // namespace leadline
