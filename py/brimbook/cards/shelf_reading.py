"""Reading the shelf: each thing by itself, so that a large shelf is read, and little of it again with every letter typed."""

import json
from functools import lru_cache
from typing import Any

from brimbook.quantity.show import Display
from brimbook.record.said import Fault, Said, understand

LISTS = ("materials", "wicks")
MOST_MATERIALS = 200
_HERE = "On your shelf"
_TOO_LARGE = "There is more in this than can be read. It is kept as it is."
_UNREAD = "A part of this can't be read. It is kept as it is."


def shelf_said(record: Any, display: Display) -> Said:
    """The record of the shelf as understood [said].

    record: materials and wicks, each a list [record].
    display: how this maker reads figures [display].

    A thing that can't be read leaves the others as they are; a vessel's limits hold for each by itself.
    """
    if not isinstance(record, dict):
        return understand(record, display)
    said = understand({name: part for name, part in record.items() if name not in LISTS}, display)
    said.record = record
    for name in LISTS:
        items = record.get(name, [])
        if isinstance(items, list):
            said.lengths[name] = min(len(items), MOST_MATERIALS)
            for row, item in enumerate(items[:MOST_MATERIALS]):
                _add(said, item_said(name, item, display), f"{name}.0", f"{name}.{row}")
        else:
            for fault in understand({name: items}, display).faults:
                said.mark(fault)
    return said


def beyond(said: Said, name: str) -> int:
    """How many things of a list are kept and not read, since the list is too long [count].

    said: the record of the shelf as understood [said].
    name: of the list [text].
    """
    items = said.record.get(name) if isinstance(said.record, dict) else None
    return max(0, len(items) - MOST_MATERIALS) if isinstance(items, list) and said.count(name) else 0


def item_said(name: str, item: Any, display: Display) -> Said:
    """One thing of the shelf as understood, as the first and only one of its list; it is not to be changed [said].

    name: of its list [text].
    item: the texts of its leaves [record].
    display: how this maker reads figures [display].
    """
    return _read(name, json.dumps(item), display)


@lru_cache(maxsize=512)
def _read(name: str, item: str, display: Display) -> Said:
    return understand({name: [json.loads(item)]}, display)


def _add(said: Said, one: Said, before: str, place: str) -> None:
    """Take over what was read of one thing, as standing at its place."""
    def moved(path: str) -> str:
        return f"{place}{path.removeprefix(before)}" if path == before or path.startswith(f"{before}.") else path

    for theirs, ours in ((one.texts, said.texts), (one.values, said.values), (one.canonical, said.canonical), (one.lengths, said.lengths)):
        ours.update((moved(path), part) for path, part in theirs.items() if path.startswith(f"{before}."))
    for fault in one.faults:
        if fault.path in one.texts:
            said.mark(Fault(moved(fault.path), fault.label, fault.sentence))
        else:
            # What is no text can't be read at all; here it is no part of a vessel.
            said.mark(Fault(moved(fault.path) or place, _HERE, _UNREAD if fault.path else _TOO_LARGE))
