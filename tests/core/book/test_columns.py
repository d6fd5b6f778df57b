"""Leaves of many records as columns."""

import pytest
from brimbook.book.columns import Columns, in_order, laid_out, picked, steps_of
from hypothesis import given
from vessels import ANYTHING, branches, full_vessel


def texts(record):
    """Path and text of every leaf in which something stands, by another way than the columns'."""
    found = {}
    for path in branches(record):
        part = record
        for step in path:
            part = part[step]
        if isinstance(part, str) and part:
            found[".".join(map(str, path))] = part
    return found


def row_by_path(columns, record):
    row = columns.row(record)
    return {path: row[number] for path, number in columns.numbers.items() if number in row}


def test_every_text_of_a_full_vessel_has_its_column():
    columns = Columns()
    full = {**full_vessel(), "version": "1"}
    assert row_by_path(columns, full) == texts(full)


def test_two_records_share_columns():
    columns = Columns()
    one, other = columns.row({"name": "a", "casts": [{"pieces": "1"}]}), columns.row({"casts": [{"pieces": "2"}, {"pieces": "3"}]})
    assert (one, other) == ({0: "a", 1: "1"}, {1: "2", 2: "3"})
    assert list(columns.numbers) == ["name", "casts.0.pieces", "casts.1.pieces"]


def test_columns_that_are_named_before_keep_their_numbers():
    columns = Columns(["casts.1.pieces", "name", "name"])
    assert columns.row({"name": "a", "casts": [{}, {"pieces": "2"}], "notes": "n"}) == {1: "a", 0: "2", 2: "n"}


def test_a_number_as_a_name_is_the_same_place_as_in_a_list():
    columns = Columns()
    assert columns.row({"casts": ["x"]}) == columns.row({"casts": {"0": "x"}}) == {0: "x"}


def test_a_name_that_holds_a_dot_is_no_path_of_its_own():
    columns = Columns()
    columns.row({"casts.0": "x", "casts": ["y"]})
    assert len(columns.numbers) == 2 and sorted(map(tuple, map(steps_of, columns.numbers))) == [("casts", "0"), ("casts.0",)]


@given(ANYTHING)
def test_anything_has_columns(record):
    if isinstance(record, dict):
        columns = Columns()
        row = columns.row(record)
        assert all(isinstance(text, str) and text for text in row.values())
        assert len(laid_out(row, in_order(list(columns.numbers)))) == len(columns.numbers)


def test_a_table_s_order_is_mark_name_date_notes_then_as_asked_then_what_is_unknown():
    paths = ["zzz", "wells.0.dye", "casts.10.pieces", "casts.2.pieces", "notes", "made_on", "name", "id", "own_notes"]
    assert [paths[place] for place in in_order(paths)] == [
        "id", "name", "made_on", "notes", "own_notes", "casts.2.pieces", "casts.10.pieces", "wells.0.dye", "zzz"]


@pytest.mark.parametrize("places", [[], [1], [2, 0]])
def test_cells_are_picked_in_any_number(places):
    assert picked(places)("abc") == tuple("abc"[place] for place in places)
