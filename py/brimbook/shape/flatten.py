"""Curves drawn as straight lines from just outside, and polygons with fewer corners from just outside."""

import math

from brimbook.shape.path_data import Curve, Point

# A piece is straight enough when it turns by no more than this [rad] and bulges by no more than this share of the size.
_TURN, _BULGE = 0.5, 2e-4
_DEEPEST, _EVEN = 9, 1e-9


def flatten(pieces: list[Curve], most: int) -> list[Point]:
    """The corners of a polygon around a closed outline, counterclockwise, no more than so many where that can be [mm].

    pieces: lines and cubics, each beginning where the one before ends [mm].
    most: corners [count].

    Where the outline bulges outward the lines touch it from outside, where it bulges inward they are its chords.

    >>> flatten([((0.0, 0.0), (0.0, 4.0)), ((0.0, 4.0), (3.0, 0.0)), ((3.0, 0.0), (0.0, 0.0))], 9)
    [(0.0, 0.0), (3.0, 0.0), (0.0, 4.0)]
    """
    rough = [point for curve in pieces for point in curve[:-1]]
    if signed_area(rough) < 0:
        pieces = [curve[::-1] for curve in reversed(pieces)]
    low, high = ([pick(point[axis] for point in rough) for axis in (0, 1)] for pick in (min, max))
    bulge = _BULGE * max(high[0] - low[0], high[1] - low[1])
    corners = [corner for curve in pieces for part in _between_bends(curve) for corner in _outside(part, bulge, _DEEPEST)]
    return fewer(_turning(corners, _EVEN * bulge), most)


def signed_area(points: list[Point]) -> float:
    """Area within a polygon, below 0 when it goes clockwise [mm²].

    points: its corners [mm].

    >>> signed_area([(0.0, 0.0), (4.0, 0.0), (4.0, 3.0)])
    6.0
    """
    return math.fsum(one[0] * other[1] - other[0] * one[1] for one, other in zip(points, [*points[1:], points[0]])) / 2


def turn(one: Point, two: Point, three: Point) -> float:
    """Twice the area of a triangle, below 0 when it goes clockwise [mm²].

    one: corner [mm].
    two: corner [mm].
    three: corner [mm].

    >>> turn((0.0, 0.0), (4.0, 0.0), (4.0, 3.0))
    12.0
    """
    return (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])


def _between_bends(curve: Curve) -> list[Curve]:
    """A cubic cut where it begins to bend the other way."""
    if len(curve) == 2:
        return [curve]
    (x0, y0), (x1, y1), (x2, y2), (x3, y3) = curve
    ax, ay, bx, by = x1 - x0, y1 - y0, x2 - 2 * x1 + x0, y2 - 2 * y1 + y0
    cx, cy = x3 - 3 * x2 + 3 * x1 - x0, y3 - 3 * y2 + 3 * y1 - y0
    square, plain, lone = bx * cy - by * cx, ax * cy - ay * cx, ax * by - ay * bx
    parts, left, begun = [], curve, 0.0
    for bend in sorted(_roots(square, plain, lone)):
        if 1e-6 < bend < 1 - 1e-6 and bend > begun:
            first, left = _cut(left, (bend - begun) / (1 - begun))
            parts, begun = [*parts, first], bend
    return [*parts, left]


def _roots(square: float, plain: float, lone: float) -> list[float]:
    under = plain * plain - 4 * square * lone
    if under < 0:
        return []
    half = -(plain + math.copysign(math.sqrt(under), plain)) / 2
    return [top / bottom for top, bottom in ((half, square), (lone, half)) if bottom != 0]


def _cut(curve: Curve, share: float) -> tuple[Curve, Curve]:
    rows = [curve]
    while len(rows[-1]) > 1:
        rows.append(tuple((one[0] + share * (other[0] - one[0]), one[1] + share * (other[1] - one[1]))
                          for one, other in zip(rows[-1], rows[-1][1:])))
    return tuple(row[0] for row in rows), tuple(row[-1] for row in reversed(rows))


