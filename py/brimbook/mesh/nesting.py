"""Which loops of a section lie inside which."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from brimbook.mesh.model import Polygon
from brimbook.shape.outline import Point

# So many places of a loop are asked whether they lie inside another, and most of them decide; only one where loops are many.
_ASKED, _MANY = 3, 24
# Ends of a loop are drawn in by this share, so that a loop which only touches another one crosses it nowhere.
_DRAWN_IN = 1e-3


@dataclass(frozen=True)
class Nested:
    """A loop's place among the others: in how many it lies, and the number of the smallest of them, none outside of all.

    area: above 0 counterclockwise. is_crossed: is one end of something solid inside a larger one and another end outside?
    """

    depth: int
    parent: int | None
    area: float
    is_crossed: bool = False

    @property
    def is_hole(self) -> bool:
        """A way around air, by its direction [yes or no]."""
        return self.area < 0


def area(points: Polygon) -> float:
    """Area of a polygon, below 0 clockwise [unit of the file²].

    points: its corners [unit of the file].

    >>> area(((0.0, 0.0), (4.0, 0.0), (4.0, 3.0)))
    6.0
    """
    left, low = points[0]
    return math.fsum((x - left) * (other_y - low) - (other_x - left) * (y - low)
                     for (x, y), (other_x, other_y) in zip(points, (*points[1:], points[0]))) / 2


def holds(points: Polygon, place: Point) -> bool:
    """Does a place lie inside a polygon, by crossing its sides an odd number of times [yes or no]?

    points: corners of the polygon [unit of the file].
    place: anywhere [unit of the file].

    >>> holds(((0.0, 0.0), (4.0, 0.0), (4.0, 3.0)), (3.0, 1.0))
    True
    """
    right, level = place
    inside = False
    x, y = points[-1]
    for next_x, next_y in points:
        if (y > level) != (next_y > level) and right < x + (level - y) / (next_y - y) * (next_x - x):
            inside = not inside
        x, y = next_x, next_y
    return inside


def nested(loops: Sequence[Polygon]) -> list[Nested]:
    """Each loop's place among the others, in their order [loops].

    loops: that don't cross each other [unit of the file].

    >>> square = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0))
    >>> [(each.depth, each.parent) for each in nested([square, ((1.0, 1.0), (1.0, 2.0), (2.0, 2.0), (2.0, 1.0))])]
    [(0, None), (1, 0)]
    """
    areas = [area(loop) for loop in loops]
    boxes = [_box(loop) for loop in loops]
    asked = [_places(loop, _ASKED if len(loops) <= _MANY else 1) for loop in loops]
    found = []
    for number, own in enumerate(boxes):
        larger = [other for other, box in enumerate(boxes) if abs(areas[other]) > abs(areas[number]) and _meet(own, box)]
        around = [other for other in larger if _within(own, boxes[other])
                  and 2 * sum(holds(loops[other], place) for place in asked[number]) > len(asked[number])]
        parent = min(around, key=lambda other: abs(areas[other]), default=None)
        ends = _ends(loops[number], own) if areas[number] > 0 else ()
        found.append(Nested(len(around), parent, areas[number], any(_is_parted(ends, loops[other]) for other in larger)))
    return found


Box = tuple[float, float, float, float]


def _box(loop: Polygon) -> Box:
    across, up = zip(*loop)
    return min(across), min(up), max(across), max(up)


def _meet(one: Box, other: Box) -> bool:
    return one[0] <= other[2] and other[0] <= one[2] and one[1] <= other[3] and other[1] <= one[3]


def _within(one: Box, other: Box) -> bool:
    return other[0] <= one[0] and other[1] <= one[1] and other[2] >= one[2] and other[3] >= one[3]


def _ends(loop: Polygon, box: Box) -> list[Point]:
    """Its corners farthest to each side."""
    across, up = (box[0] + box[2]) / 2, (box[1] + box[3]) / 2
    ends = (min(loop), max(loop), min(loop, key=lambda point: point[1]), max(loop, key=lambda point: point[1]))
    return [(x + _DRAWN_IN * (across - x), y + _DRAWN_IN * (up - y)) for x, y in ends]


def _is_parted(places: Sequence[Point], loop: Polygon) -> bool:
    return len({holds(loop, place) for place in places}) > 1


def _places(loop: Polygon, count: int) -> list[Point]:
    """Middles of some sides."""
    starts = [number * len(loop) // count for number in range(count)]
    return [((loop[start - 1][0] + loop[start][0]) / 2, (loop[start - 1][1] + loop[start][1]) / 2) for start in starts]
