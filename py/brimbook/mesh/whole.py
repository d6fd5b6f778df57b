"""A model's file, read and worked out from its triangles to its sections."""

import math
from collections.abc import Generator, Sequence
from dataclasses import dataclass, replace
from itertools import compress
from typing import TypeVar

from brimbook.mesh import bodies, cut, edges, levels, mend, read, rooms, stand, units, volumes, walls, weld
from brimbook.mesh.areas import areas
from brimbook.mesh.draft import draft
from brimbook.mesh.edges import Edges
from brimbook.mesh.filling import wetted
from brimbook.mesh.lean import lean
from brimbook.mesh.model import Gap, Level, Model, Section
from brimbook.mesh.rooms import Found
from brimbook.mesh.sections import sections
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import ModelError, Progress, Triangles

Answer = TypeVar("Answer")
# A model that stands on its head is turned by itself only for a room of such a share of its box: less is a recess in its foot.
_ROOM = 0.05
# What encloses less than this share of its box is a sheet.
_SHEET = 1e-7
# Sections are taken at these shares of a room's depth, or of the height of a model without one; the whole is just below the brim.
_SHARES = (0.0, 0.03, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0)
_MOST_SECTIONS, _AT_ONCE = 16, 4
_ON_ITS_HEAD = "In the file the opening points down; the model was turned so that it points up."
_LEANS = "Its flat bottom leans by {}°, so that its rooms run over sooner. Turn it upright in the drawing."
_SEVERAL = "A room that several bodies enclose together is found only if they are joined in the drawing."
_SHEETS = "This model encloses nothing: its surfaces have no thickness. Save it as a solid."
# A surface with more open edges than this share of its triangles, and more than so many, is no surface but loose pieces.
_LOOSE, _MANY = 0.5, 1_000
_EMPTY = "There are no triangles in this file. Save the model as a mesh."


@dataclass(frozen=True)
class _Standing:
    """A closed mesh that stands, what cuts it, and its rooms."""

    up: str
    mesh: Triangles
    slicer: Slicer
    found: tuple[Found, ...]


def model(name: str, data: bytes | memoryview, up: str = "") -> Generator[Progress, None, Model]:
    """What an STL, 3MF or OBJ file tells of a vessel [progress, then model].

    name: of the file [text].
    data: the file [bytes].
    up: the axis of the file that points up; where it is empty +z, or -z where only so there is a room [one of UPS, or empty].

    Raises ModelError with a sentence for the maker where the file can't be used.
    """
    most = 0.0
    work = _model(name, data, up)
    while True:
        try:
            share, doing = next(work)
        except StopIteration as done:
            return done.value
        most = max(most, share)
        yield most, doing


def _model(name: str, data: bytes | memoryview, up: str) -> Generator[Progress, None, Model]:
    mesh = yield from _part(read.triangles(name, data), 0.0, 0.2)
    del data
    if not len(mesh.first):
        raise ModelError(_EMPTY)
    mesh = yield from _part(weld.welded(stand.stood(mesh, up or "+z")), 0.2, 0.35)
    if not len(mesh.first):
        raise ModelError(_SHEETS)
    count, found_edges = len(mesh.first), (yield from _part(edges.check(mesh), 0.35, 0.45))
    _check_pieces(found_edges.open_edges, count)
    told = yield from _part(bodies.bodies(mend.mended(mesh, found_edges)), 0.45, 0.55)
    # Corners that only loose triangles had are gone.
    mesh = stand.stood(told.mesh, "+z")
    told = replace(told, mesh=mesh)
    size = volumes.size(mesh)
    if not min(size) > 0 or not volumes.volume(mesh) > _SHEET * size[0] * size[1] * size[2]:
        raise ModelError(_SHEETS)
    standing = yield from _part(_standing(mesh, up), 0.55, 0.75)
    del mesh
    if standing.up != (up or "+z"):
        found_edges = replace(found_edges, gaps=_on_head(found_edges.gaps, size))
    solid = yield from _part(levels.solid_levels(standing.mesh), 0.75, 0.85)
    sizes = areas(standing.mesh)
    yield 0.85, "Adding up the surface"
    standing = _wetted(standing, sizes)
    thinnest = yield from _part(walls.thinnest(standing.mesh, [walls.Inside(room.triangles, room.spill) for room in standing.found], sizes),
                                0.85, 0.95)
    cuts = yield from _part(_sections(standing), 0.95, 0.98)
    yield 0.98, "Measuring drafts"
    return (yield from _put_together(standing, found_edges, told, count, math.fsum(sizes), solid, thinnest, cuts))


def _check_pieces(open_edges: int, triangles: int) -> None:
    if open_edges > max(_LOOSE * triangles, _MANY):
        raise ModelError(f"The surface of this model is in pieces: {open_edges:,} edges belong to one triangle only. "
                         "Repair the mesh where it was drawn, or save it as a solid.")


