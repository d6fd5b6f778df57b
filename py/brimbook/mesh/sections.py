"""Level sections of a model and of its rooms, fit for drawings."""

from collections.abc import Sequence

from brimbook.mesh.cut import drawn
from brimbook.mesh.joining import Loop
from brimbook.mesh.model import Polygon, Section
from brimbook.mesh.nesting import area
from brimbook.mesh.rooms import Found
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Triangles

MOST_CORNERS = 48
_OPEN = "Where the surface has holes, parts of sections are left out."


def sections(mesh: Triangles, slicer: Slicer, found: Sequence[Found], heights: Sequence[float]) -> tuple[Section, ...]:
    """Sections at some heights, just below level faces there, from bottom to top [sections].

    mesh: that stands [mesh].
    slicer: of this mesh [mesh].
    found: its rooms [rooms].
    heights: above the model's bottom [unit of the file].
    """
    insides = [_inside(mesh, room) for room in found]
    cuts = tuple(_section(slicer.contours(height), insides, height) for height in sorted(heights))
    slicer.notes += [_OPEN] if slicer.left_out else []
    return cuts


def _inside(mesh: Triangles, room: Found) -> bytearray:
    """For each triangle, does it belong to the room's surface?"""
    inside = bytearray(len(mesh.first))
    for number in room.triangles:
        inside[number] = 1
    return inside


def _section(loops: Sequence[Loop], insides: Sequence[bytearray], height: float) -> Section:
    solid = drawn([loop.points for loop in loops], MOST_CORNERS)
    return Section(height, solid, tuple(_outline(loops, inside) for inside in insides))


def _outline(loops: Sequence[Loop], inside: bytearray) -> Polygon:
    """A room's outline: the largest hole whose wall is the room's, counterclockwise; empty where there is none."""
    holes = [loop.points for loop in loops if inside[loop.triangles[0]]]
    hole = min(holes, key=area, default=())
    return drawn([hole[::-1]], MOST_CORNERS)[0] if hole and area(hole) < 0 else ()
