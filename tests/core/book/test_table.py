"""The table for a spreadsheet, and what comes back from one."""

import csv
import io
import random
import re

import pytest
from books import book
from brimbook.book.file import book_file, book_preview
from brimbook.book.table import guarded, read_table, unguarded
from brimbook.quantity.error import QuantityError
from brimbook.record.fields import LEAVES, leaf_at
from hypothesis import given
from hypothesis import strategies as st
from vessels import full_vessel

# What a spreadsheet takes for a formula, and the apostrophe before it: OWASP, CSV Injection (the pages on the attack, with the
# tab, the carriage return and, since August 2025, the line feed), and OWASP ASVS 5.0, 1.2.10, which adds the null character.
FORMULAS = ["=1+1", "+49 170", "-5 °C", "@home", "\tindented", "\rback", "\ndown", "\0nothing"]


def cells(text):
    """The rows of a table as any program would read it, without the mark of the byte order."""
    return list(csv.reader(io.StringIO(text.removeprefix("\ufeff"), newline="")))


def written(entries):
    return book_file(entries, {}, "2026-11-24T09:30", "csv")["text"]


def entry(**record):
    return {"record": {"version": 1, "id": "7", **record}, "line": "", "saved": "2026-09-26T10:00:00.000Z", "stamps": {"a": "2026-09-26T10:00:00.000Z"}}


def of_new(text):
    """The records that a table brings into an empty book."""
    told = book_preview(text, [], {})
    assert told["damaged"] == []
    return {row["id"]: row["entry"]["record"] for row in told["rows"]}


def test_a_table_begins_with_mark_name_date_and_notes_and_goes_on_as_the_leaves_are_asked():
    head = cells(written(book(40)))[0]
    assert head[:4] == ["id", "name", "made_on", "notes"] and head[-3:] == ["saved", "stamps", "check"]
    ranks = [list(LEAVES).index(re.sub(r"(?<=\.)\d+", "*", path)) for path in head[4:-3]]
    assert ranks == sorted(ranks)


def test_it_has_the_mark_of_utf_8_and_lines_of_rfc_4180():
    # RFC 4180, 2.1, 2.6 and 2.7: lines end in CR LF; commas, quotes and line ends stand in quotes, and quotes are doubled.
    text = written([entry(name='Keel, "third"', notes="one\ntwo")])
    assert text.startswith("\ufeffid,name,notes") and text.endswith("\r\n")
    assert '7,"Keel, ""third""","one\ntwo",' in text


def test_only_columns_in_which_something_stands():
    head = cells(written([entry(name="Tide cup", notes=""), entry(id="8", casts=[{"pieces": ""}])]))[0]
    assert head == ["id", "name", "saved", "stamps", "check"]


@pytest.mark.parametrize("text", FORMULAS, ids=repr)
def test_no_cell_is_a_formula_and_it_reads_back_as_it_was(text):
    table = written([entry(name=text, notes=f"'{text}")])
    row = cells(table)[1]
    assert not any(cell[:1] in set("=+-@\t\r\n\0") for cell in row if cell)
    assert of_new(table)["7"]["name"] == text and of_new(table)["7"]["notes"] == f"'{text}"


def test_a_path_of_the_book_is_no_formula_either():
    assert cells(written([entry(**{"=cmd": "x"})]))[0][1] == "'=cmd"


@given(st.text())
def test_a_guarded_text_is_unguarded_to_itself(text):
    assert unguarded(guarded(text)) == text


@given(st.text())
def test_what_stands_in_a_cell_means_one_text(cell):
    assert unguarded(cell) in (cell, cell[1:])


def test_a_whole_book_goes_through_a_table_and_is_the_same():
    entries = book(60, seed=3)
    table = written(entries)
    told = book_preview(table, entries, {})
    assert (told["same"], told["rows"], told["damaged"]) == (60, [], [])


def test_a_table_brings_a_whole_book_into_an_empty_one():
    entries = book(60, seed=4)
    told = book_preview(written(entries), [], {})
    assert len(told["rows"]) == 60 and {row["state"] for row in told["rows"]} == {"new"}
    again = book_preview(written(entries), [row["entry"] for row in told["rows"]], {})
    assert (again["same"], again["rows"]) == (60, [])
    assert [row["entry"]["stamps"] for row in told["rows"]] == [each["stamps"] for each in entries]


