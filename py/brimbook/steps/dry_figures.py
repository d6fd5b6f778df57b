"""The figures of a drying vessel: water left, what it loses in a day, and when it is dry enough."""

import math
from dataclasses import replace

from brimbook import sources
from brimbook.cast.dryness import AHEAD_ERROR, TIME_SPREAD, USUAL_TIME, Curve, Forecast, range_of
from brimbook.figure import Constant, Figure
from brimbook.fill.readings import readability_of_difference
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, HOUR, show_day, show_duration
from brimbook.steps.dry_weighings import Weighed, a_day_before, is_dry, is_steady, left_by
from brimbook.steps.weighing import practice_or_yours


def water_left(weighed: Weighed, forecast: Forecast | None) -> list[Figure]:
    """The water left at the newest weighing, and its share of the dry weight; nothing where neither can be told [figures].

    weighed: the weighings that count [weighings].
    forecast: the curve through them, if there is one [forecast].
    """
    if weighed.dry_weight is not None:
        left, dry_weight = _left_weighed(weighed), weighed.dry_weight
    elif forecast is not None:
        left, dry_weight = _left_fitted(weighed, forecast), forecast.curve.dry
    else:
        return []
    share = left.value / dry_weight
    return [left, Figure(
        f"{weighed.at}.share", "Of its dry weight", share, "–", show.percent(share, weighed.said.display),
        formula="water left ÷ dry weight × 100", numbers=f"{weighed.put(left.value)} ÷ {weighed.put(dry_weight)} × 100",
        worked=show.percent(share, weighed.said.display, 3), constants=(_margin(weighed),), uses=(left.key,))]


def lost_in_a_day(weighed: Weighed) -> list[Figure]:
    """What the vessel loses in a day by weighings about a day apart or more; nothing before there are two [figures].

    weighed: the weighings that count [weighings].
    """
    before = a_day_before(weighed)
    if before is None:
        return []
    said, hours = weighed.said, (weighed.times[-1] - weighed.times[before]) / HOUR
    value = (weighed.weights[before] - weighed.weights[-1]) / hours * 24
    half = readability_of_difference(weighed.step) / hours * 24
    word = "Steady: in a day it" if is_steady(weighed) else "Not steady yet: in a day it"
    moved = "gained" if value < 0 else "lost"
    return [Figure(
        f"{weighed.at}.lost_in_a_day", "Lost in a day", value, "g", weighed.mass(value),
        formula="(weight before − weight now) ÷ hours between × 24",
        numbers=f"({weighed.put(weighed.weights[before])} − {weighed.put(weighed.weights[-1])}) ÷ {weighed.put(hours)} × 24",
        worked=f"{weighed.worked(value)} g", says=f"{word} {moved} {weighed.mass(abs(value))}", plus_minus=half,
        plus_minus_shown=show.mass_plus_minus(half, said.display),
        constants=(practice_or_yours(said, f"{weighed.at}.steady", "Steady: loses in a day at most",
                                     f"{show.percent(weighed.steady, said.display, 2)}, or one step of the scale: "
                                     f"{weighed.mass(weighed.steady_loss)}"), _ROUNDING))]


def halving(weighed: Weighed, forecast: Forecast) -> list[Figure]:
    """How long the water left takes to halve [figures].

    weighed: the weighings that count [weighings].
    forecast: the curve through them [forecast].
    """
    display, curve = weighed.said.display, forecast.curve
    value = curve.time * math.log(2)
    low, high = (show_duration(each * math.log(2), display) for each in range_of([one.time for one in forecast.likely]))
    even = curve.share * weighed.times[-1] < curve.time * (1 - curve.share)
    says = "Once its surface is dry, the water left halves" if even else "The water left halves"
    return [Figure(
        f"{weighed.at}.halving", "Halves every", value / HOUR, "h", show_duration(value, display),
        formula="time constant of the curve × ln(2)", numbers=f"{weighed.put(curve.time / HOUR)} × ln(2)",
        worked=f"{weighed.worked(value / HOUR)} h", says=f"{says} every {show_duration(value, display)} ({low} to {high})",
        constants=_fitted(weighed, curve), spread=_how(weighed))]


