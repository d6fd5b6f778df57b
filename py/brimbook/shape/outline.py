"""The outline of a flat shape, such as the surface of the wax seen from above."""

import math
from dataclasses import dataclass
from functools import lru_cache

from brimbook.shape import flatten
from brimbook.shape.path_data import Curve, OutlineError, Point, curves

# A round outline has so many corners: just outside the circle, by 0.054 % of its radius at most.
ROUND = 96
# An outline drawn by hand has no more; one smaller or larger than this is a slip [mm].
CORNERS, SMALLEST, LARGEST = 96, 5.0, 2000.0
# Corners are told to so many digits [mm].
_DIGITS = 9
# A corner that turns inward by less than this is even: rounding [mm²].
_EVEN = 1e-9


@dataclass(frozen=True)
class Outline:
    """A closed outline as a polygon, counterclockwise, in mm; its origin is the middle of its bounding box.

    Curves are drawn from just outside, so that nothing measured on the polygon comes out smaller than on the curve.
    """

    points: tuple[Point, ...]


def circle(diameter: float) -> Outline:
    """A circle [outline].

    diameter: across [mm].

    >>> size(circle(80.0))
    (80.0, 80.0)
    """
    return oval(diameter, diameter)


def oval(length: float, width: float) -> Outline:
    """An ellipse [outline].

    length: across its longer way, left to right [mm].
    width: across its shorter way [mm].

    >>> [round(side, 9) for side in size(oval(90.0, 60.0))]
    [90.0, 60.0]
    """
    return Outline(tuple(_even((length / 2 * x, width / 2 * y)) for x, y in _arc(0, ROUND)))


def _even(point: Point) -> Point:
    """A point without the last digits, in which one computer's sine differs from another's."""
    return round(point[0], _DIGITS), round(point[1], _DIGITS)


def _arc(first: int, count: int) -> list[Point]:
    """Corners around the unit circle, each where two of its tangents meet."""
    out, step = 1 / math.cos(math.pi / ROUND), 2 * math.pi / ROUND
    return [(out * math.cos(step * (corner + 0.5)), out * math.sin(step * (corner + 0.5)))
            for corner in range(first, first + count)]


def rounded_rectangle(length: float, width: float, corner: float) -> Outline:
    """A rectangle whose corners are rounded [outline].

    length: left to right [mm].
    width: the other way [mm].
    corner: radius of its corners, 0 for sharp ones [mm].

    Raises OutlineError when the corners don't fit its shorter side.

    >>> rounded_rectangle(80.0, 60.0, 0.0).points
    ((40.0, 30.0), (-40.0, 30.0), (-40.0, -30.0), (40.0, -30.0))
    """
    most = min(length, width) / 2
    if not 0 <= corner <= most * (1 + 1e-9):
        raise OutlineError("The corners are rounder than the shorter side allows: their radius is at most half of it.")
    if corner == 0:
        x, y = length / 2, width / 2
        return Outline(((x, y), (-x, y), (-x, -y), (x, -y)))
    quarter, x, y = ROUND // 4, max(0.0, length / 2 - corner), max(0.0, width / 2 - corner)
    return Outline(tuple(_even((right * x + corner * u, up * y + corner * v))
                         for place, (right, up) in enumerate(((1, 1), (-1, 1), (-1, -1), (1, -1)))
                         for u, v in _arc(place * quarter, quarter)))


def regular_polygon(across: float, sides: int) -> Outline:
    """A polygon of equal sides and corners, standing on a side [outline].

    across: from a side to the opposite side, or to the opposite corner when the sides are odd, as calipers take it [mm].
    sides: 3 or more [count].

    Raises OutlineError when the sides are fewer than 3 or more than 96.

    >>> [round(side, 3) for side in size(regular_polygon(60.0, 6))]
    [69.282, 60.0]
    """
    if not 3 <= sides <= ROUND:
        raise OutlineError(f"A polygon has 3 to {ROUND} sides.")
    inner = math.cos(math.pi / sides)
    radius = across / (2 * inner if sides % 2 == 0 else 1 + inner)
    begin = math.pi / sides - math.pi / 2
    return _centered([(radius * math.cos(begin + 2 * math.pi * corner / sides),
                       radius * math.sin(begin + 2 * math.pi * corner / sides)) for corner in range(sides)])


@lru_cache(maxsize=16)
def path(text: str) -> Outline:
    """An outline drawn elsewhere [outline].

    text: SVG path data in mm, y downward, or corners such as 0 0, 80 0, 80 40, y upward [text].

    Raises OutlineError, a sentence, when it is no closed outline of a sensible size, or crosses itself.

    >>> [round(side, 6) for side in size(path("M 0 0 h 80 v 20 a 20 20 0 0 1 -20 20 h -60 z"))]
    [80.0, 40.0]
    """
    return closed(curves(text))


def closed(pieces: list[Curve]) -> Outline:
    """An outline of lines and curves, each beginning where the one before ends [outline].

    pieces: lines of two points and cubics of four, y upward [mm].

    Raises OutlineError, a sentence, when it is no outline of a sensible size, or crosses itself.

    >>> size(closed([((0.0, 0.0), (80.0, 0.0)), ((80.0, 0.0), (80.0, 40.0)), ((80.0, 40.0), (0.0, 0.0))]))
    (80.0, 40.0)
    """
    points = flatten.flatten(_checked(pieces), CORNERS)
    if len(points) > CORNERS:
        raise OutlineError(f"This outline has more than {CORNERS} corners. Leave some out.")
    if len(points) < 3 or abs(flatten.signed_area(points)) < SMALLEST**2 / 4:
        raise OutlineError("This outline holds no area. Type its corners in order, all the way around.")
    if not _is_simple(points):
        raise OutlineError("This outline crosses or touches itself. Type its corners in order, all the way around.")
    return _centered(points)


