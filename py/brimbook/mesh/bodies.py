"""Bodies of a mesh: which triangles hang together, which enclose a hollow, and which were drawn inside out."""

import math
from collections.abc import Generator, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import chain, compress
from operator import mul, ne

from brimbook.mesh.inside import is_crossed, windings
from brimbook.mesh.triangles import Corner, ModelError, Progress, Triangles
from brimbook.mesh.volumes import means, shadows

# A vessel, its mold and their parts are fewer.
MOST_BODIES = 1_000
_DOING = "Telling its bodies apart"
# Bounds of the work: bodies that are compared, the largest first; points of each, and of all; looks at triangles and sides.
_COMPARED = 400
_POINTS = 16
_FEWEST_POINTS = 3
_ALL_POINTS = 1200
_LOOKS = 400_000
# So far inside its surface lies a point that stands for a body, as a share of the body's size.
_INSIDE = 1e-6


@dataclass(frozen=True)
class Bodies:
    """Bodies, the largest first.

    mesh: with all bodies facing outward, and hollows inward. of: the body of each triangle. volumes: what each encloses,
    below 0 for a hollow. count: bodies that are no hollows. inside_out: bodies that were turned. crossing: do some overlap?
    meeting: are there bodies beside or inside others, so near that they may touch?
    """

    mesh: Triangles
    of: Sequence[int]
    volumes: tuple[float, ...]
    count: int
    hollows: int
    inside_out: int
    crossing: bool
    meeting: bool = False


Box = tuple[Corner, Corner]


@dataclass(frozen=True)
class _Body:
    """One surface: its triangles' numbers, its corners' bounds, and points just inside."""

    triangles: Sequence[int]
    box: Box
    points: tuple[Corner, ...]


def bodies(mesh: Triangles) -> Generator[Progress, None, Bodies]:
    """Which triangles hang together, turned to face outward [progress, then bodies].

    mesh: welded, its triangles facing the same side as their neighbors [triangles].

    Bodies that share a corner are one. Raises ModelError, a sentence, where they are too many.
    """
    yield 0.0, _DOING
    labels = yield from _labels(mesh)
    count = len(set(labels))
    if count > MOST_BODIES:
        raise ModelError(f"There are {count:,} separate bodies in this file; up to {MOST_BODIES:,} are read. Save the vessel by itself.")
    heights, areas = means(mesh), shadows(mesh)
    yield 0.7, _DOING
    middle = (max(heights, default=0.0) + min(heights, default=0.0)) / 2
    parts = list(map(mul, areas, [height - middle for height in heights]))
    if count < 2:
        whole = math.fsum(parts)
        return Bodies(_turned(mesh, mesh.first, 1) if whole < 0 else mesh, bytes(len(mesh.first)), (abs(whole),),
                      int(len(mesh.first) > 0), 0, int(whole < 0), False)
    members: dict[int, list[int]] = {}
    for number, label in enumerate(labels):
        members.setdefault(label, []).append(number)
    enclosed = {label: math.fsum(map(parts.__getitem__, numbers)) for label, numbers in members.items()}
    order = sorted(members, key=lambda label: (-abs(enclosed[label]), label))
    yield 0.8, _DOING
    return (yield from _sorted_out(mesh, [members[label] for label in order], [enclosed[label] for label in order]))


def _labels(mesh: Triangles) -> Generator[Progress, None, list[int]]:
    """For each triangle a number that all triangles which hang together share.

    All corners at once: each is led to a lower neighbor, ways are followed to their ends, and sides whose two corners have
    come together are dropped, until none is left.
    """
    label = list(range(len(mesh.corners)))
    ones, others = [*mesh.first, *mesh.first], [*mesh.second, *mesh.third]
    while ones:
        onward = list(range(len(label)))
        for high, low in zip(map(max, ones, others), map(min, ones, others)):
            onward[high] = low
        yield 0.2, _DOING
        while (further := list(map(onward.__getitem__, onward))) != onward:
            onward = further
        label = list(map(onward.__getitem__, label))
        ones, others = list(map(onward.__getitem__, ones)), list(map(onward.__getitem__, others))
        apart = list(map(ne, ones, others))
        ones, others = list(compress(ones, apart)), list(compress(others, apart))
        yield 0.5, _DOING
    return list(map(label.__getitem__, mesh.first))


