"""Sections of models and of their rooms."""

import math

import blocks
import models
import pytest
from measured_models import run

from brimbook.mesh.curve import area_at
from brimbook.mesh.nesting import area
from brimbook.mesh.rooms import rooms
from brimbook.mesh.sections import sections
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Triangles


def cut(mesh, heights):
    slicer = Slicer(mesh)
    found = run(rooms(mesh, slicer))
    return sections(mesh, slicer, found, heights), found, slicer


def test_a_cup_at_several_heights():
    made, _, _ = cut(models.cup(facets=300), [80.0, 4.0, 40.0])
    assert [section.height for section in made] == [4.0, 40.0, 80.0]
    share = math.pi * models.facet_share(300)
    low, middle, brim = made
    assert [area(polygon) for polygon in low.solid] == pytest.approx([45**2 * share]) and low.rooms == ((),)
    for section in (middle, brim):
        assert [area(polygon) for polygon in section.solid] == pytest.approx([45**2 * share, -(40**2) * share])
        assert area(section.rooms[0]) == pytest.approx(40**2 * share)
        assert all(len(polygon) <= 48 for polygon in (*section.solid, *section.rooms))


def test_each_room_has_its_own_outline():
    mesh = blocks.solid(blocks.cubes(9, 5, 6) - blocks.cubes(4, 3, 5, (1, 1, 1)) - blocks.cubes(2, 3, 4, (6, 1, 2)))
    (low, high), found, _ = cut(mesh, [1.5, 5.5])
    assert [area(outline) if outline else 0 for outline in low.rooms] == [12.0, 0]
    assert [area(outline) for outline in high.rooms] == [12.0, 6.0] == pytest.approx([area_at(room.room.levels, 5.5) for room in found])


def test_above_a_divider_a_room_has_no_outline():
    mesh = blocks.solid(blocks.cubes(9, 5, 8) - blocks.cubes(7, 3, 7, (1, 1, 1)) | blocks.cubes(1, 3, 6, (4, 1, 1)))
    (below, above), _, _ = cut(mesh, [6.5, 7.5])
    assert [area(outline) for outline in below.rooms] == [9.0, 9.0]
    assert above.rooms == ((), ())


def test_holes_in_the_surface_are_told():
    mesh = models.cup()
    gone = set(Slicer(mesh).contours(40.0)[0].triangles[:60])
    kept = [number for number in range(len(mesh.first)) if number not in gone]
    torn = Triangles(mesh.corners, *([numbers[number] for number in kept] for numbers in (mesh.first, mesh.second, mesh.third)))
    _, _, slicer = cut(torn, [40.0])
    assert slicer.notes == ["Where the surface has holes, parts of sections are left out."]
    assert cut(mesh, [40.0])[2].notes == []
