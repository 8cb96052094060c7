"""Second calculation of mixes, written apart from the library: plain sums over all pairs, class betas by root finding.

One mix a line: settling, filled share of the grain's pores, number of components; for each: parts, bulk density g/L, moisture,
particle and skeletal density g/L, open share, water absorption (-1: none), number of points, then aperture mm and passing 0-1 of
each; a single size has no points and its mm follows.
"""
import sys

import numpy
import scipy
from scipy.optimize import brentq

R20_3 = [0.25, 0.355, 0.5, 0.71, 1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0, 11.2, 16.0, 22.4]


def classes(component):
    """Sizes in mm and shares, any order."""
    if component["single_mm"] is not None:
        return numpy.array([component["single_mm"]]), numpy.array([1.0])
    apertures, passing = (numpy.array(column) for column in zip(*component["grading"]))
    top = next(size for size in R20_3 if size > apertures[-1] * (1 + 1e-9))
    edges = numpy.append(apertures, top)
    sizes = numpy.append(apertures[0] / 2, numpy.sqrt(edges[:-1] * edges[1:]))
    shares = numpy.diff(numpy.concatenate(([0.0], passing, [1.0])))
    return sizes[shares > 0], shares[shares > 0]


def specific_volume(size, share, volume):
    """1/phi of the linear dominant-class model with wedging, every pair written out; sizes in any order, unmerged."""
    worst = 0.0
    for i in range(len(size)):
        fine, coarse = size < size[i], size > size[i]
        total = numpy.sum(share * volume)

        r = size[fine] / size[i]
        f = (1 - r) ** 3.3 + 2.8 * r * (1 - r) ** 2.7
        c = 0.322 * numpy.tanh(11.9 * r)
        exponent = numpy.sum(share[fine] * (1 - r**6))
        total -= numpy.sum(f * share[fine] * volume[fine] * (1 - c * (3.8**exponent - 1)))

        r = size[i] / size[coarse]
        g = (1 - r) ** 2.0 + 0.4 * r * (1 - r) ** 3.7
        c = 0.322 * numpy.tanh(11.9 * r)
        exponent = numpy.sum(share[coarse] * (1 - r**6))
        total -= numpy.sum(g * share[coarse] * (volume[coarse] - 1) * (1 - c * (2.6**exponent - 1)))
        worst = max(worst, total)
    return worst


def class_beta(size, share, own):
    def miss(volume):
        return specific_volume(size, share, numpy.full(len(size), volume)) - 1 / own

    return 1 / brentq(miss, 1.0, 50.0, xtol=1e-14, rtol=1e-14)


def passing_at(component, aperture):
    if component["single_mm"] is not None:
        return float(aperture >= component["single_mm"])
    apertures, passing = (list(column) for column in zip(*component["grading"]))
    if passing[-1] < 1:
        apertures.append(next(size for size in R20_3 if size > apertures[-1] * (1 + 1e-9)))
        passing.append(1.0)
    if aperture < apertures[0]:
        return passing[0] if aperture >= apertures[0] / 2 else 0.0
    return float(numpy.interp(numpy.log(aperture), numpy.log(apertures), passing))


def figures(mix):
    parts = mix["components"]
    loose = numpy.array([part["parts"] for part in parts])
    particle = numpy.array([part["particle_g_l"] for part in parts])
    skeletal = numpy.array([part["skeletal_g_l"] for part in parts])
    bulk = numpy.array([part["bulk_g_l"] / (1 + part["moisture"]) for part in parts])
    mass = loose * bulk
    envelope = mass / particle

    sizes, shares, volumes, betas = [], [], [], []
    for part, grain, own in zip(parts, envelope, bulk / particle):
        size, share = classes(part)
        betas.append(class_beta(size, share, own))
        sizes.append(size)
        shares.append(share * grain / envelope.sum())
        volumes.append(numpy.full(len(size), 1 / betas[-1]))
    phi = 1 / specific_volume(numpy.concatenate(sizes), numpy.concatenate(shares), numpy.concatenate(volumes))
    poured = envelope.sum() / phi
    settled = poured * (1 - mix["settling"])

    pores = 1 - particle / skeletal
    water = numpy.array([
        part["open_share"] * n * mix["grain_fill"] if part["absorption"] < 0 else part["absorption"] * part["particle_g_l"] / 1000
        for part, n in zip(parts, pores)
    ])
    apertures = sorted({a for part in parts for a in ([part["single_mm"]] if part["single_mm"] is not None
                                                     else [point[0] for point in part["grading"]])})
    rows = [phi, poured, 1 - poured / loose.sum(), mass.sum() / settled, mass.sum() / envelope.sum(),
            mass.sum() / numpy.sum(mass / skeletal), 1 - envelope.sum() / settled, numpy.sum(envelope * pores) / settled,
            1 - numpy.sum(mass / skeletal) / settled, numpy.sum(envelope * water) / settled]
    rows += betas
    for weight in (mass / mass.sum(), envelope / envelope.sum()):
        rows += [sum(w * passing_at(part, a) for w, part in zip(weight, parts)) for a in apertures]
    return rows


def read(row):
    """The mix that a line of numbers stands for."""
    numbers = iter(map(float, row.split()))
    mix = {"settling": next(numbers), "grain_fill": next(numbers), "components": []}
    for _ in range(int(next(numbers))):
        part = {key: next(numbers) for key in ("parts", "bulk_g_l", "moisture", "particle_g_l", "skeletal_g_l", "open_share", "absorption")}
        points = int(next(numbers))
        part["single_mm"] = next(numbers) if points == 0 else None
        part["grading"] = [(next(numbers), next(numbers)) for _ in range(points)]
        mix["components"].append(part)
    return mix


print(f"# mix_state: SciPy {scipy.__version__}, NumPy {numpy.__version__}")
with open(sys.argv[1], encoding="ascii") as cases:
    for line in cases:
        print(" ".join(repr(float(value)) for value in figures(read(line))))