def _checked(pieces: list[Curve]) -> list[Curve]:
    corners = {point for curve in pieces for point in curve}
    if len(corners) < 3:
        raise OutlineError("An outline needs at least three corners, such as 0 0, 80 0, 80 40.")
    wide, high = (max(point[axis] for point in corners) - min(point[axis] for point in corners) for axis in (0, 1))
    if max(wide, high) < SMALLEST or max(wide, high) > LARGEST:
        raise OutlineError(f"This outline is {'smaller' if max(wide, high) < SMALLEST else 'larger'} than a vessel:"
                           f" its numbers are millimeters, between {SMALLEST:.0f} and {LARGEST:,.0f} across.")
    return pieces


def _centered(points: list[Point]) -> Outline:
    x, y = ((min(point[axis] for point in points) + max(point[axis] for point in points)) / 2 for axis in (0, 1))
    return Outline(tuple(_even((one - x, other - y)) for one, other in points))


def _is_simple(points: list[Point]) -> bool:
    """Whether no side meets another that is not its neighbor, and no corner turns back on itself."""
    sides = [(one, other, min(one[0], other[0]), max(one[0], other[0])) for one, other in zip(points, [*points[1:], points[0]])]
    count = len(sides)
    for place, (one, other, left, right) in enumerate(sides):
        after = points[(place + 2) % count]
        ahead = (other[0] - one[0]) * (after[0] - other[0]) + (other[1] - one[1]) * (after[1] - other[1])
        if ahead < 0 and abs(flatten.turn(one, other, after)) < 1e-9 * -ahead:
            return False
        for far in range(place + 2, count - (place == 0)):
            three, four, least, most = sides[far]
            if least <= right and left <= most and _meets(one, other, three, four):
                return False
    return True


def _meets(one: Point, two: Point, three: Point, four: Point) -> bool:
    if max(one[1], two[1]) < min(three[1], four[1]) or max(three[1], four[1]) < min(one[1], two[1]):
        return False
    return (flatten.turn(one, two, three) * flatten.turn(one, two, four) <= 0
            and flatten.turn(three, four, one) * flatten.turn(three, four, two) <= 0)


def sides_of(outline: Outline) -> list[tuple[Point, Point]]:
    """Its sides in order, each from corner to corner [mm].

    outline: any [outline].

    >>> len(sides_of(regular_polygon(60.0, 6)))
    6
    """
    return list(zip(outline.points, (*outline.points[1:], outline.points[0])))


def area(outline: Outline) -> float:
    """Area within an outline [mm²].

    outline: any [outline].

    >>> area(rounded_rectangle(80.0, 60.0, 0.0))
    4800.0
    """
    return flatten.signed_area(list(outline.points))


def perimeter(outline: Outline) -> float:
    """Length around an outline [mm].

    outline: any [outline].

    >>> perimeter(rounded_rectangle(80.0, 60.0, 0.0))
    280.0
    """
    return math.fsum(math.dist(one, other) for one, other in sides_of(outline))


def centroid(outline: Outline) -> Point:
    """The middle of an outline's area, which may lie outside it [mm].

    outline: any [outline].

    >>> centroid(rounded_rectangle(80.0, 60.0, 0.0))
    (0.0, 0.0)
    """
    parts = [(one[0] + other[0], one[1] + other[1], one[0] * other[1] - other[0] * one[1]) for one, other in sides_of(outline)]
    whole = 3 * math.fsum(part[2] for part in parts)
    return (math.fsum(part[0] * part[2] for part in parts) / whole, math.fsum(part[1] * part[2] for part in parts) / whole)


def size(outline: Outline) -> tuple[float, float]:
    """How wide and how high an outline is [mm].

    outline: any [outline].

    >>> size(rounded_rectangle(80.0, 60.0, 0.0))
    (80.0, 60.0)
    """
    wide, high = ([point[axis] for point in outline.points] for axis in (0, 1))
    return (max(wide) - min(wide), max(high) - min(high))


def is_convex(outline: Outline) -> bool:
    """Whether an outline nowhere bends inward [yes or no].

    outline: any [outline].

    >>> is_convex(circle(80.0))
    True
    """
    points = outline.points
    return all(flatten.turn(points[place - 2], points[place - 1], points[place]) >= -_EVEN for place in range(len(points)))


def contains(outline: Outline, point: Point) -> bool:
    """Whether a point lies inside an outline [yes or no].

    outline: any [outline].
    point: anywhere [mm].

    >>> contains(circle(80.0), (39.0, 0.0)), contains(circle(80.0), (41.0, 0.0))
    (True, False)
    """
    x, y = point
    is_inside = False
    for (left, low), (right, high) in sides_of(outline):
        if (low > y) != (high > y) and x < left + (right - left) * (y - low) / (high - low):
            is_inside = not is_inside
    return is_inside


def wall_distance(outline: Outline, point: Point) -> float:
    """Distance from a point to the wall, below 0 outside [mm].

    outline: any [outline].
    point: anywhere [mm].

    >>> round(wall_distance(circle(80.0), (0.0, 0.0)), 9), wall_distance(rounded_rectangle(80.0, 60.0, 0.0), (0.0, 33.0))
    (40.0, -3.0)
    """
    x, y = point
    least = math.inf
    for (left, low), (right, high) in sides_of(outline):
        wide, tall = right - left, high - low
        share = ((x - left) * wide + (y - low) * tall) / (wide * wide + tall * tall)
        share = 0.0 if share < 0 else 1.0 if share > 1 else share
        least = min(least, (x - left - share * wide) ** 2 + (y - low - share * tall) ** 2)
    return math.sqrt(least) if contains(outline, point) else -math.sqrt(least)
