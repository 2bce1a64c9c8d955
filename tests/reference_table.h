// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace leadline {

/// One row of a table of published values: cells found by the name of their column.
class ReferenceRow {
public:
    ReferenceRow(std::shared_ptr<const std::vector<std::string>> columns,
                 std::vector<std::string> cells);

    /// The cell as it stands in the file. Throws std::runtime_error if there is no such column.
    [[nodiscard]] const std::string& text(std::string_view column) const;
    /// The cell as a number (with a point, whatever the locale). Throws std::runtime_error naming
    /// the row and the column if it is not one, or is empty.
    [[nodiscard]] double number(std::string_view column) const;
    /// Whether the column exists and the cell holds anything.
    [[nodiscard]] bool has(std::string_view column) const;

private:
    std::shared_ptr<const std::vector<std::string>> columns_;
    std::vector<std::string> cells_;
};

/// Prints the row's id, so that a failing test says which value it is about.
std::ostream& operator<<(std::ostream& out, const ReferenceRow& row);

using ReferenceTable = std::vector<ReferenceRow>;

/// Reads tests/reference/<name>.csv. Every table has at least the columns `id` (letters, digits and
/// underscores, different in every row), `source` and `standing` (read: seen in a text; memory:
/// recalled; computed: a second implementation).
///
/// Throws std::runtime_error saying what is wrong with the file, as no test may pass for want of
/// rows: an unreadable or empty table, a ragged row, a double id, a missing source or standing.
ReferenceTable load_reference(const std::string& name);

/// The same from the text of a table; `name` stands in the complaints.
ReferenceTable parse_reference(std::string_view csv, const std::string& name);

}  // namespace leadline
