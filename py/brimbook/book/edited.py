"""A table that came back from a spreadsheet, beside the book: only cells that differ change a vessel."""

import re
from typing import Any

from brimbook.book.columns import Columns, laid_out, picked
from brimbook.book.compare import Compared, differences, row_of, state_of
from brimbook.book.kept import Kept, NotAnEntry, checked, is_mark, made_mark, stamps_of
from brimbook.book.table import CHECK, SAVED, STAMPS, Rows, beginning, check_of, guarded, read_table, unguarded
from brimbook.book.written import Frame, written
from brimbook.record import blank
from brimbook.record.fields import VERSION, leaf_at, shape_at
from brimbook.record.strict import DECODER

MOST_ROWS = 20_000
# What some programs put for a letter that they could not write.
_LOST_LETTER = "\ufffd"
_PLACE_BELOW = re.compile(r"[A-Za-z_][A-Za-z0-9_]*(?:\.(?:[A-Za-z_][A-Za-z0-9_]*|[0-9]{1,3}))+")
_MOST_NAMED = 3
_LONGEST_VERSION = 10


class _Table:
    """A read table and where its cells belong."""

    def __init__(self, text: str, kept: Kept):
        self.read: Rows = read_table(text)
        self.said: list[str] = self.read.damaged
        self.kept, self.in_book = kept, set(kept.marks())
        header = self.read.header
        self.own_cells = {name: header.index(name) for name in (SAVED, STAMPS, CHECK) if name in header}
        self.begun = beginning(without(header, self.own_cells.get(CHECK)))
        self.cells = self._leaves(header)
        self.paths = [header[cell] for cell in self.cells]
        # Beside the table's own columns the book may have more: they come after these.
        self.columns = Columns(self.paths)
        self.cells_of, self.frame = picked(self.cells), Frame(self.paths)

    def _leaves(self, header: list[str]) -> list[int]:
        """Which cells of a row are leaves of a vessel. What else was added to the table is told and left out."""
        first = {path: cell for cell, path in reversed(list(enumerate(header)))}
        fits = {path: bool(leaf_at(path) or path == "version" or _could_be(path)) for path in first}
        if not all(fits[path] for path in first if path and path not in self.own_cells):
            known = Columns()
            for mark in self.in_book:
                known.row((self.kept.entry(mark) or {"record": {}})["record"])
            fits.update({path: True for path in fits if path in known.numbers})
        refused = set(Frame([path for path in first if fits[path]]).refused)
        leaves = [cell for cell, path in enumerate(header)
                  if path not in self.own_cells and first[path] == cell and fits[path] and path not in refused]
        foreign = [path for cell, path in enumerate(header) if path and path not in self.own_cells and cell not in set(leaves)]
        if foreign:
            self.said.append(_foreign_says(foreign))
        return leaves

    def untouched(self, mark: str, cells: list[str]) -> bool:
        """Is this row, and the vessel in the book, as it was when the table was made [yes or no]?

        mark: of a vessel in the book [text].
        cells: of its row [texts].
        """
        place = self.own_cells.get(CHECK, len(cells))
        return place < len(cells) and cells[place] == check_of(without(cells, place), self.begun, self.kept.text(mark))

    def book_cells(self, mark: str) -> tuple[str, ...]:
        """What the cells of a vessel would be if nobody had changed them [texts].

        mark: of a vessel in the book [text].
        """
        row = self.columns.row(self.kept.entry(mark)["record"])
        return tuple(map(guarded, laid_out(row, range(len(self.paths)))))

    def own_cell(self, cells: list[str], name: str) -> str:
        """What stands in a column that is no leaf [text].

        cells: of a row [texts].
        name: of the column [text].
        """
        place = self.own_cells.get(name, len(cells))
        return unguarded(cells[place]) if place < len(cells) else ""


def without(cells: list[str], place: int | None) -> list[str]:
    """A row without one of its cells [texts].

    cells: of the row [texts].
    place: of that cell, or nothing [number].

    >>> without(["7", "Tide cup", "c1"], 2), without(["7"], None)
    (['7', 'Tide cup'], ['7'])
    """
    return cells if place is None else [*cells[:place], *cells[place + 1:]]


def _could_be(path: str) -> bool:
    """Might another version of this page have a leaf here? What is known of the parts above must not speak against it."""
    if not _PLACE_BELOW.fullmatch(path):
        return False
    steps = path.split(".")
    above = [".".join(steps[:end]) for end in range(1, len(steps))]
    fits = {list: str.isdigit, dict: lambda step: not step.isdigit(), None: bool}
    return not any(map(leaf_at, above)) and all(fits[shape_at(part)](step) for part, step in zip(above, steps[1:]))


def _foreign_says(paths: list[str]) -> str:
    named = ", ".join(f"“{path[:40]}”" for path in paths[:_MOST_NAMED])
    more = f" and {len(paths) - _MOST_NAMED} more" if len(paths) > _MOST_NAMED else ""
    return f"No place in a vessel, or there twice, and left out: column {named}{more}."


