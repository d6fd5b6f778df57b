"""Places inside an outline that keep clear of its wall."""

import math
from functools import lru_cache

from brimbook.shape.outline import Outline, Point, is_convex, sides_of, size, wall_distance
from brimbook.shape.ways import INNER, clip

# Clear enough: short of the clearance by no more than this [mm].
HAIR = 1e-6
_MOST_SQUARES, _PUSHES, _TRIED, _HALVINGS = 100, 40, 12, 40


@lru_cache(maxsize=16)
def clear_place(outline: Outline, clearance: float) -> Point | None:
    """One place that keeps clear of the wall, none without room [mm].

    outline: any [outline].
    clearance: least distance from the wall [mm].

    Source: squares that may hold a clear place are quartered; a distance changes by no more than one moves.

    >>> clear_place(Outline(((0.0, 0.0), (80.0, 0.0), (80.0, 40.0), (0.0, 40.0))), 21.0)
    """
    wide, high = size(outline)
    left, low = (min(point[axis] for point in outline.points) for axis in (0, 1))
    half, squares = max(wide, high) / 2, [(left + wide / 2, low + high / 2)]
    while squares and half > HAIR:
        depths = sorted(((wall_distance(outline, square), square) for square in squares), reverse=True)[:_MOST_SQUARES]
        if depths[0][0] >= clearance - HAIR:
            return depths[0][1]
        keep = [square for depth, square in depths if depth + half * math.sqrt(2) >= clearance - HAIR]
        half /= 2
        squares = [(x + right * half, y + up * half) for x, y in keep for right in (-1, 1) for up in (-1, 1)]
    return None


@lru_cache(maxsize=16)
def room(outline: Outline, clearance: float) -> tuple[Point, ...]:
    """Where a point has room inside an outline that bends nowhere inward, as a polygon; empty without room [mm].

    outline: that bends nowhere inward [outline].
    clearance: least distance from the wall [mm].

    >>> room(Outline(((0.0, 0.0), (80.0, 0.0), (80.0, 40.0), (0.0, 40.0))), 15.0)
    ((15.0, 15.0), (65.0, 15.0), (65.0, 25.0), (15.0, 25.0))
    """
    part = [(x, y, INNER) for x, y in outline.points]
    for one, two in sides_of(outline) if clearance > 0 else ():
        length = math.dist(one, two)
        across, up = (two[1] - one[1]) / length, (one[0] - two[0]) / length
        heights = [(x - one[0]) * across + (y - one[1]) * up + clearance for x, y, _ in part]
        if max(heights, default=0.0) > 0:
            part = clip(part, heights, INNER)
    return tuple((x, y) for x, y, _ in part)


def inside(outline: Outline, point: Point, clearance: float) -> Point | None:
    """The nearest place that keeps clear of the wall, where the outline bends inward a near one; none without room [mm].

    outline: any [outline].
    point: anywhere [mm].
    clearance: least distance from the wall [mm].

    >>> inside(Outline(((0.0, 0.0), (80.0, 0.0), (80.0, 40.0), (0.0, 40.0))), (90.0, 20.0), 15.0)
    (65.0, 20.0)
    """
    depth = wall_distance(outline, point)
    if depth >= clearance - HAIR:
        return point
    if is_convex(outline):
        corners = room(outline, clearance)
        if corners:
            feet = [_foot(point, one, two) for one, two in zip(corners, (*corners[1:], corners[0]))]
            return min(feet, key=lambda foot: math.dist(foot, point))
    clear = clear_place(outline, clearance)
    return None if clear is None else _near(outline, point, clearance, clear)


def _foot(point: Point, one: Point, two: Point) -> Point:
    wide, high = two[0] - one[0], two[1] - one[1]
    square = wide * wide + high * high
    share = ((point[0] - one[0]) * wide + (point[1] - one[1]) * high) / square if square else 0.0
    share = min(1.0, max(0.0, share))
    return (one[0] + share * wide, one[1] + share * high)


def _near(outline: Outline, point: Point, clearance: float, clear: Point) -> Point:
    """The nearest of the places straight off one side that are clear, of those come to by pushing off the walls, and of
    one on the way from a clear place."""
    straight = sorted(_off_each_side(outline, point, clearance), key=lambda place: math.dist(place, point))
    found = [_on_the_way(outline, clear, point, clearance)]
    for tried, place in enumerate(straight):
        if math.dist(place, point) >= min(math.dist(other, point) for other in found):
            break
        if wall_distance(outline, place) >= clearance - HAIR:
            found.append(place)
        elif tried < _TRIED:
            found.extend(_pushed(outline, place, clearance))
    return min(found, key=lambda place: math.dist(place, point))


def _off_each_side(outline: Outline, point: Point, clearance: float) -> list[Point]:
    places = []
    for one, two in sides_of(outline):
        foot = _foot(point, one, two)
        length = math.dist(one, two)
        places.append((foot[0] - clearance * (two[1] - one[1]) / length, foot[1] + clearance * (two[0] - one[0]) / length))
        off = math.dist(point, foot)
        if off > HAIR:
            places.append((foot[0] + clearance * (point[0] - foot[0]) / off, foot[1] + clearance * (point[1] - foot[1]) / off))
    return places


def _pushed(outline: Outline, place: Point, clearance: float) -> list[Point]:
    """Where a place inside comes to when the nearest wall pushes it off again and again."""
    for _ in range(_PUSHES):
        depth = wall_distance(outline, place)
        if depth >= clearance - HAIR:
            return [place]
        if depth <= 0:
            return []
        foot = min((_foot(place, one, two) for one, two in sides_of(outline)), key=lambda foot: math.dist(foot, place))
        further = clearance / depth
        place = (foot[0] + further * (place[0] - foot[0]), foot[1] + further * (place[1] - foot[1]))
    return []


def _on_the_way(outline: Outline, clear: Point, point: Point, clearance: float) -> Point:
    """A clear place on the straight line from a clear one, where it ceases to be clear."""
    low, high = 0.0, 1.0
    for _ in range(_HALVINGS):
        share = (low + high) / 2
        place = (clear[0] + share * (point[0] - clear[0]), clear[1] + share * (point[1] - clear[1]))
        low, high = (share, high) if wall_distance(outline, place) >= clearance else (low, share)
    return (clear[0] + low * (point[0] - clear[0]), clear[1] + low * (point[1] - clear[1]))
