"""The chart of a drying vessel: its weighings, the curve through them with its band, and where it is dry enough."""

import math

from brimbook.cast.dryness import Curve, Forecast, range_of
from brimbook.draw.chart import Axis, Band, Line, Series, chart, nice_ticks
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, show_day
from brimbook.quantity.units import from_base
from brimbook.steps.dry_weighings import Weighed
from brimbook.steps.drying import Dryness

_SPOTS, _BAND_SPOTS = 48, 14
_SHOWN_DAYS = 3


def drawn(dryness: Dryness) -> str:
    """The weighings, and the curve through them, over the days [SVG].

    dryness: of the vessel [dryness].
    """
    weighed = dryness.weighed
    if weighed is None:
        return ""
    display, forecast = weighed.said.display, None if dryness.dry else dryness.forecast
    end = _end(weighed, forecast)

    def at(grams: float) -> float:
        return from_base(grams, display.mass_word)

    points = [(time / DAY, at(weight)) for time, weight in zip(weighed.times, weighed.weights)]
    curve, band = _curve(forecast, end) if forecast else ([], [])
    limit = _limit(weighed, forecast)
    heights = [weight for _, weight in points] + [at(grams) for _, grams in curve] + ([at(limit)] if limit else [])
    low, high = min(heights), max(heights)
    ticks = nice_ticks(low, high, 5)
    lines = [Line(at(limit), "dry enough", at_start=True)] if limit else []
    lines += [Line(forecast.middle / DAY, show_day(weighed.first + forecast.middle), True)] if forecast else []
    return chart(
        [Series([(day, at(grams)) for day, grams in curve]), Series(points, "mark")],
        Axis("", _days(weighed.first, end), 0.0, end),
        Axis(f"weight, {display.mass_word}", [(tick, show.trimmed(tick, 3, display)) for tick in ticks],
             ticks[0], ticks[-1]),
        bands=[Band([(day, at(least), at(most)) for day, least, most in band])] if band else [], lines=lines)


def in_words(dryness: Dryness) -> str:
    """What the chart shows, in words [text].

    dryness: of the vessel [dryness].
    """
    weighed = dryness.weighed
    if weighed is None:
        return ""
    display, first = weighed.said.display, weighed.first
    if len(weighed.weights) == 1:
        words = f"One weighing: {show.mass(weighed.weights[0], display)} on {show_day(first)}."
    else:
        words = (f"{len(weighed.weights)} weighings: from {show.mass(weighed.weights[0], display)} on {show_day(first)} to "
                 f"{show.mass(weighed.weights[-1], display)} on {show_day(first + weighed.times[-1])}.")
    if dryness.forecast and not dryness.dry:
        days = [show_day(first + each) for each in (dryness.forecast.middle, dryness.forecast.earliest,
                                                    dryness.forecast.latest)]
        words += f" The curve comes to dry enough on {days[0]}; the likely ones between {days[1]} and {days[2]}."
    return words


def _end(weighed: Weighed, forecast: Forecast | None) -> float:
    """The day on which the chart ends: a little after the last thing to be seen [d]."""
    last = weighed.times[-1]
    if forecast is not None:
        # A far end of a wide range would press all weighings against the axis.
        last = max(last, forecast.middle * 1.15, min(forecast.latest, forecast.middle * 1.6))
    return max(last / DAY, _SHOWN_DAYS)


def _limit(weighed: Weighed, forecast: Forecast | None) -> float | None:
    """The weight at which the vessel is dry enough [g]."""
    if weighed.dry_weight is not None:
        return weighed.dry_weight + weighed.spare
    return forecast.curve.dry + weighed.spare if forecast else None


def _curve(forecast: Forecast, end: float) -> tuple[list[tuple[float, float]], list[tuple[float, float, float]]]:
    """The curve and its 90 % band, in days and grams."""
    days = [end * spot / _SPOTS for spot in range(_SPOTS + 1)]
    curve = [(day, _weight(forecast.curve, day)) for day in days]
    few = [end * spot / _BAND_SPOTS for spot in range(_BAND_SPOTS + 1)]
    return curve, [(day, *range_of([_weight(one, day) for one in forecast.likely])) for day in few]


def _weight(curve: Curve, day: float) -> float:
    return curve.dry + curve.left(day * DAY)


def _days(first: float, end: float) -> list[tuple[float, str]]:
    """Midnights, as many as there is room for; the first one in full, the others by their day of the month."""
    start = -(first % DAY) / DAY
    every = math.ceil(end / 4)
    days = [start + number for number in range(1, math.floor(end - start) + 1)]
    return [(day, show_day(first + day * DAY).partition(", ")[2]) for day in days[::every]]
