"""Files read from end to end: what is told of vessels whose sizes are known, and of files that are broken."""

import dataclasses
import math
import random

import pytest

from brimbook.mesh import curve, digest, whole
from brimbook.mesh.model import Model
from brimbook.mesh.triangles import ModelError
from tests.core.helpers import models
from tests.core.helpers.lathe_parts import run

CUP = models.cup(outer=45.0, height=80.0, wall=5.0, floor=8.0, lean=6.0)
FACETS = models.facet_share(48)


def read(mesh, up=""):
    return run(whole.model("vessel.stl", models.as_stl(mesh), up))[0]


def frustum(low, high, tall):
    return FACETS * math.pi * tall * (low * low + low * high + high * high) / 3


def test_a_cup():
    found = read(CUP)
    low = 40 - 6 * 72 / 80
    room = frustum(low, 40, 72)
    assert (found.up, found.unit, found.triangles, found.bodies, found.hollows, found.open_edges, found.turned, found.crossing) == (
        "+z", "", len(CUP.first), 1, 0, 0, 0, False)
    assert found.size == pytest.approx((90, 90, 80), rel=1e-6)
    assert found.solid[-1].volume == pytest.approx(frustum(39, 45, 80) - room, rel=1e-6)
    assert len(found.rooms) == 1 and found.rooms[0].levels[-1].volume == pytest.approx(room, rel=1e-6)
    assert curve.volume_at(found.rooms[0].levels, 44) == pytest.approx(frustum(low, (low + 40) / 2, 36), rel=1e-5)
    assert found.thinnest[0] == pytest.approx(5 * math.cos(math.atan(6 / 80)), rel=0.005)
    assert found.outer.least == pytest.approx(math.degrees(math.atan(6 / 80)), abs=0.02)
    assert found.inner.least == pytest.approx(math.degrees(math.atan(6 / 80)), abs=0.02)
    assert found.outer.overhanging == found.inner.overhanging == 0


def test_its_sections_go_from_the_floor_to_the_brim():
    found = read(CUP)
    heights = [section.height for section in found.sections]
    assert 12 <= len(heights) <= 16 and heights == sorted(heights)
    assert heights[-1] == pytest.approx(80) and min(heights) < 8
    inside = [section.rooms[0] for section in found.sections]
    assert inside[0] == () and all(len(outline) >= 24 for outline in inside[1:])
    assert found.cut


def test_progress_rises_to_the_end():
    _, shares = run(whole.model("vessel.stl", models.as_stl(CUP)))
    assert shares == sorted(shares) and shares[0] < 0.05 and shares[-1] > 0.9


@pytest.mark.parametrize("way", ["+z", "-z", "+y", "-y", "+x", "-x"])
def test_whichever_way_it_lies_it_stands_as_told(way):
    found = read(models.standing(CUP, way), way)
    assert found.up == way and found.rooms[0].levels[-1].volume == pytest.approx(read(CUP).rooms[0].levels[-1].volume, rel=1e-5)


def test_a_cup_on_its_head_is_turned_and_that_is_told():
    found = read(models.standing(CUP, "-z"))
    assert found.up == "-z" and len(found.rooms) == 1 and any("turned" in note for note in found.notes)
    told = read(models.standing(CUP, "-z"), "+z")
    assert told.up == "+z" and told.rooms == () and told.thinnest is None and told.inner is None


def test_a_recess_in_the_foot_does_not_turn_a_piece():
    plug = models.lathe([(0, 3), (20, 3), (20, 0), (40, 0), (40, 70), (0, 70)])
    found = read(plug)
    assert found.up == "+z" and found.rooms == () and found.notes == ()


def test_gaps_of_a_model_on_its_head_are_told_where_they_are():
    mesh = models.standing(models.joined(CUP, models.box(20, 20, 20, (100, 0, 60))), "-z")
    lid = [number for number in range(len(mesh.first)) if number >= len(CUP.first)][:1]
    keep = [number for number in range(len(mesh.first)) if number not in lid]
    broken = models.made(mesh.corners, [models.triples(mesh)[number] for number in keep])
    found, straight = read(broken), read(broken, "-z")
    assert found.up == "-z" and found.open_edges == 3
    assert dataclasses.astuple(found.gaps[0]) == pytest.approx(dataclasses.astuple(straight.gaps[0]), abs=1e-4)


def test_a_hollow_is_no_room_and_no_outside():
    found = read(models.joined(models.cylinder(), models.turned_over(models.moved(models.sphere(20), 0, 0, 35))))
    assert (found.hollows, found.rooms) == (1, ()) and found.outer.upright == 1.0


