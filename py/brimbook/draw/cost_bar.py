"""A cost as one bar: each part as long as its share, with its number, in patterns that take turns."""

import math
from collections.abc import Sequence
from xml.sax.saxutils import escape

WIDTH, HEIGHT = 350, 86
_LEFT, _RIGHT, _TOP, _BOTTOM = 8, WIDTH - 8, 8, 50
# Numbers stand at least so far apart below the bar, and its hatching too.
_APART, _HATCH = 22, 7
# Taken in turn, so that no part looks as the one beside it, whatever its color.
_LOOKS = (("bar", ""), ("bar-soft", ""), ("vessel-wall", ""), ("water", ""), ("bar-soft", "up"), ("ghost", ""), ("water", "down"), ("mark-soft", "up"))


def cost_bar(shares: Sequence[float]) -> str:
    """The parts of a cost side by side, numbered from 1 as they stand in the table; a part of nothing is left out [SVG].

    shares: of each part, in any unit, 0 or more each [any unit].

    >>> drawn = cost_bar([3.0, 0.0, 1.0])
    >>> drawn.count('class="label-small"'), ">3</text>" in drawn, ">2</text>" in drawn
    (2, True, False)
    """
    whole, scale = math.fsum(shares), _RIGHT - _LEFT
    shapes, middles, left = [], [], float(_LEFT)
    for row, share in enumerate(shares):
        width = share / whole * scale if whole > 0 else 0.0
        if width > 0:
            shapes += _segment(left, left + width, *_LOOKS[row % len(_LOOKS)])
            middles.append((row + 1, left + width / 2))
        left += width
    places = _spread([middle for _, middle in middles])
    for (number, middle), place in zip(middles, places):
        shapes.append(f'<polyline class="measure" points="{middle:.1f},{_BOTTOM} {middle:.1f},{_BOTTOM + 5} {place:.1f},{_BOTTOM + 14}"/>')
        shapes.append(f'<text class="label-small" x="{place:.1f}" y="{HEIGHT - 6}" text-anchor="middle" font-size="14">{escape(str(number))}</text>')
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" class="chart">{"".join(shapes)}</svg>'


def _segment(left: float, right: float, look: str, hatch: str) -> list[str]:
    """One part, with an edge of its own and, if it has one, its hatching."""
    box = f'x="{left:.1f}" y="{_TOP}" width="{right - left:.1f}" height="{_BOTTOM - _TOP}"'
    lines = [_line(*ends) for ends in _hatching(left, right, hatch)] if hatch else []
    edge = f'<path class="measure" d="M{left:.1f} {_TOP}H{right:.1f}V{_BOTTOM}H{left:.1f}Z"/>'
    return [f'<rect class="{look}" {box}/>', *lines, edge]


def _line(x1: float, y1: float, x2: float, y2: float) -> str:
    return f'<line class="measure" x1="{x1:.1f}" y1="{y1:.1f}" x2="{x2:.1f}" y2="{y2:.1f}"/>'


def _hatching(left: float, right: float, way: str) -> list[tuple[float, float, float, float]]:
    """Slanted lines inside a box, rising or falling to the right, cut off at its sides."""
    height, found = _BOTTOM - _TOP, []
    start = left - height + _HATCH
    while start < right:
        low, high = max(start, left), min(start + height, right)
        if high > low:
            y = (_BOTTOM - (low - start), _BOTTOM - (high - start)) if way == "up" else (_TOP + (low - start), _TOP + (high - start))
            found.append((low, y[0], high, y[1]))
        start += _HATCH
    return found


def _spread(middles: Sequence[float]) -> list[float]:
    """Where the numbers stand: each near its part, none nearer to the next than one can read, all of them on the sheet."""
    places: list[float] = []
    for middle in middles:
        places.append(max(middle, places[-1] + _APART if places else _LEFT + _APART / 2))
    last = _RIGHT - _APART / 2
    for row in reversed(range(len(places))):
        places[row] = min(places[row], last)
        last = places[row] - _APART
    return places
