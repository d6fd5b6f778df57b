"""The bars across an opening: drawn inside the sheet, everything in its place."""

import re
import xml.etree.ElementTree as ET

from hypothesis import given
from hypothesis import strategies as st
from wick_plans import circle, scattered

from brimbook.draw.bars import WIDTH, across


def corners(svg):
    for points in re.findall(r'points="([^"]+)"', svg):
        yield [tuple(map(float, pair.split(","))) for pair in points.split()]


@given(st.integers(0, 500), st.integers(1, 6), st.floats(5, 500))
def test_everything_lies_on_the_sheet(seed, count, reach):
    outline, wicks = scattered(seed, count)
    svg = across(outline.points, [[(-reach, -5), (reach, -5), (reach, 5), (-reach, 5)]], wicks)
    _, _, wide, high = map(float, ET.fromstring(svg).get("viewBox").split())
    assert wide == WIDTH and high <= 260
    assert all(0 <= x <= wide and 0 <= y <= high for shape in corners(svg) for x, y in shape)
    assert svg.count('class="wick"') == count and svg.count('class="bar-soft"') == 1


def test_left_is_left_and_the_back_is_above():
    svg = across(circle(100).points, [], [(-30, 0), (0, 30)])
    (left, level), (middle, back) = (tuple(map(float, each)) for each in re.findall(r'cx="([\d.]+)" cy="([\d.]+)"', svg))
    assert left < middle and back < level
    # The same scale both ways.
    assert abs((middle - left) - (level - back)) <= 0.11
