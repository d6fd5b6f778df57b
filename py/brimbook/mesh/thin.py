"""Fewer levels for the same curve, where a text has room for so many only."""

from collections.abc import Sequence

from brimbook.mesh import curve
from brimbook.mesh.model import Level


def thinned(levels: Sequence[Level], most: int) -> tuple[Level, ...]:
    """At most so many levels, bottom and top among them; those that the curve misses least are left out [levels].

    levels: of a solid or a room, from bottom to top [levels].
    most: 2 or more [levels].

    >>> [level.height for level in thinned([Level(h, 4.0 * h, 4.0, 4.0) for h in (0.0, 1.0, 2.0, 3.0)], 2)]
    [0.0, 3.0]
    """
    kept = list(levels)
    missed = [_missed(kept, place) for place in range(1, len(kept) - 1)]
    while len(kept) > max(most, 2):
        place = missed.index(min(missed)) + 1
        del kept[place], missed[place - 1]
        for beside in (place - 1, place):
            if 0 < beside < len(kept) - 1:
                missed[beside - 1] = _missed(kept, beside)
    return tuple(kept)


def _missed(levels: Sequence[Level], place: int) -> float:
    """How far the curve without a level runs from it, and a jump of the section counts with it."""
    low, level, high = levels[place - 1:place + 2]
    jump = abs(level.above - level.below) * (high.height - low.height) / 8
    return abs(curve.volume_at((low, high), level.height) - level.volume) + jump
