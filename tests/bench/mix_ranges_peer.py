"""The benchmark's ranges in NumPy: the whole chain vectorised over the draws, plain random scores. Prints the time in milliseconds,
5, 50 and 95 % of the air-filled porosity, and the version.
"""
import statistics
import time

import numpy as np

K, B, N, RESIDUAL, FLOODED, FILL, SETTLING = 9.5, 0.7, 6, 0.045, 0.84, 0.7, 0.08
DRAWS = 4096
QUANTILES = (np.arange(100) + 0.5) / 100
NODES, WEIGHTS = np.polynomial.legendre.leggauss(12)
BULK, PARTICLE = 450 + 150 * np.arange(5), 900 + 280 * np.arange(5)
SIEVES = 0.5 * 1.4142 ** np.arange(10)
SIZES = np.sqrt(SIEVES[1:] * SIEVES[:-1])
SHARES = np.array([np.diff((np.arange(10) / 9) ** (0.5 + 0.5 * k)) for k in range(5)])
MASS_KG = np.pi / 6 * PARTICLE[:, None] * (SIZES / 1000) ** 3
CLASS_DEVIATIONS = np.minimum(1, np.sqrt(MASS_KG / (SHARES * 0.3)))
PERCENT = np.array([0, 1, 3.5, 7.5, 12.5, 17.5, 40, 70, 82.5, 90, 97.5, 100])
OPERATOR = np.array([0, 0.27, 0.53, 0.75, 1.00, 0.96, 1.32, 2.25, 1.34, 0.81, 0.32, 0]) / 100
MOVES = np.array([np.diff(np.interp(100 * np.concatenate([[0], np.cumsum(s)]), PERCENT, OPERATOR)) for s in SHARES])

ratio = np.minimum.outer(SIZES, SIZES) / np.maximum.outer(SIZES, SIZES)
c = 0.322 * np.tanh(11.9 * ratio)
coarser, finer = SIZES[:, None] < SIZES, SIZES[:, None] > SIZES
G = ((1 - ratio) ** 2.0 + 0.4 * ratio * (1 - ratio) ** 3.7) * coarser
F = ((1 - ratio) ** 3.3 + 2.8 * ratio * (1 - ratio) ** 2.7) * finer
GC, FC, APART_COARSER, APART_FINER = G * c, F * c, (1 - ratio**6) * coarser, (1 - ratio**6) * finer


def flooded_fill(scores):
    odds = [np.log(p / (1 - p)) for p in (0.69, FLOODED, 0.98)]
    skew = np.log((odds[2] - odds[1]) / (odds[1] - odds[0])) / 1.2815515655446004
    scale = (odds[2] - odds[1]) / np.expm1(skew * 1.2815515655446004)
    return 1 / (1 + np.exp(-(odds[1] + scale * np.expm1(skew * scores))))


def wedge(y):
    return 2.6 ** (y @ APART_COARSER.T) - 1, 3.8 ** (y @ APART_FINER.T) - 1


def air(random):
    z = lambda *more: random.standard_normal((DRAWS, *more))
    bulk, particle = BULK * np.exp(0.02 * z(5)), PARTICLE * np.exp(0.02 * z(5))
    own = SHARES * np.exp(CLASS_DEVIATIONS * z(5, 9))
    own = np.maximum(0, own / own.sum(axis=2, keepdims=True) + MOVES * z(5, 1))
    own /= own.sum(axis=2, keepdims=True)
    envelope = np.array([1, 2, 3, 1, 1.0]) * bulk / particle
    share = envelope / envelope.sum(axis=1, keepdims=True)
    by_coarser, by_finer = wedge(own)
    g, f = own @ G.T - (own @ GC.T) * by_coarser, own @ F.T - (own @ FC.T) * by_finer
    volumes = (((particle / bulk)[:, :, None] - g) / (1 - f - g)).min(axis=2)
    y = np.einsum("dk,dkc->dc", share, own)
    fill = np.einsum("dk,dkc->dc", share * volumes, own)
    room = fill - y
    by_coarser, by_finer = wedge(y)
    u = fill.sum(axis=1, keepdims=True) - room @ G.T + (room @ GC.T) * by_coarser - fill @ F.T + (fill @ FC.T) * by_finer
    phi = 1 / u.max(axis=1) - 0.015 / 1.645 * np.minimum(1, 2 * (1 - share.max(axis=1))) * z()
    settle = z()
    phi /= 1 - SETTLING * np.exp(settle * np.where(settle < 0, np.log(8 / 5), np.log(13 / 8)) / 1.645)
    cumulative = np.concatenate([np.zeros((DRAWS, 1)), np.cumsum(y, axis=1)], axis=1)
    logs = np.array([np.interp(QUANTILES, row, np.log(SIEVES)) for row in cumulative])
    k, w, f, residual = K * np.exp(0.24 * z()), np.clip(FILL + 0.15 * z(), 0, 1), flooded_fill(z()), np.maximum(0, RESIDUAL + 0.015 * z())
    mean = logs.mean(axis=1, keepdims=True)
    depth = 6 + 0.2 / 1.645 * z()
    alpha = np.exp(mean + B * (logs - mean)) / k[:, None] * depth[:, None]
    heights = (NODES + 1) / 2
    areas = (24 + 4 * heights) * (16 + 4 * heights) * WEIGHTS
    areas /= areas.sum()
    saturation = sum(a * ((1 + (alpha * h) ** N) ** (1 / N - 1)).mean(axis=1) for h, a in zip(heights, areas))
    flooded = f * (1 - phi)
    residual = np.minimum(residual, flooded)
    return (flooded - residual) * (1 - saturation)


times = []
for _ in range(3):
    start = time.process_time()
    quantiles = np.quantile(air(np.random.default_rng(1)), [0.05, 0.5, 0.95])
    times.append((time.process_time() - start) * 1e3)
print(statistics.median(times), *quantiles, f"NumPy {np.__version__}")
