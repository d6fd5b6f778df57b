"""Edges of a mesh: is it closed, do all triangles face the same side, and where are gaps?

In a closed mesh whose triangles all face outward each edge is run through once in each direction. An edge is a whole number
here: the number of its first corner by the number of corners, and the number of its second one.
"""

import math
from collections import Counter
from collections.abc import Generator, Iterator, Sequence
from dataclasses import dataclass
from operator import add

from brimbook.mesh.model import Gap
from brimbook.mesh.triangles import Progress, Triangles
from brimbook.mesh.volumes import bounds

_AT_ONCE = 50_000
_TOLD = 8
_DOING = "Checking that the surface is closed"


@dataclass(frozen=True)
class Welded(Triangles):
    """A mesh whose corners are joined: closed tells that each edge was found once in each direction."""

    closed: bool = False


@dataclass(frozen=True)
class Edges:
    """What the edges tell.

    open_edges: of one triangle only. gaps: the largest first, at most 8. turned: triangles that face the wrong way beside
    their neighbors, fewer than half of a surface; astray: their numbers. crowded: edges of more than two triangles as many
    of which run one way as the other don't, or that stay twisted whichever way triangles face; edges where bodies touch
    are neither. loops: corners around each gap, in the direction in which triangles that close it would run.
    """

    open_edges: int = 0
    gaps: tuple[Gap, ...] = ()
    turned: int = 0
    crowded: int = 0
    astray: tuple[int, ...] = ()
    loops: tuple[tuple[int, ...], ...] = ()


