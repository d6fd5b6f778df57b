"""Read a quantity as a person types it, or say in one sentence what would be right."""

import math
import re
from dataclasses import dataclass
from itertools import product
from typing import Any

from brimbook.quantity import text as words
from brimbook.quantity.error import QuantityError
from brimbook.quantity.units import KINDS, UNITS, Kind, Unit, symbols, to_base


@dataclass(frozen=True)
class Quantity:
    """What was understood: the value in base units (of parts, each of them), and the text that always means it."""

    value: Any
    canonical: str


@dataclass(frozen=True)
class Bounds:
    """The least and the most that makes sense, in base units, and how to say so."""

    least: float
    most: float
    says: str = ""


@dataclass(frozen=True)
class _Part:
    """One number of a text with its unit; value is in that unit, decimals counts the digits after the mark."""

    value: float
    written: str
    decimals: int
    unit: Unit


def read(text: str, kind: str, bounds: Bounds, unit: str = "", mark: str = "either") -> Quantity:
    """The quantity that a text means [base unit of the kind].

    text: as typed, for example "1 lb 4 oz" [text].
    kind: a key of KINDS [text].
    bounds: what makes sense in this place [base unit of the kind].
    unit: the word of the unit that a bare number takes, or the sign of the currency of a price [text].
    mark: the decimal mark in the maker's settings: point, comma or either [text].

    Raises QuantityError with a sentence that says what would be right.

    >>> read("1 lb 4 oz", "mass", Bounds(0, 1e5)).value
    566.99046...
    >>> read("0,640 kg", "mass", Bounds(0, 1e5)).canonical
    '0.640 kg'
    """
    if len(text) > words.LONGEST:
        raise QuantityError(f"That is too long for {KINDS[kind].noun}. Type the number and its unit, such as {KINDS[kind].examples}.")
    tidy = words.tidy(text)
    if kind == "ratio":
        return _mix_ratio(tidy, bounds, mark)
    if kind == "parts":
        return _mix_parts(tidy, bounds, mark)
    if kind == "money":
        tidy, unit = _without_currency(tidy, unit), ""
    found = _parts(tidy, KINDS[kind])
    units = _units(found, KINDS[kind], unit)
    meanings = [_parts_as(choice, units) for choice in product(*(_numbers(part, mark) for part in found))]
    if not meanings:
        raise QuantityError(_not_a_number(tidy, KINDS[kind]))
    return _the_one_that_fits(tidy, meanings, KINDS[kind], bounds)


def _not_a_number(tidy: str, kind: Kind) -> str:
    return f"“{tidy}” can't be read as {kind.noun}. Type a number, such as {kind.examples}."


def _parts(tidy: str, kind: Kind) -> list[dict]:
    if re.search(r"\d\s*e\s*[-+]?\s*\d", tidy):
        raise QuantityError(f"Type the number in full, without an “e”: for example {kind.examples}.")
    if re.search(r"\d\s*-\s*\d", tidy) and not re.search(r"\d-\d+\s*/", tidy):
        raise QuantityError(f"Type one number, not a range: for example {kind.examples}.")
    try:
        found = words.parts(tidy)
    except QuantityError:
        raise QuantityError(_not_a_number(tidy, kind)) from None
    if not found:
        raise QuantityError(f"Nothing is typed here yet. Type {kind.noun}, such as {kind.examples}.")
    if any(part["sign"] == "-" for part in found) and (kind.name != "temperature" or len(found) > 1):
        raise QuantityError(f"This can't be below zero. Type {kind.noun} such as {kind.examples}.")
    return found


def _units(found: list[dict], kind: Kind, default: str) -> list[Unit]:
    units = [_unit(part["unit"], kind, default, alone=len(found) == 1) for part in found]
    if len(found) == 1:
        return units
    steps = [to_base(1.0, unit) for unit in units]
    sorts = kind.name in ("mass", "volume", "length", "duration") and all(big > small for big, small in zip(steps, steps[1:]))
    if not sorts or any(part["numeral"] is None or not part["numeral"].isdigit() for part in found[:-1]):
        raise QuantityError(f"Two numbers can't be read as {kind.noun} here. Type {kind.examples}.")
    return units


