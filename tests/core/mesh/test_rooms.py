"""Rooms: what is one, how much it holds up to each height, and where it runs over."""

import math
import random

import blocks
import models
import pytest
from measured_models import run

from brimbook.mesh.curve import area_at, volume_at
from brimbook.mesh.filling import standing
from brimbook.mesh.rooms import Found, centroid, rooms
from brimbook.mesh.slices import Slicer
from brimbook.mesh.triangles import Triangles


def found(mesh) -> tuple[Found, ...]:
    return run(rooms(mesh, Slicer(mesh)))


def notes(mesh) -> list[str]:
    slicer = Slicer(mesh)
    run(rooms(mesh, slicer))
    return slicer.notes


def held(room: Found) -> float:
    return room.room.levels[-1].volume


def turned(mesh, degrees):
    """Leaning to the right."""
    sine, cosine = math.sin(math.radians(degrees)), math.cos(math.radians(degrees))
    return Triangles([(x * cosine + z * sine, y, z * cosine - x * sine) for x, y, z in mesh.corners], mesh.first, mesh.second, mesh.third)


SHARE = math.pi * models.facet_share(48)


@pytest.mark.parametrize(("outer", "height", "wall", "floor", "lean"), [(45, 80, 5, 8, 0), (45, 80, 5, 8, 15), (30, 120, 2, 3, 9), (60, 25, 12, 1, 0)])
def test_cups_hold_what_their_frustum_does(outer, height, wall, floor, lean):
    (room,) = found(models.cup(outer, height, wall, floor, lean))
    top = outer - wall
    low = top - lean * (height - floor) / height
    for share in (0.0, 0.1, 0.5, 0.93, 1.0):
        radius = low + share * (top - low)
        volume = SHARE * share * (height - floor) / 3 * (low * low + low * radius + radius * radius)
        assert volume_at(room.room.levels, floor + share * (height - floor)) == pytest.approx(volume, rel=1e-9, abs=1e-6)
    assert (room.room.levels[0].height, room.spill) == (floor, height)
    assert area_at(room.room.levels, height) == pytest.approx(SHARE * top * top)


def bowl(radius=40.0, deep=30.0, floor=6.0, rings=200, facets=256):
    """A block with a sphere's cap taken out of its top."""
    around = (radius * radius + deep * deep) / (2 * deep)
    angles = [math.asin(radius / around) * ring / rings for ring in range(rings, -1, -1)]
    cap = [(around * math.sin(angle), floor + around - around * math.cos(angle)) for angle in angles]
    return models.lathe([(0, 0), (50, 0), (50, floor + deep), *cap], facets)


def test_a_bowl_holds_a_spheres_cap():
    (room,) = found(bowl())
    around = (40.0**2 + 30.0**2) / 60
    for depth in (3.0, 12.0, 30.0):
        cap = math.pi * depth * depth * (around - depth / 3) * models.facet_share(256)
        assert volume_at(room.room.levels, 6.0 + depth) == pytest.approx(cap, rel=2e-3, abs=3e-5 * held(room))
    assert held(room) == pytest.approx(math.pi * 900 * (around - 10) * models.facet_share(256), rel=5e-5)


def test_a_tilted_rim_runs_over_at_its_lowest_corner():
    """A round room, its rim sloping: full up to the lowest corner of the rim's inner edge."""
    cup = models.cup(facets=96)
    mesh = Triangles([(x, y, z - 0.2 * x if z == 80 else z) for x, y, z in cup.corners], cup.first, cup.second, cup.third)
    (room,) = found(mesh)
    assert room.spill == 80 - 0.2 * 40
    assert held(room) == pytest.approx(math.pi * 40**2 * models.facet_share(96) * (72 - 8), rel=1e-9)


def test_a_notch_lets_it_run_over():
    filled = blocks.cubes(6, 6, 6) - blocks.cubes(4, 4, 5, (1, 1, 1)) - blocks.cubes(1, 1, 2, (5, 2, 4))
    (room,) = found(blocks.solid(filled))
    assert (room.spill, held(room)) == (4.0, pytest.approx(48.0))


