"""What a file holds beside the book, vessel by vessel: new, changed, older, or changed on both sides. Nothing is written."""

from dataclasses import dataclass, field
from typing import Any

from brimbook.book.columns import Columns, in_order
from brimbook.book.kept import LONGEST_MARK, Kept, entry_text, made_mark, stamps_of
from brimbook.record.fields import Leaf, leaf_at

_MOST_SHOWN = 3
_LONGEST_SHOWN = 40
_BEGINNINGS = {
    "new": "Not in your book yet.",
    "changed": "Changed in the file.",
    "older": "Older in the file: your book went on.",
    "conflict": "Changed here and in the file.",
}
NO_NAME = "Vessel without a name"


@dataclass
class Compared:
    """The vessels of a file beside those of the book."""

    rows: list[dict[str, Any]] = field(default_factory=list)
    same: int = 0


def newer_of(one: dict[str, str], other: dict[str, str]) -> str:
    """Which of two states of a vessel goes back on the other: one, other, both (they are the same) or neither [text].

    one: when each device last changed the one [stamps].
    other: and the other [stamps].

    >>> newer_of({"a": "2"}, {"a": "1"}), newer_of({"a": "1"}, {"a": "1", "b": "1"}), newer_of({"a": "1"}, {"b": "1"})
    ('one', 'other', 'neither')
    """
    holds_other = all(one.get(device, "") >= moment for device, moment in other.items())
    holds_one = all(other.get(device, "") >= moment for device, moment in one.items())
    return ("both" if holds_one else "one") if holds_other else "other" if holds_one else "neither"


def joined(one: dict[str, str], other: dict[str, str]) -> dict[str, str]:
    """The stamps of a state that knows of both [stamps].

    one: when each device last changed the one [stamps].
    other: and the other [stamps].

    >>> joined({"a": "2", "b": "1"}, {"a": "1", "c": "5"})
    {'a': '2', 'b': '1', 'c': '5'}
    """
    return {device: max(one.get(device, ""), other.get(device, "")) for device in (*one, *(new for new in other if new not in one))}


def compare(found: list[tuple[int, str, dict[str, Any] | None]], kept: Kept) -> tuple[Compared, list[str]]:
    """The vessels of a file beside the book, and sentences on those that stand in it twice [rows and sentences].

    found: lines, marks and entries of the file; nothing for an entry that is the book's own to the letter [entries].
    kept: the book's own [entries].

    >>> compared, _ = compare([(1, "7", {"record": {"id": "7", "name": "Tide cup"}})], Kept([]))
    >>> compared.rows[0]["state"], compared.rows[0]["says"]
    ('new', 'Not in your book yet.')
    """
    compared, columns = Compared(), Columns()
    once, twice = _once_each(found, kept)
    for mark, (_, entry) in once.items():
        own = None if entry is None else kept.entry(mark)
        if own is None and entry is not None:
            compared.rows.append(row_of(entry, None, "new", []))
            continue
        # What is the same to the letter is found at once; the rest is looked at closely.
        apart = [] if entry is None or entry["record"] == own["record"] else differences(own["record"], entry["record"], columns)
        if apart:
            compared.rows.append(row_of(entry, own, state_of(stamps_of(entry), own), apart))
        else:
            compared.same += 1
    return compared, twice


def _once_each(found: list, kept: Kept) -> tuple[dict[str, tuple[int, Any]], list[str]]:
    """Of each vessel its latest entry; and which stood there twice."""
    once: dict[str, tuple[int, Any]] = {}
    twice = []
    for line, mark, entry in found:
        if mark not in once:
            once[mark] = (line, entry)
            continue
        first, before = once[mark]
        here, there = entry or kept.entry(mark), before or kept.entry(mark)
        if here["record"] == there["record"]:
            continue
        newer = newer_of(stamps_of(there), stamps_of(here))
        later = newer in ("other", "both") or newer == "neither" and str(here.get("saved", "")) >= str(there.get("saved", ""))
        once[mark] = (line, entry) if later else (first, before)
        twice.append(f"{name_of(here['record'])} stands twice in the file, at {first} and {line}: "
                     f"the later one, at {line if later else first}, was taken.")
    return once, twice


