// SPDX-License-Identifier: GPL-3.0-or-later
// The fuzzer's entry; LEADLINE_FUZZ_TARGET is the function it feeds.
#include <cstddef>
#include <cstdint>

#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    leadline::fuzz::LEADLINE_FUZZ_TARGET(
        std::string_view(reinterpret_cast<const char*>(data), size));
    return 0;
}
