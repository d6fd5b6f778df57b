"""Lots: what a batch is called where nobody typed it, and when two spellings are the same lot."""

import datetime
import unicodedata
from collections.abc import Sequence

_LETTERS = 3
_NAMELESS = "LOT"
# What a lot may be spelled with or without.
_BETWEEN = " \t\n\r-_./"
_ASCII = {ord(sign): None for sign in _BETWEEN} | {ord("A") + place: ord("a") + place for place in range(26)}


def letters(name: str) -> str:
    """The letters that the lots of a vessel begin with: its first three, accents left off [text].

    name: of the vessel [text].

    >>> letters("Keel bowl"), letters("Été 2"), letters("Ox"), letters("7"), letters("")
    ('KEE', 'ETE', 'OX', 'LOT', 'LOT')
    """
    plain = unicodedata.normalize("NFKD", name).upper()
    return "".join(letter for letter in plain if "A" <= letter <= "Z")[:_LETTERS] or _NAMELESS


def day_of(text: str) -> datetime.date | None:
    """The day that a date means, or nothing [day].

    text: year, month, day [text].

    >>> day_of("2026-09-26"), day_of("soon")
    (datetime.date(2026, 9, 26), None)
    """
    try:
        return datetime.date.fromisoformat(text.strip())
    except ValueError:
        return None


def lots_of(name: str, batches: Sequence[tuple[str, str]]) -> list[str]:
    """The lot of each batch: as typed, else made of the vessel's name and the day; none without a day [texts].

    name: of the vessel [text].
    batches: of each its lot and the day it was made on, both as typed [texts].

    The second batch of a day has a 2 behind it. No lot that is made is one that was typed.

    >>> lots_of("Keel bowl", [("", "2026-09-26"), ("A 7", "2026-09-26"), ("", "2026-09-26"), ("", "")])
    ['KEE-260926', 'A 7', 'KEE-260926-3', '']
    """
    taken = {plain_lot(lot) for lot, _ in batches if lot.strip()}
    begins, on_day, found = letters(name), {}, []
    for lot, made_on in batches:
        day = day_of(made_on)
        if day is not None:
            on_day[day] = on_day.get(day, 0) + 1
        if day is not None and not lot.strip():
            lot = _made(begins, day, on_day[day], taken)
            taken.add(plain_lot(lot))
        found.append(lot.strip())
    return found


def _made(begins: str, day: datetime.date, number: int, taken: set[str]) -> str:
    """The first lot of this day, from a number on, that no other batch has."""
    stamp = f"{begins}-{day.year % 100:02d}{day.month:02d}{day.day:02d}"
    while True:
        lot = stamp if number == 1 else f"{stamp}-{number}"
        if plain_lot(lot) not in taken:
            return lot
        number += 1


def plain_lot(lot: str) -> str:
    """A lot without what may be spelled either way: capitals, spaces, dashes and dots [text].

    lot: as typed [text].

    >>> plain_lot("KEE-260926") == plain_lot("kee 260926") == plain_lot("Kee\\u2013260926")
    True
    """
    if lot.isascii():
        return lot.translate(_ASCII)
    plain = unicodedata.normalize("NFKC", lot).casefold()
    # Dashes of all lengths, the minus, spaces, and what can't be seen.
    return "".join(sign for sign in plain if sign not in _BETWEEN and sign != "\u2212"
                   and unicodedata.category(sign) not in ("Pd", "Zs", "Cf", "Cc"))
