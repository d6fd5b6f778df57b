"""From the characters a person types to numerals and unit words; no meaning yet."""

import re
import unicodedata
from functools import lru_cache

from brimbook.quantity.error import QuantityError

LONGEST = 60

_STRAIGHT = str.maketrans({"−": "-", "–": "-", "‐": "-", "‑": "-", "’": "'", "‘": "'", "′": "'", "″": '"', "”": '"',
                           "“": '"', "º": "°", "˚": "°", "⁄": "/", "÷": "/", "٫": ".", "٬": "'"})
# What may stand between the pounds and the ounces.
_BETWEEN = re.compile(r"(?<=[a-z])\s*(?:,|&|\+|\band\b)\s*(?=\d)")
_NUMERAL = r"\d{1,3}(?:[ ]\d{3})+(?:[.,]\d+)?(?!\d)|\d+(?:[.,']\d+)*[.,]?|[.,]\d+"
_PART = re.compile(
    rf"""\s*(?P<sign>[-+])?\s*
    (?: (?P<whole>\d+)(?:\s+|\s*-\s*)(?P<top>\d+)\s*/\s*(?P<bottom>\d+)
      | (?P<top_only>\d+)\s*/\s*(?P<bottom_only>\d+)
      | (?P<numeral>{_NUMERAL}) )
    \s*(?P<unit>(?:m|ft)\^?2\s?/\s?[a-z]+|n\s?/\s?mm\^?2
      |[^\d\s.,+:^-](?:[^\d:+^-]*[^\d\s.,:+^-])?(?:(?<=[mtn])\^?3(?!\s*[a-z"']))?)?\.?""",
    re.VERBOSE,
)


@lru_cache(maxsize=1024)
def tidy(text: str) -> str:
    """The same text in plain characters: digits 0 to 9, ASCII signs, single spaces [text].

    text: as typed, in any script's digits and any width [text].

    >>> tidy("  ６４０ ｇ ")
    '640 g'
    >>> tidy("27½ oz")
    '27 1/2 oz'
    """
    plain = "".join(_plain(character) for character in text.translate(_STRAIGHT))
    return _BETWEEN.sub(" ", " ".join(plain.translate(_STRAIGHT).lower().split()))


def _plain(character: str) -> str:
    """One character in plain ones; what can't be seen, as in pasted text, is left out."""
    digit = unicodedata.decimal(character, None)
    if digit is not None:
        return str(digit)
    if unicodedata.category(character) == "Cf":
        return ""
    plain = unicodedata.normalize("NFKC", character)
    if unicodedata.decomposition(character).startswith("<super>") and plain.isdigit():
        return f"^{plain}"
    # A ready-made fraction is set apart, so that 27½ does not become 271/2.
    return f" {plain} " if unicodedata.decomposition(character).startswith("<fraction>") else plain


def parts(text: str) -> list[dict[str, str | None]]:
    """The numbers in a tidy text, each with its sign and unit word [text].

    text: tidied [text].

    Raises QuantityError when something is left over that is neither.

    >>> [(part["numeral"], part["unit"]) for part in parts("1lb4oz")]
    [('1', 'lb'), ('4', 'oz')]
    """
    found, place = [], 0
    while place < len(text):
        match = _PART.match(text, place)
        if match is None:
            raise QuantityError("not a number")
        found.append(match.groupdict())
        place = match.end()
    return found


def readings(numeral: str, mark: str) -> list[str]:
    """Every plain decimal that a numeral could mean, likeliest first [text].

    numeral: digits with points, commas, apostrophes or spaces between [text].
    mark: the decimal mark in the maker's settings: point, comma or either [text].

    >>> readings("12,5", "either"), readings("1,250", "either"), readings("1,250", "point")
    (['12.5'], ['1250', '1.250'], ['1250'])
    """
    numeral = numeral.replace(" ", "'")
    marks = re.sub(r"[\d]", "", numeral)
    if not marks:
        return [numeral]
    last = marks[-1]
    if last == "'" or marks.count(last) > 1:
        return _grouped(numeral)
    if len(marks) > 1:
        head, tail = numeral.rsplit(last, 1)
        return [f"{whole}.{tail or '0'}" for whole in _grouped(head)]
    return _single_mark(numeral, last, mark)


def _grouped(numeral: str) -> list[str]:
    """Thousands in threes with one kind of mark between, or nothing."""
    if re.fullmatch(r"[1-9]\d{0,2}(?:([.,'])\d{3})(?:\1\d{3})*", numeral):
        return [re.sub(r"\D", "", numeral)]
    return []


def _single_mark(numeral: str, sign: str, mark: str) -> list[str]:
    head, tail = numeral.split(sign)
    decimal = [f"{head or '0'}.{tail or '0'}"]
    thousands = _grouped(numeral)
    if not thousands:
        return decimal
    if sign == ",":
        return {"comma": decimal, "point": thousands}.get(mark, thousands + decimal)
    return thousands + decimal if mark == "comma" else decimal
