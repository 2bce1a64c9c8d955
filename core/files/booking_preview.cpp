// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "core/files/booking_csv.h"
#include "core/files/booking_duplicates.h"
#include "core/files/booking_values.h"
#include "core/files/json_gate.h"
#include "core/files/json_values.h"
#include "core/physics/number_text.h"
#include "core/planning/text_length.h"

namespace leadline {
namespace {

constexpr std::array date_orders{DateOrder::day_month_year, DateOrder::month_day_year,
                                 DateOrder::year_month_day};
constexpr std::array mass_units{MassUnit::kilograms, MassUnit::pounds};
/// Feet and inches are never a reading of a bare number.
constexpr std::array bare_height_units{HeightUnit::centimeters, HeightUnit::meters,
                                       HeightUnit::inches};
constexpr int most_dives = 20000;  // as of a Guest
constexpr std::size_t longest_name = 200;
constexpr std::size_t longest_note = 2000;
constexpr std::size_t longest_phone = 40;
constexpr std::size_t longest_email = 254;

/// The column of each meaning; the first where the user gave two the same.
using ColumnOf = std::map<BookingField, std::size_t>;

ColumnOf columns_by_field(const BookingTable& table, const BookingChoices& choices) {
    ColumnOf columns;
    for (std::size_t i = 0; i < std::min(table.columns.size(), choices.columns.size()); ++i) {
        columns.emplace(choices.columns[i], i);
    }
    return columns;
}

std::string cell_of(const BookingLine& line, std::size_t column) {
    return column < line.cells.size() ? trimmed(line.cells[column]) : std::string();
}

// ---- questions about a column ------------------------------------------------------------------

/// Whether a cell that allows one answer only decides for the whole column. A day after the 12th
/// does; a mass that no unit but one allows may as well be a slip.
enum class Evidence { one_cell, every_cell };

/// Gathers which answers each cell allows, and tells what follows from all of them.
template <typename Choice>
class Inquiry {
public:
    explicit Inquiry(Evidence evidence) : evidence_(evidence) {}

