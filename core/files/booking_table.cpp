// SPDX-License-Identifier: GPL-3.0-or-later
#include <csv.h>

#include <algorithm>
#include <array>
#include <memory>
#include <utility>

#include "core/files/booking_csv.h"
#include "core/files/json_values.h"

namespace leadline {
namespace {

using Cells = std::vector<std::string>;

/// Lines at the start of a list among which its header is looked for.
constexpr std::size_t header_search = 10;
/// Lines and bytes at the start of a list by which its delimiter is told.
constexpr std::size_t sample_lines = 20;
constexpr std::size_t sample_bytes = 65536;

struct ReadLines {
    std::vector<BookingLine> lines;  ///< empty ones left out
    Cells current;
    std::size_t number = 0;
    std::size_t cells = 0;   ///< in the line so far
    std::size_t filled = 0;  ///< up to the last that is not empty: spreadsheets fill up lines
    std::size_t widest = 0;
    std::size_t most_lines = 0;
    bool too_many = false;

    [[nodiscard]] bool stop() const { return too_many || widest > most_booking_columns; }
};

bool is_empty(const Cells& cells) {
    return std::all_of(cells.begin(), cells.end(), [](const std::string& cell) {
        return cell.find_first_not_of(" \t\n") == std::string::npos;
    });
}

void on_cell(void* text, std::size_t length, void* data) {
    auto* read = static_cast<ReadLines*>(data);
    ++read->cells;
    if (length > 0) read->filled = read->cells;
    if (read->cells > most_booking_columns || read->too_many) return;
    const std::string_view cell(static_cast<const char*>(text), length);
    read->current.push_back(without_controls(cell, TextForm::lines));
}

void on_line_end(int, void* data) {
    auto* read = static_cast<ReadLines*>(data);
    ++read->number;
    read->current.resize(std::min(read->current.size(), read->filled));
    const bool too_wide = read->filled > most_booking_columns;
    if (too_wide || !is_empty(read->current)) {
        read->widest = std::max(read->widest, read->filled);
        read->too_many = read->too_many || read->lines.size() == read->most_lines;
        if (!read->too_many) read->lines.push_back({read->number, std::move(read->current)});
    }
    read->current.clear();
    read->cells = 0;
    read->filled = 0;
}

struct Parsed {
    ReadLines read;
    bool quote_left_open = false;
};

/// @param text  with LF as its only line end
Parsed parse(std::string_view text, char delimiter, std::size_t most_lines) {
    Parsed parsed;
    parsed.read.most_lines = most_lines;
    csv_parser raw{};
    // Every line end is reported, so that empty lines count in the numbers of rows.
    if (csv_init(&raw, CSV_REPALL_NL) != 0) return parsed;
    const std::unique_ptr<csv_parser, decltype(&csv_free)> parser(&raw, &csv_free);
    csv_set_delim(parser.get(), static_cast<unsigned char>(delimiter));
    constexpr std::size_t piece = 65536;
    while (!text.empty() && !parsed.read.stop()) {
        const std::string_view part = text.substr(0, piece);
        (void)csv_parse(parser.get(), part.data(), part.size(), on_cell, on_line_end,
                        &parsed.read);
        text.remove_prefix(part.size());
    }
    // Lenient about quotes within cells, strict about one that never ends: it swallows the rest.
    (void)csv_set_opts(parser.get(), CSV_REPALL_NL | CSV_STRICT | CSV_STRICT_FINI);
    parsed.quote_left_open =
        !parsed.read.stop() && csv_fini(parser.get(), on_cell, on_line_end, &parsed.read) != 0;
    return parsed;
}

std::string with_plain_line_ends(std::string_view text) {
    std::string plain;
    plain.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '\r') {
            plain += text[i];
        } else if (i + 1 == text.size() || text[i + 1] != '\n') {
            plain += '\n';
        }
    }
    return plain;
}

std::size_t exact_headers(const Cells& cells, const BookingWords& words) {
    return static_cast<std::size_t>(
        std::count_if(cells.begin(), cells.end(), [&](const std::string& cell) {
            const HeaderMeaning meaning = read_header(cell, words);
            return meaning.exact && !meaning.fields.empty();
        }));
}

/// The line with the most words that head columns; none without a single one.
std::optional<std::size_t> find_header(const std::vector<BookingLine>& lines,
                                       const BookingWords& words, std::size_t& most) {
    std::optional<std::size_t> found;
    most = 0;
    for (std::size_t i = 0; i < std::min(lines.size(), header_search); ++i) {
        const std::size_t count = exact_headers(lines[i].cells, words);
        if (count <= most) continue;
        most = count;
        found = i;
    }
    return found;
}

/// The one that makes the most headers known, and among those the one that makes the most lines
/// equally wide and more than one cell.
char find_delimiter(std::string_view text, const BookingWords& words) {
    const std::string_view sample = text.substr(0, sample_bytes);
    char best = ',';
    std::pair<std::size_t, std::size_t> best_score{0, 0};
    for (const char delimiter : {',', ';', '\t'}) {
        const Parsed parsed = parse(sample, delimiter, sample_lines);
        std::size_t headers = 0;
        (void)find_header(parsed.read.lines, words, headers);
        std::array<std::size_t, most_booking_columns + 1> widths{};
        for (const BookingLine& line : parsed.read.lines) {
            if (line.cells.size() > 1 && line.cells.size() < widths.size()) {
                ++widths[line.cells.size()];
            }
        }
        const std::size_t alike = *std::max_element(widths.begin(), widths.end());
        const std::pair score{headers, alike};
        if (score > best_score) {
            best_score = score;
            best = delimiter;
        }
    }
    return best;
}