def test_a_tilted_cup_holds_less():
    (room,) = found(turned(models.cup(), 10))
    assert room.spill == pytest.approx(80 * math.cos(math.radians(10)) - 40 * math.sin(math.radians(10)))
    assert 0.8 * SHARE * 40**2 * 72 < held(room) < SHARE * 40**2 * 72


@pytest.mark.parametrize("mesh", [
    models.box(), models.sphere(), models.cylinder(), models.standing(models.cup(), "-z"),
    models.lathe([(20, 0), (30, 0), (30, 50), (20, 50)]),
    models.joined(models.box(60, 60, 60), models.turned_over(models.box(20, 20, 20, (20, 20, 20)))),
    blocks.solid(blocks.cubes(5, 5, 5) - blocks.cubes(1, 1, 5, (2, 2, 0))),
    blocks.solid(blocks.cubes(7, 3, 7) - blocks.cubes(1, 1, 6, (1, 1, 1)) - blocks.cubes(6, 1, 1, (1, 1, 1)))],
    ids=["box", "sphere", "cylinder", "upside down", "tube", "hollow", "drilled through", "drained"])
def test_these_enclose_no_room(mesh):
    assert found(mesh) == ()


def test_twin_wells_apart():
    filled = blocks.cubes(9, 5, 6) - blocks.cubes(4, 3, 5, (1, 1, 1)) - blocks.cubes(2, 3, 4, (6, 1, 2))
    large, small = found(blocks.solid(filled))
    assert [held(large), held(small)] == pytest.approx([60.0, 24.0])
    assert (large.middle, small.middle) == (pytest.approx((3.0, 2.5)), pytest.approx((7.0, 2.5)))
    assert not large.parted and not small.parted


def divided(divider, high=8):
    """Two wells whose divider comes up to a height."""
    return blocks.solid(blocks.cubes(9, 5, high) - blocks.cubes(7, 3, high - 1, (1, 1, 1)) | blocks.cubes(1, 3, divider - 1, (4, 1, 1)))


def test_wells_that_join_just_below_the_rim_are_two_rooms():
    mesh = divided(7)
    assert [(room.spill, held(room), room.parted) for room in found(mesh)] == [(7.0, pytest.approx(54.0), True)] * 2
    assert notes(mesh) == ["Rooms that join above a divider are told apart, each up to the divider."]


def test_a_low_step_in_the_floor_makes_no_rooms():
    (room,) = found(divided(3))
    assert (room.spill, held(room), room.parted) == (8.0, pytest.approx(7 * 3 * 7 - 3 * 2), False)
    assert volume_at(room.room.levels, 3.0) == pytest.approx(36.0)
    assert volume_at(room.room.levels, 5.0) == pytest.approx(36.0 + 42.0)


def test_many_wells_below_one_rim():
    filled = blocks.cubes(13, 13, 6) - blocks.cubes(11, 11, 1, (1, 1, 5))
    for x in range(3):
        for y in range(3):
            filled -= blocks.cubes(3, 3, 4, (1 + 4 * x, 1 + 4 * y, 1))
    assert [held(room) for room in found(blocks.solid(filled))] == pytest.approx([36.0] * 9)


@pytest.mark.parametrize("sunk", [0.0, 3.0])
def test_what_stands_in_a_room_takes_its_place(sunk):
    """A core of its own, just on the floor or sunk into it."""
    (room,) = found(models.joined(models.cup(), models.moved(models.cylinder(10, 30), z=8.0 - sunk)))
    assert held(room) == pytest.approx(SHARE * (40**2 * 72 - 10**2 * (30 - sunk)))
    assert room.room.levels[0].height == 8.0
    assert volume_at(room.room.levels, 20.0) == pytest.approx(SHARE * (40**2 - 10**2) * 12)


@pytest.mark.parametrize("top", [60, 80, 110])
def test_a_mold_with_its_core(top):
    """One piece: an outer wall, and a core standing on the floor, lower than the wall or higher."""
    mesh = models.lathe([(0, 0), (45, 0), (45, 80), (40, 80), (40, 8), (15, 8), (15, top), (0, top)])
    (room,) = found(mesh)
    assert held(room) == pytest.approx(SHARE * (40**2 * 72 - 15**2 * (min(top, 80) - 8)))
    assert room.spill == 80.0


