"""Least squares of columns . x - target over shares x >= 0 with sum 1. A case: count, rows, columns, target. Answers the sum of
squares: by non-negative least squares with the sum as one more, heavily weighted row, then put right by the sum itself."""
import sys

import numpy
import scipy
from scipy.optimize import minimize, nnls

print("# scipy", scipy.__version__, "nnls and SLSQP")
for line in open(sys.argv[1]):
    numbers = numpy.array([float(text) for text in line.split()])
    count, rows = int(numbers[0]), int(numbers[1])
    columns = numbers[2 : 2 + count * rows].reshape(count, rows).T
    target = numbers[2 + count * rows :]

    def squares(x):
        return float(((columns @ x - target) ** 2).sum())

    weight = 1e6
    start, _ = nnls(numpy.vstack([columns, weight * numpy.ones(count)]), numpy.append(target, weight))
    start /= start.sum()
    polished = minimize(
        lambda x: squares(x) / 1e4,
        start,
        jac=lambda x: 2 * columns.T @ (columns @ x - target) / 1e4,
        bounds=[(0, 1)] * count,
        constraints={"type": "eq", "fun": lambda x: x.sum() - 1, "jac": lambda x: numpy.ones(count)},
        method="SLSQP",
        options={"ftol": 1e-15, "maxiter": 500},
    )
    x = numpy.clip(polished.x, 0, None)
    x /= x.sum()
    print(repr(min(squares(x), squares(start))))
