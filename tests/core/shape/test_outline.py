"""Outlines: their areas by formula, their sense, what is inside, and paths as people type them."""

import math
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.shape import outline as outlines
from brimbook.shape.outline import OutlineError

LENGTHS = st.floats(5, 500)


@given(LENGTHS, LENGTHS)
def test_an_oval_is_drawn_from_just_outside(length, width):
    drawn = outlines.area(outlines.oval(length, width))
    assert 1 <= drawn / (math.pi / 4 * length * width) < 1.0005


@given(LENGTHS, LENGTHS, st.floats(0, 0.5))
def test_a_rounded_rectangle_has_its_area(length, width, share):
    corner = share * min(length, width)
    exact = length * width - (4 - math.pi) * corner**2
    assert exact - 1e-6 <= outlines.area(outlines.rounded_rectangle(length, width, corner)) <= exact * 1.0005 + 1e-6


@pytest.mark.parametrize("sides", [3, 4, 5, 6, 8, 12])
def test_a_polygon_of_equal_sides_has_its_area_and_is_as_calipers_take_it(sides):
    made = outlines.regular_polygon(60.0, sides)
    inner = min(outlines.wall_distance(made, point) for point in [outlines.centroid(made)])
    assert outlines.area(made) == pytest.approx(sides * inner**2 * math.tan(math.pi / sides))
    assert outlines.size(made)[1] == pytest.approx(60.0)


MADE = [outlines.circle(68), outlines.oval(90, 50), outlines.rounded_rectangle(80, 60, 9), outlines.regular_polygon(60, 5),
        outlines.path("0 0, 100 0, 100 30, 30 30, 30 100, 0 100"), outlines.path("M 0 0 h 80 v 20 a 20 20 0 0 1 -20 20 h -60 z"),
        outlines.path("M0,0 C 30 -20 60 -20 90 0 S 90 60 45 60 Q 0 60 0 0 Z")]


@pytest.mark.parametrize("made", MADE)
def test_each_is_counterclockwise_around_the_middle_of_its_box(made):
    assert outlines.area(made) > 0
    for axis in (0, 1):
        assert max(p[axis] for p in made.points) == pytest.approx(-min(p[axis] for p in made.points))


@pytest.mark.parametrize("made", MADE)
def test_inside_and_the_wall_agree_with_a_count_of_crossings(made):
    chance = random.Random(7)
    wide, high = outlines.size(made)
    hits = 0
    for _ in range(4000):
        point = chance.uniform(-wide / 2, wide / 2), chance.uniform(-high / 2, high / 2)
        hits += outlines.contains(made, point)
        assert (outlines.wall_distance(made, point) >= 0) == outlines.contains(made, point)
    assert hits / 4000 * wide * high == pytest.approx(outlines.area(made), rel=0.05)


@pytest.mark.parametrize("one, other", [("M0 0H80V40H0Z", "0 0, 80 0, 80 40, 0 40"), ("m 5 5 l 80 0 l 0 40 l -80 0 z", "0 0 80 0 80 40 0 40"),
                                        ("0,0 80,0 80,40 0,40", "0 40, 80 40, 80 0, 0 0")])
def test_one_outline_can_be_told_in_several_ways(one, other):
    assert sorted(outlines.path(one).points) == sorted(outlines.path(other).points)


def test_a_circle_of_arcs_is_a_circle():
    drawn = outlines.path("M -40 0 A 40 40 0 0 1 40 0 A 40 40 0 0 1 -40 0 Z")
    assert 1 <= outlines.area(drawn) / (math.pi * 1600) < 1.003 and outlines.size(drawn) == pytest.approx((80, 80), rel=2e-3)


@pytest.mark.parametrize("text", ["", "M", "0 0", "0 0, 80 0", "0 0, 80 0, 160 0", "0 0, 80 40, 80 0, 0 40", "M 0 0 L 80", "hello", "0 0, nan 0, 80 40",
                                  "0 0, 1e9 0, 80 40", "0 0, 1 0, 1 1", "M0 0H80V40H0Z M 10 10 H20 V20 H10 Z", "M 0 0 A 0 0 0 0", "0 0 " * 400,
                                  "M0 0" + "h1v1" * 200 + "z", "0 0, inf 0, 80 40", "M 0 0 X 3 3 Z"])
def test_what_is_no_outline_is_told_in_a_sentence(text):
    with pytest.raises(OutlineError) as told:
        outlines.path(text)
    assert str(told.value).endswith(".") and (str(told.value)[0].isupper() or str(told.value)[0] == "“")


@given(st.text(max_size=60))
def test_any_text_is_an_outline_or_a_sentence(text):
    try:
        assert len(outlines.path(text).points) >= 3
    except OutlineError as error:
        assert str(error)


def test_corners_that_do_not_fit_are_told():
    with pytest.raises(OutlineError):
        outlines.rounded_rectangle(80.0, 40.0, 21.0)
