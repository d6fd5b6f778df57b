"""A list on paper: a box for each thing, nothing beside the paper, nothing on top of anything else."""

import xml.etree.ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from brimbook.draw.label_text import width_of
from brimbook.draw.list_sheet import Line, list_pages
from brimbook.draw.true_size import PAPERS

SVG = "{http://www.w3.org/2000/svg}"
LONG = "Water-based sealer for porous ware, matte, of the large canister that stands below the bench"


def texts(svg):
    """Of each text where its line begins and ends, where it stands, its size and its words."""
    found = []
    for each in ET.fromstring(svg).iter(f"{SVG}text"):
        x, y, size, words = float(each.get("x")), float(each.get("y")), float(each.get("font-size")), each.text or ""
        width = width_of(words, bold=False) * size
        found.append((x - width if each.get("text-anchor") == "end" else x, x if each.get("text-anchor") == "end" else x + width, y, size, words))
    return found


def boxes(svg):
    return ET.fromstring(svg).findall(f".//{SVG}polygon")


@pytest.mark.parametrize("paper", sorted(PAPERS))
@given(st.lists(st.tuples(st.text(max_size=90), st.text(max_size=60), st.text(max_size=20)), min_size=1, max_size=60),
       st.lists(st.text(max_size=300), max_size=2), st.text(max_size=600))
def test_nothing_leaves_the_paper_and_no_line_lies_on_another(paper, lines, below, about):
    pages = list_pages("To buy", about, [Line(*each) for each in lines], below, paper)
    width, height = PAPERS[paper]
    assert sum(len(boxes(page)) for page in pages) == len(lines)
    for page in pages:
        told = texts(page)
        assert all(14.9 <= left and right <= width - 14.9 and 15 <= y <= height - 14.9 for left, right, y, _, words in told if words)
        for number, (left, right, y, size, words) in enumerate(told):
            for other_left, other_right, other_y, _, other in told[:number]:
                apart = abs(y - other_y) >= size * 0.99 or right <= other_left + 0.01 or other_right <= left + 0.01
                assert apart or not words or not other


def test_a_short_list_is_one_page_without_a_number():
    (page,) = list_pages("To buy", "For 12 × Crate", [Line("Box", "1 × 25 pieces", "$24.00")], ["To pay: $24.00"], "A4")
    assert [words for *_, words in texts(page)] == ["To buy", "For 12 × Crate", "Box", "1 × 25 pieces", "$24.00", "To pay: $24.00"]
    assert 'width="210mm" height="297mm"' in page


def test_a_long_name_takes_lines_of_its_own_and_all_of_it_stands_there():
    (page,) = list_pages("To buy", "For a crate", [Line(LONG, "1 × 5 L", "$24.00")], [], "Letter")
    lines = [words for *_, words in texts(page)][2:-2]
    assert len(lines) > 1 and " ".join(lines) == LONG


def test_pages_are_numbered_and_the_order_is_kept():
    pages = list_pages("To buy", "For a crate", [Line(f"Part {row}", "1", "") for row in range(75)], ["To pay: nothing"], "A4")
    names = [words for page in pages for *_, words in texts(page) if words.startswith("Part ")]
    assert names == [f"Part {row}" for row in range(75)] and len(pages) == 3
    assert [texts(page)[-1][4] for page in pages] == ["1 of 3", "2 of 3", "3 of 3"]
    assert "For a crate" not in pages[1] and "To pay: nothing" in pages[-1]
