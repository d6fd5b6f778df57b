"""Labels side by side: as many as there is room for, none over another, and a ruler where it has room."""

import re
import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st
from labels import label

from brimbook.draw.label_draw import laid
from brimbook.draw.label_sheet import filling, grid, most, sheets
from brimbook.draw.true_size import MOST_PAGES, PAPERS

SVG = "{http://www.w3.org/2000/svg}"
LENGTHS = st.floats(10, 300)


def used(page):
    """Where labels are on a page, with what is shown there."""
    return [(use.get("href"), float(use.get("x")), float(use.get("y"))) for use in ET.fromstring(page).iter(f"{SVG}use")]


@given(LENGTHS, LENGTHS, st.floats(0, 100), st.floats(3, 100), st.sampled_from(sorted(PAPERS)))
def test_places_are_within_the_margin_and_apart(width, height, gap, margin, paper):
    places = grid(width, height, gap, margin, paper)
    corners = [places.corner(place) for place in range(places.places)]
    assert sorted(places.paper) == sorted(PAPERS[paper])
    for x, y in corners:
        assert margin - 1e-6 <= x <= places.paper[0] - margin - width + 1e-6 and margin - 1e-6 <= y <= places.paper[1] - margin - height + 1e-6
    for number, (x, y) in enumerate(corners):
        assert all(abs(x - u) >= width + gap - 1e-6 or abs(y - v) >= height + gap - 1e-6 for u, v in corners[:number])
    # One more in either direction has no room.
    if places.places:
        assert margin + places.across * (width + gap) + width > places.paper[0] - margin - 1e-6
        assert margin + places.down * (height + gap) + height > places.paper[1] - margin - 1e-6


@pytest.mark.parametrize(("size", "gap", "margin", "paper", "places", "upright"), [
    ((70, 50), 3, 10, "A4", 10, True), ((70, 50), 3, 10, "Letter", 9, False), ((50, 50), 0, 5, "A4", 20, True), ((200, 40), 3, 3, "A4", 6, True),
    ((190, 277), 0, 10, "A4", 1, True), ((277, 190), 0, 10, "A4", 1, False), ((191, 278), 0, 10, "A4", 0, True)])
def test_the_paper_is_turned_where_it_then_holds_more(size, gap, margin, paper, places, upright):
    made = grid(*size, gap, margin, paper)
    assert (made.places, made.paper[0] < made.paper[1]) == (places, upright)


def page_of(copies=None, first=1, shape="rectangle", paper="A4", apart=False, margin=10.0, size=(70.0, 50.0), gap=3.0):
    asked = label(shape, *size, apart=apart)
    made, places = laid(asked), grid(*size, gap, margin, paper)
    assert made.fits
    return sheets(asked, made.sides, copies or filling(places, first, len(made.sides)), first, places), places


def test_a_sheet_is_filled_from_the_first_free_place():
    (page,), places = page_of(first=4)
    assert [(x, y) for _, x, y in used(page)] == [places.corner(place) for place in range(3, places.places)]


def test_more_copies_go_to_more_sheets():
    pages, places = page_of(copies=25, first=9)
    assert [len(used(page)) for page in pages] == [2, 10, 10, 3]
    assert used(pages[1])[0][1:] == places.corner(0)


def test_fronts_come_before_backs():
    (page,), _ = page_of(apart=True)
    assert [kind.rsplit("-", 1)[1] for kind, _, _ in used(page)] == ["0"] * 5 + ["1"] * 5
    pages, _ = page_of(apart=True, copies=12)
    assert "".join(kind[-1] for page in pages for kind, _, _ in used(page)) == "0" * 12 + "1" * 12


def test_what_is_used_is_on_the_same_page_and_ids_are_told_apart():
    pages, _ = page_of(apart=True, copies=12)
    kept = [{f"#{group.get('id')}" for group in ET.fromstring(page).iter(f"{SVG}g") if group.get("id")} for page in pages]
    assert all({kind for kind, _, _ in used(page)} == ids for page, ids in zip(pages, kept))
    assert sum(map(len, kept)) == len(set.union(*kept))


@given(st.integers(1, 40), st.integers(1, 2), LENGTHS, LENGTHS)
def test_as_many_as_possible_take_no_more_than_the_most_pages(first, sides, width, height):
    places = grid(width, height, 3.0, 10.0, "A4")
    if first > places.places:
        return
    taken = [-(-(first - 1 + copies * sides) // places.places) for copies in (most(places, first, sides), most(places, first, sides) + 1)]
    assert taken[0] <= MOST_PAGES < taken[1]
    assert filling(places, first, sides) * sides <= places.places - first + 1 or filling(places, first, sides) == 1


@pytest.mark.parametrize(("margin", "size", "gap", "length"), [(10.0, (70.0, 50.0), 3.0, 100), (3.0, (100.0, 48.0), 0.3, None),
                                                              (60.0, (70.0, 50.0), 3.0, 50), (10.0, (180.0, 120.0), 3.0, 100)])
def test_a_ruler_stands_below_the_labels_where_it_has_room(margin, size, gap, length):
    (page,), places = page_of(margin=margin, size=size, gap=gap, copies=1)
    level = [(float(b[0]) - float(a[0]), float(a[1])) for a, b in (re.findall(r"([\d.]+) ([\d.]+)", path.get("d"))
             for path in ET.fromstring(page).findall(f"{SVG}path")) if a[1] == b[1]]
    assert [round(long, 6) for long, _ in level] == ([length] if length else [])
    for _, down in level:
        assert places.foot < down < places.paper[1] - 3
    assert (f"must be {length} mm" in page) == bool(length)


def test_a_round_label_has_a_round_edge_of_its_size():
    (page,), _ = page_of(shape="round", size=(75.0, 75.0), copies=1)
    (edge,) = ET.fromstring(page).iter(f"{SVG}circle")
    assert (edge.get("r"), edge.get("fill"), edge.get("stroke-width")) == ("37.5", "none", "0.1")
