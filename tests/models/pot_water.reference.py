"""Volume and container capacity of pots, worked anew with SciPy from the formulas of docs/science.

usage: pot_water.reference.py CASES ANSWERS
CASES holds one JSON object per line; ANSWERS gets one line "volume_ml capacity" each. The version used goes to the first line.
Nothing here is shared with the library: areas from the shapes' own formulas, PCHIP and quad from SciPy.
"""
import json
import sys

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.interpolate import PchipInterpolator
from scipy.special import ellipe, gamma


def ellipse_perimeter(length, width):
    a, b = max(length, width) / 2, min(length, width) / 2
    return 4 * a * ellipe(1 - (b / a) ** 2)


def superellipse_perimeter(length, width, exponent):
    # Quarter by x up to the point of equal angle and by y from there on: both slopes stay finite.
    a, b = length / 2, width / 2
    split = 0.5 ** (1 / exponent)

    def arc(a, b):
        def speed(t):  # x = a t, y = b (1 - t^n)^(1/n)
            slope = -b * t ** (exponent - 1) * (1 - t ** exponent) ** (1 / exponent - 1)
            return np.hypot(a, slope)
        return quad(speed, 0, split, limit=200)[0]

    return 4 * (arc(a, b) + arc(b, a))


def area_function(pot):
    shape = pot["shape"]
    depth = pot["depth"]
    length1, width1 = pot["rim"]
    length0, width0 = pot.get("base", pot["rim"])
    perimeter = 0.0
    if shape == "profile":
        heights, areas = zip(*pot["areas"])
        table = PchipInterpolator(heights, areas)
        plain = lambda z: float(table(z))
    elif shape == "bowl":
        plain = lambda z: np.pi / 4 * length1 * width1 * (1 - ((depth - z) / depth) ** 2)
    elif shape == "drum":
        areas = [np.pi / 4 * d * d for d in (length0, pot["middle"], length1)]
        fit = np.polyfit([0, depth / 2, depth], areas, 2)
        plain = lambda z: np.polyval(fit, z)
        perimeter = np.pi * length0
    else:
        n = pot.get("exponent", 2)
        share = {"rectangular": 1.0, "oval": np.pi / 4, "round": np.pi / 4, "hexagonal": np.sqrt(3) / 2,
                 "octagonal": 2 * np.tan(np.pi / 8)}.get(shape) or gamma(1 + 1 / n) ** 2 / gamma(1 + 2 / n)
        corner = pot.get("corner", 0.0)
        loss = 4 * corner ** 2 * (1 - np.pi / 4)

        def plain(z):
            u = z / depth
            return share * (length0 + u * (length1 - length0)) * (width0 + u * (width1 - width0)) - loss

        perimeter = {"rectangular": lambda: 2 * (length0 + width0) - 8 * corner + 2 * np.pi * corner,
                     "hexagonal": lambda: 6 * length0 * np.tan(np.pi / 6),
                     "octagonal": lambda: 8 * length0 * np.tan(np.pi / 8),
                     "superellipse": lambda: superellipse_perimeter(length0, width0, n)}.get(
                         shape, lambda: ellipse_perimeter(length0, width0))()
    radius = pot.get("fillet", 0.0)
    if radius == 0:
        return plain, 0.0

    def filleted(z):
        inset = radius - np.sqrt(max(0.0, radius ** 2 - (radius - z) ** 2)) if z < radius else 0.0
        return plain(z) - perimeter * inset

    return filleted, radius


def classes(sizes, shares):
    quantiles = (np.arange(100) + 0.5) / 100
    # A step is two equal sizes: its share interval maps to that size.
    return np.exp(np.interp(quantiles, shares, np.log(sizes)))


def section_at(pot, z):
    """Length and width before fillet; scaled where a water fill overrides the lengths."""
    u = z / pot["depth"]
    length1, width1 = pot["rim"]
    length0, width0 = pot.get("base", pot["rim"])
    if pot["shape"] in ("profile", "drum"):
        plain = area_function({**pot, "fillet": 0.0})[0]
        diameter = np.sqrt(plain(z) * 4 / np.pi)
        return diameter, diameter
    if pot["shape"] == "bowl":
        share = np.sqrt(1 - (1 - u) ** 2)
        return length1 * share, width1 * share
    return length0 + u * (length1 - length0), width0 + u * (width1 - width0)