def dry_at(weighed: Weighed, forecast: Forecast) -> Figure:
    """When the vessel will be dry enough, in hours after the first weighing that counts [figure].

    weighed: the weighings that count [weighings].
    forecast: the curve through them [forecast].
    """
    day, early, late = (show_day(weighed.first + each)
                        for each in (forecast.middle, forecast.earliest, forecast.latest))
    ahead, wide = forecast.middle - weighed.times[-1], forecast.latest - forecast.earliest
    between = f"90 % sure: {early}" if early == late else f"90 % sure between {early} and {late}"
    if ahead <= 0:
        says = "By its curve it should be dry enough by now, and it is not sure to be: weigh it again"
    elif wide > max(1.5 * ahead, 2 * DAY):
        says = f"Too early to say well: dry enough about {day}, {between}. Each weighing narrows it"
    else:
        says = f"Dry enough about {day}, {between}"
    if ahead <= 0:
        return replace(_when(weighed, forecast, "Not dry yet", says), shown="Weigh it again")
    return _when(weighed, forecast, "Likely dry", says)


def dry_by(weighed: Weighed, forecast: Forecast | None) -> Figure:
    """Since when a vessel that is dry enough has been so, in hours after the first weighing that counts [figure].

    weighed: the weighings that count [weighings].
    forecast: the curve through them, if there is one [forecast].
    """
    if weighed.dry_weight is None and forecast is not None and 0 < forecast.middle <= weighed.times[-1]:
        return _when(weighed, forecast, "Dry since",
                     f"By its curve dry enough since {show_day(weighed.first + forecast.middle)}")
    number = len(weighed.weights) - 1
    while number and weighed.dry_weight is not None and (
            weighed.weights[number - 1] - weighed.dry_weight <= weighed.spare + 1e-9):
        number -= 1
    hours, day = weighed.times[number] / HOUR, show_day(weighed.first + weighed.times[number])
    return Figure(f"{weighed.at}.dry_at", "Dry since", hours, "h", day, says=f"Dry enough since {day}, if not before",
                  formula="hours from the first weighing to the one that was dry enough", numbers=weighed.put(hours),
                  worked=f"{weighed.worked(hours)} h", constants=(_margin(weighed),))


_ROUNDING = Constant("± of two rounded displays", "2 steps ÷ √6", sources.ROUNDING)


def _margin(weighed: Weighed) -> Constant:
    said = weighed.said
    return practice_or_yours(said, f"{weighed.at}.margin", "Dry enough within",
                             f"{show.percent(weighed.margin, said.display, 2)}, or one step of the scale: "
                             f"{weighed.mass(weighed.spare)}")


def _fitted(weighed: Weighed, curve: Curve) -> tuple[Constant, ...]:
    """What the fit found."""
    display = weighed.said.display
    steady = (Constant("Of it left when even drying ends", show.percent(curve.share, display), sources.DRYING_CURVE),)
    return (Constant("Dry weight of the curve", show.mass(curve.dry, display), sources.YOUR_WEIGHINGS),
            Constant("Water at the first weighing", weighed.mass(curve.start), sources.YOUR_WEIGHINGS),
            *(steady if curve.share < 1 else ()),
            Constant("Time constant", show_duration(curve.time, display), sources.YOUR_WEIGHINGS),
            Constant("Time constant held likely beforehand",
                     f"{show_duration(USUAL_TIME, display)}, from {show_duration(USUAL_TIME / math.exp(2 * TIME_SPREAD), display)} "
                     f"to {show_duration(USUAL_TIME * math.exp(2 * TIME_SPREAD), display)}", sources.PRACTICE))


def _how(weighed: Weighed) -> str:
    """How the fit was made, in words."""
    return (f"Every likely curve was weighed by how well it passes your {len(weighed.weights)} weighings; of those that are "
            "dry at the middle moment this is the likeliest. 90 % of the likely ones lie within the range, and the time "
            f"still to go may be off by another {show.percent(2 * AHEAD_ERROR, weighed.said.display)}. It is an "
            "approximation: a wall dries evenly at first, then ever more slowly, and rooms change.")