def _sorted_out(mesh: Triangles, members: list[list[int]], enclosed: list[float]) -> Generator[Progress, None, Bodies]:
    """Hollows, bodies to turn and bodies that overlap, among several."""
    count = max(_FEWEST_POINTS, min(_POINTS, _ALL_POINTS // len(members)))
    compared = [_body(mesh, numbers, volume, count) for numbers, volume in zip(members[:_COMPARED], enclosed)]
    around: list[dict[int, float]] = [{} for _ in compared]
    meeting = False
    for outer, body in enumerate(compared):
        inner = [number for number, other in enumerate(compared) if number != outer and _overlap(body.box, other.box)]
        if inner:
            meeting = True
            for number, share in _shares_inside(mesh, body, [(number, compared[number]) for number in inner]):
                around[number][outer] = share
        yield 0.8 + 0.2 * (outer + 1) / len(compared), _DOING
    ways, crossing = [1 if volume >= 0 else -1 for volume in enclosed], any(0 < share < 1 for held in around for share in held.values())
    turned: set[int] = set()
    # From outside to inside: a surface inside others is a hollow or a body by what lies around it.
    for number in sorted(range(len(compared)), key=lambda each: (len(around[each]), each)):
        holders = [outer for outer, share in around[number].items() if share == 1]
        outermost = next((outer for outer in holders if not around[outer]), None)
        if (not holders and ways[number] < 0) or (outermost in turned):
            turned.add(number)
            ways[number] = -ways[number]
        depth = sum(ways[outer] for outer in holders)
        if ways[number] < 0 and depth < 1:
            turned ^= {number}
            ways[number] = 1
        crossing = crossing or (ways[number] > 0 and depth > 0)
    rest = {number for number in range(len(compared), len(members)) if ways[number] < 0}
    for number in rest:
        ways[number] = 1
    turned |= rest
    crossing = crossing or _some_cross(mesh, compared, around)
    of = [0] * len(mesh.first)
    for number, triangles in enumerate(members):
        for triangle in triangles:
            of[triangle] = number
    hollows = sum(way < 0 for way in ways)
    facing = _turned(mesh, set(chain.from_iterable(members[number] for number in turned)), len(turned), len(members)) if turned else mesh
    return Bodies(facing, of, tuple(way * abs(volume) for way, volume in zip(ways, enclosed)), len(members) - hollows, hollows,
                  len(turned), crossing, meeting)


def _turned(mesh: Triangles, which: Sequence[int] | set[int], count: int, of: int = 1) -> Triangles:
    note = ("The drawing was inside out; it was turned." if count == of else
            "1 of its bodies was inside out; it was turned." if count == 1 else f"{count:,} of its bodies were inside out; they were turned.")
    if count == of:
        return replace(mesh, second=mesh.third, third=mesh.second, notes=(*mesh.notes, note))
    second, third = list(mesh.second), list(mesh.third)
    for number in which:
        second[number], third[number] = third[number], second[number]
    return replace(mesh, second=second, third=third, notes=(*mesh.notes, note))


def _body(mesh: Triangles, numbers: list[int], volume: float, count: int) -> _Body:
    used = [mesh.corners[corner] for corner in set(chain.from_iterable(_corners(mesh, numbers)))]
    low, high = tuple(map(min, zip(*used))), tuple(map(max, zip(*used)))
    step = _INSIDE * math.dist(low, high) * (1 if volume >= 0 else -1)
    picked = [numbers[place * len(numbers) // count] for place in range(count)]
    return _Body(numbers, (low, high), tuple(_just_inside(triple, step) for triple in _triples(mesh, picked)))


def _just_inside(triple: tuple[Corner, Corner, Corner], step: float) -> Corner:
    """A point in the middle of a triangle, a little behind it."""
    (a, b, c), (d, e, f), (g, h, i) = triple
    normal = ((e - b) * (i - c) - (f - c) * (h - b), (f - c) * (g - a) - (d - a) * (i - c), (d - a) * (h - b) - (e - b) * (g - a))
    long = math.hypot(*normal) or 1.0
    return (a + d + g) / 3 - step * normal[0] / long, (b + e + h) / 3 - step * normal[1] / long, (c + f + i) / 3 - step * normal[2] / long


def _corners(mesh: Triangles, numbers: Sequence[int]) -> Iterator[tuple[int, int, int]]:
    return zip(map(mesh.first.__getitem__, numbers), map(mesh.second.__getitem__, numbers), map(mesh.third.__getitem__, numbers))


def _triples(mesh: Triangles, numbers: Sequence[int]) -> Iterator[tuple[Corner, Corner, Corner]]:
    get = mesh.corners.__getitem__
    return ((get(a), get(b), get(c)) for a, b, c in _corners(mesh, numbers))


def _overlap(one: Box, other: Box) -> bool:
    return all(low <= upper and lower <= high for low, high, lower, upper in zip(*one, *other))


def _shares_inside(mesh: Triangles, body: _Body, others: list[tuple[int, _Body]]) -> Iterator[tuple[int, float]]:
    """Which of the others lie inside a body, and what share of their points does."""
    points = [point for _, other in others for point in other.points if _overlap(body.box, (point, point))]
    inside = dict(zip(points, windings(points, _triples(mesh, body.triangles)))) if points else {}
    for number, other in others:
        share = sum(inside.get(point, 0) != 0 for point in other.points) / len(other.points)
        if share:
            yield number, share


def _some_cross(mesh: Triangles, compared: list[_Body], around: list[dict[int, float]]) -> bool:
    """Do sides of one body run through triangles of another? Only as far as the work is bounded."""
    left = _LOOKS
    for number, one in enumerate(compared):
        for other_number, other in enumerate(compared):
            if number == other_number or other_number in around[number] or not _overlap(one.box, other.box):
                continue
            if len(one.triangles) + len(other.triangles) > left:
                continue
            near, faced = _within(mesh, one, other.box), _within(mesh, other, one.box)
            left -= len(one.triangles) + len(other.triangles)
            if 3 * len(near) * len(faced) > left:
                continue
            left -= 3 * len(near) * len(faced)
            if is_crossed([(triple[place], triple[place - 1]) for triple in near for place in range(3)], faced):
                return True
    return False


def _within(mesh: Triangles, body: _Body, box: Box) -> list[tuple[Corner, Corner, Corner]]:
    return [triple for triple in _triples(mesh, body.triangles)
            if _overlap(box, (tuple(map(min, *triple)), tuple(map(max, *triple))))]