def _part(work: Generator[Progress, None, Answer], low: float, high: float) -> Generator[Progress, None, Answer]:
    """A part of the work, its shares told as shares of the whole."""
    while True:
        try:
            share, doing = next(work)
        except StopIteration as done:
            return done.value
        yield low + share * (high - low), doing


def _standing(mesh: Triangles, up: str) -> Generator[Progress, None, _Standing]:
    """The mesh the way it stands: as told, else with a room that opens upward if it has one either way."""
    slicer = Slicer(mesh)
    found = yield from rooms.rooms(mesh, slicer)
    if up or found:
        return _Standing(up or "+z", mesh, slicer, found)
    turned = stand.stood(mesh, "-z")
    head = Slicer(turned)
    below = yield from rooms.rooms(turned, head)
    wide, deep, high = volumes.size(mesh)
    if not below or below[0].room.levels[-1].volume < _ROOM * wide * deep * high:
        return _Standing("+z", mesh, slicer, found)
    return _Standing("-z", replace(turned, notes=(*turned.notes, _ON_ITS_HEAD)), head, below)


def _wetted(standing: _Standing, sizes: Sequence[float]) -> _Standing:
    """With the surface of each room."""
    return replace(standing, found=tuple(
        replace(room, room=replace(room.room, surface=wetted(standing.slicer, room.triangles, sizes, room.spill))) for room in standing.found))


def _sections(standing: _Standing) -> Generator[Progress, None, tuple[Section, ...]]:
    heights = _heights(max(height for _, _, height in standing.mesh.corners), standing.found)
    cuts: tuple[Section, ...] = ()
    for start in range(0, len(heights), _AT_ONCE):
        yield start / len(heights), "Cutting sections"
        cuts += sections(standing.mesh, standing.slicer, standing.found, heights[start:start + _AT_ONCE])
    return cuts


def _on_head(gaps: Sequence[Gap], size: Sequence[float]) -> tuple[Gap, ...]:
    return tuple(Gap(gap.left, size[1] - gap.front, size[2] - gap.height, gap.around) for gap in gaps)


def _put_together(standing: _Standing, found_edges: Edges, told: bodies.Bodies, count: int, surface: float,
                  solid: tuple[Level, ...], thinnest: tuple[float, float] | None,
                  cuts: tuple[Section, ...]) -> Generator[Progress, None, Model]:
    mesh, slicer, found = standing.mesh, standing.slicer, standing.found
    size = volumes.size(mesh)
    inner = [number for room in found for number in room.triangles]
    outer = _outer(told, inner)
    drafts = draft(mesh, outer, False), draft(mesh, inner, True)
    yield 0.99, "Cutting it upright"
    return Model(
        up=standing.up, unit=units.short(mesh.unit), size=size, triangles=count, bodies=told.count, hollows=told.hollows,
        surface=surface, solid=solid, rooms=tuple(room.room for room in found), open_edges=found_edges.open_edges,
        gaps=found_edges.gaps, turned=found_edges.turned + found_edges.crowded, crossing=told.crossing or slicer.doubled, thinnest=thinnest,
        outer=drafts[0], inner=drafts[1], sections=cuts, cut=cut.upright(mesh, found[0].middle[1] if found else size[1] / 2),
        notes=tuple(dict.fromkeys((*mesh.notes, *slicer.notes, *_doubts(standing, told, outer)))))


def _doubts(standing: _Standing, told: bodies.Bodies, outer: Sequence[int]) -> list[str]:
    """What makes rooms smaller than meant, or hides them."""
    leans = lean(standing.mesh, outer) if standing.found else 0.0
    several = told.crossing or standing.slicer.doubled or (told.meeting and not standing.found)
    return ([_LEANS.format(leans)] if leans else []) + ([_SEVERAL] if several else [])


def _outer(told: bodies.Bodies, inner: Sequence[int]) -> list[int]:
    """Triangles of the outside: neither a room's nor a hollow's."""
    solid = [volume >= 0 for volume in told.volumes]
    outside = bytearray(map(solid.__getitem__, told.of))
    for number in inner:
        outside[number] = 0
    return list(compress(range(len(outside)), outside))


def _heights(high: float, found: Sequence[Found]) -> list[float]:
    """Where to cut: through the largest room at even shares of its depth, below the brims, under its floor and over its brim."""
    if not found:
        return [share * high or high * 0.001 for share in _SHARES]
    floor, brim = found[0].room.levels[0].height, found[0].spill
    near = (brim - floor) * 0.001
    heights = [max(floor + share * (brim - floor), floor + near) for share in _SHARES]
    heights += [room.spill for room in found[1:]]
    heights += [height for height in (high, floor / 2) if height > near and not floor <= height <= brim]
    return sorted(set(heights[:_MOST_SECTIONS]))
