"""The book as a file, through the door too."""

import json
import sys

import pytest
from books import book
from brimbook import door
from brimbook.book.file import book_file, book_preview
from brimbook.book.kept import entry_text
from hypothesis import given
from vessels import ANYTHING, ask

OWN = {"materials": [{"name": "Soy flakes", "pack_price": "118"}], "wicks": [], "plan": [{"id": "x", "count": "2"}], "settings": {"mass": "oz"}}
ENTRIES = book(5, seed=2)


def with_book(request, entries, file=None):
    """A request that the book goes along with, as the page sends it."""
    texts = [entry_text(entry) for entry in entries]
    first = json.dumps({**request, "entries": [], "texts": len(texts), "marks": [entry["record"]["id"] for entry in entries]})
    return "\n".join([first, *texts, *([] if file is None else [file])])


def asked(name, request):
    reply = json.loads(door.ask(name, request))
    assert "fault" not in reply, reply["fault"]
    return reply["answer"]


@pytest.mark.parametrize(("form", "name", "kind"), [("json", "brimbook-2026-11-24.json", "application/json"), ("csv", "brimbook-2026-11-24.csv", "text/csv"),
                                                    ("", "brimbook-2026-11-24.json", "application/json")])
def test_a_file_is_named_by_its_day(form, name, kind):
    made = ask("book_file", entries=ENTRIES, own=OWN, made="2026-11-24T09:30", form=form)
    assert (made["name"], made["kind"]) == (name, kind)


@pytest.mark.parametrize("made", ["", "../../etc", "<b>", "\n"])
def test_no_moment_makes_an_odd_name(made):
    assert set(book_file([], {}, made, "json")["name"]) <= set("brimbook-0123456789.json")


def test_the_file_of_all_is_json_with_a_vessel_a_line():
    text = book_file(ENTRIES, OWN, "2026-11-24T09:30", "json")["text"]
    told = json.loads(text)
    assert told == {"brimbook": 1, "made": "2026-11-24T09:30", "count": 5, **OWN, "vessels": ENTRIES}
    assert [json.loads(line.rstrip(",")) for line in text.split("\n") if line.startswith('{"record"')] == ENTRIES


def test_all_that_is_kept_comes_back_into_an_empty_book():
    told = book_preview(book_file(ENTRIES, OWN, "", "json")["text"], [], {})
    assert [row["entry"] for row in told["rows"]] == ENTRIES
    assert {row["key"]: row["value"] for row in told["own"] if row["state"] != "same"} == {name: OWN[name] for name in ("materials", "plan", "settings")}


@pytest.mark.parametrize("form", ["json", "csv"])
@pytest.mark.parametrize("given_as", [str, str.encode], ids=["text", "bytes"])
def test_the_book_may_go_along_as_it_is_kept(form, given_as):
    request = {"own": OWN, "made": "2026-11-24T09:30", "form": form}
    made = asked("book_file", given_as(with_book(request, ENTRIES)))
    assert made == ask("book_file", entries=ENTRIES, **request)
    told = asked("book_preview", given_as(with_book({"own": OWN}, ENTRIES, made["text"])))
    assert told == ask("book_preview", entries=ENTRIES, own=OWN, text=made["text"]) and told["same"] == 5


def test_without_vessels_only_the_file_goes_along():
    made = asked("book_file", with_book({"own": OWN, "form": "json"}, []))
    assert json.loads(made["text"])["vessels"] == []
    assert len(asked("book_preview", with_book({"own": {}}, [], made["text"]))["own"]) == 4


def test_other_asks_about_the_book_take_it_so_too():
    for name, more in (("trace", {"sought": "W4711", "settings": {}}), ("outdated", {"materials": [], "wicks": [], "settings": {}})):
        assert asked(name, with_book(more, ENTRIES)) == ask(name, entries=ENTRIES, **more)


@pytest.mark.parametrize("request_text", ["{}\n", '{"texts":-5}\nx\ny', '{"texts":"2"}\na', '{"texts":9}\na', "[]\na", "5\na", '{"texts":null}\n', "\n\n"])
def test_an_odd_request_with_more_lines_is_answered(request_text):
    for name in ("book_file", "book_preview", "trace", "outdated"):
        reply = json.loads(door.ask(name, request_text))
        assert set(reply) in ({"answer"}, {"fault"})


def test_bytes_that_are_no_text_are_answered():
    assert set(json.loads(door.ask("book_preview", b'{"texts":0}\n\xff\xfe\x00'))) == {"fault"}


@given(ANYTHING, ANYTHING)
def test_anything_becomes_a_file_and_is_read_back(entries, own):
    for form in ("json", "csv"):
        made = ask("book_file", entries=entries, own=own, made="2026-11-24T09:30", form=form)
        reply = json.loads(door.ask("book_preview", json.dumps({"text": made["text"], "entries": entries, "own": own})))
        assert "answer" in reply or reply["fault"]["detail"] == "", reply


def steps_taken(work):
    """How many lines of Python run: a clock that no other program can disturb."""
    count = 0

    def watch(frame, event, _):
        nonlocal count
        count += event == "line"
        return watch

    before = sys.gettrace()
    sys.settrace(watch)
    try:
        work()
    finally:
        sys.settrace(before)
    return count


@pytest.mark.parametrize("work", ["json", "csv", "the same", "a table", "all new"])
def test_work_grows_with_the_book_and_no_faster(work):
    def steps(count):
        entries = [entry_text(entry) for entry in book(count, seed=6)]
        marks = [json.loads(text)["record"]["id"] for text in entries]
        files = {form: book_file(entries, {}, "", form)["text"] for form in ("json", "csv")}
        return steps_taken({
            "json": lambda: book_file(entries, {}, "", "json"), "csv": lambda: book_file(entries, {}, "", "csv"),
            "the same": lambda: book_preview(files["json"], entries, {}, marks), "a table": lambda: book_preview(files["csv"], entries, {}, marks),
            "all new": lambda: book_preview(files["json"], [], {})}[work])

    steps(10)
    assert steps(400) < 2.2 * steps(200)
