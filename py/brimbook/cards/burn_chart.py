"""The burn test as charts: the rate of each cycle with its ±, and the pool beside the width that it needs."""

from brimbook.draw.chart import HEIGHT, WIDTH, Axis, Band, Line, Series, chart, nice_ticks
from brimbook.quantity import show
from brimbook.quantity.show import Display
from brimbook.quantity.units import from_base
from brimbook.steps.burn_figures import per_hour
from brimbook.steps.burning import Burn

# So many cycles fit side by side; the newest are drawn.
_DRAWN = 12
# Half a cycle on either side, so that the band reaches over the outer ones.
_MARGIN = 0.5
_FEWEST = 2


def drawn(burn: Burn, display: Display) -> str:
    """The rates from two cycles on, and below them the pools where any was seen [SVG].

    burn: the burn test [test].
    display: how this maker reads figures [display].
    """
    counted, pools = _counted(burn), _pools(burn)
    if len(counted) < _FEWEST:
        return ""
    charts = [_rates(burn, display), *([_widths(burn, display)] if pools else [])]
    parts = "".join(each.replace("<svg ", f'<svg y="{row * HEIGHT}" width="{WIDTH}" height="{HEIGHT}" ', 1)
                    for row, each in enumerate(charts))
    return (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT * len(charts)}" class="chart">{parts}</svg>'
            if len(charts) > 1 else charts[0])


def in_words(burn: Burn, display: Display) -> str:
    """What the charts show, in words [text].

    burn: the burn test [test].
    display: how this maker reads figures [display].
    """
    counted, pools = _counted(burn), _pools(burn)
    if len(counted) < _FEWEST:
        return ""
    words = "Burn rate: " + ", ".join(f"cycle {number} {per_hour(rate, display)}" for number, rate, _ in counted)
    words += f"; the band is the rate of all, {per_hour(burn.rate.value, display)}, with its ±."
    if pools:
        words += " Pool: " + ", ".join(f"cycle {number} {show.length(across, display)}" for number, across in pools)
        words += "." if burn.needed is None else f"; it needs {show.length(burn.needed, display)}."
    return words


def _counted(burn: Burn) -> list[tuple[int, float, float]]:
    """Number, rate and its ± of the newest cycles that count [g/h]."""
    if burn.rate is None:
        return []
    counted = [each for each in burn.cycles if each.cycle is not None]
    return [(each.number, each.cycle.rate, half) for each, half in zip(counted, burn.rate.each)][-_DRAWN:]


def _pools(burn: Burn) -> list[tuple[int, float]]:
    return [(each.number, each.pool) for each in burn.cycles if each.pool is not None][-_DRAWN:]


def _rates(burn: Burn, display: Display) -> str:
    def at(grams: float) -> float:
        return from_base(grams, display.mass_word)

    seen = [(number, at(rate), at(half)) for number, rate, half in _counted(burn)]
    middle, half = at(burn.rate.value), at(burn.rate.plus_minus)
    first, last = _span(burn)
    low = min(middle - half, *(rate - off for _, rate, off in seen))
    high = max(middle + half, *(rate + off for _, rate, off in seen))
    bars = [Series([(number, rate - off), (number, rate + off)]) for number, rate, off in seen]
    ticks = [(tick, show.trimmed(tick, 3, display)) for tick in nice_ticks(low, high, 5)]
    band = Band([(end, middle - half, middle + half) for end in (first, last)])
    return chart([*bars, Series([(number, rate) for number, rate, _ in seen], "mark")],
                 _cycles([each[0] for each in seen], first, last), Axis(f"{display.mass_word}/h", ticks), [band])


def _widths(burn: Burn, display: Display) -> str:
    def at(millimeters: float) -> float:
        return from_base(millimeters, display.length_word)

    seen = [(number, at(across)) for number, across in _pools(burn)]
    needed = [] if burn.needed is None else [at(burn.needed)]
    ticks = [(tick, show.trimmed(tick, 3, display)) for tick in nice_ticks(0, max(needed + [across for _, across in seen]), 5)]
    return chart([Series(seen, "mark")], _cycles([each[0] for each in seen], *_span(burn)),
                 Axis(f"pool, {display.length_word}", ticks), lines=[Line(each, "needed", at_start=True) for each in needed])


def _span(burn: Burn) -> tuple[float, float]:
    """Both charts reach over the same cycles."""
    numbers = [each[0] for each in (*_counted(burn), *_pools(burn))]
    return min(numbers) - _MARGIN, max(numbers) + _MARGIN


def _cycles(numbers: list[int], first: float, last: float) -> Axis:
    return Axis("cycle", [(number, str(number)) for number in numbers], first, last)
