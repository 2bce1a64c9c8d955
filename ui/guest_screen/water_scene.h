// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QVariantAnimation>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "ui/guest_screen/screen_parts.h"

class QSvgRenderer;

namespace leadline {

/// Words drawn into a scene, and the box they must lie in.
struct SceneWords {
    QRectF box;
    QString text;
    QFont font;
    int flags = 0;  ///< Qt::Alignment and Qt::TextFlag
};

/// Whether the words lie within their box.
bool words_fit(const SceneWords& words);

/// Water from the surface to the deepest planned point, with a scale, and a diver in it who is
/// dragged up and down. Knows depths as plain metres and words as it is given them.
class WaterScene : public QWidget, public ScaledPart {
    Q_OBJECT
public:
    explicit WaterScene(QWidget* parent = nullptr);
    ~WaterScene() override;

    /// Marks of the scale, from the surface down.
    struct Tick {
        double meters = 0.0;
        QString words;
    };
    struct Content {
        double deepest = 1.0;  ///< [m]
        std::vector<Tick> ticks;
        QString deepest_words;
        std::vector<double> clear_at;  ///< [m]; each a mark
        QString clear_words;           ///< beside the first of them
    };
    void set_content(Content content);
    /// Where the diver is; glides there unless calm.
    void set_depth(double meters, bool calm);
    [[nodiscard]] double depth() const { return depth_; }
    /// Where the diver is drawn at the moment.
    [[nodiscard]] double shown_depth() const { return shown_; }
    /// A balloon beside the diver, its width as a share of that at the surface; none: no balloon.
    void set_balloon(std::optional<double> width);
    void set_scale(const TypeScale& scale) override;

    [[nodiscard]] double y_of(double meters) const;
    [[nodiscard]] double depth_at(double y) const;
    [[nodiscard]] std::vector<SceneWords> words() const;
    /// Where the diver's picture is drawn at the moment.
    [[nodiscard]] QRectF diver_box() const;

Q_SIGNALS:
    /// The diver was dragged.
    void depth_wanted(double meters);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] bool mirrored() const { return layoutDirection() == Qt::RightToLeft; }
    /// The height above the water [em].
    [[nodiscard]] double sky() const;
    [[nodiscard]] QRectF mirrored(const QRectF& box) const;
    void paint_water(QPainter& painter) const;
    void paint_marks(QPainter& painter) const;
    void paint_diver(QPainter& painter) const;
    Content content_;
    double depth_ = 0.0;
    double shown_ = 0.0;
    std::optional<double> balloon_;
    TypeScale scale_;
    QVariantAnimation glide_;
    std::unique_ptr<QSvgRenderer> diver_;
};

}  // namespace leadline