def test_a_full_vessel_keeps_every_leaf():
    full = full_vessel()
    record = of_new(written([{"record": full, "saved": "", "stamps": {}}]))[full["id"]]
    told = book_preview(written([{"record": full}]), [{"record": record}], {})
    assert told["same"] == 1
    assert record["casts"][0]["cavity"]["readings"] == full["casts"][0]["cavity"]["readings"]


@pytest.mark.parametrize("mark", [";", "\t"])
def test_other_marks_between_cells_are_read(mark):
    entries = book(10)
    out = io.StringIO(newline="")
    csv.writer(out, delimiter=mark, lineterminator="\n").writerows(cells(written(entries)))
    told = book_preview(out.getvalue(), entries, {})
    assert (told["same"], told["rows"], told["damaged"]) == (10, [], [])


@pytest.mark.parametrize("ends", ["\r\n", "\n", "\r"], ids=repr)
def test_any_line_end_is_read(ends):
    assert of_new(ends.join(["id,name", "7,Tide cup", ""]))["7"]["name"] == "Tide cup"


def test_line_ends_inside_a_cell_may_be_written_anew():
    kept = [entry(notes="one\ntwo")]
    assert book_preview(written(kept).replace("one\ntwo", "one\r\ntwo"), kept, {})["same"] == 1


@pytest.mark.parametrize("text", ["a,b\n1,2\n", "Total;Price\n3;4\n", "just words", "\x89PNG\r\n\x1a\n\0\0", '"', "id\0name\n"], ids=repr)
def test_what_is_no_table_of_vessels_gets_a_sentence(text):
    with pytest.raises(QuantityError) as told:
        book_preview(text, [], {})
    assert str(told.value).endswith(".")


def test_a_missing_quotation_mark_costs_one_row_alone():
    rows = ["id,name,notes"] + [f"v{number},Cup {number},fine" for number in range(9)]
    rows[4] = 'v3,"Cup 3,fine'
    told = book_preview("\n".join(rows), [], {})
    assert [row["id"] for row in told["rows"]] == ["v0", "v1", "v2", "v4", "v5", "v6", "v7", "v8"]
    assert told["damaged"] == ["Line 5 could not be read: a quotation mark is missing, or stands alone."]


def test_very_many_missing_quotation_marks_come_to_an_end():
    read = read_table("id,name\n" + 'v,"x\n' * 5000)
    assert len(read.damaged) == 51 and "too many rows" in read.damaged[-1]


def test_a_torn_row_is_told_and_not_taken_for_a_vessel():
    told = book_preview("id,name,notes,made_on\nv1,Cup,fine,2026-09-26\nof a note\n", [], {})
    assert [row["id"] for row in told["rows"]] == ["v1"] and told["damaged"] == ["Line 3 could not be read."]


def test_random_damage_never_fails_and_never_changes_a_row_unseen():
    """Each vessel of a damaged table is the same, or in the rows, or its line is told; nothing comes from nowhere but with a note."""
    chance = random.Random(5)
    entries = book(12, seed=5)
    table = written(entries)
    for _ in range(150):
        begin = chance.randrange(len(table))
        bent = table[:begin] + chance.choice(["", '"', "\n", "\0", "xyz", ",", "\ufffd"]) + table[begin + chance.randint(0, 40):]
        try:
            told = book_preview(bent, entries, {})
        except QuantityError:
            continue
        assert told["same"] + len(told["rows"]) + len(told["damaged"]) > 0
        if told["same"] < 12:
            assert told["rows"] or told["damaged"]


def test_leaves_of_the_book_that_nobody_knows_are_columns_too():
    kept = [entry(name="Tide cup", strange="kept", casts=[{"later": {"thing": "4"}}])]
    head = cells(written(kept))[0]
    assert head[:4] == ["id", "name", "strange", "casts.0.later.thing"] and leaf_at("strange") is None
    assert book_preview(written(kept).replace("kept", "changed"), kept, {})["rows"][0]["entry"]["record"]["strange"] == "changed"
