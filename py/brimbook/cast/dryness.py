"""A wall that dries, known by its weight alone: how much water is left in it, and when that will be little enough.

The curve. A wet wall dries evenly at first, while water still comes to its surface as fast as the air takes it; then
ever more slowly, the rate in step with what is left. With A g of water at the start, of which a share c is left when
even drying ends:

    water left = A × (1 − c t ÷ τ)            until t = τ (1 − c) ÷ c
                 c A × exp(−(t − even) ÷ τ)   from then on

With c = 1 that is the plain falling rate, A × exp(−t ÷ τ). Both are approximations: real walls have wet and dry sides,
and rooms have days and nights.

The fit. Every pair of τ and c of a grid is weighed by how well its curve passes the weighings. The dry weight and A
enter evenly, so for each pair they are solved exactly, as normal distributions. What is held likely before any weighing
is stated below; it matters while the weighings say little, and that is why a forecast after a day has a wide range.
"""

import math
from dataclasses import dataclass
from functools import lru_cache

from brimbook.quantity.moments import DAY, HOUR

# Likely before any weighing: τ of days, anything from half a day to three weeks; all shapes alike; wall water of up to
# a few percent of the weight, hardly more than twice this.
USUAL_TIME, TIME_SPREAD = 3 * DAY, 0.9
USUAL_WATER = 0.08
STEADY_SHARES = (1.0, 0.7, 0.5, 0.35, 0.2)
SHORTEST, LONGEST = 2 * HOUR, 90 * DAY
# Off by one standard deviation: a weighing, in steps of the scale; and in shares of all water lost so far, since rooms
# and walls don't keep to a curve; and in shares of the time still to go, since the days to come may be damper.
STEP_ERROR, ROOM_ERROR, AHEAD_ERROR = 0.5, 0.025, 0.1
_NORMAL_90 = 1.645
# The newest weighings tell the most; more than these only take time.
MOST_WEIGHINGS = 16
_COARSE, _FINE = 22, 16
_UNLIKELY = 9.0  # natural logarithm of how much likelier the best is
_REACH, _NODES = (-2.4, 2.4), 7
_LEAST = 1e-6  # g
_DRAWN = 80


@dataclass(frozen=True)
class Curve:
    """One way of drying: the dry weight [g], the water at the start [g], the share of it left when even drying ends, and
    the time constant [s]."""

    dry: float
    start: float
    share: float
    time: float

    def left(self, time: float) -> float:
        """Water left [g].

        time: since the start [s].

        >>> round(Curve(900, 40, 1.0, 2 * DAY).left(2 * DAY), 3)
        14.715
        """
        return self.start * share_left(time, self.share, self.time)


@dataclass(frozen=True)
class Forecast:
    """When a vessel is dry enough [s since its first weighing]: the middle, and the ends of the 90 % range; the curve that
    passes through the middle; and as many curves as likely as all together, for a band."""

    middle: float
    earliest: float
    latest: float
    curve: Curve
    likely: tuple[Curve, ...]


@dataclass(frozen=True)
class _Cell:
    """One pair of τ and c: its weight as a logarithm, the water at the start, and the dry weight beside it."""

    time: float
    share: float
    weight: float
    start: float
    start_error: float
    dry: float
    dry_slope: float


def share_left(time: float, share: float, constant: float) -> float:
    """The water left, as a share of that at the start [–].

    time: since the start [s].
    share: of the water, left when even drying ends; 1 where it never was even [–].
    constant: time constant of the falling rate [s].

    Source: a constant rate until a critical content, then a rate in proportion to what is left (textbook).

    >>> round(share_left(86400, 1.0, 86400), 5), round(share_left(86400, 0.5, 86400), 5)
    (0.36788, 0.5)
    """
    if share * time <= constant * (1 - share):
        return 1 - share * time / constant
    return share * math.exp(1 / share - 1 - time / constant)


def time_until(left: float, start: float, share: float, constant: float) -> float:
    """The time until so much water is left, 0 if it is no more at the start [s].

    left: water that may be left [g].
    start: water at the start [g].
    share: of the water, left when even drying ends [–].
    constant: time constant of the falling rate [s].

    Source: share_left solved for the time.

    >>> round(time_until(4.5, 45, 1.0, 86400)), round(time_until(30, 40, 0.5, 86400))
    (198943, 43200)
    """
    if start <= left:
        return 0.0
    if left >= share * start:
        return (1 - left / start) * constant / share
    return constant * (1 / share - 1 + math.log(share * start / left))


