"""Closed rows of lines and cubics: what they enclose, their box, and a smooth row through points."""

import math
from collections.abc import Sequence

from brimbook.shape.path_data import Curve, Point

# Weights of the cross products of a cubic's four points, by pairs; they come to 10 where the cubic is a line.
_WEIGHTS = ((0, 1, 6), (0, 2, 3), (0, 3, 1), (1, 2, 3), (1, 3, 3), (2, 3, 6))


def enclosed(pieces: Sequence[Curve]) -> float:
    """Area within a closed row, below 0 when it goes clockwise, y upward [mm²].

    pieces: lines of two points and cubics of four, each beginning where the one before ends [mm].

    Half the integral of x dy − y dx along each piece, worked out for cubics.

    >>> enclosed([((0.0, 0.0), (4.0, 0.0)), ((4.0, 0.0), (4.0, 3.0)), ((4.0, 3.0), (0.0, 0.0))])
    6.0
    """
    return math.fsum(_swept(curve) for curve in pieces)


def _swept(curve: Curve) -> float:
    if len(curve) == 2:
        return _cross(*curve) / 2
    return math.fsum(weight * _cross(curve[one], curve[other]) for one, other, weight in _WEIGHTS) / 20


def _cross(one: Point, other: Point) -> float:
    return one[0] * other[1] - one[1] * other[0]


def box(pieces: Sequence[Curve]) -> tuple[float, float, float, float]:
    """The box around lines and curves, handles among them: left, low, right, high [mm].

    pieces: lines and cubics, at least one [mm].

    >>> box([((0.0, 0.0), (4.0, 0.0)), ((4.0, 0.0), (4.0, 3.0))])
    (0.0, 0.0, 4.0, 3.0)
    """
    across, up = ([point[axis] for curve in pieces for point in curve] for axis in (0, 1))
    return min(across), min(up), max(across), max(up)


def straight_through(points: Sequence[Point]) -> list[Curve]:
    """Straight sides from point to point, and back to the first [lines].

    points: in order [mm].

    >>> straight_through([(0.0, 0.0), (4.0, 0.0), (4.0, 3.0)])[2]
    ((4.0, 3.0), (0.0, 0.0))
    """
    return list(zip(points, [*points[1:], points[0]]))


def smooth_through(points: Sequence[Point]) -> list[Curve]:
    """A smooth closed row through points: points of a circle, however unevenly they lie, give that circle [cubics].

    points: in order, 3 or more, no two neighbors alike [mm].

    At each point it goes the way of the circle through that point and its two neighbors, d1 ÷ |d1|² + d2 ÷ |d2|² for the sides
    d1 before and d2 after it. The handles are as long as those of a circle's arc with that angle between handle and chord:
    2 × chord ÷ (3 × (1 + cosine)).

    >>> round(enclosed(smooth_through([(40.0, 0.0), (0.0, 40.0), (-40.0, 0.0), (0.0, -40.0)])) / (1600 * math.pi), 3)
    1.0
    """
    ways = [_way(points[place - 1], point, points[(place + 1) % len(points)]) for place, point in enumerate(points)]
    return [_arc(points[place - 1], ways[place - 1], point, ways[place]) for place, point in enumerate(points)]


def _way(before: Point, here: Point, after: Point) -> Point:
    """The way at the middle one of three points, of length 1."""
    x, y = 0.0, 0.0
    for one, other in ((before, here), (here, after)):
        across, up = other[0] - one[0], other[1] - one[1]
        square = across * across + up * up
        x, y = x + across / square, y + up / square
    length = math.hypot(x, y)
    return (x / length, y / length) if length else (0.0, 0.0)


def _arc(one: Point, begin: Point, other: Point, end: Point) -> Curve:
    across, up = other[0] - one[0], other[1] - one[1]
    chord = math.hypot(across, up)
    first, last = (2 * chord / (3 * (1 + max(0.0, (way[0] * across + way[1] * up) / chord))) for way in (begin, end))
    return (one, (one[0] + first * begin[0], one[1] + first * begin[1]),
            (other[0] - last * end[0], other[1] - last * end[1]), other)
