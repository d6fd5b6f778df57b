"""Texts written into records."""

from brimbook.book.columns import Columns
from brimbook.book.written import Frame, written
from hypothesis import given
from hypothesis import strategies as st
from vessels import ANYTHING, full_vessel

PATHS = st.lists(st.sampled_from(["casts", "wells", "0", "1", "999", "1000", "__proto__", "name", "", "x.y"]), min_size=1, max_size=5).map(".".join)


def test_a_leaf_is_changed_and_the_record_itself_is_not():
    record = {"casts": [{"pieces": "2", "left": ""}], "strange": [1, None]}
    copy, refused = written(record, {"casts.0.pieces": "3", "name": "Tide cup"})
    assert copy == {"casts": [{"pieces": "3", "left": ""}], "strange": [1, None], "name": "Tide cup"} and refused == []
    assert record["casts"][0]["pieces"] == "2"


def test_the_way_there_is_made_and_places_between_stay_empty():
    assert written({}, {"casts.1.cavity.readings.2.water": "5 g"})[0] == {"casts": [{}, {"cavity": {"readings": [{}, {}, {"water": "5 g"}]}}]}


def test_what_does_not_fit_is_named():
    record = {"casts": [{"pieces": "2"}], "name": "Tide cup"}
    texts = {"casts.pieces": "1", "casts": "1", "name.x": "1", "casts.1000.pieces": "1", "__proto__.x": "1", "__proto__": "1", "casts.0": "1"}
    copy, refused = written(record, texts)
    assert copy == record and refused == list(texts)


@given(ANYTHING, st.dictionaries(PATHS, st.text(max_size=3), max_size=4))
def test_anything_can_be_written_into(record, texts):
    if isinstance(record, dict):
        copy, refused = written(record, texts)
        assert set(refused) <= set(texts)
        for path in set(texts) - set(refused):
            assert isinstance(copy, dict)


def test_a_frame_makes_what_writing_one_by_one_makes():
    full = {**full_vessel(), "version": "1"}
    columns = Columns()
    row = columns.row(full)
    paths = list(columns.numbers)
    cells = tuple(row[number] for number in range(len(paths)))
    assert Frame(paths).record(cells) == written({}, dict(zip(paths, cells)))[0]


def test_a_frame_leaves_out_what_is_empty_but_keeps_places():
    frame = Frame(["name", "casts.0.pieces", "casts.1.pieces", "wells.0.dye"])
    assert frame.record(("", "", "2", "")) == {"casts": [{}, {"pieces": "2"}]}
    assert frame.record(("", "", "", "")) == {}


@given(st.lists(PATHS, max_size=8))
def test_columns_that_are_in_each_other_s_way_are_refused(paths):
    frame = Frame(paths)
    record = frame.record(tuple("x" for _ in paths))
    assert len(frame.refused) < max(1, len(paths)) or not record
    assert "__proto__" not in str(record)
