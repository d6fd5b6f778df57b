"""A file beside the book: whose vessel is newer, and what was changed on both sides."""

import itertools
import random

import pytest
from books import book
from brimbook.book.columns import Columns
from brimbook.book.compare import compare, differences, joined, newer_of, state_of
from brimbook.book.file import book_file, book_preview
from brimbook.book.kept import Kept, entry_text, is_mark, stamps_of
from hypothesis import given
from hypothesis import strategies as st
from vessels import bent_vessels, full_vessel

STAMPS = st.dictionaries(st.sampled_from(["", "a", "b", "c"]), st.sampled_from(["1", "2", "3"]), max_size=3)


def entry(name, stamps, saved="2026-09-26T10:00:00.000Z", **record):
    return {"record": {"id": "7", "name": name, **record}, "line": "", "saved": saved, "stamps": stamps}


def preview(theirs, ours):
    return book_preview(book_file(theirs, {}, "", "json")["text"], ours, {})


def only_row(theirs, ours):
    told = preview([theirs], [ours])
    assert told["same"] == 0 and len(told["rows"]) == 1
    return told["rows"][0]


@pytest.mark.parametrize(("theirs", "ours", "state"), [
    ({"a": "2"}, {"a": "1"}, "changed"),
    ({"a": "1", "b": "1"}, {"a": "1"}, "changed"),
    ({"a": "1"}, {"a": "2"}, "older"),
    ({"a": "1"}, {"a": "1", "b": "5"}, "older"),
    ({"a": "2"}, {"a": "1", "b": "1"}, "conflict"),
    ({"a": "1"}, {"b": "1"}, "conflict"),
    # Changed in the file by hand: nobody stamped that.
    ({"a": "1"}, {"a": "1"}, "changed"),
], ids=str)
def test_stamps_tell_whose_is_newer(theirs, ours, state):
    assert only_row(entry("Theirs", theirs), entry("Ours", ours))["state"] == state


def test_the_same_content_is_the_same_whatever_the_stamps():
    assert preview([entry("Cup", {"a": "2"})], [entry("Cup", {"b": "1"}, notes="", wells=[{}])])["same"] == 1


def test_entries_without_stamps_go_by_their_moment():
    old, new = ({"record": {"id": "7", "name": name}, "saved": saved} for name, saved in (("Old", "2026-01-01"), ("New", "2026-02-01")))
    assert only_row(new, old)["state"] == "changed" and only_row(old, new)["state"] == "older"
    # Kept anew, an entry still knows its first moment.
    assert only_row(old, {**new, "stamps": {"": "2026-01-01", "a": "2026-02-01"}})["state"] == "older"


def test_a_taken_entry_knows_of_both_so_that_it_is_newer_than_either():
    theirs, ours = entry("Theirs", {"a": "2", "c": "1"}, "2026-09-20"), entry("Ours", {"a": "1", "b": "4"}, "2026-09-28")
    taken = only_row(theirs, ours)["entry"]
    assert taken["record"] == theirs["record"] and taken["stamps"] == {"a": "2", "b": "4", "c": "1"} and taken["saved"] == "2026-09-28"
    for before in (theirs, ours):
        assert state_of(stamps_of(taken), before) == "changed"


def test_who_wants_both_gets_the_file_s_beside_the_book_s_and_only_once():
    theirs, ours = entry("Theirs", {"a": "2"}), entry("Ours", {"b": "1"})
    row = only_row(theirs, ours)
    copy = row["copy"]
    assert copy["record"]["id"] != "7" and is_mark(copy["record"]["id"]) and copy["record"]["name"] == "Theirs (from the file)"
    assert only_row(theirs, ours)["copy"] == copy
    assert "copy" not in preview([theirs], [])["rows"][0]


def test_a_copy_of_a_long_mark_still_has_a_fit_one():
    theirs, ours = entry("Theirs", {"a": "2"}), entry("Ours", {"b": "1"})
    for each in (theirs, ours):
        each["record"]["id"] = "x" * 64
    assert is_mark(only_row(theirs, ours)["copy"]["record"]["id"])


