"""Files as makers bring them: what is read is right, or a note tells what may be wrong."""

import math

import blocks
import models
import pytest
from measured_models import flipped, loose, rotated, run

from brimbook.mesh import whole
from brimbook.mesh.triangles import Triangles

SHARE = math.pi * models.facet_share(48)
CUP = models.cup()
ROOM, SOLID = SHARE * 40**2 * 72, SHARE * (45**2 * 80 - 40**2 * 72)
DRAINED = models.lathe([(5, 0), (45, 0), (45, 80), (40, 80), (40, 8), (5, 8)])
SEVERAL = "A room that several bodies enclose together is found only if they are joined in the drawing."


def read(mesh):
    return run(whole.model("vessel.stl", models.as_stl(mesh)))


def held(found):
    return [room.levels[-1].volume for room in found.rooms]


def warped(mesh, way):
    return Triangles([way(*corner) for corner in mesh.corners], mesh.first, mesh.second, mesh.third)


def test_a_wavy_rim_runs_over_at_its_lowest():
    found = read(warped(models.cup(facets=96), lambda x, y, z: (x, y, z + (3 * math.sin(4 * math.atan2(y, x)) if z > 70 else 0))))
    assert found.rooms[0].levels[-1].height == pytest.approx(77)
    assert held(found) == pytest.approx([math.pi * models.facet_share(96) * 40**2 * 69], rel=1e-4)


@pytest.mark.parametrize("cut", ["outside", "floor", "wall"])
def test_engraving_changes_what_it_changes(cut):
    place = {"outside": lambda i, k: (4 + 4 * i, 0, 4 + 3 * k), "floor": lambda i, k: (4 + 4 * i, 4 + 4 * k, 2),
             "wall": lambda i, k: (4 + 4 * i, 2, 4 + 3 * k)}[cut]
    filled = blocks.cubes(38, 38, 28) - blocks.cubes(32, 32, 25, (3, 3, 3))
    for i in range(8):
        for k in range(6):
            filled -= blocks.cubes(2, 2, 1, place(i, k)) if cut == "floor" else blocks.cubes(2, 1, 2, place(i, k))
    letters = 0 if cut == "outside" else 192
    found = read(blocks.solid(filled, 2.0))
    assert held(found) == pytest.approx([8 * (32 * 32 * 25 + letters)], rel=1e-6)
    assert found.thinnest[0] == pytest.approx(4.0, rel=0.01)


def test_a_handle_of_its_own_that_runs_into_the_room_lets_nothing_out():
    """An arch whose ends stick through the wall: above the one end the room would seem to run over into the other."""
    arch = warped(models.lathe([(20, -4), (28, -4), (28, 4), (20, 4)], 24), lambda x, y, z: (57 + x, z, 42 + y))
    found = read(models.joined(CUP, models.moved(arch, x=-2.0)))
    assert held(found) == pytest.approx([ROOM], rel=0.01) and found.rooms[0].levels[-1].height == 80
    assert found.crossing and SEVERAL in found.notes


@pytest.mark.parametrize(("more", "rooms"), [
    (models.moved(models.lathe([(0, 0), (35, 0), (35, 6), (45, 6), (45, 10), (0, 10)]), 100), [ROOM]),
    (models.moved(models.cylinder(45, 5), z=80), [ROOM]),
    (models.moved(models.lathe([(0, 0), (35, 0), (35, 6), (45, 6), (45, 10), (0, 10)]), z=74), [ROOM - SHARE * 35**2 * 6]),
    (models.moved(CUP, 100), [ROOM, ROOM]), (models.moved(CUP, z=80), [ROOM, ROOM])],
    ids=["lid beside it", "lid on it", "lid in it", "another cup", "stacked"])
def test_lids_and_more_cups(more, rooms):
    assert held(read(models.joined(CUP, more))) == pytest.approx(rooms, rel=1e-6)


def test_a_drain_that_a_plug_closes():
    assert held(read(DRAINED)) == []
    found = read(models.joined(DRAINED, models.cylinder(5, 8)))
    assert held(found) == pytest.approx([ROOM], rel=1e-6) and found.solid[-1].volume == pytest.approx(SOLID, rel=1e-6)


@pytest.mark.parametrize("plug", [models.moved(models.cylinder(6, 6), z=1), models.moved(models.cylinder(5, 14), z=-3), models.cylinder(4.9, 8)],
                         ids=["thicker", "longer", "loose"])
def test_a_plug_that_does_not_fit_is_told(plug):
    found = read(models.joined(DRAINED, plug))
    assert held(found) == [] and SEVERAL in found.notes


def test_a_wall_on_a_plate_is_told():
    ring = models.moved(models.lathe([(40, 0), (45, 0), (45, 80), (40, 80)]), z=10)
    found = read(models.joined(ring, models.cylinder(60, 10)))
    assert held(found) == [] and SEVERAL in found.notes


def test_a_body_in_a_body_that_share_a_corner_is_told():
    found = read(models.joined(models.cylinder(45, 80), models.moved(models.cylinder(40, 72), z=8)))
    assert found.crossing and SEVERAL in found.notes


def test_an_inner_surface_of_its_own():
    found = read(models.joined(models.cylinder(45, 80), models.turned_over(models.moved(models.cylinder(40, 72), z=8))))
    assert found.solid[-1].volume == pytest.approx(SOLID, rel=1e-6) and held(found) == pytest.approx([ROOM], rel=1e-6)


