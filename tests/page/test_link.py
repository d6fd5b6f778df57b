"""A vessel as a link: whole by itself, shown first, kept only when the reader says so."""

import io
import json

import zxingcpp
from PIL import Image

from brimbook.record import blank, link


def test_a_link_opens_in_another_profile_with_the_same_figures(maker, another_phone):
    maker.opens()
    maker.taps_digits("640")
    maker.page.get_by_label("Name of the vessel").fill("Gull cup")
    maker.opens_card("Well")
    maker.types("Well", "Water", "300")
    maker.reads("Wax", "246 g", "15 g")
    address = maker.shares()
    assert len(address) < 1200
    other = another_phone()
    other.page.goto(address)
    other.reads("Mix", "1205 g", "301 g")
    other.reads("Wax", "246 g", "15 g")
    assert other.page.get_by_label("Name of the vessel").input_value() == "Gull cup"


def test_it_is_in_the_book_only_when_kept(another_phone):
    maker = another_phone()
    maker.opens(f"#{link.to_fragment(blank.demos()[0])}")
    maker.reads("Mix", "587 g")
    assert "Tide cup" not in maker.page.evaluate("Object.keys(localStorage).filter(k => k.includes('.vessel.')).join()")
    assert maker.page.evaluate("Object.keys(localStorage).filter(k => k.startsWith('brimbook.vessel.')).length") == 0
    maker.page.get_by_role("button", name="Keep it").tap()
    maker.page.wait_for_url("**/#/vessel/**")
    assert maker.page.evaluate("Object.keys(localStorage).filter(k => k.startsWith('brimbook.vessel.')).length") == 1


def test_an_edited_copy_never_overwrites_silently(another_phone):
    maker = another_phone()
    demo = blank.demos()[0]
    maker.opens(f"#{link.to_fragment(demo)}")
    maker.page.get_by_role("button", name="Keep it").tap()
    maker.page.wait_for_url("**/#/vessel/**")
    changed = {**demo, "notes": "Changed by a friend."}
    maker.page.goto(f"{maker.phone.address}#{link.to_fragment(changed)}")
    maker.reads("Mix", "587 g")
    maker.page.get_by_role("button", name="Keep it").tap()
    maker.page.get_by_role("button", name="Keep both").tap()
    maker.page.wait_for_url("**/#/vessel/**")
    kept = maker.page.evaluate("Object.entries(localStorage).filter(([k]) => k.startsWith('brimbook.vessel.')).map(([, v]) => v)")
    notes = sorted(json.loads(entry)["record"].get("notes", "") for entry in kept)
    assert notes == sorted([demo["notes"], "Changed by a friend."])


def test_a_damaged_link_is_told_in_a_sentence(maker):
    whole = link.to_fragment(blank.demos()[0])
    maker.opens(f"#{whole[:-9]}")
    maker.page.get_by_text("This link is damaged").wait_for(timeout=20_000)


def test_the_code_on_screen_reads_as_the_link(maker):
    maker.opens()
    maker.taps_digits("640")
    maker.reads("Mix", "1205 g")
    address = maker.shares()
    code = maker.page.locator("svg.code")
    code.wait_for()
    picture = Image.open(io.BytesIO(code.screenshot()))
    assert [found.text for found in zxingcpp.read_barcodes(picture)] == [address]


def test_nothing_of_a_link_reaches_the_server(maker):
    asked = []
    maker.page.on("request", lambda request: asked.append(request.url))
    maker.opens(f"#{link.to_fragment(blank.demos()[0])}")
    maker.reads("Mix", "587 g")
    assert asked and not [url for url in asked if "1.e" in url.partition("#")[0]]
