"""How a pot of melted wax cools: Newton's law, learned from readings of a thermometer, with its ±.

It holds while all is liquid and stands in still air. Large pots lose heat a little faster than the law says while they
are hot, so that the time ahead counts as known to a tenth only. Runs of readings are cooled alike but start anew: what is
poured in between lowers the curve, not the pace.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass

Run = Sequence[tuple[float, float]]

# As one standard deviation: the thermometer and the room [°C], a moment told to the minute [min].
THERMOMETER, ROOM, CLOCK = 0.5, 0.5, 1 / math.sqrt(12)
# How far the law itself may be off, as a share of the time ahead.
LAW = 0.1
# Closer to the room than this no reading tells anything [°C].
LEAST_ABOVE = 2.0
_SURE = 1.96


@dataclass(frozen=True)
class Line:
    """The straight line through the logarithms of the warmth above the room: log = level − pace × (time − middle).

    weight is that of the level, spread and product the weighted sums behind the pace, scale how much wider the readings
    scatter than expected.
    """

    pace: float
    level: float
    middle: float
    weight: float
    spread: float
    product: float
    scale: float


@dataclass(frozen=True)
class Cooling:
    """How a pot cools: the time in which its warmth above the room halves, and its ± [min]; the newest reading's time
    [min] and the temperature of the curve there [°C]; the room [°C]; the line for it, and for a room that is warmer."""

    half: float
    half_off: float
    newest: float
    now: float
    room: float
    line: Line
    warmer: Line | None


def half_time(first: float, last: float, minutes: float, room: float) -> float:
    """Time in which the warmth above the room halves [min].

    first: temperature at first [°C].
    last: temperature later, lower but above the room [°C].
    minutes: between the two [min].
    room: temperature of the room [°C].

    Raises ValueError where nothing cools toward the room.

    Source: Newton's law of cooling.

    >>> half_time(100, 60, 15, 20)
    15.0
    """
    if not first > last > room or minutes <= 0:
        raise ValueError("a pot cools toward the room")
    return minutes * math.log(2) / math.log((first - room) / (last - room))


def wait(now: float, target: float, room: float, half: float) -> float:
    """Time until a temperature is reached; below zero where it was passed [min].

    now: temperature at the start [°C].
    target: to be reached, above the room [°C].
    room: temperature of the room [°C].
    half: time in which the warmth above the room halves [min].

    Raises ValueError for a temperature that is not above the room.

    Source: Newton's law of cooling.

    >>> wait(80, 35, 20, 30)
    60.0
    """
    if min(now, target) <= room:
        raise ValueError("the room is as warm")
    return half * math.log2((now - room) / (target - room))


def cooled(now: float, room: float, half: float, minutes: float) -> float:
    """Temperature after a time [°C].

    now: temperature at the start [°C].
    room: temperature of the room [°C].
    half: time in which the warmth above the room halves [min].
    minutes: from the start on [min].

    Source: Newton's law of cooling.

    >>> cooled(80, 20, 30, 60)
    35.0
    """
    return room + (now - room) * 2 ** (-minutes / half)


def with_fragrance(now: float, room: float, load: float) -> float:
    """Temperature of the wax when fragrance from the room is stirred in [°C].

    now: temperature of the wax [°C].
    room: temperature of the fragrance [°C].
    load: fragrance for a gram of wax [–].

    Fragrance is taken to warm like wax.

    Source: heat that the wax gives is heat that the fragrance takes.

    >>> round(with_fragrance(75, 20, 0.10), 6)
    70.0
    """
    return room + (now - room) / (1 + load)


def learn(runs: Sequence[Run], room: float) -> Cooling | None:
    """How a pot cools by its readings; none where they don't tell a pace [cooling].

    runs: of (minutes, °C) in the order of time, the last one going on; all above the room [readings].
    room: temperature of the room [°C].

    Source: straight line by least squares through the logarithms, each run with a level of its own.

    >>> pot = learn([((0, 80.0), (10, 65.0))], 20.0)
    >>> round(pot.half, 3), round(pot.now, 6)
    (24.094, 65.0)
    >>> learn([((0, 80.0), (10, 80.0))], 20.0) is None
    True
    """
    line = _line(runs, room)
    if line is None:
        return None
    newest = runs[-1][-1][0]
    off = _SURE * line.scale / math.sqrt(line.spread)
    # A pace that may be half of what it seems tells nothing.
    if 2 * off >= line.pace:
        return None
    return Cooling(math.log(2) / line.pace, math.log(2) / (line.pace - off) - math.log(2) / line.pace, newest,
                   room + math.exp(line.level - line.pace * (newest - line.middle)), room, line,
                   _line(runs, room + _SURE * ROOM))


def reached(pot: Cooling, celsius: float) -> tuple[float, float] | None:
    """When a temperature is reached, counted from the newest reading, and its ±; none where the room is too near [min].

    pot: how it cools [cooling].
    celsius: to be reached [°C].

    The ± holds in 95 of 100 pots: thermometer and room within 1 °C, moments to the minute, and the law itself.

    Source: Fieller's interval for a straight line read backward, and the other parts by their squares.

    >>> after, off = reached(learn([((0, 80.0), (10, 65.0))], 20.0), 50.0)
    >>> round(after, 2), round(off, 2)
    (14.09, 3.22)
    """
    if celsius - pot.room < LEAST_ABOVE or pot.warmer is None:
        return None
    line, fall = pot.line, pot.line.level - math.log(celsius - pot.room)
    from_middle = fall / line.pace
    after = line.middle + from_middle - pot.newest
    variance = (_SURE * line.scale) ** 2
    steep = line.pace**2 - variance / line.spread
    root = math.sqrt(max((line.pace * fall) ** 2 - steep * (fall**2 - variance / line.weight), 0.0))
    noise = max(abs((line.pace * fall + sign * root) / steep - from_middle) for sign in (1, -1))
    warm = pot.warmer
    shifted = warm.middle + (warm.level - math.log(celsius - pot.room - _SURE * ROOM)) / warm.pace - pot.newest
    return after, math.hypot(noise, shifted - after, LAW * max(after, 0.0))


def _line(runs: Sequence[Run], room: float) -> Line | None:
    """The line through all runs, each weighted by how well its logarithm is known at the pace found."""
    pace, line = 0.0, None
    for _ in range(2):
        line = _weighted(runs, room, pace)
        if line is None:
            return None
        pace = line.pace
    return line


def _weighted(runs: Sequence[Run], room: float, guess: float) -> Line | None:
    spread = product = square = count = 0.0
    for run in runs:
        points = [(minutes, math.log(celsius - room), 1 / ((THERMOMETER / (celsius - room)) ** 2 + (guess * CLOCK) ** 2))
                  for minutes, celsius in run]
        weight = math.fsum(each for *_, each in points)
        middle, level = (math.fsum(point[axis] * point[2] for point in points) / weight for axis in (0, 1))
        spread += math.fsum(each * (minutes - middle) ** 2 for minutes, _, each in points)
        product -= math.fsum(each * (minutes - middle) * (log - level) for minutes, log, each in points)
        square += math.fsum(each * (log - level) ** 2 for _, log, each in points)
        count += len(points) - 1
    if spread <= 0 or product <= 0:
        return None
    left = max(square - product**2 / spread, 0.0)
    scale = math.sqrt(max(left / (count - 1), 1.0)) if count > 1 else 1.0
    return Line(product / spread, level, middle, weight, spread, product, scale)
