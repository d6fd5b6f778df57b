"""Charts as SVG: well formed, inside the sheet, in the page's colors, whatever the numbers are."""

import math
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw.chart import HEIGHT, WIDTH, Axis, Band, Line, Series, chart, nice_ticks

ANY = st.floats(allow_nan=True, allow_infinity=True)
TEXT = st.text(alphabet=st.characters(blacklist_categories=("Cs", "Cc")), max_size=12)
AXES = st.builds(Axis, TEXT, st.lists(st.tuples(ANY, TEXT), max_size=6))
SERIES = st.lists(st.builds(Series, st.lists(st.tuples(ANY, ANY), max_size=6),
                            st.sampled_from(["curve", "mark", "mark-soft"])), max_size=3)
BANDS = st.lists(st.builds(Band, st.lists(st.tuples(ANY, ANY, ANY), max_size=4)), max_size=2)
LINES = st.lists(st.builds(Line, ANY, TEXT, st.booleans()), max_size=3)
NAMES = {"axis", "grid", "band", "curve", "mark", "mark-soft", "label-small", "chart"}


def shapes(svg):
    return list(ET.fromstring(svg))


def places(svg):
    for shape in shapes(svg):
        for pair in shape.get("points", "").split():
            yield tuple(map(float, pair.split(",")))
        if shape.tag.endswith("circle"):
            yield float(shape.get("cx")), float(shape.get("cy"))


def of(svg, style):
    return [shape for shape in shapes(svg) if shape.get("class") == style]


def texts(svg):
    return {shape.text: shape for shape in of(svg, "label-small")}


@given(SERIES, AXES, AXES, BANDS, LINES)
def test_any_numbers_stay_on_the_sheet(series, x_axis, y_axis, bands, lines):
    svg = chart(series, x_axis, y_axis, bands, lines)
    assert "nan" not in "".join(repr(place) for place in places(svg)) and 'NaN' not in svg
    for x, y in places(svg):
        assert 0 <= x <= WIDTH and 0 <= y <= HEIGHT
    assert {shape.get("class") for shape in shapes(svg)} <= NAMES


def test_no_color_and_no_style_stand_in_the_drawing():
    svg = chart([Series([(0, 1), (1, 2)])], Axis("x"), Axis("y"), [Band([(0, 1, 2), (1, 2, 3)])], [Line(1.5, "here")])
    for word in ("fill=", "stroke=", "style=", "#"):
        assert word not in svg


def test_larger_values_stand_higher_and_further_right():
    (low, high) = of(chart([Series([(0, 10), (1, 20)], "mark")], Axis("x"), Axis("y")), "mark")
    assert float(low.get("cx")) < float(high.get("cx")) and float(low.get("cy")) > float(high.get("cy"))


def test_a_curve_passes_through_the_middle_of_its_band():
    svg = chart([Series([(0, 5), (2, 7)])], Axis("x"), Axis("y"), [Band([(0, 3, 7), (2, 5, 9)])])
    curve = [tuple(map(float, pair.split(","))) for pair in of(svg, "curve")[0].get("points").split()]
    band = [tuple(map(float, pair.split(","))) for pair in of(svg, "band")[0].get("points").split()]
    for place, above, below in zip(curve, band, reversed(band)):
        assert place[0] == above[0] == below[0]
        assert place[1] == pytest.approx((above[1] + below[1]) / 2, abs=0.11)


def test_one_point_equal_values_and_nothing_at_all_can_be_drawn():
    one = chart([Series([(3, 900)], "mark"), Series([(3, 900)])], Axis("x"), Axis("y"))
    assert len(of(one, "mark")) == 1 and of(one, "curve") == []
    same = list(places(chart([Series([(0, 7), (1, 7)], "mark")], Axis("x"), Axis("y"))))
    assert all(math.isfinite(value) for place in same for value in place)
    assert of(chart([], Axis("x"), Axis("y")), "axis")


def test_what_is_not_finite_is_left_out():
    svg = chart([Series([(0, 1), (1, math.nan), (2, 3), (math.inf, 1)], "mark")], Axis("x", [(math.nan, "no")]), Axis("y"))
    assert len(of(svg, "mark")) == 2 and "no" not in texts(svg)


def test_an_axis_with_an_end_draws_what_lies_beyond_on_the_edge():
    svg = chart([Series([(0, 1), (1, 1000)], "mark")], Axis("x"), Axis("y", low=0, high=10))
    low, high = (float(mark.get("cy")) for mark in of(svg, "mark"))
    bottom, top = of(svg, "axis")[0].get("points").split()[1], of(svg, "axis")[0].get("points").split()[0]
    assert high == float(top.split(",")[1]) and low < float(bottom.split(",")[1])


def test_texts_are_escaped_and_empty_ones_left_out():
    svg = chart([], Axis("<x>", [(1, "a&b")]), Axis(""), lines=[Line(1, "")])
    assert {"<x>", "a&b"} == set(texts(svg))


def test_ticks_whose_texts_would_touch_are_left_without():
    few = chart([], Axis("x", [(day, f"Sep {day}") for day in range(1, 4)]), Axis("y"))
    many = chart([], Axis("x", [(day, f"Sep {day}") for day in range(1, 40)]), Axis("y"))
    assert len(texts(few)) == 5
    assert "Sep 1" in texts(many) and 4 < len(texts(many)) < 12
    along = sorted(float(shape.get("x")) for text, shape in texts(many).items() if text.startswith("Sep"))
    assert all(after - before > 40 for before, after in zip(along, along[1:]))


def test_a_label_stands_beside_its_line_inside_the_sheet():
    svg = chart([Series([(0, 0), (10, 10)])], Axis("x"), Axis("y"), lines=[Line(1, "left", True), Line(9, "right", True)])
    assert texts(svg)["left"].get("text-anchor") == "start" and texts(svg)["right"].get("text-anchor") == "end"


def test_the_label_of_a_level_line_stands_at_the_end_that_is_asked_for():
    drawn = texts(chart([Series([(0, 0), (1, 9)])], Axis("x"), Axis("y"), lines=[Line(3, "end"), Line(5, "start", at_start=True)]))
    assert float(drawn["start"].get("x")) < 60 and drawn["start"].get("text-anchor") == "start"
    assert float(drawn["end"].get("x")) > 300 and drawn["end"].get("text-anchor") == "end"


FINITE = st.floats(allow_nan=False, allow_infinity=False, min_value=-1e140, max_value=1e140)


@given(FINITE, FINITE, st.integers(3, 9))
def test_nice_ticks_reach_over_the_ends_and_are_few(low, high, count):
    ticks = nice_ticks(low, high, count)
    assert 2 <= len(ticks) <= count
    assert ticks == sorted(set(ticks))
    reach = max(abs(low), abs(high), 1e-9)
    assert ticks[0] <= min(low, high) + 1e-8 * reach and ticks[-1] >= max(low, high) - 1e-8 * reach


@given(ANY, ANY)
def test_nice_ticks_are_always_finite(low, high):
    assert all(map(math.isfinite, nice_ticks(low, high)))


def test_nice_ticks_are_round():
    assert nice_ticks(0.1, 0.31, 5) == [0.1, 0.2, 0.3, 0.4]
    assert nice_ticks(893, 912, 6) == [890, 895, 900, 905, 910, 915]
    assert nice_ticks(2.06, 2.13, 4) == [2.05, 2.1, 2.15]
