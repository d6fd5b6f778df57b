"""Medians, percentiles and spreads of a handful of measurements."""

import math
import statistics
from collections.abc import Sequence


def middle(values: Sequence[float]) -> float | None:
    """The median, to a tenth; None of nothing."""
    return round(statistics.median(values), 1) if values else None


def spread(values: Sequence[float]) -> dict[str, float] | None:
    """The smallest, middle and largest value, and how many there were; None of nothing."""
    if not values:
        return None
    return {"min": round(min(values), 1), "median": middle(values), "max": round(max(values), 1), "n": len(values)}


def percentile(values: Sequence[float], share: float) -> float:
    """The smallest value that at least `share` percent of the values do not exceed, to a tenth."""
    ordered = sorted(values)
    place = max(1, math.ceil(len(ordered) * share / 100))
    return round(ordered[place - 1], 1)


def ratio(stock: float | None, ours: float | None) -> float | None:
    """How many times as long the stock start takes; None where either was not measured."""
    return round(stock / ours, 2) if stock and ours else None
