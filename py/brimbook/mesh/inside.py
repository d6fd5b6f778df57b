"""Does a point lie inside a surface? And do two surfaces run through each other?"""

import bisect
from collections.abc import Sequence

from brimbook.mesh.triangles import Corner

Triple = tuple[Corner, Corner, Corner]
# A side that ends nearer to a triangle's plane than this share of its length touches it only.
_TOUCH = 1e-6


def windings(points: Sequence[Corner], triangles: Sequence[Triple]) -> list[int]:
    """How often a closed surface goes around each point: 0 outside, 1 inside, -1 inside one that is inside out [times].

    points: not on the surface [unit of the file].
    triangles: the surface [triples of corners].

    A line straight up from the point crosses so many more triangles that face up than ones that face down.

    >>> tetrahedron = [((0, 0, 0), (0, 3, 0), (2, 0, 0)), ((0, 0, 0), (2, 0, 0), (0, 0, 4)),
    ...                ((2, 0, 0), (0, 3, 0), (0, 0, 4)), ((0, 3, 0), (0, 0, 0), (0, 0, 4))]
    >>> windings([(0.2, 0.2, 1.0), (0.2, 0.2, 5.0), (0.2, 0.2, -1.0)], tetrahedron)
    [1, 0, 0]
    """
    order = sorted(range(len(points)), key=lambda number: points[number][0])
    lefts = [points[number][0] for number in order]
    found = [0] * len(points)
    for one, two, three in triangles:
        begin = bisect.bisect_left(lefts, min(one[0], two[0], three[0]))
        end = bisect.bisect_right(lefts, max(one[0], two[0], three[0]))
        for number in order[begin:end]:
            point = points[number]
            if (one[1] <= point[1]) == (two[1] <= point[1]) == (three[1] <= point[1]):
                continue
            way = _way(point, one, two, three)
            if way and _is_above(point, one, two, three):
                found[number] += way
    return found


def _way(point: Corner, *corners: Corner) -> int:
    """1 where a triangle seen from above lies around the point, -1 where it faces down, 0 where it doesn't.

    A corner as far back as the point counts as behind it, for all triangles alike, so that no line is counted twice.
    """
    left, front = point[0], point[1]
    way = 0
    for (a, b, _), (c, d, _) in zip(corners, (*corners[1:], corners[0])):
        if (b <= front) != (d <= front):
            # Each side is reckoned from its front end, so that both of its triangles agree.
            lean = (c - a) * (front - b) - (left - a) * (d - b) if b <= front else (a - c) * (front - d) - (left - c) * (b - d)
            if lean > 0:
                way += 1 if b <= front else -1
    return way


def _is_above(point: Corner, one: Corner, two: Corner, three: Corner) -> bool:
    left, front, up = one
    a, b, c = two[0] - left, two[1] - front, two[2] - up
    d, e, f = three[0] - left, three[1] - front, three[2] - up
    shadow = a * e - b * d
    if not shadow:
        return False
    along, across = point[0] - left, point[1] - front
    return up + ((along * e - across * d) * c + (across * a - along * b) * f) / shadow > point[2]


def is_crossed(sides: Sequence[tuple[Corner, Corner]], triangles: Sequence[Triple]) -> bool:
    """Does one of the sides run through one of the triangles, and not only touch it? [true or false].

    sides: ends of lines [unit of the file].
    triangles: of another surface [triples of corners].

    >>> flat = [((0, 0, 0), (4, 0, 0), (0, 4, 0))]
    >>> is_crossed([((1, 1, -1), (1, 1, 1))], flat), is_crossed([((1, 1, 0), (1, 1, 1))], flat)
    (True, False)
    """
    return any(_runs_through(start, end, triple) for triple in triangles for start, end in sides)


def _runs_through(start: Corner, end: Corner, triple: Triple) -> bool:
    one, two, three = triple
    before, after = _six(start, one, two, three), _six(end, one, two, three)
    if not min(before, after) < -_TOUCH * abs(before - after) or not max(before, after) > _TOUCH * abs(before - after):
        return False
    ways = (_six(start, end, one, two), _six(start, end, two, three), _six(start, end, three, one))
    least = _TOUCH * sum(map(abs, ways))
    return min(ways) > least or max(ways) < -least


def _six(a: Corner, b: Corner, c: Corner, d: Corner) -> float:
    """Six times what the four corners enclose, with its direction."""
    e, f, g = b[0] - a[0], b[1] - a[1], b[2] - a[2]
    h, i, j = c[0] - a[0], c[1] - a[1], c[2] - a[2]
    k, m, n = d[0] - a[0], d[1] - a[1], d[2] - a[2]
    return e * (i * n - j * m) - f * (h * n - j * k) + g * (h * m - i * k)
