"""The maker's own materials and wicks: kept on the device, copied from the generic ones, offered in every vessel."""

import json

import page_book
import stand_in

# On a stand-in for the core, but for the last.
RECORD = {"casts": [{"weight": "640 g"}]}


def kept(maker) -> list[dict]:
    return json.loads(maker.page.evaluate("localStorage.getItem('brimbook.materials')") or "{}").get("materials", [])


def opens_materials(tried):
    maker = tried(RECORD, "#/")
    maker.page.get_by_role("link", name="My materials").tap()
    maker.card("Ocher cement").wait_for()
    return maker


def adds(maker, name: str) -> None:
    maker.page.get_by_role("button", name="Add a material").tap()
    maker.field("New material", "Name").wait_for()
    maker.page.keyboard.type(name)
    maker.card(name).wait_for()


def test_one_is_added_and_survives_a_reload(tried):
    maker = opens_materials(tried)
    adds(maker, "Gray bag mix")
    assert kept(maker) == [{"name": "Gray bag mix"}]
    maker.page.reload()
    maker.card("Gray bag mix").wait_for()


def test_a_generic_one_shows_its_source_and_is_copied(tried):
    maker = opens_materials(tried)
    maker.opens_card("Ocher cement")
    maker.card("Ocher cement").get_by_role("button", name="Density").tap()
    maker.reads("Ocher cement", "from memory", "invented")
    maker.card("Ocher cement").get_by_role("button", name="Copy to my materials").tap()
    maker.page.locator("[data-card=material-1].is-open").wait_for()
    assert kept(maker) == [{"name": "Ocher cement"}]


def test_one_is_removed_with_a_way_back_even_from_elsewhere(tried):
    maker = opens_materials(tried)
    adds(maker, "Gray bag mix")
    maker.card("Gray bag mix").get_by_role("button", name="Remove this material").tap()
    maker.card("Gray bag mix").wait_for(state="detached")
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.locator(".shelf").first.wait_for()
    maker.page.get_by_role("button", name="Undo").tap()
    assert kept(maker) == [{"name": "Gray bag mix"}]


def test_a_vessel_knows_the_materials_and_one_goes_there_and_back(tried):
    maker = tried(RECORD)
    maker.opens_card("Mold")
    maker.card("Mold").get_by_role("link", name="My materials").tap()
    adds(maker, "Gray bag mix")
    maker.page.get_by_role("link", name="Back to the vessel").tap()
    maker.opens_card("Mold")
    maker.reads("Mold", "On your shelf: Gray bag mix.")


def second_tab(maker, rest: str):
    page = maker.phone.context.new_page()
    page.goto(f"{maker.phone.address}{rest}")
    page.locator("main .cards").first.wait_for()
    return page


def test_an_open_vessel_is_worked_out_anew_when_another_tab_changes_the_shelf(tried):
    maker = tried(RECORD)
    maker.opens_card("Mold")
    other = second_tab(maker, "#/materials")
    other.get_by_role("button", name="Add a material").tap()
    other.get_by_label("Name", exact=True).fill("Gray bag mix")
    maker.reads("Mold", "On your shelf: Gray bag mix.")


def test_two_tabs_never_lose_a_change_silently(tried):
    maker = opens_materials(tried)
    adds(maker, "Gray bag mix")
    other = second_tab(maker, "#/materials")
    other.get_by_role("button", name="Add a material").tap()
    other.locator("[data-card=material-2] input").first.fill("Dune sand")
    maker.page.get_by_text("Your materials were changed in another tab").wait_for()
    maker.card("Dune sand").wait_for()
    maker.page.get_by_role("button", name="Use mine instead").tap()
    maker.card("Dune sand").wait_for(state="detached")
    other.get_by_role("button", name="Use mine instead").tap()
    maker.card("Dune sand").wait_for()


def adds_wick(maker, name: str) -> None:
    maker.page.get_by_role("button", name="Add a wick").tap()
    maker.field("New wick", "Name").wait_for()
    maker.page.keyboard.type(name)
    maker.card(name).wait_for()


def kept_wicks(maker) -> list[dict]:
    return json.loads(maker.page.evaluate("localStorage.getItem('brimbook.materials')")).get("wicks", [])


def test_wicks_are_kept_beside_the_materials_and_go_with_a_way_back(tried):
    maker = opens_materials(tried)
    adds(maker, "Gray bag mix")
    adds_wick(maker, "Thick braid")
    assert kept(maker) == [{"name": "Gray bag mix"}] and kept_wicks(maker) == [{"name": "Thick braid"}]
    maker.page.reload()
    maker.card("Thick braid").wait_for()
    maker.opens_card("Thick braid")
    maker.card("Thick braid").get_by_role("button", name="Remove this wick").tap()
    maker.card("Thick braid").wait_for(state="detached")
    assert kept(maker) == [{"name": "Gray bag mix"}] and kept_wicks(maker) == []
    maker.page.get_by_role("button", name="Undo").tap()
    maker.card("Thick braid").wait_for()


def test_a_vessel_knows_the_wicks_and_another_tab_s_wicks_too(tried):
    maker = opens_materials(tried)
    adds_wick(maker, "Thick braid")
    other = second_tab(maker, "#/vessel/v1")
    other.locator("[data-card=mold] .card-face").click()
    other.get_by_text("On your shelf: Thick braid.").wait_for()
    maker.field("Thick braid", "Name").fill("Thin braid")
    other.get_by_text("On your shelf: Thin braid.").wait_for()


