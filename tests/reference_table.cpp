// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference_table.h"

#include <csv.h>

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <fstream>
#include <ostream>
#include <set>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace leadline {
namespace {

using Cells = std::vector<std::string>;

[[noreturn]] void complain(const std::string& where, const std::string& what) {
    throw std::runtime_error("reference table " + where + ": " + what);
}

/// What the parser's callbacks fill.
struct Collected {
    std::vector<Cells> lines;
    Cells current;
};

void on_cell(void* text, std::size_t length, void* data) {
    static_cast<Collected*>(data)->current.emplace_back(static_cast<const char*>(text), length);
}

void on_line_end(int, void* data) {
    auto* collected = static_cast<Collected*>(data);
    collected->lines.push_back(std::move(collected->current));
    collected->current.clear();
}

std::vector<Cells> split(std::string_view csv, const std::string& name) {
    csv_parser raw{};
    if (csv_init(&raw, CSV_STRICT | CSV_STRICT_FINI) != 0) {
        complain(name, "no memory");
    }
    const std::unique_ptr<csv_parser, decltype(&csv_free)> parser(&raw, &csv_free);
    Collected collected;
    const bool read = csv_parse(parser.get(), csv.data(), csv.size(), on_cell, on_line_end,
                                &collected) == csv.size() &&
                      csv_fini(parser.get(), on_cell, on_line_end, &collected) == 0;
    if (!read) {
        complain(name, std::string("not CSV: ") + csv_strerror(csv_error(parser.get())));
    }
    return std::move(collected.lines);
}

bool is_id(const std::string& text) {
    constexpr std::string_view allowed =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_";
    return !text.empty() && text.find_first_not_of(allowed) == std::string::npos;
}

bool is_standing(const std::string& text) {
    return text == "read" || text == "memory" || text == "computed";
}

void check_row(const ReferenceRow& row, const std::string& where, std::set<std::string>& ids) {
    const std::string& id = row.text("id");
    if (!is_id(id) || !ids.insert(id).second) {
        complain(where, "id empty, not plain or used twice: '" + id + "'");
    }
    if (!row.has("source")) {
        complain(where, id + " has no source");
    }
    if (!is_standing(row.text("standing"))) {
        complain(where, id + " has the standing '" + row.text("standing") + "'");
    }
}

}  // namespace

ReferenceRow::ReferenceRow(std::shared_ptr<const Cells> columns, Cells cells)
    : columns_(std::move(columns)), cells_(std::move(cells)) {}

const std::string& ReferenceRow::text(std::string_view column) const {
    const auto found = std::find(columns_->begin(), columns_->end(), column);
    if (found == columns_->end()) {
        complain("row " + (cells_.empty() ? std::string() : cells_.front()),
                 "no column '" + std::string(column) + "'");
    }
    return cells_.at(static_cast<std::size_t>(found - columns_->begin()));
}

double ReferenceRow::number(std::string_view column) const {
    const std::string& cell = text(column);
    double value = 0.0;
    const char* const end = cell.data() + cell.size();
    const auto read = std::from_chars(cell.data(), end, value);
    if (read.ec != std::errc() || read.ptr != end) {
        complain("row " + cells_.front(),
                 "column '" + std::string(column) + "' holds no number: '" + cell + "'");
    }
    return value;
}

bool ReferenceRow::has(std::string_view column) const {
    const auto found = std::find(columns_->begin(), columns_->end(), column);
    return found != columns_->end() &&
           !cells_.at(static_cast<std::size_t>(found - columns_->begin())).empty();
}

std::ostream& operator<<(std::ostream& out, const ReferenceRow& row) {
    return out << row.text("id");
}

ReferenceTable parse_reference(std::string_view csv, const std::string& name) {
    std::vector<Cells> lines = split(csv, name);
    if (lines.size() < 2) {
        complain(name, "no rows");
    }
    const auto columns = std::make_shared<const Cells>(std::move(lines.front()));
    ReferenceTable table;
    std::set<std::string> ids;
    for (std::size_t line = 1; line < lines.size(); ++line) {
        const std::string where = name + ", row " + std::to_string(line);
        if (lines[line].size() != columns->size()) {
            complain(where, "has " + std::to_string(lines[line].size()) + " cells for " +
                                std::to_string(columns->size()) + " columns");
        }
        table.emplace_back(columns, std::move(lines[line]));
        check_row(table.back(), where, ids);
    }
    return table;
}

ReferenceTable load_reference(const std::string& name) {
    const std::string path = std::string(LEADLINE_TEST_REFERENCE_DIR) + "/" + name + ".csv";
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    if (!file || !text) {
        complain(path, "cannot be read");
    }
    return parse_reference(text.str(), name);
}

}  // namespace leadline