def state_of(stamps: dict[str, str], own: dict[str, Any] | None) -> str:
    """How a vessel of the file that is not the same stands to the book's: new, changed, older or conflict [text].

    stamps: of the file's entry [stamps].
    own: the book's entry, or nothing [entry].

    >>> state_of({"a": "2"}, None), state_of({"a": "2"}, {"stamps": {"a": "1"}}), state_of({"a": "0"}, {"stamps": {"a": "1"}})
    ('new', 'changed', 'older')
    """
    if own is None:
        return "new"
    # Alike in their stamps and yet not the same: somebody changed it in the file itself.
    return {"one": "changed", "both": "changed", "other": "older", "neither": "conflict"}[newer_of(stamps, stamps_of(own))]


def row_of(entry: dict[str, Any], own: dict[str, Any] | None, state: str, apart: list[str]) -> dict[str, Any]:
    """One line of the preview: what differs, the entry to keep if it is taken, and one beside the book's for who wants both [row].

    entry: of the file [entry].
    own: the book's, or nothing [entry].
    state: as state_of tells it [text].
    apart: sentences on what differs [texts].
    """
    record = entry["record"]
    row = {"id": record["id"], "name": name_of(record), "state": state, "says": " ".join([_BEGINNINGS[state], *apart]), "entry": entry}
    if own is not None:
        saved = max(str(entry.get("saved", "")), str(own.get("saved", "")))
        row["entry"] = {**entry, "saved": saved, "stamps": joined(stamps_of(own), stamps_of(entry))}
        row["copy"] = _beside(entry)
    return row


def _beside(entry: dict[str, Any]) -> dict[str, Any]:
    """The same vessel under a mark of its own. Taken twice it is still one."""
    record = entry["record"]
    mark = f"{record['id'][:LONGEST_MARK - 22]}-{made_mark(entry_text(record))}"
    return {**entry, "record": {**record, "id": mark, "name": f"{name_of(record)} (from the file)"}}


def name_of(record: dict[str, Any]) -> str:
    """What a vessel is called [text].

    record: of a vessel [record].

    >>> name_of({"name": " "})
    'Vessel without a name'
    """
    name = record.get("name")
    return name.strip() if isinstance(name, str) and name.strip() else NO_NAME


def differences(own: dict[str, Any], other: dict[str, Any], columns: Columns) -> list[str]:
    """Sentences on the first leaves that differ, and on how many more do; what says nothing makes no difference [texts].

    own: the book's record [record].
    other: the file's [record].
    columns: found so far in records like these [columns].

    >>> differences({"name": "Tide cup"}, {"name": "Tide cups", "notes": "Slowly", "casts": [{}]}, Columns())
    ['Name: “Tide cup” here, “Tide cups” in the file.', 'Notes: nothing here, “Slowly” in the file.']
    """
    here, there = columns.row(own), columns.row(other)
    paths = list(columns.numbers)
    apart = {paths[column]: column for column in {**here, **there} if here.get(column, "") != there.get(column, "")}
    paths = list(apart)
    first = [paths[place] for place in in_order(paths)[:_MOST_SHOWN]]
    told = [_difference(path, here.get(apart[path], ""), there.get(apart[path], "")) for path in first]
    return [*told, *([f"And {len(apart) - _MOST_SHOWN} more."] if len(apart) > _MOST_SHOWN else [])]


def _difference(path: str, here: str, there: str) -> str:
    """The question's label, and where it may be asked several times its place in the list; then both texts."""
    leaf = leaf_at(path)
    number = next((step for step in reversed(path.split(".")) if step.isdigit()), "0")
    place = f" ({int(number[:9]) + 1})" if number != "0" else ""
    return f"{leaf.label if leaf else path}{place}: {_shown(here, leaf)} here, {_shown(there, leaf)} in the file."


def _shown(text: str, leaf: Leaf | None) -> str:
    plain = " ".join(text.split())
    if leaf is not None and leaf.kind == "choice":
        plain = next((choice.label for choice in leaf.choices if choice.value == plain), plain)
    short = plain if len(plain) <= _LONGEST_SHOWN else f"{plain[:_LONGEST_SHOWN - 1]}…"
    if not short:
        return "nothing"
    return f"“{short}”" if leaf is None or leaf.kind in ("text", "choice") else short
