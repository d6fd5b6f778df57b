"""The same records give the same figures in CPython, under Node and in the page."""

import json
import math

import pytest
from model_page import models

from brimbook import door
from brimbook.reading import file
from brimbook.record import blank

DISPLAYS = [{}, {"mass": "lb", "length": "in", "temperature": "F", "decimal": "comma", "readability": "0.1 oz"}]


def records() -> list[dict]:
    """The demo vessels and variations on them."""
    varied = []
    for vessel in blank.demos():
        text = json.dumps(vessel)
        varied += [vessel, json.loads(text.replace("20 °C", "68 °F").replace("10 %", "1/2 %")),
                   json.loads(text.replace(" g\"", " oz\"").replace("6 %", "abc"))]
    return varied


def same(one, other) -> bool:
    """Equal but for the last bits of a float, which libraries of two systems may round apart."""
    if isinstance(one, float) and isinstance(other, (int, float)):
        return math.isclose(one, other, rel_tol=1e-12, abs_tol=1e-12)
    if isinstance(one, dict) and isinstance(other, dict):
        return one.keys() == other.keys() and all(same(one[key], other[key]) for key in one)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(same, one, other))
    return one == other


@pytest.mark.parametrize("settings", DISPLAYS, ids=["metric", "ounces and a comma"])
def test_cpython_and_node_agree(node_door, settings):
    for record in records():
        request = {"record": record, "settings": settings}
        assert same(json.loads(door.ask("work_out", json.dumps(request))), node_door.ask("work_out", request))


def test_links_agree(node_door):
    for record in records():
        request = {"record": record, "address": "https://example.org/book/"}
        here = json.loads(door.ask("share", json.dumps(request)))["answer"]["link"]
        there = node_door.ask("share", request)["answer"]["link"]
        opened = [json.loads(door.ask("open_link", json.dumps({"fragment": made.partition("#")[2]})))
                  for made in (here, there)]
        assert same(*opened) and "answer" in opened[0]


def test_the_page_agrees(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    asked = [{"record": record, "settings": settings} for record in records() for settings in DISPLAYS]
    answers = maker.page.evaluate("""async (asked) => {
        const { ask } = await import('./core/door.js');
        return Promise.all(asked.map((request) => ask('work_out', request)));
    }""", asked)
    for request, answer in zip(asked, answers, strict=True):
        assert same(json.loads(door.ask("work_out", json.dumps(request)))["answer"], answer)


FILES = {"cup.stl": models.as_stl(models.cup(facets=96)), "block.stl": models.as_stl(models.box(60.0, 40.0, 50.0)),
         "leaning.stl": models.as_stl(models.cup(lean=12.0, facets=50))}


@pytest.mark.parametrize("name", FILES)
def test_the_page_reads_a_file_alike(maker, name):
    maker.opens()
    request = {"record": blank.blank(), "settings": {}, "place": "casts.0.cavity", "name": name}
    read = maker.page.evaluate("""async ([request, content]) => {
        const { read } = await import("./core/reading.js");
        const file = new File([Uint8Array.from(content)], request.name);
        return read({ name: "model", file, request, onProgress: () => {}, signal: new AbortController().signal });
    }""", [request, list(FILES[name])])
    *_, last = file.read("model", json.dumps(request), FILES[name])
    assert read == json.loads(last)["answer"]