def test_a_handle_that_dips_changes_nothing():
    cup = blocks.cubes(6, 6, 8) - blocks.cubes(4, 4, 7, (1, 1, 1))
    handle = blocks.cubes(3, 2, 1, (6, 2, 5)) | blocks.cubes(1, 2, 4, (8, 2, 2))
    bare, (room,) = found(blocks.solid(cup))[0], found(blocks.solid(cup | handle))
    assert room.room == bare.room


def test_a_handle_inside_takes_its_place():
    """A bar across the room, hanging down from it."""
    cup = blocks.cubes(6, 6, 8) - blocks.cubes(4, 4, 7, (1, 1, 1))
    bar = blocks.cubes(4, 1, 1, (1, 3, 6)) | blocks.cubes(1, 1, 3, (3, 3, 3))
    (room,) = found(blocks.solid(cup | bar))
    assert (held(room), room.spill) == (pytest.approx(4 * 4 * 7 - 7), 8.0)


def test_a_hollow_foot_is_no_room():
    mesh = models.lathe([(30, 0), (45, 0), (45, 80), (40, 80), (40, 20), (0, 20), (0, 12), (30, 12)])
    (room,) = found(mesh)
    assert held(room) == pytest.approx(SHARE * 40**2 * 60)


def test_a_room_in_a_body_that_stands_higher():
    mesh = models.joined(models.moved(models.cup(), z=5.0), models.moved(models.box(20, 20, 3), 100.0))
    (room,) = found(mesh)
    assert (held(room), room.spill) == (pytest.approx(SHARE * 40**2 * 72), 85.0)


def test_two_cups_side_by_side():
    mesh = models.joined(models.moved(models.cup(30, 50, 3, 4), 200.0, 0.0, 2.0), models.cup())
    large, small = found(mesh)
    assert [held(large), held(small)] == pytest.approx([SHARE * 40**2 * 72, SHARE * 27**2 * 46])
    assert small.middle == pytest.approx((200.0, 0.0))


def test_letters_are_left_out_and_told():
    filled = blocks.cubes(12, 12, 12) - blocks.cubes(2, 2, 1, (2, 2, 11)) - blocks.cubes(1, 3, 1, (6, 2, 11))
    assert found(blocks.solid(filled)) == ()
    assert notes(blocks.solid(filled)) == ["2 dents that hold less than 0.5 % of the model's box are not taken for rooms."]


@pytest.mark.parametrize("mesh", [bowl(rings=60, facets=60), turned(models.cup(lean=20), 7), turned(bowl(rings=60, facets=60), 5)])
def test_curves_are_as_good_as_exact(mesh):
    slicer = Slicer(mesh)
    (room,) = run(rooms(mesh, slicer))
    levels = room.room.levels
    assert 2 <= len(levels) <= 24
    assert all(one.volume < two.volume and one.height < two.height for one, two in zip(levels, levels[1:]))
    for step in range(101):
        height = levels[0].height + step / 100 * (room.spill - levels[0].height)
        assert abs(volume_at(levels, height) - standing(slicer, room.triangles, height)) < 2e-5 * held(room)


def test_triangles_are_those_of_the_inner_surface():
    mesh = models.cup(floor=8.0)
    (room,) = found(mesh)
    corners = {mesh.corners[numbers[number]] for number in room.triangles for numbers in (mesh.first, mesh.second, mesh.third)}
    assert max(math.hypot(x, y) for x, y, _ in corners) == pytest.approx(40.0)
    assert len(room.triangles) == 3 * 48


def test_an_open_cup_has_its_room_still():
    mesh = models.cup()
    kept = [number for number in range(len(mesh.first)) if number % 60 != 7]
    (room,) = found(Triangles(mesh.corners, *([numbers[number] for number in kept] for numbers in (mesh.first, mesh.second, mesh.third))))
    assert held(room) == pytest.approx(SHARE * 40**2 * 72, rel=0.1)


def test_progress_is_told():
    mesh = models.cup()
    told = list(rooms(mesh, Slicer(mesh)))
    assert len(told) > 4 and all(0 <= share <= 1 and text for share, text in told)


