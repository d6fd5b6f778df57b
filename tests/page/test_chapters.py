"""The way from chapter to chapter of a long vessel. On a stand-in for the core, but for the last."""

import pytest

PLAN = {"name": "Tide cup", "casts": [{"weight": "640 g"}], "plan": {"count": "2"}}


def ways(maker):
    return maker.page.get_by_role("navigation", name="Chapters")


def test_a_tap_brings_the_chapter_to_the_top_and_the_focus_along(tried):
    maker = tried(PLAN, viewport={"width": 360, "height": 600})
    maker.opens_card("Mold")
    ways(maker).get_by_role("button", name="Plan").tap()
    heading = maker.page.get_by_role("heading", name="Plan", level=2)
    maker.page.wait_for_function("(each) => each === document.activeElement", arg=heading.element_handle())
    box = heading.bounding_box()
    assert box["y"] >= 0 and box["y"] + box["height"] <= 600


def test_the_chapter_of_the_open_card_is_marked(tried):
    maker = tried(PLAN)
    assert ways(maker).locator("[aria-current]").all_inner_texts() == ["Cast"] or ways(maker).locator("[aria-current]").count() == 0
    maker.opens_card("Log")
    assert ways(maker).locator("[aria-current]").all_inner_texts() == ["Set and dry"]


def test_it_makes_way_for_the_pad(tried):
    maker = tried(PLAN)
    maker.opens_card("Mold")
    maker.field("Mold", "Water").tap()
    maker.page.get_by_role("group", name="Number pad").wait_for()
    assert ways(maker).count() == 0
    maker.page.keyboard.press("Escape")
    ways(maker).wait_for()


def test_a_page_of_few_chapters_needs_none(tried):
    maker = tried({"casts": [{"weight": "640 g"}]})
    maker.card("Log").wait_for()
    assert ways(maker).count() == 0


def test_a_second_mold_s_chapters_carry_its_number(tried):
    maker = tried({"casts": [{"weight": "640 g"}, {"weight": "300 g"}]})
    maker.card("Log 2").wait_for()
    assert ways(maker).get_by_role("button").all_inner_texts() == ["Cast", "Set and dry", "Cast 2", "Set and dry 2"]


@pytest.mark.parametrize("width", [390, 320])
def test_it_is_one_line_that_scrolls_for_itself(maker, another_phone, width):
    maker = another_phone(viewport={"width": width, "height": 700})
    maker.opens("#/demo/demo-keel-bowl")
    ways(maker).wait_for()
    assert ways(maker).bounding_box()["height"] <= 52
    tops = {round(each.bounding_box()["y"]) for each in ways(maker).get_by_role("button").all()}
    assert len(tops) == 1
    last = ways(maker).get_by_role("button").last
    last.tap()
    assert maker.page.evaluate("document.documentElement.scrollWidth") <= width
    assert maker.page.locator(".chapter").last.bounding_box()["y"] < 700


def test_the_way_to_the_open_card_comes_into_sight(maker):
    maker.opens("#/demo/demo-keel-bowl")
    maker.opens_card("Burn test")
    here = ways(maker).locator("[aria-current]")
    assert here.inner_text() == "Burn"
    box = here.bounding_box()
    assert box["x"] >= 0 and box["x"] + box["width"] <= 390