    /// @param allowed  the answers with which the cell can be read, those that matter first
    /// @param alike    they all come to the same
    void cell(const std::string& text, const std::vector<Choice>& allowed, bool alike) {
        if (allowed.empty()) return;  // wrong however it is read
        question_.arises = true;
        if (allowed.size() > 1 && !alike && question_.example.empty()) question_.example = text;
        if (first_) question_.fitting = allowed;
        std::erase_if(question_.fitting, [&](Choice choice) {
            return std::find(allowed.begin(), allowed.end(), choice) == allowed.end();
        });
        none_differs_ = none_differs_ && (alike || allowed.size() == 1);
        first_ = false;
    }
    [[nodiscard]] BookingQuestion<Choice> question(const std::optional<Choice>& users,
                                                   const std::optional<Choice>& headers) const {
        BookingQuestion<Choice> question = question_;
        if (users) {
            question.answer = users;
        } else if (headers) {
            question.answer = headers;
        } else if (!question.fitting.empty() &&
                   (none_differs_ ||
                    (evidence_ == Evidence::one_cell && question.fitting.size() == 1))) {
            question.answer = question.fitting.front();
        }
        return question;
    }

private:
    Evidence evidence_;
    BookingQuestion<Choice> question_;
    bool first_ = true;
    bool none_differs_ = true;  ///< no cell is read differently by different answers
};

BookingQuestion<DateOrder> ask_order(const BookingTable& table, const BookingChoices& choices,
                                     const ColumnOf& columns, Date latest) {
    const auto at = columns.find(BookingField::birth_date);
    if (at == columns.end()) return {};
    Inquiry<DateOrder> inquiry(Evidence::one_cell);
    for (const BookingLine& line : table.lines) {
        const std::string cell = cell_of(line, at->second);
        const auto parts = read_date_parts(cell);
        if (!parts || evident_date(*parts, latest)) continue;
        std::vector<DateOrder> allowed;
        std::optional<Date> first;
        bool alike = true;
        for (const DateOrder order : date_orders) {
            const auto read = date_in_order(*parts, order, latest);
            if (!read) continue;
            alike = alike && (!first || *first == read->date);
            first = read->date;
            allowed.push_back(order);
        }
        inquiry.cell(cell, allowed, alike);
    }
    return inquiry.question(choices.date_order, table.columns[at->second].date_order);
}

BookingQuestion<MassUnit> ask_mass_unit(const BookingTable& table, const BookingChoices& choices,
                                        const ColumnOf& columns) {
    const auto at = columns.find(BookingField::mass);
    if (at == columns.end()) return {};
    Inquiry<MassUnit> inquiry(Evidence::every_cell);
    for (const BookingLine& line : table.lines) {
        const std::string cell = cell_of(line, at->second);
        const auto mass = read_mass(cell);
        if (!mass || mass->unit) continue;
        std::vector<MassUnit> allowed;
        for (const MassUnit unit : mass_units) {
            if (is_possible(mass_of(mass->number, unit))) allowed.push_back(unit);
        }
        inquiry.cell(cell, allowed, false);
    }
    return inquiry.question(choices.mass_unit, table.columns[at->second].mass_unit);
}

BookingQuestion<HeightUnit> ask_height_unit(const BookingTable& table,
                                            const BookingChoices& choices,
                                            const ColumnOf& columns) {
    const auto at = columns.find(BookingField::height);
    if (at == columns.end()) return {};
    Inquiry<HeightUnit> inquiry(Evidence::every_cell);
    for (const BookingLine& line : table.lines) {
        const std::string cell = cell_of(line, at->second);
        const auto height = read_height(cell);
        std::vector<HeightUnit> allowed;
        if (height && !height->unit) {
            for (const HeightUnit unit : bare_height_units) {
                if (is_possible(height_of(height->number, unit))) allowed.push_back(unit);
            }
        } else if (!height && read_feet_and_inches(cell)) {
            allowed.push_back(HeightUnit::feet_and_inches);
        }
        inquiry.cell(cell, allowed, false);
    }
    return inquiry.question(choices.height_unit, table.columns[at->second].height_unit);
}

// ---- one row -----------------------------------------------------------------------------------

class RowReader {
public:
    RowReader(const BookingLine& line, const BookingPreview& preview, const Session& session)
        : line_(line), preview_(preview), session_(session) {
        row_.line = line.number;
        row_.guest.breathing = BreathingClass::average;
    }

    void name(const ColumnOf& columns) {
        std::string name;
        std::optional<std::size_t> first_column;
        for (const BookingField field :
             {BookingField::name, BookingField::first_name, BookingField::last_name}) {
            const auto at = columns.find(field);
            if (at == columns.end()) continue;
            if (!first_column) first_column = at->second;
            const std::string part = text(at->second);
            if (!name.empty() && !part.empty()) name += ' ';
            name += part;
            // The whole name says all; the parts are for lists without it.
            if (field == BookingField::name && !name.empty()) break;
        }
        row_.guest.name = without_controls(name, TextForm::line);
        if (name.empty()) return say(first_column, BookingProblem::name_missing, true);
        too_long(row_.guest.name, longest_name, first_column);
    }

    void cell(BookingField field, std::size_t column) {
        const std::string cell = text(column);
        if (field != BookingField::note && says_nothing(cell)) return;
        if (cell.find("\xEF\xBF\xBD") != std::string::npos) {
            say(column, BookingProblem::unread_letters, false, cell);
        }
        switch (field) {
            case BookingField::birth_date: return birth_date(cell, column);
            case BookingField::age: return age(cell, column);
            case BookingField::language: return language(cell, column);
            case BookingField::mass: return mass(cell, column);
            case BookingField::height: return height(cell, column);
            case BookingField::shoe_size:
                row_.guest.shoe_size_eu = read_shoe_size(cell);
                if (!row_.guest.shoe_size_eu) {
                    say(column, BookingProblem::not_a_shoe_size, false, cell);
                }
                return;
            case BookingField::dives:
                row_.guest.dives_before = read_count(cell, most_dives);
                if (!row_.guest.dives_before) {
                    say(column, BookingProblem::not_a_number_of_dives, false, cell);
                }
                return;
            case BookingField::phone:
                row_.guest.phone = without_controls(cell, TextForm::line);
                too_long(row_.guest.phone, longest_phone, column);
                if (!looks_like_phone(row_.guest.phone)) {
                    say(column, BookingProblem::odd_phone, false, cell);
                }
                return;
            case BookingField::email:
                row_.guest.email = without_controls(cell, TextForm::line);
                too_long(row_.guest.email, longest_email, column);
                if (!looks_like_email(row_.guest.email)) {
                    say(column, BookingProblem::odd_email, false, cell);
                }
                return;
            case BookingField::note: return note(cell, column);
            case BookingField::name:
            case BookingField::first_name:
            case BookingField::last_name:
            case BookingField::unused: return;
        }
    }