def _outside(curve: Curve, bulge: float, deep: int) -> list[Point]:
    """The corners from its beginning on, without its end."""
    if len(curve) == 2:
        return [curve[0]]
    handles = [point for place, point in enumerate(curve) if place == 0 or point != curve[place - 1]]
    sides = list(zip(handles, handles[1:]))
    ways = [math.atan2(other[1] - one[1], other[0] - one[0]) for one, other in sides]
    turned = [math.remainder(after - before, 2 * math.pi) for before, after in zip(ways, ways[1:])]
    chord = math.dist(curve[0], curve[-1])
    far = max((abs(turn(curve[0], curve[-1], point)) for point in handles), default=0.0) / chord if chord else math.inf
    if deep and (sum(map(abs, turned)) > _TURN or far > bulge):
        return [corner for half in _cut(curve, 0.5) for corner in _outside(half, bulge, deep - 1)]
    if len(sides) < 2 or sum(turned) <= 0:
        return [curve[0]]
    met = meet(sides[0][0], sides[0][1], sides[-1][0], sides[-1][1])
    return [curve[0]] if met is None else [curve[0], met]


def meet(one: Point, two: Point, three: Point, four: Point) -> Point | None:
    """Where two lines cross, none when they are parallel [mm].

    one: point of the first line [mm].
    two: another point of it [mm].
    three: point of the second line [mm].
    four: another point of it [mm].

    >>> meet((0.0, 0.0), (1.0, 0.0), (3.0, 4.0), (3.0, 5.0))
    (3.0, 0.0)
    """
    ahead, across = (two[0] - one[0], two[1] - one[1]), (four[0] - three[0], four[1] - three[1])
    bottom = ahead[0] * across[1] - ahead[1] * across[0]
    if abs(bottom) <= 1e-12 * math.hypot(*ahead) * math.hypot(*across):
        return None
    share = ((three[0] - one[0]) * across[1] - (three[1] - one[1]) * across[0]) / bottom
    return (one[0] + share * ahead[0], one[1] + share * ahead[1])


def _turning(points: list[Point], even: float) -> list[Point]:
    """Only the corners that turn; one that lies within a hair of the line past it, and between its ends, is no corner."""
    kept: list[Point] = []
    for point in points:
        while len(kept) > 1 and _is_even(kept[-2], kept[-1], point, even):
            kept.pop()
        if not kept or math.dist(kept[-1], point) > even:
            kept.append(point)
    while len(kept) > 3 and math.dist(kept[0], kept[-1]) <= even:
        kept.pop()
    for _ in range(2):
        if len(kept) > 3 and _is_even(kept[-2], kept[-1], kept[0], even):
            kept.pop()
        if len(kept) > 3 and _is_even(kept[-1], kept[0], kept[1], even):
            kept.pop(0)
    return kept


def _is_even(one: Point, two: Point, three: Point, even: float) -> bool:
    ahead = (two[0] - one[0]) * (three[0] - two[0]) + (two[1] - one[1]) * (three[1] - two[1])
    return ahead > 0 and abs(turn(one, two, three)) <= even * math.dist(one, three)


def fewer(points: list[Point], most: int) -> list[Point]:
    """A polygon with no more than so many corners around another, as near to it as can be step by step [mm].

    points: its corners, counterclockwise [mm].
    most: corners, at least 4 [count].

    >>> fewer([(0.0, 0.0), (9.0, 0.0), (10.0, 1.0), (10.0, 9.0), (0.0, 9.0)], 4)
    [(0.0, 0.0), (10.0, 0.0), (10.0, 9.0), (0.0, 9.0)]
    """
    kept = list(points)
    costs = [_without(kept, place) for place in range(len(kept))]
    while len(kept) > most:
        place = min(range(len(costs)), key=lambda each: costs[each][0])
        cost, corner = costs[place]
        if math.isinf(cost):
            return kept
        if corner is None:
            del kept[place], costs[place]
        else:
            after = (place + 1) % len(kept)
            kept[place] = corner
            del kept[after], costs[after]
            place -= after < place
        for near in range(place - 3, place + 3):
            costs[near % len(kept)] = _without(kept, near % len(kept))
    return kept


def _without(points: list[Point], place: int) -> tuple[float, Point | None]:
    """How far a polygon grows when an inward corner is left out, or the side after an outward one; and the new corner."""
    count = len(points)
    before, here, after, beyond = (points[(place + step) % count] for step in (-1, 0, 1, 2))
    if before == after or here == after:
        return math.inf, None
    if turn(before, here, after) <= 0:
        return abs(turn(before, here, after)) / math.dist(before, after), None
    met = meet(before, here, after, beyond) if turn(here, after, beyond) > 0 else None
    if met is None or turn(here, after, met) > 0 or turn(before, here, beyond) <= 0 and turn(before, after, beyond) <= 0:
        return math.inf, None
    return abs(turn(here, after, met)) / math.dist(here, after), met
