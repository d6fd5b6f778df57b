"""Bars that lie side by side across an opening, with an open slot for each wick."""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from brimbook.shape.outline import Outline, Point

# So much of a bar stays behind a slot, and between two slots [mm].
BEHIND, BETWEEN = 4.0, 3.0
# The middle of a wick lies at least so many widths of its slot from the open edge, so that the slot holds it.
DEEP = 1.5
_TURN, _EVEN = 15, 2.0
_NEAR, _JUST = 1e-9, 0.995


@dataclass(frozen=True)
class Sizes:
    """Of the bars and the rim they lie on [mm]: wider is how much wider the rim is than the outline, both sides together."""

    width: float
    slot: float
    overhang: float
    wider: float
    clearance: float

    @property
    def shallowest(self) -> float:
        """The least distance of a wick from the open edge [mm]."""
        return DEEP * self.slot

    @property
    def deepest(self) -> float:
        """The most [mm]."""
        return self.width - BEHIND - self.slot / 2

    @property
    def narrowest(self) -> float:
        """A bar that just has room for a slot [mm]."""
        return BEHIND + (DEEP + 0.5) * self.slot


@dataclass(frozen=True)
class Slot:
    """For one wick, numbered from 0: its middle from the bar's left end, and how deep it is cut from the front edge [mm]."""

    wick: int
    along: float
    depth: float


@dataclass(frozen=True)
class Bar:
    """One bar: where the walls at its ends and its front edge lie, from the middle of the outline [mm].

    left and right are told along the bars, front across them.
    """

    left: float
    right: float
    front: float
    length: float
    slots: tuple[Slot, ...]


@dataclass(frozen=True)
class Holder:
    """Bars side by side, all turned counterclockwise from left to right by an angle [°]."""

    angle: float
    bars: tuple[Bar, ...]


def direction(angle: float) -> Point:
    """Cosine and sine of an angle, exact along the axes [–].

    angle: counterclockwise from left to right [°].

    >>> direction(90.0), direction(0.0)
    ((0.0, 1.0), (1.0, 0.0))
    """
    return (0.0, 1.0) if angle == 90 else (math.cos(math.radians(angle)), math.sin(math.radians(angle)))


def turned(point: Point, angle: float) -> Point:
    """A place as seen along the bars: how far along them, and how far across [mm].

    point: on the outline's own axes [mm].
    angle: of the bars [°].

    >>> turned((3.0, 4.0), 90.0)
    (4.0, -3.0)
    """
    (x, y), (cosine, sine) = point, direction(angle)
    return x * cosine + y * sine, y * cosine - x * sine


def placed(point: Point, angle: float) -> Point:
    """A place along and across the bars, back on the outline's own axes [mm].

    point: how far along, and how far across [mm].
    angle: of the bars [°].

    >>> placed((4.0, -3.0), 90.0)
    (3.0, 4.0)
    """
    (along, across), (cosine, sine) = point, direction(angle)
    return along * cosine - across * sine, along * sine + across * cosine


def shape_of(bar: Bar, sizes: Sizes) -> tuple[Point, ...]:
    """A bar as a polygon, counterclockwise, from its left end and its front edge, which the slots are cut into [mm].

    bar: with its slots [bar].
    sizes: of the bars [sizes].

    >>> shape_of(Bar(-10, 10, -9, 40, (Slot(0, 20, 10),)), Sizes(18, 2, 10, 0, 2))[:6]
    ((0.0, 0.0), (19.0, 0.0), (19.0, 10), (21.0, 10), (21.0, 0.0), (40, 0.0))
    """
    half, edge = sizes.slot / 2, [(0.0, 0.0)]
    for slot in sorted(bar.slots, key=lambda each: each.along):
        start, end = slot.along - half, slot.along + half
        edge += [(start, 0.0), (start, slot.depth), (end, slot.depth), (end, 0.0)]
    return (*edge, (bar.length, 0.0), (bar.length, sizes.width), (0.0, sizes.width))


@lru_cache(maxsize=16)
def lay(outline: Outline, wicks: tuple[Point, ...], sizes: Sizes, angle: float | None = None) -> Holder | None:
    """The fewest bars in which every wick's slot fits, of those the evenest and shortest; none where they would overlap [holder].

    outline: of the opening [outline].
    wicks: inside it [mm].
    sizes: of the bars [sizes].
    angle: of the bars; the best one if not given [°].

    Wicks whose places across the bars differ by little share a bar. Angles that are tried: both axes, every 15°, the
    lines through two wicks, and those where two can just share a bar.

    >>> square = Outline(((-30, -30), (30, -30), (30, 30), (-30, 30)))
    >>> [bar.length for bar in lay(square, ((-15.0, 0.0), (15.0, 0.0)), Sizes(18, 2, 15, 0, 2)).bars]
    [90.0]
    """
    tried = [(each, _fronts([turned(wick, each) for wick in wicks], sizes))
             for each in (_angles(wicks, sizes) if angle is None else [angle])]
    found = [(each, fronts) for each, fronts in tried if fronts]
    if not found:
        return None
    fewest = [(each, fronts) for each, fronts in found if len(fronts) == min(len(other) for _, other in found)]
    if len(fewest) > 1:
        fewest.sort(key=lambda choice: _unhandy(_bars(outline, wicks, sizes, *choice, rough=True)))
    return Holder(fewest[0][0], tuple(_bars(outline, wicks, sizes, *fewest[0])))


def _unhandy(bars: list[Bar]) -> tuple[int, int]:
    """Slots of different depths in a bar, then length: rounded, so that a small gain does not turn the bars off the axes."""
    uneven = sum(max(slot.depth for slot in bar.slots) - min(slot.depth for slot in bar.slots) for bar in bars)
    return round(uneven / _EVEN), round(sum(bar.length for bar in bars))


