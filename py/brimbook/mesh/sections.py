"""Level sections of a model and of its rooms, fit for drawings."""

from collections.abc import Sequence

from brimbook.mesh.cut import drawn, drawn_each
from brimbook.mesh.joining import Loop
from brimbook.mesh.model import Polygon, Section
from brimbook.mesh.nesting import area, nested
from brimbook.mesh.rooms import Found
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Triangles

MOST_CORNERS = 48
# Of more loops only the longest are asked whether they are solid inside something solid.
_MOST_NESTED = 24
_OPEN = "Where the surface has holes, parts of sections are left out."


def sections(mesh: Triangles, slicer: Slicer, found: Sequence[Found], heights: Sequence[float]) -> tuple[Section, ...]:
    """Sections at some heights, just below level faces there, from bottom to top; the slicer learns what they show [sections].

    mesh: that stands [mesh].
    slicer: of this mesh [mesh].
    found: its rooms [rooms].
    heights: above the model's bottom [unit of the file].
    """
    insides = [_inside(mesh, room) for room in found]
    cuts = []
    for height in sorted(heights):
        loops = slicer.contours(height)
        slicer.doubled = slicer.doubled or _is_doubled(loops)
        cuts.append(_section(loops, insides, height))
    slicer.notes += [_OPEN] if slicer.left_out else []
    return tuple(cuts)


def _is_doubled(loops: Sequence[Loop]) -> bool:
    """Is something solid inside something solid, all of it or a part?"""
    if len(loops) == 1:
        return False
    longest = sorted((loop.points for loop in loops), key=len, reverse=True)[:_MOST_NESTED]
    places = nested(longest)
    return any(not place.is_hole and (place.is_crossed or place.parent is not None and not places[place.parent].is_hole) for place in places)


def _inside(mesh: Triangles, room: Found) -> bytearray:
    """For each triangle, does it belong to the room's surface?"""
    inside = bytearray(len(mesh.first))
    for number in room.triangles:
        inside[number] = 1
    return inside


def _section(loops: Sequence[Loop], insides: Sequence[bytearray], height: float) -> Section:
    solid = drawn_each([loop.points for loop in loops], MOST_CORNERS)
    return Section(height, tuple(solid.values()), tuple(_outline(loops, inside, solid) for inside in insides))


def _outline(loops: Sequence[Loop], inside: bytearray, solid: dict[int, Polygon]) -> Polygon:
    """A room's outline: the largest hole whose wall is the room's, counterclockwise; empty where there is none."""
    areas = {number: area(loop.points) for number, loop in enumerate(loops) if inside[loop.triangles[0]]}
    hole = min(areas, key=areas.__getitem__, default=0)
    if areas.get(hole, 0.0) >= 0:
        return ()
    return (solid[hole] if hole in solid else drawn([loops[hole].points], MOST_CORNERS)[0])[::-1]
