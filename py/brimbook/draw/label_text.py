"""The letters of a label: how large they are set, how wide words are, and where a text breaks."""

import re
import unicodedata
from dataclasses import dataclass
from functools import lru_cache

from brimbook.draw.label import CAPITAL

# Capitals and small letters of the plain sans-serif fonts of common devices are at least so high, in sizes of the font:
# measured 0.688 and 0.528 (Liberation Sans), 0.729 and 0.547 (DejaVu Sans); read 0.711 (Roboto) and 0.728 (Inter) for capitals.
CAPITAL_SHARE, SMALL_SHARE = 0.68, 0.50
# What a line takes above and below its base line: plain letters, and those with accents or of other scripts.
PLAIN_REACH, TALL_REACH = (0.80, 0.25), (1.0, 0.35)
_THOUSANDTHS = 1000
# Widths of a common sans-serif, measured in Liberation Sans [thousandths of the size].
_REGULAR = {191: "'", 222: "ijl", 260: "|", 278: " !,./:;I[\\]ft", 333: "()-`r", 334: "{}", 355: '"', 389: "*", 469: "^",
            500: "Jcksvxyz", 556: "#$0123456789?L_abdeghnopqu", 584: "+<=>~", 611: "FTZ", 667: "&ABEKPSVXY", 722: "CDHNRUw",
            778: "GOQ", 833: "Mm", 889: "%", 944: "W", 1015: "@"}
_BOLD = {238: "'", 278: " ,./I\\ijl", 280: "|", 333: "!()-:;[]`ft", 389: "*r{}", 474: '"', 500: "z", 556: "#$0123456789J_aceksvxy",
         584: "+<=>^~", 611: "?FLTZbdghnopqu", 667: "EPSVXY", 722: "&ABCDHKNRU", 778: "GOQw", 833: "M", 889: "%m", 944: "W", 975: "@"}
_WIDTHS = {bold: {letter: width for width, letters in table.items() for letter in letters} for bold, table in ((False, _REGULAR), (True, _BOLD))}
_WIDE, _OTHER = 1000, 600
_JOINERS = frozenset("\u200c\u200d\u200e\u200f")
NO_BREAK = "\u00a0"
_UNIT = re.compile(r"(\d) (?=(?:g|kg|oz|lb|mg|mL|fl|mm|cm|in|h|hr|hours?|min|%|°[CF]?)\b)")


@dataclass(frozen=True)
class Word:
    """A part of a text that is not broken, and the width of it and of the space before it [sizes of the font]."""

    text: str
    width: float
    space: float


@dataclass(frozen=True)
class Line:
    """A line of a text and its width [sizes of the font]."""

    text: str
    width: float


def size_for(least: float, measured: str) -> float:
    """Size of a font whose letters are at least so high on any common device [mm].

    least: height of the letters [mm].
    measured: capital or small [text].

    >>> round(size_for(1.7, "capital"), 3), round(size_for(1.2, "small"), 3)
    (2.5, 2.4)
    """
    return least / (CAPITAL_SHARE if measured == CAPITAL else SMALL_SHARE)


def clean(text: str) -> str:
    """A text as it can be printed: nothing that can't be seen, one space between words [text].

    text: as typed [text].

    A number stays beside its unit.

    >>> clean(" Net  Wt 6.1 oz\\n(173 g)\\x00") == "Net Wt 6.1\\u00a0oz (173\\u00a0g)"
    True
    """
    seen = "".join(letter if letter.isprintable() or letter in _JOINERS or letter == NO_BREAK else " " for letter in text)
    return _UNIT.sub("\\1" + NO_BREAK, " ".join(part for part in seen.split(" ") if part))


def reach(text: str) -> tuple[float, float]:
    """How far a line reaches above and below its base line [sizes of the font].

    text: of the line [text].

    >>> reach("Net Wt"), reach("Ålesund")
    ((0.8, 0.25), (1.0, 0.35))
    """
    return PLAIN_REACH if all(letter < "\u00c0" or "\u2010" <= letter <= "\u2044" or letter in "×÷" for letter in text) else TALL_REACH


