"""Sheets at true size: one unit is one millimeter, every part is on a page, and pages join."""

import re
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st
from wick_plans import circle, rectangle

from brimbook.draw.true_size import MOST_PAGES, PAPERS, Heading, Piece, pages, pieces, sheet, template
from brimbook.shape.bars import Bar, Sizes, Slot, shape_of

SVG = "{http://www.w3.org/2000/svg}"
HEADING = Heading("Keel bowl", "template", ("Cut along the thick line.",))
TEXT = st.text(alphabet=st.characters(), max_size=60)


def shift(page):
    """How far the drawing is moved on a page, and what of it is seen there."""
    body = next(group for group in ET.fromstring(page).iter(f"{SVG}g") if group.get("transform"))
    right, down = (float(each) for each in re.findall(r"-?[\d.]+", body.get("transform")))
    window = ET.fromstring(page).find(f".//{SVG}clipPath/{SVG}rect")
    return right, down, *(float(window.get(name)) for name in ("x", "y", "width", "height"))


def lines(svg, group=None):
    """Ends of every straight line as drawn, before it is moved."""
    root = ET.fromstring(svg)
    found = []
    for path in (root if group is None else group).iter(f"{SVG}path"):
        numbers = [float(each) for each in re.findall(r"-?[\d.]+", path.get("d"))]
        found.append(((numbers[0], numbers[1]), (numbers[2], numbers[3])))
    return found


@pytest.mark.parametrize("paper", PAPERS)
def test_a_page_is_as_large_as_its_paper_and_a_unit_is_a_millimeter(paper):
    width, height, (page,) = pages(template(circle(68).points, [(0, 0)]), HEADING, paper)
    root = ET.fromstring(page)
    assert (width, height) == PAPERS[paper]
    assert (root.get("width"), root.get("height")) == (f"{width:g}mm", f"{height:g}mm")
    assert root.get("viewBox") == f"0 0 {width:g} {height:g}"


@pytest.mark.parametrize("paper", PAPERS)
def test_every_page_has_lines_that_prove_its_size(paper):
    for page in pages(template(rectangle(300, 260).points, [(0, 0)]), HEADING, paper)[2]:
        level = {round(abs(start[0] - end[0]), 4) for start, end in lines(page) if start[1] == end[1]}
        assert {100.0, 101.6} <= level
        assert "100 %" in page and "must be 100 mm" in page


def test_a_template_shows_each_wick_where_it_stands():
    drawing = template(circle(90).points, [(-20.0, 5.0), (20.0, -5.0)])
    circles = re.findall(r'<circle cx="([-\d.]+)" cy="([-\d.]+)"', "".join(drawing.shapes))
    # On paper y goes down.
    assert circles == [("-20", "-5"), ("20", "5")]
    assert ">1</text>" in "".join(drawing.shapes) and ">front</text>" in "".join(drawing.shapes)


@given(length=st.floats(10, 1500), width=st.floats(10, 1500), paper=st.sampled_from(sorted(PAPERS)))
def test_pages_cover_the_drawing_and_overlap(length, width, paper):
    drawing = template(rectangle(length, width).points, [(0.0, 0.0)])
    made = pages(drawing, HEADING, paper)
    if made is None:
        return
    wide, high, sheets = made
    windows = [shift(page) for page in sheets]
    assert 1 <= len(sheets) <= MOST_PAGES
    for right, down, x, y, across, deep in windows:
        # The part that is seen lies within the margins.
        assert x + right >= 9.99 and x + right + across <= wide - 9.99
        assert y + down >= 9.99 and y + down + deep <= high - 9.99
    for low, size, first, extent in ((drawing.left, drawing.width, 2, 4), (drawing.top, drawing.height, 3, 5)):
        starts = sorted({window[first] for window in windows})
        assert starts[0] <= low + 1e-3 and starts[-1] + windows[0][extent] >= low + size - 1e-3
        assert all(later - earlier == pytest.approx(windows[0][extent] - 10, abs=1e-3) for earlier, later in zip(starts, starts[1:]))


