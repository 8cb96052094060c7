"""Least cost of shares x >= 0 with sum 1 within rows. A case: count, rows, cost, then each row's coefficients, low, high.
Answers 1 and the cost, or 0 where no shares keep to the rows."""
import sys

import numpy
import scipy
from scipy.optimize import linprog

print("# scipy", scipy.__version__, "linprog, HiGHS")
for line in open(sys.argv[1]):
    numbers = numpy.array([float(text) for text in line.split()])
    count, rows = int(numbers[0]), int(numbers[1])
    cost, rest = numbers[2 : 2 + count], numbers[2 + count :].reshape(rows, count + 2)
    upper = numpy.vstack([rest[:, :count], -rest[:, :count]])
    limits = numpy.concatenate([rest[:, count + 1], -rest[:, count]])
    answer = linprog(cost, A_ub=upper, b_ub=limits, A_eq=numpy.ones((1, count)), b_eq=[1], bounds=(0, None), method="highs")
    print(1 if answer.status == 0 else 0, repr(float(answer.fun)) if answer.status == 0 else 0)
