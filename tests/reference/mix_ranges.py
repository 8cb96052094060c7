"""Ranges of a mix of up to two of two single sizes and a graded bag, in straight walls, by a million plain random draws of NumPy.

A line of the input: parts of coarse (6 mm), fine (2 mm) and graded grain, settling, deviations of ln(bulk density) down and up, of
ln(own packing), of the packing model's voids, of ln(settling) down and up, of ln k, of w, of theta_r, whether f scatters, depth in cm.
A line of the answer: 5, 50 and 95 % of bulk density (g/L), voids between grains, container capacity, air-filled porosity, theta(50).
"""
import sys

import numpy as np

DRAWS = 1_000_000
K, B, N, RESIDUAL, FLOODED, FILL = 9.5, 0.7, 6, 0.045, 0.84, 0.7
GRAINS = [(6.0, 600.0, 1200.0), (2.0, 450.0, 900.0), (None, 540.0, 1000.0)]
SIEVES = np.array([1, 2, 3.35, 4.75, 6.3])
PASSING = np.array([0.05, 0.25, 0.60, 0.90, 1.0])
PAN = 0.5
QUANTILES = (np.arange(100) + 0.5) / 100


def classes_of(kind):
    size = GRAINS[kind][0]
    if size:
        return [(size, 1.0)]
    found = [(np.sqrt(SIEVES[i] * SIEVES[i - 1]), PASSING[i] - PASSING[i - 1]) for i in range(len(SIEVES) - 1, 0, -1)]
    return found + [(PAN, PASSING[0])]


def f_of(r):
    return (1 - r) ** 3.3 + 2.8 * r * (1 - r) ** 2.7


def g_of(r):
    return (1 - r) ** 2.0 + 0.4 * r * (1 - r) ** 3.7


def c_of(r):
    return 0.322 * np.tanh(11.9 * r)


def specific_volumes(sizes, shares, volumes):
    """U of each class; shares and volumes are lists of arrays over the draws."""
    answers = []
    for i, d in enumerate(sizes):
        coarser = [j for j in range(len(sizes)) if sizes[j] > d]
        finer = [j for j in range(len(sizes)) if sizes[j] < d]
        yl = sum((shares[j] * (1 - (d / sizes[j]) ** 6) for j in coarser), 0.0)
        ys = sum((shares[j] * (1 - (sizes[j] / d) ** 6) for j in finer), 0.0)
        u = sum(y * v for y, v in zip(shares, volumes))
        for j in coarser:
            r = d / sizes[j]
            u = u - g_of(r) * (volumes[j] - 1) * shares[j] * (1 - c_of(r) * (2.6**yl - 1))
        for j in finer:
            r = sizes[j] / d
            u = u - f_of(r) * volumes[j] * shares[j] * (1 - c_of(r) * (3.8**ys - 1))
        answers.append(u)
    return answers


def class_volume(kind, own):
    """The one class volume that gives `own`; U is linear in it for each class, so two evaluations show the line."""
    sizes, shares = zip(*classes_of(kind))
    if len(sizes) == 1:
        return own
    at_one = specific_volumes(sizes, shares, [1.0] * len(sizes))
    at_two = specific_volumes(sizes, shares, [2.0] * len(sizes))
    return np.minimum.reduce([1 + (own - a) / (b - a) for a, b in zip(at_one, at_two)])


def flooded_fill(scores):
    odds = [np.log(p / (1 - p)) for p in (0.69, FLOODED, 0.98)]
    tenth = 1.2815515655446004
    skew = np.log((odds[2] - odds[1]) / (odds[1] - odds[0])) / tenth
    scale = (odds[2] - odds[1]) / np.expm1(skew * tenth)
    return 1 / (1 + np.exp(-(odds[1] + scale * np.expm1(skew * scores))))


def log_sizes(kinds, shares):
    """ln d of the hundred classes of a blend, by the envelope shares of its kinds."""
    logs, finer = [], []
    curves = {k: ([GRAINS[k][0]] * 2, [0.0, 1.0]) if GRAINS[k][0] else ([PAN, PAN, *SIEVES], [0.0, PASSING[0], *PASSING]) for k in kinds}
    for x in sorted({x for sizes, _ in curves.values() for x in sizes}):
        foot = head = 0.0
        for kind, share in zip(kinds, shares):
            sizes, passing = map(np.array, curves[kind])
            if np.count_nonzero(sizes == x) == 2:
                low, high = passing[sizes == x]
            else:
                low = high = np.interp(np.log(x), np.log(sizes), passing)
            foot, head = foot + share * low, head + share * high
        logs += [np.log(x)] * 2
        finer += [foot, head]
    upper = np.searchsorted(finer, QUANTILES)
    lower = np.maximum(upper - 1, 0)
    logs, finer = np.array(logs), np.array(finer)
    rise = finer[upper] - finer[lower]
    return logs[lower] + (logs[upper] - logs[lower]) * (QUANTILES - finer[lower]) / np.where(rise > 0, rise, 1)


