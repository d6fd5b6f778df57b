"""What a bench rarely weighs, shown to the maker: sizes, pressure, force, area, stress, money."""

from collections.abc import Sequence

from brimbook.quantity.show import Display, length, number, plus_minus, significant
from brimbook.quantity.units import UNITS, to_base

# Signs that are written before the number.
_BEFORE = ("$", "£", "¥")
# Currencies that have no smaller unit by ISO 4217 (from memory), and how they are written besides. The sign ¥ is the yuan's too, which has one.
_WHOLE = frozenset(("BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF",
                    "円", "₩", "원", "₫", "₲"))
# A space where no line breaks.
_SPACE = chr(160)


def pressure(kilopascals: float, display: Display) -> str:
    """The pressure of a fluid, in kPa, or in psi where lengths are in inches [text].

    kilopascals: pressure [kPa].
    display: how this maker reads figures [display].

    >>> pressure(3.2362, Display()), pressure(3.2362, Display(length="in"))
    ('3.24 kPa', '0.469 psi')
    """
    return stress(kilopascals / 1000, display) if display.length == "in" else f"{significant(kilopascals, 3, display)} kPa"


def stress(megapascals: float, display: Display) -> str:
    """The stress in a solid, in MPa, or in psi where lengths are in inches [text].

    megapascals: stress [MPa].
    display: how this maker reads figures [display].

    >>> stress(8.0, Display()), stress(8.0, Display(length="in"))
    ('8 MPa', '1160 psi')
    """
    if display.length == "in":
        return f"{significant(megapascals / to_base(1.0, UNITS['psi']), 3, display)} psi"
    return f"{significant(megapascals, 3, display)} MPa"


def force(newtons: float, display: Display) -> str:
    """A force in N, or in pounds-force where lengths are in inches [text].

    newtons: force [N].
    display: how this maker reads figures [display].

    >>> force(1834.0, Display()), force(1834.0, Display(length="in"))
    ('1834 N', '412 lbf')
    """
    if display.length == "in":
        # One pound-force on a square inch is one psi.
        return f"{significant(newtons / (to_base(1.0, UNITS['psi']) * _square_inch()), 3, display)} lbf"
    return f"{significant(newtons, 3, display)} N"


def size(millimeters: Sequence[float], display: Display) -> str:
    """Several lengths of one thing, the unit told once, with spaces where no line breaks [text].

    millimeters: each length [mm].
    display: how this maker reads figures [display].

    >>> size((126.0, 90.0, 80.5), Display()).replace(chr(160), " "), size((82.5,), Display(length="in")).replace(chr(160), " ")
    ('126 × 90 × 80.5 mm', '3.25 in')
    """
    told = [length(each, display).rpartition(" ") for each in millimeters]
    return f"{f'{_SPACE}×{_SPACE}'.join(number for number, _, _ in told)}{_SPACE}{told[-1][2]}"


def area(square_millimeters: float, display: Display) -> str:
    """An area in cm², or in square inches where lengths are in inches [text].

    square_millimeters: area [mm²].
    display: how this maker reads figures [display].

    >>> area(23456.0, Display()), area(23456.0, Display(length="in"))
    ('235 cm²', '36.4 in²')
    """
    if display.length == "in":
        return f"{significant(square_millimeters / _square_inch(), 3, display)} in²"
    return f"{significant(square_millimeters / 100, 3, display)} cm²"


def area_plus_minus(square_millimeters: float, display: Display) -> str:
    """The ± of an area in cm², or in square inches where lengths are in inches [text].

    square_millimeters: half-width [mm²].
    display: how this maker reads figures [display].

    >>> area_plus_minus(321.0, Display()), area_plus_minus(321.0, Display(length="in"))
    ('± 3.3 cm²', '± 0.50 in²')
    """
    if display.length == "in":
        return f"± {plus_minus(square_millimeters / _square_inch(), display)} in²"
    return f"± {plus_minus(square_millimeters / 100, display)} cm²"


def money_decimals(display: Display) -> int:
    """Digits after the mark in an amount of the maker's currency: none where it has no smaller unit [count].

    display: how this maker reads figures [display].

    >>> money_decimals(Display()), money_decimals(Display(currency="JPY"))
    (2, 0)
    """
    return 0 if display.currency.upper() in _WHOLE else 2


def money(amount: float, display: Display) -> str:
    """An amount in the maker's currency, to two decimals, or to whole units where it has no smaller ones [text].

    amount: of money [currency].
    display: how this maker reads figures [display].

    >>> money(1.5, Display()), money(1.5, Display(currency="€", decimal="comma")), money(352.4, Display(currency="JPY"))
    ('$1.50', '1,50 €', '352 JPY')
    """
    return _with_currency(number(amount, money_decimals(display), display), display)


def small_money(amount: float, display: Display) -> str:
    """An amount that may be less than the smallest coin, then to two digits [text].

    amount: of money [currency].
    display: how this maker reads figures [display].

    >>> small_money(0.00412, Display()), small_money(1.5, Display()), small_money(0.0, Display())
    ('$0.0041', '$1.50', '$0.00')
    """
    coin = 10.0 ** -money_decimals(display)
    return _with_currency(significant(amount, 2, display), display) if 0 < amount < coin else money(amount, display)


def _with_currency(shown: str, display: Display) -> str:
    return f"{display.currency}{shown}" if display.currency in _BEFORE else f"{shown} {display.currency}"


def _square_inch() -> float:
    return to_base(1.0, UNITS["in"]) ** 2
