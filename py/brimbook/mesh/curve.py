"""The fill curve: volume against height, from levels."""

import bisect
from collections.abc import Sequence

from brimbook.mesh.model import Level

_HALVINGS = 60


def volume_at(levels: Sequence[Level], height: float) -> float:
    """What lies below a height [unit of the file³].

    levels: of a solid or a room, from bottom to top [levels].
    height: above the model's bottom; beyond the levels the nearest one counts [unit of the file].

    Between two levels the cubic that fits their volumes and areas: exact for prisms, cones, pyramids and spheres.

    >>> cone = (Level(0.0, 0.0, 9.0, 9.0), Level(3.0, 9.0, 0.0, 0.0))
    >>> volume_at(cone, 1.5), volume_at(cone, 5.0)
    (7.875, 9.0)
    """
    if height <= levels[0].height:
        return levels[0].volume
    if height >= levels[-1].height:
        return levels[-1].volume
    low, high = _around(levels, height)
    span = high.height - low.height
    share = (height - low.height) / span
    rise = high.volume - low.volume
    bend = share * share * (3 - 2 * share)
    return low.volume + bend * rise + span * share * (1 - share) * ((1 - share) * low.above - share * high.below)


def area_at(levels: Sequence[Level], height: float) -> float:
    """How large the section is at a height, just above it where it jumps [unit of the file²].

    levels: of a solid or a room, from bottom to top [levels].
    height: above the model's bottom; 0 beyond the levels, and at the last one the area just below it [unit of the file].

    >>> cone = (Level(0.0, 0.0, 9.0, 9.0), Level(3.0, 9.0, 0.0, 0.0))
    >>> area_at(cone, 1.5)
    2.25
    """
    if not levels[0].height <= height <= levels[-1].height:
        return 0.0
    if height == levels[-1].height:
        return levels[-1].below
    low, high = _around(levels, height)
    span = high.height - low.height
    share = (height - low.height) / span
    steep = (high.volume - low.volume) / span
    return 6 * share * (1 - share) * steep + (1 - share) * (1 - 3 * share) * low.above + share * (3 * share - 2) * high.below


def height_of(levels: Sequence[Level], volume: float) -> float | None:
    """Up to which height a volume comes; none where there is no room for it [unit of the file].

    levels: of a solid or a room, from bottom to top [levels].
    volume: 0 or more [unit of the file³].

    >>> height_of((Level(0.0, 0.0, 4.0, 4.0), Level(3.0, 12.0, 4.0, 4.0)), 6.0)
    1.5
    """
    if not 0 <= volume <= levels[-1].volume:
        return None
    low, high = levels[0].height, levels[-1].height
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if volume_at(levels, middle) < volume:
            low = middle
        else:
            high = middle
    return high


def _around(levels: Sequence[Level], height: float) -> tuple[Level, Level]:
    place = bisect.bisect_right(levels, height, 1, len(levels) - 1, key=lambda level: level.height)
    return levels[place - 1], levels[place]
