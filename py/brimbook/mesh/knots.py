"""Which heights a fill curve needs, so that the curve between them is as good as exact."""

from collections.abc import Callable, Sequence
from itertools import accumulate

from brimbook.mesh.curve import area_at, volume_at
from brimbook.mesh.model import Level

# Between two levels the curve is asked at these shares of the way.
_ASKED = (0.25, 0.5, 0.75)


def levels(at: Callable[[float], Level], needed: Sequence[float], corners: Sequence[float], most: int, within: float) -> tuple[Level, ...]:
    """Levels of a fill curve, from bottom to top [levels].

    at: the exact level at a height [level].
    needed: heights that must be among them, such as the bottom, the top and those of level faces [unit of the file].
    corners: some heights of corners, where the curve may bend [unit of the file].
    most: no more levels than this, needed ones aside [count].
    within: how far the curve may be off [unit of the file³].

    The worst stretch is parted again and again, at the corner where its area is farthest off.
    """
    exact = {height: at(height) for height in sorted({*needed})}
    known = {height: at(height) for height in sorted({*corners} - {*needed}) if needed[0] < height < needed[-1]}
    stretches = sorted(exact)
    worst = [_worst(exact[low], exact[high], at) for low, high in zip(stretches, stretches[1:])]
    while len(stretches) < most and worst and max(worst) > within:
        place = worst.index(max(worst))
        low, high = exact[stretches[place]], exact[stretches[place + 1]]
        parted = _parted(low, high, known)
        exact[parted] = known.get(parted) or at(parted)
        stretches.insert(place + 1, parted)
        worst[place:place + 1] = [_worst(low, exact[parted], at), _worst(exact[parted], high, at)]
    return _rising([exact[height] for height in stretches])


def _rising(found: list[Level]) -> tuple[Level, ...]:
    """Levels between which the curve never falls: no area is below 0 or more than three times what the volume rises by.

    Source: a cubic rises all the way if it does so at both ends, by no more than three times its mean rise (Fritsch and
    Carlson, Monotone piecewise cubic interpolation, 1980; from memory).
    """
    volumes = list(accumulate((level.volume for level in found), max))
    rises = [(high - low) / (two.height - one.height) for low, high, one, two in zip(volumes, volumes[1:], found, found[1:])]
    return tuple(Level(level.height, volume, min(max(level.below, 0.0), 3 * before), min(max(level.above, 0.0), 3 * after))
                 for level, volume, before, after in zip(found, volumes, [0.0, *rises], [*rises, 0.0]))


def _worst(low: Level, high: Level, at: Callable[[float], Level]) -> float:
    """How far the curve is off between two levels."""
    if high.height - low.height <= 1e-9 * max(abs(low.height), abs(high.height)):
        return 0.0
    heights = [low.height + share * (high.height - low.height) for share in _ASKED]
    return max(abs(at(height).volume - volume_at((low, high), height)) for height in heights)


def _parted(low: Level, high: Level, known: dict[float, Level]) -> float:
    """Where to part a stretch."""
    between = [level for height, level in known.items() if low.height < height < high.height]
    if not between:
        return (low.height + high.height) / 2
    return max(between, key=lambda level: abs(area_at((low, high), level.height) - level.above)).height
