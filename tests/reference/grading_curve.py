"""Percent passing at a size and the size at a percent passing, by SciPy's linear interpolation over log10(size).

One case a line: size mm, passing, number of points, then (mm, passing) rising. Answers: passing at the size, size in mm.
"""
import sys

import numpy
import scipy
from scipy.interpolate import interp1d

print(f"# grading_curve: SciPy {scipy.__version__}, NumPy {numpy.__version__}")
with open(sys.argv[1], encoding="ascii") as cases:
    for line in cases:
        size, passing, count, *points = map(float, line.split())
        sizes = numpy.log10(points[0::2])
        shares = numpy.array(points[1::2])
        assert len(sizes) == count
        at_size = interp1d(sizes, shares)(numpy.log10(size))
        at_share = 10 ** interp1d(shares, sizes)(passing)
        print(repr(float(at_size)), repr(float(at_share)))
