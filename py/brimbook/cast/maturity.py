"""How fast a mix sets and gains strength at the temperatures it really had: maturity, for Portland cement.

A span is a stretch of time at one temperature: (°C, h).
"""

import math
from collections.abc import Callable
from dataclasses import dataclass

from brimbook.cast.batch import setting_factor

Spans = list[tuple[float, float]]

GAS = 8.314  # J/(mol·K)
KELVIN = 273.15
FREEZING = 0.0
# EN 1992-1-1 (B.10) writes kelvin as 273 + °C.
_ADJUSTED_KELVIN, ADJUSTED_SLOPE, ADJUSTED_LEVEL = 273.0, 4000.0, 13.65
# Days kept damp and the share of the strength that the mix is designed for.
DAMP_SHARES = ((0.0, 0.5), (3.0, 0.8), (7.0, 1.0), (28.0, 1.25))


@dataclass(frozen=True)
class Reached:
    """When an age is reached: after so many hours; what had passed and what age there was before the last span, and
    the temperature of that span."""

    hours: float
    passed: float
    age: float
    celsius: float


def arrhenius_pace(celsius: float, reference: float, energy: float) -> float:
    """How fast Portland cement ages against its pace at the reference, by activation energy [–].

    celsius: of the piece [°C].
    reference: the temperature that its times are told for [°C].
    energy: activation energy [kJ/mol].

    Below freezing it stands still: frozen water does not react.

    Source: age factor of ASTM C1074, equivalent age.

    >>> round(arrhenius_pace(10.0, 23.0, 33.5), 3), arrhenius_pace(-1.0, 23.0, 33.5)
    (0.535, 0.0)
    """
    if celsius < FREEZING:
        return 0.0
    return math.exp(-energy * 1000 / GAS * (1 / (celsius + KELVIN) - 1 / (reference + KELVIN)))


def nurse_saul_pace(celsius: float, reference: float, datum: float) -> float:
    """How fast Portland cement ages against its pace at the reference, by degrees above a datum [–].

    celsius: of the piece [°C].
    reference: the temperature that its times are told for, above the datum [°C].
    datum: the temperature at which it stands still [°C].

    Source: temperature-time factor of ASTM C1074.

    >>> nurse_saul_pace(10.0, 20.0, 0.0), nurse_saul_pace(-5.0, 20.0, 0.0)
    (0.5, 0.0)
    """
    return max(0.0, (celsius - datum) / (reference - datum))


def observed_pace(celsius: float, reference: float) -> float:
    """How fast another binder sets against its pace at the reference, by the rule of setting times [–].

    celsius: of the piece [°C].
    reference: the temperature that its times are told for [°C].

    Source: setting time halves per +20 °F.

    >>> round(observed_pace(20 - 20 / 1.8, 20.0), 3), observed_pace(-1.0, 20.0)
    (0.5, 0.0)
    """
    return 0.0 if celsius < FREEZING else 1 / setting_factor(celsius, reference)


def temperature_time(spans: Spans, datum: float) -> float:
    """Temperature-time factor, the maturity of Portland cement [°C·h].

    spans: temperatures and how long each lasted [°C, h].
    datum: the temperature at which it stands still [°C].

    Source: ASTM C1074; a span below the datum adds nothing.

    >>> temperature_time([(15.0, 672.0)], -11.0)
    17472.0
    """
    return math.fsum(max(0.0, celsius - datum) * hours for celsius, hours in spans)


def equivalent_age(spans: Spans, pace: Callable[[float], float]) -> float:
    """The age at the reference temperature that spans at other temperatures count as [h].

    spans: temperatures and how long each lasted [°C, h].
    pace: against that at the reference, for a temperature [–].

    Source: ASTM C1074.

    >>> equivalent_age([(20.0, 10.0), (5.0, 10.0)], lambda celsius: nurse_saul_pace(celsius, 20.0, 0.0))
    12.5
    """
    return math.fsum(pace(celsius) * hours for celsius, hours in spans)


def adjusted_pace(celsius: float) -> float:
    """How fast concrete ages against its pace at 20 °C, by the European standard [–].

    celsius: of the piece [°C].

    Source: EN 1992-1-1 (B.10), 0 to 80 °C; below it stands still.

    >>> round(adjusted_pace(20.0), 3), round(adjusted_pace(10.0), 3)
    (0.998, 0.616)
    """
    if celsius < FREEZING:
        return 0.0
    return math.exp(ADJUSTED_LEVEL - ADJUSTED_SLOPE / (_ADJUSTED_KELVIN + celsius))


def strength_gain(days: float, coefficient: float) -> float:
    """Strength of concrete kept damp, as a share of its strength at 28 days [–].

    days: age at 20 °C, or adjusted to it, above zero [d].
    coefficient: of the cement: 0.20 rapid, 0.25 normal, 0.38 slow [–].

    Source: EN 1992-1-1:2004 (3.2).

    >>> round(strength_gain(7.0, 0.25), 4), strength_gain(28.0, 0.38)
    (0.7788, 1.0)
    """
    return math.exp(coefficient * (1 - math.sqrt(28 / days)))


def strength_kept_damp(days: float) -> float:
    """Share of the strength it is designed for that concrete reaches when it is kept damp for so long [–].

    days: kept damp [d].

    Source: table in Masonry and Concrete (2004), page 35; straight lines between its entries.

    >>> strength_kept_damp(0.0), round(strength_kept_damp(5.0), 3), strength_kept_damp(90.0)
    (0.5, 0.9, 1.25)
    """
    for (before, low), (after, high) in zip(DAMP_SHARES, DAMP_SHARES[1:]):
        if days <= after:
            return low + (high - low) * (days - before) / (after - before)
    return DAMP_SHARES[-1][1]


def reach(needed: float, spans: Spans, last: float, pace: Callable[[float], float]) -> Reached | None:
    """When an age is reached through spans and then at one temperature; nothing where it stands still there [reached].

    needed: age at the reference temperature [h].
    spans: temperatures and how long each lasted, from the pour on [°C, h].
    last: the temperature after them [°C].
    pace: against that at the reference, for a temperature [–].

    >>> reach(10.0, [(20.0, 4.0)], 10.0, lambda celsius: celsius / 20).hours
    16.0
    """
    passed = aged = 0.0
    for celsius, hours in spans:
        gained = pace(celsius) * hours
        if gained > 0 and aged + gained >= needed:
            return Reached(passed + (needed - aged) / pace(celsius), passed, aged, celsius)
        passed, aged = passed + hours, aged + gained
    speed = pace(last)
    return Reached(passed + (needed - aged) / speed, passed, aged, last) if speed > 0 else None
