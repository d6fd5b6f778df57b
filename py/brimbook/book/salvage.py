"""A book's file read back, and whatever can be saved of a damaged one."""

import re
from dataclasses import dataclass, field
from typing import Any

from brimbook.book.kept import Kept, NotAnEntry, checked
from brimbook.record.strict import DECODER

OWN = ("materials", "wicks", "plan", "settings")
MOST_VESSELS = 20_000
_MOST_TOLD = 50
_MOST_BAD = 10_000
_VESSELS = '\n"vessels":[\n'
_LIST_BEGINS = re.compile(r'"vessels"\s*:\s*\[')
# Inside a text of a record each quotation mark has a backslash before it, so this never begins in one.
_ENTRY_BEGINS = re.compile(r'\{\s*"(?:record|line|saved|stamps)"\s*:')
_NOTHING_OF_A_VESSEL = " \t\r\n,"
_CLOSING = _NOTHING_OF_A_VESSEL + "]}"
_TOO_MANY = f"This file holds more than {MOST_VESSELS} vessels: those after them were left out."
_CUT = "The file ends too early: it was cut off. What came after is not in it."
# How often a damaged file is gone over, at most, and what an entry nested too deep counts for.
_PATIENCE = 4
_TOO_DEEP = 50_000
_TRY = 100
# Nearly every entry is found in a short piece; a place where none is costs no more than that. A word may be cut at its end.
_LENGTHS = (20_000, 2_000_000)
_LONGEST_WORD = 400


@dataclass
class Found:
    """What a file holds. An entry that is the book's own to the letter is not read: nothing stands for it."""

    entries: list[tuple[int, str, dict[str, Any] | None]] = field(default_factory=list)
    own: dict[str, Any] = field(default_factory=dict)
    head: dict[str, Any] = field(default_factory=dict)
    damaged: list[str] = field(default_factory=list)
    _places: int = 0

    def tell(self, sentence: str) -> None:
        """Note what was wrong with the file as a whole [nothing].

        sentence: for the maker [text].
        """
        self.damaged.append(sentence)

    def tell_place(self, sentence: str) -> None:
        """Note a place that could not be read; of very many only the first are told [nothing].

        sentence: for the maker [text].
        """
        self._places += 1
        if self._places <= _MOST_TOLD:
            self.damaged.append(sentence)
        elif self._places == _MOST_TOLD + 1:
            self.damaged.append("More of the file could not be read; only the first places are told here.")

    def is_told_enough(self) -> bool:
        """Would another place that could not be read no longer be told [yes or no]?"""
        return self._places > _MOST_TOLD

    def take(self, line: int, entry: Any) -> bool:
        """Take an entry if the book could keep it; else say why not [yes or no].

        line: where it begins in the file [number].
        entry: as it was read [entry].
        """
        try:
            good = checked(entry)
        except NotAnEntry as error:
            self.tell_place(f"Line {line} {error}: it was left out.")
            return False
        self.entries.append((line, good["record"]["id"], good))
        return True


def read_book(text: str, kept: Kept) -> Found:
    """The vessels of a file and what else it holds, however it was cut, wrapped or damaged [found].

    text: of the file, JSON or what is left of it [text].
    kept: the book's own entries [entries].

    >>> found = read_book('{"brimbook":1, "vessels": [{"record": {"id": "7"}}, {"rec', Kept([]))
    >>> [mark for _, mark, _ in found.entries], found.damaged[0]
    (['7'], 'Line 1 could not be read.')
    """
    found = Found()
    begin = text.find(_VESSELS)
    whole = None if begin >= 0 else _whole(text)
    if begin >= 0:
        _read_own(text[:begin], found)
        _read_lines(text, begin + len(_VESSELS), kept, found)
    elif whole is not None:
        _take_whole(whole, found)
    else:
        first = _LIST_BEGINS.search(text)
        _read_own(text[:first.start()] if first else text, found)
        _Scan(text, found).run(first.end() if first else 0, 1)
        _tell_cut(text, found)
    count = found.head.get("count")
    if isinstance(count, int) and len(found.entries) < count and not found.damaged:
        found.tell(f"This file was made with {count} vessels, and {len(found.entries)} are left in it.")
    return found


def _tell_cut(text: str, found: Found) -> None:
    if not re.search(r"\]\s*\}\s*$", text[-200:]):
        found.tell(_CUT)


def _whole(text: str) -> Any:
    try:
        return DECODER.decode(text.strip())
    except (ValueError, RecursionError):
        return None


def _take_whole(whole: Any, found: Found) -> None:
    """A file that is sound, but was written anew by another program."""
    told = whole if isinstance(whole, dict) else {"vessels": whole}
    _take_head(told, found)
    vessels = told.get("vessels")
    listed = vessels if isinstance(vessels, list) else []
    if len(listed) > MOST_VESSELS:
        found.tell(_TOO_MANY)
    for number, entry in enumerate(listed[:MOST_VESSELS], 1):
        try:
            good = checked(entry)
            found.entries.append((number, good["record"]["id"], good))
        except NotAnEntry as error:
            found.tell_place(f"Vessel {number} of the file {error}: it was left out.")


def _take_head(told: dict[str, Any], found: Found) -> None:
    found.head, found.own = told, {name: told[name] for name in OWN if name in told}
    if told.get("brimbook", 1) != 1:
        found.tell("This file was made by another version of this page. What is known here was read.")


