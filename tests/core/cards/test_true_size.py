"""Template and bars to take away: files and pages, asked through the door."""

import json
import xml.etree.ElementTree as ET

import pytest
from vessels import ask, vessel
from wick_plans import circle, given, plan, rectangle

from brimbook import door

NAMES = ("template", "template_pages", "holder_sheet", "holder_pages", "holder_model")
ROUND = plan(circle(68), (0.0, 0.0))


def taken(name, settings=None, place="wells.0", **texts):
    return ask(name, record=vessel(name="Keel bowl", **texts), place=place, settings=settings or {})


def refused(name, place="wells.0", **texts):
    reply = json.loads(door.ask(name, json.dumps({"record": vessel(**texts), "place": place})))
    assert reply["fault"]["detail"] == "" and reply["fault"]["sentence"].endswith(".")
    return reply["fault"]["sentence"]


@pytest.mark.parametrize(("name", "file", "kind", "start"), [
    ("template", "keel-bowl-template.svg", "image/svg+xml", "<svg"), ("holder_sheet", "keel-bowl-bars.svg", "image/svg+xml", "<svg"),
    ("holder_model", "keel-bowl-bars.stl", "model/stl", "solid bars_of_keel_bowl"),
])
def test_a_file_has_its_name_kind_and_text(monkeypatch, name, file, kind, start):
    given(monkeypatch, ROUND)
    made = taken(name)
    assert set(made) == {"name", "kind", "text"} and (made["name"], made["kind"]) == (file, kind)
    assert made["text"].startswith(start)


@pytest.mark.parametrize(("settings", "paper", "size"), [
    ({}, "A4", ("210mm", "297mm")), ({"length": "in"}, "Letter", ("215.9mm", "279.4mm")),
    ({"paper": "Letter"}, "Letter", ("215.9mm", "279.4mm")), ({"length": "in", "paper": "A4"}, "A4", ("210mm", "297mm")),
])
@pytest.mark.parametrize("name", ["template_pages", "holder_pages"])
def test_pages_are_on_the_maker_s_paper(monkeypatch, name, settings, paper, size):
    given(monkeypatch, ROUND)
    made = taken(name, settings)
    assert set(made) == {"title", "paper", "width", "height", "pages"}
    assert (made["paper"], made["width"], made["height"]) == (paper, *size)
    (page,) = made["pages"]
    root = ET.fromstring(page)
    assert (root.get("width"), root.get("height")) == size
    assert f"{made['title']}</text>" in page and made["title"].startswith("Keel bowl: ")


def test_a_large_template_takes_several_pages_and_a_huge_one_is_refused(monkeypatch):
    given(monkeypatch, plan(rectangle(400, 300), (0.0, 0.0)))
    pages = taken("template_pages")["pages"]
    assert len(pages) == 6 and "Page B3, of A1 to B3" in pages[-1]
    given(monkeypatch, plan(rectangle(2000, 2000), (0.0, 0.0)))
    assert "more than 12 pages" in refused("template_pages")
    assert taken("template")["text"].startswith("<svg")


def test_the_second_well_has_files_of_its_own(monkeypatch):
    given(monkeypatch, ROUND)
    made = taken("template", place="wells.1", wells__1__sealed="yes")
    assert made["name"] == "keel-bowl-well-2-template.svg" and "Keel bowl, well 2: template" in made["text"]


def test_a_name_is_only_text(monkeypatch):
    given(monkeypatch, ROUND)
    record = vessel(name='<b onload="x">\ud83d\x00 & 龙')
    for name in NAMES:
        made = ask(name, record=record, place="wells.0")
        for text in made.get("pages") or [made["text"]]:
            assert "<b" not in text and "\x00" not in text
            if name == "holder_model":
                assert text.isascii()
            else:
                ET.fromstring(text)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("place", ["wells.7", "casts.0", "", None, 5, [], {}, "wells.0.holder"], ids=repr)
def test_there_is_nothing_to_take_from_elsewhere(monkeypatch, name, place):
    given(monkeypatch, ROUND)
    assert "no places yet" in refused(name, place)


@pytest.mark.parametrize("name", NAMES)
def test_without_wicks_there_is_nothing_to_take(monkeypatch, name):
    given(monkeypatch, None)
    assert "no places yet" in refused(name)


@pytest.mark.parametrize("name", ["holder_sheet", "holder_pages", "holder_model"])
def test_without_bars_there_is_only_the_template(monkeypatch, name):
    given(monkeypatch, ROUND)
    assert "no bars yet" in refused(name, wells__0__holder__bar_width="wide")
    assert taken("template", wells__0__holder__bar_width="wide")


def test_a_faulty_thickness_keeps_only_the_solid_back(monkeypatch):
    given(monkeypatch, ROUND)
    assert "thickness" in refused("holder_model", wells__0__holder__bar_thickness="thick")
    assert taken("holder_sheet", wells__0__holder__bar_thickness="thick")


def test_printed_bars_lie_side_by_side(monkeypatch):
    given(monkeypatch, plan(circle(100), (0.0, -25.0), (0.0, 25.0)))
    text = taken("holder_model", wells__0__holder__direction="across", wells__0__holder__bar_thickness="3 mm")["text"]
    corners = [tuple(map(float, line.split()[1:])) for line in text.splitlines() if line.strip().startswith("vertex")]
    across = sorted({y for _, y, _ in corners})
    # Each 18 mm wide, 5 mm apart, with a slot 10 mm deep.
    assert across == [0, 10, 18, 23, 33, 41] and {z for _, _, z in corners} == {0, 3}
