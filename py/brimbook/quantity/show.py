"""Quantities shown back to the maker: in their units, to what their scale can show."""

import math
from collections.abc import Callable
from dataclasses import dataclass

from brimbook.quantity.units import UNITS, from_base, to_base

_OUNCES_IN_POUND = 16


@dataclass(frozen=True)
class Display:
    """How this maker reads figures: units, decimal mark, and what their scale can show."""

    mass: str = "g"
    length: str = "mm"
    temperature: str = "C"
    decimal: str = "either"
    readability: float = 1.0
    currency: str = "$"

    @property
    def mass_word(self) -> str:
        """The unit word that a bare weight takes [text]."""
        return "g" if self.mass == "g" else "oz"

    @property
    def length_word(self) -> str:
        """The unit word that a bare length takes [text]."""
        return "in" if self.length == "in" else "mm"


def number(value: float, decimals: int, display: Display) -> str:
    """A number with so many decimals, in the maker's decimal mark [text].

    value: any finite number [–].
    decimals: digits after the mark [count].
    display: how this maker reads figures [display].

    No mark stands between thousands: a kitchen scale shows none, and a comma
    could be taken for a decimal.

    >>> number(1234.56, 1, Display()), number(0.25, 2, Display(decimal="comma"))
    ('1234.6', '0,25')
    """
    shown = f"{value:.{max(decimals, 0)}f}"
    if float(shown) == 0:
        shown = shown.lstrip("-")
    shown = shown.replace("-", "−")
    return shown.replace(".", ",") if display.decimal == "comma" else shown


def significant(value: float, digits: int, display: Display) -> str:
    """A number to so many significant digits, without trailing zeros after the mark [text].

    value: any finite number [–].
    digits: significant digits [count].
    display: how this maker reads figures [display].

    >>> significant(0.99820671, 5, Display()), significant(1203.4, 3, Display()), significant(2.50, 4, Display())
    ('0.99821', '1203', '2.5')
    """
    if value == 0:
        return "0"
    return trimmed(value, max(digits - 1 - math.floor(math.log10(abs(value))), 0), display)


def trimmed(value: float, decimals: int, display: Display) -> str:
    """A number with at most so many decimals, without zeros at the end [text].

    value: any finite number [–].
    decimals: most digits after the mark [count].
    display: how this maker reads figures [display].

    >>> trimmed(22.50, 3, Display()), trimmed(20.0, 1, Display())
    ('22.5', '20')
    """
    shown = number(value, decimals, display)
    mark = "," if display.decimal == "comma" else "."
    return shown.rstrip("0").rstrip(mark) if mark in shown else shown


def _step(finest: float) -> float:
    """The smallest of 1, 2, 5, 10 … that is not finer than the scale."""
    power = 10.0 ** math.floor(math.log10(finest))
    return next(power * digit for digit in (1, 2, 5, 10) if power * digit >= finest * 0.99)


def _decimals(step: float) -> int:
    return max(0, -math.floor(math.log10(step) + 1e-9))


def _on_scale(grams: float, display: Display, nearest: Callable[[float], int] = round) -> tuple[float, float]:
    """A weight in the unit of the maker's scale, rounded, and the step it was rounded to."""
    value = from_base(grams, display.mass_word)
    step = _step(from_base(display.readability, display.mass_word))
    if 0 < abs(value) < 5 * step:
        step = 10.0 ** (math.floor(math.log10(abs(value))) - 1)
    return round(nearest(round(value / step, 9)) * step, 9), step


def round_to_scale(grams: float, display: Display) -> float:
    """The weight as the maker's scale can show it [g].

    grams: weight [g].
    display: how this maker reads figures [display].

    A weight under five steps of the scale is kept to two digits, for a finer scale.

    >>> round_to_scale(1203.4, Display()), round_to_scale(0.4321, Display())
    (1203.0, 0.43)
    """
    return to_base(_on_scale(grams, display)[0], UNITS[display.mass_word])


def too_fine(grams: float, display: Display) -> bool:
    """Is this weight so small that the maker's scale can't weigh it out [yes or no]?

    grams: weight [g].
    display: how this maker reads figures [display].

    >>> too_fine(0.4, Display()), too_fine(40, Display()), too_fine(0, Display())
    (True, False, False)
    """
    finest = _step(from_base(display.readability, display.mass_word))
    return 0 < abs(from_base(grams, display.mass_word)) < 5 * finest


def mass(grams: float, display: Display) -> str:
    """A weight in the maker's unit, rounded to what their scale can show [text].

    grams: weight [g].
    display: how this maker reads figures [display].

    >>> mass(1203.4, Display()), mass(1203.4, Display(mass="oz")), mass(1203.4, Display(mass="lb"))
    ('1203 g', '42.45 oz', '2 lb 10.45 oz')
    """
    return _mass_told(*_on_scale(grams, display), display)