def _read_own(head: str, found: Found) -> None:
    """What stands before the vessels: all of it, or of a damaged beginning what can be read."""
    told = _whole(head.rstrip().rstrip(",") + "}")
    if isinstance(told, dict):
        _take_head(told, found)
        return
    _read_parts(head, found)
    if head.strip(_CLOSING + "{["):
        found.tell("The beginning of the file is damaged: of materials, wicks, plan and settings some may be missing.")


def _read_parts(text: str, found: Found) -> int:
    """Materials, wicks, plan and settings, each as far as it is sound; where the first of them begins."""
    begins = {name: re.search(rf'"{name}"\s*:\s*', text) for name in OWN}
    for name, place in begins.items():
        if place:
            _read_part(text, name, place.end(), found)
    return min([place.start() for place in begins.values() if place], default=len(text))


def _read_part(head: str, name: str, at: int, found: Found) -> None:
    try:
        found.own[name] = DECODER.raw_decode(head, at)[0]
        return
    except (ValueError, RecursionError):
        items, place = [], at + 1
    while head[at:at + 1] == "[":
        while head[place:place + 1] and head[place] in _NOTHING_OF_A_VESSEL:
            place += 1
        try:
            item, place = DECODER.raw_decode(head, place)
        except (ValueError, RecursionError):
            break
        items.append(item)
    if items:
        found.own[name] = items


def _read_lines(text: str, begin: int, kept: Kept, found: Found) -> None:
    """A vessel a line, as Brimbook writes it. A line that is the book's own to the letter need not be read."""
    first = text.count("\n", 0, begin) + 1
    body, ended = text[begin:].rstrip(), False
    if body.endswith("]}"):
        body, ended = body[:-2].rstrip("\n"), True
    scan, bad = _Scan(text, found), 0
    for line, written in enumerate(body.split("\n") if body.strip() else [], first):
        if len(found.entries) >= MOST_VESSELS or bad > _MOST_BAD:
            found.tell(_TOO_MANY if bad <= _MOST_BAD else f"From line {line} on this file was left out: too much of it is damaged.")
            break
        bad += not _read_line(written.rstrip(_NOTHING_OF_A_VESSEL), line, kept, found, scan)
    if not ended:
        found.tell(_CUT)


def _read_line(written: str, line: int, kept: Kept, found: Found, scan: "_Scan") -> bool:
    """Take the entry of a line, or all that are in it if it is damaged; is it sound?"""
    mark = kept.mark_of(written)
    if mark:
        found.entries.append((line, mark, None))
        return True
    try:
        entry = DECODER.decode(written)
    except (ValueError, RecursionError):
        scan.over(written, line)
        return False
    return found.take(line, entry)


class _Scan:
    """Goes over damaged text for whole entries, and tells what stood between them."""

    def __init__(self, text: str, found: Found):
        self._text, self._found, self._left = text, found, _PATIENCE * len(text) + _TOO_DEEP

    def over(self, piece: str, line: int) -> None:
        """All entries in a piece of the file [nothing].

        piece: of the text [text].
        line: of the file in which it begins [number].
        """
        whole, self._text = self._text, piece
        self.run(0, line)
        self._text = whole

    def run(self, at: int, line: int) -> None:
        """All entries from a place on. Each piece between them is told by its lines [nothing].

        at: where to begin [letters].
        line: of the file in which the text begins [number].
        """
        text, good, counted, here = self._text, at, 0, line
        for begin in self._begins(at):
            if begin < good:
                continue
            entry, end = self._entry(begin)
            if end < 0:
                continue
            self._tell_gap(good, begin, line)
            here += text.count("\n", counted, begin)
            counted, good = begin, end
            self._found.take(here, entry)
        # Another program may have put the rest behind the vessels.
        rest = _read_parts(text[good:], self._found) if good > at else len(text)
        self._tell_gap(good, min(good + rest, len(text)), line)

    def _begins(self, at: int) -> Any:
        for match in _ENTRY_BEGINS.finditer(self._text, at):
            if self._left <= 0 or len(self._found.entries) >= MOST_VESSELS:
                return
            yield match.start()

    def _entry(self, begin: int) -> tuple[Any, int]:
        """The entry that begins here and where it ends; −1 where none does."""
        for length in _LENGTHS:
            piece = self._text[begin:begin + length]
            try:
                entry, end = DECODER.raw_decode(piece)
            except RecursionError:
                self._left -= _TOO_DEEP
                break
            except ValueError as error:
                # Of a text that does not end only its beginning is told.
                gone_over = len(piece) if str(error).startswith("Unterminated") else getattr(error, "pos", len(piece))
                self._left -= gone_over + _TRY
                if gone_over < len(piece) - _LONGEST_WORD:
                    break
            else:
                return entry, begin + end if isinstance(entry, dict) and "record" in entry else -1
        return None, -1

    def _tell_gap(self, begin: int, end: int, line: int) -> None:
        between = self._text[begin:end]
        gap = between.rstrip(_NOTHING_OF_A_VESSEL if _ENTRY_BEGINS.match(self._text, end) else _CLOSING)
        since = begin + len(gap) - len(gap.lstrip(_CLOSING))
        if since == begin + len(gap) or self._found.is_told_enough():
            return
        first = line + self._text.count("\n", 0, since)
        last = first + gap.count("\n", since - begin)
        self._found.tell_place(f"Line {first} could not be read." if first == last else f"Lines {first} to {last} could not be read.")
