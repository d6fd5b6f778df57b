"""An outline as path data in mm, no longer than the record has room for."""

import heapq
from collections.abc import Iterator, Sequence

from brimbook.shape import flatten
from brimbook.shape.curves import box
from brimbook.shape.outline import CORNERS, path
from brimbook.shape.path_data import LONGEST, Curve, OutlineError, Point

# A polygon of more corners than this is thinned in one go before it is taken care of corner by corner.
_MANY = 300


def text_of(curves: Sequence[Curve]) -> tuple[str, bool]:
    """An outline as path data, its box beginning at 0 0, and whether it had to be made simpler [text, and yes or no].

    curves: closed lines and cubics, y downward [mm].

    Raises OutlineError, a sentence, when it crosses itself.

    >>> text_of([((0.0, 0.0), (80.0, 0.0)), ((80.0, 0.0), (80.0, 40.0)), ((80.0, 40.0), (0.0, 0.0))])
    ('M0 0L80 0L80 40Z', False)
    """
    left, top, _, _ = box(curves)
    placed = [tuple((x - left, y - top) for x, y in curve) for curve in curves]
    text = _path(placed)
    is_simpler = len(text) > LONGEST or len(placed) > 4 * CORNERS
    texts = _polygons(placed) if is_simpler else (text,)
    for text in texts:
        try:
            path(text)
            return text, is_simpler
        except OutlineError as error:
            told = str(error).replace("This outline", "The outline in this file").partition(" Type its corners")[0]
    raise OutlineError(told)


def _path(curves: Sequence[Curve]) -> str:
    steps = [("L" if len(curve) == 2 else "C") + " ".join(map(_told, curve[1:])) for curve in curves]
    if len(curves[-1]) == 2:
        steps.pop()
    return f"M{_told(curves[0][0])}{''.join(steps)}Z"


def _polygons(curves: Sequence[Curve]) -> Iterator[str]:
    """It with fewer corners from just outside; where that can't be, as for many fine teeth, from corner to corner."""
    upward = [tuple((x, 0.0 - y) for x, y in curve) for curve in curves]
    corners = flatten.flatten(upward, len(upward) * 1000)
    for kept in (flatten.fewer(_thinned(corners, _MANY), CORNERS), _thinned(corners, CORNERS)):
        yield "M" + "L".join(_told((x, 0.0 - y)) for x, y in kept) + "Z"


def _told(point: Point) -> str:
    return " ".join(f"{round(value, 2) + 0.0:.2f}".rstrip("0").rstrip(".") for value in point)


def _thinned(points: list[Point], most: int) -> list[Point]:
    """Without the corners that matter least, by the triangle with their neighbors, until there are no longer too many."""
    count = len(points)
    before, after = [place - 1 for place in range(count)], [(place + 1) % count for place in range(count)]
    before[0] = count - 1
    gone, left = [False] * count, count
    waiting = [(_weight(points, before, after, place), place) for place in range(count)]
    weights = [weight for weight, _ in waiting]
    heapq.heapify(waiting)
    while left > most:
        weight, place = heapq.heappop(waiting)
        if gone[place] or weight != weights[place]:
            continue
        gone[place], left = True, left - 1
        one, other = before[place], after[place]
        after[one], before[other] = other, one
        for near in (one, other):
            weights[near] = _weight(points, before, after, near)
            heapq.heappush(waiting, (weights[near], near))
    return [point for place, point in enumerate(points) if not gone[place]]


def _weight(points: list[Point], before: list[int], after: list[int], place: int) -> float:
    return round(abs(flatten.turn(points[before[place]], points[place], points[after[place]])), 9)
