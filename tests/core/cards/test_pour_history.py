"""The chart of the pours: a dot for each rest, a ring for each cup, and the same in words."""

import xml.etree.ElementTree as tree

import pytest
from hypothesis import given
from hypothesis import strategies as st
from vessels import DISPLAYS, sheet, vessel

POUR = {"powder": "1200 g", "water": "300 g", "left_over": "90 g"}
CUP = {"cup_volume": "100 mL", "cup_empty": "12 g", "cup_full": "218 g"}


def drawn(*pours, **settings):
    card = next(each for each in sheet(vessel(casts__0__pours=list(pours)), **settings)["cards"] if each["id"] == "pour")
    return card["drawing"], card["drawing_text"]


def marks(drawing):
    return [each.get("class") for each in tree.fromstring(drawing).iter() if each.tag.endswith("circle")]


def test_a_dot_for_each_rest_and_a_ring_for_each_cup():
    drawing, words = drawn({**POUR, **CUP}, POUR, {**POUR, "left_over": "80 g"}, {})
    assert sorted(marks(drawing)) == ["mark", "mark", "mark", "mark-soft"]
    assert "pour 1 −3.4 %" in words and "Needed beyond the mold: pour 1 " in words and "pour 4" not in words
    assert "plan " in drawing and "Allowance to plan" in words


def test_one_cup_alone_can_be_drawn():
    drawing, words = drawn(CUP)
    assert marks(drawing) == ["mark-soft"] and "Needed" not in words and "band" not in drawing


def test_the_newest_ten_are_drawn():
    drawing, words = drawn(*[POUR] * 40)
    assert len(marks(drawing)) == 10 and "pour 31 " in words and "pour 30 " not in words


@pytest.mark.parametrize("settings", DISPLAYS, ids=str)
def test_decimals_are_the_maker_s(settings):
    _, words = drawn({**POUR, **CUP}, POUR, **settings)
    assert ("−3,4 %" in words) == (settings.get("decimal") == "comma")


@given(st.lists(st.tuples(st.integers(0, 400), st.integers(160, 300)), min_size=1, max_size=12))
def test_every_log_makes_a_drawing_without_a_fault(pours):
    drawing, words = drawn(*({**POUR, **CUP, "left_over": f"{left} g", "cup_full": f"{full} g"} for left, full in pours))
    root = tree.fromstring(drawing)
    assert root.get("viewBox").split()[2] == "350" and float(root.get("viewBox").split()[3]) <= 220
    assert "nan" not in drawing and words.endswith(".")
