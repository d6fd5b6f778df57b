"""Files read back whole, written anew by others, cut, torn, and made to do harm."""

import json
import random
import time

import pytest
from books import book
from brimbook.book.file import book_file, book_preview
from brimbook.book.kept import Kept
from brimbook.book.salvage import MOST_VESSELS, read_book
from brimbook.quantity.error import QuantityError
from hypothesis import given
from hypothesis import strategies as st

OWN = {"materials": [{"name": "Soy flakes"}, {"name": "Sand"}], "wicks": [{"name": "Cotton 6"}], "plan": [{"id": "x", "count": "3"}],
       "settings": {"mass": "oz"}}
ENTRIES = book(8, seed=11)
MARKS = [entry["record"]["id"] for entry in ENTRIES]
WHOLE = book_file(ENTRIES, OWN, "2026-11-24T09:30", "json")["text"]


def read(text, kept=()):
    found = read_book(text, Kept(list(kept)))
    return found, {mark: entry for _, mark, entry in found.entries}


def line_of(mark):
    """The line of a vessel in the whole file, counted by hand."""
    return next(number for number, line in enumerate(WHOLE.split("\n"), 1) if mark in line)


def test_what_was_written_is_read():
    found, entries = read(WHOLE)
    assert list(entries.values()) == ENTRIES and found.own == OWN and found.damaged == []


def test_what_is_the_book_s_own_to_the_letter_is_not_read_again():
    found, entries = read(WHOLE, ENTRIES[:3])
    # Entries that came as data have no text to compare: only those that are kept as texts do.
    assert entries[MARKS[0]] == ENTRIES[0]
    texts = [json.dumps(entry, ensure_ascii=False, separators=(",", ":")) for entry in ENTRIES]
    entries = {mark: entry for _, mark, entry in read_book(WHOLE, Kept(texts[:3], MARKS[:3])).entries}
    assert [entries[mark] for mark in MARKS] == [None, None, None, *ENTRIES[3:]]


@pytest.mark.parametrize("anew", [
    lambda text: json.dumps(json.loads(text)),
    lambda text: json.dumps(json.loads(text), indent=4),
    lambda text: json.dumps(json.loads(text), indent="\t", sort_keys=True, ensure_ascii=False),
    lambda text: json.dumps(json.loads(text), separators=(",\n", " :\n")),
    lambda text: json.dumps(json.loads(text)["vessels"]),
], ids=["one line", "indented", "sorted", "wrapped", "the vessels alone"])
def test_files_that_other_programs_wrote_anew_hold_the_same(anew):
    found, entries = read(anew(WHOLE))
    assert entries == dict(zip(MARKS, ENTRIES)) and found.damaged == []


@pytest.mark.parametrize("change", [
    lambda text: "\ufeff" + text, lambda text: text.replace("\n", "\r\n"), lambda text: text.replace("\n", "\r"), lambda text: text + "\n\n  ",
    lambda text: text.strip(),
], ids=["byte order mark", "CR LF", "CR", "lines after it", "nothing after it"])
def test_line_ends_and_a_mark_of_the_byte_order_make_no_difference(change):
    told = book_preview(change(WHOLE), ENTRIES, OWN)
    assert (told["same"], told["rows"], told["damaged"]) == (len(ENTRIES), [], [])


def test_a_file_that_was_cut_off_gives_all_that_stood_before():
    at = WHOLE.index(MARKS[5])
    found, entries = read(WHOLE[:at])
    assert list(entries) == MARKS[:5] and found.own == OWN
    assert found.damaged == [f"Line {line_of(MARKS[5])} could not be read.", "The file ends too early: it was cut off. What came after is not in it."]


def test_a_file_that_was_cut_between_two_vessels_is_told_as_cut():
    found, entries = read("\n".join(WHOLE.split("\n")[:line_of(MARKS[3])]))
    assert list(entries) == MARKS[:4] and found.damaged == ["The file ends too early: it was cut off. What came after is not in it."]


@pytest.mark.parametrize("anew", [lambda text: text, lambda text: json.dumps(json.loads(text), indent=1, ensure_ascii=False),
                                  lambda text: json.dumps(json.loads(text), ensure_ascii=False),
                                  lambda text: json.dumps(json.loads(text), indent=1, sort_keys=True, ensure_ascii=False)],
                         ids=["as written", "indented", "one line", "sorted"])