    BookingRow finish(const ColumnOf& columns) {
        const auto at = columns.find(BookingField::age);
        if (row_.age && at != columns.end()) compare_age(at->second);
        return std::move(row_);
    }

private:
    [[nodiscard]] std::string text(std::size_t column) const {
        // Once more at the ends: a tab behind the apostrophe is one of them now.
        return trimmed(formula_unguarded(cell_of(line_, column)));
    }
    void say(std::optional<std::size_t> column, BookingProblem problem, bool error,
             std::string_view given = {}, std::string allowed = {}) {
        row_.messages.push_back({column, problem, error, shortened(given), std::move(allowed)});
    }
    void too_long(const std::string& text, std::size_t most, std::optional<std::size_t> column) {
        const std::size_t count = character_count(text);
        if (count <= most) return;
        say(column, BookingProblem::text_too_long, true, std::to_string(count),
            std::to_string(most));
    }

    void birth_date(const std::string& cell, std::size_t column) {
        const auto parts = read_date_parts(cell);
        if (!parts) return say(column, BookingProblem::not_a_date, true, cell);
        std::optional<ReadDate> read = evident_date(*parts, session_.date);
        if (!read) {
            const auto& order = preview_.date_order;
            if (order.is_open() && fits_some_order(*parts)) {
                return say(column, BookingProblem::unit_not_chosen, false, cell);
            }
            if (order.answer) read = date_in_order(*parts, *order.answer, session_.date);
        }
        if (!read) return say(column, BookingProblem::not_a_date, true, cell);
        if (read->date > session_.date) {
            return say(column, BookingProblem::birth_in_future, true, cell,
                       to_text(session_.date));
        }
        row_.guest.birth_date = read->date;
        if (read->two_digit_year) {
            say(column, BookingProblem::year_of_two_digits, false, cell,
                std::to_string(static_cast<int>(read->date.year())));
        }
        constexpr int youngest = 6;  // common practice, no source: only to have it looked at
        constexpr int oldest = 90;
        const int years = age_in_years(read->date, session_.date);
        if (years < youngest || years > oldest) {
            say(column, BookingProblem::age_unlikely, false, std::to_string(years));
        }
    }

    [[nodiscard]] bool fits_some_order(const DateParts& parts) const {
        return std::any_of(date_orders.begin(), date_orders.end(), [&](DateOrder order) {
            return date_in_order(parts, order, session_.date).has_value();
        });
    }

    void age(const std::string& cell, std::size_t column) {
        constexpr int most = 120;
        row_.age = read_count(cell, most);
        if (!row_.age) say(column, BookingProblem::not_an_age, false, cell);
    }

    /// The age in the list is a witness of the birth date: a year may have passed since it was
    /// written down, more is a slip in one of them.
    void compare_age(std::size_t column) {
        if (!row_.guest.birth_date) {
            return say(column, BookingProblem::age_without_birth_date, false,
                       std::to_string(*row_.age));
        }
        const int years = age_in_years(*row_.guest.birth_date, session_.date);
        if (std::abs(years - *row_.age) > 1) {
            say(column, BookingProblem::age_contradicts_birth, false, std::to_string(*row_.age),
                std::to_string(years));
        }
    }

