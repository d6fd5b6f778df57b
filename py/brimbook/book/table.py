"""The book as a table for a spreadsheet (CSV): a vessel a row, a leaf a column; and such a table read back.

As RFC 4180 has it: commas, lines that end in CR LF, quotation marks doubled inside quotation marks. A cell that a spreadsheet
would take for a formula has an apostrophe before it.
"""

import csv
import io
import re
import zlib
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from json.encoder import encode_basestring
from typing import Any

from brimbook.book.columns import Columns, in_order, laid_out
from brimbook.book.kept import entry_text
from brimbook.quantity.error import QuantityError
from brimbook.record.fields import VERSION, leaf_at

BYTE_ORDER_MARK = "\ufeff"
SAVED, STAMPS, CHECK = "saved", "stamps", "check"
MARKS = ",;\t"
_FORMULA = re.compile(r"'*[=+\-@\t\r\n\0]")
_BETWEEN = "\x1f"
_SOME_FORMULA = re.compile(rf"{_BETWEEN}'*[=+\-@\t\r\n\0]")
# A table with a quotation mark missing is begun anew after the bad row, so often at most.
_MOST_BEGINNINGS = 50


def guarded(text: str) -> str:
    """A cell that no spreadsheet takes for a formula [text].

    text: of a leaf [text].

    >>> guarded("=1+1"), guarded("-5 °C"), guarded("'-5"), guarded("'tis so")
    ("'=1+1", "'-5 °C", "''-5", "'tis so")
    """
    return f"'{text}" if _FORMULA.match(text) else text


def unguarded(cell: str) -> str:
    """The text that stands in a cell [text].

    cell: as guarded wrote it, or as a spreadsheet has it [text].

    >>> unguarded("'=1+1"), unguarded("-5 °C"), unguarded("'tis so")
    ('=1+1', '-5 °C', "'tis so")
    """
    return cell[1:] if cell[:1] == "'" and _FORMULA.match(cell) else cell


def table(pairs: Iterable[tuple[str, dict[str, Any]]]) -> str:
    """All vessels as one table, with only the columns in which something stands [CSV text].

    pairs: the text of each entry of the book, and the entry [texts and entries].

    >>> table([("", {"record": {"id": "7", "name": "Tide cup"}, "saved": "", "stamps": {}})]).split()
    ['\\ufeffid,name,saved,stamps,check', '7,Tide', 'cup,,{},c33f5b5d500000000']
    """
    columns = Columns()
    rows = [(columns.row(entry["record"]), _saved(entry), _stamps(entry), text) for text, entry in pairs]
    order = _ordered(columns, [row for row, *_ in rows])
    paths = list(columns.numbers)
    header = [*(guarded(paths[column]) for column in order), SAVED, STAMPS]
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([*header, CHECK])
    begun = beginning(header)
    writer.writerows(_row(laid_out(row, order), saved, stamps, begun, text) for row, saved, stamps, text in rows)
    return BYTE_ORDER_MARK + out.getvalue()


def _row(cells: list[str], saved: str, stamps: str, begun: int, text: str) -> list[str]:
    cells += saved, stamps
    whole = _BETWEEN.join(cells)
    # Hardly any row needs guarding, so all of it is looked at in one go first.
    if _SOME_FORMULA.search(whole) or _FORMULA.match(whole):
        cells = [*map(guarded, cells)]
        whole = _BETWEEN.join(cells)
    cells.append(_check(whole, begun, text))
    return cells


def beginning(header: Sequence[str]) -> int:
    """What the checks of a table's rows begin with: they stand for its columns too [number].

    header: names of the columns, without the check [texts].

    >>> beginning(["id", "name"]) == beginning(["name", "id"])
    False
    """
    return _sum(_BETWEEN.join(header))


def check_of(cells: Sequence[str], begun: int, text: str) -> str:
    """A check by which a row is known that nobody changed, in the table or in the book, so that it need not be read [text].

    cells: of the row, without the check [texts].
    begun: as beginning has it [number].
    text: the entry as the book keeps it [JSON text].

    >>> check_of(["7", "Tide cup"], 0, "") == check_of(["7", "Tide cup"], 0, " ")
    False
    """
    return _check(_BETWEEN.join(cells), begun, text)


