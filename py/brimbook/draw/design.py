"""A designed vessel in section, to scale, with its line, and its outlines from above."""

from collections.abc import Sequence
from xml.sax.saxutils import escape

from brimbook.shape.outline import Point

WIDTH, HEIGHT = 350, 230
_LEFT, _RIGHT, _TOP, _BOTTOM = 8.0, 196.0, 16.0, 214.0
# Where the outlines from above stand: their middle and how far they reach.
_PLAN, _REACH = (276.0, 164.0), 56.0


def vessel(outside: Sequence[Point], room: Sequence[Point], line: float, plans: tuple[Sequence[Point], Sequence[Point]],
           labels: Sequence[str]) -> str:
    """The section of a vessel filled with wax to its line, and its rim from above [SVG].

    outside: half of its outer side, from the bottom up, as distances from the middle and heights [mm].
    room: half of the side of its room, likewise [mm].
    line: height of the line above the bottom [mm].
    plans: the outer and the inner outline of its rim [mm].
    labels: lines of text beside it, the first one large [texts].

    >>> vessel([(40, 0), (40, 70)], [(34, 8), (34, 70)], 60.0, ([(40, 0), (0, 40), (-40, 0)], [(34, 0), (0, 34), (-34, 0)]), []).count("<polygon")
    4
    """
    widest, highest = max(across for across, _ in (*outside, *room)), outside[-1][1]
    scale = min((_RIGHT - _LEFT) / 2 / widest, (_BOTTOM - _TOP) / highest)
    wall = [*mirrored(outside), *reversed(mirrored(room))]
    wax = mirrored(_below(room, line))
    level = _on_sheet((0.0, line), scale)[1]
    shapes = [_polygon([_on_sheet(each, scale) for each in wall], "vessel-wall"),
              _polygon([_on_sheet(each, scale) for each in wax], "wax"),
              f'<line class="fill-line" x1="{_number(_LEFT)}" y1="{_number(level)}" x2="{_number(_RIGHT)}" y2="{_number(level)}"/>']
    texts = [f'<text class="{"label" if place == 0 else "label-small"}" x="{_number(_RIGHT + 12)}" y="{30 + 20 * place}">{escape(text)}</text>'
             for place, text in enumerate(labels)]
    return (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" class="section">'
            f'{"".join([*shapes, *_from_above(plans), *texts])}</svg>')


def mirrored(half: Sequence[Point]) -> list[Point]:
    """Both sides of a half section, from the right rim by the bottom to the left rim [mm].

    half: from the bottom up, as distances from the middle and heights [mm].
    """
    return [*reversed(half), *((-across, height) for across, height in half)]


def _below(half: Sequence[Point], line: float) -> list[Point]:
    """The part of a half section that lies below the line."""
    kept = [half[0]]
    for (near, low), (far, high) in zip(half, half[1:]):
        if high >= line:
            share = (line - low) / (high - low)
            return [*kept, (near + share * (far - near), line)]
        kept.append((far, high))
    return kept


def _on_sheet(place: Point, scale: float) -> Point:
    return (_LEFT + _RIGHT) / 2 + place[0] * scale, _BOTTOM - place[1] * scale


def _from_above(plans: tuple[Sequence[Point], Sequence[Point]]) -> list[str]:
    reach = max(max(abs(x), abs(y)) for x, y in plans[0])
    return [_polygon([(_PLAN[0] + x * _REACH / reach, _PLAN[1] - y * _REACH / reach) for x, y in plan], style)
            for plan, style in zip(plans, ("vessel-wall", "wax"))]


def _polygon(corners: Sequence[Point], style: str) -> str:
    points = " ".join(f"{_number(x)},{_number(y)}" for x, y in corners)
    return f'<polygon class="{style}" points="{points}"/>'


def _number(value: float) -> str:
    return f"{value + 0.0:.1f}".removesuffix(".0")
