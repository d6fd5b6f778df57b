"""The cooling pot: how fast it cools by its readings, and when it comes to a temperature."""

from dataclasses import dataclass

from brimbook import sources
from brimbook.candle.cooling import THERMOMETER, Cooling, cooled, learn, reached, wait, with_fragrance
from brimbook.figure import Constant, Figure
from brimbook.quantity import show
from brimbook.quantity.moments import DAY, MINUTE, show_duration, show_moment
from brimbook.quantity.show import Display
from brimbook.quantity.units import from_base
from brimbook.record.said import Said
from brimbook.steps.thermometer import Log

# A ± wider than the wait itself tells nothing, unless both are short [min]. What is farther off is no plan [min].
_SHORT, _FARTHEST = 5.0, DAY / MINUTE
_CURVE_SPOTS = 24
_SPREAD = ("± 95 %: thermometer and room within 1 °C, moments to the minute, and Newton's law to a tenth of the time ahead. "
           "It holds while all is liquid.")


@dataclass(frozen=True)
class Pace:
    """A pot that cools, as its log tells it; at is the path of its melting."""

    said: Said
    at: str
    log: Log
    cooling: Cooling

    @property
    def display(self) -> Display:
        """How this maker reads figures [display]."""
        return self.said.display

    def put(self, value: float) -> str:
        """A number as it stands in a working [text].

        value: any [–].
        """
        told = show.significant(value, 8, self.display)
        return f"({told})" if value < 0 else told

    def curve(self, until: float) -> list[tuple[float, float]]:
        """The cooling as a curve through the newest run: minutes after the first reading and temperatures [min and °C].

        until: minutes after the first reading [min].
        """
        start = self.log.runs[-1][0][0]
        times = [start + (until - start) * spot / _CURVE_SPOTS for spot in range(_CURVE_SPOTS + 1)]
        return [(time, cooled(self.cooling.now, self.cooling.room, self.cooling.half, time - self.cooling.newest))
                for time in times]


def pace_of(said: Said, at: str, log: Log, room: float) -> Pace | None:
    """How a pot cools, or nothing while its readings don't tell [pace].

    said: the record as understood [said].
    at: path of the melting [text].
    log: of the thermometer [log].
    room: where it cools [°C].
    """
    cooling = learn(log.runs, room)
    return None if cooling is None else Pace(said, at, log, cooling)


def pace_figures(pace: Pace) -> list[Figure]:
    """How fast it cools, and where the curve stands at the newest reading [figures].

    pace: of the pot [pace].
    """
    cooling, line, put = pace.cooling, pace.cooling.line, pace.put
    room = put(cooling.room)
    if _is_pair(pace):
        (first, before), (last, after) = pace.log.runs[0]
        formula = "minutes between the readings × ln 2 ÷ ln(first above the room ÷ last above the room)"
        numbers = f"{put(last - first)} × ln(2) ÷ ln(({put(before)} − {room}) ÷ ({put(after)} − {room}))"
    else:
        formula = "ln 2 × spread of the times ÷ their product with the logarithms of the warmth above the room, by least squares"
        numbers = f"ln(2) × {put(line.spread)} ÷ {put(line.product)}"
    half = Figure(
        f"{pace.at}.half_time", "Warmth halves in", cooling.half, "min", show_duration(cooling.half * MINUTE, pace.display),
        formula, numbers, f"Its warmth above the room halves in {show_duration(cooling.half * MINUTE, pace.display)}",
        f"{show.significant(cooling.half, 4, pace.display)} min", cooling.half_off,
        f"± {show.plus_minus(cooling.half_off, pace.display)} min",
        constants=(_law(), *_room(pace), *([] if _is_pair(pace) else [Constant(
            "Straight line", f"each reading weighted by its ± of {put(THERMOMETER)} °C", sources.LEAST_SQUARES)])),
        spread="± 95 %, from the thermometer and the clock.", notes=_scattered(pace))
    told = show.temperature(round(cooling.now, 1), pace.display)
    now = Figure(
        f"{pace.at}.now", "At the newest reading", cooling.now, "°C", told,
        "as read" if _is_pair(pace) else "room + e ^ (mean of the logarithms − slope × minutes since their mean)",
        put(cooling.now) if _is_pair(pace) else
        f"{room} + exp({put(line.level)} − {put(line.pace)} × {put(cooling.newest - line.middle)})",
        f"At the newest reading it was at {told}", f"{show.number(cooling.now, 2, pace.display)} °C")
    return [half, now]