def test_inside_out_is_turned_and_told():
    found = read(models.turned_over(CUP))
    assert found.solid[-1].volume == pytest.approx(read(CUP).solid[-1].volume, rel=1e-6) and any("inside out" in note for note in found.notes)


@pytest.mark.parametrize("mesh", [
    models.made([(0, 0, 0), (10, 0, 0), (0, 10, 0)], [(0, 1, 2)]),
    models.made([(0, 0, 0), (10, 0, 0), (0, 10, 0), (10, 10, 0)], [(0, 1, 2), (2, 1, 3), (0, 2, 1), (2, 3, 1)]),
    models.made([(0, 0, 0), (10, 0, 0), (20, 0, 0)], [(0, 1, 2)]),
    models.made([(5, 5, 5)], [(0, 0, 0)])], ids=["one triangle", "a sheet twice", "a line", "a point"])
def test_what_encloses_nothing_is_refused(mesh):
    with pytest.raises(ModelError, match="Save"):
        read(mesh)


def test_a_wrong_way_up_is_refused():
    with pytest.raises(ModelError):
        read(CUP, "up")


def test_texts_of_what_was_read_give_the_same_volumes():
    found = read(CUP)
    again = digest.model(digest.reading(found), digest.sections(found))
    assert again.rooms[0].levels[-1].volume == pytest.approx(found.rooms[0].levels[-1].volume, rel=1e-6)
    assert len(again.sections) == len(found.sections)


def test_loose_triangles_are_refused():
    chance = random.Random(3)
    corners = [tuple(chance.uniform(0, 100) for _ in range(3)) for _ in range(3000)]
    with pytest.raises(ModelError, match="in pieces: 3,000 edges"):
        read(models.made(corners, [(first, first + 1, first + 2) for first in range(0, 3000, 3)]))


# Meshes that went wrong somewhere.

def mutated(mesh, chance):
    """The mesh with a few corners moved, triangles dropped, turned over, doubled or led elsewhere."""
    corners, triangles = list(mesh.corners), models.triples(mesh)
    for _ in range(chance.randrange(1, 8)):
        place, kind = chance.randrange(len(triangles)), chance.randrange(7)
        if kind == 0:
            corner = list(corners[chance.randrange(len(corners))])
            corner[chance.randrange(3)] = chance.choice((0.0, -0.0, 1e-30, 999_999.0, -50.0, chance.uniform(-100, 100)))
            corners[chance.randrange(len(corners))] = tuple(corner)
        elif kind == 1:
            del triangles[place:place + chance.randrange(1, 40)]
        elif kind == 2:
            triangles[place] = triangles[place][::-1]
        elif kind == 3:
            triangles += triangles[place:place + chance.randrange(1, 20)]
        elif kind == 4:
            triangles[place] = tuple(chance.randrange(len(corners)) for _ in range(3))
        elif kind == 5:
            corners = [tuple(round(value / 10) * 10 for value in corner) for corner in corners]
        else:
            chance.shuffle(triangles)
        triangles = triangles or [(0, 1, 2)]
    return models.made(corners, triangles)


SOUND = [CUP, models.box(), models.sphere(facets=16, rings=8), models.joined(models.cup(facets=12), models.box(20, 20, 20, (30, 0, 10))),
         models.joined(models.box(100, 60, 50), models.turned_over(models.box(40, 40, 45, (8, 10, 9))), models.box(5, 5, 80, (20, 20, 3)))]


@pytest.mark.parametrize("seed", range(100))
def test_a_broken_mesh_is_read_or_refused_with_a_sentence(seed):
    chance = random.Random(seed)
    try:
        found = read(mutated(SOUND[seed % len(SOUND)], chance), chance.choice(("", "", "+z", "-z", "+y", "-x")))
    except ModelError as error:
        assert len(str(error)) > 20 and str(error).endswith(".")
        return
    assert isinstance(found, Model)
    assert_sound(found)
    again = digest.model(digest.reading(found), digest.sections(found))
    assert again.solid[-1].volume == pytest.approx(found.solid[-1].volume, rel=1e-5)


def assert_sound(found):
    for levels in (found.solid, *(room.levels for room in found.rooms)):
        assert all(math.isfinite(value) for level in levels for value in dataclasses.astuple(level))
        assert all(low.height <= high.height and low.volume <= high.volume for low, high in zip(levels, levels[1:]))
    assert math.isfinite(found.surface) and found.solid[-1].volume > 0
    assert found.thinnest is None or 0 < found.thinnest[0] < max(found.size)
