"""Sections as SVG: well formed, inside the sheet, in the page's colors."""

import math
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw import section
from brimbook.draw.section import Profile

SIZE = st.floats(0.1, 3000)
PROFILES = st.builds(Profile, SIZE, SIZE, SIZE, st.booleans())
LABELS = st.lists(st.text(alphabet=st.characters(blacklist_categories=("Cs", "Cc")), max_size=20), max_size=4)
PROFILE = Profile(80.0, 60.0, 70.0, to_scale=True)


def points(svg):
    for shape in ET.fromstring(svg):
        for pair in shape.get("points", "").split():
            yield tuple(map(float, pair.split(",")))


@given(PROFILES, LABELS)
def test_every_corner_lies_on_the_sheet(profile, labels):
    for svg in (section.vessel(profile, "wax", labels), section.mold(profile, labels)):
        for x, y in points(svg):
            assert 0 <= x <= section.WIDTH and 0 <= y <= section.HEIGHT


@given(PROFILES)
def test_the_room_keeps_its_proportions(profile):
    (room,) = (shape for shape in ET.fromstring(section.vessel(profile, "water", [])) if shape.get("class") == "water")
    corners = [tuple(map(float, pair.split(","))) for pair in room.get("points").split()]
    width, height = corners[3][0] - corners[0][0], corners[1][1] - corners[0][1]
    if min(width, height) > 5:
        assert width / height == pytest.approx(profile.top / profile.height, rel=0.06)


def test_labels_can_t_become_markup():
    svg = section.vessel(PROFILE, "wax", ['<script>"&'])
    assert "<script" not in svg and "&lt;script&gt;" in svg
    ET.fromstring(svg)


def test_no_color_is_named():
    for svg in (section.vessel(PROFILE, "wax", ["196 mL"]), section.mold(section.UNKNOWN, ["642 mL"])):
        assert "#" not in svg and "rgb" not in svg and "fill=" not in svg and "style=" not in svg


def test_a_shape_that_nobody_told_is_said_to_be_not_to_scale():
    assert "not to scale" in section.mold(section.UNKNOWN, []) and "not to scale" not in section.mold(PROFILE, [])


def test_walls_lean_as_told():
    (room,) = (shape for shape in ET.fromstring(section.mold(PROFILE, [])) if shape.get("class") == "water")
    corners = [tuple(map(float, pair.split(","))) for pair in room.get("points").split()]
    top, bottom = corners[3][0] - corners[0][0], corners[2][0] - corners[1][0]
    assert math.isclose(bottom / top, 60 / 80, rel_tol=0.01)
