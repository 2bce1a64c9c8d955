#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes first_of_lognormals.csv with scipy, by another way than the program's: the chance that all
last is the distribution function of a correlated normal vector (Genz's integration), its quantiles by
root finding on that; who is first by adaptive quadrature.

    python3 tests/reference/make_first_of_lognormals.py > tests/reference/first_of_lognormals.csv
"""
import csv
import sys

import numpy
import scipy
from scipy import integrate, optimize, stats

SOURCE = f"scipy {scipy.__version__}: tests/reference/make_first_of_lognormals.py"

# Name, loads of the medians [bar min], own sigmas, shared sigma, planned load.
GROUPS = [
    ("one", [60.0], [0.242], 0.12, 50.0),
    ("one_alone", [60.0], [0.27], 0.0, 50.0),
    ("two_alike", [60.0, 60.0], [0.242, 0.242], 0.12, 50.0),
    ("two_apart", [45.0, 90.0], [0.242, 0.09], 0.12, 50.0),
    ("three", [52.0, 60.0, 75.0], [0.275, 0.242, 0.18], 0.12, 48.0),
    ("four", [70.0, 75.0, 80.0, 62.0], [0.242, 0.242, 0.275, 0.18], 0.12, 55.0),
    ("four_far", [140.0, 150.0, 160.0, 130.0], [0.242, 0.242, 0.275, 0.18], 0.12, 55.0),
    ("four_short", [40.0, 41.0, 42.0, 38.0], [0.242, 0.242, 0.275, 0.18], 0.12, 55.0),
    ("five_much_shared", [60.0, 65.0, 70.0, 75.0, 80.0], [0.2] * 5, 0.4, 50.0),
    ("eight", [70.0, 73.0, 76.0, 79.0, 82.0, 85.0, 88.0, 91.0], [0.242] * 8, 0.12, 55.0),
]


def all_last(loads, own, shared, load):
    """Chance that every load is above one: the loads' logarithms are jointly normal."""
    count = len(loads)
    covariance = numpy.diag(numpy.square(own)) + shared**2
    upper = numpy.log(loads) - numpy.log(load)
    if count == 1:
        return float(stats.norm.cdf(upper[0] / numpy.sqrt(covariance[0, 0])))
    return float(stats.multivariate_normal.cdf(upper, mean=numpy.zeros(count), cov=covariance,
                                               maxpts=1_000_000 * count, abseps=1e-8,
                                               releps=1e-8))


def quantile(loads, own, shared, share):
    """Load by which the first is down in a share of the dives."""
    def excess(ln_load):
        def given(s):
            rest = stats.norm.sf((ln_load - numpy.log(loads) + shared * s) / own)
            return stats.norm.pdf(s) * numpy.prod(rest)
        return 1.0 - integrate.quad(given, -9, 9, epsabs=1e-12, limit=400)[0] - share
    return float(numpy.exp(optimize.brentq(excess, -2.0, 9.0, xtol=1e-13)))


def first(loads, own, index):
    """Chance that one is the first; the shared factor cancels."""
    ln = numpy.log(loads)

    def given(x):
        density = stats.norm.pdf((x - ln[index]) / own[index]) / own[index]
        others = [stats.norm.sf((x - ln[j]) / own[j]) for j in range(len(ln)) if j != index]
        return density * numpy.prod(others)

    low, high = ln.min() - 3.0, ln.max() + 3.0
    return float(integrate.quad(given, low, high, epsabs=1e-12, limit=400)[0])


def main() -> None:
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["id", "check", "loads", "own_sigmas", "shared_sigma", "input", "expected",
                  "unit", "tolerance", "source", "standing", "why"])
    for name, loads, own, shared, planned in GROUPS:
        own = numpy.array(own)
        cells = [" ".join(map(str, loads)), " ".join(map(str, own)), shared]
        out.writerow([f"{name}_all_last", "all_last", *cells, planned,
                      f"{all_last(loads, own, shared, planned):.7f}", "1", "3e-6", SOURCE, "computed",
                      "Genz's integration is good to about 1e-6"])
        for share in (0.1, 0.5, 0.9):
            out.writerow([f"{name}_quantile_{int(share * 100)}", "quantile", *cells, share,
                          f"{quantile(loads, own, shared, share):.6f}", "bar min", "2e-5", SOURCE, "computed",
                          ""])
        for index in {0, len(loads) - 1}:
            out.writerow([f"{name}_first_{index}", "first", *cells, index,
                          f"{first(loads, own, index):.7f}", "1", "1e-6", SOURCE, "computed", ""])


if __name__ == "__main__":
    main()
