// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QBoxLayout>
#include <QGridLayout>
#include <QWidget>
#include <vector>

#include "ui/guest_screen/guest_screen_control.h"
#include "ui/guest_screen/screen_parts.h"
#include "ui/guest_words/screen_words.h"

namespace leadline {

/// One page of the guest screen. All sizes follow one scale, chosen as large as the page fits.
class ScreenView : public QWidget {
    Q_OBJECT
public:
    explicit ScreenView(GuestScreenControl& control, QWidget* parent = nullptr);

    /// Takes words and numbers anew from the control, and fits them in.
    void refresh();
    /// The same, but keeps the size of type where all still fits.
    void update_words();
    /// The page's own keys: the presenter's keys are the screen's.
    /// @returns whether the key was one
    virtual bool take_key(int key);
    /// The size of body text [px].
    [[nodiscard]] double em() const { return scale_.em; }
    /// Whether everything has the room it needs: no words cut off, nothing beyond the page.
    [[nodiscard]] bool fits() const;
    /// The words of the page that are cut off by something: for tests. Empty when all are well.
    [[nodiscard]] QStringList cut_off_words() const;

protected:
    virtual void take_words() = 0;
    /// What moving something on the page can lead to: the size of type must be right for all of it.
    /// show_present() goes back.
    [[nodiscard]] virtual int state_count() const { return 1; }
    virtual void show_state(int /*state*/) {}
    virtual void show_present() {}
    /// Puts the parts side by side or one below the other.
    virtual void arrange(bool portrait) = 0;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

    [[nodiscard]] QString say(ScreenWord word) const;
    [[nodiscard]] GuestScreenControl& control() const { return control_; }
    [[nodiscard]] const GuestTongue& tongue() const { return control_.tongue(); }
    [[nodiscard]] const TypeScale& scale() const { return scale_; }
    [[nodiscard]] bool is_portrait() const { return height() > width(); }
    /// Chooses the largest scale in which the page fits, and lays it out.
    void fit();
    /// Lays the page out anew at once, after words have changed.
    void settle();

private:
    void apply(double em);
    [[nodiscard]] bool all_states_fit();
    GuestScreenControl& control_;
    TypeScale scale_;
};

// Layouts without margins of their own.
QVBoxLayout* screen_column(QWidget* parent = nullptr);
QHBoxLayout* screen_row(QWidget* parent = nullptr);
QGridLayout* screen_grid(QWidget* parent = nullptr);
/// Puts widgets into a grid row by row, in equal columns; takes out what was there.
/// @param fill  the last takes what is left of its row
void fill_grid(QGridLayout& grid, const std::vector<QWidget*>& widgets, int columns,
               bool fill = false);

/// A picture with its name, what is chosen, and what it is for.
class PictureTile : public ScreenTile {
    Q_OBJECT
public:
    /// @param beside  the words stand beside the picture, else below it
    PictureTile(double picture_ems, bool beside, QWidget* parent = nullptr);
    void set(const QString& picture, const QString& name, const QString& value,
             const QString& text);
    [[nodiscard]] PictureView* picture() const { return picture_; }
    [[nodiscard]] GuestLabel* name() const { return name_; }
    [[nodiscard]] GuestLabel* value() const { return value_; }
    [[nodiscard]] GuestLabel* text() const { return text_; }

private:
    PictureView* picture_;
    GuestLabel* name_;
    GuestLabel* value_;
    GuestLabel* text_;
};

/// The first names of those who are briefed, to tap one.
class GuestPicker : public QWidget {
    Q_OBJECT
public:
    explicit GuestPicker(GuestScreenControl& control, QWidget* parent = nullptr);
    void take_words();
    void arrange(bool portrait);
    /// Picks the guest before or after the picked one.
    void step(int by);

private:
    GuestScreenControl& control_;
    GuestLabel* prompt_;
    QGridLayout* grid_;
    std::vector<QWidget*> buttons_;
    std::vector<GuestId> ids_;
    bool portrait_ = false;
};

}  // namespace leadline
