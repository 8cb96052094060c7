"""The benchmark's shelf of 12 bags in NumPy: the best recipe of up to 4 bags and 12 parts by SciPy's differential evolution as it
comes, by the same with a whole generation at a time, and by plain enumeration, a block of recipes at a time. Prints the seconds and the
score of each, for the easy case and for air against water; then the versions.
"""
import itertools
import math
import time

import numpy as np
import scipy
from scipy.optimize import differential_evolution

BAGS, MOST_BAGS, MOST_PARTS = 12, 4, 12
K, B, N, RESIDUAL, FLOODED, FILL = 9.5, 0.7, 6, 0.045, 0.84, 0.7
QUANTILES = (np.arange(100) + 0.5) / 100
NODES, WEIGHTS = np.polynomial.legendre.leggauss(64)
HEIGHTS = 3 * (NODES + 1)
AREAS = (24 + 4 * HEIGHTS / 6) * (16 + 4 * HEIGHTS / 6) * WEIGHTS
AREAS /= AREAS.sum()
SIEVES = np.array([0.25, 0.5, 1.0, 2.0, 2.8, 4.0, 5.6, 8.0, 11.2])
LOG_SIEVES = np.log(SIEVES)

bag = np.arange(BAGS)
BULK = 350.0 + 37 * (bag * 7 % 23)
PARTICLE = BULK / (0.48 + 0.01 * (bag % 8))
PORES = 1 - PARTICLE / 2650
finest = 1.35 ** (bag % 7)
coarsest = finest * (1.8 + 0.3 * (bag % 5))
dust = 0.01 * (bag % 6)
along = np.clip(np.log(SIEVES[1:] / finest[:, None]) / np.log(coarsest / finest)[:, None], 0, 1)
# The pan is a step at half the finest sieve, the other classes lie at the geometric middle of their sieves.
PASSING = dust[:, None] + (1 - dust[:, None]) * along
SHARES = np.concatenate([PASSING[:, :1], np.diff(PASSING, axis=1)], axis=1)
SIZES = np.concatenate([[0.25], np.sqrt(SIEVES[1:-1] * SIEVES[2:])])

ratio = np.minimum.outer(SIZES, SIZES) / np.maximum.outer(SIZES, SIZES)
f = (1 - ratio) ** 3.3 + 2.8 * ratio * (1 - ratio) ** 2.7
g = (1 - ratio) ** 2.0 + 0.4 * ratio * (1 - ratio) ** 3.7
c = 0.322 * np.tanh(11.9 * ratio)
COARSER, FINER = SIZES[:, None] < SIZES, SIZES[:, None] > SIZES
G, GC, APART_COARSER = g * COARSER, g * c * COARSER, (1 - ratio**6) * COARSER
F, FC, APART_FINER = f * FINER, f * c * FINER, (1 - ratio**6) * FINER


def class_volume(y, own):
    coarse = G @ y - (GC @ y) * (2.6 ** (APART_COARSER @ y) - 1)
    fine = F @ y - (FC @ y) * (3.8 ** (APART_FINER @ y) - 1)
    return ((own - coarse) / (1 - fine - coarse))[y > 0].min()


CLASS_VOLUMES = np.array([class_volume(y, p / b) for y, p, b in zip(SHARES, PARTICLE, BULK)])


def capacity_and_air(parts):
    """Of a block of recipes, one a row."""
    envelope = parts * BULK / PARTICLE
    share = envelope / envelope.sum(axis=1, keepdims=True)
    y = share @ SHARES
    fill = (share * CLASS_VOLUMES) @ SHARES
    coarse = (fill - y) @ G.T - ((fill - y) @ GC.T) * (2.6 ** (y @ APART_COARSER.T) - 1)
    fine = fill @ F.T - (fill @ FC.T) * (3.8 ** (y @ APART_FINER.T) - 1)
    phi = 1 / (fill.sum(axis=1, keepdims=True) - coarse - fine).max(axis=1)
    finer = np.cumsum(y, axis=1)  # at SIEVES[1:]; the pan below is a step
    log_size = np.empty((len(parts), 100))
    for i, curve in enumerate(finer):
        log_size[i] = np.interp(QUANTILES, curve, LOG_SIEVES[1:])
        log_size[i][QUANTILES <= curve[0]] = LOG_SIEVES[0]
    mean = log_size.mean(axis=1, keepdims=True)
    alpha = np.exp(mean + B * (log_size - mean)) / K
    saturation = (1 + (alpha[:, :, None] * HEIGHTS) ** N) ** (1 / N - 1)
    flooded = FLOODED * (1 - phi)
    grain = phi * (share @ PORES) * FILL
    capacity = RESIDUAL + (flooded - RESIDUAL) * (saturation.mean(axis=1) @ AREAS) + grain
    return capacity, flooded + grain - capacity


def scores(parts, least_air, least_water):
    mass = parts * BULK
    passing = 100 * (mass / mass.sum(axis=1, keepdims=True)) @ PASSING
    band = np.maximum(0, 75 - (passing[:, 5] - passing[:, 2]))
    fines = np.maximum(0, passing[:, 1] - 3)
    capacity, air = capacity_and_air(parts)
    return band**2 + fines**2 + (100 * np.maximum(0, least_air - air)) ** 2 + (100 * np.maximum(0, least_water - capacity)) ** 2


def evolution(limits, generation_at_once):
    """Four slots, each with a bag and its parts; a total beyond the most costs."""

    def objective(x):
        slots = np.atleast_2d(x.T)  # one recipe a row
        which, count = slots[:, :MOST_BAGS].astype(int), slots[:, MOST_BAGS:]
        parts = np.zeros((len(slots), BAGS))
        for slot in range(MOST_BAGS):
            np.add.at(parts, (np.arange(len(slots)), which[:, slot]), count[:, slot])
        total = parts.sum(axis=1)
        bad = np.maximum(0, total - MOST_PARTS) + (total == 0) * 100
        parts[total == 0, 0] = 1
        costs = scores(parts, *limits) + 1000 * bad
        return costs if x.ndim == 2 else costs[0]

    at_once = {"vectorized": True, "updating": "deferred"} if generation_at_once else {}
    bounds = [(0, BAGS - 1)] * MOST_BAGS + [(0, MOST_PARTS)] * MOST_BAGS
    return differential_evolution(objective, bounds, integrality=[True] * len(bounds), polish=False, seed=1, **at_once).fun


def enumeration(limits, block=2000):
    best = math.inf
    for count in range(1, MOST_BAGS + 1):
        patterns = np.array([p for p in itertools.product(range(1, MOST_PARTS + 1), repeat=count) if sum(p) <= MOST_PARTS and math.gcd(*p) == 1])
        for chosen in itertools.combinations(range(BAGS), count):
            for start in range(0, len(patterns), block):
                parts = np.zeros((len(patterns[start : start + block]), BAGS))
                parts[:, chosen] = patterns[start : start + block]
                best = min(best, scores(parts, *limits).min())
    return best


for case in ((0.18, 0.42), (0.25, 0.50)):
    for method in (lambda limits: evolution(limits, False), lambda limits: evolution(limits, True), enumeration):
        begin = time.perf_counter()
        score = method(case)
        print(time.perf_counter() - begin, score, end=" ")
    print()
print("SciPy", scipy.__version__, "NumPy", np.__version__)
