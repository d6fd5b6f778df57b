"""What is wished, one way to it, and how what it writes is told."""

from collections.abc import Callable
from dataclasses import dataclass

from brimbook.figure import Figure
from brimbook.quantity import show
from brimbook.record.said import Said
from brimbook.steps.measure import Measurement

# Sizes are written to 0.01 mm: closer than this volume nothing would be gained.
_WIDER, _LEAST, _MOST, _TRIES, _CLOSE = 1.25, 0.1, 12.0, 30, 1e-6


@dataclass(frozen=True)
class Wish:
    """The room that is wanted in a well [mL], the key of its figure, and what is known of the vessel."""

    place: str
    volume: float
    key: str
    rooms: dict[str, Measurement]
    fresh: Figure | None


@dataclass(frozen=True)
class Way:
    """What changes, to what, what the cast then weighs, all that in a sentence, and what choosing it writes, by path [texts]."""

    what: str
    to: str
    cast: str
    says: str
    sets: dict[str, str]


@dataclass(frozen=True)
class Found:
    """Ways to a wanted weight, their figures, and what stands against the first of them [text]."""

    ways: tuple[Way, ...] = ()
    figures: tuple[Figure, ...] = ()
    against: str = ""


# Wax that stands less deep than this burns badly, if at all. Common practice, no source [mm].
_SHALLOW = 10.0


def too_shallow(said: Said, deep: float) -> str:
    """What stands against so little wax, empty where there is enough of it [text].

    said: the record as understood [said].
    deep: how deep it stands [mm].
    """
    if deep >= _SHALLOW:
        return ""
    return f"So little stands only {show.length(deep, said.display)} deep. Make the vessel smaller, or want more."


def line_figure(said: Said, wish: Wish, brim: float, height: float) -> Figure:
    """How far below the brim the line lies for what is wanted [figure].

    said: the record as understood [said].
    wish: what is wanted [wish].
    brim: its height [mm].
    height: up to which the wanted volume comes [mm].
    """
    below, told = brim - height, show.significant
    shown = show.length(below, said.display)
    return Figure(
        f"{wish.place}.target.line", "Line below the brim", below, "mm", shown, "height of the brim − height up to which that volume comes",
        f"{told(brim, 8, said.display)} − {told(height, 8, said.display)}", says=f"The line lies {shown} below the brim",
        worked=f"{told(below, 4, said.display)} mm", uses=(wish.key,), spread="The height is found on the curve of the room's volume.")


def cast_told(said: Said, milliliters: float | None, fresh: Figure | None) -> str:
    """What a cast weighs as poured, or how much mix it takes [text].

    said: the record as understood [said].
    milliliters: mix in it, none where unknown [mL].
    fresh: what one mL of it weighs, where it is known [figure].
    """
    if milliliters is None:
        return ""
    return show.volume(milliliters, said.display) if fresh is None else show.mass(milliliters * fresh.value, said.display)


def factor_for(volume_of: Callable[[float], float | None], wanted: float) -> float | None:
    """By how much to scale something so that its volume is the wanted one; none where no size does [–].

    volume_of: the volume for a factor, more for more, none where there is no such thing [mL].
    wanted: volume [mL].

    Source: regula falsi, the Illinois way.

    >>> round(factor_for(lambda factor: 100 * factor**3, 800.0), 3)
    2.0
    """
    low = high = 1.0
    under = over = volume_of(1.0)
    if under is None:
        return None
    while under > wanted or over < wanted:
        step = high * _WIDER if over < wanted else low / _WIDER
        value = volume_of(step) if _LEAST < step < _MOST else None
        if value is None:
            return None
        low, under, high, over = (high, over, step, value) if over < wanted else (step, value, low, under)
    return _between(volume_of, wanted, (low, under - wanted), (high, over - wanted))


def _between(volume_of: Callable[[float], float | None], wanted: float, low: tuple[float, float], high: tuple[float, float]) -> float | None:
    side = 0
    for _ in range(_TRIES):
        if high[0] - low[0] <= _CLOSE or high[1] == low[1]:
            break
        middle = (low[0] * high[1] - high[0] * low[1]) / (high[1] - low[1])
        value = volume_of(middle)
        if value is None:
            return None
        off = value - wanted
        if abs(off) <= _CLOSE * wanted:
            return middle
        if off < 0:
            low, high, side = (middle, off), (high[0], high[1] / 2 if side < 0 else high[1]), -1
        else:
            low, high, side = (low[0], low[1] / 2 if side > 0 else low[1]), (middle, off), 1
    return high[0] if abs(high[1]) < abs(low[1]) else low[0]