/// "sep=;" in the first line, by which some spreadsheets say their delimiter.
std::optional<char> said_delimiter(std::string& text) {
    if (text.size() < 5 || !text.starts_with("sep=")) return std::nullopt;
    if (text.size() > 5 && text[5] != '\n') return std::nullopt;
    const char delimiter = text[4];
    if (delimiter != ',' && delimiter != ';' && delimiter != '\t') return std::nullopt;
    text.replace(0, 5, "");  // the line stays, empty, so that rows keep their numbers
    return delimiter;
}

std::vector<BookingColumn> read_columns(const Cells& headers, std::size_t width,
                                        const BookingWords& words) {
    std::vector<BookingColumn> columns(width);
    for (std::size_t i = 0; i < std::min(width, headers.size()); ++i) {
        BookingColumn& column = columns[i];
        column.header = headers[i];
        const HeaderMeaning meaning = read_header(headers[i], words);
        column.mass_unit = meaning.mass_unit;
        column.height_unit = meaning.height_unit;
        column.date_order = meaning.date_order;
        column.alternatives = meaning.fields;
        if (meaning.exact && !meaning.fields.empty()) column.guess = meaning.fields.front();
    }
    // What only holds a word counts where no header is that word.
    for (BookingColumn& column : columns) {
        if (column.guess != BookingField::unused) continue;
        for (const BookingField field : column.alternatives) {
            const auto is_there = [&](BookingField wanted) {
                return std::any_of(columns.begin(), columns.end(), [&](const BookingColumn& other) {
                    return other.guess == wanted;
                });
            };
            // Beside first and last name, "Tour name" is nobody's name.
            const bool named = field == BookingField::name && (is_there(BookingField::first_name) ||
                                                               is_there(BookingField::last_name));
            if (named || is_there(field)) continue;
            column.guess = field;
            break;
        }
    }
    return columns;
}

BookingColumn* column_of(std::vector<BookingColumn>& columns, BookingField field) {
    const auto found = std::find_if(columns.begin(), columns.end(),
                                    [&](const BookingColumn& one) { return one.guess == field; });
    return found == columns.end() ? nullptr : &*found;
}

/// "Name" beside "Vorname" is the family name; "Nombre" or "Nom" alone is the whole name.
void settle_names(std::vector<BookingColumn>& columns) {
    BookingColumn* whole = column_of(columns, BookingField::name);
    BookingColumn* first = column_of(columns, BookingField::first_name);
    BookingColumn* last = column_of(columns, BookingField::last_name);
    if (whole != nullptr) {
        if (first != nullptr && last == nullptr) whole->guess = BookingField::last_name;
    } else if (first != nullptr && last == nullptr) {
        first->guess = BookingField::name;
    } else if (last != nullptr && first == nullptr) {
        last->guess = BookingField::name;
    }
}

}  // namespace

Result<BookingTable> read_booking_table(std::string_view bytes, const BookingWords& words) {
    if (bytes.size() > largest_booking_file) {
        return Error{ErrorCode::file_too_large, "/", std::to_string(bytes.size()),
                     std::to_string(largest_booking_file)};
    }
    DecodedText decoded = decode_text(bytes);
    std::string text = with_plain_line_ends(decoded.text);
    BookingTable table;
    table.encoding = decoded.encoding;
    decoded.text.clear();
    const std::optional<char> said = said_delimiter(text);
    table.delimiter = said ? *said : find_delimiter(text, words);
    // Room for a header and a few lines of title above it.
    Parsed parsed = parse(text, table.delimiter, most_booking_rows + header_search);
    std::vector<BookingLine>& lines = parsed.read.lines;
    if (parsed.read.widest > most_booking_columns) {
        return Error{ErrorCode::table_too_large, "columns", std::to_string(parsed.read.widest),
                     std::to_string(most_booking_columns)};
    }
    if (parsed.quote_left_open) {
        return Error{ErrorCode::not_a_table, "row " + std::to_string(parsed.read.number + 1),
                     "quote_left_open", ""};
    }
    if (lines.empty()) return Error{ErrorCode::not_a_table, "", "no_text", ""};
    std::size_t known = 0;
    const std::optional<std::size_t> header = find_header(lines, words, known);
    const Cells headers = header ? lines[*header].cells : Cells();
    if (header) {
        table.header_line = lines[*header].number;
        lines.erase(lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(*header) + 1);
    }
    if (parsed.read.too_many || lines.size() > most_booking_rows) {
        // Reading stopped at the first row too many; how many there are is not known.
        return Error{ErrorCode::table_too_large, "rows",
                     "> " + std::to_string(most_booking_rows),
                     std::to_string(most_booking_rows)};
    }
    std::size_t width = headers.size();
    for (const BookingLine& line : lines) width = std::max(width, line.cells.size());
    table.columns = read_columns(headers, width, words);
    settle_names(table.columns);
    table.lines = std::move(lines);
    return table;
}

BookingChoices first_choices(const BookingTable& table) {
    BookingChoices choices;
    for (const BookingColumn& column : table.columns) {
        const bool again = std::find(choices.columns.begin(), choices.columns.end(),
                                     column.guess) != choices.columns.end();
        const bool once = column.guess != BookingField::note;
        choices.columns.push_back(again && once ? BookingField::unused : column.guess);
    }
    return choices;
}

}  // namespace leadline
