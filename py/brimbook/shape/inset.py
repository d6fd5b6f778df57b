"""A polygon drawn in or out, every side staying parallel to itself."""

import math
from dataclasses import dataclass
from functools import lru_cache

from brimbook.shape.flatten import signed_area, turn
from brimbook.shape.outline import Point

# Sides shorter than this are gone [mm]; corners sharper than this can't be told from a spike [–].
_GONE, _SPIKE = 1e-7, 1e-6


@dataclass(frozen=True)
class Stage:
    """From one distance on, until the next side is gone: the corners there, and which of them each first corner has become."""

    begin: float
    points: tuple[Point, ...]
    became: tuple[int, ...]


@dataclass(frozen=True)
class Drawn:
    """All that happens to a polygon as it is drawn in, or out: its stages, and where nothing is left of it [mm]."""

    stages: tuple[Stage, ...]
    end: float
    way: int


@lru_cache(maxsize=32)
def drawn(points: tuple[Point, ...], way: int) -> Drawn:
    """What happens to a polygon as its sides move [drawn].

    points: its corners, counterclockwise [mm].
    way: 1 inward, −1 outward [–].

    Source: the shrinking polygon of the straight skeleton, as long as it stays in one piece.

    >>> drawn(((0, 0), (80, 0), (80, 60), (0, 60)), 1).end
    30.0
    """
    stage, stages = Stage(0.0, points, tuple(range(len(points)))), []
    while True:
        stages.append(stage)
        speeds = _speeds(stage.points)
        step = math.inf if speeds is None else _first_gone(stage.points, speeds, way)
        if speeds is None or math.isinf(step):
            return Drawn(tuple(stages), stage.begin if speeds is None else math.inf, way)
        following = _merged(stage, step, _moved(stage.points, speeds, way * step))
        if len(following.points) < 3 or signed_area(list(following.points)) <= _GONE:
            return Drawn(tuple(stages), following.begin, way)
        stage = following


@lru_cache(maxsize=256)
def inset(points: tuple[Point, ...], distance: float) -> tuple[Point, ...]:
    """A polygon drawn in, or out below 0; empty where nothing is left or it falls into pieces [mm].

    points: its corners, counterclockwise [mm].
    distance: of each side from where it was [mm].

    >>> inset(((0, 0), (80, 0), (80, 60), (0, 60)), 10.0)
    ((10.0, 10.0), (70.0, 10.0), (70.0, 50.0), (10.0, 50.0))
    """
    found = at_all_corners(points, distance)
    corners = tuple(point for place, point in enumerate(found) if math.dist(point, found[place - 1]) > _GONE)
    return corners if len(corners) > 2 and _is_simple(corners) else ()


def at_all_corners(points: tuple[Point, ...], distance: float) -> tuple[Point, ...]:
    """The same with a place for every first corner, some of them in one spot; empty where nothing is left [mm].

    points: its corners, counterclockwise [mm].
    distance: of each side from where it was [mm].

    >>> len(at_all_corners(((0, 0), (80, 0), (80, 59), (79, 60), (0, 60)), 10.0))
    5
    """
    way, far = (1, distance) if distance >= 0 else (-1, -distance)
    course = drawn(points, way)
    if far >= course.end:
        return ()
    stage = [each for each in course.stages if each.begin <= far][-1]
    moved = _moved(stage.points, _speeds(stage.points), way * (far - stage.begin))
    return tuple(moved[place] for place in stage.became)


def breaks(points: tuple[Point, ...], low: float, high: float) -> list[float]:
    """The distances at which a side is gone, between two of them [mm].

    points: corners of a polygon, counterclockwise [mm].
    low: the lower distance, below 0 outward [mm].
    high: the higher one [mm].

    >>> [round(each, 6) for each in breaks(((0, 0), (80, 0), (80, 59), (79, 60), (0, 60)), 0.0, 10.0)]
    [1.707107]
    """
    gone = [way * stage.begin for way in (1, -1) for stage in drawn(points, way).stages]
    return sorted({each for each in gone if low < each < high})


def _sides(points: tuple[Point, ...]) -> list[tuple[float, float]]:
    """The way along each side, from its corner to the next one."""
    along = []
    for (x, y), (u, v) in zip(points, (*points[1:], points[0])):
        length = math.hypot(u - x, v - y)
        along.append(((u - x) / length, (v - y) / length))
    return along


def _speeds(points: tuple[Point, ...]) -> list[Point] | None:
    """How each corner moves for a millimeter inward; none where a corner is a spike."""
    along, found = _sides(points), []
    for place, (u, v) in enumerate(along):
        p, q = along[place - 1]
        level = 1 + p * u + q * v
        if level < _SPIKE:
            return None
        found.append((-(q + v) / level, (p + u) / level))
    return found


def _moved(points: tuple[Point, ...], speeds: list[Point], far: float) -> tuple[Point, ...]:
    return tuple((x + far * u, y + far * v) for (x, y), (u, v) in zip(points, speeds))


def _first_gone(points: tuple[Point, ...], speeds: list[Point], way: int) -> float:
    """How far until the first side is gone, infinite where none ever is."""
    first, count = math.inf, len(points)
    for place, (u, v) in enumerate(_sides(points)):
        after = (place + 1) % count
        grows = way * ((speeds[after][0] - speeds[place][0]) * u + (speeds[after][1] - speeds[place][1]) * v)
        if grows < 0:
            first = min(first, math.dist(points[place], points[after]) / -grows)
    return first


def _merged(stage: Stage, step: float, moved: tuple[Point, ...]) -> Stage:
    """Corners that have met are one from now on."""
    kept: list[Point] = []
    now: list[int] = []
    for point in moved:
        if not kept or math.dist(kept[-1], point) > _GONE:
            kept.append(point)
        now.append(len(kept) - 1)
    if len(kept) > 1 and math.dist(kept[0], kept[-1]) <= _GONE:
        kept.pop()
        now = [0 if place == len(kept) else place for place in now]
    return Stage(stage.begin + step, tuple(kept), tuple(now[place] for place in stage.became))


def _is_simple(points: tuple[Point, ...]) -> bool:
    """Does the polygon go around counterclockwise without crossing itself?"""
    if signed_area(list(points)) <= 0:
        return False
    sides = list(zip(points, (*points[1:], points[0])))
    for place, (one, two) in enumerate(sides):
        for three, four in sides[place + 2:len(sides) - (place == 0)]:
            if (turn(one, two, three) * turn(one, two, four) <= 0 and turn(three, four, one) * turn(three, four, two) <= 0
                    and _overlap(one, two, three, four)):
                return False
    return True


def _overlap(one: Point, two: Point, three: Point, four: Point) -> bool:
    """Two sides on one line cross only where their boxes meet."""
    return all(min(three[axis], four[axis]) <= max(one[axis], two[axis]) and min(one[axis], two[axis]) <= max(three[axis], four[axis])
               for axis in (0, 1))
