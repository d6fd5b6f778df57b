"""Areas of triangles, and triangles chosen evenly over a surface."""

import math
from collections.abc import Iterator, Sequence

from brimbook.mesh.triangles import Triangles
from brimbook.mesh.volumes import at, columns


def areas(mesh: Triangles) -> list[float]:
    """Area of each triangle [unit of the file²].

    mesh: any triangles [triangles].

    >>> areas(Triangles([(0, 0, 0), (3, 0, 0), (0, 0, 4)], [0], [1], [2]))
    [6.0]
    """
    square = math.sqrt
    return [square((x := (e - d) * (i - g) - (f - d) * (h - g)) * x + (y := (h - g) * (c - a) - (i - g) * (b - a)) * y
                   + (z := (b - a) * (f - d) - (c - a) * (e - d)) * z) / 2
            for a, b, c, d, e, f, g, h, i in zip(*(values for axis in columns(mesh) for values in at(mesh, axis)))]


def evenly(numbers: Sequence[int], sizes: Sequence[float], most: int) -> Iterator[tuple[int, float]]:
    """Some triangles, each with the area that it stands for: large ones for themselves, of small ones some for all [numbers, areas].

    numbers: the triangles to choose from [numbers].
    sizes: the area of each triangle of the mesh [unit of the file²].
    most: large and small ones are at most so many each [triangles].

    >>> list(evenly([0, 1, 2, 3, 4], [1.0, 1.0, 6.0, 1.0, 1.0], 5))
    [(1, 2.0), (2, 6.0), (4, 2.0)]
    """
    each, passed = math.fsum(map(sizes.__getitem__, numbers)) / most, 0.0
    for number in numbers:
        size = sizes[number]
        if size >= each:
            if size:
                yield number, size
            continue
        passed += size
        if passed >= each:
            yield number, each
            passed -= each
