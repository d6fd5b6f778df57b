"""The net weight that a label tells: converted as United States rules have it, and rounded down so as never to overstate."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

# "The factors in the following chart and none others": 16 CFR 500.19(a).
OUNCES_IN_GRAM = 0.0352740
GRAMS_IN_OUNCE = 28.3495
_OUNCES_IN_POUND = 16
# Below so many grams two digits will do; from so many on they are told in kilograms.
TWO_DIGITS_BELOW, KILOGRAM = 100.0, 1000.0
# A weight that was typed in another unit comes back a hair too low.
_HAIR = 1e-6


@dataclass(frozen=True)
class Imperial:
    """A net weight in pounds and ounces, no pounds where it is less than one: whole pounds, and what is over [oz]."""

    pounds: int
    ounces: float


def ounces(grams: float) -> float:
    """A weight in ounces by the factor that rules for labels name [oz].

    grams: weight [g].

    Source: 16 CFR 500.19(a).

    >>> ounces(100.0)
    3.5274
    """
    return round(grams * OUNCES_IN_GRAM, 9)


def down(value: float, digits: int) -> float:
    """A number rounded down to so many digits, never up, and to whole numbers at the coarsest [unit of the value].

    value: more than 0 [any unit].
    digits: significant digits [count].

    >>> down(173.98, 3), down(6.1372, 3), down(87.6, 2), down(1239.0, 3), down(20.0, 3)
    (173.0, 6.13, 87.0, 1239.0, 20.0)
    """
    if value <= 0:
        return 0.0
    decimals = max(digits - 1 - math.floor(math.log10(value) + 1e-12), 0)
    scale = 10.0 ** decimals
    return math.floor(value * scale + _HAIR) / scale


def grams_to_print(grams: float) -> float:
    """The net weight to print in grams: three digits, two below 100 g, rounded down [g].

    grams: that are surely in it [g].

    Source: 16 CFR 500.19(b) for the digits; rounding down is NIST's advice, as quoted.

    >>> grams_to_print(173.98), grams_to_print(87.6), grams_to_print(9.78), grams_to_print(1239.0)
    (173.0, 87.0, 9.7, 1230.0)
    """
    if grams >= KILOGRAM:
        return down(grams / KILOGRAM, 3) * KILOGRAM
    return down(grams, 2 if grams < TWO_DIGITS_BELOW else 3)


def ounces_to_print(grams: float) -> float:
    """The net weight to print in ounces all told: three digits, at most two after the mark, rounded down [oz].

    grams: that are surely in it [g].

    >>> ounces_to_print(173.98), ounces_to_print(595.4), ounces_to_print(9.78)
    (6.13, 21.0, 0.34)
    """
    told = ounces(grams)
    return down(told, 3 if told >= 1 else 2 if told >= 0.1 else 1)


def pounds_and_ounces(grams: float) -> Imperial:
    """The net weight to print in pounds and ounces: below a pound in ounces, from a pound on in pounds and what is over [pounds and ounces].

    grams: that are surely in it [g].

    Source: 16 CFR 500.9, second hand: "the 1 lb 5 oz version is required, all in ounces may stand beside it".

    >>> pounds_and_ounces(595.4), pounds_and_ounces(173.98)
    (Imperial(pounds=1, ounces=5.0), Imperial(pounds=0, ounces=6.13))
    """
    total = ounces_to_print(grams)
    pounds = int(total // _OUNCES_IN_POUND)
    return Imperial(pounds, round(total - pounds * _OUNCES_IN_POUND, 6))


def average(weights: Sequence[float]) -> float:
    """The average of weighed candles, which both systems hold a label to [g].

    weights: of one or more [g].

    Source: 16 CFR 500.25; Directive 76/211/EEC, Annex I, 1.1.

    >>> round(average([172.4, 174.0, 173.1]), 4)
    173.1667
    """
    return math.fsum(weights) / len(weights)
