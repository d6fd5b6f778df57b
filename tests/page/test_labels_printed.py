"""Printed labels measure true: edges, letters and codes of the sheets that Chromium puts on paper."""

import io
import math
import sys
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image
from pdf_lines import lines, size_of
from pypdf import PdfReader

sys.path.insert(0, str(Path(__file__).parents[1] / "core" / "helpers"))

from labels import LINK, label, words  # noqa: E402 - found only once the path is set

from brimbook.draw.label_draw import laid  # noqa: E402
from brimbook.draw.label_sheet import filling, grid, sheets  # noqa: E402
from brimbook.draw.true_size import PAPERS  # noqa: E402

NEAR = 0.1
DOTS = 300
_POINT = 25.4 / 72


def made(asked, paper, margin=10.0, gap=3.0, link=LINK, copies=None):
    """Pages of a label, the places on them, and how it is laid out."""
    found = laid(asked, link)
    side, places = found.sides[0], grid(found.sides[0].width, found.sides[0].height, gap, margin, paper)
    return sheets(asked, found.sides, copies or filling(places, 1, len(found.sides)), 1, places), places, side


@pytest.fixture
def tab(browser):
    page = browser.new_page()
    yield page
    page.close()


def on_paper(tab, pages, places):
    """The pages as a PDF, each on a sheet of its size."""
    width, height = places.paper
    rules = (f"@page {{ size: {width}mm {height}mm; margin: 0 }} body {{ margin: 0 }} "
             "svg { display: block; break-after: page; break-inside: avoid } svg:last-child { break-after: auto }")
    tab.set_content(f"<!doctype html><style>{rules}</style>{''.join(pages)}")
    return PdfReader(io.BytesIO(tab.pdf(prefer_css_page_size=True))).pages


def scanned(tab, page, places):
    """A page as a scanner of 300 dots to the inch sees it in gray."""
    scale = DOTS / 96
    context = tab.context.browser.new_context(device_scale_factor=scale)
    one = context.new_page()
    one.set_viewport_size({"width": math.ceil(places.paper[0] * 96 / 25.4), "height": math.ceil(places.paper[1] * 96 / 25.4)})
    one.set_content(f"<!doctype html><style>body {{ margin: 0 }} svg {{ display: block }}</style>{page}")
    image = Image.open(io.BytesIO(one.screenshot())).convert("L")
    context.close()
    return image


@pytest.mark.parametrize("paper", PAPERS)
def test_every_edge_measures_true_and_none_is_missing(tab, paper):
    pages, places, side = made(label(width=80.0, height=60.0, corner=2.0), paper)
    (sheet,) = on_paper(tab, pages, places)
    assert size_of(sheet) == pytest.approx(places.paper, abs=0.4)
    drawn = [tuple(sorted(ends)) for ends in lines(sheet)]
    for place in range(places.places):
        x, y = places.corner(place)
        for across in (y, y + side.height):
            assert [ends for ends in drawn if near(ends, (x + 2, across), (x + side.width - 2, across))]
        for down in (x, x + side.width):
            assert [ends for ends in drawn if near(ends, (down, y + 2), (down, y + side.height - 2))]
    # As many edges as places, no more.
    assert len([ends for ends in drawn if abs(math.dist(*ends) - (side.width - 4)) < NEAR]) == 2 * places.places


def near(ends, first, second):
    return math.dist(ends[0], first) < NEAR and math.dist(ends[1], second) < NEAR


@pytest.mark.parametrize("paper", PAPERS)
def test_the_ruler_measures_true(tab, paper):
    pages, places, _ = made(label(width=80.0, height=60.0), paper)
    (sheet,) = on_paper(tab, pages, places)
    assert min(abs(abs(end[0] - start[0]) - 100) for start, end in lines(sheet) if abs(end[1] - start[1]) < 0.01) <= NEAR


@pytest.mark.parametrize("paper", PAPERS)
def test_letters_on_paper_are_as_high_as_they_must_be(tab, paper):
    asked = label(width=80.0, height=60.0)
    pages, places, _ = made(asked, paper, copies=1)
    (sheet,) = on_paper(tab, pages, places)
    least = {"Net": 3.2, "Lot": 1.2, "Scented": 1.6, "WARNING": 1.5}
    heights = {}

    def seen(text, moved, drawn, font, size):
        for start in least:
            if text.strip().startswith(start) and font:
                scale = math.hypot(*_times(drawn, moved)[2:4])
                heights[start] = abs(size) * scale * _POINT * _capital(font)

    sheet.extract_text(visitor_text=seen)
    assert set(heights) == set(least)
    assert all(heights[start] >= least[start] for start in least), heights


def _times(first, then):
    a, b, c, d, e, f = first
    g, h, i, j, k, m = then
    return (a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + m)


def _capital(font):
    """Height of capitals in sizes of the font, as the font in the PDF tells it."""
    inner = font["/DescendantFonts"][0].get_object() if "/DescendantFonts" in font else font
    # Some writers count it downwards.
    return abs(float(inner["/FontDescriptor"].get_object()["/CapHeight"])) / 1000


@pytest.mark.parametrize("asked", [label(width=80.0, height=60.0), label("round", 90.0, 90.0, code=True), label("strip", 180.0, 36.0),
                                   label(width=100.0, height=70.0, words=words("شمعة 龙 🕯️ candle"))], ids=["rectangle", "round", "strip", "scripts"])
def test_every_line_keeps_to_its_box_in_the_font_that_is_there(tab, asked):
    pages, places, side = made(asked, "A4", copies=1)
    tab.set_content(f"<!doctype html><style>body {{ margin: 0 }}</style>{pages[0]}")
    found = tab.evaluate("""() => [...document.querySelectorAll("defs text")].map((one) => {
        const shown = document.querySelector("svg").appendChild(one.cloneNode(true));
        const { x, y, width, height } = shown.getBBox(); shown.remove();
        return [x, x + width]; })""")
    boxes = [box for box in side.boxes if box.letters]
    assert len(found) == len(boxes)
    # What the browser tells is rounded up to its own dots.
    for (left, right), box in zip(found, boxes):
        assert left == pytest.approx(box.left, abs=0.3) and right == pytest.approx(box.right, abs=0.3)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize(("shape", "width", "height", "link"), [
    ("rectangle", 80.0, 60.0, LINK), ("round", 90.0, 90.0, LINK), ("strip", 180.0, 40.0, LINK), ("rectangle", 120.0, 90.0, LINK + "aB3_" * 90)])
def test_every_code_on_a_sheet_leads_to_the_vessel(tab, paper, shape, width, height, link):
    pages, places, _ = made(label(shape, width, height, code=True), paper, link=link)
    image = scanned(tab, pages[0], places)
    read = zxingcpp.read_barcodes(image)
    assert [code.text for code in read] == [link] * places.places
    # Each is where its label is.
    spots = {place for code in read for place in range(places.places) if _within(places, place, code.position.top_left, (width, height))}
    assert spots == set(range(places.places))


def _within(places, place, spot, size):
    x, y = places.corner(place)
    across, down = spot.x * 25.4 / DOTS, spot.y * 25.4 / DOTS
    return x <= across <= x + size[0] and y <= down <= y + size[1]
