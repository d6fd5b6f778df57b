"""The entries of the book as the page keeps them: each a text, read only where it must be."""

import json
import zlib
from collections.abc import Iterator
from typing import Any

from brimbook.record import tree
from brimbook.record.strict import DECODER

LONGEST_MARK = 64
_MOST_DEVICES = 200
_LONGEST_MOMENT = 40
# So many entries are read together: what nobody needs any more is given back before the next.
_AT_ONCE = 100
# A name that a browser takes for a part of its own machinery.
_NOT_A_MARK = "__proto__"


class NotAnEntry(ValueError):
    """What can't be an entry of the book; its message says why, to go on after the place where it stood."""


_ENCODER = json.JSONEncoder(ensure_ascii=False, separators=(",", ":"))


def entry_text(entry: Any) -> str:
    """An entry on one line, as it is kept and as it stands in a file [JSON text].

    entry: as kept, or its text already [entry].

    >>> entry_text({"record": {"id": "7"}, "saved": ""})
    '{"record":{"id":"7"},"saved":""}'
    """
    return entry if isinstance(entry, str) else _ENCODER.encode(entry)


def made_mark(text: str) -> str:
    """A mark for a vessel that has none: the same for the same content [text].

    text: all that is told of the vessel [text].

    >>> made_mark("Tide cup") == made_mark("Tide cup"), made_mark("Tide cup")[:5]
    (True, 'made-')
    """
    data = text.encode("utf-8", "replace")
    return f"made-{zlib.crc32(data):08x}{zlib.adler32(data):08x}"


def is_mark(mark: Any) -> bool:
    """Can this be the mark of a vessel in the book [yes or no]?

    mark: what stands as the id of a record [text].

    >>> is_mark("7f"), is_mark(""), is_mark(7), is_mark("__proto__")
    (True, False, False, False)
    """
    return isinstance(mark, str) and 0 < len(mark) <= LONGEST_MARK and mark.isprintable() and mark != _NOT_A_MARK


def stamps_of(entry: dict[str, Any]) -> dict[str, str]:
    """When each device last changed a vessel; of an older entry only the moment is known, not the device [stamps].

    entry: as kept [entry].

    >>> stamps_of({"saved": "2026-09-26T10:00:00.000Z"})
    {'': '2026-09-26T10:00:00.000Z'}
    """
    told = entry.get("stamps")
    fit = {device: moment for device, moment in list(told.items())[:_MOST_DEVICES]
           if device != _NOT_A_MARK and isinstance(moment, str) and len(moment) <= _LONGEST_MOMENT} if isinstance(told, dict) else {}
    saved = entry.get("saved")
    return fit or {"": saved if isinstance(saved, str) else ""}


def checked(entry: Any) -> dict[str, Any]:
    """An entry that may be kept; one whose vessel has no fit mark gets a made one [entry].

    entry: anything out of a file [entry].

    Raises NotAnEntry with the reason.

    >>> checked({"record": {"id": "7"}})
    {'record': {'id': '7'}}
    """
    record = entry.get("record") if isinstance(entry, dict) else None
    if not isinstance(record, dict):
        raise NotAnEntry("holds no vessel")
    if not tree.within_limits(record) or not tree.within_limits({name: part for name, part in entry.items() if name != "record"}):
        raise NotAnEntry("holds more than a vessel can be, or is nested too deep")
    if is_mark(record.get("id")):
        return entry
    return {**entry, "record": {**record, "id": made_mark(entry_text(record))}}


class Kept:
    """The book's own entries by the mark of their vessel; each is read when somebody looks at it."""

    def __init__(self, entries: Any, marks: Any = None):
        given = entries if isinstance(entries, list) else []
        self._found: dict[str, Any] = {}
        if isinstance(marks, list) and len(marks) == len(given):
            self._found = {mark: entry for mark, entry in zip(marks, given) if is_mark(mark)}
        else:
            read = [entry for entry in map(_read, given) if entry is not None]
            self._found = {entry["record"]["id"]: entry for entry in read if is_mark(entry["record"].get("id"))}
        self._marks = {entry: mark for mark, entry in self._found.items() if isinstance(entry, str)}
        self._entries: dict[str, Any] = {}

    def marks(self) -> list[str]:
        """The marks of all vessels in the book [texts]."""
        return list(self._found)

    def mark_of(self, text: str) -> str:
        """The mark of the vessel whose entry is this text to the letter, or nothing [text].

        text: an entry on one line [JSON text].
        """
        return self._marks.get(text, "")

    def entry(self, mark: str) -> dict[str, Any] | None:
        """The entry of a vessel, or nothing where it is not in the book [entry].

        mark: of the vessel [text].
        """
        if mark not in self._entries:
            self._entries[mark] = _read(self._found.get(mark))
        return self._entries[mark]

    def text(self, mark: str) -> str:
        """The entry of a vessel as it is kept, or nothing where it is not in the book [JSON text].

        mark: of the vessel [text].
        """
        return entry_text(self._found[mark]) if mark in self._found else ""


def _read(entry: Any) -> dict[str, Any] | None:
    """An entry of the book, out of its text where it is one; nothing where it is damaged."""
    try:
        read = DECODER.decode(entry) if isinstance(entry, str) else entry
    except (ValueError, RecursionError):
        return None
    return read if isinstance(read, dict) and isinstance(read.get("record"), dict) else None


def read_pairs(entries: Any) -> Iterator[tuple[str, dict[str, Any]]]:
    """All entries with their texts; damaged ones are left out [texts and entries].

    entries: of the book, as kept [entries].

    >>> list(read_pairs(['{"record": {"id": "7"}}', '{"rec']))
    [('{"record": {"id": "7"}}', {'record': {'id': '7'}})]
    """
    given = entries if isinstance(entries, list) else []
    for begin in range(0, len(given), _AT_ONCE):
        some = given[begin:begin + _AT_ONCE]
        for text, entry in zip(some, _parsed(some)):
            read = _read(entry)
            if read is not None:
                yield entry_text(text), read


def _parsed(some: list[Any]) -> list[Any]:
    """Entries that are texts read together, which is quicker; a damaged one, which is rare, leaves them as they are."""
    if not all(isinstance(entry, str) for entry in some):
        return some
    try:
        read = DECODER.decode(f"[{','.join(some)}]")
    except (ValueError, RecursionError):
        return some
    return read if len(read) == len(some) else some


def read_entries(entries: Any) -> list[dict[str, Any]]:
    """All entries, out of their texts where they are texts; damaged ones are left out [entries].

    entries: of the book, as kept [entries].

    >>> read_entries(['{"record": {"id": "7"}}', '{"rec'])
    [{'record': {'id': '7'}}]
    """
    return [entry for _, entry in read_pairs(entries)]