def test_bytes_lost_in_the_middle_cost_one_vessel_and_are_told(anew):
    text = anew(WHOLE)
    at = text.index('"hour_rate"', text.index(MARKS[2] if text.index(MARKS[2]) < text.index(f'"{ENTRIES[2]["line"]}"') else ENTRIES[2]["line"]))
    bent = text[:at] + text[at + 7:]
    found, entries = read(bent)
    assert [mark for mark in MARKS if mark not in entries] == [MARKS[2]]
    first = bent.count("\n", 0, at) + 1
    told = [int(word) for word in found.damaged[0].replace(".", "").split() if word.isdigit()]
    assert len(found.damaged) == 1 and told[0] <= first <= told[-1]


def test_nulls_where_a_disk_failed_are_told():
    at = WHOLE.index(MARKS[4]) - 20
    found, entries = read(WHOLE[:at] + "\0" * 900 + WHOLE[at + 900:])
    assert [mark for mark in MARKS if mark not in entries] == [MARKS[4]] and found.damaged == [f"Line {line_of(MARKS[4])} could not be read."]


def test_vessels_that_went_without_a_trace_are_counted():
    lines = WHOLE.split("\n")
    found, entries = read("\n".join([*lines[:line_of(MARKS[2]) - 1], *lines[line_of(MARKS[2]):]]))
    assert MARKS[2] not in entries and found.damaged == ["This file was made with 8 vessels, and 7 are left in it."]


def test_a_lost_line_end_costs_nothing():
    at = WHOLE.index("\n", WHOLE.index(MARKS[1]))
    found, entries = read(WHOLE[:at] + WHOLE[at + 1:])
    assert list(entries) == MARKS and found.damaged == []


def test_a_lost_beginning_gives_the_vessels_and_says_so():
    at = WHOLE.index('"Soy flakes"')
    found, entries = read(WHOLE[at:])
    assert list(entries) == MARKS and "The beginning of the file is damaged" in found.damaged[0]
    # Half of a vessel, then whole ones.
    told = book_preview(WHOLE[WHOLE.index(MARKS[1]):], [], {})
    assert [row["id"] for row in told["rows"]] == MARKS[2:] and "Line 1 could not be read." in told["damaged"]


def test_a_damaged_beginning_keeps_the_lists_that_are_sound():
    found, _ = read(WHOLE.replace('"name":"Sand"', '"name":"Sa', 1))
    assert found.own == {**OWN, "materials": [{"name": "Soy flakes"}]} and len(found.damaged) == 1


def test_the_same_vessel_twice_is_taken_once_the_later_one():
    entry = ENTRIES[0]
    later = {**entry, "record": {**entry["record"], "name": "Later"}, "stamps": {**entry["stamps"], "desk-2": "2026-12-30T00:00:00.000Z"}}
    for order in ([entry, later], [later, entry]):
        told = book_preview(book_file(order, {}, "", "json")["text"], [], {})
        assert [row["name"] for row in told["rows"]] == ["Later"]
        assert len(told["damaged"]) == 1 and "twice in the file, at 9 and 10" in told["damaged"][0]
    assert book_preview(book_file([entry, entry], {}, "", "json")["text"], [], {})["damaged"] == []


@pytest.mark.parametrize("bad", ['{"record":{"id":"n","x":NaN}}', '{"record":{"id":"n","x":1e999}}', '{"record":{"id":"n","x":-Infinity}}',
                                 '{"record":' * 40 + '1' + '}' * 40, '{"record":{"id":"n","x":' + "[" * 5000 + "]" * 5000 + "}}",
                                 '{"record":{"id":"n","x":' + "9" * 5000 + "}}", '{"record":[]}', '{"record":{"id":"n","x":[' + '"",' * 20_000 + '""]}}'],
                         ids=["NaN", "1e999", "-Infinity", "nested entries", "nested too deep", "a huge number", "no vessel", "too many leaves"])
def test_what_no_book_holds_is_told_and_left_out(bad):
    text = WHOLE.replace("]}\n", "").rstrip() + ",\n" + bad + "\n]}\n"
    found, entries = read(text)
    assert list(entries) == MARKS
    assert found.damaged and str(line_of(MARKS[-1]) + 1) in found.damaged[0]


def test_names_that_browsers_mind_are_kept_as_data_and_never_as_a_mark():
    record = '{"record":{"id":"__proto__","constructor":"x","__proto__":{"name":"y"}},"stamps":{"__proto__":"2026"}}'
    told = book_preview('{"brimbook":1,\n"vessels":[\n' + record + "\n]}", [], {})
    row = told["rows"][0]
    assert row["id"].startswith("made-") and row["entry"]["record"]["__proto__"] == {"name": "y"}