# The integral of Se by its upper end, for the mean over a column.
FINE = np.concatenate([[0], np.exp(np.linspace(np.log(1e-4), np.log(1e4), 100001))])
SATURATION = (1 + FINE**N) ** (1 / N - 1)
INTEGRAL = np.concatenate([[0], np.cumsum((SATURATION[1:] + SATURATION[:-1]) / 2 * np.diff(FINE))])


def column(reach):
    return np.interp(reach, FINE, INTEGRAL) / reach


def point(reach):
    return (1 + reach**N) ** (1 / N - 1)


def mean_saturations(kinds, first_share, k, depth):
    """Over the column and at 50 cm. With at most two kinds they depend on the first one's share and on k alone: tabulated by both."""
    steps = 1 if len(kinds) == 1 else 300
    low, high = first_share.min(), first_share.max()
    place = np.rint((first_share - low) / max(high - low, 1e-9) * (steps - 1)).astype(int)
    log_k = np.linspace(np.log(k.min()), np.log(k.max()), 101)
    tables = np.empty((2, steps, len(log_k)))
    for i, share in enumerate(np.linspace(low, high, steps)):
        logs = log_sizes(kinds, [share, 1 - share][: len(kinds)])
        alphas = np.exp(logs.mean() + B * (logs - logs.mean()) - log_k[:, None])
        tables[0, i], tables[1, i] = column(alphas * depth).mean(axis=1), point(alphas * 50).mean(axis=1)
    along = (np.log(k) - log_k[0]) / (log_k[1] - log_k[0])
    cell = np.minimum(along.astype(int), len(log_k) - 2)
    way = along - cell
    return [table[place, cell] * (1 - way) + table[place, cell + 1] * way for table in tables]


def draw(case, random, count):
    parts, settling = case[:3], case[3]
    down, up, packing_dev, voids_dev, settle_down, settle_up, k_dev, w_dev, residual_dev, f_scatters, depth = case[4:]
    normal = lambda: random.standard_normal(count)
    two_sided = lambda z, low, high: np.exp(z * np.where(z < 0, low, high))
    kinds = [kind for kind in range(3) if parts[kind] > 0]
    mass, envelope, inner, volumes = {}, {}, {}, {}
    for kind in kinds:
        _, bulk, particle = GRAINS[kind]
        drawn_bulk = bulk * two_sided(normal(), down, up)
        drawn_particle = np.minimum(drawn_bulk / (bulk / particle * np.exp(packing_dev * normal())), 2400)
        own = np.clip(drawn_bulk / drawn_particle, 0.05, 0.97)
        mass[kind] = parts[kind] * drawn_bulk
        envelope[kind] = parts[kind] * own
        inner[kind] = 1 - drawn_particle / 2400
        volumes[kind] = class_volume(kind, 1 / own)
    total = sum(envelope.values())
    sizes, shares, class_volumes = [], [], []
    by_size = {}
    for kind in kinds:
        for size, share in classes_of(kind):
            y, v = by_size.get(size, (0.0, 0.0))
            by_size[size] = (y + envelope[kind] * share / total, v + envelope[kind] * share / total * volumes[kind])
    for size in sorted(by_size, reverse=True):
        sizes.append(size)
        shares.append(by_size[size][0])
        class_volumes.append(by_size[size][1] / by_size[size][0])
    phi = 1 / np.maximum.reduce(specific_volumes(sizes, shares, class_volumes))
    largest = np.maximum.reduce([e for e in envelope.values()])
    phi = np.clip(phi - voids_dev * np.minimum(1, 2 * (1 - largest / total)) * normal(), 0.05, 0.97)
    settled = np.minimum(0.97, phi / (1 - np.minimum(0.5, settling * two_sided(normal(), settle_down, settle_up))))
    k = K * np.exp(k_dev * normal())
    w = np.clip(FILL + w_dev * normal(), 0, 1)
    residual = np.maximum(0, RESIDUAL + residual_dev * normal())
    f = flooded_fill(normal()) if f_scatters else FLOODED
    open_pores = sum(envelope[kind] * inner[kind] for kind in kinds) / total * settled
    voids = 1 - settled
    flooded, grain_water = f * voids, open_pores * w
    residual = np.minimum(residual, flooded)
    in_column, at_fifty = mean_saturations(kinds, envelope[kinds[0]] / total, k, depth)
    theta = lambda s: residual + (flooded - residual) * s + grain_water
    capacity = theta(in_column)
    return np.array([sum(mass.values()) / total * settled, voids, capacity, flooded + grain_water - capacity,
                     theta(at_fifty)])


print("# NumPy", np.__version__)
with open(sys.argv[1]) as lines:
    for number, line in enumerate(lines):
        case = [float(word) for word in line.split()]
        random = np.random.default_rng(1000 + number)
        drawn = draw(case, random, DRAWS)
        print(*np.quantile(drawn, [0.05, 0.5, 0.95], axis=1).T.ravel())