def since_wetted(weights: list[float], gain: float) -> int:
    """The number of the weighing from which the vessel only dried: the last one that was heavier than before [count].

    weights: in the order of their times [g].
    gain: the least gain that is more than noise [g].

    A weight is held against the lightest before it.

    >>> since_wetted([912, 905, 906, 960, 950], 3.0)
    3
    """
    first, lightest = 0, weights[0]
    for number, weight in enumerate(weights):
        if weight >= lightest + gain:
            first, lightest = number, weight
        lightest = min(lightest, weight)
    return first


@lru_cache(maxsize=64)
def forecast(times: tuple[float, ...], weights: tuple[float, ...], dry: float | None, margin: float,
             step: float) -> Forecast:
    """When a drying vessel will be within a margin of dry [forecast].

    times: of two or more weighings, rising from 0 [s].
    weights: at those times [g].
    dry: its dry weight, if that is known [g].
    margin: water that may be left, as a share of the dry weight [–].
    step: of the scale [g].

    Source: this module's own model, told at its top.

    >>> days = tuple(day * DAY for day in (0.0, 1.0, 2.0, 3.0))
    >>> soon = forecast(days, (946.0, 928.0, 917.0, 910.0), 900.0, 0.005, 1.0)
    >>> [round(each / DAY, 1) for each in (soon.earliest, soon.middle, soon.latest)]
    [4.1, 4.5, 5.1]
    """
    cells = _cells(times[-MOST_WEIGHINGS:], weights[-MOST_WEIGHINGS:], dry, step)
    samples = sorted(_samples(cells, margin))
    total = sum(weight for _, weight, _, _ in samples)
    earliest, middle, latest = (_quantile(samples, share * total) for share in (0.05, 0.5, 0.95))
    likely = tuple(_drawn_evenly(samples, cells, total))
    ahead = _NORMAL_90 * AHEAD_ERROR * max(middle - times[-1], 0.0)
    return Forecast(middle, max(middle - math.hypot(middle - earliest, ahead), 0.0),
                    middle + math.hypot(latest - middle, ahead), _through(cells, margin, middle), likely)


def range_of(values: list[float]) -> tuple[float, float]:
    """The 90 % range of equally likely values [unit of the values].

    values: a good number of them [any unit].

    >>> range_of(list(range(101)))
    (5, 95)
    """
    ranked = sorted(values)
    return ranked[round(0.05 * (len(ranked) - 1))], ranked[round(0.95 * (len(ranked) - 1))]


def _cells(times: tuple[float, ...], weights: tuple[float, ...], dry: float | None, step: float) -> list[_Cell]:
    """The grid of τ and c where it matters: first coarse and wide, then fine between what is likely."""
    cells = []
    for share in STEADY_SHARES:
        span = _evenly(math.log(SHORTEST), math.log(LONGEST), _COARSE)
        rough = [_cell(times, weights, dry, step, share, math.exp(each)) for each in span]
        best = max(cell.weight for cell in rough)
        likely = [number for number, cell in enumerate(rough) if cell.weight > best - _UNLIKELY]
        low, high = span[max(likely[0] - 1, 0)], span[min(likely[-1] + 1, len(span) - 1)]
        fine = _evenly(low, high, _FINE)
        width = math.log(fine[1] - fine[0])
        cells += [_cell(times, weights, dry, step, share, math.exp(each), width) for each in fine]
    best = max(cell.weight for cell in cells)
    return [cell for cell in cells if cell.weight > best - _UNLIKELY]


def _evenly(low: float, high: float, count: int) -> list[float]:
    return [low + (high - low) * number / (count - 1) for number in range(count)]