def test_a_shelf_kept_before_there_were_wicks_is_read(tried):
    maker = tried(RECORD, "#/")
    maker.page.evaluate("localStorage.setItem('brimbook.materials', JSON.stringify({ materials: [{ name: 'Gray bag mix' }], saved: '2026' }))")
    maker.page.get_by_role("link", name="My materials").tap()
    maker.card("Gray bag mix").wait_for()
    adds_wick(maker, "Thick braid")
    assert kept(maker) == [{"name": "Gray bag mix"}] and kept_wicks(maker) == [{"name": "Thick braid"}]


def test_wicks_that_are_no_list_count_as_damaged(tried):
    maker = tried(RECORD, "#/")
    maker.page.evaluate("localStorage.setItem('brimbook.materials', JSON.stringify({ materials: [], wicks: 'half', saved: '2026' }))")
    maker.page.get_by_role("link", name="My materials").tap()
    maker.page.get_by_role("button", name="Copy text").wait_for()
    adds_wick(maker, "Thick braid")
    assert kept_wicks(maker) == [{"name": "Thick braid"}]
    assert "half" in maker.page.evaluate("localStorage.getItem('brimbook.damaged-materials')")


def test_both_buttons_stand_where_thumbs_are(tried):
    maker = opens_materials(tried)
    boxes = [maker.page.get_by_role("button", name=name).bounding_box() for name in ("Add a material", "Add a wick")]
    assert all(box["height"] >= 48 and box["y"] + box["height"] <= 844 for box in boxes)
    assert boxes[0]["y"] == boxes[1]["y"] and boxes[0]["x"] + boxes[0]["width"] <= boxes[1]["x"]


def test_a_damaged_text_is_laid_beside_not_written_over(tried):
    maker = tried(RECORD, "#/")
    maker.page.evaluate("localStorage.setItem('brimbook.materials', '{\"materials\": half')")
    maker.page.get_by_role("link", name="My materials").tap()
    maker.page.get_by_role("button", name="Copy text").wait_for()
    adds(maker, "Gray bag mix")
    assert kept(maker) == [{"name": "Gray bag mix"}]
    assert "half" in maker.page.evaluate("localStorage.getItem('brimbook.damaged-materials')")
    maker.page.get_by_role("button", name="Forget it").tap()
    maker.page.get_by_role("button", name="Copy text").wait_for(state="detached")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.get_by_role("button", name="Copy text").wait_for()
    assert kept(maker) == [{"name": "Gray bag mix"}]


def with_older_prices(tried):
    """Two vessels whose price is not that of the shelf any more, and one whose is."""
    maker = tried({**RECORD, "name": "Tide cup", "price": "18.50"}, "#/")
    stand_in.keep(maker, {**RECORD, "name": "Gull bowl", "price": "17.00"}, "v2")
    stand_in.keep(maker, {**RECORD, "name": "Keel bowl", "price": "21.00 g"}, "v3")
    maker.page.get_by_role("link", name="My materials").tap()
    adds(maker, "Gray bag mix")
    maker.types("Gray bag mix", "Pack", "21.00 g")
    return maker


def prices(maker) -> list[str]:
    return sorted(entry["record"]["price"] for entry in page_book.entries(maker).values())


def test_vessels_with_an_older_price_are_brought_up_to_date_with_a_way_back(tried):
    maker = with_older_prices(tried)
    before = page_book.entries(maker)
    maker.page.get_by_text("Gray bag mix costs 21.00 g now, and 2 of your vessels have another price.").wait_for()
    maker.page.get_by_role("button", name="Bring them up to date").tap()
    maker.page.get_by_text("2 vessels are up to date.").wait_for()
    assert prices(maker) == ["21.00 g"] * 3 and page_book.entries(maker)["v1"]["stamps"]
    maker.page.get_by_role("button", name="Bring them up to date").wait_for(state="detached")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.get_by_role("button", name="Bring them up to date").wait_for()
    assert page_book.entries(maker) == before


def test_older_prices_may_be_left_and_are_told_again_when_the_price_changes(tried):
    maker = with_older_prices(tried)
    maker.page.get_by_role("button", name="Leave").tap()
    maker.page.get_by_role("button", name="Bring them up to date").wait_for(state="detached")
    assert prices(maker) == ["17.00", "18.50", "21.00 g"]
    maker.types("Gray bag mix", "Pack", "22.00 g")
    maker.page.get_by_text("Gray bag mix costs 22.00 g now, and 3 of your vessels have another price.").wait_for()


def test_an_own_material_is_offered_in_the_mix(maker):
    maker.opens("#/materials")
    adds(maker, "Gray bag mix")
    maker.types("Gray bag mix", "Particle density", "2.80")
    maker.reads("Gray bag mix", "2.80 g/mL")
    maker.page.reload()
    maker.card("Gray bag mix").wait_for()
    maker.opens("#/new")
    maker.page.locator("input.reading").first.fill("640")
    maker.opens_card("Mix")
    maker.reads("Mix", "1205 g")
    maker.chooses("Mix", "Gray bag mix")
    maker.opens_more("Mix")
    assert maker.field("Mix", "Particle density of the powder").input_value() == "2.80 g/mL"


def test_a_shared_vessel_carries_its_material_along(maker, another_phone):
    test_an_own_material_is_offered_in_the_mix(maker)
    other = another_phone()
    other.page.goto(maker.shares())
    other.opens_card("Mix")
    other.card("Mix").get_by_role("radio", name="Gray bag mix", checked=True).wait_for(state="attached")