def test_a_core_that_hangs_from_a_bridge_on_the_rim_counts_off():
    mold = blocks.cubes(20, 20, 16) - blocks.cubes(14, 14, 14, (3, 3, 2))
    core = blocks.cubes(6, 6, 10, (7, 7, 6)) | blocks.cubes(20, 4, 2, (0, 8, 16))
    for mesh in (blocks.solid(mold | core, 5.0), models.joined(blocks.solid(mold, 5.0), blocks.solid(core, 5.0))):
        (room,) = found(mesh)
        assert held(room) == pytest.approx((14 * 14 * 14 - 6 * 6 * 10) * 125, rel=1e-9) and room.spill == 80


def test_a_lid_s_plug_counts_off():
    lid = models.moved(models.lathe([(0, 0), (35, 0), (35, 6), (45, 6), (45, 10), (0, 10)]), z=74)
    (room,) = found(models.joined(models.cup(), lid))
    assert held(room) == pytest.approx(math.pi * models.facet_share(48) * (40**2 * 72 - 35**2 * 6), rel=1e-9)


def test_the_middle_of_a_bent_opening():
    assert centroid(((0, 0), (4, 0), (4, 2), (2, 2), (2, 4), (0, 4))) == pytest.approx((5 / 3, 5 / 3))
    assert centroid(((1.0, 1.0), (2.0, 2.0), (3.0, 3.0))) == (1.0, 1.0)


def spoiled(seed):
    """A cup or cubes with corners moved, triangles taken out, turned around or thrown in, and lowest and highest corners of no triangle."""
    chance = random.Random(seed)
    whole = chance.choice((models.cup(facets=12), blocks.solid(blocks.any_solid(seed, 4), 9.0)))
    corners, triangles = whole.corners, models.triples(whole)
    corners, triangles = (
        ([tuple(place + chance.gauss(0, 3) for place in corner) for corner in corners], triangles),
        (corners, [triple for triple in triangles if chance.random() > 0.2]),
        (corners, [chance.sample(triple, 3) for triple in triangles]),
        (corners, triangles + [tuple(chance.randrange(len(corners)) for _ in range(3)) for _ in range(50)]),
        ([tuple(round(place / 15) * 15.0 for place in corner) for corner in corners], triangles),
        ([*corners, (0.0, 0.0, -9.0), (3.0, 3.0, 200.0)], triangles))[seed % 6]
    return models.moved(models.made(corners, triangles), z=-min(z for *_, z in corners))


@pytest.mark.parametrize("seed", range(60))
def test_spoiled_meshes_never_fail(seed):
    for room in found(spoiled(seed)):
        levels = room.room.levels
        assert levels[0].volume == pytest.approx(0.0, abs=1e-9 * levels[-1].volume)
        assert all(one.height < two.height and one.volume <= two.volume for one, two in zip(levels, levels[1:]))


@pytest.mark.parametrize("mesh", [models.made([(0, 0, 0), (1, 0, 0), (0, 1, 0)], [(0, 1, 2)]), models.made([(0, 0, 0)], []),
                                  models.made([(0, 0, 0), (1, 0, 5), (0, 1, 2)], [(0, 1, 2)])], ids=["flat", "none", "one"])
def test_meshes_that_are_hardly_any_have_no_rooms(mesh):
    assert found(mesh) == ()


def test_a_corner_of_no_triangle_below_all_changes_nothing():
    cup = models.cup()
    (room,) = found(models.made([*cup.corners, (0, 0, -9.0)], models.triples(cup)))
    assert (held(room), room.spill) == (pytest.approx(SHARE * 40**2 * 72), 80.0)


def test_the_largest_of_too_many_rooms_are_measured():
    mesh = models.joined(*(models.moved(models.cup(height=80 + number % 2, facets=8), 100.0 * (number % 6), 100.0 * (number // 6)) for number in range(30)))
    assert len(found(mesh)) == 24
    assert {room.spill for room in found(mesh)[:15]} == {81.0}
    assert notes(mesh) == ["Only 24 of 30 rooms are measured."]
