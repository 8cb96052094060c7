"""The benchmark's ranges in NumPy: the whole chain vectorised over the draws, plain random scores. Prints the time in milliseconds of
every figure and curve and of the air alone, 5, 50 and 95 % of the air-filled porosity, and the version.
"""
import statistics
import time

import numpy as np

K, B, N, RESIDUAL, FLOODED, FILL, SETTLING = 9.5, 0.7, 6, 0.045, 0.84, 0.7, 0.08
SKELETAL, PARTS = 2400, np.array([1, 2, 3, 1, 1.0])
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


def se(reach):
    return (1 + reach**N) ** (1 / N - 1)


def chain(random, all_figures):
    """The air of every draw, or a list of arrays of every figure and curve, the air first."""
    z = lambda *more: random.standard_normal((DRAWS, *more))
    bulk, particle, skeletal = BULK * np.exp(0.02 * z(5)), PARTICLE * np.exp(0.02 * z(5)), SKELETAL * np.exp(0.02 * z(5))
    own = SHARES * np.exp(CLASS_DEVIATIONS * z(5, 9))
    own = np.maximum(0, own / own.sum(axis=2, keepdims=True) + MOVES * z(5, 1))
    own /= own.sum(axis=2, keepdims=True)
    envelope = PARTS * bulk / particle
    total = envelope.sum(axis=1)
    share = envelope / total[:, None]
    by_coarser, by_finer = wedge(own)
    g, f = own @ G.T - (own @ GC.T) * by_coarser, own @ F.T - (own @ FC.T) * by_finer
    volumes = (((particle / bulk)[:, :, None] - g) / (1 - f - g)).min(axis=2)
    y = np.einsum("dk,dkc->dc", share, own)
    fill = np.einsum("dk,dkc->dc", share * volumes, own)
    room = fill - y
    by_coarser, by_finer = wedge(y)
    u = fill.sum(axis=1, keepdims=True) - room @ G.T + (room @ GC.T) * by_coarser - fill @ F.T + (fill @ FC.T) * by_finer
    poured = 1 / u.max(axis=1) - 0.015 / 1.645 * np.minimum(1, 2 * (1 - share.max(axis=1))) * z()
    settle = z()
    settling = SETTLING * np.exp(settle * np.where(settle < 0, np.log(8 / 5), np.log(13 / 8)) / 1.645)
    phi = poured / (1 - settling)
    cumulative = np.concatenate([np.zeros((DRAWS, 1)), np.cumsum(y, axis=1)], axis=1)
    logs = np.array([np.interp(QUANTILES, row, np.log(SIEVES)) for row in cumulative])
    k, w, f, residual = K * np.exp(0.24 * z()), np.clip(FILL + 0.15 * z(), 0, 1), flooded_fill(z()), np.maximum(0, RESIDUAL + 0.015 * z())
    mean = logs.mean(axis=1, keepdims=True)
    depth = 6 + 0.2 / 1.645 * z()
    per_cm = np.exp(mean + B * (logs - mean)) / k[:, None]
    heights = (NODES + 1) / 2
    areas = (24 + 4 * heights) * (16 + 4 * heights) * WEIGHTS
    areas /= areas.sum()
    alpha = per_cm * depth[:, None]
    saturation = sum(a * se(alpha * h).mean(axis=1) for h, a in zip(heights, areas))
    flooded = f * (1 - phi)
    residual = np.minimum(residual, flooded)
    air = (flooded - residual) * (1 - saturation)
    if not all_figures:
        return [air]
    mass = PARTS * bulk
    inner = np.maximum(0, 1 - particle / skeletal)
    pores = (share * inner).sum(axis=1) * phi
    grain_water = pores * w
    theta = lambda s: residual + (flooded - residual) * s + grain_water
    capacity, theta_0 = theta(saturation), flooded + grain_water
    theta_10, theta_50 = theta(se(per_cm * 10).mean(axis=1)), theta(se(per_cm * 50).mean(axis=1))
    volume, bulk_mix = total / poured, mass.sum(axis=1) * phi / total
    pot = 2816 * (1 + 0.2 / 1.645 / 26 * z()) * (1 + 0.2 / 1.645 / 18 * z()) * depth / 6
    mixed = pot / 1000 / (1 - settling)
    total_air = 1 - phi + pores - capacity
    zero = np.zeros((DRAWS, 1))
    mass_passing = np.concatenate([zero, np.cumsum(np.einsum("dk,dkc->dc", mass / mass.sum(axis=1, keepdims=True), own), axis=1)], axis=1)
    low, high = np.log(0.05 * K) - mean[:, 0], np.log(20 * K) - mean[:, 0]
    for _ in range(14):
        middle = (low + high) / 2
        wetter = se(per_cm * np.exp(middle)[:, None]).mean(axis=1) > 0.9
        low, high = np.where(wetter, middle, low), np.where(wetter, high, middle)
    by_height = [theta(se(alpha * h).mean(axis=1)) for h in np.linspace(0, 1, 11)]
    figures = [air, capacity, total_air, total_air - air, theta_0, theta_10, theta_50, theta_10 - theta_50, capacity - theta_50, phi, volume, 1 - volume / PARTS.sum(),
               bulk_mix, mass.sum(axis=1) / total, mass.sum(axis=1) / (mass / skeletal).sum(axis=1), 1 - phi, pores, 1 - phi + pores, grain_water, pot, depth,
               pot / 1000 * (bulk_mix + 1000 * capacity), mixed, np.exp(low), *by_height]
    lists = [mass / mass.sum(axis=1, keepdims=True), share, 1 / volumes, mixed[:, None] * PARTS / volume[:, None], mass_passing, cumulative]
    return figures + [column for table in lists for column in table.T]


def milliseconds_of(all_figures):
    times = []
    for _ in range(3):
        start = time.process_time()
        quantiles = np.quantile(np.array(chain(np.random.default_rng(1), all_figures)), [0.05, 0.5, 0.95], axis=1)
        times.append((time.process_time() - start) * 1e3)
    return statistics.median(times), quantiles


every, quantiles = milliseconds_of(True)
alone, _ = milliseconds_of(False)
print(every, alone, *quantiles[:, 0], f"NumPy {np.__version__}")
