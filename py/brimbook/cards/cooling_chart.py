"""The chart of a cooling pot: its readings, the curve through them, and where it is poured."""

from brimbook.draw.chart import Axis, Line, Series, chart, nice_ticks
from brimbook.quantity import show
from brimbook.quantity.moments import MINUTE
from brimbook.quantity.show import Display
from brimbook.quantity.units import from_base
from brimbook.record.said import Said
from brimbook.steps.melting import Melt
from brimbook.steps.pot_cooling import show_clock
from brimbook.steps.temperatures import pour_at

_LONGEST = 24 * 60.0


def drawn(said: Said, place: str, melt: Melt) -> str:
    """The readings that count, and the curve through them [SVG].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    melt: its melting [melt].
    """
    if melt.pace is None:
        return ""
    display, pace, pours = said.display, melt.pace, pour_at(said, place)
    points = [point for run in pace.log.runs for point in run]
    curve = pace.curve(_end(melt))
    heights = [celsius for _, celsius in (*points, *curve)] + ([] if pours is None else [pours])
    ticks = nice_ticks(_degrees(min(heights), display), _degrees(max(heights), display), 5)
    times = nice_ticks(0.0, curve[-1][0], 4)
    return chart(
        [Series([(minutes, _degrees(celsius, display)) for minutes, celsius in curve]),
         Series([(minutes, _degrees(celsius, display)) for minutes, celsius in points], "mark")],
        Axis("", [(minutes, show_clock(pace.log.first + minutes * MINUTE)) for minutes in times]),
        Axis("°F" if display.temperature == "F" else "°C", [(tick, show.trimmed(tick, 1, display)) for tick in ticks],
             ticks[0], ticks[-1]),
        lines=[] if pours is None else [Line(_degrees(pours, display), "pour", at_start=True)])


def in_words(said: Said, place: str, melt: Melt) -> str:
    """What the chart shows, in words [text].

    said: the record as understood [said].
    place: path of the well whose pot it is [text].
    melt: its melting [melt].
    """
    if melt.pace is None:
        return ""
    points = [point for run in melt.pace.log.runs for point in run]
    first, last = (f"{show.temperature(celsius, said.display)} at {show_clock(melt.pace.log.first + minutes * MINUTE)}"
                   for minutes, celsius in (points[0], points[-1]))
    told = next((f" {figure.says}." for figure in melt.figures if figure.key == f"{place}.melting.pour"), "")
    return f"{len(points)} readings: from {first} to {last}.{told}"


def _end(melt: Melt) -> float:
    """Minutes after the first reading at which the chart ends: a little after the pour, or after the newest reading."""
    newest = melt.pace.cooling.newest
    waits = [figure.value for figure in melt.figures if figure.key.rpartition(".")[2] in ("pour", "second")]
    return min(newest + max([newest * 0.3, 5.0, *(wait * 1.15 for wait in waits)]), _LONGEST)


def _degrees(celsius: float, display: Display) -> float:
    return from_base(celsius, "f") if display.temperature == "F" else celsius