def _check(row: str, begun: int, text: str) -> str:
    # A letter before it keeps a spreadsheet from taking it for a number.
    return f"c{_sum(row, begun):08x}{_sum(text):08x}"


def _sum(text: str, begun: int = 0) -> int:
    return zlib.crc32(text.encode("utf-8", "replace"), begun)


def _saved(entry: dict[str, Any]) -> str:
    saved = entry.get("saved")
    return saved if isinstance(saved, str) else ""


def _stamps(entry: dict[str, Any]) -> str:
    stamps = entry.get("stamps", {})
    if isinstance(stamps, dict) and all(isinstance(moment, str) for moment in stamps.values()):
        # What nearly every entry has is quicker written here.
        return "{" + ",".join(f"{encode_basestring(device)}:{encode_basestring(moment)}" for device, moment in stamps.items()) + "}"
    return entry_text([stamps])[1:-1]


def _ordered(columns: Columns, rows: list[dict[int, str]]) -> list[int]:
    """The columns in which something stands, in the order of a table; without the version where it is everywhere the usual one."""
    version = columns.numbers.get("version", -1)
    usual = all(row.get(version, "") in ("", str(VERSION)) for row in rows)
    return [column for column in in_order(list(columns.numbers)) if column != version or not usual]


@dataclass
class Rows:
    """A table as it was read: where each row begins, and its cells as they stand there."""

    header: list[str]
    rows: list[tuple[int, list[str]]] = field(default_factory=list)
    damaged: list[str] = field(default_factory=list)


def read_table(text: str) -> Rows:
    """The rows of a table that commas, semicolons or tabs part [rows].

    text: of the file [CSV text].

    Raises QuantityError with a sentence where the first row does not name leaves.

    >>> read_table("id;name\\n7;Tide cup\\n").rows
    [(2, ['7', 'Tide cup'])]
    """
    text = text if "\n" in text else text.replace("\r", "\n")
    mark, header = _header(text)
    read = Rows(header)
    # Only line ends part lines: a text may hold other characters that Python takes for them.
    lines = [f"{line}\n" for line in text.split("\n")]
    at, beginnings = 0, 0
    while at < len(lines):
        stopped = _read_from(lines, at, mark, read)
        if stopped < 0:
            break
        beginnings += 1
        read.damaged.append(f"Line {stopped + 1} could not be read: a quotation mark is missing, or stands alone.")
        if beginnings == _MOST_BEGINNINGS:
            read.damaged.append(f"What comes after line {stopped + 1} was left out: too many rows of this table are damaged.")
            break
        at = stopped + 1
    read.rows = [(line, cells) for line, cells in read.rows if line > 1 and cells]
    return read


def _read_from(lines: list[str], at: int, mark: str, read: Rows) -> int:
    """Read rows from a line on; the line of a row that can't be read, or −1 at the end."""
    reader = csv.reader(iter(lines[at:] if at else lines), delimiter=mark, strict=True)
    begun = at
    try:
        for cells in reader:
            read.rows.append((begun + 1, cells))
            begun = at + reader.line_num
    except csv.Error:
        return begun
    return -1


def _header(text: str) -> tuple[str, list[str]]:
    """What parts the cells, and the names of the columns."""
    first = text.partition("\n")[0].rstrip("\r")
    best, found = "", []
    for mark in MARKS:
        try:
            names = [unguarded(name.strip()) for name in next(csv.reader([first], delimiter=mark), [])]
        except csv.Error:
            continue
        if _known(names) > _known(found):
            best, found = mark, names
    if not best:
        raise QuantityError("This is no table of vessels: its first row must name the columns, such as id, name, notes or casts.0.pieces. "
                            "Save the book for a spreadsheet to see what they are called.")
    return best, found


def _known(names: list[str]) -> int:
    return sum(leaf_at(name) is not None for name in names)