def compare_table(text: str, kept: Kept) -> tuple[Compared, list[str]]:
    """The rows of a table beside the book, and sentences on what could not be read [rows and sentences].

    text: of the file [CSV text].
    kept: the book's own entries [entries].

    A column that is missing leaves its leaf as it is in the book; an empty cell empties it.

    Raises QuantityError with a sentence where this is no table of vessels.

    >>> compared, _ = compare_table("id,notes\\n7,Slowly\\n", Kept([{"record": {"id": "7", "notes": "", "made_on": "2026-09-26"}}]))
    >>> compared.rows[0]["says"], compared.rows[0]["entry"]["record"]["made_on"]
    ('Changed here and in the file. Notes: nothing here, “Slowly” in the file.', '2026-09-26')
    """
    found, compared = _Table(text, kept), Compared()
    for mark, (line, cells) in _once_each(found).items():
        if mark in found.in_book and found.untouched(mark, cells):
            compared.same += 1
            continue
        own = kept.entry(mark) if mark in found.in_book else None
        changes = {} if own is None else _changes(found, mark, cells)
        if own is None:
            _take(found, compared, line, _new_entry(found, line, mark, cells), None, "new")
        elif changes:
            stamps = _stamps_of_row(found, cells, own)
            # Whoever edits a table does so beside the book: if that went on since, both were changed.
            state = "changed" if stamps is not None and state_of(stamps, own) == "changed" else "conflict"
            record = _written(found, line, own["record"], changes)
            _take(found, compared, line, {**own, "line": "", "record": record, "stamps": stamps or stamps_of(own)}, own, state)
        else:
            compared.same += 1
    return compared, found.said


def _take(found: _Table, compared: Compared, line: int, entry: dict[str, Any], own: dict[str, Any] | None, state: str) -> None:
    try:
        good = checked(entry)
        apart = [] if own is None else differences(own["record"], good["record"], found.columns)
        if own is None or apart:
            compared.rows.append(row_of(good, own, state, apart))
        else:
            compared.same += 1
    except NotAnEntry as error:
        found.said.append(f"Line {line} {error}: it was left out.")


def _once_each(found: _Table) -> dict[str, tuple[int, list[str]]]:
    """The rows that can be read, of each vessel the last one."""
    once: dict[str, tuple[int, list[str]]] = {}
    place = found.read.header.index("id") if "id" in found.read.header else -1
    rows = [(line, cells) for line, cells in found.read.rows if any(cells)]
    if len(rows) > MOST_ROWS:
        found.said.append(f"This table holds more than {MOST_ROWS} vessels: those after them were left out.")
    for line, cells in rows[:MOST_ROWS]:
        mark = unguarded(cells[place]) if 0 <= place < len(cells) else ""
        # Some programs leave out empty cells at the end of a row; of a vessel that is not known it may be a torn row.
        if mark not in found.in_book and (len(cells) < len(found.read.header) or mark and not is_mark(mark)):
            found.said.append(f"Line {line} could not be read.")
            continue
        if any(cells[len(found.read.header):]):
            found.said.append(f"Line {line} has more cells than the table has columns: those behind the last were left out.")
        # A row made by hand has no mark yet; the same row read again is the same vessel.
        mark = mark or made_mark("\0".join(cells))
        if mark in once and once[mark][1] != cells:
            found.said.append(f"The same vessel stands in lines {once[mark][0]} and {line}: line {line} was taken. "
                              "For a new vessel leave its id empty.")
        once[mark] = (line, cells)
    return once


def _changes(found: _Table, mark: str, cells: list[str]) -> dict[str, str]:
    """The texts of a row that are not those of the book."""
    book = found.book_cells(mark)
    short = len(cells) < len(found.read.header)
    taken = tuple(cells[cell] if cell < len(cells) else before for cell, before in zip(found.cells, book)) if short else found.cells_of(cells)
    if taken == book:
        return {}
    apart = {path: (unguarded(cell), unguarded(before)) for path, cell, before in zip(found.paths, taken, book) if cell != before}
    # Some programs write another line end inside a cell.
    return {path: text for path, (text, before) in apart.items()
            if text.replace("\r\n", "\n") != before.replace("\r\n", "\n") and path not in ("id", "version") and not (_LOST_LETTER in text and _LOST_LETTER not in before)}


def _stamps_of_row(found: _Table, cells: list[str], own: dict[str, Any]) -> dict[str, str] | None:
    """What the row knows of the book's changes; nothing where that was deleted from the table."""
    told, saved = _told_stamps(found, cells), found.own_cell(cells, SAVED)
    if told or told == {} and saved:
        return stamps_of({"stamps": told, "saved": saved})
    return stamps_of(own) if saved and saved == own.get("saved") else None


def _told_stamps(found: _Table, cells: list[str]) -> dict[str, Any] | None:
    try:
        told = DECODER.decode(found.own_cell(cells, STAMPS))
    except (ValueError, RecursionError):
        return None
    return told if isinstance(told, dict) else None


def _new_entry(found: _Table, line: int, mark: str, cells: list[str]) -> dict[str, Any]:
    taken = found.cells_of(cells)
    if "\0'" in "\0" + "\0".join(taken):
        taken = tuple(map(unguarded, taken))
    record = found.frame.record(taken)
    if not record.pop("id", ""):
        # One made by hand begins as every new vessel does; one out of a book has all that was ever said of it.
        texts = {path: text for path, text in zip(found.paths, taken) if text and path != "version"}
        record = _written(found, line, blank.blank(), texts)
    version = record.get("version", "")
    known = isinstance(version, str) and version.isascii() and version.isdigit() and len(version) < _LONGEST_VERSION
    record = {**record, "version": int(version) if known else VERSION, "id": mark}
    return {"record": record, "line": "", "saved": found.own_cell(cells, SAVED), "stamps": _told_stamps(found, cells) or {}}


def _written(found: _Table, line: int, record: dict[str, Any], texts: dict[str, str]) -> dict[str, Any]:
    copy, refused = written(record, texts)
    if refused:
        found.said.append(f"In line {line} the column “{refused[0][:40]}” does not fit the vessel and was left out.")
    return copy
