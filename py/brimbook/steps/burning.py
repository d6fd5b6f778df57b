"""The burn test: what its log tells of rate, hours, pool and flame, beside the published limits."""

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
    figures = (*rates(test), *hours(test), *pools(test), *tallest_flame(test))
    return Burn(figures, verdicts(test), _due(cycles[-1]), tuple(cycles), rate, needed)


def _due(newest: Burned) -> tuple[Due, ...]:
    """While it burns a look every hour and the end; after it, when it is cold."""
    if newest.burns:
        looks = (Due("Look: flame, pool, soot", newest.lit + hour * HOUR) for hour in range(1, round(BURN)))
        return (*looks, Due("Put it out", newest.lit + BURN * HOUR))
    return () if newest.out is None else (Due("Cold enough to light again", newest.out + COOLING * HOUR),)
