"""The bar of a cost: each part as long as its share, its number below it."""

import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw.cost_bar import WIDTH, cost_bar

SVG = "{http://www.w3.org/2000/svg}"


def drawn(shares):
    """The boxes as (left, width), and the numbers as (text, middle)."""
    root = ET.fromstring(cost_bar(shares))
    boxes = [(float(each.get("x")), float(each.get("width"))) for each in root.iter(f"{SVG}rect")]
    return boxes, [(each.text, float(each.get("x"))) for each in root.iter(f"{SVG}text")]


def test_each_part_is_as_long_as_its_share():
    boxes, numbers = drawn([1.0, 3.0])
    assert boxes[1][1] == pytest.approx(3 * boxes[0][1], abs=0.2) and boxes[0][0] + boxes[0][1] == pytest.approx(boxes[1][0], abs=0.2)
    assert [text for text, _ in numbers] == ["1", "2"]
    assert numbers[1][1] == pytest.approx(boxes[1][0] + boxes[1][1] / 2, abs=0.2)


def test_a_part_of_nothing_keeps_its_number():
    assert [text for text, _ in drawn([2.0, 0.0, 1.0])[1]] == ["1", "3"]
    assert drawn([0.0, 0.0]) == ([], [])


@given(st.lists(st.floats(0.0, 1e6), min_size=1, max_size=12))
def test_numbers_never_touch_and_stay_on_the_sheet(shares):
    boxes, numbers = drawn(shares)
    middles = [middle for _, middle in numbers]
    assert all(after - before >= 15 for before, after in zip(middles, middles[1:]))
    assert all(8 <= middle <= WIDTH - 8 for middle in middles)
    assert all(left >= 0 and left + width <= WIDTH for left, width in boxes)


def test_neighbors_never_look_alike():
    """By fill or by hatching: in one color too each is told from the one beside it, all twelve of them."""
    root = ET.fromstring(cost_bar([1.0] * 12))
    looks, hatched = [], []
    for part in root:
        if part.tag == f"{SVG}rect":
            looks.append(part.get("class"))
            hatched.append(set())
        elif part.tag == f"{SVG}line":
            hatched[-1].add("up" if float(part.get("y2")) < float(part.get("y1")) else "down")
    pairs = list(zip(looks, map(frozenset, hatched)))
    assert all(one != other for one, other in zip(pairs, pairs[1:]))
    assert {"bar", "bar-soft", "water"} <= set(looks) and any(hatched)


def test_hatching_stays_inside_its_part():
    root = ET.fromstring(cost_bar([0.0, 0.0, 0.0, 0.0, 1.0, 9.0]))
    box = next(each for each in root.iter(f"{SVG}rect"))
    left, right = float(box.get("x")), float(box.get("x")) + float(box.get("width"))
    lines = [each for each in root if each.tag == f"{SVG}line"]
    ends = [float(line.get(name)) for line in lines[:3] for name in ("x1", "x2")]
    assert lines and all(left - 0.1 <= end <= right + 0.1 for end in ends)