def _cell(times: tuple[float, ...], weights: tuple[float, ...], dry: float | None, step: float, share: float,
          constant: float, width: float = 0.0) -> _Cell:
    """Least squares for the dry weight and the water at the start, with what is held likely beforehand."""
    shares = [share_left(time, share, constant) for time in times]
    middle = min(weights) if dry is None else dry
    above = [weight - middle for weight in weights]
    error = (STEP_ERROR * step) ** 2 + (ROOM_ERROR * (max(weights) - min(weights))) ** 2
    hold = 0.0 if dry is None else error / (STEP_ERROR * step) ** 2
    usual = error / (USUAL_WATER * middle) ** 2
    # In units of the error: the two-by-two normal equations.
    first, both, second = len(times) + hold, math.fsum(shares), math.fsum(each * each for each in shares) + usual
    level, slope = math.fsum(above), math.fsum(each * rise for each, rise in zip(shares, above))
    determinant = first * second - both * both
    start = (first * slope - both * level) / determinant
    offset = (second * level - both * slope) / determinant
    misfit = math.fsum((rise - offset - start * each) ** 2 for each, rise in zip(shares, above))
    misfit += hold * offset**2 + usual * start**2
    early = math.log(constant / USUAL_TIME) / TIME_SPREAD
    weight = -misfit / error / 2 - math.log(determinant) / 2 - early**2 / 2 + width
    return _Cell(constant, share, weight, start, math.sqrt(error * first / determinant), middle + offset, -both / first)


def _samples(cells: list[_Cell], margin: float) -> list[tuple[float, float, int, float]]:
    """Time, weight, cell and water at the start, for some starts in each cell; less than no water is impossible."""
    found = []
    for number, cell in enumerate(cells):
        least = -cell.start / cell.start_error
        low = max(_REACH[0], least)
        nodes = _evenly(low, max(_REACH[1], low + 1.2), _NODES)
        spacing = math.log(nodes[1] - nodes[0])
        for node in nodes:
            start = max(cell.start + node * cell.start_error, 0.0)
            time = time_until(max(margin * _dry_beside(cell, start), _LEAST), start, cell.share, cell.time)
            found.append((time, cell.weight - node * node / 2 + spacing, number, start))
    best = max(weight for _, weight, _, _ in found)
    return [(time, math.exp(weight - best), number, start) for time, weight, number, start in found
            if weight > best - _UNLIKELY]


def _quantile(samples: list[tuple[float, float, int, float]], weight: float) -> float:
    """The time before which the samples carry so much weight, each one's spread evenly to its neighbors."""
    passed, before = 0.0, samples[0]
    for sample in samples:
        middle = passed + sample[1] / 2
        if middle >= weight:
            since = middle - sample[1] / 2 - before[1] / 2 if sample is not before else middle
            share = (weight - since) / (middle - since) if middle > since else 1.0
            return before[0] + min(max(share, 0.0), 1.0) * (sample[0] - before[0])
        passed, before = passed + sample[1], sample
    return samples[-1][0]


def _dry_beside(cell: _Cell, start: float) -> float:
    """The dry weight that goes with so much water at the start."""
    return cell.dry + cell.dry_slope * (start - cell.start)


def _drawn_evenly(samples: list[tuple[float, float, int, float]], cells: list[_Cell], total: float) -> list[Curve]:
    """Curves of which each stands for as much weight as any other."""
    curves, passed, wanted = [], 0.0, total / _DRAWN / 2
    for _, weight, number, start in samples:
        passed += weight
        while passed >= wanted and len(curves) < _DRAWN:
            cell = cells[number]
            curves.append(Curve(_dry_beside(cell, start), start, cell.share, cell.time))
            wanted += total / _DRAWN
    return curves


def _through(cells: list[_Cell], margin: float, time: float) -> Curve:
    """The likeliest of the curves that are dry enough at a given time."""
    if time <= 0:
        cell = max(cells, key=lambda each: each.weight)
        start = max(cell.start, 0.0)
        return Curve(_dry_beside(cell, start), start, cell.share, cell.time)
    best, likeliest = None, -math.inf
    for cell in cells:
        # Dry enough is A × share left = margin × (dry + slope × (A − start)), which is linear in A.
        left = share_left(time, cell.share, cell.time) - margin * cell.dry_slope
        start = margin * (cell.dry - cell.dry_slope * cell.start) / left
        away = (start - cell.start) / cell.start_error
        if cell.weight - away * away / 2 > likeliest:
            likeliest = cell.weight - away * away / 2
            best = Curve(_dry_beside(cell, start), start, cell.share, cell.time)
    return best
