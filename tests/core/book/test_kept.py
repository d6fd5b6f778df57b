"""Entries as they are kept."""

import json

import pytest
from brimbook.book.kept import Kept, NotAnEntry, checked, entry_text, is_mark, made_mark, read_entries, read_pairs, stamps_of
from hypothesis import given
from vessels import ANYTHING

GOOD = {"record": {"id": "7", "name": "Größe · 2"}, "line": "", "saved": "2026-09-26T10:00:00.000Z", "stamps": {"a": "2026-09-26T10:00:00.000Z"}}


def test_an_entry_is_written_as_a_browser_writes_it():
    # ECMA-262, JSON.stringify: no spaces, letters as they are.
    assert entry_text(GOOD) == ('{"record":{"id":"7","name":"Größe · 2"},"line":"","saved":"2026-09-26T10:00:00.000Z",'
                                '"stamps":{"a":"2026-09-26T10:00:00.000Z"}}')
    assert entry_text(entry_text(GOOD)) == entry_text(GOOD)


@pytest.mark.parametrize("entry", [{}, {"saved": 5}, {"stamps": {}}, {"stamps": []}, {"stamps": {"a": 5}}, {"stamps": {"__proto__": "2026"}}])
def test_without_fit_stamps_only_the_moment_is_known(entry):
    assert stamps_of(entry) == {"": ""}
    assert stamps_of({**entry, "saved": "2026"}) == {"": "2026"}


@pytest.mark.parametrize("entry", [None, 5, [], {}, {"record": []}, {"record": None}], ids=repr)
def test_what_holds_no_vessel_is_refused(entry):
    with pytest.raises(NotAnEntry):
        checked(entry)


def test_what_no_link_could_hold_is_refused():
    deep = {}
    for _ in range(20):
        deep = {"x": deep}
    for record in ({"id": "7", "x": deep}, {"id": "7", "x": [""] * 20_000}):
        with pytest.raises(NotAnEntry):
            checked({"record": record})
    with pytest.raises(NotAnEntry):
        checked({"record": {"id": "7"}, "more": deep})


@pytest.mark.parametrize("mark", [None, 5, "", "x" * 65, "__proto__", "a\nb", {"a": 1}], ids=repr)
def test_a_vessel_without_a_fit_mark_gets_one_that_is_always_the_same(mark):
    made = checked({"record": {"id": mark, "name": "Tide cup"}})["record"]["id"]
    assert is_mark(made) and made == checked({"record": {"id": mark, "name": "Tide cup"}})["record"]["id"]
    assert made != checked({"record": {"id": mark, "name": "Keel bowl"}})["record"]["id"]


def test_made_marks_differ():
    assert len({made_mark(str(number)) for number in range(5000)}) == 5000


def test_kept_texts_are_known_to_the_letter_and_read_when_looked_at():
    texts = [entry_text(GOOD), '{"record":{"id":"8"}']
    kept = Kept(texts, ["7", "8"])
    assert kept.marks() == ["7", "8"] and kept.mark_of(texts[0]) == "7" and kept.mark_of("{}") == ""
    assert kept.entry("7") == GOOD and kept.entry("8") is None and kept.entry("9") is None
    assert kept.text("7") == texts[0] and kept.text("9") == ""


def test_entries_may_come_as_they_are_or_without_marks():
    for given_entries in ([GOOD], [entry_text(GOOD)], [GOOD, "{", None, 5, {"record": {"id": "__proto__"}}]):
        kept = Kept(given_entries)
        assert kept.marks() == ["7"] and kept.entry("7") == GOOD and json.loads(kept.text("7")) == GOOD


@given(ANYTHING)
def test_anything_may_stand_for_entries(entries):
    assert isinstance(Kept(entries, entries).marks(), list)
    assert all(isinstance(entry["record"], dict) for entry in read_entries(entries))


def test_a_damaged_text_costs_no_other():
    texts = [entry_text({"record": {"id": str(number)}}) for number in range(250)]
    texts[120] = texts[120][:-2]
    # Two texts that only together are JSON must not pass for others.
    texts[180], texts[181] = '{"record":{"id":"a"}', '"x":1}'
    read = read_pairs(texts)
    assert [json.loads(text) == entry for text, entry in read] == [True] * 247
