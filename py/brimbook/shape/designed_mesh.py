"""A designed vessel as triangles: rings of corners up the outside, over the rim, and down the room."""

import math

from brimbook.shape.designed import Designed
from brimbook.shape.prism import Corner, triangles
from brimbook.shape.shell import Pulled, Shell

# A ball is drawn with so many rings; corners are told as finely as a file tells them [mm].
_RINGS, _DIGITS = 24, 6

Ring = list[Corner]


def mesh(vessel: Designed) -> list[tuple[Corner, Corner, Corner]]:
    """The triangles of a vessel, standing on the plane at 0, counterclockwise as seen from outside [mm].

    vessel: as designed [vessel].

    Round outlines have 96 corners and lie just outside the circle.
    """
    outer, inner = _rings(vessel.outside), _rings(vessel.room)
    rings = [*outer, *reversed(inner)]
    faces = [face for one, other in zip(rings, rings[1:]) for face in _between(one, other)]
    return [*_cap(outer[0], up=False), *faces, *_cap(inner[0], up=True)]


def _rings(shell: Shell) -> list[Ring]:
    return [[(round(x, _DIGITS) + 0.0, round(y, _DIGITS) + 0.0, round(height, _DIGITS)) for x, y in shell.corners(height)]
            for height in _heights(shell)]


def _heights(shell: Shell) -> list[float]:
    if isinstance(shell, Pulled):
        return [shell.low, *shell.breaks(), shell.high]
    ends = [math.acos(max(-1.0, min(1.0, (shell.middle - height) / shell.radius))) for height in (shell.low, shell.high)]
    between = (ends[0] + (ends[1] - ends[0]) * step / _RINGS for step in range(1, _RINGS))
    return [shell.low, *(shell.middle - shell.radius * math.cos(angle) for angle in between), shell.high]


def _between(one: Ring, other: Ring) -> list[tuple[Corner, Corner, Corner]]:
    count = len(one)
    found = []
    for place in range(count):
        after = (place + 1) % count
        found += [(one[place], one[after], other[after]), (one[place], other[after], other[place])]
    return [face for face in found if len(set(face)) == 3]


def _cap(ring: Ring, up: bool) -> list[tuple[Corner, Corner, Corner]]:
    """The flat end of a side; none where it ends in a point."""
    corners = [corner for place, corner in enumerate(ring) if corner != ring[place - 1]]
    if len(corners) < 3:
        return []
    flat = triangles(tuple((x, y) for x, y, _ in corners))
    return [tuple(corners[place] for place in (face if up else face[::-1])) for face in flat]
