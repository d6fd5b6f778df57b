"""Sections beside those of trimesh, whose cut pieces shapely makes into polygons."""

import math
import random

import blocks
import models
import numpy
import pytest
import shapely
import trimesh
from measured_models import run

from brimbook.mesh.cut import across
from brimbook.mesh.nesting import nested
from brimbook.mesh.rooms import rooms
from brimbook.mesh.sections import sections
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Triangles

FAMILIES = ("lathe", "turned lathe", "blocks", "turned blocks", "cored")
SEEDS = range(34)


def rotated(mesh, chance):
    """Turned by chance, and standing from 0 up again."""
    turn = numpy.linalg.qr(numpy.array([[chance.gauss(0, 1) for _ in range(3)] for _ in range(3)]))[0]
    turn *= numpy.sign(numpy.linalg.det(turn))
    corners = numpy.array(mesh.corners) @ turn.T
    return Triangles([tuple(map(float, corner)) for corner in corners - corners.min(axis=0)], mesh.first, mesh.second, mesh.third)


def lathe(chance):
    """A vessel of chance whose wall never meets itself."""
    heights = sorted(chance.uniform(5, 80) for _ in range(chance.randint(2, 9)))
    outer = [chance.uniform(20, 45) for _ in heights]
    inside = [(radius - chance.uniform(1, 9), height) for radius, height in zip(outer, heights)]
    top = (outer[-1] + 2, heights[-1] + 3)
    profile = [(0, 0), (outer[0], 0), *zip(outer, heights), top, (inside[-1][0], top[1]), *inside[::-1], (0, heights[0])]
    return models.lathe(profile, chance.choice((5, 12, 48, 96)))


def made(family, seed):
    chance = random.Random(f"{family} {seed}")
    if "lathe" in family:
        mesh = lathe(chance)
    elif "blocks" in family:
        mesh = blocks.solid(blocks.any_solid(seed), 10.0)
    else:
        mesh = models.joined(models.cup(facets=chance.choice((6, 40))), models.moved(models.cylinder(chance.uniform(3, 30), 60, 12), z=9.0))
    return rotated(mesh, chance) if "turned" in family else Triangles(
        [(x + 50, y + 50, z) for x, y, z in mesh.corners], mesh.first, mesh.second, mesh.third)


def reference(mesh, origin, normal, axes):
    """The section's solid area as shapely has it, from the pieces of line that trimesh cuts."""
    solid = trimesh.Trimesh(mesh.corners, models.triples(mesh), process=False)
    lines = trimesh.intersections.mesh_plane(solid, normal, origin)[:, :, axes]
    pieces = shapely.linestrings(numpy.round(lines, 9))
    pieces = pieces[shapely.length(pieces) > 0]
    faces = list(shapely.get_parts(shapely.polygonize(shapely.get_parts(shapely.node(shapely.multilinestrings(pieces))))))
    inside = [face for face in faces if _is_solid(face.representative_point(), lines)]
    return shapely.union_all(inside), float(numpy.linalg.norm(lines[:, 1] - lines[:, 0], axis=1).sum())


def _is_solid(place, lines):
    """Do an odd number of lines lie to the right?"""
    low, high = lines[:, 0], lines[:, 1]
    crossed = (low[:, 1] > place.y) != (high[:, 1] > place.y)
    low, high = low[crossed], high[crossed]
    return int((low[:, 0] + (place.y - low[:, 1]) / (high[:, 1] - low[:, 1]) * (high[:, 0] - low[:, 0]) > place.x).sum()) % 2 == 1


def own(polygons):
    """Our loops as shapely polygons: each outline with the holes that lie right in it."""
    places = nested(polygons)
    outlines = [number for number, place in enumerate(places) if not place.is_hole]
    assert all((place.depth % 2 == 1) == place.is_hole for place in places)
    return [shapely.Polygon(polygons[number], [polygons[hole] for hole, place in enumerate(places) if place.is_hole and place.parent == number])
            for number in outlines]


def agree(polygons, told, around):
    mine = own(polygons)
    assert all(shapely.is_valid(polygon) for polygon in mine)
    whole = shapely.union_all(mine)
    assert math.fsum(polygon.area for polygon in mine) == pytest.approx(told.area, rel=1e-7, abs=1e-6)
    assert math.fsum(polygon.length for polygon in mine) == pytest.approx(around, rel=1e-7)
    assert shapely.symmetric_difference(whole, told).area < 1e-6 * max(told.area, 1.0)


@pytest.mark.parametrize("family", FAMILIES)
@pytest.mark.parametrize("seed", SEEDS)
def test_level_sections_agree(family, seed):
    mesh = made(family, seed)
    slicer, top = Slicer(mesh), max(z for *_, z in mesh.corners)
    for share in (0.03141, 0.2718, 0.4567, 0.7071, 0.9713):
        told, around = reference(mesh, (0, 0, share * top), (0, 0, 1), [0, 1])
        agree([loop.points for loop in slicer.contours(share * top)], told, around)
    assert slicer.left_out == 0


@pytest.mark.parametrize("family", FAMILIES)
@pytest.mark.parametrize("seed", range(0, 34, 3))
def test_upright_sections_agree(family, seed):
    mesh = made(family, seed)
    behind = max(y for _, y, _ in mesh.corners)
    for share in (0.1234, 0.4987):
        told, around = reference(mesh, (0, share * behind, 0), (0, 1, 0), [0, 2])
        agree([loop.points for loop in across(mesh, share * behind)], told, around)


@pytest.mark.parametrize("family", FAMILIES)
@pytest.mark.parametrize("seed", range(0, 34, 2))
def test_simplified_sections_stay_valid_and_near(family, seed):
    mesh = made(family, seed)
    slicer, top = Slicer(mesh), max(z for *_, z in mesh.corners)
    found = run(rooms(mesh, slicer))
    for section in sections(mesh, slicer, found, [0.2718 * top, 0.7071 * top]):
        told, _ = reference(mesh, (0, 0, section.height), (0, 0, 1), [0, 1])
        drawn = [shapely.Polygon(polygon) for polygon in section.solid]
        assert all(shapely.is_valid(polygon) for polygon in drawn)
        mine = math.fsum(shapely.Polygon(polygon).area * (1 if shapely.LinearRing(polygon).is_ccw else -1) for polygon in section.solid)
        assert mine == pytest.approx(told.area, rel=1e-3, abs=1e-4 * top * top)
        for outline in section.rooms:
            room = shapely.Polygon(outline)
            assert shapely.is_valid(room) and (not outline or shapely.intersection(room, told).area < 2e-3 * max(room.area, told.area) + _cores(family, room, told))


def _cores(family, room, told):
    """What stands in a room lies within its outline."""
    return math.fsum(part.area for part in shapely.get_parts(told) if room.buffer(0.1).contains(part))