def _when(weighed: Weighed, forecast: Forecast, label: str, says: str) -> Figure:
    """The moment at which the curve comes within the margin."""
    curve, put, hours = forecast.curve, weighed.put, forecast.middle / HOUR
    limit = weighed.spare / weighed.near_dry * curve.dry
    constant, at_end = put(curve.time / HOUR), curve.share * curve.start
    if hours <= 0:
        formula, numbers = "dry enough at the first weighing", "0"
    elif limit >= at_end:
        formula = "(water at the start − water that may be left) × time constant ÷ (share left when even drying ends × water " \
                  "at the start)"
        numbers = f"({put(curve.start)} − {put(limit)}) × {constant} ÷ ({put(curve.share)} × {put(curve.start)})"
    else:
        formula = "time constant × ln(water at the start ÷ water that may be left)"
        numbers = f"{constant} × ln({put(at_end)} ÷ {put(limit)})"
        if curve.share < 1:
            formula = "even drying + time constant × ln(water left when it ends ÷ water that may be left)"
            numbers = f"{put(_even(curve) / HOUR)} + {numbers}"
    return Figure(f"{weighed.at}.dry_at", label, hours, "h", show_day(weighed.first + forecast.middle), says=says,
                  formula=formula, numbers=numbers, worked=f"{weighed.worked(hours)} h",
                  constants=(_margin(weighed), *_fitted(weighed, curve)), spread=_how(weighed))


def _even(curve: Curve) -> float:
    """How long a curve dries evenly [s]."""
    return curve.time * (1 - curve.share) / curve.share


def _left_weighed(weighed: Weighed) -> Figure:
    """Water left by the scale alone."""
    newest, dry_weight, half = weighed.weights[-1], weighed.dry_weight, readability_of_difference(weighed.step)
    value = newest - dry_weight
    if value > weighed.spare + 1e-9 and is_steady(weighed):
        says = f"Steady, yet {weighed.mass(value)} above its dry weight: dry it longer, or weigh that again"
    elif value > weighed.spare + 1e-9:
        says = f"Not yet: {weighed.mass(value)} of water still in it"
    elif weighed.is_coarse:
        says = f"Within {weighed.mass(weighed.spare)} of dry, too little for this scale to tell"
    elif abs(value) < weighed.step / 2:
        says = "Dry enough: at its dry weight"
    else:
        says = f"Dry enough: {'within ' if value > 0 else ''}{weighed.mass(abs(value))} {'of' if value > 0 else 'under'} dry"
    return Figure(
        f"{weighed.at}.left", "Water left", value, "g", weighed.mass(value), formula="weight now − dry weight",
        numbers=f"{weighed.put(newest)} − {weighed.put(dry_weight)}", worked=f"{weighed.worked(value)} g", says=says,
        plus_minus=half, plus_minus_shown=show.mass_plus_minus(half, weighed.said.display),
        constants=(_margin(weighed), _ROUNDING), spread="± at about 95 %, from the scale's steps alone.")


def _left_fitted(weighed: Weighed, forecast: Forecast) -> Figure:
    """Water left by the curve, where no dry weight is known."""
    curve, put, now = forecast.curve, weighed.put, weighed.times[-1]
    value = left_by(weighed, curve)
    low, high = range_of([left_by(weighed, one) for one in forecast.likely])
    if curve.share * now <= curve.time * (1 - curve.share):
        formula = "water at the start × (1 − share left when even drying ends × time since ÷ time constant)"
        numbers = f"{put(curve.start)} × (1 − {put(curve.share)} × {put(now / HOUR)} ÷ {put(curve.time / HOUR)})"
    else:
        formula = "water left when even drying ends × exp(−time since ÷ time constant)"
        numbers = f"{put(curve.share * curve.start)} × exp(−({put(now / HOUR)} − {put(_even(curve) / HOUR)}) ÷ " \
                  f"{put(curve.time / HOUR)})"
    return Figure(
        f"{weighed.at}.left", "Water left, about", value, "g", weighed.mass(value), formula=formula, numbers=numbers,
        worked=f"{weighed.worked(value)} g", constants=_fitted(weighed, curve), spread=_how(weighed),
        says=_fitted_says(weighed, forecast, value, f"{weighed.mass(min(low, value))} to {weighed.mass(max(high, value))}"))


def _fitted_says(weighed: Weighed, forecast: Forecast, value: float, between: str) -> str:
    about = f"about {weighed.mass(value)} of water"
    if is_dry(weighed, forecast):
        return f"Dry enough by its steady weight: {about} left ({between})"
    if is_steady(weighed):
        return f"Steady, yet its curve has {about} left ({between}): weigh it again in a few days"
    return f"Not yet: {about} still in it ({between})"
