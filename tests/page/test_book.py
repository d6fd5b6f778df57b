"""The whole book as a file: saved, read on another device, and nothing written over unasked."""

import json

import page_book
import pytest

HERE = {"phone-1": "2026-11-20T10:00:00.000Z"}
THERE = {"desk-2": "2026-11-21T10:00:00.000Z"}


def saves(maker, button: str) -> str:
    with maker.page.expect_download() as download:
        maker.page.get_by_role("button", name=button).tap()
    assert download.value.suggested_filename.startswith("brimbook-")
    return download.value.path().read_text("utf-8")


def reads(maker, text: str, tmp_path, name: str = "keep.json") -> None:
    """Choose a file with this text, on the page of the book."""
    path = tmp_path / name
    path.write_text(text, "utf-8")
    maker.page.locator("input[type=file]").set_input_files(path)


def opens_book(maker, *entries: dict):
    page_book.fill(maker, list(entries), "#/")
    maker.page.get_by_role("link", name="Save the book").tap()
    maker.page.get_by_role("button", name="Save the whole book").wait_for()
    return maker


def chooses(maker, vessel: str, answer: str) -> None:
    maker.page.get_by_role("group", name=f"What becomes of {vessel}").get_by_role("radio", name=answer, exact=True).tap()


def takes(maker) -> None:
    maker.page.get_by_role("button", name="Take these into the book").tap()
    maker.page.get_by_text("Taken from").wait_for()


def book_file(*entries: dict, **own) -> str:
    return json.dumps({"brimbook": 1, "vessels": list(entries), **own})