@pytest.mark.parametrize("text", ["", " \n ", "\0\0\0", "\ufeff"], ids=repr)
def test_an_empty_file_is_told(text):
    with pytest.raises(QuantityError, match="This file is empty."):
        book_preview(text, [], {})


@pytest.mark.parametrize("text", ["{}", "[]", '{"a": 1}', "{" * 1000, "[" * 100_000, '{"name": "package", "version": "1.0.0"}', '{"settings": {"mass": "oz"}}',
                                  "[1, 2", '{"vessels": [1, 2]}'], ids=lambda text: text[:20])
def test_a_file_of_something_else_is_told(text):
    with pytest.raises(QuantityError, match="no file of a book"):
        book_preview(text, [], {})


def test_a_file_of_an_empty_book_is_sound():
    told = book_preview(book_file([], {}, "", "json")["text"], ENTRIES, OWN)
    assert (told["rows"], told["same"], told["damaged"]) == ([], 0, [])


def test_a_newer_file_is_read_as_far_as_it_is_known():
    told = book_preview(WHOLE.replace('"brimbook":1', '"brimbook":2'), ENTRIES, OWN)
    assert told["same"] == len(ENTRIES) and "another version of this page" in told["damaged"][0]


def test_a_file_that_is_too_large_is_refused_before_it_is_read():
    with pytest.raises(QuantityError, match="100 MB"):
        book_preview("x" * 100_000_001, [], {})


def test_more_vessels_than_a_book_holds_are_left_out_and_told():
    lines = ",\n".join(f'{{"record":{{"id":"{number}"}}}}' for number in range(MOST_VESSELS + 5))
    for text in ('{"brimbook":1,\n"vessels":[\n' + lines + "\n]}", f'{{"brimbook": 1, "vessels": [{lines}]}}'):
        found, entries = read(text)
        assert len(entries) == MOST_VESSELS and len(found.damaged) == 1 and "more than 20000 vessels" in found.damaged[0]


@pytest.mark.parametrize("hostile", [
    '{"record":' * 60_000, '{"record": ["' * 60_000, '{"record":{"a":"' + "x" * 600_000, '{"line":"' * 60_000 + "x" * 400_000,
    '{"record":{"id":"a"},' * 30_000, ('{"record":{"id":"a","b":[' + "1," * 2000) * 100, '[' * 600_000 + '{"record":',
])
def test_a_file_made_to_take_forever_does_not(hostile):
    began = time.process_time()
    read("{" + hostile)
    # Half a megabyte is gone over a few times: that takes a moment, and trying each place anew would take hours.
    assert time.process_time() - began < 10


def test_random_damage_loses_nothing_unseen():
    """What is whole after the damage is read, and where something is missing something is told."""
    chance = random.Random(3)
    for text in (WHOLE, json.dumps(json.loads(WHOLE), indent=2, ensure_ascii=False)):
        begin = text.index('"vessels"') + 14
        for _ in range(120):
            at, length = chance.randrange(begin, len(text)), chance.choice([1, 3, 40, 900, 5000])
            bent = text[:at] + chance.choice(["", "", "\0" * length, "{", '"', "]}", "\n"]) + text[at + length:]
            found, entries = read(bent)
            missing = [mark for mark, entry in zip(MARKS, ENTRIES) if entries.get(mark) != entry]
            # Outside of the damage nothing is lost. A vessel ends before the next one's record.
            starts = [text.rindex('"record"', 0, text.index(mark)) for mark in MARKS]
            far = {mark for mark, start, end in zip(MARKS, starts, [*starts[1:], len(text)]) if end < at or start - 12 > at + length}
            assert not far & set(missing)
            lost = [mark for mark in MARKS if mark not in entries]
            assert not lost or found.damaged


def test_a_file_of_bad_lines_comes_to_an_end():
    found, entries = read('{"brimbook":1,\n"vessels":[\n' + "x\n" * 300_000 + '{"record":{"id":"7"}}\n]}')
    assert entries == {} and len(found.damaged) == 52 and found.damaged[49] == "Line 52 could not be read."
    assert found.damaged[51] == "From line 10004 on this file was left out: too much of it is damaged."


@given(st.text(max_size=200))
def test_any_text_is_a_preview_or_a_sentence(text):
    for each in (text, WHOLE[:900] + text, '{"brimbook":1,\n"vessels":[\n' + text):
        try:
            told = book_preview(each, ENTRIES[:2], OWN)
        except QuantityError as error:
            assert str(error).endswith(".")
        else:
            assert set(told) == {"rows", "same", "damaged", "own"}
