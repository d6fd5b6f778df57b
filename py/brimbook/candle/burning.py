"""Burning: what a log of weighings and hours tells of the rate, the hours, the pool and the heat."""

import math
from dataclasses import dataclass

from brimbook.cast.learning import EXPECTED_FREEDOM, student_factor

# So much the rate differs from one cycle to the next, as a standard deviation: from memory.
EXPECTED_SCATTER = 0.08
# A clock is read to the minute [h].
CLOCK_STEP = 1 / 60
# Source: net heat of combustion, from heats of formation of n-eicosane and of stearic acid [MJ/kg].
PARAFFIN_HEAT, ESTER_HEAT = 43.86, 36.87
# An inch of diameter in an hour: common practice, no source.
POOL_RULE = 25.4


@dataclass(frozen=True)
class Cycle:
    """One burn: what was lost [g] in so many hours [h]; shared says that its first weight is the last one's end weight."""

    burned: float
    hours: float
    shared: bool = False

    @property
    def rate(self) -> float:
        """Of this cycle alone [g/h]."""
        return self.burned / self.hours


@dataclass(frozen=True)
class Drift:
    """How the rate changes from each cycle to the next, and its ± [g/h]."""

    slope: float
    plus_minus: float

    @property
    def word(self) -> str:
        """Steady, slowing, or growing [text]."""
        if abs(self.slope) <= self.plus_minus:
            return "steady"
        return "slowing" if self.slope < 0 else "growing"


@dataclass(frozen=True)
class Rate:
    """The rate of all cycles together and its ± [g/h]; the scatter between cycles, as seen and as expected, as a share;
    the ± of each cycle by itself [g/h]; and its drift, from three cycles on."""

    value: float
    plus_minus: float
    scatter: float
    freedom: int
    each: tuple[float, ...]
    drift: Drift | None


def burn_rate(burned: float, hours: float) -> float:
    """What burns in an hour [g/h].

    burned: weight lost [g].
    hours: for so long it was lit [h].

    >>> burn_rate(570 - 556, 4)
    3.5
    """
    return burned / hours


def burn_hours(wax: float, rate: float) -> float:
    """How long a weight of wax burns [h].

    wax: to be burned [g].
    rate: of all wicks together [g/h].

    >>> burn_hours(300, 5)
    60.0
    """
    return wax / rate


def rate_of_wicks(rate: float, wicks: int) -> float:
    """What several wicks burn in an hour, if none heats the others [g/h].

    rate: of one wick [g/h].
    wicks: how many [count].

    >>> rate_of_wicks(5, 2)
    10
    """
    return rate * wicks


def net_power(rate: float, net_heat: float) -> float:
    """Heat that a flame gives, the water of it left as vapor [W].

    rate: of burning [g/h].
    net_heat: of combustion [MJ/kg].

    Source: grams in an hour × kilojoules in a gram ÷ 3.6, an identity of units.

    >>> round(net_power(5, 43.86), 1)
    60.9
    """
    return rate * net_heat / 3.6


def rest_of_wax(area: float, height: float, density: float) -> float:
    """Wax that stays in a straight vessel [g].

    area: of the surface of the wax [mm²].
    height: of the wax that stays [mm].
    density: of the cold wax [g/mL].

    >>> round(rest_of_wax(3631.7, 13, 0.92), 1)
    43.4
    """
    return area * height / 1000 * density


def pool_growth(across: float, hours: float) -> float:
    """How fast the melt pool grew across, since its wick was lit [mm/h].

    across: the pool [mm].
    hours: since it was lit [h].

    >>> pool_growth(60, 2.5)
    24.0
    """
    return across / hours


def hours_by_rule(across: float) -> float:
    """How long a pool takes to grow so wide by the rule of thumb of an inch an hour [h].

    across: the pool [mm].

    Source: common practice, no source; no standard has it.

    >>> round(hours_by_rule(76.2), 6)
    3.0
    """
    return across / POOL_RULE


def learn_rate(cycles: list[Cycle], step: float) -> Rate:
    """The rate over all cycles, weighted by their hours, with its ± [rate].

    cycles: one or more, in the order they were burned [cycles].
    step: the smallest that the scale shows [g].

    The ± holds three things: the steps of the scale, step ÷ √12 for each weighing (one that ends a cycle and begins the
    next cancels out of the sum); a clock read to the minute; and the scatter between cycles, the one expected pooled with
    the one seen, with Student's t for its own doubt.

    Source: GUM for rounding; scaled inverse chi-square as the prior of a normal variance, from memory.

    >>> rate = learn_rate([Cycle(20, 4), Cycle(21, 4), Cycle(19, 4)], 1.0)
    >>> round(rate.value, 3), round(rate.plus_minus, 2), rate.drift.word
    (5.0, 0.52, 'steady')
    """
    hours = math.fsum(cycle.hours for cycle in cycles)
    value = math.fsum(cycle.burned for cycle in cycles) / hours
    by_scatter = value * EXPECTED_SCATTER
    reading = [(step**2 / 6 + (value * CLOCK_STEP) ** 2 / 6) / cycle.hours**2 for cycle in cycles]
    factor, freedom = _scatter([cycle.rate - value for cycle in cycles], [by_scatter**2 + each for each in reading], 1)
    cancelled = sum(cycle.shared for cycle in cycles[1:]) * step**2 / 6
    variance = (factor * by_scatter**2 * math.fsum(cycle.hours**2 for cycle in cycles)
                + math.fsum(each * cycle.hours**2 for each, cycle in zip(reading, cycles)) - cancelled) / hours**2
    student = student_factor(freedom)
    each = tuple(2 * math.sqrt(own) for own in reading)
    return Rate(value, student * math.sqrt(variance), math.sqrt(factor) * EXPECTED_SCATTER, freedom, each,
                _drift(cycles, by_scatter, reading) if len(cycles) > 2 else None)


def _scatter(off: list[float], expected: list[float], fitted: int) -> tuple[float, int]:
    """By how much the variance seen exceeds the one expected, the two pooled, and the degrees of freedom."""
    freedom = EXPECTED_FREEDOM + len(off) - fitted
    seen = math.fsum(each**2 / variance for each, variance in zip(off, expected))
    return (EXPECTED_FREEDOM + seen) / freedom, freedom


def _drift(cycles: list[Cycle], by_scatter: float, reading: list[float]) -> Drift:
    """A straight line through the rates, by the number of the cycle."""
    weights = slope_weights(len(cycles))
    slope = math.fsum(weight * cycle.rate for weight, cycle in zip(weights, cycles))
    middle, mean = (len(cycles) - 1) / 2, math.fsum(cycle.rate for cycle in cycles) / len(cycles)
    off = [cycle.rate - mean - slope * (number - middle) for number, cycle in enumerate(cycles)]
    factor, freedom = _scatter(off, [by_scatter**2 + each for each in reading], 2)
    variance = math.fsum(weight**2 * (factor * by_scatter**2 + each) for weight, each in zip(weights, reading))
    return Drift(slope, student_factor(freedom) * math.sqrt(variance))


def slope_weights(count: int) -> list[float]:
    """What each of so many values in even steps counts for in the slope of the line through them [–].

    count: of values, two or more [count].

    Source: straight line by least squares.

    >>> slope_weights(3)
    [-0.5, 0.0, 0.5]
    """
    middle = (count - 1) / 2
    squares = math.fsum((number - middle) ** 2 for number in range(count))
    return [(number - middle) / squares for number in range(count)]