def test_a_saved_book_is_whole_on_another_device(maker, another_phone, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl", own_notes="Rim chips"), page_book.vessel("b", "Tide cup"))
    maker.page.get_by_text("It was not saved as a file yet.").wait_for()
    text = saves(maker, "Save the whole book")
    maker.page.get_by_text("No vessel was changed since.").wait_for()
    other = another_phone()
    other.opens("#/book")
    reads(other, text, tmp_path)
    other.page.get_by_role("region", name="New").wait_for()
    assert page_book.names(other) == []
    takes(other)
    assert page_book.entries(other) == page_book.entries(maker)
    other.page.get_by_role("button", name="Undo").tap()
    other.page.get_by_text("Everything is as it was.").wait_for()
    assert page_book.names(other) == []


def test_it_tells_how_much_was_changed_since_it_was_saved(maker):
    opens_book(maker, page_book.vessel("a", "Keel bowl"), page_book.vessel("b", "Tide cup"))
    saves(maker, "Save the whole book")
    maker.page.goto(f"{maker.phone.address}#/vessel/a")
    maker.page.get_by_label("Name of the vessel").fill("Keel dish")
    maker.page.goto(f"{maker.phone.address}#/book")
    maker.page.get_by_text("1 vessel was changed since.").wait_for()


def test_what_was_changed_on_one_side_has_a_usual_answer(maker, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl", stamps=HERE), page_book.vessel("b", "Tide cup", stamps={**HERE, **THERE}))
    reads(maker, book_file(page_book.vessel("a", "Keel dish", stamps={**HERE, **THERE}), page_book.vessel("b", "Tide mug", stamps=HERE)), tmp_path)
    maker.page.get_by_role("region", name="Changed in the file").wait_for()
    maker.page.get_by_role("region", name="Older in the file").wait_for()
    takes(maker)
    assert page_book.names(maker) == ["Keel dish", "Tide cup"]
    assert page_book.entries(maker)["a"]["stamps"] == {**HERE, **THERE}


def in_conflict(maker, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl", stamps=HERE))
    reads(maker, book_file(page_book.vessel("a", "Keel dish", stamps=THERE), page_book.vessel("n", "New cup")), tmp_path)
    maker.page.get_by_role("region", name="In conflict").wait_for()
    return maker


def test_a_conflict_that_nobody_decides_stays_as_it_is(maker, tmp_path):
    in_conflict(maker, tmp_path)
    assert not maker.page.get_by_role("region", name="In conflict").get_by_role("radio", checked=True).count()
    takes(maker)
    assert page_book.names(maker) == ["Keel bowl", "New cup"]
    assert page_book.entries(maker)["a"]["stamps"] == HERE


@pytest.mark.parametrize(("answer", "names"), [("Mine", ["Keel bowl", "New cup"]), ("The file's", ["Keel dish", "New cup"]),
                                               ("Both", ["Keel bowl", "Keel dish (from the file)", "New cup"])])
def test_a_conflict_is_decided_and_undone(maker, tmp_path, answer, names):
    in_conflict(maker, tmp_path)
    before = page_book.entries(maker)
    chooses(maker, "Keel", answer)
    takes(maker)
    assert page_book.names(maker) == names
    if answer != "Both":
        assert page_book.entries(maker)["a"]["stamps"] == {**HERE, **THERE}
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.get_by_text("Everything is as it was.").wait_for()
    assert page_book.entries(maker) == before


def test_one_answer_for_all_of_a_kind(maker, tmp_path):
    opens_book(maker)
    reads(maker, book_file(*(page_book.vessel(f"n{number:03d}", f"Cup {number}") for number in range(90))), tmp_path)
    group = maker.page.get_by_role("region", name="New")
    group.get_by_role("group", name="For all of them").get_by_role("radio", name="Leave it").tap()
    maker.page.get_by_role("button", name="Take these into the book").wait_for(state="detached")
    chooses(maker, "Cup 7", "Take it")
    takes(maker)
    assert page_book.names(maker) == ["Cup 7"]


def test_a_vessel_changed_while_one_chooses_is_left_alone(maker, tmp_path):
    in_conflict(maker, tmp_path)
    chooses(maker, "Keel", "The file's")
    other = maker.phone.context.new_page()
    other.goto(f"{maker.phone.address}#/vessel/a")
    other.get_by_label("Name of the vessel").fill("Keel jar")
    maker.page.wait_for_function("() => localStorage.getItem('brimbook.vessel.a').includes('Keel jar')")
    takes(maker)
    maker.page.get_by_text("1 vessel was changed here while you chose").wait_for()
    assert page_book.names(maker) == ["Keel jar", "New cup"]


def test_another_tab_where_the_vessel_lies_open_gives_way(maker, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl", saved="2026-11-22T10:00:00.000Z", stamps=HERE))
    other = maker.phone.context.new_page()
    other.goto(f"{maker.phone.address}#/vessel/a")
    other.locator(".card").first.wait_for()
    reads(maker, book_file(page_book.vessel("a", "Keel dish", stamps=THERE)), tmp_path)
    chooses(maker, "Keel", "The file's")
    takes(maker)
    other.get_by_text("This vessel was changed in another tab").wait_for()
    assert other.get_by_label("Name of the vessel").input_value() == "Keel dish"


def test_the_way_back_never_undoes_a_later_change(maker, tmp_path):
    in_conflict(maker, tmp_path)
    chooses(maker, "Keel", "The file's")
    takes(maker)
    maker.page.goto(f"{maker.phone.address}#/vessel/a")
    maker.page.get_by_label("Name of the vessel").fill("Keel jar")
    maker.page.goto(f"{maker.phone.address}#/book")
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.get_by_text("Put back, but for what was changed since.").wait_for()
    assert page_book.names(maker) == ["Keel jar"]


def test_materials_and_settings_come_along_where_they_are_chosen(maker, tmp_path):
    opens_book(maker)
    maker.page.evaluate("localStorage.setItem('brimbook.materials', JSON.stringify({ materials: [{ name: 'Dune sand' }], wicks: [], saved: '2026' }))")
    text = book_file(page_book.vessel("n", "New cup"), materials=[{"name": "Gray bag mix"}], settings={"mass": "oz"}, plan=[{"id": "n", "count": "3"}])
    reads(maker, text, tmp_path)
    maker.page.get_by_role("region", name="Besides vessels").wait_for()
    chooses(maker, "Settings", "Mine")
    takes(maker)
    kept = maker.page.evaluate("[localStorage.getItem('brimbook.materials'), localStorage.getItem('brimbook.plan'), localStorage.getItem('brimbook.settings')]")
    assert [each["name"] for each in json.loads(kept[0])["materials"]] == ["Dune sand", "Gray bag mix"]
    assert json.loads(kept[1])["plan"] == [{"id": "n", "count": "3"}] and kept[2] is None
    maker.page.get_by_role("button", name="Undo").tap()
    maker.page.get_by_text("Everything is as it was.").wait_for()
    assert "Gray bag mix" not in maker.page.evaluate("localStorage.getItem('brimbook.materials')")


def test_settings_that_are_taken_hold_at_once(maker, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl"))
    reads(maker, book_file(settings={"mass": "oz"}), tmp_path)
    maker.page.get_by_role("region", name="Besides vessels").wait_for()
    takes(maker)
    maker.page.goto(f"{maker.phone.address}#/settings")
    maker.page.get_by_role("radio", name="Ounces", checked=True).or_(maker.page.get_by_role("radio", name="oz", checked=True)).first.wait_for(state="attached")


def test_a_table_goes_to_a_spreadsheet_and_back(maker, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl", stamps=HERE), page_book.vessel("b", "Tide cup", stamps=HERE))
    table = saves(maker, "Save for a spreadsheet")
    maker.page.get_by_text("It was not saved as a file yet.").wait_for()
    reads(maker, table.replace("Keel bowl", "Keel dish"), tmp_path, "keep.csv")
    maker.page.get_by_text("1 vessel is the same here and in the file.").wait_for()
    takes(maker)
    assert page_book.names(maker) == ["Keel dish", "Tide cup"]
    # The other device must see that this one is newer.
    mine = page_book.entries(maker)["a"]["stamps"]
    assert mine["phone-1"] == HERE["phone-1"] and len(mine) == 2


def test_a_damaged_file_gives_what_it_still_holds(maker, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl"), page_book.vessel("b", "Tide cup"))
    lines = [line[:40] if '"Keel bowl"' in line else line for line in saves(maker, "Save the whole book").split("\n")]
    maker.page.evaluate("localStorage.clear()")
    maker.page.reload()
    maker.page.get_by_role("button", name="Save the whole book").wait_for()
    reads(maker, "\n".join(lines), tmp_path)
    maker.page.get_by_role("region", name="Not readable").wait_for()
    takes(maker)
    assert page_book.names(maker) == ["Tide cup"]


@pytest.mark.parametrize("text", ["", "Dear diary, nothing of a book", "[1, 2, 3]"])
def test_a_file_of_something_else_is_told_in_a_sentence(maker, tmp_path, text):
    opens_book(maker, page_book.vessel("a", "Keel bowl"))
    reads(maker, text, tmp_path)
    maker.page.locator(".fault").wait_for()
    assert page_book.names(maker) == ["Keel bowl"]
    maker.page.get_by_role("button", name="Choose a file").wait_for()


def test_a_file_that_is_far_too_large_is_not_even_read(maker, tmp_path):
    opens_book(maker)
    path = tmp_path / "huge.json"
    with path.open("wb") as file:
        file.truncate(100_000_001)
    maker.page.locator("input[type=file]").set_input_files(path)
    maker.page.get_by_text("This file is larger than 100 MB.").wait_for()


def test_a_file_that_says_nothing_new_is_left(maker, tmp_path):
    opens_book(maker, page_book.vessel("a", "Keel bowl"))
    reads(maker, saves(maker, "Save the whole book"), tmp_path)
    maker.page.get_by_text("There is nothing in this file that your book does not have.").wait_for()
    assert not maker.page.get_by_role("button", name="Take these into the book").count()
    maker.page.get_by_role("button", name="Leave the file").tap()
    maker.page.get_by_role("button", name="Save the whole book").wait_for()


def test_a_full_storage_is_told_and_undone(maker, tmp_path):
    opens_book(maker)
    maker.page.evaluate("localStorage.setItem('filler', 'x'.repeat(5200000))")
    notes = "A long note. " * 2000
    reads(maker, book_file(*(page_book.vessel(f"n{number}", f"Cup {number}", notes=notes) for number in range(4))), tmp_path)
    takes(maker)
    maker.page.get_by_text("This device's storage is full").wait_for()


def test_a_new_vessel_of_a_table_gets_its_line_on_the_shelf(maker, tmp_path):
    opens_book(maker)
    reads(maker, "name,casts.0.cavity.readings.0.water\nTide cup,640 g\n", tmp_path, "cups.csv")
    takes(maker)
    maker.page.get_by_role("link", name="Back to the shelf").tap()
    maker.page.get_by_text("1205 g powder").wait_for()
