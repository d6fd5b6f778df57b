"""Faces at which bodies touch: the same triangles on both sides, or the same four corners parted the other way. Without them the bodies are one."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import compress

from brimbook.mesh.triangles import Corner, Triangles

_Triple = tuple[int, int, int]
# Four corners lie in a plane where they enclose no more than this share of the cube of their longest side.
_PLANE = 1e-4
_MOST_AT_EDGE = 4


def without_touching(mesh: Triangles) -> Triangles:
    """A mesh without the faces at which bodies touch, told in its notes; the mesh itself where there are none [triangles].

    mesh: of shared corners, no triangle twice [triangles].

    >>> ends = Triangles([(0, 0, 0), (1, 0, 0), (0, 1, 0), (0, 0, 1)], [0, 0, 1], [1, 2, 2], [2, 1, 3])
    >>> list(without_touching(ends).first)
    [1]
    """
    triples = list(zip(mesh.first, mesh.second, mesh.third))
    numbers = {_turned(triple): number for number, triple in enumerate(triples)}
    gone = bytearray(len(triples))
    for (a, b, c), number in numbers.items():
        if (a, c, b) in numbers:
            gone[number] = 1
    for number in _squares(mesh.corners, {number: triples[number] for number in _crowded(triples, gone)}):
        gone[number] = 1
    count = sum(gone)
    if not count:
        return mesh
    keep = [not flag for flag in gone]
    note = f"{count:,} triangles lie face to face where bodies touch; there the bodies are taken as one."
    return replace(mesh, first=list(compress(mesh.first, keep)), second=list(compress(mesh.second, keep)),
                   third=list(compress(mesh.third, keep)), notes=(*mesh.notes, note))


def _turned(triple: _Triple) -> _Triple:
    """The same triangle, beginning at its least corner."""
    a, b, c = triple
    return (a, b, c) if a < b and a < c else (b, c, a) if b < c else (c, a, b)


def _sides(triple: _Triple) -> tuple[tuple[int, int], ...]:
    a, b, c = triple
    return (a, b), (b, c), (c, a)


def _crowded(triples: Sequence[_Triple], gone: bytearray) -> list[int]:
    """Triangles that are left at edges which are run through twice in one direction."""
    uses = Counter(side for number, triple in enumerate(triples) if not gone[number] for side in _sides(triple))
    crowded = {frozenset(side) for side, times in uses.items() if times > 1}
    if not crowded:
        return []
    return [number for number, triple in enumerate(triples) if not gone[number] and any(frozenset(side) in crowded for side in _sides(triple))]


def _squares(corners: Sequence[Corner], triples: dict[int, _Triple]) -> Iterable[int]:
    """Two triangles each on two sides of the same four corners, parted along different diagonals: all four of them."""
    at: dict[tuple[int, int], list[int]] = {}
    for number, triple in triples.items():
        for side in _sides(triple):
            at.setdefault(side, []).append(number)
    pairs: dict[frozenset, list[tuple[int, int]]] = {}
    for (start, end), numbers in at.items():
        # Where more bodies than two or three meet at one edge, triangles alone are compared.
        if start < end and len(numbers) <= _MOST_AT_EDGE:
            for one in numbers:
                for other in at.get((end, start), ())[:_MOST_AT_EDGE]:
                    pairs.setdefault(frozenset((*triples[one], *triples[other])), []).append((one, other))
    for four, found in pairs.items():
        for place, pair in enumerate(found):
            for other in found[place + 1:]:
                if len({*pair, *other}) == 4 and _is_closed([triples[number] for number in (*pair, *other)]) and _is_flat([corners[each] for each in four]):
                    yield from (*pair, *other)


def _is_closed(triples: Sequence[_Triple]) -> bool:
    sides = {side for triple in triples for side in _sides(triple)}
    return len(sides) == 12 and all((end, start) in sides for start, end in sides)


def _is_flat(corners: Sequence[Corner]) -> bool:
    (a, b, c), *others = corners
    (d, e, f), (g, h, i), (j, k, m) = ((x - a, y - b, z - c) for x, y, z in others)
    longest = max(abs(value) for value in (d, e, f, g, h, i, j, k, m))
    return abs(d * (h * m - i * k) - e * (g * m - i * j) + f * (g * k - h * j)) <= _PLANE * longest ** 3
