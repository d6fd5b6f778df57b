"""Volume, surface and size of a mesh: by the divergence theorem, triangle by triangle."""

import math
import operator
from collections.abc import Sequence
from itertools import chain, repeat

from brimbook.mesh.triangles import Triangles


def shadows(mesh: Triangles) -> list[float]:
    """Area of each triangle as seen from above, below 0 where it faces down [unit of the file²].

    mesh: any triangles [triangles].

    >>> shadows(Triangles([(0, 0, 0), (4, 0, 1), (0, 3, 2)], [0], [1], [2]))
    [6.0]
    """
    lefts, fronts, _ = columns(mesh)
    return [((b - a) * (f - d) - (c - a) * (e - d)) / 2 for a, b, c, d, e, f in zip(*at(mesh, lefts), *at(mesh, fronts))]


def means(mesh: Triangles) -> list[float]:
    """Height of each triangle's middle [unit of the file].

    mesh: any triangles [triangles].

    >>> means(Triangles([(0, 0, 0), (4, 0, 1), (0, 3, 2)], [0], [1], [2]))
    [1.0]
    """
    return [(a + b + c) / 3 for a, b, c in zip(*at(mesh, columns(mesh)[2]))]


def volume(mesh: Triangles) -> float:
    """What a closed mesh encloses; below 0 where it is inside out [unit of the file³].

    mesh: closed; of an open one the sum tells little [triangles].

    Each triangle's shadow by the height of its middle, counted from the middle of the mesh. Source: divergence theorem.

    >>> volume(Triangles([(0, 0, 0), (2, 0, 0), (0, 3, 0), (0, 0, 4)], [0, 0, 1, 2], [2, 1, 2, 0], [1, 3, 3, 3]))
    4.0
    """
    if not len(mesh.first):
        return 0.0
    low, high = bounds(mesh)
    middle = (low[2] + high[2]) / 2
    return math.fsum(map(operator.mul, shadows(mesh), map(operator.sub, means(mesh), repeat(middle))))


def surface(mesh: Triangles) -> float:
    """Area of all triangles together [unit of the file²].

    mesh: any triangles [triangles].

    >>> surface(Triangles([(0, 0, 0), (3, 0, 0), (0, 4, 0)], [0], [1], [2]))
    6.0
    """
    sides = [side for axis in columns(mesh) for side in at(mesh, axis)]
    lying = [(b - a) * (f - d) - (c - a) * (e - d) for a, b, c, d, e, f in zip(*sides[:6])]
    facing_left = [(b - a) * (f - d) - (c - a) * (e - d) for a, b, c, d, e, f in zip(*sides[3:])]
    facing_front = [(b - a) * (f - d) - (c - a) * (e - d) for a, b, c, d, e, f in zip(*sides[6:], *sides[:3])]
    return math.fsum([math.sqrt(a * a + b * b + c * c) for a, b, c in zip(lying, facing_left, facing_front)]) / 2


def bounds(mesh: Triangles) -> tuple[tuple[float, float, float], tuple[float, float, float]]:
    """The lowest and the highest of each axis [unit of the file].

    mesh: with at least one corner, all of them used [triangles].

    >>> bounds(Triangles([(0, 0, 5), (4, 0, 1), (0, 3, 2)], [0], [1], [2]))
    ((0, 0, 1), (4, 3, 5))
    """
    axes = columns(mesh)
    return tuple(map(min, axes)), tuple(map(max, axes))


def size(mesh: Triangles) -> tuple[float, float, float]:
    """How wide, how deep and how high a mesh is [unit of the file].

    mesh: with at least one corner, all of them used [triangles].

    >>> size(Triangles([(0, 0, 5), (4, 0, 1), (0, 3, 2)], [0], [1], [2]))
    (4, 3, 4)
    """
    low, high = bounds(mesh)
    return tuple(map(operator.sub, high, low))


def columns(mesh: Triangles) -> tuple[Sequence[float], Sequence[float], Sequence[float]]:
    """The corners' places from the left, from the front, and their heights [unit of the file].

    mesh: any triangles [triangles].

    >>> columns(Triangles([(0, 0, 5), (4, 0, 1), (0, 3, 2)], [0], [1], [2]))
    ([0, 4, 0], [0, 0, 3], [5, 1, 2])
    """
    flat = list(chain.from_iterable(mesh.corners))
    return flat[0::3], flat[1::3], flat[2::3]


def at(mesh: Triangles, of_corners: Sequence[float]) -> tuple[list[float], list[float], list[float]]:
    """What belongs to the three corners of each triangle [as given].

    mesh: any triangles [triangles].
    of_corners: one value for each corner [any].

    >>> at(Triangles([(0, 0, 0), (1, 0, 0), (0, 1, 0)], [0], [1], [2]), ["a", "b", "c"])
    (['a'], ['b'], ['c'])
    """
    get = of_corners.__getitem__
    return list(map(get, mesh.first)), list(map(get, mesh.second)), list(map(get, mesh.third))