    void language(const std::string& cell, std::size_t column) {
        const std::optional<std::string> tag = read_language(cell);
        if (tag) {
            row_.guest.language = *tag;
        } else {
            say(column, BookingProblem::unknown_language, false, cell);
        }
    }

    void mass(const std::string& cell, std::size_t column) {
        const auto read = read_mass(cell);
        if (!read) return say(column, BookingProblem::not_a_mass, true, cell);
        const std::optional<MassUnit> unit = read->unit ? read->unit : preview_.mass_unit.answer;
        const auto possible = [&](MassUnit one) { return is_possible(mass_of(read->number, one)); };
        // Not asked, no cell fits any unit; this one does not either.
        const bool fits = unit ? possible(*unit)
                               : std::any_of(mass_units.begin(), mass_units.end(), possible);
        if (!fits) return say(column, BookingProblem::mass_out_of_range, true, cell);
        if (!unit) return say(column, BookingProblem::unit_not_chosen, false, cell);
        const Kilograms mass = mass_of(read->number, *unit);
        row_.guest.body_mass = mass;
    }

    void height(const std::string& cell, std::size_t column) {
        const auto read = read_height(cell);
        const auto& question = preview_.height_unit;
        std::optional<Meters> height;
        if (read && read->unit) {
            height = height_of(read->number, *read->unit);
        } else if (question.is_open()) {
            const bool fits = read ? std::any_of(bare_height_units.begin(), bare_height_units.end(),
                                                 [&](HeightUnit unit) {
                                                     return is_possible(
                                                         height_of(read->number, unit));
                                                 })
                                   : read_feet_and_inches(cell).has_value();
            if (fits) return say(column, BookingProblem::unit_not_chosen, false, cell);
            return say(column,
                       read ? BookingProblem::height_out_of_range : BookingProblem::not_a_height,
                       true, cell);
        } else if (question.answer == HeightUnit::feet_and_inches) {
            height = read_feet_and_inches(cell);
        } else if (read) {
            height = height_of(read->number, question.answer.value_or(HeightUnit::centimeters));
        }
        if (!height) return say(column, BookingProblem::not_a_height, true, cell);
        if (!is_possible(*height)) {
            return say(column, BookingProblem::height_out_of_range, true, cell);
        }
        row_.guest.body_height = height;
    }

    void note(const std::string& cell, std::size_t column) {
        if (cell.empty()) return;
        std::string& note = row_.guest.note;
        if (!note.empty()) note += '\n';
        note += cell;
        too_long(note, longest_note, column);
    }

    const BookingLine& line_;
    const BookingPreview& preview_;
    const Session& session_;
    BookingRow row_;
};

BookingRow read_row(const BookingLine& line, const BookingTable& table,
                    const BookingChoices& choices, const ColumnOf& columns,
                    const BookingPreview& preview, const Session& session) {
    RowReader reader(line, preview, session);
    reader.name(columns);
    const std::size_t count = std::min(table.columns.size(), choices.columns.size());
    for (std::size_t i = 0; i < count; ++i) {
        const BookingField field = choices.columns[i];
        // Only notes are gathered from several columns.
        if (field == BookingField::note || columns.at(field) == i) reader.cell(field, i);
    }
    return reader.finish(columns);
}

}  // namespace

bool BookingRow::has_error() const {
    return std::any_of(messages.begin(), messages.end(),
                       [](const BookingMessage& message) { return message.error; });
}

bool BookingRow::is_repeat() const {
    return duplicate && duplicate->reason != DuplicateReason::same_contact;
}

BookingPreview preview_bookings(const BookingTable& table, const BookingChoices& choices,
                                const Session& session) {
    BookingPreview preview;
    const ColumnOf columns = columns_by_field(table, choices);
    preview.date_order = ask_order(table, choices, columns, session.date);
    preview.mass_unit = ask_mass_unit(table, choices, columns);
    preview.height_unit = ask_height_unit(table, choices, columns);
    preview.rows.reserve(table.lines.size());
    for (const BookingLine& line : table.lines) {
        preview.rows.push_back(read_row(line, table, choices, columns, preview, session));
    }
    mark_duplicates(preview.rows, session);
    return preview;
}

}  // namespace leadline