@lru_cache(maxsize=512)
def words_of(text: str, bold: bool) -> tuple[Word, ...]:
    """The words of a text, as they may go to lines [words].

    text: as it can be printed [text].
    bold: in bold letters [yes or no].

    Between signs that are as wide as they are high, such as Chinese ones, a line may break without a space.

    >>> [(word.text, round(word.width, 3)) for word in words_of("Net Wt", bold=False)]
    [('Net', 1.556), ('Wt', 1.222)]
    """
    found, space = [], _WIDTHS[bold][" "] / _THOUSANDTHS
    for part in text.split(" "):
        pieces = _pieces(part)
        found += [Word(piece, width_of(piece, bold), 0.0 if number else space) for number, piece in enumerate(pieces)]
    return tuple(found)


def width_of(text: str, bold: bool) -> float:
    """About how wide a text is [sizes of the font].

    text: in one line [text].
    bold: in bold letters [yes or no].

    >>> width_of("oz", bold=False), width_of("龙", bold=True)
    (1.056, 1.0)
    """
    table = _WIDTHS[bold]
    return sum(table[letter] if letter in table else _unlisted(letter) for letter in text) / _THOUSANDTHS


def first_line(words: tuple[Word, ...], room: float) -> tuple[Line, tuple[Word, ...]] | None:
    """The line that a text begins with, and what is left of it; none where not even a word has room [line and words].

    words: of the text [words].
    room: for the line [sizes of the font].

    >>> line, rest = first_line(words_of("Scented candle", False), 4.0)
    >>> line.text, len(rest), first_line(rest, 2.0)
    ('Scented', 1, None)
    """
    count, width = 0, 0.0
    for word in words:
        wider = width + word.width + (word.space if count else 0.0)
        if wider > room + 1e-9:
            break
        count, width = count + 1, wider
    return (Line(_joined(words[:count]), width), words[count:]) if count else None


def cut_to(words: tuple[Word, ...], room: float, bold: bool) -> tuple[Word, ...]:
    """The words of a text, those that are too long cut in as many parts as it takes [words].

    words: of the text [words].
    room: for a line [sizes of the font].
    bold: in bold letters [yes or no].

    >>> [word.text for word in cut_to(words_of("a candlestick", False), 3.0, False)]
    ['a', 'candle', 'stick']
    """
    found = []
    for word in words:
        space = word.space
        while word.width > room and (part := _part(word.text, room, bold)):
            found.append(Word(part, width_of(part, bold), space))
            word, space = Word(word.text[len(part):], width_of(word.text[len(part):], bold), 0.0), 0.0
        found.append(Word(word.text, word.width, space))
    return tuple(found)


def _joined(words: tuple[Word, ...]) -> str:
    return "".join(f"{' ' if number and word.space else ''}{word.text}" for number, word in enumerate(words))


def _part(text: str, room: float, bold: bool) -> str:
    """As much of the beginning of a word as has room, but not all of it."""
    ends = [end for end in range(1, len(text)) if not _clings(text, end) and width_of(text[:end], bold) <= room]
    return text[:ends[-1]] if ends else ""


def _pieces(word: str) -> list[str]:
    """A word cut where a line may break within it."""
    cuts = [0, *(at for at in range(1, len(word)) if (_is_wide(word[at]) or _is_wide(word[at - 1])) and not _clings(word, at)
                 and unicodedata.category(word[at])[0] == "L"), len(word)]
    return [word[start:end] for start, end in zip(cuts, cuts[1:])]


def _clings(text: str, at: int) -> bool:
    """Does a letter belong to the one before it?"""
    return _unlisted(text[at]) == 0 or text[at - 1] in _JOINERS or "\U0001f3fb" <= text[at] <= "\U0001f3ff"


def _unlisted(letter: str) -> int:
    """Width of a letter that is in no table [thousandths of the size]."""
    if letter in _JOINERS or unicodedata.category(letter) in ("Mn", "Me"):
        return 0
    if letter == NO_BREAK:
        return _REGULAR_SPACE
    return _WIDE if _is_wide(letter) else _OTHER


def _is_wide(letter: str) -> bool:
    return unicodedata.east_asian_width(letter) in ("W", "F")


_REGULAR_SPACE = _WIDTHS[False][" "]
