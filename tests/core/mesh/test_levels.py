"""The fill curve against sections that are known exactly."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from measured_models import grown, levels_of, rotated, run, torus
from models import box, cup, cylinder, facet_share, joined, lathe, made, moved, sphere, turned_over

from brimbook.mesh.curve import area_at, volume_at
from brimbook.mesh.levels import MOST, leaning, levels_between
from brimbook.mesh.stand import stood
from brimbook.mesh.volumes import volume

# Profiles of cups and other vessels; what lies in the facets of a lathe is known exactly at each height.
PROFILES = {
    "cup": [(0, 0), (45, 0), (45, 80), (40, 80), (40, 8), (0, 8)],
    "leaning cup": [(0, 0), (31, 0), (45, 80), (40, 80), (27.4, 8), (0, 8)],
    "cone": [(0, 0), (30, 0), (0, 90)],
    "round bottom": [(0, 0), *((30 * math.sin(step / 20), 30 - 30 * math.cos(step / 20)) for step in range(1, 31)), (30, 70), (0, 70)],
    "steps": [(0, 0), (40, 0), (40, 10), (35, 10), (35, 20), (30, 20), (30, 30), (25, 30), (25, 40), (0, 40)],
    "waves": [(0, 0), *((30 + 2 * math.sin(step / 3), step / 2) for step in range(200)), (0, 99.5)],
}


def known(profile, height, facets=48):
    """Up to a height, cones between the radii of a profile: below 0 on the way down, so that rooms count as such."""
    whole = 0.0
    for (one, low), (other, high) in zip(profile, [*profile[1:], profile[0]]):
        begin, end = min(low, height), min(high, height)
        if begin != end:
            first, last = (one + (other - one) * (place - low) / (high - low) for place in (begin, end))
            whole += (end - begin) * (first * first + first * last + last * last) / 3
    return math.pi * facet_share(facets) * whole


@pytest.mark.parametrize("profile", PROFILES.values(), ids=PROFILES)
def test_levels_are_exact_and_the_curve_between_them_is_near(profile):
    mesh = lathe(profile, 48)
    levels = levels_of(mesh)
    whole, top = volume(mesh), levels[-1].height
    assert len(levels) <= MOST
    for level in levels:
        assert level.volume == pytest.approx(known(profile, level.height), abs=1e-9 * whole)
    for step in range(101):
        assert volume_at(levels, top * step / 100) == pytest.approx(known(profile, top * step / 100), abs=2e-4 * whole)


@pytest.mark.parametrize(("name", "count"), [("cup", 3), ("leaning cup", 3), ("cone", 2), ("steps", 5)])
def test_only_as_many_levels_as_it_takes(name, count):
    assert len(levels_of(lathe(PROFILES[name], 48))) == count


@pytest.mark.parametrize("name", ["cup", "leaning cup", "cone", "steps"])
def test_between_few_levels_the_curve_is_exact(name):
    profile, levels = PROFILES[name], levels_of(lathe(PROFILES[name], 48))
    for step in range(101):
        height = levels[-1].height * step / 100
        assert volume_at(levels, height) == pytest.approx(known(profile, height), abs=1e-9 * levels[-1].volume)


def test_sections_jump_at_flat_faces():
    floor = levels_of(cup(45, 80, 5, 8))[1]
    share = math.pi * facet_share(48)
    assert floor.height == pytest.approx(8)
    assert (floor.below, floor.above) == pytest.approx((share * 45**2, share * (45**2 - 40**2)))


def test_a_box_on_its_corner():
    """Below a height lies a cone with three sides as long as the box, until it comes to the next corners."""
    mesh = rotated(box(30, 30, 30), math.atan(1.0), -math.atan(1 / math.sqrt(2)), 0)
    levels = levels_of(mesh)
    assert levels[-1].height == pytest.approx(30 * math.sqrt(3))
    for height in (2.0, 9.0, 17.0):
        assert volume_at(levels, height) == pytest.approx(math.sqrt(3) / 2 * height**3, abs=2e-5 * 27000)
    assert volume_at(levels, levels[-1].height / 2) == pytest.approx(13500, abs=0.5)
    assert area_at(levels, levels[-1].height / 2) == pytest.approx(math.sqrt(27) / 4 * 30**2, rel=0.01)


def test_a_torus_lying_and_a_sphere():
    for mesh in (torus(), sphere(30, 96, 48)):
        levels = levels_of(mesh)
        assert volume_at(levels, levels[-1].height / 2) == pytest.approx(volume(mesh) / 2, rel=1e-9)
        assert volume_at(levels, levels[-1].height) == pytest.approx(volume(mesh), rel=1e-12)
    # A ball up to a quarter of its height: 5/32 of the whole.
    assert volume_at(levels, 15) == pytest.approx(4 / 3 * math.pi * 30**3 * 5 / 32, rel=0.005)


def test_hollows_and_several_bodies_count_together():
    levels = levels_of(joined(box(), turned_over(box(20, 20, 20, at=(10.0, 10.0, 10.0))), box(at=(100.0, 0.0, 0.0))))
    assert volume_at(levels, 10) == pytest.approx(2 * 2400 * 10)
    assert volume_at(levels, 30) == pytest.approx(2 * 2400 * 30 - 8000)


@given(st.integers(0, 10**6))
def test_the_curve_rises_to_the_volume(seed):
    mesh = grown(seed)
    levels = levels_of(mesh)
    whole, top = volume(mesh), levels[-1].height
    assert levels[0].volume == pytest.approx(0, abs=1e-9 * whole)
    assert levels[-1].volume == pytest.approx(whole, rel=1e-6)
    assert 2 <= len(levels) <= MOST
    found = [volume_at(levels, top * step / 300) for step in range(301)]
    assert all(after >= before - 1e-9 * whole for before, after in zip(found, found[1:]))
    assert all(low.height < high.height for low, high in zip(levels, levels[1:]))


@given(st.integers(0, 10**6))
def test_upside_down_it_is_the_rest(seed):
    """What lies above a height lies below it when the model stands on its head."""
    mesh = grown(seed)
    right, over = levels_of(mesh), run_over(mesh)
    whole, top = volume(mesh), right[-1].height
    for share in (0.13, 0.31, 0.5, 0.77):
        assert volume_at(right, share * top) + volume_at(over, (1 - share) * top) == pytest.approx(whole, abs=5e-4 * whole)


def run_over(mesh):
    return levels_of(stood(mesh, "-z"))


def test_the_room_of_a_cup_from_its_inner_surface():
    mesh = lathe([(0, 8), (30, 8), (40, 80), (0, 80)], 24)
    surface = [triangle for triangle in leaning(mesh) if not triangle[0] == triangle[2] == 80]
    levels = run(levels_between(surface, 8.0, 80.0, lid=-math.fsum(triangle[3] for triangle in surface)))
    assert levels[0].volume == pytest.approx(0, abs=1e-6)
    assert levels[-1].volume == pytest.approx(volume(mesh), rel=1e-9)
    part = run(levels_between(surface, 8.0, 44.0, lid=-math.fsum(triangle[3] for triangle in surface)))
    assert part[-1].volume == pytest.approx(volume(lathe([(0, 8), (30, 8), (35, 44), (0, 44)], 24)), rel=1e-9)


def test_an_open_bottom_counts_as_lying_at_0():
    shell = lathe([(40, 0), (45, 0), (45, 80), (40, 80)], 24)
    assert levels_of(shell)[-1].volume == pytest.approx(volume(shell))
    bell = cylinder(40, 70)
    open_below = made(bell.corners, [triple for triple in zip(bell.first, bell.second, bell.third)
                                     if not all(bell.corners[number][2] == 0 for number in triple)])
    assert levels_of(open_below)[-1].volume == pytest.approx(volume(bell))


def test_flat_faces_that_are_not_quite_flat_are_one():
    """As after turning a drawing: a face whose corners differ by rounding."""
    mesh = cup()
    shaken = made([(x, y, z + 1e-12 * (number % 5)) for number, (x, y, z) in enumerate(mesh.corners)],
                  list(zip(mesh.first, mesh.second, mesh.third)))
    assert len(levels_of(shaken)) == 3


def test_a_model_without_a_height():
    assert levels_of(moved(made([(0, 0, 0), (1, 0, 0), (0, 1, 0)], [(0, 1, 2)]), 0))[-1].volume == 0
