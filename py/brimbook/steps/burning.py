"""The burn test: what its log tells of rate, hours, pool and flame, beside the published limits."""

import math
from dataclasses import dataclass

from brimbook.candle.burning import Rate, learn_rate
from brimbook.candle.standards import BURN, COOLING
from brimbook.figure import Figure
from brimbook.quantity.moments import HOUR
from brimbook.record.said import Said
from brimbook.steps.burn_figures import Test, needed_pool, pools, rates, tallest_flame
from brimbook.steps.burn_hours import hours
from brimbook.steps.burn_log import Burned, cycles_of, step_of
from brimbook.steps.filling import Filled
from brimbook.steps.melting import Due
from brimbook.steps.verdicts import verdicts
from brimbook.steps.wicks import WickPlan


@dataclass(frozen=True)
class Burn:
    """The burn test: its figures, verdicts in words, and what is due when while a cycle burns.

    cycles are those of the log that say something, rate is what those that count tell, and needed is how wide the pool of
    one wick must grow [mm], where that is known.
    """

    figures: tuple[Figure, ...]
    verdicts: tuple[str, ...] = ()
    due: tuple[Due, ...] = ()
    cycles: tuple[Burned, ...] = ()
    rate: Rate | None = None
    needed: float | None = None


def burning(said: Said, place: str, plan: WickPlan | None, filled: Filled | None) -> Burn:
    """The burn test of a well [burn].

    said: the record as understood [said].
    place: path of the well [text].
    plan: of the wicks [plan].
    filled: what the well holds, where that is known [filled].
    """
    at = f"{place}.burning"
    cycles, step = cycles_of(said, at), step_of(said, at)
    if not cycles:
        return Burn(())
    counted = [burned.cycle for burned in cycles if burned.cycle is not None]
    rate = learn_rate(counted, step) if counted and step is not None else None
    needed = needed_pool(plan)
    test = Test(said, place, at, tuple(cycles), rate, plan, filled, needed)
    told = hours(test)
    figures = (*rates(test), *told, *pools(test), *tallest_flame(test))
    left = _hours_left(at, told)
    return Burn(figures, verdicts(test, left == 0), _due(cycles[-1], left), tuple(cycles), rate, needed)


def _hours_left(at: str, told: list[Figure]) -> float | None:
    """The hours until only so much wax is left as should stay, 0 once it is down to that; none where unknown [h]."""
    found = {figure.key.removeprefix(f"{at}."): figure.value for figure in told}
    return found.get("left", 0.0) if "hours" in found else None


def _due(newest: Burned, left: float | None) -> tuple[Due, ...]:
    """While it burns a look every hour and the end, sooner where less wax is left; after it, when it is cold, if it may be lit again."""
    if newest.burns:
        lasts = BURN if left is None else min(BURN, left)
        looks = (Due("Look: flame, pool, soot", newest.lit + hour * HOUR) for hour in range(1, math.ceil(lasts)))
        return (*looks, Due("Put it out", newest.lit + lasts * HOUR))
    return () if newest.out is None or left == 0 else (Due("Cold enough to light again", newest.out + COOLING * HOUR),)