def test_it_says_what_differs_by_label_with_both_texts():
    ours = entry("Cup", {"a": "1"}, wells=[{"fragrance": {"load": "6 %"}}], casts=[{"pours": [{}, {"powder": "588 g"}]}], made_on="2026-09-26")
    theirs = entry("Cup", {"a": "2"}, wells=[{"fragrance": {"load": "8 %"}}], casts=[{"pours": [{}, {"powder": "590 g"}]}], strange="x" * 60)
    assert only_row(theirs, ours)["says"] == (
        "Changed in the file. Made on: 2026-09-26 here, nothing in the file. Powder weighed (2): 588 g here, 590 g in the file. "
        "Fragrance load: 6 % here, 8 % in the file. And 1 more.")
    assert differences({}, {"strange": "x" * 60}, Columns()) == [f"strange: nothing here, “{'x' * 39}…” in the file."]
    assert differences({"labels": [{"market": "us"}]}, {"labels": [{"market": "eu"}]}, Columns()) == [
        "Sold in: “United States” here, “European Union” in the file."]


def test_what_needs_a_choice_comes_first():
    theirs = [entry("N", {"a": "1"}), entry("C", {"a": "2"}), entry("X", {"a": "1"}), entry("O", {"a": "1"})]
    ours = [entry("o", {"a": "2"}), entry("c", {"a": "1"}), entry("x", {"b": "1"})]
    for number, each in enumerate(theirs):
        each["record"]["id"] = f"v{number}"
    for each, mark in zip(ours, ("v3", "v1", "v2")):
        each["record"]["id"] = mark
    assert [row["state"] for row in preview(theirs, ours)["rows"]] == ["conflict", "changed", "new", "older"]


def test_a_preview_changes_nothing_that_it_was_given():
    import copy

    entries = book(6)
    theirs = copy.deepcopy(entries)
    theirs[2]["record"]["casts"][0]["pieces"] = "9"
    before = copy.deepcopy(entries)
    preview(theirs, entries)
    assert entries == before


@given(STAMPS, STAMPS)
def test_newer_is_told_alike_from_both_sides(one, other):
    turned = {"one": "other", "other": "one", "both": "both", "neither": "neither"}
    assert newer_of(other, one) == turned[newer_of(one, other)]
    together = joined(one, other)
    assert together == joined(other, one)
    assert newer_of(together, one) in ("one", "both") and newer_of(together, other) in ("one", "both")


def test_three_devices_that_pass_files_around_lose_no_change():
    """Each device edits its own copy and reads the others' files by the preview's advice; whatever it calls older is contained in what stays."""
    chance = random.Random(8)
    names = ("phone", "desk", "tablet")
    books = {name: {"record": {"id": "7", "name": "", "notes": ""}, "saved": "", "stamps": {"": "0"}} for name in names}
    # What a copy is made of: the edits that went into it, which the page never sees.
    edits = {name: frozenset() for name in names}
    for moment in range(400):
        here, there = chance.sample(names, 2)
        if chance.random() < 0.4:
            stamp = f"2026-01-01T{moment:06d}"
            edits[here] |= {moment}
            books[here] = {"record": {"id": "7", "name": f"{moment}"}, "saved": stamp, "stamps": {**books[here]["stamps"], here: stamp}}
            continue
        told = preview([books[there]], [books[here]])
        for row in told["rows"]:
            if row["state"] == "older":
                assert edits[there] <= edits[here]
            if row["state"] == "changed":
                assert edits[here] <= edits[there]
                books[here], edits[here] = row["entry"], edits[there]
            elif row["state"] == "conflict":
                assert not edits[there] <= edits[here] and not edits[here] <= edits[there]
                # The maker decides for one and knows of both.
                stamp = f"2026-01-01T{moment:06d}"
                books[here] = {**row["entry"], "saved": stamp, "stamps": {**row["entry"]["stamps"], here: stamp}}
                edits[here] = edits[here] | edits[there] | {moment}
        if told["same"]:
            assert books[here]["record"] == books[there]["record"]


def test_raw_texts_and_data_are_compared_alike():
    ours, theirs = book(20, seed=1), book(20, seed=1)
    theirs[3]["record"]["notes"] = "changed by hand"
    theirs[4]["stamps"] = {"phone-9": "2027"}
    text = book_file(theirs, {}, "", "json")["text"]
    marks = [each["record"]["id"] for each in ours]
    once, twice = book_preview(text, ours, {}), book_preview(text, [entry_text(each) for each in ours], {}, marks)
    assert once == twice and once["same"] == 19 and once["rows"][0]["id"] == marks[3]


@given(bent_vessels(), bent_vessels())
def test_bent_vessels_are_compared(one, other):
    for pair in itertools.permutations((one, other, full_vessel()), 2):
        kept, found = ({"record": {**record, "id": "7"}} for record in pair if isinstance(record, dict)) if all(
            isinstance(record, dict) for record in pair) else ({"record": {"id": "7"}}, {"record": {"id": "7"}})
        compared, _ = compare([(1, "7", found)], Kept([kept]))
        assert compared.same + len(compared.rows) == 1
