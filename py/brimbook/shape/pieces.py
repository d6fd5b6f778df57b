"""An outline cut into pieces that nowhere bend inward."""

from dataclasses import dataclass
from functools import lru_cache

from brimbook.shape.flatten import turn
from brimbook.shape.outline import Outline, Point, is_convex
from brimbook.shape.prism import triangles

# A corner of a piece that turns inward by less than this is even [mm²].
_EVEN = 1e-12


@dataclass(frozen=True)
class Pieces:
    """Pieces of an outline, each as its corners by number, counterclockwise.

    beside tells for each side of each piece, from one corner to the next, the piece beyond it; none for the wall.
    """

    points: tuple[Point, ...]
    corners: tuple[tuple[int, ...], ...]
    beside: tuple[tuple[int | None, ...], ...]


@lru_cache(maxsize=16)
def pieces(outline: Outline) -> Pieces:
    """An outline cut along lines from corner to corner [pieces].

    outline: any [outline].

    >>> len(pieces(Outline(((0, 0), (80, 0), (80, 40), (40, 40), (40, 80), (0, 80)))).corners)
    2
    """
    points = outline.points
    if is_convex(outline):
        whole = tuple(range(len(points)))
        return Pieces(points, (whole,), ((None,) * len(whole),))
    cut = _merged(points, [tuple(three) for three in triangles(points)])
    owner = {side: place for place, piece in enumerate(cut) for side in _sides(piece)}
    return Pieces(points, tuple(cut), tuple(tuple(owner.get((two, one)) for one, two in _sides(piece)) for piece in cut))


def _sides(piece: tuple[int, ...]) -> list[tuple[int, int]]:
    return list(zip(piece, (*piece[1:], piece[0])))


def _merged(points: tuple[Point, ...], cut: list[tuple[int, ...]]) -> list[tuple[int, ...]]:
    """Triangles joined along their sides as long as what comes out bends nowhere inward."""
    owner = {side: piece for piece in cut for side in _sides(piece)}
    for one, two in list(owner):
        if one > two or (two, one) not in owner:
            continue
        left, right = owner[one, two], owner[two, one]
        joined = _from(left, two)[:-1] + _from(right, one)[:-1]
        place, other = joined.index(one), joined.index(two)
        if all(turn(points[joined[at - 1]], points[joined[at]], points[joined[(at + 1) % len(joined)]]) >= _EVEN
               for at in (place, other)):
            del owner[one, two], owner[two, one]
            owner.update((side, joined) for side in _sides(joined))
    return list(dict.fromkeys(owner.values()))


def _from(piece: tuple[int, ...], corner: int) -> tuple[int, ...]:
    """A piece told from one of its corners on."""
    at = piece.index(corner)
    return piece[at:] + piece[:at]
