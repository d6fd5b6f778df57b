"""A table that was edited beside the book."""

import csv
import io

import pytest
from books import book
from brimbook.book.edited import compare_table
from brimbook.book.file import book_file, book_preview
from brimbook.book.kept import Kept, entry_text, is_mark
from brimbook.record import tree

HEAD = "id,name,notes"
SAVED = "2026-09-26T10:00:00.000Z"


def entry(mark="7", name="Tide cup", stamps=None, **record):
    return {"record": {"version": 1, "id": mark, "name": name, **record}, "line": "640 g", "saved": SAVED,
            "stamps": {"a": SAVED} if stamps is None else stamps}


def table_of(entries):
    return book_file(entries, {}, "", "csv")["text"]


def with_cell(text, line, column, cell):
    """The table with one cell changed, as a spreadsheet would save it."""
    rows = list(csv.reader(io.StringIO(text.removeprefix("\ufeff"), newline="")))
    rows[line][rows[0].index(column)] = cell
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\r\n").writerows(rows)
    return out.getvalue()


def only_row(text, kept):
    told = book_preview(text, kept, {})
    assert told["damaged"] == [] and len(told["rows"]) == 1, told
    return told["rows"][0]


def test_an_edited_cell_is_a_change_and_all_else_stays():
    kept = [entry(notes="Slowly", casts=[{"pieces": "2", "strange": 5}]), entry("8")]
    row = only_row(with_cell(table_of(kept), 1, "casts.0.pieces", "3"), kept)
    assert (row["state"], row["says"]) == ("changed", "Changed in the file. Pieces: 2 here, 3 in the file.")
    assert row["entry"] == {**kept[0], "line": "", "record": {**kept[0]["record"], "casts": [{"pieces": "3", "strange": 5}]}}


def test_an_emptied_cell_empties_its_leaf_and_a_missing_column_leaves_it():
    kept = [entry(notes="Slowly", made_on="2026-09-26")]
    row = only_row(with_cell(table_of(kept), 1, "notes", ""), kept)
    assert row["entry"]["record"]["notes"] == "" and row["entry"]["record"]["made_on"] == "2026-09-26"
    assert book_preview(f"id,name,saved\n7,Tide cup,{SAVED}\n", kept, {})["same"] == 1


def test_a_column_may_be_added_and_makes_its_way():
    kept = [entry()]
    text = f"id,casts.1.cavity.readings.0.water,saved\n7,640 g,{SAVED}\n"
    row = only_row(text, kept)
    assert row["state"] == "changed" and row["entry"]["record"]["casts"] == [{}, {"cavity": {"readings": [{"water": "640 g"}]}}]


def test_while_the_book_went_on_an_edited_row_is_a_conflict():
    kept = [entry()]
    text = with_cell(table_of(kept), 1, "name", "Keel bowl")
    since = {**kept[0], "record": {**kept[0]["record"], "notes": "more"}, "saved": "2026-10-01", "stamps": {"a": "2026-10-01"}}
    assert only_row(text, [since])["state"] == "conflict"
    # Not edited, the row is only older: nothing to choose would be wrong.
    assert only_row(table_of(kept), [{**since, "record": {**since["record"], "name": "Other"}}])["state"] == "conflict"


def test_a_table_of_another_device_that_knows_of_ours_is_a_change():
    row = only_row(table_of([entry(name="Newer", stamps={"a": SAVED, "b": "2026-10-02"})]), [entry()])
    assert row["state"] == "changed" and row["entry"]["stamps"] == {"a": SAVED, "b": "2026-10-02"}


@pytest.mark.parametrize(("stamps", "saved", "state"), [
    ("", SAVED, "changed"), ("", "", "conflict"), ("{", "", "conflict"), ("5", "", "conflict"), ("[]", "2026-01-01", "conflict"),
    ('{"a":"2026-01-01"}', SAVED, "conflict"), ("[" * 3000, SAVED, "changed")])
def test_where_stamps_were_deleted_the_moment_decides(stamps, saved, state):
    out = io.StringIO()
    csv.writer(out).writerows([["id", "name", "saved", "stamps"], ["7", "Keel bowl", saved, stamps]])
    assert only_row(out.getvalue(), [entry()])["state"] == state


def test_an_entry_without_stamps_goes_through_a_table():
    kept = [{"record": {"id": "7", "name": "Tide cup"}, "saved": SAVED}]
    row = only_row(with_cell(table_of(kept), 1, "name", "Keel bowl"), kept)
    assert row["state"] == "changed" and row["entry"]["stamps"] == {"": SAVED}


def test_an_unchanged_row_needs_not_even_be_read():
    """Its check stands for row and entry: the entry is a text that could not be read at all."""
    kept = book(4)
    texts = [entry_text(each) for each in kept]
    marks = [each["record"]["id"] for each in kept]
    table = table_of(texts)
    told = book_preview(table, texts, {}, marks)
    assert (told["same"], told["rows"]) == (4, [])
    looked = []

    class Watched(Kept):
        def entry(self, mark):
            looked.append(mark)
            return super().entry(mark)

    compare_table(with_cell(table, 2, "name", "Changed").removeprefix("\ufeff"), Watched(texts, marks))
    assert set(looked) == {marks[1]}


