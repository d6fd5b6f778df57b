"""The section of a designed vessel: to scale, filled to its line."""

from xml.etree import ElementTree

import pytest

from brimbook.draw.design import vessel

OUTER, INNER = [(40.0, 0.0), (40.0, 80.0)], [(34.0, 8.0), (34.0, 80.0)]
SQUARES = [(40, 40), (-40, 40), (-40, -40), (40, -40)], [(34, 34), (-34, 34), (-34, -34), (34, -34)]


def corners(drawn, place):
    polygon = ElementTree.fromstring(drawn).findall("{*}polygon")[place]
    return [tuple(map(float, pair.split(","))) for pair in polygon.get("points").split()]


def test_widths_and_heights_are_to_one_scale():
    wall = corners(vessel(OUTER, INNER, 60.0, SQUARES, []), 0)
    wide, high = (max(corner[axis] for corner in wall) - min(corner[axis] for corner in wall) for axis in (0, 1))
    assert wide / high == pytest.approx(80 / 80, rel=1e-2)


def test_the_wax_ends_at_the_line_and_begins_at_the_floor():
    drawn = vessel(OUTER, INNER, 60.0, SQUARES, [])
    wall, wax = corners(drawn, 0), corners(drawn, 1)
    bottom, top = max(y for _, y in wall), min(y for _, y in wall)
    scale = (bottom - top) / 80
    assert bottom - max(y for _, y in wax) == pytest.approx(8 * scale, abs=0.2)
    assert bottom - min(y for _, y in wax) == pytest.approx(60 * scale, abs=0.2)


def test_labels_are_escaped_and_the_first_is_large():
    drawn = vessel(OUTER, INNER, 60.0, SQUARES, ["1 < 2", "small"])
    texts = ElementTree.fromstring(drawn).findall("{*}text")
    assert [(text.text, text.get("class")) for text in texts] == [("1 < 2", "label"), ("small", "label-small")]