# A degree with no letter is in the maker's own unit.
_BARE_DEGREES = {"°", "deg", "degs", "degree", "degrees"}


def _unit(written: str | None, kind: Kind, default: str, alone: bool) -> Unit:
    if written is None or (kind.name == "temperature" and written.strip(". ") in _BARE_DEGREES):
        if not alone:
            raise QuantityError(f"Type a unit with each number, as in {kind.examples}.")
        return UNITS[default] if default else Unit(kind.name, "", "dimensionless")
    word = re.sub(r"[\s.^]", "", re.sub(r"\s*\bper\b\s*", "/", written))
    unit = UNITS.get(word)
    if unit is None:
        raise QuantityError(f"“{written}” isn't a unit known here. {_offer(kind)}")
    if unit.kind != kind.name:
        raise QuantityError(_wrong_kind(unit, kind))
    return unit


def _offer(kind: Kind) -> str:
    known = [symbol for symbol in symbols(kind.name) if symbol != "mg"]
    if len(known) < 2:
        return f"Type {kind.noun}, such as {kind.examples}."
    return f"Type {', '.join(known[:-1])} or {known[-1]}."


def _wrong_kind(unit: Unit, kind: Kind) -> str:
    if (unit.symbol, kind.name) == ("oz", "volume"):
        return "Ounces (oz) are weight, and this asks for a volume. For fluid ounces type fl oz."
    if (unit.symbol, kind.name) == ("fl oz", "mass"):
        return "Fluid ounces (fl oz) are volume, and this asks for a weight. Type g, kg, lb or oz."
    return f"{unit.symbol} is {KINDS[unit.kind].noun}, and this asks for {kind.noun}. {_offer(kind)}"


def _numbers(part: dict, mark: str) -> list[tuple[float, str, int]]:
    """Each value that one number could have, with the text that means it alone and its decimals."""
    sign = "-" if part["sign"] == "-" else ""
    whole, top, bottom = part["whole"], part["top"] or part["top_only"], part["bottom"] or part["bottom_only"]
    if top is None:
        return [(float(sign + plain), sign + _unmistakable(plain), len(plain.partition(".")[2]))
                for plain in words.readings(part["numeral"], mark)]
    if int(bottom) == 0:
        raise QuantityError("A fraction can't have 0 below the line. Type it as 1/2 or 0.5.")
    value = int(whole or 0) + int(top) / int(bottom)
    return [(-value if sign else value, sign + (f"{whole} " if whole else "") + f"{top}/{bottom}", 0)]


def _unmistakable(plain: str) -> str:
    """1.234 could be read as thousands elsewhere; 1.2340 is the same number everywhere."""
    whole, _, tail = plain.partition(".")
    whole = whole.lstrip("0") or "0"
    if len(tail) == 3 and whole != "0" and len(whole) <= 3:
        tail = tail.rstrip("0")
        tail += "0" if len(tail) == 3 else ""
    return f"{whole}.{tail}" if tail.strip("0") else whole


def _parts_as(numbers: tuple, units: list[Unit]) -> list[_Part]:
    return [_Part(*number, unit) for number, unit in zip(numbers, units)]


def _total(parts: list[_Part]) -> float:
    return math.fsum(to_base(part.value, part.unit) for part in parts)


def _canonical(parts: list[_Part]) -> str:
    return " ".join(f"{part.written} {part.unit.symbol}".strip() for part in parts)


def _too_fine(parts: list[_Part], kind: Kind) -> bool:
    """Is the last digit typed finer than any bench tool shows?"""
    slope = to_base(1.0, parts[-1].unit) - to_base(0.0, parts[-1].unit)
    return parts[-1].decimals > 0 and slope / 1000 < kind.finest


def _within(value: float, bounds: Bounds) -> bool:
    """A bound that is told in another unit must hold there too, so a hair over it passes."""
    hair = 1e-9 * max(abs(bounds.least), abs(bounds.most))
    return bounds.least - hair <= value <= bounds.most + hair


