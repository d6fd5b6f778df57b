"""The bars of a holder across their opening, seen from above."""

from collections.abc import Sequence
from xml.sax.saxutils import escape

from brimbook.shape.outline import Point

WIDTH, _HIGHEST, _EDGE = 350, 260, 12


def across(outline: Sequence[Point], bars: Sequence[Sequence[Point]], wicks: Sequence[Point]) -> str:
    """An opening with its bars and wicks [SVG].

    outline: of the opening, y to the back [mm].
    bars: each as a polygon on the outline's own axes [mm].
    wicks: in their slots [mm].

    >>> across([(0, 0), (40, 0), (0, 30)], [[(-5, 8), (45, 8), (45, 12)]], [(20, 10)]).count('class="wick"')
    1
    """
    everything = [point for part in (outline, *bars) for point in part]
    left, right = (edge(x for x, _ in everything) for edge in (min, max))
    low, high = (edge(y for _, y in everything) for edge in (min, max))
    scale = min((WIDTH - 2 * _EDGE) / (right - left), (_HIGHEST - 2 * _EDGE) / (high - low))
    start = (WIDTH - (right - left) * scale) / 2

    def at(point: Point) -> Point:
        return round(start + (point[0] - left) * scale, 1), round(_EDGE + (high - point[1]) * scale, 1)

    shapes = [_polygon([at(point) for point in outline], "outline")]
    shapes += [_polygon([at(point) for point in bar], "bar-soft") for bar in bars]
    for number, wick in enumerate(wicks, 1):
        x, y = at(wick)
        shapes.append(f'<circle class="wick" cx="{x}" cy="{y}" r="4"/>')
        shapes.append(f'<text class="label-small" x="{x + 8}" y="{y - 8}">{escape(str(number))}</text>')
    height = round((high - low) * scale + 2 * _EDGE)
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {height}" class="section">{"".join(shapes)}</svg>'


def _polygon(points: Sequence[Point], style: str) -> str:
    return f'<polygon class="{style}" points="{" ".join(f"{x},{y}" for x, y in points)}"/>'
