"""The whole book as one file, and read back with a preview."""

from typing import Any


def book_file(entries: Any, own: Any, made: str, form: str) -> dict[str, str]:
    """The whole book as a file to take away: its name, kind and text [file].

    entries: of the book, each {record, line, saved, stamps} [entries].
    own: what else is kept: materials, wicks, plan, settings [record].
    made: when, as year-month-dayThour:minute [text].
    form: json or csv [text].
    """
    return {"name": "", "kind": "", "text": ""}


def book_preview(text: str, entries: Any, own: Any) -> dict[str, Any]:
    """What a file holds beside the book: nothing is written, the maker chooses [preview].

    text: of the file [text].
    entries: of the book [entries].
    own: what else is kept [record].

    Its rows are the vessels that are new, changed, older or in conflict, each with id, name, state, says and its entry;
    "same" counts those that are the same, "damaged" holds sentences on what could not be read, and "own" is what else the
    file holds, as rows of the same kind.
    """
    return {"rows": [], "same": 0, "damaged": [], "own": []}