def chord(pot, extent, across, x):
    """Width of a section at distance x from its low edge."""
    shape = pot["shape"]
    y = np.minimum(x, extent - x)
    if shape == "rectangular":
        r = pot.get("corner", 0.0)
        return np.where(y < r, across - 2 * r + 2 * np.sqrt(np.maximum(0, 2 * r * y - y * y)), across)
    if shape == "hexagonal":
        return extent * np.tan(np.pi / 6) + 2 * y * np.tan(np.pi / 6)
    if shape == "octagonal":
        side = extent * np.tan(np.pi / 8)
        return np.minimum(side + 2 * y, extent)
    n = pot.get("exponent", 2) if shape == "superellipse" else 2
    return across * np.maximum(0, 1 - np.abs(2 * x / extent - 1) ** n) ** (1 / n)


def tilted_mean(pot, area, breaks, volume, scale, saturation):
    """Mean over the body by midpoints across and Gauss upward."""
    pot = {**pot, "corner": pot.get("corner", 0.0) * scale}  # corners shrink with the sections
    cosine, sine = np.cos(pot["tilt"]), np.sin(pot["tilt"])
    along = 1 if pot["about_length"] else 0
    low_half = section_at(pot, 0.0)[along] * scale / 2
    nodes, weights = np.polynomial.legendre.leggauss(16)
    level = pot["saucer"] - pot["wick"]
    steps = 1500
    t = (np.arange(steps) + 0.5) / steps
    t = t * t * (3 - 2 * t)  # denser at both edges
    inner = np.diff(np.concatenate([[0.0], (t[1:] + t[:-1]) / 2, [1.0]]))
    total = 0.0
    # The air sets in near the free water: finer there and above.
    top = breaks[-1]
    wet = min(max(level / cosine, 0.0), top)
    steps_up = [wet + (top - wet) * part for part in (0, 1 / 64, 1 / 16, 1 / 4)]
    breaks = sorted({*breaks, *steps_up, wet / 2})
    for a, b in zip(breaks, breaks[1:]):
        for node, weight in zip(nodes, weights):
            z = (a + b) / 2 + (b - a) / 2 * node
            section = section_at(pot, z)
            extent, across = section[along] * scale, section[1 - along] * scale
            x = t * extent
            mass = chord(pot, extent, across, x) * inner
            head = z * cosine + (low_half - extent / 2 + x) * sine - level
            total += weight * (b - a) / 2 * area(z) * np.sum(mass * saturation(head)) / np.sum(mass)
    return total / volume


def evaluate(case):
    pot, mix = case["pot"], case["mix"]
    area, radius = area_function(pot)
    top = pot["depth"] - pot["freeboard"]
    breaks = sorted({z for z in [0.0, radius, top, *(row[0] for row in pot.get("areas", []))] if 0 <= z <= top})
    level = pot["saucer"] - pot["wick"]

    def integrate(f, ends):
        return sum(quad(f, a, b, epsabs=1e-8, epsrel=1e-8, limit=400)[0] for a, b in zip(ends, ends[1:]) if b > a)

    volume = integrate(area, breaks)
    d = classes(mix["sizes"], mix["shares"])
    centre = np.exp(np.mean(np.log(d)))
    alpha = centre * (d / centre) ** mix["spread"] / mix["k"]
    n = mix["n"]

    def saturation(z):
        if z <= level:
            return 1.0
        return np.mean((1 + (alpha * (z - level)) ** n) ** (1 / n - 1))

    if "tilt" in pot:
        scale = np.sqrt(pot["water_fill"] / volume) if "water_fill" in pot else 1.0
        grid = np.exp(np.linspace(np.log(1e-6), np.log(500), 20000))
        table = np.mean((1 + np.outer(grid, alpha) ** n) ** (1 / n - 1), axis=1)
        mean = tilted_mean(pot, area, breaks, volume, scale, lambda h: np.where(h <= 0, 1.0, np.interp(h, grid, table)))
        return answer(pot, mix, volume, mean)

    ends = sorted({*breaks, *(z for z in [level, level + 0.5 / alpha.max(), level + 2 / alpha.min()] if 0 < z < top)})
    mean = integrate(lambda z: area(z) * saturation(z), ends) / volume
    return answer(pot, mix, volume, mean)


def answer(pot, mix, volume, mean):
    residual = min(mix["residual"], mix["saturated"])
    capacity = residual + (mix["saturated"] - residual) * mean + mix["grain_water"]
    return pot.get("water_fill", volume), capacity


def main():
    with open(sys.argv[1], encoding="utf-8") as cases, open(sys.argv[2], "w", encoding="utf-8") as answers:
        answers.write(f"SciPy {scipy.__version__}, NumPy {np.__version__}\n")
        for line in cases:
            volume, capacity = evaluate(json.loads(line))
            answers.write(f"{volume:.12g} {capacity:.12g}\n")


main()