def test_dashed_lines_and_crosses_of_neighbors_are_the_same():
    first, second = pages(template(rectangle(300, 100).points, [(0.0, 0.0)]), HEADING, "A4")[2]
    groups = [next(group for group in ET.fromstring(page).iter(f"{SVG}g") if group.get("clip-path")) for page in (first, second)]
    shared = set.intersection(*(set(lines("<svg/>", group)) for group in groups))
    own = set(lines(f'<svg xmlns="{SVG[1:-1]}">{"".join(template(rectangle(300, 100).points, [(0.0, 0.0)]).shapes)}</svg>'))
    # One dashed line and two crosses of two strokes each.
    assert len(shared - own) == 5


def test_a_wide_drawing_turns_the_paper():
    width, height, sheets = pages(template(rectangle(240, 100).points, [(0.0, 0.0)]), HEADING, "A4")
    assert (width, height, len(sheets)) == (297.0, 210.0, 1)


def test_too_many_pages_are_refused():
    assert pages(template(rectangle(1500, 1500).points, [(0.0, 0.0)]), HEADING, "A4") is None
    assert pages(template(rectangle(2.9e6, 2.9e6).points, [(0.0, 0.0)]), HEADING, "Letter") is None


@pytest.mark.parametrize("size", [(20, 20), (400, 30), (30, 700)])
def test_a_file_holds_the_whole_drawing(size):
    drawing = template(rectangle(*size).points, [(0.0, 0.0)])
    root = ET.fromstring(sheet(drawing, HEADING))
    right, down = (float(each) for each in re.findall(r"-?[\d.]+", root.find(f"{SVG}g").get("transform")))
    wide, high = (float(root.get(name).removesuffix("mm")) for name in ("width", "height"))
    assert drawing.left + right >= 9.99 and drawing.left + drawing.width + right <= wide - 9.99
    assert drawing.top + down >= 9.99 and drawing.top + drawing.height + down <= high - 9.99


def test_bars_lie_apart_and_inside_their_box():
    sizes = Sizes(18, 2, 15, 0, 2)
    made = [Piece(f"Bar {number}", shape_of(Bar(-30, 30, 0, length, (Slot(0, 40.0, 10.0),)), sizes), (15, length - 15), ((40.0, "1"),))
            for number, length in ((1, 90.0), (2, 120.0))]
    drawing = pieces(made)
    corners = [[tuple(map(float, pair.split(","))) for pair in points.split()]
               for points in re.findall(r'<polygon points="([^"]+)"', "".join(drawing.shapes))]
    for bar in corners:
        assert all(drawing.left <= x <= drawing.left + drawing.width and drawing.top <= y <= drawing.top + drawing.height for x, y in bar)
    tops, feet = ([edge(y for _, y in bar) for bar in corners] for edge in (min, max))
    assert tops[1] > feet[0] + 5 and [foot - top for top, foot in zip(tops, feet)] == pytest.approx([18, 18])
    # The slots are open at the front, which is below.
    assert all((39.0, foot) in bar and (39.0, foot - 10) in bar for bar, foot in zip(corners, feet))


@given(TEXT, TEXT)
def test_any_name_is_only_text(name, label):
    heading = Heading(name, "bars", ("Cut.",))
    bar = Piece("Bar", ((0, 0), (40, 0), (40, 18), (0, 18)), (5, 35), ())
    for svg in (sheet(pieces([bar]), heading), *pages(pieces([bar]), heading, "A4")[2]):
        svg.encode("utf-8")
        names = {element.tag.removeprefix(SVG) for element in ET.fromstring(svg).iter()}
        assert names <= {"svg", "g", "text", "path", "polygon", "circle", "clipPath", "rect"}


def test_a_sheet_refers_to_nothing_outside_and_carries_no_style():
    svg = pages(template(circle(300).points, [(0, 0)]), Heading('<script href="x">', "template"), "A4")[2][0]
    attributes = {name for element in ET.fromstring(svg).iter() for name in element.keys()}
    assert not attributes & {"href", "style", "onload"} and "<script" not in svg
    assert re.findall(r"url\(([^)]*)\)", svg) == ["#window-A1"]


def test_a_bar_s_name_is_not_cut_off_where_it_is_longer_than_the_bar():
    name = "Bar 1: 60 mm long, slots at 10 mm, 20 mm, 30 mm, 40 mm and 50 mm from the left end, and so on and on"
    short = pieces([Piece(name, ((0, 0), (60, 0), (60, 18), (0, 18)), (10, 50), ())])
    assert short.width >= 1.8 * len(name)
