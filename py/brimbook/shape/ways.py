"""Shortest ways inside an outline from one point to everywhere."""

import math
from dataclasses import dataclass

from brimbook.shape.flatten import turn
from brimbook.shape.outline import Point
from brimbook.shape.pieces import Pieces

# The point itself, where a corner of the outline would be named.
START = -1
# A corner of a polygon, and what the side after it is: a wall from 0 on, below it something else.
Corner = tuple[float, float, int]


@dataclass
class Ways:
    """Shortest ways from a point: to each corner, the corner before it, the first one, and how long the way is.

    funnels tells for each piece how it is reached: around which corner, and around which more, bending left and right.
    """

    start: Point
    before: list[int]
    first: list[int]
    length: list[float]
    funnels: list[tuple[int, list[int], list[int]]]

    def place(self, corner: int, cut: Pieces) -> Point:
        """Where a corner lies, or the start [mm].

        corner: by number [count].
        cut: the outline in pieces [pieces].
        """
        return self.start if corner < 0 else cut.points[corner]


def ways(cut: Pieces, start: Point, ahead: float = 0.0) -> Ways:
    """Shortest ways from a point inside an outline [ways].

    cut: the outline in pieces [pieces].
    start: inside it [mm].
    ahead: length that each way has already [mm].

    Source: the funnel of a shortest path, carried from piece to piece.

    >>> square = Pieces(((0, 0), (4, 0), (4, 3)), ((0, 1, 2),), ((None, None, None),))
    >>> ways(square, (4.0, 1.0)).length
    [4.123105625617661, 1.0, 2.0, 0.0]
    """
    count, home = len(cut.points), home_of(cut, start)
    found = Ways(start, [START] * (count + 1), [START] * (count + 1), [math.inf] * count + [ahead],
                 [(START, [], [])] * len(cut.corners))
    for corner in cut.corners[home]:
        found.first[corner], found.length[corner] = corner, ahead + math.dist(start, cut.points[corner])
    waiting = [(home, None)]
    while waiting:
        piece, entered = waiting.pop()
        corners = cut.corners[piece]
        for at, beyond in enumerate(cut.beside[piece]):
            if beyond is None or beyond == entered:
                continue
            right, left = corners[at], corners[(at + 1) % len(corners)]
            found.funnels[beyond] = funnel = _funnel(found, cut, left, right)
            for corner in cut.corners[beyond]:
                if corner not in (left, right):
                    _reach(found, cut, corner, around(found, cut, funnel, cut.points[corner]))
            waiting.append((beyond, piece))
    return found


def home_of(cut: Pieces, point: Point) -> int:
    """The piece that a point lies in, the nearest one outside [count].

    cut: the outline in pieces [pieces].
    point: anywhere [mm].

    >>> home_of(Pieces(((0, 0), (4, 0), (4, 3)), ((0, 1, 2),), ((None, None, None),)), (3.0, 1.0))
    0
    """
    if len(cut.corners) == 1:
        return 0

    outside = []
    for number, piece in enumerate(cut.corners):
        corners = [cut.points[corner] for corner in piece]
        least = min(turn(one, two, point) for one, two in zip(corners, [*corners[1:], corners[0]]))
        if least >= 0:
            return number
        outside.append(least)
    return outside.index(max(outside))


def _reach(found: Ways, cut: Pieces, corner: int, before: int) -> None:
    found.before[corner] = before
    found.first[corner] = corner if before == START else found.first[before]
    found.length[corner] = found.length[before] + math.dist(found.place(before, cut), cut.points[corner])


def _funnel(found: Ways, cut: Pieces, left: int, right: int) -> tuple[int, list[int], list[int]]:
    """Where the shortest ways to the two ends of a side part, and their corners from there on."""
    lefts, rights = _back(found, left), _back(found, right)
    shared = set(lefts)
    apex = next(corner for corner in rights if corner in shared)

    def onward(back: list[int]) -> list[int]:
        chain = back[:back.index(apex)][::-1]
        here = found.place(apex, cut)
        return chain[1:] if chain and cut.points[chain[0]] == here else chain

    return apex, onward(lefts), onward(rights)


def _back(found: Ways, corner: int) -> list[int]:
    chain = [corner]
    while chain[-1] != START:
        chain.append(found.before[chain[-1]])
    return chain


def around(found: Ways, cut: Pieces, funnel: tuple[int, list[int], list[int]], point: Point) -> int:
    """The last corner on the shortest way to a point; START when it is seen straight [count].

    found: the ways [ways].
    cut: the outline in pieces [pieces].
    funnel: of the piece that holds the point [funnel].
    point: in that piece [mm].
    """
    apex, lefts, rights = funnel
    for chain, side in ((lefts, 1.0), (rights, -1.0)):
        last = apex
        for corner in chain:
            if side * turn(found.place(last, cut), cut.points[corner], point) <= 0:
                break
            last = corner
        if last != apex:
            return last
    return apex


def split(found: Ways, cut: Pieces, piece: int, part: list[Corner]) -> list[tuple[list[Corner], int]]:
    """A part of a piece cut by the last corner of the shortest ways into it, each with that corner [parts].

    found: the ways [ways].
    cut: the outline in pieces [pieces].
    piece: its number [count].
    part: polygon in that piece [mm].
    """
    apex, lefts, rights = found.funnels[piece]
    parts, rest = [], part
    for chain, side in ((lefts, 1.0), (rights, -1.0)):
        beyond, last = rest, apex
        for corner in chain:
            one, two = found.place(last, cut), cut.points[corner]
            heights = [side * turn(one, two, point) for point in beyond]
            if max(heights) <= 0:
                break
            here = clip(beyond, heights, INNER) if min(heights) < 0 else []
            if last == apex:
                rest = here
            elif here:
                parts.append((here, last))
            beyond, last = clip(beyond, [-height for height in heights], INNER), corner
        if last != apex and beyond:
            parts.append((beyond, last))
        if not rest:
            return parts
    return [*parts, (rest, apex)]


# A side between two parts of the outline.
INNER = -1


def clip(part: list[Corner], heights: list[float], label: int) -> list[Corner]:
    """What of a polygon lies at or below 0 [mm].

    part: polygon [mm].
    heights: of its corners, taken as even in between [mm].
    label: of the new side [count].

    >>> clip([(0.0, 0.0, 5), (2.0, 0.0, 6), (2.0, 2.0, 7)], [-1.0, 1.0, 1.0], 9)
    [(0.0, 0.0, 5), (1.0, 0.0, 9), (1.0, 1.0, 7)]
    """
    kept = []
    for at, (x, y, side) in enumerate(part):
        height, after = heights[at], heights[at + 1 - len(part)]
        if height <= 0:
            kept.append((x, y, side))
        if (height < 0 < after) or (after < 0 < height):
            share, (far, high, _) = height / (height - after), part[at + 1 - len(part)]
            kept.append((x + share * (far - x), y + share * (high - y), label if height < 0 else side))
        elif height == 0 and after > 0:
            kept[-1] = (x, y, label)
    return kept if len(kept) > 2 else []
