"""Printed sheets measure true: the lines of the PDF that Chromium prints, read back and measured.

The last test presses the button on the page; the others print the sheets alone.
"""

import io
import math

import pytest
import stand_in
from pdf_lines import lines, size_of
from printing import prints
from pypdf import PdfReader

from brimbook.draw.true_size import PAPERS, Heading, Piece, pages, pieces, template

HEADING = Heading("Keel bowl", "template", ("Cut along the thick line.",))
NEAR = 0.1
WICKS = [(-20.0, 8.0), (20.0, -8.0), (0.0, 21.3)]


@pytest.fixture
def printed(browser):
    """Prints pages on paper of their size, one to a sheet, and gives the sheets of the PDF back."""
    page = browser.new_page()

    def put_on_paper(made):
        width, height, sheets = made
        rules = (f"@page {{ size: {width}mm {height}mm; margin: 0 }} body {{ margin: 0 }} "
                 "svg { display: block; break-after: page; break-inside: avoid } svg:last-child { break-after: auto }")
        page.set_content(f"<!doctype html><style>{rules}</style>{''.join(sheets)}")
        return PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True))).pages

    yield put_on_paper
    page.close()


def level(sheet):
    """Lengths of the level lines."""
    return [abs(end[0] - start[0]) for start, end in lines(sheet) if abs(end[1] - start[1]) < 0.01]


def crosses(sheet, arm=10.0):
    """Where a level and an upright line of a cross's length halve one another."""
    found = [(start, end) for start, end in lines(sheet) if abs(math.dist(start, end) - arm) < NEAR]
    middles = [((a + c) / 2, (b + d) / 2, abs(b - d) < 0.01) for (a, b), (c, d) in found]
    return [(x, y) for x, y, flat in middles if flat and any(not other and math.dist((x, y), (u, v)) < 0.02 for u, v, other in middles)]


def strokes(sheet, length):
    """The middles of all lines of a length."""
    return sorted(((a + c) / 2, (b + d) / 2) for (a, b), (c, d) in lines(sheet) if abs(math.dist((a, b), (c, d)) - length) < NEAR)


def rectangle(length, width):
    x, y = length / 2, width / 2
    return [(-x, -y), (x, -y), (x, y), (-x, y)]


@pytest.mark.parametrize("paper", PAPERS)
def test_the_ruler_and_the_paper_measure_true(printed, paper):
    sheet, = printed(pages(template(rectangle(90, 70), WICKS), HEADING, paper))
    assert size_of(sheet) == pytest.approx(PAPERS[paper], abs=0.4)
    for length in (100.0, 101.6):
        assert min(abs(each - length) for each in level(sheet)) <= NEAR


@pytest.mark.parametrize("paper", PAPERS)
def test_the_wicks_are_pricked_where_they_stand(printed, paper):
    sheet, = printed(pages(template(rectangle(90, 70), WICKS), HEADING, paper))
    found = crosses(sheet)
    assert len(found) == len(WICKS)
    (_, back), (_, front) = sorted(strokes(sheet, 90), key=lambda each: each[1])
    (left, _), (right, _) = strokes(sheet, 70)
    middle = ((left + right) / 2, (back + front) / 2)
    for x, y in WICKS:
        assert min(math.dist((x, -y), (u - middle[0], v - middle[1])) for u, v in found) <= NEAR


@pytest.mark.parametrize("paper", PAPERS)
def test_the_outline_measures_true(printed, paper):
    sheet, = printed(pages(template(rectangle(82, 60), [(0, 0)]), HEADING, paper))
    sides = sorted(math.dist(start, end) for start, end in lines(sheet))
    for side in (82.0, 60.0):
        assert sum(abs(each - side) <= NEAR for each in sides) >= 2


@pytest.mark.parametrize("paper", PAPERS)
def test_tiles_of_a_large_outline_are_one_to_a_sheet_and_join(printed, paper):
    made = pages(template(rectangle(300, 80), [(-100, 0), (100, 0)]), HEADING, paper)
    sheets = printed(made)
    assert len(sheets) == len(made[2]) == 2
    assert all(size_of(sheet) == pytest.approx(made[:2], abs=0.4) for sheet in sheets)
    assert all(min(abs(each - 100) for each in level(sheet)) <= NEAR for sheet in sheets)
    # Laid cross on cross, the wick of one page is as far from that of the other as it should be.
    first, second = (strokes(sheet, 6 * math.sqrt(2)) for sheet in sheets)
    assert len(first) == len(second) == 4
    (left,), (right,) = (crosses(sheet) for sheet in sheets)
    for one, other in zip(first, second):
        assert left[0] - one[0] + other[0] - right[0] == pytest.approx(-200, abs=NEAR)
        assert left[1] - one[1] == pytest.approx(right[1] - other[1], abs=NEAR)


@pytest.mark.parametrize("paper", PAPERS)
def test_a_bar_and_its_slot_measure_true(printed, paper):
    bar = Piece("Bar", ((0, 0), (48, 0), (48, 10), (50, 10), (50, 0), (98, 0), (98, 18), (0, 18)), (15, 83), ((49.0, "1"),))
    sheet, = printed(pages(pieces([bar]), HEADING, paper))
    drawn = lines(sheet)
    back = next((start, end) for start, end in drawn if abs(math.dist(start, end) - 98) <= NEAR)
    bottom, = [(start, end) for start, end in drawn if abs(math.dist(start, end) - 2) <= 0.05 and abs(start[1] - end[1]) < 0.01]
    left = min(back[0][0], back[1][0])
    assert (bottom[0][0] + bottom[1][0]) / 2 - left == pytest.approx(49, abs=NEAR)
    assert bottom[0][1] - back[0][1] == pytest.approx(8, abs=NEAR)


@pytest.mark.parametrize("paper", PAPERS)
def test_what_the_page_prints_measures_true(maker, paper):
    maker.opens("#/settings")
    maker.page.get_by_role("radio", name=paper, exact=True).tap()
    maker.page.wait_for_function("() => localStorage.getItem('brimbook.settings-made')")
    address = stand_in.keep(maker, {"name": "Keel bowl", "casts": [{}], "wells": [
        {"outline": {"shape": "round", "across": "68 mm"}, "wicks": {"count": "2"}}]})
    maker.page.reload()
    maker.opens(address)
    card = "Template and holder"
    maker.opens_card(card)
    sheet, = PdfReader(io.BytesIO(prints(maker, card, "Print the template"))).pages
    assert size_of(sheet) == pytest.approx(PAPERS[paper], abs=0.4)
    for length in (100.0, 101.6):
        assert min(abs(each - length) for each in level(sheet)) <= NEAR
    assert len(crosses(sheet)) == 2
    sheet, = PdfReader(io.BytesIO(prints(maker, card, "Print the bars"))).pages
    # A round well of 68 mm, with 15 mm on each side.
    assert min(abs(each - 98) for each in level(sheet)) <= NEAR
