"""What a person would do without a search: wicks evenly on a circle, or in the middles of clusters; and seeded outlines."""

import math
import random

from brimbook.shape import outline as outlines
from brimbook.shape.outline import Outline


def on_a_circle(outline: Outline, count: int) -> tuple:
    """Evenly on a circle around the middle of the area, of the radius that serves a disc of this area well."""
    middle = outlines.centroid(outline)
    radius = 0.0 if count == 1 else math.sqrt(outlines.area(outline) / math.pi) * (0.5 if count < 5 else 0.6)
    return tuple((middle[0] + radius * math.cos(2 * math.pi * row / count), middle[1] + radius * math.sin(2 * math.pi * row / count))
                 for row in range(count))


def by_clusters(outline: Outline, count: int, lines: int = 24) -> tuple:
    """k-means on a grid."""
    wide, high = outlines.size(outline)
    grid = [(wide * ((i + 0.5) / lines - 0.5), high * ((j + 0.5) / lines - 0.5)) for i in range(lines) for j in range(lines)]
    grid = [point for point in grid if outlines.contains(outline, point)]
    points = [grid[len(grid) * (2 * row + 1) // (2 * count)] for row in range(count)]
    for _ in range(20):
        shares = [[] for _ in points]
        for spot in grid:
            shares[min(range(count), key=lambda row: math.dist(points[row], spot))].append(spot)
        points = [(sum(x for x, _ in share) / len(share), sum(y for _, y in share) / len(share)) if share else point
                  for share, point in zip(shares, points)]
    return tuple(points)


def seeded_outline(seed: int) -> Outline:
    """A star-shaped outline, convex for every other seed."""
    chance = random.Random(seed)
    if seed % 2:
        return outlines.rounded_rectangle(chance.uniform(60, 140), chance.uniform(40, 60), chance.uniform(0, 20))
    corners = chance.randint(7, 16)
    radii = [chance.uniform(25, 60) for _ in range(corners)]
    return outlines.path(", ".join(f"{radius * math.cos(2 * math.pi * row / corners):.3f} {radius * math.sin(2 * math.pi * row / corners):.3f}"
                                   for row, radius in enumerate(radii)))