def _the_one_that_fits(tidy: str, meanings: list[list[_Part]], kind: Kind, bounds: Bounds) -> Quantity:
    sensible = [parts for parts in meanings if _within(_total(parts), bounds)]
    if not sensible:
        raise QuantityError(_out_of_bounds(_total(meanings[0]), kind, bounds))
    if len(sensible) > 1:
        sensible = [parts for parts in sensible if not _too_fine(parts, kind)] or sensible
    if len(sensible) > 1:
        one, other = (_canonical([*parts]) for parts in sensible)
        raise QuantityError(f"“{tidy}” could be {one} or {_plain_decimal(other)}. Type it the one way or the other.")
    value = _total(sensible[0])
    if kind.name == "count" and value != int(value):
        raise QuantityError("Only whole pieces can be cast. Type a whole number, such as 3.")
    return Quantity(value, _canonical(sensible[0]))


def _plain_decimal(canonical: str) -> str:
    number, _, unit = canonical.partition(" ")
    return f"{number.rstrip('0').rstrip('.')} {unit}".strip() if "." in number else canonical


def _out_of_bounds(value: float, kind: Kind, bounds: Bounds) -> str:
    if bounds.says:
        return bounds.says
    size = "too small" if value < bounds.least else "too large"
    return f"That is {size} to be right here. Check the digits and the unit: {kind.examples}."


def _mix_ratio(tidy: str, bounds: Bounds, mark: str) -> Quantity:
    """Water to powder from either side: 4:1, 4 to 1, 1:4, 0.25 and 25 % are the same mix.

    A castable always has more powder than water, so the larger side is the powder.
    """
    sides = [side.strip() for side in re.split(r":|(?<![a-z])to(?![a-z])", tidy)]
    if len(sides) > 2:
        raise QuantityError("A mix has two sides here. Type powder to water, such as 4:1, or the water alone: 0.25.")
    percent = len(sides) == 1 and sides[0].endswith("%")
    for numbers in product(*(_side(side.removesuffix("%") if percent else side, tidy, mark) for side in sides)):
        ratio = numbers[0][0] / (numbers[1][0] if len(numbers) == 2 else 100 if percent else 1)
        water_to_powder = 1 / ratio if ratio > 1 else ratio
        if _within(water_to_powder, bounds):
            return Quantity(water_to_powder, ":".join(number[1] for number in numbers) + (" %" if percent else ""))
    raise QuantityError(bounds.says)


def _mix_parts(tidy: str, bounds: Bounds, mark: str) -> Quantity:
    """Parts by weight in the order of the ingredients, the water last: 1:2:0.4."""
    sides = [side.strip() for side in re.split(r":|(?<![a-z])to(?![a-z])", tidy)]
    numbers = [_side(side, tidy, mark)[0] for side in sides]
    if len(numbers) < 2 or not all(_within(number[0], bounds) for number in numbers):
        raise QuantityError(bounds.says)
    return Quantity(tuple(number[0] for number in numbers), ":".join(number[1] for number in numbers))


def _without_currency(tidy: str, currency: str) -> str:
    """A price without its sign; another currency than the maker's own can't be taken for it."""
    number = re.search(r"[-+\d.,](?:.*[\d.,])?", tidy)
    signs = [] if number is None else [tidy[:number.start()].strip(), tidy[number.end():].strip()]
    if any(sign and sign != currency.lower() for sign in signs):
        raise QuantityError(f"Prices here are in {currency}. Type the number alone, or change the currency in the settings.")
    return number.group() if number else tidy


def _side(side: str, tidy: str, mark: str) -> list[tuple[float, str, int]]:
    """What one side of a ratio could mean, each with the text that means it alone."""
    found = _parts(side, KINDS["ratio"])
    values = _numbers(found[0], mark)
    if len(found) != 1 or found[0]["unit"] or not values or values[0][0] <= 0:
        raise QuantityError(_not_a_number(tidy, KINDS["ratio"]))
    return values
