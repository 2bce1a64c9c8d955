// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <memory>

#include "ui/guest_screen/screen_palette.h"

class QSvgRenderer;

namespace leadline {

/// How large words are and what they are for.
enum class TextRole { shout, title, heading, body, small };
/// In which ink.
enum class TextInk { ink, quiet, accent, warn, on_warn };

/// The size of everything on a page: all else is a multiple of `em`.
struct TypeScale {
    double em = 30.0;  ///< body text [px]
    QString family;
    ScreenPalette palette;
};

/// Something on a page that follows the scale. Mixed into widgets.
class ScaledPart {
public:
    ScaledPart() = default;
    ScaledPart(const ScaledPart&) = delete;
    ScaledPart& operator=(const ScaledPart&) = delete;
    virtual ~ScaledPart() = default;
    virtual void set_scale(const TypeScale& scale) = 0;
};

/// Scales a widget's layouts, and every ScaledPart below it.
void scale_all(QWidget& root, const TypeScale& scale);

QFont scaled_font(const TypeScale& scale, TextRole role);

/// Words on a page: plain text that breaks into lines.
class GuestLabel : public QLabel, public ScaledPart {
    Q_OBJECT
public:
    explicit GuestLabel(TextRole role, TextInk ink = TextInk::ink, QWidget* parent = nullptr);
    /// Hides QLabel's: lines end between phrases, a number keeps its unit, and the text runs the
    /// way the page is read, whatever stands first in it.
    void setText(const QString& words);
    void set_scale(const TypeScale& scale) override;
    void set_ink(TextInk ink);
    /// Asks for no more width than its longest word: columns beside each other stay alike.
    void set_narrow() { narrow_ = true; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;

private:
    void show_words();
    void take_colour();
    QString words_;
    bool narrow_ = false;
    TextRole role_;
    TextInk ink_;
    ScreenPalette palette_ = screen_palette(Shade::light);
};

/// A big button; its words break into lines too. Arrow keys, Page Up and Page Down go to the page.
class GuestButton : public QPushButton, public ScaledPart {
    Q_OBJECT
public:
    explicit GuestButton(QWidget* parent = nullptr);
    void set_scale(const TypeScale& scale) override;
    /// Stands out: the thing to do next, or the one chosen.
    void set_strong(bool strong);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    /// Whether the words lie within the button.
    [[nodiscard]] bool words_fit() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] int padding() const;
    [[nodiscard]] QRect words_rect(int width) const;
    TypeScale scale_;
    bool strong_ = false;
};

/// The one picture that is drawn by code.
inline constexpr char clock_picture[] = "clock";

/// A picture drawn in black, on its own white ground in light and dark.
class PictureView : public QWidget, public ScaledPart {
    Q_OBJECT
public:
    /// @param ems  side of the square in multiples of the scale's em
    explicit PictureView(double ems, QWidget* parent = nullptr);
    ~PictureView() override;
    /// A resource path of an SVG picture, or `clock_picture`; empty: no picture.
    void set_picture(const QString& path);
    [[nodiscard]] const QString& picture() const { return path_; }
    [[nodiscard]] bool is_drawn() const;
    void set_scale(const TypeScale& scale) override;
    void set_ems(double ems) { ems_ = ems; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double ems_;
    QString path_;
    TypeScale scale_;
    std::unique_ptr<QSvgRenderer> renderer_;
};

/// A tile: a rounded panel around what belongs together.
class ScreenTile : public QFrame, public ScaledPart {
    Q_OBJECT
public:
    explicit ScreenTile(QWidget* parent = nullptr, bool warns = false);
    void set_scale(const TypeScale& scale) override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool warns_;
    TypeScale scale_;
};

}  // namespace leadline
