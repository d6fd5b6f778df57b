"""What a vessel costs: a part of a pack, power, what fails, and amounts rounded so that they add up."""

import math
from collections.abc import Sequence


def of_pack(used: float, pack: float, price: float) -> float:
    """What a part of a pack costs [currency].

    used: how much of it [g, mL or pieces].
    pack: how much a pack holds, in the same unit [g, mL or pieces].
    price: of the pack [currency].

    Source: arithmetic identity.

    >>> of_pack(250, 1000, 12.0)
    3.0
    """
    return used / pack * price


def power(watts: float, hours: float, price: float) -> float:
    """What electricity costs: a kilowatt-hour is 1000 W for an hour [currency].

    watts: drawn on average [W].
    hours: for so long [h].
    price: of a kilowatt-hour [currency].

    Source: definition of the kilowatt-hour.

    >>> power(500, 4, 0.25)
    0.5
    """
    return watts * hours / 1000 * price


def turn_out(cast_failures: float, candle_failures: float) -> float:
    """The share of all that is begun that turns out good: neither the cast nor the fill failed [–].

    cast_failures: share of the casts that fail [–].
    candle_failures: share of the fills that fail [–].

    Source: product of two shares, each of what is left by the one before.

    >>> turn_out(0.2, 0.5)
    0.4
    """
    return (1 - cast_failures) * (1 - candle_failures)


def failing(cast: float, candle: float, cast_failures: float, candle_failures: float) -> float:
    """What a good vessel bears for those that failed [currency].

    cast: what is spent on a vessel before it is filled [currency].
    candle: what is spent on filling it [currency].
    cast_failures: share of the casts that fail, before they are filled [–].
    candle_failures: share of the fills that fail, with the vessel [–].

    One good vessel takes 1 ÷ ((1 − f)(1 − g)) casts and 1 ÷ (1 − g) fills; what is beyond one of each is borne
    for the others. What a vessel is packed in is spent on good ones alone.

    Source: expected number of trials until one succeeds, 1 ÷ (share that succeeds).

    >>> failing(4.0, 2.0, 0.2, 0.5)
    8.0
    """
    return cast * (1 / turn_out(cast_failures, candle_failures) - 1) + candle * (1 / (1 - candle_failures) - 1)


def good_vessel(cast: float, candle: float, packing: float, cast_failures: float, candle_failures: float) -> float:
    """What a good vessel costs with all that it bears for those that failed [currency].

    cast: what is spent on a vessel before it is filled [currency].
    candle: what is spent on filling it [currency].
    packing: what is spent on packing it [currency].
    cast_failures: share of the casts that fail, before they are filled [–].
    candle_failures: share of the fills that fail, with the vessel [–].

    Source: as of what fails.

    >>> good_vessel(4.0, 2.0, 1.0, 0.2, 0.5)
    15.0
    """
    return cast / turn_out(cast_failures, candle_failures) + candle / (1 - candle_failures) + packing


def rounded_to_add_up(amounts: Sequence[float], decimals: int) -> list[float]:
    """Amounts rounded up or down so that they add up to their rounded sum, each within one step of what it is [any unit].

    amounts: 0 or more each [any unit].
    decimals: digits after the mark [count].

    Each is rounded down; the steps that are then lacking go to those that lost most, the first of them where two
    lost alike.

    Source: method of the largest remainder.

    >>> rounded_to_add_up([1 / 3, 1 / 3, 1 / 3], 2), rounded_to_add_up([0.004, 2.003, 1.0], 2)
    ([0.34, 0.33, 0.33], [0.01, 2.0, 1.0])
    """
    scale = 10**decimals
    steps = [math.floor(amount * scale) for amount in amounts]
    # Written out, a sum is rounded alike everywhere.
    lacking = int(f"{math.fsum(amounts):.{decimals}f}".replace(".", "")) - sum(steps)
    most_lost = sorted(range(len(steps)), key=lambda row: (steps[row] - amounts[row] * scale, row))
    for row in most_lost[:max(lacking, 0)]:
        steps[row] += 1
    return [step / scale for step in steps]
