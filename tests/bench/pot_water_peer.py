"""The capacity of the benchmark's mix and pot in NumPy and with SciPy's quad: prints both times in microseconds and the figure."""
import statistics
import time

import numpy as np
import scipy
from scipy.integrate import quad

SIZES = 10 ** (-0.3 + 0.12 * np.arange(10))
SHARES = 0.04 + 0.96 * np.arange(10) ** 2 / 81
SIZES = np.concatenate([[SIZES[0] / 2] * 2, SIZES])
SHARES = np.concatenate([[0, SHARES[0]], SHARES])
LOG_SIZES = np.log(SIZES)
NODES, WEIGHTS = np.polynomial.legendre.leggauss(64)
HEIGHTS = 3 * (NODES + 1)
QUANTILES = (np.arange(100) + 0.5) / 100
K, B, N, RESIDUAL, FLOODED, VOIDS, GRAIN = 9.5, 0.7, 6, 0.045, 0.84, 0.46, 0.189


def area(z):
    return (24 + 4 * z / 6) * (16 + 4 * z / 6)


AREAS = area(HEIGHTS) * WEIGHTS


def alphas():
    d = np.interp(QUANTILES, SHARES, LOG_SIZES)
    centre = d.mean()
    return np.exp(centre + B * (d - centre)) / K


def water(saturation):
    return RESIDUAL + (FLOODED * VOIDS - RESIDUAL) * saturation + GRAIN


def by_numpy():
    saturation = (1 + np.outer(alphas(), HEIGHTS) ** N) ** (1 / N - 1)
    return water((saturation.mean(axis=0) * AREAS).sum() / AREAS.sum())


def by_quad():
    alpha = alphas()
    mean = quad(lambda z: area(z) * np.mean((1 + (alpha * z) ** N) ** (1 / N - 1)), 0, 6)[0] / quad(area, 0, 6)[0]
    return water(mean)


def microseconds(work, repeats):
    times = []
    for _ in range(9):
        start = time.perf_counter()
        for _ in range(repeats):
            work()
        times.append((time.perf_counter() - start) / repeats * 1e6)
    return statistics.median(times)


print(microseconds(by_numpy, 100), microseconds(by_quad, 20), by_quad(), f"NumPy {np.__version__}, SciPy {scipy.__version__}")
