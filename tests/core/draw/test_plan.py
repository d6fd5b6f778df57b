"""The plan of the wax: true to scale, marks in place, everything inside the drawing."""

import xml.etree.ElementTree as xml

import pytest

from brimbook.draw import plan as drawing
from brimbook.shape.outline import circle, path, rounded_rectangle

SVG = "{http://www.w3.org/2000/svg}"
OUTLINES = [circle(68.0), rounded_rectangle(200.0, 30.0, 5.0), rounded_rectangle(20.0, 300.0, 0.0),
            path("0 0, 100 0, 100 30, 30 30, 30 100, 0 100")]


@pytest.mark.parametrize("outline", OUTLINES)
def test_a_place_comes_back_from_the_drawing(outline):
    frame = drawing.frame(outline)
    for point in outline.points[::7]:
        assert frame.back(*frame.at(point)) == pytest.approx(point, abs=0.1 / frame.scale)


@pytest.mark.parametrize("outline", OUTLINES)
def test_everything_is_inside_the_drawing(outline):
    svg = xml.fromstring(drawing.plan(outline, [drawing.Wick((0, 0), outline.points, "Wick 1")], outline.points[0], (20, "20 mm")))
    _, _, wide, high = map(float, svg.get("viewBox").split())
    for polygon in svg.iter(f"{SVG}polygon"):
        places = [tuple(map(float, pair.split(","))) for pair in polygon.get("points").split()]
        assert all(0 <= x <= wide and 0 <= y <= high for x, y in places)
    assert wide == drawing.WIDTH and high <= 300


def test_names_are_escaped():
    svg = drawing.plan(circle(68.0), [drawing.Wick((0, 0), (), '"<&>')], None, (20, "<20>"))
    assert xml.fromstring(svg).find(f".//{SVG}g").get("aria-label") == '"<&>'
