"""Kept, removed and untouched shares of posed root masses, counted anew in NumPy with points of SciPy's Sobol sequence.

A row: form (0 box, 1 elliptic, 2 rounded, 3 oval pot, 4 rectangular pot), length, width, height, exponent, floor length, floor
width; pot shape (0 rectangular, 1 oval, 2 superellipse, 3 drum), rim length, rim width, floor length, floor width, middle width,
exponent, depth; lowest level, fill line, side clearance; trunk base in the tree frame (3); turn, tip, bearing in degrees; trunk
base in the pot (3); working depth; combed depth of the faces right, left, back, front, top, bottom. Lengths in cm.
An answer: kept, removed, untouched. A point is untouched if it is farther than the working depth from every sample of the cut
surfaces, which are the parts of the allowed space's surface that lie in the block. Nothing is shared with the library.
"""
import sys

import numpy as np
import scipy
from scipy.ndimage import label
from scipy.spatial import cKDTree
from scipy.spatial.transform import Rotation
from scipy.stats import qmc

SAMPLES = 2 ** 16
MESH = 0.1
LIP = 0.5


class Block:
    def __init__(self, row):
        self.form, self.size, self.n = int(row[0]), np.array(row[1:4]), row[4]
        self.floor = np.array(row[5:7])

    def inside(self, p):
        u, v, w = 2 * p[:, 0] / self.size[0], 2 * p[:, 1] / self.size[1], p[:, 2] / self.size[2]
        ok = (np.abs(u) <= 1) & (np.abs(v) <= 1) & (w >= 0) & (w <= 1)
        if self.form == 1:
            ok &= u ** 2 + v ** 2 <= 1
        elif self.form == 2:
            ok &= np.abs(u) ** self.n + np.abs(v) ** self.n + np.abs(2 * w - 1) ** self.n <= 1
        elif self.form >= 3:
            sides = self.floor + (self.size[:2] - self.floor) * np.clip(w, 0, 1)[:, None]
            u, v = 2 * p[:, 0] / sides[:, 0], 2 * p[:, 1] / sides[:, 1]
            ok &= (u ** 2 + v ** 2 <= 1) if self.form == 3 else (np.abs(u) <= 1) & (np.abs(v) <= 1)
        return ok


class Pot:
    def __init__(self, row):
        self.shape = int(row[0])
        self.rim, self.base, self.middle = np.array(row[1:3]) / 2, np.array(row[3:5]) / 2, row[5] / 2
        self.n, self.depth, self.low, self.high, self.side = row[6:11]

    def halves(self, z):
        z = np.asarray(z, float)
        if self.shape == 3:
            fit = np.polyfit([0, self.depth / 2, self.depth], [self.base[0] ** 2, self.middle ** 2, self.rim[0] ** 2], 2)
            r = np.sqrt(np.polyval(fit, z))
            return r, r
        t = z / self.depth
        return tuple(self.base[i] + (self.rim[i] - self.base[i]) * t for i in (0, 1))

    def ring(self, z, inset):
        """Points `inset` inside the outline along its normal."""
        a, b = (float(x) for x in self.halves(z))
        if self.shape == 0:
            a, b = a - inset, b - inset
            x, y = np.arange(-a, a, MESH), np.arange(-b, b, MESH)
            return np.concatenate([np.c_[x, np.full_like(x, -b)], np.c_[x, np.full_like(x, b)],
                                   np.c_[np.full_like(y, -a), y], np.c_[np.full_like(y, a), y]])
        n = self.n if self.shape == 2 else 2
        x, y = np.arange(-a + MESH / 2, a, MESH), np.arange(-b + MESH / 2, b, MESH)
        of_x, of_y = b * (1 - np.abs(x / a) ** n) ** (1 / n), a * (1 - np.abs(y / b) ** n) ** (1 / n)
        p = np.concatenate([np.c_[x, of_x], np.c_[x, -of_x], np.c_[of_y, y], np.c_[-of_y, y]])
        normal = np.c_[np.sign(p[:, 0]) * np.abs(p[:, 0] / a) ** (n - 1) / a, np.sign(p[:, 1]) * np.abs(p[:, 1] / b) ** (n - 1) / b]
        return p - inset * normal / np.linalg.norm(normal, axis=1)[:, None]

    def far_enough(self, p, slack=0.0):
        """At least the clearance from the wall at the point's height, and through the mouth."""
        a, b = self.halves(np.clip(p[:, 2], 0, self.high))
        x, y = np.abs(p[:, 0]), np.abs(p[:, 1])
        if self.shape == 0:
            return (x <= a - self.side + slack) & (y <= b - self.side + slack)
        if self.shape == 3:
            limit = np.where(a > self.rim[0] + 1e-9, np.minimum(a - self.side, self.rim[0] - LIP), a - self.side)
            return np.hypot(x, y) <= limit + slack
        # Distance to a convex outline from inside: the least gap to its tangents.
        n = self.n if self.shape == 2 else 2
        q = n / (n - 1)
        gap = np.full(len(p), np.inf)
        for angle in np.linspace(0, np.pi / 2, 181):
            c, s = np.cos(angle), np.sin(angle)
            support = ((a * c) ** q + (b * s) ** q) ** (1 / q)
            gap = np.minimum(gap, support - x * c - y * s)
        return gap >= self.side - slack

    def holds(self, p):
        return (p[:, 2] >= self.low) & (p[:, 2] <= self.high) & self.far_enough(p)

    def surface(self):
        """Samples of the allowed space's surface."""
        reach = np.max([self.halves(z) for z in (self.low, self.depth / 2, self.high)])
        x, y = np.meshgrid(np.arange(-reach, reach, MESH), np.arange(-reach, reach, MESH))
        parts = [np.c_[x.ravel(), y.ravel(), np.full(x.size, z)] for z in (self.low, self.high)]
        parts = [p[self.far_enough(p)] for p in parts]
        for z in np.arange(self.low, self.high, MESH):
            inset = self.side
            if self.shape == 3 and self.halves(z)[0] > self.rim[0] + 1e-9:
                inset = max(self.side, float(self.halves(z)[0]) - self.rim[0] + LIP)
            ring = self.ring(z, inset)
            ring = np.c_[ring, np.full(len(ring), z)]
            # Where the wall bends tighter than the clearance, parallels cross; what lies beyond the crossing is no surface.
            parts.append(ring[self.far_enough(ring, 1e-3)] if self.shape == 2 else ring)
        return np.concatenate(parts)


