"""Designed vessels against solids worked out another way, and what can't be built."""

import math

import pytest
import trimesh
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from brimbook.shape.designed import DesignError, designed
from brimbook.shape.designed_mesh import mesh
from brimbook.shape.family import Family, least_between_ovals
from brimbook.shape.shell import Ball, Pulled, volume

SIZES = {"across": 80.0, "other": 60.0, "bottom": 62.0, "corner": 8.0, "sides": 7, "foot": 30.0, "height": 75.0, "lean": 4.0,
         "path": "0 0, 90 0, 90 30, 40 30, 40 80, 0 80"}
SHAPES = ("round", "tapered", "oval", "rectangle", "polygon", "bowl", "path")
# An outline of 96 corners around a circle is so much larger.
ROUND = 96 / math.pi * math.tan(math.pi / 96) - 1


def built(shape, inside=False, **changed):
    sizes = {**SIZES, **({"height": 30.0} if shape == "bowl" else {}), **changed}
    return designed(shape, sizes, 6.0, 8.0, inside)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("inside", [False, True])
def test_the_volume_of_each_side_is_its_areas_summed_finely(shape, inside):
    vessel = built(shape, inside)
    for shell in (vessel.outside, vessel.room):
        breaks = shell.breaks() or None
        expected = quad(shell.area, shell.low, shell.high, points=breaks, epsrel=1e-11, limit=200)[0] / 1000
        assert volume(shell, vessel.height) == pytest.approx(expected, rel=1e-9)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("inside", [False, True])
def test_its_triangles_are_closed_and_hold_as_much(shape, inside):
    vessel = built(shape, inside)
    faces = mesh(vessel)
    body = trimesh.Trimesh(*_numbered(faces))
    assert body.is_watertight and body.is_winding_consistent
    exact = 1e-6 if shape in ("polygon", "path") else 4e-3 if shape == "bowl" else ROUND * 1.01
    assert body.volume / 1000 == pytest.approx(vessel.cast, rel=exact)
    assert body.area == pytest.approx(vessel.skin, rel=max(exact, 1e-6) * 1.5)
    assert body.bounds[0][2] == 0.0 and body.bounds[1][2] == pytest.approx(vessel.height, abs=1e-6)


def _numbered(faces):
    numbers = {corner: number for number, corner in enumerate(dict.fromkeys(corner for face in faces for corner in face))}
    return list(numbers), [[numbers[corner] for corner in face] for face in faces]


def test_by_hand():
    cup = built("round", lean=0.0)
    assert cup.room_to(65.0) == pytest.approx(math.pi * 34**2 * 57 / 1000, rel=1e-12)
    assert cup.cast == pytest.approx(math.pi * (40**2 * 75 - 34**2 * 67) / 1000, rel=1e-12)
    cone = built("tapered")
    assert volume(cone.outside, 75.0) == pytest.approx(math.pi * 75 / 12 * (80**2 + 80 * 62 + 62**2) / 1000, rel=1e-12)
    bowl = built("bowl", foot=0.0)
    assert volume(bowl.outside, 30.0) == pytest.approx(math.pi * 30 / 6 * (3 * 40**2 + 30**2) / 1000, rel=1e-12)


@pytest.mark.parametrize("shape", ["round", "tapered", "rectangle", "polygon", "path"])
@pytest.mark.parametrize("inside", [False, True])
def test_the_wall_is_square_to_itself_as_thick_as_asked(shape, inside):
    vessel = built(shape, inside)
    slope = vessel.outside.slope
    apart = (vessel.room.inset(40.0) - vessel.outside.inset(40.0)) / math.hypot(1.0, slope)
    assert apart == pytest.approx(6.0, rel=1e-12) and vessel.least_wall == 6.0


def test_the_least_wall_between_ovals_is_found():
    outer, inner = ([((45 - by) * math.cos(turn / 1000), (30 - by) * math.sin(turn / 1000)) for turn in range(1571)] for by in (0, 6))
    nearest = min(min(math.dist(one, other) for other in outer) for one in inner[::20])
    assert least_between_ovals(90.0, 60.0, 6.0) == pytest.approx(nearest, abs=0.01)
    assert built("oval").least_wall < 6.0


@pytest.mark.parametrize("shape", SHAPES)
def test_inside_and_outside_sizes_tell_one_vessel(shape):
    """The room's sizes, typed as those of the inside, give the same room and wall again."""
    vessel = built(shape, inside=True)
    sizes = {"height": 30.0 if shape == "bowl" else 75.0}
    assert vessel.height == pytest.approx(sizes["height"] + vessel.room.low)
    if shape != "path":
        assert vessel.room.area(vessel.height) == pytest.approx(
            math.pi * 40**2 if shape == "bowl" else Family(*_family(shape)).area(0.0), rel=1e-12)


def _family(shape):
    names = {"round": ("across",), "tapered": ("across",), "oval": ("across", "other"), "rectangle": ("across", "other", "corner"),
             "polygon": ("across", "sides")}[shape]
    return "round" if shape == "tapered" else shape, tuple(SIZES[name] for name in names)


@pytest.mark.parametrize(("shape", "changed", "name"), [
    ("round", {"across": 12.0}, "wall_thickness"), ("round", {"height": 8.5}, "floor_thickness"), ("round", {"lean": 45.0}, "lean"),
    ("rectangle", {"corner": 31.0}, "corner"), ("bowl", {"height": 45.0}, "height"), ("bowl", {"foot": 80.0}, "foot"),
    ("bowl", {"across": 20.0, "foot": 0.0, "height": 5.0}, "wall_thickness"),
    ("path", {"path": "0 0, 80 0, 45 30, 80 60, 0 60, 35 30", "lean": 0.0}, "wall_thickness"), ("oval", {"other": 12.0}, "wall_thickness"),
])
def test_what_can_not_be_built_is_told_where_it_is_asked(shape, changed, name):
    with pytest.raises(DesignError) as told:
        built(shape, **changed)
    assert told.value.name == name and str(told.value).endswith(".")


@given(st.floats(20, 300), st.floats(15, 300), st.floats(0, 20), st.floats(1, 20), st.floats(1, 20), st.floats(0, 40))
def test_any_rectangle_is_built_or_refused(across, other, corner, wall, floor, lean):
    try:
        vessel = designed("rectangle", {"across": across, "other": other, "corner": corner, "height": 60.0, "lean": lean}, wall, floor)
    except DesignError:
        return
    assert 0 < vessel.room_to(vessel.height) < vessel.room_to(vessel.height) + vessel.cast
    assert vessel.room_to(floor + 10.0) < vessel.room_to(floor + 20.0)


def test_the_surface_of_a_leaning_oval_is_that_of_fine_triangles():
    shell = Pulled(Family("oval", (90.0, 50.0)), 0.0, 0.2, 0.0, 60.0)
    count, found = 4000, 0.0
    for step in range(count):
        corners = []
        for height in (0.0, 60.0):
            a, b = (size / 2 for size in shell.family.sizes_at(shell.inset(height)))
            corners += [(a * math.cos(2 * math.pi * each / count), b * math.sin(2 * math.pi * each / count), height) for each in (step, step + 1)]
        found += trimesh.Trimesh(corners, [[0, 1, 3], [0, 3, 2]], process=False).area if step % 40 == 0 else 0.0
    assert shell.surface(0.0, 60.0) == pytest.approx(found * 40, rel=2e-3)


def test_a_ball_has_its_surface():
    assert Ball(50.0, 50.0, 0.0, 100.0).surface(0.0, 100.0) == pytest.approx(4 * math.pi * 2500)
