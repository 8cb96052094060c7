"""The benchmark's recipe in vectorised NumPy with everything prepared that does not depend on the parts: prints the time of one
evaluation in microseconds for shared and for distinct sieves, the capacity of the first recipe, and the versions.
"""
import statistics
import time

import numpy as np

K, B, N, RESIDUAL, FLOODED, FILL = 9.5, 0.7, 6, 0.045, 0.84, 0.7
QUANTILES = (np.arange(100) + 0.5) / 100
NODES, WEIGHTS = np.polynomial.legendre.leggauss(64)
HEIGHTS = 3 * (NODES + 1)
AREAS = (24 + 4 * HEIGHTS / 6) * (16 + 4 * HEIGHTS / 6) * WEIGHTS
AREAS /= AREAS.sum()
BULK = 450 + 150 * np.arange(5)
PARTICLE = 900 + 280 * np.arange(5)
PORES = 1 - PARTICLE / 2400


class Recipes:
    def __init__(self, spread):
        self.sieves = 0.5 * 1.4142 ** np.arange(10) * (1 + spread * np.arange(5))[:, None]
        along = np.arange(10) / 9
        self.passing = np.array([along ** (0.5 + 0.5 * k) for k in range(5)])
        self.points = np.unique(self.sieves)
        self.curves = np.array([np.interp(np.log(self.points), np.log(s), p) for s, p in zip(self.sieves, self.passing)])
        sizes = np.sqrt(self.sieves[:, 1:] * self.sieves[:, :-1])
        self.sizes, place = np.unique(sizes.round(12), return_inverse=True)
        self.shares = np.zeros((5, len(self.sizes)))
        for k, (where, share) in enumerate(zip(place.reshape(5, 9), np.diff(self.passing))):
            self.shares[k, where] = share
        ratio = np.minimum.outer(self.sizes, self.sizes) / np.maximum.outer(self.sizes, self.sizes)
        f = (1 - ratio) ** 3.3 + 2.8 * ratio * (1 - ratio) ** 2.7
        g = (1 - ratio) ** 2.0 + 0.4 * ratio * (1 - ratio) ** 3.7
        c = 0.322 * np.tanh(11.9 * ratio)
        coarser, finer = self.sizes[:, None] < self.sizes, self.sizes[:, None] > self.sizes
        self.g, self.gc, self.coarser = g * coarser, g * c * coarser, (1 - ratio**6) * coarser
        self.f, self.fc, self.finer = f * finer, f * c * finer, (1 - ratio**6) * finer
        self.class_volumes = np.array([self.class_volume(y, p / b) for y, p, b in zip(self.shares, PARTICLE, BULK)])

    def class_volume(self, y, own):
        g = self.g @ y - (self.gc @ y) * (2.6 ** (self.coarser @ y) - 1)
        f = self.f @ y - (self.fc @ y) * (3.8 ** (self.finer @ y) - 1)
        return ((own - g) / (1 - f - g))[y > 0].min()

    def capacity_and_air(self, parts):
        envelope = parts * BULK / PARTICLE
        share = envelope / envelope.sum()
        y = share @ self.shares
        volumes = (share * self.class_volumes) @ self.shares / y
        room = y * (volumes - 1)
        coarse = self.g @ room - (self.gc @ room) * (2.6 ** (self.coarser @ y) - 1)
        fill = y * volumes
        fine = self.f @ fill - (self.fc @ fill) * (3.8 ** (self.finer @ y) - 1)
        phi = 1 / (fill.sum() - coarse - fine).max()
        log_size = np.interp(QUANTILES, share @ self.curves, np.log(self.points))
        mean = log_size.mean()
        alpha = np.exp(mean + B * (log_size - mean)) / K
        saturation = (1 + np.outer(alpha, HEIGHTS) ** N) ** (1 / N - 1)
        flooded = FLOODED * (1 - phi)
        grain = phi * share @ PORES * FILL
        capacity = RESIDUAL + (flooded - RESIDUAL) * (saturation.mean(axis=0) @ AREAS) + grain
        return capacity, flooded + grain - capacity


def microseconds(recipes):
    times = []
    parts = np.array([1.0, 2.0, 3.0, 1.0, 1.0])
    for _ in range(9):
        start = time.perf_counter()
        for _ in range(100):
            recipes.capacity_and_air(parts)
        times.append((time.perf_counter() - start) / 100 * 1e6)
    return statistics.median(times)


shared, distinct = Recipes(0.0), Recipes(0.04)
print(microseconds(shared), microseconds(distinct), shared.capacity_and_air(np.ones(5))[0], f"NumPy {np.__version__}")
