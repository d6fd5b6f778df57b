"""Labels to print, asked of the card: what was wanted, or a sentence on what stands in the way."""

import re
import xml.etree.ElementTree as ET
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from labels import LINK, label
from vessels import ANYTHING, bent_vessels, vessel

from brimbook.cards.label_print import label_pages
from brimbook.quantity.error import QuantityError
from brimbook.quantity.show import Display
from brimbook.steps.label import Labeled
from brimbook.work_out import work_out

PLACE = "labels.0"


def printed(asked=None, paper="A4", link=LINK, display=None, **texts):
    """Pages of a label made by hand, with what the record says on printing it."""
    answer = work_out(vessel(name="Keel bowl", **{f"labels__0__{name}": text for name, text in texts.items()}), display or Display())
    answer.labels[PLACE] = Labeled(PLACE, asked or label(width=70.0, height=50.0), ())
    return label_pages(answer, PLACE, paper, link)


def refused(*given, **told):
    with pytest.raises(QuantityError) as error:
        printed(*given, **told)
    assert str(error.value).endswith(".")
    return str(error.value)


def count(made):
    return [page.count("<use ") for page in made["pages"]]


@pytest.mark.parametrize(("paper", "size", "labels"), [("A4", ("210mm", "297mm"), 10), ("Letter", ("279.4mm", "215.9mm"), 9)])
def test_a_full_sheet_is_usual(paper, size, labels):
    made = printed(paper=paper)
    assert set(made) == {"title", "paper", "width", "height", "pages"}
    assert (made["title"], made["paper"], made["width"], made["height"]) == ("Keel bowl: labels", paper, *size)
    assert count(made) == [labels]
    root = ET.fromstring(made["pages"][0])
    assert (root.get("class"), root.get("width"), root.get("height")) == ("true-size", *size)


def test_copies_gap_margin_and_first_place_are_the_maker_s():
    assert count(printed(copies="23")) == [10, 10, 3]
    assert count(printed(copies="3", first="9")) == [2, 1]
    assert count(printed(gap="0 mm", margin="5 mm")) == [16] and count(printed(gap="60 mm")) == [4]
    (page,) = printed(margin="12 mm", gap="6 mm", copies="2")["pages"]
    assert [use.get("x") for use in ET.fromstring(page).iter() if use.tag.endswith("use")] == ["12", "88"]


def test_front_and_back_are_printed_as_often():
    made = printed(label(width=60.0, height=50.0, apart=True), copies="4")
    assert [page.count('href="#label-1-0"') for page in made["pages"]] == [page.count('href="#label-1-1"') for page in made["pages"]] == [4]


def test_what_can_t_be_printed_is_told():
    assert "no label yet" in refused_at("labels.7")
    assert "larger than A4 paper" in refused(label(width=299.0, height=220.0))
    assert "11.8 in by" in refused(label(width=299.0, height=220.0), display=Display(length="in"))
    assert refused(first="11") == "This sheet has 10 places. Type a first free place up to 10."
    assert refused(copies="121") == "This takes more than 12 pages. Up to 120 labels can be printed at once."
    assert "Up to 59 labels" in refused(label(width=70.0, height=50.0, apart=True), copies="60", first="2")
    assert "marked" in refused(gap="wide") and "marked" in refused(copies="none")
    assert "too small" in refused(label(width=30.0, height=20.0))


def refused_at(place):
    with pytest.raises(QuantityError) as error:
        label_pages(work_out(vessel(), Display()), place, "A4", LINK)
    return str(error.value)


@given(ANYTHING)
def test_there_is_no_label_elsewhere(place):
    assert place == PLACE or "no label yet" in refused_at(place)


def test_the_code_is_only_there_when_it_is_wanted():
    with_code = label(width=100.0, height=70.0, code=True)
    assert "crispEdges" in printed(with_code)["pages"][0] and "crispEdges" not in printed(replace(with_code, code=False))["pages"][0]
    assert "Leave the code off" in refused(with_code, link="")
    assert "too large for a QR code" in refused(with_code, link=LINK + "a" * 3000)
    assert "too small for its QR code" in refused(label(width=70.0, height=50.0, code=True), link=LINK * 4)


@given(bent_vessels(), st.sampled_from(["A4", "Letter"]))
def test_any_record_is_printed_or_told_in_a_sentence(record, paper):
    answer = work_out(record, Display())
    if answer.said.text("labels.0.shape"):
        answer.labels[PLACE] = Labeled(PLACE, label(), ())
    try:
        made = label_pages(answer, PLACE, paper, LINK)
    except QuantityError as error:
        assert re.fullmatch(r"[A-Z].*\.", str(error))
        return
    for page in made["pages"]:
        ET.fromstring(page)
