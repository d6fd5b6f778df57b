"""An answer that is a table: its rows are taken with a tap, and there is a way back. On a stand-in for the core."""

import json

import pytest

PLAN = {"name": "Tide cup", "casts": [{"weight": "640 g"}], "plan": {"count": "2"}}


def shown(tried, **screen):
    maker = tried(PLAN, **screen)
    maker.opens_card("Plan")
    maker.card("Plan").get_by_role("table").wait_for()
    return maker


def count(maker) -> str:
    return json.loads(maker.page.evaluate("localStorage.getItem('brimbook.vessel.v1')"))["record"]["plan"]["count"]


def rows(maker):
    return maker.card("Plan").locator(".answer-table tbody tr")


def chosen(maker) -> list[str]:
    """The rows that are marked as taken, by what stands first in them."""
    return rows(maker).locator("[aria-pressed=true] > span:first-child").all_inner_texts()


def becomes(maker, first: str) -> None:
    """Wait until a row is marked as taken."""
    rows(maker).locator("[aria-pressed=true] > span:first-child").get_by_text(first, exact=True).wait_for()


def test_it_stands_under_the_answer_with_a_head_for_each_column(tried):
    maker = shown(tried)
    assert maker.card("Plan").locator(".answer-table thead th[scope=col]").all_inner_texts() == ["Marks", "Each", "Verdict"]
    assert rows(maker).nth(1).locator("td").all_inner_texts() == ["30 mm", "fits"]
    assert maker.card("Plan").get_by_text("Fewest first.").bounding_box()["y"] > rows(maker).last.bounding_box()["y"]


def test_a_tap_anywhere_on_a_row_takes_it_and_undo_gives_it_back(tried):
    maker = shown(tried)
    assert chosen(maker) == ["2"]
    rows(maker).nth(2).locator("td").last.tap()
    becomes(maker, "3")
    assert chosen(maker) == ["3"] and count(maker) == "3"
    maker.page.get_by_role("button", name="Undo").tap()
    becomes(maker, "2")
    assert chosen(maker) == ["2"] and count(maker) == "2"


def test_its_button_takes_it_once_and_tells_itself(tried):
    maker = shown(tried)
    button = maker.card("Plan").get_by_role("button", name="1 : 1 of them, each 60 mm across")
    button.focus()
    maker.page.keyboard.press("Enter")
    becomes(maker, "1")
    assert count(maker) == "1"
    assert maker.page.get_by_role("button", name="Undo").count() == 1


def test_what_is_chosen_shows_by_more_than_its_color(tried):
    maker = shown(tried, forced_colors="active")
    assert rows(maker).nth(1).locator(".tick").is_visible()
    assert rows(maker).nth(0).locator(".tick").count() == 0


def test_a_row_that_offers_nothing_is_no_button(tried):
    maker = shown(tried)
    last = rows(maker).last
    assert last.locator("button").count() == 0
    last.locator("td").first.tap()
    assert count(maker) == "2" and maker.page.get_by_role("button", name="Undo").count() == 0


def test_to_take_what_is_taken_changes_nothing(tried):
    maker = shown(tried)
    rows(maker).nth(1).locator("td").first.tap()
    assert maker.page.get_by_role("button", name="Undo").count() == 0


@pytest.mark.parametrize("width", [390, 360, 320])
def test_rows_are_large_enough_for_a_wet_thumb(tried, width):
    maker = shown(tried, viewport={"width": width, "height": 700})
    heights = [row.bounding_box()["height"] for row in rows(maker).all()]
    assert min(heights) >= 47.9