def answer(row):
    block, pot = Block(row[:7]), Pot(row[7:18])
    trunk, (turn, tip, toward), place = np.array(row[18:21]), row[21:24], np.array(row[24:27])
    working, combed = row[27], row[28:34]
    bearing = np.radians(toward)
    rotation = Rotation.from_rotvec(np.radians(tip) * np.array([-np.sin(bearing), np.cos(bearing), 0])) * \
        Rotation.from_euler("z", turn, degrees=True)
    to_pot = lambda p: rotation.apply(p - trunk) + place
    to_tree = lambda p: rotation.inv().apply(p - place) + trunk

    low, size = np.array([-block.size[0] / 2, -block.size[1] / 2, 0]), block.size
    points = low + qmc.Sobol(3, scramble=False).random(SAMPLES) * size
    points = points[block.inside(points)]
    kept = pot.holds(to_pot(points))
    share = kept.mean()

    cut = pot.surface()
    cut = cut[block.inside(to_tree(cut))]
    tree = cKDTree(cut) if len(cut) else None

    def untouched(p):
        p = p[pot.holds(to_pot(p))]
        free = np.ones(len(p), bool)
        if tree is not None:
            free &= tree.query(to_pot(p), distance_upper_bound=working)[0] > working
        depths = [size[0] / 2 - p[:, 0], size[0] / 2 + p[:, 0], size[1] / 2 - p[:, 1], size[1] / 2 + p[:, 1], size[2] - p[:, 2], p[:, 2]]
        for depth, comb in zip(depths, combed):
            if comb > 0:
                free &= depth > comb
        return p[free]

    # Cells are joined where they hold an untouched point or centre: points alone lie too thin to join all of them.
    count = np.ceil(size / 0.5 - 1e-9).astype(int)
    cell_of = lambda p: np.clip(((p - low) / 0.5).astype(int), 0, count - 1)
    grid = np.zeros(count, bool)
    free = untouched(points)
    if not len(free):
        return share, 1 - share, 0.0
    centres = low + (np.argwhere(~grid) + 0.5) * 0.5
    grid[tuple(cell_of(untouched(centres[block.inside(centres)])).T)] = True
    cell = cell_of(free)
    grid[tuple(cell.T)] = True
    groups, _ = label(grid)
    cells = np.unique(cell, axis=0)
    nearest = cells[np.argmin(((low + (cells + 0.5) * 0.5 - trunk) ** 2).sum(axis=1))]
    return share, 1 - share, (groups[tuple(cell.T)] == groups[tuple(nearest)]).sum() / len(points)


print(f"# NumPy {np.__version__}, SciPy {scipy.__version__}")
for line in open(sys.argv[1]):
    print(*answer([float(x) for x in line.split()]))
