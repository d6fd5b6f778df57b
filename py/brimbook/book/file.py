"""The whole book as one file, and read back with a preview."""

from typing import Any

from brimbook.book.compare import Compared, compare
from brimbook.book.edited import compare_table
from brimbook.book.kept import Kept, entry_text, read_pairs
from brimbook.book.own import compare_own
from brimbook.book.salvage import OWN, read_book
from brimbook.book.table import BYTE_ORDER_MARK, table
from brimbook.quantity.error import QuantityError

LARGEST = 100_000_000
_LOST_LETTER = "\ufffd"
_STATES = ("conflict", "changed", "new", "older")
_NOT_OURS = "This is no file of a book of vessels. Choose one that was saved from this page, or a table of it."


def book_file(entries: Any, own: Any, made: str, form: str) -> dict[str, str]:
    """The whole book as a file to take away: its name, kind and text [file].

    entries: of the book, each {record, line, saved, stamps}, or the texts of these [entries].
    own: what else is kept: materials, wicks, plan, settings [record].
    made: when, as year-month-dayThour:minute [text].
    form: json or csv [text].

    The file of all (json) has a vessel on each line, so that what a damaged one still holds can be read. A table (csv) holds the
    vessels alone.

    >>> print(book_file([{"record": {"id": "7"}, "saved": ""}], {"plan": []}, "2026-11-24T09:30", "json")["text"])
    {"brimbook":1,
    "made":"2026-11-24T09:30",
    "count":1,
    "settings":{},
    "plan":[],
    "materials":[],
    "wicks":[],
    "vessels":[
    {"record":{"id":"7"},"saved":""}
    ]}
    <BLANKLINE>
    """
    day = "".join(character for character in made[:10] if character in "0123456789-")
    name = f"brimbook-{day}" if day else "brimbook"
    if form == "csv":
        return {"name": f"{name}.csv", "kind": "text/csv", "text": table(read_pairs(entries))}
    return {"name": f"{name}.json", "kind": "application/json", "text": _whole(entries, own, made)}


def _whole(entries: Any, own: Any, made: str) -> str:
    kept = own if isinstance(own, dict) else {}
    settings = kept.get("settings") if isinstance(kept.get("settings"), dict) else {}
    listed = {name: kept[name] if isinstance(kept.get(name), list) else [] for name in OWN if name != "settings"}
    vessels = [text for text in map(entry_text, entries if isinstance(entries, list) else []) if text]
    return (f'{{"brimbook":1,\n"made":{entry_text([made])[1:-1]},\n"count":{len(vessels)},\n"settings":{entry_text(settings)},\n'
            f'"plan":{_lines(listed["plan"])},\n"materials":{_lines(listed["materials"])},\n"wicks":{_lines(listed["wicks"])},\n'
            + '"vessels":[\n' + ",\n".join(vessels) + "\n]}\n")


def _lines(items: list[Any]) -> str:
    """A list with an item a line."""
    return "[\n" + ",\n".join(entry_text([item])[1:-1] for item in items) + "\n]" if items else "[]"


def book_preview(text: str, entries: Any, own: Any, marks: Any = None) -> dict[str, Any]:
    """What a file holds beside the book: nothing is written, the maker chooses [preview].

    text: of the file [text].
    entries: of the book, or the texts of these [entries].
    own: what else is kept [record].
    marks: of the vessels, in the order of the entries; with them what is the same to the letter need not be read [texts].

    Its rows are the vessels that are new, changed, older or in conflict, each with id, name, state, says and its entry;
    "same" counts those that are the same, "damaged" holds sentences on what could not be read, and "own" is what else the
    file holds, as rows of the same kind.

    Raises QuantityError with a sentence where there is nothing of a book in the file.

    >>> told = book_preview("id,name\\n7,Tide cup\\n", [{"record": {"id": "7", "name": "Tide cup"}}], {})
    >>> told["rows"], told["same"], told["damaged"]
    ([], 1, [])
    """
    if len(text) > LARGEST:
        raise QuantityError("This file is larger than 100 MB. A book of vessels is smaller: choose another.")
    plain = text.removeprefix(BYTE_ORDER_MARK)
    kept = Kept(entries, marks)
    if not plain.strip("\0 \t\r\n"):
        raise QuantityError("This file is empty.")
    is_book = plain.lstrip()[:1] in ("{", "[") or '{"record":' in plain
    compared, damaged, own_rows = _of_book(plain, kept, own) if is_book else (*compare_table(plain, kept), [])
    if _LOST_LETTER in plain:
        damaged = ["Some letters in this file can't be read: it was not saved as UTF-8. Save it again as UTF-8.", *damaged]
    # What needs a choice comes first.
    rows = sorted(compared.rows, key=lambda row: _STATES.index(row["state"]))
    return {"rows": rows, "same": compared.same, "damaged": damaged, "own": own_rows}


def _of_book(text: str, kept: Kept, own: Any) -> tuple[Compared, list[str], list[dict[str, Any]]]:
    # No text inside holds a bare line end, so all of them may be made alike.
    found = read_book(text.replace("\r\n", "\n").replace("\r", "\n"), kept)
    ours = '"brimbook"' in text[:2000] or bool(found.entries)
    if not ours or not found.entries and not found.own and not found.damaged:
        raise QuantityError(_NOT_OURS)
    compared, twice = compare(found.entries, kept)
    own_rows, refused = compare_own(found.own, own)
    return compared, [*found.damaged, *twice, *refused], own_rows
