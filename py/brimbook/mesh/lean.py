"""Does a model stand straight? A flat bottom that leans tells that it was drawn or saved tilted."""

import math
from collections.abc import Sequence

from brimbook.mesh.triangles import Triangles

# A bottom leans by no less than the first and no more than the second [°]; what leans more is a wall or was made so.
_LEAST, _MOST = 0.2, 20.0
# It is flat where so much of all that faces down looks the same way, in steps of a share of the whole way.
_FLAT, _STEP = 0.6, 0.002
# More triangles than these don't change that.
_ENOUGH = 8_000


def lean(mesh: Triangles, numbers: Sequence[int]) -> float:
    """How far the flat bottom of a model leans; 0 where it stands straight, or none of it is flat [°].

    mesh: stands up, faces outward [triangles].
    numbers: the triangles of the outside [numbers].

    >>> lean(Triangles([(0, 0, 0), (10, 0, 1), (0, 10, 0)], [0], [2], [1]), [0])
    5.7
    """
    steepest = math.cos(math.radians(_MOST))
    areas: dict[tuple[int, int], float] = {}
    ways: dict[tuple[int, int], tuple[float, float]] = {}
    corners, first, second, third = mesh.corners, mesh.first, mesh.second, mesh.third
    for number in numbers[::max(1, len(numbers) // _ENOUGH) | 1]:
        (a, b, c), (d, e, f), (g, h, i) = corners[first[number]], corners[second[number]], corners[third[number]]
        z = (d - a) * (h - b) - (e - b) * (g - a)
        if z < 0:
            x, y = (e - b) * (i - c) - (f - c) * (h - b), (f - c) * (g - a) - (d - a) * (i - c)
            twice = math.sqrt(x * x + y * y + z * z)
            if -z > steepest * twice:
                way = round(x / twice / _STEP), round(y / twice / _STEP)
                areas[way] = areas.get(way, 0.0) + twice
                ways.setdefault(way, (x / twice, y / twice))
    if not areas:
        return 0.0
    way = max(areas, key=areas.__getitem__)
    # What lies on the border of two steps is in both.
    flat = math.fsum(area for other, area in areas.items() if abs(other[0] - way[0]) <= 1 and abs(other[1] - way[1]) <= 1)
    angle = round(math.degrees(math.asin(min(1.0, math.hypot(*ways[way])))), 1)
    return angle if angle >= _LEAST and flat > _FLAT * math.fsum(areas.values()) else 0.0
