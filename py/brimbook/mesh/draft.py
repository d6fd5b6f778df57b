"""Draft: how walls lean, which decides whether a piece comes out of its mold."""

import math
from collections.abc import Sequence

from brimbook.mesh.model import Draft
from brimbook.mesh.triangles import Triangles

# A face that leans more than this from upright is a floor or a rim, no wall [°]; one that leans less than that is upright [°].
WALL, UPRIGHT = 45.0, 1.0
# So much of a wall may be left out, such as a seam or a letter, before an angle counts.
_SMALL = 0.01
# More triangles than these don't change the shares that are told.
_ENOUGH = 8_000


def draft(mesh: Triangles, numbers: Sequence[int], inward: bool) -> Draft | None:
    """How walls lean; none where there are no walls [draft].

    mesh: stands up, faces outward [triangles].
    numbers: the triangles of the outside, or of a room [numbers].
    inward: true for a room, whose walls lean well when it opens upward; false for the outside, whose walls do when it is
        narrower at the bottom, so that a piece is pulled upward out of its mold [yes or no].
    """
    leans = sorted(_leans(mesh, numbers[::max(1, len(numbers) // _ENOUGH) | 1], 1.0 if inward else -1.0))
    area = math.fsum(area for _, area in leans)
    if not area:
        return None
    return Draft(_least(leans, _SMALL * area), math.fsum(area for angle, area in leans if abs(angle) < UPRIGHT) / area,
                 math.fsum(area for angle, area in leans if angle <= -UPRIGHT) / area)


def _leans(mesh: Triangles, numbers: Sequence[int], way: float) -> list[tuple[float, float]]:
    """Angle from upright and area of each triangle that is a wall [°, unit of the file²]."""
    found, steepest = [], math.sin(math.radians(WALL))
    corners, first, second, third = mesh.corners, mesh.first, mesh.second, mesh.third
    for number in numbers:
        a, b, c = corners[first[number]]
        d, e, f = corners[second[number]]
        g, h, i = corners[third[number]]
        x = (e - b) * (i - c) - (f - c) * (h - b)
        y = (f - c) * (g - a) - (d - a) * (i - c)
        z = (d - a) * (h - b) - (e - b) * (g - a)
        twice = math.sqrt(x * x + y * y + z * z)
        if abs(z) < steepest * twice:
            # Rounded, so that a plain upright wall is upright on every computer.
            found.append((round(math.degrees(math.asin(way * z / twice)), 3) + 0.0, twice / 2))
    return found


def _least(leans: Sequence[tuple[float, float]], small: float) -> float:
    passed = 0.0
    for angle, area in leans:
        passed += area
        if passed > small:
            return angle
    return leans[-1][0]
