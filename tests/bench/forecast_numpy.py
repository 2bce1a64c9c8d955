#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The dive of forecast_bench.cpp with numpy: nanoseconds a diver and run. Needs python3-numpy."""
import time

import numpy

RUNS, DIVERS, PLANNED = 20_000, 8, 55.0
LN_LOAD = numpy.log(70.0 + 3.0 * numpy.arange(DIVERS))


def runs(seed: int) -> float:
    generator = numpy.random.Generator(numpy.random.MT19937(seed))
    shared = 0.12 * generator.standard_normal((RUNS, 1))
    own = 0.242 * generator.standard_normal((RUNS, DIVERS))
    first = (LN_LOAD - shared - own).min(axis=1)
    numpy.quantile(first, [0.1, 0.5, 0.9])
    return float((first >= numpy.log(PLANNED)).mean())


def main() -> None:
    best = float("inf")
    for seed in range(1, 31):
        start = time.perf_counter()
        share = runs(seed)
        best = min(best, time.perf_counter() - start)
    print(f"numpy {numpy.__version__}: {best / (RUNS * DIVERS) * 1e9:.1f} ns a diver and run "
          f"(best of 30; share of dives completed {share:.3f})")


if __name__ == "__main__":
    main()