def _angles(wicks: tuple[Point, ...], sizes: Sizes) -> list[float]:
    """The axes first: where others do no better, the bars lie straight.

    Two wicks share a bar while they lie level enough, so the angles that matter are those of the line through them, and
    those where they are just level enough.
    """
    turns, room = [float(each) for each in range(-75, 90, _TURN)], (sizes.deepest - sizes.shallowest) * _JUST
    for row, one in enumerate(wicks):
        for other in wicks[:row]:
            line, apart = math.degrees(math.atan2(other[1] - one[1], other[0] - one[0])), math.dist(one, other)
            slack = math.degrees(math.asin(min(room / apart, 1.0))) if apart else 0.0
            turns += [line, line - slack, line + slack]
    # More than −90 and at most 90, so that a left end lies on the left.
    return list(dict.fromkeys([0.0, 90.0, *(round(90.0 - (90.0 - each) % 180, 2) for each in turns)]))


def _fronts(wicks: list[Point], sizes: Sizes) -> list[tuple[float, tuple[int, ...]]]:
    """The fewest bars for wicks told along and across them: front edge and wicks of each; nothing where they overlap."""
    order, step = sorted(range(len(wicks)), key=lambda row: wicks[row][1]), sizes.width + sizes.clearance
    level = [wicks[row] for row in order]
    # So many wicks are served so far: the bars that serve them, with the last one as far in front as can be.
    served: dict[int, tuple[float, tuple[tuple[int, int], ...]]] = {0: (-math.inf, ())}
    while served and len(order) not in served:
        further: dict[int, tuple[float, tuple[tuple[int, int], ...]]] = {}
        for start, (front, groups) in served.items():
            for end, (least, most) in _windows(level, start, sizes):
                earliest = max(least, front + step)
                if earliest <= most + _NEAR and (end not in further or earliest < further[end][0]):
                    further[end] = earliest, (*groups, (start, end))
        served = further
    if not served:
        return []
    groups = served[len(order)][1]
    windows = [dict(_windows(level, start, sizes))[end] for start, end in groups]
    rows = [tuple(order[start:end]) for start, end in groups]
    middles = [(wicks[group[0]][1] + wicks[group[-1]][1] - sizes.width) / 2 for group in rows]
    return list(zip(_settled(windows, middles, step), rows))


def _windows(wicks: list[Point], start: int, sizes: Sizes) -> Iterator[tuple[int, tuple[float, float]]]:
    """For each run of wicks from one on that fits into one bar: where it ends, and the least and most of the front edge."""
    for end in range(start + 1, len(wicks) + 1):
        along, (_, last) = sorted(wick[0] for wick in wicks[start:end]), wicks[end - 1]
        least, most = last - sizes.deepest, wicks[start][1] - sizes.shallowest
        if least > most + _NEAR or any(right - left < sizes.slot + BETWEEN for left, right in zip(along, along[1:])):
            return
        yield end, (least, most)


def _settled(windows: list[tuple[float, float]], middles: list[float], step: float) -> list[float]:
    """Front edges as near as can be to where the wicks lie in the middle of the bars, none overlapping."""
    latest, limit = [], math.inf
    for _, most in reversed(windows):
        limit = min(most, limit - step)
        latest.insert(0, limit)
    fronts, least = [], -math.inf
    for (low, _), high, middle in zip(windows, latest, middles):
        fronts.append(min(max(middle, low, least), high))
        least = fronts[-1] + step
    return fronts


def _bars(outline: Outline, wicks: tuple[Point, ...], sizes: Sizes, angle: float,
          fronts: list[tuple[float, tuple[int, ...]]], rough: bool = False) -> list[Bar]:
    corners = [turned(corner, angle) for corner in outline.points]
    seen = [turned(wick, angle) for wick in wicks]
    return [_bar(corners, seen, sizes, front, rows, rough) for front, rows in fronts]


def _bar(corners: list[Point], wicks: list[Point], sizes: Sizes, front: float, rows: tuple[int, ...], rough: bool) -> Bar:
    mine = sorted((wicks[row][0], row) for row in rows)
    back = front + sizes.width
    levels = [wicks[row][1] for row in rows]
    if not rough:
        # The opening is widest at a corner or at an edge of the bar; a corner is looked at from both sides.
        inside = [across for _, across in corners if front < across < back]
        levels += [front, back - _NEAR, *inside, *(across - _NEAR for across in inside)]
    left = min((wall for wall in (_wall(corners, mine[0][0], level, -1) for level in levels) if wall is not None), default=mine[0][0])
    right = max((wall for wall in (_wall(corners, mine[-1][0], level, 1) for level in levels) if wall is not None), default=mine[-1][0])
    over = sizes.overhang + sizes.wider / 2
    slots = tuple(Slot(row, over + along - left, wicks[row][1] - front + sizes.slot / 2) for along, row in mine)
    return Bar(left, right, front, right - left + 2 * over, slots)


def _wall(corners: list[Point], along: float, level: float, side: int) -> float | None:
    """The nearest wall on one side of a spot, -1 for the left; none where the spot lies outside."""
    nearest, inside = math.inf, False
    for (along_one, one), (along_other, other) in zip(corners, (*corners[1:], corners[0])):
        if (one <= level) != (other <= level):
            away = (along_one + (level - one) * (along_other - along_one) / (other - one) - along) * side
            if away >= 0:
                nearest, inside = min(nearest, away), not inside
    return along + side * nearest if inside else None