def comes_to(pace: Pace, name: str, label: str, celsius: float, load: float, temperature: Constant,
             uses: tuple[str, ...] = ()) -> Figure | None:
    """When the pot comes to a temperature; nothing while that is not to be told [figure].

    pace: of the pot [pace].
    name: of the figure [text].
    label: what to call it [text].
    celsius: to be reached [°C].
    load: fragrance that still goes in, for a gram of wax [–].
    temperature: to be reached, with its source [constant].
    uses: keys of other figures that it stands on [texts].
    """
    cooling, put = pace.cooling, pace.put
    # With cold fragrance to come, it has to fall less far by itself.
    before = cooling.room + (celsius - cooling.room) * (1 + load)
    found = reached(cooling, before)
    if found is None or found[0] > _FARTHEST or found[1] > max(abs(found[0]), _SHORT):
        return None
    after, off = wait(cooling.now, before, cooling.room, cooling.half), found[1]
    room, thinner = put(cooling.room), f" ÷ (1 + {put(load)})" if load else ""
    clock = show_clock(pace.log.newest + after * MINUTE)
    told = show.temperature(celsius, pace.display)
    says = f"It comes to {told} at {clock}" if after >= 0 else f"It came to {told} at {clock}"
    return Figure(
        f"{pace.at}.{name}", label, after, "min", clock,
        f"time to halve × ln(above the room at the newest reading{' ÷ (1 + fragrance load)' if load else ''} ÷ above the room "
        "then) ÷ ln 2",
        f"{put(cooling.half)} × ln(({put(cooling.now)} − {room}){thinner} ÷ ({put(celsius)} − {room})) ÷ ln(2)", says,
        f"{show.significant(after, 4, pace.display)} min", off, f"± {show.plus_minus(off, pace.display)} min",
        constants=(temperature, _law(), *_room(pace)), uses=(f"{pace.at}.half_time", f"{pace.at}.now", *uses),
        spread=_SPREAD + (" Fragrance from the room cools it as it goes in; that is counted." if load else ""))


def show_clock(seconds: float) -> str:
    """The time of day of a moment [text].

    seconds: since the start of 2000 [s].

    >>> show_clock(9 * 3600 + 300)
    '09:05'
    """
    return show_moment(seconds).rpartition(", ")[2]


def fragrance_cools(said: Said, celsius: float, room: float, load: float) -> str:
    """What cold fragrance does to the pot, in a sentence [text].

    said: the record as understood [said].
    celsius: at which it goes in [°C].
    room: that it comes from [°C].
    load: for a gram of wax [–].
    """
    after = with_fragrance(celsius, room, load)
    return (f"Fragrance from the room takes the pot from {show.temperature(celsius, said.display)} to about "
            f"{_whole(after, said.display)}.")


def _whole(celsius: float, display: Display) -> str:
    """A temperature to the degree."""
    return f"{show.number(from_base(celsius, 'f'), 0, display)} °F" if display.temperature == "F" else (
        f"{show.number(celsius, 0, display)} °C")


def _is_pair(pace: Pace) -> bool:
    return len(pace.log.runs) == 1 and len(pace.log.runs[0]) == 2


def _law() -> Constant:
    return Constant("Cooling", "as fast as it is warmer than the room", sources.NEWTON_COOLING)


def _room(pace: Pace) -> tuple[Constant, ...]:
    source = sources.PRACTICE if pace.said.is_usual(f"{pace.at}.room") else sources.YOURS
    return (Constant("Room", show.temperature(pace.cooling.room, pace.display), source),)


def _scattered(pace: Pace) -> tuple[str, ...]:
    if pace.cooling.line.scale < 2:
        return ()
    return ("The readings don't lie on one cooling curve, so the ± is wider: stir before each, and hold the tip in the middle "
            "of the wax.",)
