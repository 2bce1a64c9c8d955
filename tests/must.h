// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include "core/physics/result.h"

namespace leadline {

/// The value of a result that must not be an error; a failed test and T() otherwise.
template <typename T>
T must(const Result<T>& result) {
    if (!result) {
        ADD_FAILURE() << "error " << static_cast<int>(result.error().code) << " at "
                      << result.error().place << ": " << result.error().given << " is not "
                      << result.error().allowed;
        return T();
    }
    return *result;
}

}  // namespace leadline
