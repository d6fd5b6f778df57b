"""The way from chapter to chapter of a long vessel. On a stand-in for the core, but for the last."""

import pytest

PLAN = {"name": "Tide cup", "casts": [{"weight": "640 g"}], "plan": {"count": "2"}}


def ways(maker):
    return maker.page.get_by_role("navigation", name="Chapters")


def closes(maker, title: str) -> None:
    maker.opens_card(title)
    maker.card(title).locator("button.card-face").tap()


def test_a_tap_brings_the_chapter_into_sight_and_the_focus_along(tried):
    maker = tried(PLAN, viewport={"width": 360, "height": 600})
    closes(maker, "Mold")
    ways(maker).get_by_role("button", name="Plan").tap()
    heading = maker.page.get_by_role("heading", name="Plan", level=2)
    maker.page.wait_for_function("(each) => each === document.activeElement", arg=heading.element_handle())
    box = heading.bounding_box()
    assert box["y"] >= 0 and box["y"] + box["height"] <= 600


def test_an_open_card_has_the_screen_for_itself(tried):
    maker = tried(PLAN)
    maker.opens_card("Log")
    assert ways(maker).count() == 0
    maker.card("Log").locator("button.card-face").tap()
    ways(maker).wait_for()


def test_a_page_of_few_chapters_needs_none(tried):
    maker = tried({"casts": [{"weight": "640 g"}]})
    closes(maker, "Log")
    assert ways(maker).count() == 0


def test_a_second_mold_s_chapters_carry_its_number(tried):
    maker = tried({"casts": [{"weight": "640 g"}, {"weight": "300 g"}]})
    maker.card("Log 2").wait_for()
    closes(maker, "Mold")
    assert ways(maker).get_by_role("button").all_inner_texts() == ["Cast", "Set and dry", "Cast 2", "Set and dry 2"]


@pytest.mark.parametrize("width", [390, 320])
def test_it_is_one_line_that_scrolls_for_itself(maker, another_phone, width):
    maker = another_phone(viewport={"width": width, "height": 700})
    maker.opens("#/demo/demo-keel-bowl")
    closes(maker, "Burn test")
    ways(maker).wait_for()
    assert ways(maker).bounding_box()["height"] <= 52
    tops = {round(each.bounding_box()["y"]) for each in ways(maker).get_by_role("button").all()}
    assert len(tops) == 1
    last = ways(maker).get_by_role("button").last
    last.tap()
    assert maker.page.evaluate("document.documentElement.scrollWidth") <= width
    assert maker.page.locator(".chapter").last.bounding_box()["y"] < 700
