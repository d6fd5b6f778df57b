"""Find a lot: the vessels that hold it, and the list of who got them. On a stand-in for the core, but for the last."""

import page_book
import stand_in

from brimbook.record import blank

VESSEL = {"name": "Tide cup", "casts": [{}], "batches": [{"lot": "TID-260926"}]}


def opens_lots(tried, rest: str = "#/lots", **screen):
    maker = tried(VESSEL, "#/", **screen)
    stand_in.keep(maker, {"name": "Gull bowl", "casts": [{}], "batches": [{"lot": "GUL-260926"}]}, "v2")
    maker.page.goto(f"{maker.phone.address}{rest}")
    maker.page.get_by_label("A lot, or a part of it").wait_for()
    return maker


def test_a_lot_leads_to_its_vessels_and_their_buyers(tried):
    maker = opens_lots(tried)
    maker.page.get_by_label("A lot, or a part of it").fill("TID")
    maker.page.get_by_text("Lot TID went into 1 vessels.").wait_for()
    maker.page.get_by_text("Went to: 3 to the corner shop").wait_for()
    maker.page.get_by_role("link", name="Tide cup").tap()
    maker.card("Mold").wait_for()


def test_the_newest_search_is_answered(tried):
    maker = opens_lots(tried)
    maker.page.get_by_label("A lot, or a part of it").press_sequentially("-260926")
    maker.page.get_by_text("Lot -260926 went into 2 vessels.").wait_for()
    maker.page.get_by_role("button", name="Show all").tap()
    maker.page.get_by_text("Type the lot of a batch").wait_for()
    assert not maker.page.get_by_role("list", name="Vessels with this lot").count()


def test_an_address_may_name_the_lot(tried):
    maker = opens_lots(tried, "#/lots/GUL-26")
    maker.page.get_by_text("Lot GUL-26 went into 1 vessels.").wait_for()
    assert maker.page.get_by_label("A lot, or a part of it").input_value() == "GUL-26"


def test_the_list_is_taken_along_as_a_text(tried):
    maker = opens_lots(tried)
    maker.page.get_by_label("A lot, or a part of it").fill("26 09")
    maker.page.get_by_text("went into 0 vessels").wait_for()
    assert not maker.page.get_by_role("button", name="Take the list along").count()
    maker.page.get_by_label("A lot, or a part of it").fill("GUL-26")
    with maker.page.expect_download() as download:
        maker.page.get_by_role("button", name="Take the list along").tap()
    assert download.value.suggested_filename == "lot-GUL-26.txt"
    assert download.value.path().read_text("utf-8") == (
        "Lot GUL-26 went into 1 vessels.\n\nGull bowl\n- Batch GUL-26, 12 vessels\n- Went to: 3 to the corner shop\n")


def test_it_is_found_anew_when_one_comes_back(tried):
    maker = opens_lots(tried)
    maker.page.get_by_label("A lot, or a part of it").fill("GUL")
    maker.page.get_by_text("Lot GUL went into 1 vessels.").wait_for()
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.get_by_role("button", name="Remove Gull bowl").tap()
    maker.page.get_by_role("link", name="Find a lot").tap()
    maker.page.get_by_text("Lot GUL went into 0 vessels.").wait_for()


def test_without_batches_there_is_a_word_on_where_lots_are_noted(another_phone):
    maker = another_phone()
    maker.opens("#/lots")
    maker.page.get_by_text("Lots are noted with a vessel's batches.").wait_for()


BATCH = {"made_on": "2026-09-26", "vessels": "12", "used": [{"role": "wax", "name": "Soy wax", "lot": "W 4711"}],
         "went_to": [{"who": "Corner shop", "vessels": "3"}]}


def keeps_demo(maker, rest: str, **record) -> None:
    """The bowl of the examples, in the maker's own book."""
    demo = {**blank.demos()[3], "id": "keel", **record}
    page_book.fill(maker, [{"record": demo, "line": "", "saved": "2026-11-20T10:00:00.000Z"}], rest)


def test_a_bad_lot_of_wax_leads_to_who_got_it(maker):
    keeps_demo(maker, "#/lots", batches=[BATCH])
    maker.page.get_by_label("A lot, or a part of it").fill("w-4711")
    maker.page.get_by_text("3 of them passed on").wait_for()
    maker.page.get_by_text("Corner shop").wait_for()


def test_a_lot_that_was_made_up_is_found_from_the_shelf(maker):
    keeps_demo(maker, "#/", name="Keel bowl", batches=[BATCH])
    maker.page.get_by_label("Find by name, notes or lot").fill("KEE-260926")
    maker.page.get_by_role("link", name="Look for it as a lot").tap()
    maker.page.get_by_role("link", name="Keel bowl").wait_for()


def test_a_batch_is_noted_with_what_goes_in(maker):
    keeps_demo(maker, "#/vessel/keel")
    maker.opens_card("Batches and lots")
    maker.card("Batches and lots").get_by_role("button", name="Note a batch").tap()
    made_on, today = maker.page.evaluate("""() => [JSON.parse(localStorage.getItem('brimbook.vessel.keel')).record.batches.at(-1).made_on,
      new Date().toLocaleDateString('sv')]""")
    assert made_on == today
    maker.types("Batches and lots", "Lot of Soy wax", "W 4711")
    maker.page.goto(f"{maker.phone.address}#/lots")
    maker.page.get_by_label("A lot, or a part of it").fill("4711")
    maker.page.get_by_role("link", name="Keel").wait_for()
