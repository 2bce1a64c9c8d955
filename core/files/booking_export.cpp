// SPDX-License-Identifier: GPL-3.0-or-later
#include <csv.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/files/booking_csv.h"
#include "core/files/digits.h"
#include "core/files/json_values.h"
#include "core/physics/number_text.h"

namespace leadline {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view line_end = "\r\n";

/// Headers that read_header() understands, units included.
constexpr std::array headers{"Name",        "Birth date",     "Language", "Weight (kg)",
                             "Height (cm)", "Shoe size (EU)", "Phone",    "E-mail",
                             "Dives",       "Note"};

/// "-3.5"; "+34 600 123 456", but not "+34600123456".
bool is_harmless_number(std::string_view text) {
    const char sign = text.empty() ? '\0' : text.front();
    if (sign != '-' && sign != '+') return false;
    text.remove_prefix(1);
    if (text.empty() || !is_digit(text.front()) || !is_digit(text.back())) return false;
    const std::string_view within = sign == '-' ? "0123456789." : "0123456789 ";
    if (text.find_first_not_of(within) != std::string_view::npos) return false;
    if (sign == '+') return text.find(' ') != std::string_view::npos;
    return std::count(text.begin(), text.end(), '.') <= 1;
}

bool starts_formula(std::string_view text) {
    const std::size_t start = text.find_first_not_of('\'');
    return start != std::string_view::npos &&
           std::string_view("=+-@\t\r").find(text[start]) != std::string_view::npos;
}

/// The text in quotation marks, those within it doubled (RFC 4180, section 2, rules 5 to 7).
std::string in_quotes(std::string_view text) {
    std::string cell(csv_write(nullptr, 0, text.data(), text.size()), '\0');
    csv_write(cell.data(), cell.size(), text.data(), text.size());
    return cell;
}

template <std::size_t count>
void put_line(std::string& to, const std::array<std::string, count>& cells) {
    for (std::size_t i = 0; i < count; ++i) {
        if (i > 0) to += ',';
        if (!cells[i].empty()) to += in_quotes(formula_guarded(cells[i]));
    }
    to += line_end;
}

}  // namespace

std::string formula_guarded(std::string_view text) {
    const bool guard = starts_formula(text) && !is_harmless_number(text);
    return guard ? "'" + std::string(text) : std::string(text);
}

std::string_view formula_unguarded(std::string_view text) {
    if (text.starts_with('\'') && starts_formula(text)) text.remove_prefix(1);
    return text;
}

std::string write_booking_csv(const Session& session) {
    std::string csv(byte_order_mark);
    std::array<std::string, headers.size()> cells;
    std::copy(headers.begin(), headers.end(), cells.begin());
    put_line(csv, cells);
    const auto number = [](double value) { return number_text(tidy(value)); };
    for (const Guest& guest : session.guests) {
        cells = {without_controls(guest.name, TextForm::line),
                 guest.birth_date ? to_text(*guest.birth_date) : std::string(),
                 guest.language,
                 guest.body_mass ? number(guest.body_mass->value()) : std::string(),
                 guest.body_height ? number(guest.body_height->value() * 100.0) : std::string(),
                 guest.shoe_size_eu ? number(*guest.shoe_size_eu) : std::string(),
                 without_controls(guest.phone, TextForm::line),
                 without_controls(guest.email, TextForm::line),
                 guest.dives_before ? std::to_string(*guest.dives_before) : std::string(),
                 without_controls(guest.note, TextForm::lines)};
        put_line(csv, cells);
    }
    return csv;
}

}  // namespace leadline
