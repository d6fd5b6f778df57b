"""Basins of a mesh: where rising liquid would stand apart, and the corners at which basins run over into each other.

Every corner leads down, along edges, to a low: a corner with no lower one beside it. Below a height two lows belong
together if a way of edges below that height joins them, and such ways need only be known where they pass from one low's
corners to another's. Source: the sublevel sets of a function that is linear on each triangle are joined as the corners
and edges inside them are.
"""

from collections.abc import Generator, Iterable
from dataclasses import dataclass
from typing import NamedTuple

from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Progress

# The low of everything that is open to the outside: the model's lowest corner.
OUTSIDE = 0
_PASSES = 64


class Pass(NamedTuple):
    """Two lows, and the rank of the corner at which they join."""

    rank: int
    one: int
    other: int


@dataclass(frozen=True)
class Pool:
    """What stands around a low until it runs over: both are ranks of corners; spill none if it never does."""

    low: int
    spill: int | None


class Lows:
    """The lows of a mesh, and where they join.

    of: for each corner, by its rank, the rank of its low. passes: from bottom to top.
    """

    def __init__(self, of: list[int], passes: list[Pass]):
        self.of, self.passes = of, passes

    def piece(self, slicer: Slicer, triangle: int) -> int:
        """The low below a triangle [rank].

        slicer: the same mesh [mesh].
        triangle: any [number].
        """
        return self.of[slicer.low[triangle]]


def lows(slicer: Slicer) -> Generator[Progress, None, Lows]:
    """The lows of a mesh, and where they join [lows].

    slicer: the mesh [mesh].
    """
    down = list(range(len(slicer.heights)))
    for low, high in zip(slicer.low, slicer.high):
        down[high] = low
    yield 0.1, "Looking for rooms"
    for _ in range(_PASSES):
        further = [down[place] for place in down]
        if further == down:
            break
        down = further
    yield 0.3, "Looking for rooms"
    apart = [number for number, (one, two, three) in enumerate(zip(*slicer.ranks)) if not down[one] == down[two] == down[three]]
    yield 0.6, "Looking for rooms"
    lowest = _passes(slicer, down, apart)
    yield 0.8, "Looking for rooms"
    return Lows(down, sorted(Pass(rank, *divmod(pair, len(down))) for pair, rank in lowest.items()))


def _passes(slicer: Slicer, down: list[int], apart: list[int]) -> dict[int, int]:
    """For each pair of lows, as one number, the lowest rank at which an edge of some triangles leads from one to the other."""
    one, two, three = slicer.ranks
    count = len(down)
    lowest: dict[int, int] = {}
    for number in apart:
        low, high = slicer.low[number], slicer.high[number]
        middle = one[number] + two[number] + three[number] - low - high
        stays, between, top = down[low], down[middle], down[high]
        if between != stays:
            pair = between * count + stays if between > stays else stays * count + between
            if middle < lowest.get(pair, count):
                lowest[pair] = middle
        if top != stays:
            pair = top * count + stays if top > stays else stays * count + top
            if high < lowest.get(pair, count):
                lowest[pair] = high
    return lowest


class Flood:
    """Lows as they join while liquid rises.

    into, when: for each low that has joined a lower one that one, and the rank at which it did.
    deep: for each low those of some depth that joined it, with their ranks, from bottom to top.
    """

    def __init__(self, slicer: Slicer, least: float):
        self._heights, self._least = slicer.heights, least
        self._root: dict[int, int] = {}
        self.into: dict[int, int] = {}
        self.when: dict[int, int] = {}
        self.deep: dict[int, list[tuple[int, int]]] = {}
        self._placed = {OUTSIDE}

    def low(self, of: int) -> int:
        """The low that a low has come to belong to by now [rank].

        of: any low [rank].
        """
        root = self._root
        top = of
        while (further := root.get(top, top)) != top:
            top = further
        while of != top:
            root[of], of = top, root.get(of, of)
        return top

    def join(self, rank: int, one: int, other: int) -> None:
        """Joins what two lows belong to [nothing].

        rank: of the corner where they join [rank].
        one: a low [rank].
        other: a low [rank].
        """
        one, other = self.low(one), self.low(other)
        if one == other:
            return
        stays, goes = min(one, other), max(one, other)
        if goes in self._placed:
            self._placed.add(stays)
        self._root[goes] = self.into[goes] = stays
        self.when[goes] = rank
        if self._heights[rank] - self._heights[goes] >= self._least:
            self.deep.setdefault(stays, []).append((rank, goes))

    def place(self, rank: int, piece: int, air: int) -> None:
        """Joins a low to the air that a cut shows around it, unless it was found to stand in another one: then bodies run through each other [nothing].

        rank: of the cut [rank].
        piece: the low [rank].
        air: a low in the same air [rank].
        """
        if self.low(piece) not in self._placed or self.low(piece) == self.low(air):
            self.join(rank, piece, air)
            self._placed.add(self.low(air))

    def joined_by(self, spill: int, all_lows: Iterable[int]) -> dict[int, int]:
        """For each low the one that it belongs to just before a rank [ranks].

        spill: the rank [rank].
        all_lows: from bottom to top [ranks].
        """
        top = {}
        for low in all_lows:
            top[low] = top[self.into[low]] if low in self.into and self.when[low] < spill else low
        return top