def check(mesh: Triangles) -> Generator[Progress, None, Edges]:
    """Open edges, gaps, and triangles that face the wrong way [progress, then edges].

    mesh: welded, with its bounding box from 0, 0, 0 [triangles].
    """
    if isinstance(mesh, Welded) and mesh.closed:
        return Edges()
    runs = yield from directed(mesh)
    if len(runs) < 3 * len(mesh.first):
        return (yield from _by_triangle(mesh))
    corners = len(mesh.corners)
    lone = [run for run in runs if run % corners * corners + run // corners not in runs]
    return _told(mesh, [divmod(run, corners) for run in lone])


def directed(mesh: Triangles) -> Generator[Progress, None, set[int]]:
    """All edges with their directions: fewer than three for each triangle where some are run through twice [progress, then edges].

    mesh: any triangles [triangles].
    """
    found: set[int] = set()
    for share, starts, ends in _runs(mesh):
        found.update(map(add, starts, ends))
        yield share / 2, _DOING
    return found


def is_closed(mesh: Triangles, runs: set[int]) -> Generator[Progress, None, bool]:
    """Is each edge run through once in each direction? [progress, then true or false].

    mesh: any triangles [triangles].
    runs: its edges with their directions [edges].
    """
    if len(runs) < 3 * len(mesh.first):
        return False
    for share, starts, ends in _runs(mesh, back=True):
        if not all(map(runs.__contains__, map(add, starts, ends))):
            return False
        yield 0.5 + share / 2, _DOING
    return True


def _runs(mesh: Triangles, back: bool = False) -> Iterator[tuple[float, Iterator[int], Sequence[int]]]:
    """Edges in pieces: the share that is done with this piece, the numbers' first parts, and their second parts."""
    whole = len(mesh.first)
    row = list(range(0, len(mesh.corners) ** 2, len(mesh.corners) or 1))
    for side, (one, other) in enumerate(((mesh.first, mesh.second), (mesh.second, mesh.third), (mesh.third, mesh.first))):
        starts, ends = (other, one) if back else (one, other)
        for begin in range(0, whole, _AT_ONCE):
            end = min(begin + _AT_ONCE, whole)
            yield (side * whole + end) / (3 * whole), map(row.__getitem__, starts[begin:end]), ends[begin:end]


def _by_triangle(mesh: Triangles) -> Generator[Progress, None, Edges]:
    """The slow way, where some edges are run through twice: which triangles are astray, which edges too many share."""
    corners = len(mesh.corners)
    uses: Counter[int] = Counter()
    for share, starts, ends in _both_ways(mesh):
        uses.update([start * corners + end if start < end else end * corners + start for start, end in zip(starts, ends)])
        yield share / 3, _DOING
    crowd = {edge for edge, times in uses.items() if times > 2}
    lone = {edge for edge, times in uses.items() if times == 1}
    del uses
    astray, twisted = yield from _astray(mesh, crowd)
    open_runs, tally = [], Counter()
    for number, (a, b, c) in enumerate(zip(mesh.first, mesh.second, mesh.third)):
        for start, end in ((a, b), (b, c), (c, a)):
            way = start < end
            edge = start * corners + end if way else end * corners + start
            if edge in lone:
                open_runs.append((end, start) if number in astray else (start, end))
            elif edge in crowd:
                tally[edge] += 1 if way != (number in astray) else -1
    yield 1.0, _DOING
    return _told(mesh, open_runs, astray, twisted + sum(balance != 0 for balance in tally.values()))


def _both_ways(mesh: Triangles) -> Iterator[tuple[float, Sequence[int], Sequence[int]]]:
    whole = len(mesh.first)
    for side, (starts, ends) in enumerate(((mesh.first, mesh.second), (mesh.second, mesh.third), (mesh.third, mesh.first))):
        for begin in range(0, whole, _AT_ONCE):
            end = min(begin + _AT_ONCE, whole)
            yield (side * whole + end) / (3 * whole), starts[begin:end], ends[begin:end]


def _astray(mesh: Triangles, crowd: set[int]) -> Generator[Progress, None, tuple[set[int], int]]:
    """Triangles to turn so that neighbors agree, the fewer of each surface, and how many edges can't be brought to agree."""
    corners, whole = len(mesh.corners), len(mesh.first)
    leader, flip, waiting, twisted = list(range(whole)), bytearray(whole), {}, 0
    for number, (a, b, c) in enumerate(zip(mesh.first, mesh.second, mesh.third)):
        for start, end in ((a, b), (b, c), (c, a)):
            way = start < end
            edge = start * corners + end if way else end * corners + start
            if edge in crowd:
                continue
            before = waiting.pop(edge, None)
            if before is None:
                waiting[edge] = number, way
            else:
                twisted += not _agreed(leader, flip, before[0], number, before[1] == way)
        if number % _AT_ONCE == 0:
            yield 1 / 3 + number / whole / 3, _DOING
    sides = [_led(leader, flip, number) for number in range(whole)]
    counts = Counter(sides)
    return {number for number, (led, turned) in enumerate(sides)
            if (counts[led, turned], -turned) < (counts[led, 1 - turned], turned - 1)}, twisted


def _led(leader: list[int], flip: bytearray, number: int) -> tuple[int, int]:
    """The leader of a triangle's surface, and does the triangle face the other way than it? Ways are made short."""
    path = []
    while leader[number] != number:
        path.append(number)
        number = leader[number]
    turned = 0
    for step in reversed(path):
        turned ^= flip[step]
        leader[step], flip[step] = number, turned
    return number, turned


def _agreed(leader: list[int], flip: bytearray, one: int, other: int, against: bool) -> bool:
    """Join two neighbors' surfaces; false where they are one already and disagree."""
    (first, first_turned), (second, second_turned) = _led(leader, flip, one), _led(leader, flip, other)
    if first == second:
        return first_turned ^ second_turned == against
    low, high = min(first, second), max(first, second)
    leader[high], flip[high] = low, first_turned ^ second_turned ^ against
    return True


def _told(mesh: Triangles, open_runs: list[tuple[int, int]], astray: set[int] = frozenset(), crowded: int = 0) -> Edges:
    loops = [(loop, *_around(mesh, loop)) for loop in _walked(open_runs)]
    loops.sort(key=lambda found: -found[2])
    low = bounds(mesh)[0] if loops else ()
    gaps = tuple(Gap(*(value - least for value, least in zip(middle, low)), around) for _, middle, around in loops[:_TOLD])
    return Edges(len(open_runs), gaps, len(astray), crowded, tuple(sorted(astray)), tuple(tuple(loop) for loop, _, _ in loops))


def _walked(runs: list[tuple[int, int]]) -> list[list[int]]:
    """Rounds along open edges, against their direction; a way that comes back to a corner is cut off there as a round."""
    onward: dict[int, list[int]] = {}
    for start, end in sorted(runs, reverse=True):
        onward.setdefault(end, []).append(start)
    rounds = []
    for begin in list(onward):
        while onward[begin]:
            way, places, here = [begin], {begin: 0}, begin
            while onward.get(here):
                here = onward[here].pop()
                if here in places:
                    cut = places[here]
                    rounds.append(way[cut:])
                    for corner in way[cut + 1:]:
                        del places[corner]
                    del way[cut + 1:]
                else:
                    places[here] = len(way)
                    way.append(here)
            if len(way) > 1:
                rounds.append(way)
    return rounds


def _around(mesh: Triangles, loop: list[int]) -> tuple[tuple[float, ...], float]:
    """The middle of a gap's edge, and how far around it is."""
    places = [mesh.corners[corner] for corner in loop]
    sides = list(map(math.dist, places, [*places[1:], places[0]]))
    around = math.fsum(sides)
    weights = [side + before for side, before in zip(sides, [sides[-1], *sides[:-1]])]
    return tuple(math.fsum(weight * place[axis] for weight, place in zip(weights, places)) / (2 * around or 1) for axis in range(3)), around