@pytest.mark.parametrize("column", ["name", "saved", "stamps", "notes", "check"])
def test_a_check_stands_for_every_cell(column):
    kept = [entry(notes="Slowly", stamps={"a": "1"})]
    told = book_preview(with_cell(table_of(kept), 1, column, "changed"), kept, {})
    assert len(told["rows"]) == (column in ("name", "notes"))


def test_a_check_stands_for_the_columns_and_for_the_book_too():
    kept = [entry(notes="Slowly")]
    text = table_of(kept)
    swapped = text.replace("id,name,notes", "id,notes,name")
    assert only_row(swapped, kept)["entry"]["record"]["name"] == "Slowly"
    assert only_row(text, [{**kept[0], "record": {**kept[0]["record"], "notes": "Fast"}}])["state"] == "changed"


def test_rows_made_by_hand_are_new_vessels_and_the_same_ones_when_read_again():
    text = f"{HEAD}\n,Heron dish,\n,Heron dish 2,wide\n,,\n"
    told = book_preview(text, [], {})
    marks = [row["id"] for row in told["rows"]]
    assert len(set(marks)) == 2 and all(map(is_mark, marks)) and told["damaged"] == []
    assert told["rows"][0]["entry"]["record"]["casts"][0]["mix"]["water_to_powder"] == "4:1"
    again = book_preview(text, [row["entry"] for row in told["rows"]], {})
    assert (again["same"], again["rows"]) == (2, [])


def test_a_row_out_of_a_book_has_all_that_was_said_and_no_more():
    record = only_row(table_of([entry(casts=[{"pieces": "2"}])]), [])["entry"]["record"]
    assert record == {"version": 1, "id": "7", "name": "Tide cup", "casts": [{"pieces": "2"}]}


def test_a_later_version_of_the_record_is_kept():
    newer = {"record": {"version": 9, "id": "7", "name": "Tide cup"}, "saved": "", "stamps": {}}
    assert only_row(table_of([newer]), [])["entry"]["record"]["version"] == 9
    assert book_preview(table_of([newer]), [newer], {})["same"] == 1


def test_columns_that_are_no_place_in_a_vessel_are_told():
    told = book_preview("id,name,Total,name,casts.pieces,name.x,casts.0.7,Sum\n7,Keel bowl,1,2,3,4,5,6\n", [entry()], {})
    assert told["damaged"] == ["No place in a vessel, or there twice, and left out: column “Total”, “name”, “casts.pieces” and 3 more."]
    assert told["rows"][0]["entry"]["record"] == {"version": 1, "id": "7", "name": "Keel bowl"}


def test_a_column_that_a_vessel_has_no_room_for_is_told():
    told = book_preview("id,casts.0.pieces,notes\n7,3,x\n", [entry(casts="bent")], {})
    assert told["damaged"] == ["In line 2 the column “casts.0.pieces” does not fit the vessel and was left out."]
    assert told["rows"][0]["entry"]["record"] == {**entry()["record"], "casts": "bent", "notes": "x"}


def test_a_leaf_of_a_later_version_comes_back():
    row = only_row("id,casts.0.later.thing\n7,x\n", [])
    assert row["entry"]["record"]["casts"] == [{"later": {"thing": "x"}}]


def test_the_same_vessel_in_two_rows_is_told():
    told = book_preview(f"{HEAD}\n7,One,\n7,Two,\n8,Three,\n8,Three,\n", [], {})
    assert [row["name"] for row in told["rows"]] == ["Two", "Three"]
    assert told["damaged"] == ["The same vessel stands in lines 2 and 3: line 3 was taken. For a new vessel leave its id empty."]


def test_cells_left_out_at_the_end_of_a_row_leave_their_leaves():
    kept = [entry(notes="Slowly")]
    text = f"saved,id,name,notes\n{SAVED},7,Keel bowl\n"
    row = only_row(text, kept)
    assert row["entry"]["record"]["notes"] == "Slowly" and row["entry"]["record"]["name"] == "Keel bowl"


def test_more_cells_than_columns_are_told():
    told = book_preview(f"{HEAD}\n7,Keel bowl,x,y\n", [], {})
    assert told["damaged"] == ["Line 2 has more cells than the table has columns: those behind the last were left out."]


def test_letters_that_a_program_lost_do_not_overwrite_those_that_are_there():
    kept = [entry(name="Größe", notes="x")]
    told = book_preview(f"id,name,notes,saved\n7,Gr\ufffd\ufffde,y,{SAVED}\n", kept, {})
    assert "UTF-8" in told["damaged"][0]
    assert told["rows"][0]["entry"]["record"] == {**kept[0]["record"], "notes": "y"}


def test_a_mark_can_t_be_changed_by_a_table_and_an_odd_one_is_not_taken():
    told = book_preview(f"{HEAD}\n__proto__,Cup,\n{'x' * 65},Cup,\n", [], {})
    assert told["rows"] == [] and told["damaged"] == ["Line 2 could not be read.", "Line 3 could not be read."]


def test_a_row_that_would_be_more_than_a_vessel_is_told():
    leaves = ("powder", "water", "left_over", "when", "cup_full")
    paths = [f"casts.0.pours.{number}.{leaf}" for number in range(tree.MOST_LEAVES // 5 + 1) for leaf in leaves]
    told = book_preview(",".join(["id", *paths]) + "\n" + ",".join(["7", *("1 g" for _ in paths)]) + "\n", [], {})
    assert told["rows"] == [] and "more than a vessel can be" in told["damaged"][0]
