"""What lies within a distance of a point, going inside an outline."""

import math

from brimbook.shape.flatten import turn
from brimbook.shape.outline import Point
from brimbook.shape.pieces import Pieces
from brimbook.shape.ways import START, Ways, around, ways

# So many spots along the wall are looked toward; the polygon keeps so many corners; halvings to find where it leaves the wall.
_LOOKS, _CORNERS, _HALVINGS = 160, 80, 30


def within(cut: Pieces, point: Point, radius: float) -> tuple[Point, ...]:
    """A pool's outline: along the shortest way to each spot of the wall, the spot itself or where the radius ends [mm].

    cut: the outline in pieces [pieces].
    point: inside it [mm].
    radius: of the pool [mm].

    >>> square = Pieces(((0, 0), (4, 0), (4, 3)), ((0, 1, 2),), ((None, None, None),))
    >>> within(square, (3.0, 1.0), 9.0)
    ((0, 0), (4, 0), (4, 3))
    """
    found = ways(cut, point)
    corners = cut.points
    around_all = math.fsum(math.dist(one, two) for one, two in zip(corners, (*corners[1:], corners[0])))
    piece_of = {piece[at]: number for number, (piece, beside) in enumerate(zip(cut.corners, cut.beside))
                for at, beyond in enumerate(beside) if beyond is None}
    rim: list[Point] = []
    for corner, one in enumerate(corners):
        two = corners[(corner + 1) % len(corners)]
        looks = math.ceil(_LOOKS * math.dist(one, two) / around_all)
        spots = [(one[0] + (two[0] - one[0]) * look / looks, one[1] + (two[1] - one[1]) * look / looks)
                 for look in range(1, looks)]
        side = _Side(found, cut, piece_of[corner], radius)
        for spot, after in zip([one, *spots], [*spots, two]):
            rim.append(side.seen(spot))
            if (side.far(spot) > radius) != (side.far(after) > radius):
                rim.append(side.edge(spot, after))
    return tuple(_fewer(rim))


class _Side:
    """One side of the outline, as seen from the point."""

    def __init__(self, found: Ways, cut: Pieces, piece: int, radius: float):
        self._found, self._cut, self._radius = found, cut, radius
        self._funnel = found.funnels[piece]

    def _last(self, spot: Point) -> int:
        return around(self._found, self._cut, self._funnel, spot)

    def far(self, spot: Point) -> float:
        """Length of the shortest way to a spot [mm].

        spot: on this side [mm].
        """
        last = self._last(spot)
        return self._found.length[last] + math.dist(self._found.place(last, self._cut), spot)

    def seen(self, spot: Point) -> Point:
        """The spot, or where the radius ends on the way to it [mm].

        spot: on this side [mm].
        """
        last = self._last(spot)
        ahead = spot
        if self.far(spot) <= self._radius:
            return spot
        while last != START and self._found.length[last] > self._radius:
            ahead, last = self._cut.points[last], self._found.before[last]
        here, left = self._found.place(last, self._cut), self._radius - self._found.length[last]
        share = left / math.dist(here, ahead)
        return (here[0] + share * (ahead[0] - here[0]), here[1] + share * (ahead[1] - here[1]))

    def edge(self, one: Point, two: Point) -> Point:
        """Where the radius ends between two spots, one within it, one beyond [mm].

        one: on this side [mm].
        two: on this side [mm].
        """
        low, high = (one, two) if self.far(one) <= self._radius else (two, one)
        for _ in range(_HALVINGS):
            middle = ((low[0] + high[0]) / 2, (low[1] + high[1]) / 2)
            low, high = (middle, high) if self.far(middle) <= self._radius else (low, middle)
        return low


def _fewer(rim: list[Point]) -> list[Point]:
    """The corners that tell most of a polygon, in order."""
    kept = list(rim)
    sizes = [abs(turn(kept[at - 1], kept[at], kept[(at + 1) % len(kept)])) for at in range(len(kept))]
    while len(kept) > 3 and (len(kept) > _CORNERS or min(sizes) < 1e-9):
        at = sizes.index(min(sizes))
        del kept[at], sizes[at]
        for near in (at - 1, at % len(kept)):
            sizes[near] = abs(turn(kept[near - 1], kept[near], kept[(near + 1) % len(kept)]))
    return kept
