"""What to make: vessels are put on the plan, the core's list is asked with them, and it can be printed and passed on.
On a stand-in for the core, but for the last.
"""

import json

import page_book
import pytest
import stand_in
from printing import prints, sizes

from brimbook.record import blank

VESSEL = {"name": "Tide cup", "casts": [{"weight": "640 g"}]}


def plan_of(maker) -> list[dict]:
    return json.loads(maker.page.evaluate("localStorage.getItem('brimbook.plan')") or "{}").get("plan", [])


def opens_plan(tried, **screen):
    maker = tried(VESSEL, "#/", **screen)
    stand_in.keep(maker, {"name": "Gull bowl", "casts": [{}]}, "v2")
    maker.page.get_by_role("link", name="Make and buy").tap()
    maker.page.get_by_text("Nothing is planned yet").wait_for()
    return maker


def adds(maker, *names: str) -> None:
    maker.page.get_by_role("button", name="Add a vessel").tap()
    for name in names:
        maker.page.get_by_role("dialog").get_by_role("button", name=name).tap()
        maker.page.get_by_role("dialog").locator(".row", has_text=name).get_by_text("on the plan").wait_for()
    maker.page.get_by_role("button", name="Done").tap()


def test_vessels_are_chosen_from_the_book_and_stay_planned(tried):
    maker = opens_plan(tried)
    adds(maker, "Tide cup", "Gull bowl")
    assert plan_of(maker) == [{"id": "v1", "count": "1"}, {"id": "v2", "count": "1"}]
    maker.reads("What to buy", "24 USD")
    maker.opens_card("Gull bowl")
    maker.types("Gull bowl", "How many to make", "12")
    assert plan_of(maker)[1]["count"] == "12"
    maker.page.reload()
    maker.card("Gull bowl").wait_for()
    assert plan_of(maker)[1]["count"] == "12"


def test_one_is_found_in_the_list_and_is_offered_once(tried):
    maker = opens_plan(tried)
    adds(maker, "Tide cup")
    maker.page.get_by_role("button", name="Add a vessel").tap()
    dialog = maker.page.get_by_role("dialog")
    assert not dialog.get_by_role("button", name="Tide cup").count()
    dialog.get_by_label("Find a vessel").fill("gull")
    assert dialog.locator(".row-name").all_inner_texts() == ["Gull bowl"]
    dialog.get_by_label("Find a vessel").fill("kelp")
    dialog.get_by_text("Nothing is found for “kelp”.").wait_for()


def test_one_is_taken_off_with_a_way_back(tried):
    maker = opens_plan(tried)
    adds(maker, "Tide cup", "Gull bowl")
    maker.opens_card("Tide cup")
    maker.card("Tide cup").get_by_role("button", name="Take it off the plan").tap()
    maker.card("Tide cup").wait_for(state="detached")
    assert plan_of(maker) == [{"id": "v2", "count": "1"}]
    maker.page.get_by_role("button", name="Undo").tap()
    maker.card("Tide cup").wait_for()


def test_the_list_is_printed_and_passed_on_with_the_vessels(tried):
    maker = opens_plan(tried, has_touch=True)
    adds(maker, "Tide cup", "Gull bowl")
    maker.opens_card("What to buy")
    with maker.page.expect_download() as download:
        maker.card("What to buy").get_by_role("button", name="Pass the list on").tap()
    assert download.value.suggested_filename == "to-buy.txt"
    assert download.value.path().read_text("utf-8") == "For Tide cup, Gull bowl"
    assert len(sizes(prints(maker, "What to buy", "Print the list"))) == 2


def test_a_vessel_that_another_tab_renames_is_renamed_here(tried):
    maker = opens_plan(tried)
    adds(maker, "Tide cup")
    other = maker.phone.context.new_page()
    other.goto(f"{maker.phone.address}#/vessel/v1")
    other.get_by_label("Name of the vessel").fill("Kelp cup")
    maker.card("Kelp cup").wait_for()


def test_two_tabs_never_lose_a_change_of_the_plan(tried):
    maker = opens_plan(tried)
    adds(maker, "Tide cup")
    other = maker.phone.context.new_page()
    other.goto(f"{maker.phone.address}#/plan")
    other.locator("[data-card=make-1] .card-face").click()
    other.get_by_label("How many to make").fill("7")
    maker.page.get_by_text("Your plan was changed in another tab").wait_for()
    maker.page.get_by_role("button", name="Use mine instead").tap()
    maker.page.get_by_text("Your plan was changed in another tab").wait_for(state="detached")
    assert plan_of(maker) == [{"id": "v1", "count": "1"}]


def test_from_a_vessel_it_is_planned_once_and_the_way_back_leads_there(tried):
    maker = tried(VESSEL)
    for _ in range(2):
        maker.page.get_by_role("button", name="Plan to make it").tap()
        maker.card("Tide cup").wait_for()
        assert plan_of(maker) == [{"id": "v1", "count": "1"}]
        maker.page.get_by_role("link", name="Back to the vessel").tap()
        maker.card("Mold").wait_for()


def test_a_damaged_plan_is_laid_beside_not_written_over(tried):
    maker = tried(VESSEL, "#/")
    maker.page.evaluate("localStorage.setItem('brimbook.plan', '{\"plan\": half')")
    maker.page.get_by_role("link", name="Make and buy").tap()
    adds(maker, "Tide cup")
    assert plan_of(maker) == [{"id": "v1", "count": "1"}]
    assert "half" in maker.page.evaluate("localStorage.getItem('brimbook.damaged-plan')")


@pytest.mark.parametrize("width", [390, 360, 320])
def test_a_wide_table_scrolls_in_its_own_frame(tried, width):
    maker = opens_plan(tried, viewport={"width": width, "height": 640})
    adds(maker, "Tide cup")
    maker.opens_card("What to buy")
    frame = maker.card("What to buy").locator(".table-frame")
    wide, seen, right = frame.evaluate("each => [each.scrollWidth, each.clientWidth, each.getBoundingClientRect().right]")
    assert wide > seen and right <= width
    assert maker.page.evaluate("document.documentElement.scrollWidth") <= width
    frame.focus()
    maker.page.keyboard.press("ArrowRight")
    maker.page.wait_for_function("() => document.querySelector('.table-frame').scrollLeft > 0")


def test_what_is_to_be_bought_for_a_real_vessel(maker):
    demo = blank.demos()[3]
    page_book.fill(maker, [{"record": demo, "line": "", "saved": "2026-11-20T10:00:00.000Z"}], "#/plan")
    adds(maker, demo["name"])
    maker.opens_card(demo["name"])
    maker.types(demo["name"], "How many to make", "12")
    maker.opens_card("What to buy")
    maker.reads("What to buy", "Soy wax", "Cotton, medium", "$")
    with maker.page.expect_download() as download:
        maker.card("What to buy").get_by_role("button", name="list").filter(has_not_text="Print").first.tap()
    assert "Soy wax" in download.value.path().read_text("utf-8")
    assert sizes(prints(maker, "What to buy", "Print"))
