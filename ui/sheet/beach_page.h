// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QStringList>
#include <span>
#include <vector>

#include "ui/sheet/beach_sheet.h"
#include "ui/sheet/sheet_pen.h"

namespace leadline {

class BeachLabels {
    Q_DECLARE_TR_FUNCTIONS(BeachSheet)
};

// What the parts of the beach sheet share, in millimetres.
inline constexpr double beach_title_height = 14.2;
inline constexpr double beach_part_gap = 1.8;
inline constexpr double beach_note_gap = 0.5;
inline constexpr double beach_note_line = 3.6;
inline constexpr double beach_hair = 0.15;
inline constexpr double beach_guests_head = 7.4;
inline constexpr double beach_record_head = 7.4;
inline constexpr double beach_count_height = 8.5;

/// How a guest's row is filled: lines of type, and what of the flags stands in it.
struct BeachRow {
    int name = 1;
    int who = 0;  ///< below the name; 0: beside it
    int kit = 1;  ///< 0: it stands at the foot
    int flags = 0;
    QString flag_text;
    QStringList moved;     ///< flags that found no room here, as BeachGuest::moved_flags
    int moved_stops = 0;   ///< so many of them, the first, are stops
    double content = 0.0;  ///< height of the words [mm]
    double height = 0.0;   ///< of the row, with what is spare [mm]
};

/// What goes on from a guests' page to the next.
struct BeachRest {
    QStringList open;
    QStringList decided;
    QStringList kit;    ///< of guests whose rows had no room for it
    bool call = false;  ///< whom to call was cut
    bool plan = false;  ///< the emergency plan was cut
    [[nodiscard]] bool empty() const {
        return open.isEmpty() && decided.isEmpty() && kit.isEmpty() && !call && !plan;
    }
};

/// Group, place, day and staff at the top; leaves room for the number of the page.
/// @returns where the sheet's own matter begins
double set_beach_title(SheetPen& pen, const BeachSheet& sheet, double number_width);
/// The number of the page, where the title left room for it.
void set_beach_number(SheetPen& pen, const QString& number);
/// Height kept for what the sheet is not and how far translations can be trusted.
double beach_foot_height(SheetPen& pen, const BeachSheet& sheet);
void set_beach_foot(SheetPen& pen, const BeachSheet& sheet);

/// One page of a group's sheet with some of its guests. First plan(), then set().
class BeachPage {
public:
    /// @param goes_on  number of the page on which what finds no room here stands
    BeachPage(const BeachSheet& sheet, std::span<const BeachGuest> guests, std::size_t goes_on,
              TypeSetter& setter, Page& page)
        : sheet_(sheet), guests_(guests), goes_on_(goes_on), pen_(setter, page) {}

    /// Decides how high everything is.
    /// @returns whether all guests find room with all that is said of them but flags, which can be
    ///          moved; false: take fewer guests
    bool plan();
    /// Draws the page. @returns what goes on on another
    BeachRest set(double number_width);
    SheetPen& pen() { return pen_; }

private:
    // beach_head.cpp
    [[nodiscard]] double plan_width() const;
    [[nodiscard]] double call_width() const;
    [[nodiscard]] double emergency_height();
    double set_emergency(double y);
    /// Whom to call; where it is cut, the page on which it stands whole.
    void set_call(const QRectF& number);
    /// In the last line of an area: where the whole stands.
    void set_pointer(const QRectF& area);
    void set_emergency_plan(const QRectF& plan);

    // beach_guests.cpp
    /// @param most_lines  of flags
    [[nodiscard]] BeachRow row_of(const BeachGuest& guest, double grow, int most_lines);
    void plan_rows(double grow, int most_lines);
    [[nodiscard]] double rows_height() const;
    void put_flags(const BeachGuest& guest, double width, double points, int most_lines,
                   BeachRow& row);
    double set_guests(double y);
    void set_guests_head(double y);
    void set_guest(const BeachGuest& guest, const QRectF& row, const BeachRow& lines);
    /// Width of a guest's name in the row; the rest is for who it is.
    [[nodiscard]] double name_width(const BeachGuest& guest, double room, double points);
    /// The columns of the guests' table: photo (of no width where room is short), what to know,
    /// then the figures.
    [[nodiscard]] std::vector<QRectF> guest_cells(const QRectF& row) const;

    // beach_middle.cpp
    [[nodiscard]] std::vector<double> signal_widths();
    [[nodiscard]] double signals_width(const std::vector<double>& widths) const;
    [[nodiscard]] double told_height(double width);
    [[nodiscard]] double middle_least();
    double set_middle(double y);
    void set_profile(const QRectF& area);
    /// @param right  edge of the room for what stands beside the chart
    void set_chart(const QRectF& chart, double right);
    void set_depths(const QRectF& chart, double deepest);
    /// @param widths  of each signal, by weight
    void set_signals(const QRectF& area, const std::vector<double>& widths);

    // beach_records.cpp
    double set_records(double y);
    void set_records_head(double y);
    double set_count(double y);
    [[nodiscard]] std::vector<QRectF> record_cells(const QRectF& row) const;

    // beach_pages.cpp
    [[nodiscard]] QStringList open() const;
    [[nodiscard]] QStringList moved_kit() const;
    [[nodiscard]] double notes_height(bool running);
    /// Height of the first of the notes.
    [[nodiscard]] double gravest_note();
    /// Gives rows more lines for the flags that were moved from them, as long as all still fits.
    /// @param stops  only where a stop was moved
    void bring_back_flags(bool stops);
    /// All on this page: large and a paragraph each, or small and running on, if need be with flags
    /// moved from their narrow column to the wide lines at the foot.
    bool fits_here();
    /// The gravest note on this page, the others on another.
    bool fits_with_rest();
    /// Height that is left [mm]; less than nothing: it does not fit.
    [[nodiscard]] double spare(double notes) const { return room_ - notes - rows_height(); }
    void set_notes(double y, double bottom, BeachRest& rest);

    const BeachSheet& sheet_;
    std::span<const BeachGuest> guests_;
    std::size_t goes_on_;
    SheetPen pen_;
    std::vector<BeachRow> rows_;
    double room_ = 0.0;          ///< for the guests' rows and the notes
    double others_least_ = 0.0;  ///< of the records and the profile with the signals
    double foot_height_ = 0.0;
    double emergency_height_ = 0.0;
    double grow_ = 1.0;  ///< of the type in the rows
    double record_row_ = 0.0;
    double middle_height_ = 0.0;
    bool photos_ = true;    ///< there is room for a photo of each guest
    int most_kit_lines_ = 0;  ///< of a guest's kit; one that asks for more stands at the foot
    bool running_ = false;  ///< notes of a kind behind one another
    bool call_cut_ = false;
    bool plan_cut_ = false;
};

/// A paragraph for each text, or for each kind where they run on.
std::vector<Phrase> beach_notes(const QStringList& open, const QStringList& decided,
                                const QStringList& kit, bool running);

}  // namespace leadline