def test_a_double_wall():
    hollow = models.turned_over(models.lathe([(43, 12), (47, 12), (47, 76), (43, 76)]))
    found = read(models.joined(models.lathe([(0, 0), (50, 0), (50, 80), (40, 80), (40, 10), (0, 10)]), hollow))
    assert held(found) == pytest.approx([SHARE * 40**2 * 70], rel=1e-6) and found.hollows == 1
    assert found.thinnest[0] == pytest.approx(3.0, rel=0.01)


def shaken(mesh, by):
    """Each triangle with corners of its own, all a little beside."""
    apart = loose(mesh)
    return Triangles([tuple(value + by * math.sin(12.9898 * place + 78.233 * axis) for axis, value in enumerate(corner))
                      for place, corner in enumerate(apart.corners)], apart.first, apart.second, apart.third)


@pytest.mark.parametrize("by", [1e-6, 1e-4, 1e-3])
def test_corners_that_are_off_a_little_are_joined(by):
    found = read(shaken(CUP, by))
    assert held(found) == pytest.approx([ROOM], rel=1e-3) and found.solid[-1].volume == pytest.approx(SOLID, rel=1e-3)
    assert found.open_edges == 0 and any("were joined" in note for note in found.notes)


def cracked(by):
    """A cup whose first and last facet don't meet: their corners lie a little apart."""
    corners, first = list(CUP.corners), {}
    for number, (x, y, z) in enumerate(CUP.corners):
        if y == 0 and x > 0:
            first[number] = len(corners)
            corners.append((x + by, y + by, z - by / 2))
    ahead = [triple for triple in models.triples(CUP) if all(0 <= CUP.corners[number][1] < 0.2 * abs(CUP.corners[number][0]) + 1e-9 for number in triple)]
    return models.made(corners, [tuple(first.get(number, number) for number in triple) if triple in ahead else triple for triple in models.triples(CUP)])


@pytest.mark.parametrize("by", [0.001, 0.02, 0.2])
def test_a_crack_down_the_side_is_no_wall_across_the_room(by):
    found = read(cracked(by))
    assert held(found) == pytest.approx([ROOM], rel=0.005) and found.solid[-1].volume == pytest.approx(SOLID, rel=0.005)
    assert found.open_edges or any("were joined" in note for note in found.notes)


def halved(mesh, share):
    """Edges halved on one of their sides only, as in meshes made coarser here and there."""
    corners, triangles = list(mesh.corners), []
    for number, (a, b, c) in enumerate(models.triples(mesh)):
        if number % 2:
            triangles.append((a, b, c))
            continue
        middle = len(corners)
        corners.append(tuple(share * x + (1 - share) * y for x, y in zip(corners[a], corners[b])))
        triangles += [(a, middle, c), (middle, b, c)]
    return models.made(corners, triangles)


@pytest.mark.parametrize("share", [0.5, 0.37])
def test_edges_halved_on_one_side(share):
    found = read(halved(CUP, share))
    assert held(found) == pytest.approx([ROOM], rel=1e-4) and found.solid[-1].volume == pytest.approx(SOLID, rel=1e-4)


def test_a_few_triangles_turned():
    found = read(flipped(CUP, {3, 50, 77, 200, 300}))
    assert found.turned == 5 and held(found) == pytest.approx([ROOM], rel=1e-6)


@pytest.mark.parametrize("by", [1e-6, 1e-3, 1e3, 1e4])
def test_any_scale(by):
    found = read(models.moved(CUP, by=by))
    assert held(found) == pytest.approx([ROOM * by**3], rel=1e-6) and found.thinnest[0] == pytest.approx(4.9893 * by, rel=1e-3)


@pytest.mark.parametrize("far", [1e3, 1e5])
def test_far_from_the_origin(far):
    found = read(models.moved(CUP, far, far, far))
    assert held(found) == pytest.approx([ROOM], rel=1e-3) and found.solid[-1].volume == pytest.approx(SOLID, rel=1e-3)


def test_a_cup_that_leans_is_told():
    found = read(rotated(CUP, math.radians(3), 0, 0))
    assert held(found)[0] < 0.98 * ROOM and any("leans by 3.0°" in note for note in found.notes)
    assert read(CUP).notes == ()


def test_the_surface_of_a_room():
    found = read(CUP)
    assert found.rooms[0].surface == pytest.approx(SHARE * 40**2 + 48 * 2 * 40 * math.sin(math.pi / 48) * 72, rel=1e-6)
    notched = blocks.cubes(6, 6, 6) - blocks.cubes(4, 4, 5, (1, 1, 1)) - blocks.cubes(1, 1, 2, (5, 2, 4))
    assert read(blocks.solid(notched, 9.0)).rooms[0].surface == pytest.approx(81 * (16 + 4 * 4 * 3), rel=1e-6)


def test_a_wall_of_hardly_any_thickness():
    found = read(models.lathe([(0, 0), (45, 0), (45, 80), (44.999, 80), (44.999, 0.001), (0, 0.001)]))
    assert found.thinnest[0] == pytest.approx(0.001, rel=0.05)


def test_a_thick_mold_of_many_small_faces_has_its_floor():
    found = read(blocks.solid(blocks.cubes(20, 20, 16) - blocks.cubes(12, 12, 14, (4, 4, 2)), 5.0))
    assert found.thinnest == pytest.approx((10.0, 5.0))
