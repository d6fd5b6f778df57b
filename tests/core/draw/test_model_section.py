"""Sections of models: to scale, on the sheet, in the page's colors."""

import re
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw import section
from brimbook.draw.model_section import Cut, level, stacked, upright
from brimbook.draw.section import Profile

SIDE = st.floats(0.01, 3000)


def rectangle(wide, high, left=0.0, low=0.0):
    return ((left, low), (left + wide, low), (left + wide, low + high), (left, low + high))


def corners(svg):
    return [tuple(map(float, pair)) for each in ET.fromstring(svg).iter() for pair in re.findall(r"[ML]([\d.-]+),([\d.-]+)", each.get("d", ""))]


@given(SIDE, SIDE, st.floats(0.0, 1.0))
def test_every_corner_lies_on_the_sheet(wide, high, share):
    solid = rectangle(wide, high)
    for svg in (upright(Cut((solid,), (rectangle(wide, high * share),), high * share), "wax", ["96 mL", "± 2 mL"]), level((solid,), (), ["at 4 mm"])):
        assert all(0 <= x <= section.WIDTH and 0 <= y <= section.HEIGHT for x, y in corners(svg))
        assert all(0 <= float(text.get("y")) <= section.HEIGHT for text in ET.fromstring(svg).iter() if text.tag.endswith("text"))


def test_it_keeps_its_proportions():
    (left, bottom), (right, _), (_, top), _ = corners(upright(Cut((rectangle(60.0, 20.0),)), "water", []))
    assert (right - left) / (bottom - top) == pytest.approx(3.0, rel=0.01)


def test_a_line_is_drawn_only_where_something_is_filled():
    piece = Cut((rectangle(60.0, 40.0),))
    assert "fill-line" not in upright(piece, "water", ["96 mL"])
    assert "fill-line" in upright(Cut(piece.solid, piece.solid, 40.0, "ghost"), "water", ["96 mL"])


def test_a_profile_with_a_cut_is_drawn_as_that_cut():
    profile = Profile(1.0, 1.0, 1.0, to_scale=False, cut=Cut((rectangle(60.0, 40.0),), (rectangle(50.0, 30.0),), 30.0))
    for svg in (section.vessel(profile, "wax", ["96 mL"]), section.mold(profile, ["96 mL"])):
        assert "not to scale" not in svg and "<path" in svg and "#" not in svg and ' fill="' not in svg


def test_drawings_are_stacked_without_overlap():
    one = upright(Cut((rectangle(60.0, 40.0),)), "water", [])
    assert stacked([one]) == one
    tree = ET.fromstring(stacked([one, one, one]))
    assert [part.get("y") for part in tree] == ["0", "190", "380"] and tree.get("viewBox") == "0 0 350 570"
