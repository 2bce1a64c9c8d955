// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/physics/quantities.h"
#include "core/physics/result.h"
#include "core/physics/water.h"
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

/// The value of a result that must not be an error; a failed test and T() otherwise.
template <typename T>
T must(const Result<T>& result) {
    if (!result) {
        ADD_FAILURE() << result.error().place << ": " << result.error().given << " is not in "
                      << result.error().allowed;
        return T();
    }
    return *result;
}

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

inline constexpr double atmosphere_pa = 101325.0;

}  // namespace leadline

#define LEADLINE_REFERENCE_TABLE(suite, table) \
    INSTANTIATE_TEST_SUITE_P(reference, suite, testing::ValuesIn(load_reference(table)), row_name)
