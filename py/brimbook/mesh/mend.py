"""A mesh made closed for measuring: triangles that face the wrong way turned, gaps closed from their middles."""

import heapq
import math
from collections.abc import Sequence
from dataclasses import replace

from brimbook.mesh.edges import Edges
from brimbook.mesh.triangles import Corner, Triangles

# A gap that is as narrow as a crack: its area is a smaller share of the square of the way around it. A square's share is 1/16.
_CRACK = 0.004


def mended(mesh: Triangles, found: Edges) -> Triangles:
    """The mesh as it can be measured; what was turned is told in its notes, gaps are told by the edges [triangles].

    mesh: welded [triangles].
    found: what its edges tell [edges].

    A gap is closed by triangles between its edge and the middle of the edge's corners: flat where the edge is. A crack is
    closed from side to side.
    """
    if found.astray:
        mesh = _turned(mesh, found.astray)
    return _closed(mesh, found.loops) if found.loops else mesh


def _turned(mesh: Triangles, astray: tuple[int, ...]) -> Triangles:
    second, third = list(mesh.second), list(mesh.third)
    for number in astray:
        second[number], third[number] = third[number], second[number]
    note = ("1 triangle faced the wrong way; it was turned." if len(astray) == 1 else
            f"{len(astray):,} triangles faced the wrong way; they were turned.")
    return replace(mesh, second=second, third=third, notes=(*mesh.notes, note))


def _closed(mesh: Triangles, loops: tuple[tuple[int, ...], ...]) -> Triangles:
    corners, triangles = list(mesh.corners), []
    for loop in loops:
        if len(loop) > 3 and not _is_crack([corners[corner] for corner in loop]):
            middle = len(corners)
            corners.append(_middle([corners[corner] for corner in loop]))
            triangles += [(start, end, middle) for start, end in zip(loop, (*loop[1:], loop[0]))]
        elif len(loop) > 2:
            triangles += _across(corners, loop)
    return replace(mesh, corners=corners, first=[*mesh.first, *(triple[0] for triple in triangles)],
                   second=[*mesh.second, *(triple[1] for triple in triangles)], third=[*mesh.third, *(triple[2] for triple in triangles)])


def _middle(places: list[Corner]) -> Corner:
    return tuple(math.fsum(axis) / len(places) for axis in zip(*places))


def _is_crack(places: Sequence[Corner]) -> bool:
    following = [*places[1:], places[0]]
    area = math.hypot(*(math.fsum((one[a] - places[0][a]) * (other[b] - places[0][b]) - (one[b] - places[0][b]) * (other[a] - places[0][a])
                                  for one, other in zip(places, following)) / 2 for a, b in ((0, 1), (1, 2), (2, 0))))
    return area < _CRACK * math.fsum(map(math.dist, places, following)) ** 2


def _across(corners: Sequence[Corner], loop: Sequence[int]) -> list[tuple[int, int, int]]:
    """Triangles that close a crack: again and again the corner is cut off whose neighbors are nearest to each other."""
    count = len(loop)
    before, after = [count - 1, *range(count - 1)], [*range(1, count), 0]

    def entry(place: int) -> tuple[float, int, int, int]:
        return math.dist(corners[loop[before[place]]], corners[loop[after[place]]]), place, before[place], after[place]

    waiting, triangles = [entry(place) for place in range(count)], []
    heapq.heapify(waiting)
    while len(triangles) < count - 2:
        _, place, one, other = heapq.heappop(waiting)
        if (before[place], after[place]) != (one, other):
            continue
        triangles.append((loop[one], loop[place], loop[other]))
        before[other], after[one], before[place], after[place] = one, other, -1, -1
        heapq.heappush(waiting, entry(one))
        heapq.heappush(waiting, entry(other))
    return triangles
