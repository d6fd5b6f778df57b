"""Polygons drawn in and out: sides that vanish, corners that bend inward, walls that meet."""

import math

import pytest

from brimbook.shape.flatten import signed_area
from brimbook.shape.inset import at_all_corners, breaks, drawn, inset
from brimbook.shape.inside import room
from brimbook.shape.outline import Outline, path, rounded_rectangle

CHAMFERED = ((0.0, 0.0), (80.0, 0.0), (80.0, 50.0), (70.0, 60.0), (0.0, 60.0))
ANGLE = ((0.0, 0.0), (90.0, 0.0), (90.0, 30.0), (40.0, 30.0), (40.0, 80.0), (0.0, 80.0))
WAIST = ((0.0, 0.0), (80.0, 0.0), (45.0, 30.0), (80.0, 60.0), (0.0, 60.0), (35.0, 30.0))


CONVEX = {"chamfered": CHAMFERED, "rounded": rounded_rectangle(80.0, 60.0, 8.0).points,
          "path": path("M 0 0 h 80 v 20 a 20 20 0 0 1 -20 20 h -60 z").points}


@pytest.mark.parametrize("name", CONVEX)
@pytest.mark.parametrize("distance", [0.5, 3.0, 8.0, 12.0, 17.0])
def test_where_nothing_bends_inward_it_is_what_lies_inside_of_all_its_sides(name, distance):
    expected = room(Outline(CONVEX[name]), distance)
    assert signed_area(list(inset(CONVEX[name], distance))) == pytest.approx(signed_area(list(expected)), rel=1e-9)


@pytest.mark.parametrize("distance", [0.5, 3.0, 8.0, 12.0, -4.0])
def test_where_it_bends_inward_it_is_so_by_hand(distance):
    bars = (90 - 2 * distance) * (30 - 2 * distance) + (40 - 2 * distance) * 50
    assert signed_area(list(inset(ANGLE, distance))) == pytest.approx(bars, rel=1e-12)


@pytest.mark.parametrize("name", CONVEX)
def test_drawn_out_and_in_again_it_is_as_before(name):
    assert signed_area(list(inset(inset(CONVEX[name], -5.0), 5.0))) == pytest.approx(signed_area(list(CONVEX[name])), rel=1e-9)


def test_a_side_that_vanishes_is_gone_from_there_on():
    (gone,) = breaks(CHAMFERED, 0.0, 28.0)
    assert len(inset(CHAMFERED, gone - 0.1)) == 5 and len(inset(CHAMFERED, gone + 0.1)) == 4
    assert len(at_all_corners(CHAMFERED, gone + 0.1)) == 5


def test_nothing_is_left_half_way_across():
    assert drawn(CHAMFERED, 1).end == pytest.approx(30.0)
    assert inset(CHAMFERED, 30.0) == () and inset(CHAMFERED, 500.0) == ()


def test_what_falls_into_two_pieces_is_refused():
    assert inset(WAIST, 1.0) and inset(WAIST, 8.0) == ()


def test_between_breaks_the_area_follows_a_parabola():
    low, high = 0.0, breaks(CHAMFERED, 0.0, 28.0)[0]
    areas = [signed_area(list(inset(CHAMFERED, low + (high - low) * share))) for share in (0.0, 0.25, 0.5, 0.75, 1.0)]
    assert areas[0] - 4 * areas[1] + 6 * areas[2] - 4 * areas[3] + areas[4] == pytest.approx(0.0, abs=1e-8)


def test_a_round_outline_stays_round():
    corners = inset(rounded_rectangle(80.0, 80.0, 40.0).points, 15.0)
    assert all(24.9 < math.hypot(*corner) < 25.1 for corner in corners)
