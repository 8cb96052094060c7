"""Share of a class that stays on the last of a stack of openings after passing the others, by SciPy's adaptive quadrature.

One case a line: lower mm, upper mm, sharpness, then the openings coarse to fine. Answer: the share.
"""
import sys

import numpy
import scipy
from scipy.integrate import quad

print(f"# screening: SciPy {scipy.__version__}, NumPy {numpy.__version__}")
with open(sys.argv[1], encoding="ascii") as cases:
    for line in cases:
        lower, upper, sharpness, *openings = map(float, line.split())

        def share(log_size):
            size = numpy.exp(log_size)
            stays = [1 - numpy.exp(-numpy.log(2) * (size / opening) ** sharpness) for opening in openings]
            return numpy.prod([1 - stay for stay in stays[:-1]]) * stays[-1]

        edges = numpy.log([lower, upper])
        breaks = [numpy.log(opening) for opening in openings if lower < opening < upper]
        total, _ = quad(share, *edges, points=breaks or None, epsabs=1e-12, epsrel=1e-12, limit=200)
        print(repr(total / (edges[1] - edges[0])))
