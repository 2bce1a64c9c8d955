// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <limits>
#include <optional>
#include <string>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/physics/water.h"
#include "tests/must.h"
#include "tests/reference_table.h"

namespace leadline {

/// One test for each row of a table, named by the row's id.
class RowTest : public testing::TestWithParam<ReferenceRow> {};

std::string row_name(const testing::TestParamInfo<ReferenceRow>& info);

/// The value must lie within the row's tolerance of the expected one and, where the row has a
/// `side` ("below" or "above"), on that side of it: the one on which a difference is safe.
void expect_near(const ReferenceRow& row, double actual);
/// The value must not be above the expected one (one-sided rows).
void expect_at_most(const ReferenceRow& row, double actual);
/// A row asks for a check that no test knows.
void fail_unknown_check(const ReferenceRow& row);

/// A column of water, all inputs of which are valid.
WaterColumn make_column(Pascals surface, MetersPerSecondSquared gravity, PracticalSalinity salinity,
                        Kelvins temperature);

/// Sea of salinity 35 at a temperature under one standard atmosphere and standard gravity.
WaterColumn sea(double celsius);
/// Fresh water of 10 C under one standard atmosphere and standard gravity.
WaterColumn fresh_water();

/// Salt water under one standard atmosphere, with gravity chosen so that it weighs a given number
/// of pascals a metre at the surface: the way to a handbook's rounded gradient.
WaterColumn column_of_gradient(double pascals_per_meter);
/// 33 feet of sea water make one atmosphere.
WaterColumn handbook_sea();

/// Sea water as the depths in the tables of ears and lungs were worked out: 1025 kg/m3 under standard
/// gravity.
WaterColumn table_sea();

inline constexpr double atmosphere_pa = 101325.0;
inline constexpr double mmhg = 133.322387415;  // Pa
inline constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
inline constexpr double infinite = std::numeric_limits<double>::infinity();

/// The error of a result; none where it is a value.
template <typename T>
std::optional<Error> error_of(const Result<T>& result) {
    return result ? std::nullopt : std::optional<Error>(result.error());
}

}  // namespace leadline

#define LEADLINE_REFERENCE_TABLE(suite, table) \
    INSTANTIATE_TEST_SUITE_P(reference, suite, testing::ValuesIn(load_reference(table)), row_name)