def mass_at_least(grams: float, display: Display) -> str:
    """A weight rounded up to what the scale can show, where less would not do [text].

    grams: weight [g].
    display: how this maker reads figures [display].

    >>> mass_at_least(95.2, Display())
    '96 g'
    """
    return _mass_told(*_on_scale(grams, display, math.ceil), display)


def _mass_told(value: float, step: float, display: Display) -> str:
    if display.mass == "g":
        return f"{number(value, _decimals(step), display)} g"
    pounds = int((value + 1e-9) // _OUNCES_IN_POUND) if display.mass == "lb" else 0
    ounces = f"{number(value - pounds * _OUNCES_IN_POUND, _decimals(step), display)} oz"
    return f"{pounds} lb {ounces}" if pounds else ounces


def small_mass(grams: float, display: Display, digits: int = 2) -> str:
    """A weight to so many significant digits, for a step, a spread or a ± [text].

    grams: weight [g].
    display: how this maker reads figures [display].
    digits: significant digits [count].

    >>> small_mass(1.0, Display()), small_mass(7.23, Display(mass="oz"))
    ('1 g', '0.26 oz')
    """
    word = display.mass_word
    return f"{significant(from_base(grams, word), digits, display)} {word}"


def volume(milliliters: float, display: Display) -> str:
    """A volume in milliliters, and in US fluid ounces where ounces are weighed [text].

    milliliters: volume [mL].
    display: how this maker reads figures [display].

    >>> volume(641.86, Display()), volume(641.86, Display(mass="oz"))
    ('642 mL', '642 mL (21.7 fl oz)')
    """
    metric = f"{number(milliliters, 0 if abs(milliliters) >= 99.5 else 1, display)} mL"
    if display.mass == "g":
        return metric
    return f"{metric} ({number(from_base(milliliters, 'floz'), 1, display)} fl oz)"


def length(millimeters: float, display: Display) -> str:
    """A length in the maker's unit [text].

    millimeters: length [mm].
    display: how this maker reads figures [display].

    >>> length(82.5, Display()), length(82.5, Display(length="in"))
    ('82.5 mm', '3.25 in')
    """
    if display.length == "in":
        return f"{significant(from_base(millimeters, 'in'), 3, display)} in"
    return f"{trimmed(millimeters, 1, display)} mm"


def temperature(celsius: float, display: Display) -> str:
    """A temperature in the maker's unit [text].

    celsius: temperature [°C].
    display: how this maker reads figures [display].

    >>> temperature(20, Display()), temperature(20, Display(temperature="F"))
    ('20 °C', '68 °F')
    """
    value, unit = (from_base(celsius, "f"), "°F") if display.temperature == "F" else (celsius, "°C")
    return f"{trimmed(value, 1, display)} {unit}"


def density(grams_per_milliliter: float, display: Display) -> str:
    """A density in grams per milliliter [text].

    grams_per_milliliter: density [g/mL].
    display: how this maker reads figures [display].

    >>> density(2.98, Display())
    '2.98 g/mL'
    """
    return f"{significant(grams_per_milliliter, 4, display)} g/mL"


def percent(share: float, display: Display, decimals: int = 1) -> str:
    """A share in percent [text].

    share: as a plain fraction [–].
    display: how this maker reads figures [display].
    decimals: digits after the mark [count].

    >>> percent(0.0566, display=Display()), percent(0.06, Display())
    ('5.7 %', '6 %')
    """
    return f"{trimmed(share * 100, decimals, display)} %"


def mass_plus_minus(grams: float, display: Display) -> str:
    """The ± of a weight in the maker's unit [text].

    grams: half-width [g].
    display: how this maker reads figures [display].

    >>> mass_plus_minus(7.21, Display()), mass_plus_minus(7.21, Display(mass="lb"))
    ('± 7.3 g', '± 0.26 oz')
    """
    word = display.mass_word
    return f"± {plus_minus(from_base(grams, word), display)} {word}"


def plus_minus(value: float, display: Display) -> str:
    """A ± to at most two significant digits, rounded up so as never to promise too much [text].

    value: half-width [any unit].
    display: how this maker reads figures [display].

    >>> plus_minus(3.21, Display()), plus_minus(0.123, Display()), plus_minus(12.3, Display())
    ('3.3', '0.13', '13')
    """
    if value <= 0:
        return "0"
    power = 10.0 ** (math.floor(math.log10(value)) - 1)
    if math.ceil(value / power - 1e-9) >= 100:
        power *= 10
    decimals = 0 if power >= 1 else _decimals(power)
    return number(math.ceil(value / power - 1e-9) * power, decimals, display)
