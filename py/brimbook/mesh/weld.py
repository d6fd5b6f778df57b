"""Corners and triangles made one: repeated corners, triangles without an area, triangles twice over, and cracks."""

from collections.abc import Generator, Iterator, Sequence
from dataclasses import replace
from itertools import chain, compress, product
from operator import eq

from brimbook.mesh.edges import Welded, check, directed, is_closed
from brimbook.mesh.touching import without_touching
from brimbook.mesh.triangles import Progress, Triangles
from brimbook.mesh.volumes import size

# Corners nearer than this share of the largest side are one corner where the surface is open between them.
# Common practice, no source.
_NEAR = 1e-4
_DOING = "Joining corners"


def welded(mesh: Triangles) -> Generator[Progress, None, Welded]:
    """A mesh whose triangles share their corners; what was left out or joined is told in its notes [progress, then triangles].

    mesh: as read [triangles].

    Equal corners are one. Triangles with two equal corners, repeated ones and those at which bodies touch are left out. Only where edges stay open
    are corners joined that all but touch.
    """
    yield 0.0, _DOING
    mesh = _used(_without_flat(_same_corners(mesh)))
    yield 0.3, _DOING
    mesh, runs = yield from _once(mesh)
    if not len(mesh.first) or (yield from is_closed(mesh, runs)):
        return _as_welded(mesh, bool(len(mesh.first)))
    del runs
    found = yield from check(mesh)
    joined = _joined(mesh, set(chain.from_iterable(found.loops)))
    if joined is mesh:
        return _as_welded(mesh, False)
    mesh, runs = yield from _once(_used(_without_flat(joined, tell=False)))
    return _as_welded(mesh, (yield from is_closed(mesh, runs)))


def _as_welded(mesh: Triangles, closed: bool) -> Welded:
    return Welded(mesh.corners, mesh.first, mesh.second, mesh.third, mesh.unit, mesh.notes, closed)


def _same_corners(mesh: Triangles) -> Triangles:
    single = dict.fromkeys(mesh.corners)
    if len(single) == len(mesh.corners):
        return mesh
    single.update(zip(single, range(len(single))))
    return _renumbered(mesh, list(single), list(map(single.__getitem__, mesh.corners)))


def _renumbered(mesh: Triangles, corners: list, numbers: Sequence[int]) -> Triangles:
    get = numbers.__getitem__
    return replace(mesh, corners=corners, first=list(map(get, mesh.first)), second=list(map(get, mesh.second)),
                   third=list(map(get, mesh.third)))


def _without_flat(mesh: Triangles, tell: bool = True) -> Triangles:
    """Leave out triangles with two equal corners."""
    sides = ((mesh.first, mesh.second), (mesh.second, mesh.third), (mesh.third, mesh.first))
    if not any(any(map(eq, one, other)) for one, other in sides):
        return mesh
    keep = [a != b != c != a for a, b, c in zip(mesh.first, mesh.second, mesh.third)]
    return _kept(mesh, keep, "{} without an area was left out.", "{} without an area were left out.") if tell else _kept(mesh, keep)


def _kept(mesh: Triangles, keep: Sequence[bool], one: str = "", many: str = "") -> Triangles:
    out = len(keep) - sum(keep)
    note = (one.format("1 triangle") if out == 1 else many.format(f"{out:,} triangles"),) if one else ()
    return replace(mesh, first=list(compress(mesh.first, keep)), second=list(compress(mesh.second, keep)),
                   third=list(compress(mesh.third, keep)), notes=(*mesh.notes, *note))


def _used(mesh: Triangles) -> Triangles:
    """Leave out corners that no triangle uses, so that they count in no size."""
    used = bytearray(len(mesh.corners))
    for number in set().union(mesh.first, mesh.second, mesh.third):
        used[number] = 1
    if 0 not in used:
        return mesh
    numbers = list(_counted(used))
    return _renumbered(mesh, list(compress(mesh.corners, used)), numbers)


def _counted(used: bytearray) -> Iterator[int]:
    count = 0
    for flag in used:
        yield count
        count += flag


def _once(mesh: Triangles) -> Generator[Progress, None, tuple[Triangles, set[int]]]:
    """Leave out triangles that are there twice, and those at which bodies touch; and the edges with their directions."""
    runs = yield from directed(mesh)
    if len(runs) == 3 * len(mesh.first):
        return mesh, runs
    seen, keep = set(), []
    for a, b, c in zip(mesh.first, mesh.second, mesh.third):
        turned = (a, b, c) if a < b and a < c else (b, c, a) if b < c else (c, a, b)
        keep.append(turned not in seen)
        seen.add(turned)
    yield 0.6, _DOING
    single = mesh if all(keep) else _kept(mesh, keep, "{} was there twice; one was left out.", "{} were there twice; they count once.")
    apart = without_touching(single)
    if apart is mesh:
        return mesh, runs
    apart = _used(apart)
    return apart, (yield from directed(apart))


def _joined(mesh: Triangles, loose: set[int]) -> Triangles:
    """Join corners along open edges that are nearer than the limit; the mesh itself where there are none."""
    limit = _NEAR * max(size(mesh))
    numbers = list(range(len(mesh.corners)))
    cells: dict[tuple[int, int, int], list[int]] = {}
    for corner in sorted(loose):
        place = mesh.corners[corner]
        cell = tuple(int(value // limit) for value in place)
        near = _nearest(mesh, place, limit, cells, cell)
        if near is None:
            cells.setdefault(cell, []).append(corner)
        else:
            numbers[corner] = near
    if all(map(eq, numbers, range(len(numbers)))):
        return mesh
    joined = _renumbered(mesh, mesh.corners, numbers)
    return replace(joined, notes=(*mesh.notes, "Corners nearer to each other than 1/10,000 of the largest side were joined."))


def _nearest(mesh: Triangles, place: tuple[float, float, float], limit: float, cells: dict, cell: tuple[int, ...]) -> int | None:
    """The corner among those placed so far that is nearest, if nearer than the limit."""
    found = []
    for step in product((-1, 0, 1), repeat=3):
        for other in cells.get((cell[0] + step[0], cell[1] + step[1], cell[2] + step[2]), ()):
            a, b, c = mesh.corners[other]
            a, b, c = a - place[0], b - place[1], c - place[2]
            far = a * a + b * b + c * c
            if far < limit * limit:
                found.append((far, other))
    return min(found)[1] if found else None
