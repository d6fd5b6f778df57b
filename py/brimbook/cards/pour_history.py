"""The history of the pours as a small chart: what each needed, and how its cup stood off the table."""

import math

from brimbook.cast.learning import Learned, student_factor
from brimbook.draw.chart import Axis, Band, Line, Series, chart, nice_ticks
from brimbook.quantity import show
from brimbook.quantity.show import Display

# So many pours fit side by side; the newest are drawn.
_DRAWN = 10
# Half a pour on either side, so that a single one has a band too.
_MARGIN = 0.5
# Room for the label of the line, at the right of the pours.
_LABEL = 0.4


def history(learned: Learned, display: Display) -> tuple[str, str]:
    """The newest pours as a chart, and the same in words [SVG and text].

    learned: what the pours taught [learned].
    display: how this maker reads figures [display].
    """
    log = learned.log[-_DRAWN:]
    needed = [(seen.number, _percent(seen.taken - learned.density.value)) for seen in log if seen.taken is not None]
    cups = [(seen.number, _percent(seen.cup)) for seen in log if seen.cup is not None]
    first, last = log[0].number - _MARGIN, log[-1].number + _MARGIN
    bands, lines, ends = [], [], [value for _, value in (*needed, *cups)]
    if learned.need is not None:
        half = student_factor(learned.pours.freedom) * math.hypot(learned.pours.scatter, math.sqrt(learned.taken.variance))
        low, high = (_percent(learned.need.value + side * half) for side in (-1, 1))
        bands, ends = [Band([(first, low, high), (last, low, high)])], [*ends, low, high]
    if learned.allowance is not None:
        plan = learned.allowance * 100
        lines, ends = [Line(plan, f"plan {show.percent(learned.allowance, display)}")], [*ends, plan]
    ticks = [(tick, show.trimmed(tick, 2, display)) for tick in nice_ticks(min(ends), max(ends), 5)]
    numbers = [(seen.number, str(seen.number)) for seen in log]
    drawing = chart([Series(cups, "mark-soft"), Series(needed, "mark")], Axis("pour", numbers, first, last + _LABEL * len(log)),
                    Axis("% needed ●, density ○, planned ┄", ticks), bands, lines)
    return drawing, _in_words(learned, needed, cups, display)


def _percent(logarithm: float) -> float:
    return (math.exp(logarithm) - 1) * 100


def _in_words(learned: Learned, needed: list[tuple[int, float]], cups: list[tuple[int, float]], display: Display) -> str:
    parts = []
    if needed:
        parts.append(f"Needed beyond the mold: {_listed(needed, display)}; the band holds about 95 of 100 pours")
    if cups:
        parts.append(f"Density by the cup, off the table: {_listed(cups, display)}")
    if learned.allowance is not None:
        parts.append(f"Allowance to plan: {show.percent(learned.allowance, display)}")
    return ". ".join(parts) + "."


def _listed(points: list[tuple[int, float]], display: Display) -> str:
    return ", ".join(f"pour {number} {show.trimmed(value, 1, display)} %" for number, value in points)
