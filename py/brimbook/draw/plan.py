"""The wax surface from above: its outline, wicks with their pools, the spot that melts last, and a scale bar."""

from collections.abc import Sequence
from dataclasses import dataclass
from xml.sax.saxutils import escape, quoteattr

from brimbook.shape.outline import Outline, Point, size

WIDTH, _HIGHEST, _EDGE, _BELOW = 350, 270, 26, 34
_HAND, _WICK, _RING, _LINE = 17, 6, 7, 8


@dataclass(frozen=True)
class Frame:
    """Where the outline's places are in the drawing: the middle of the outline, and units for a millimeter."""

    x: float
    y: float
    scale: float

    def at(self, point: Point) -> Point:
        """A place of the outline in the drawing [units].

        point: from the middle of the outline, y to the back [mm].
        """
        return round(self.x + point[0] * self.scale, 1), round(self.y - point[1] * self.scale, 1)

    def back(self, x: float, y: float) -> Point:
        """A place of the drawing in the outline [mm].

        x: in the drawing [units].
        y: in the drawing, downward [units].
        """
        return (x - self.x) / self.scale, (self.y - y) / self.scale


def frame(outline: Outline) -> Frame:
    """The frame in which an outline is drawn [frame].

    outline: any [outline].
    """
    wide, high = size(outline)
    scale = min((WIDTH - 2 * _EDGE) / wide, (_HIGHEST - 2 * _EDGE) / high)
    return Frame(WIDTH / 2, _EDGE + high * scale / 2, scale)


@dataclass(frozen=True)
class Wick:
    """A wick in a plan: its place and its pool [mm], and what it is called to those who listen."""

    place: Point
    pool: Sequence[Point]
    name: str


def plan(outline: Outline, wicks: Sequence[Wick], worst: Point | None, bar: tuple[float, str],
         kept: Sequence[Point] = ()) -> str:
    """The surface with its wicks, each a handle that can be moved [SVG].

    outline: of the surface [outline].
    wicks: in it [wicks].
    worst: the spot that melts last [mm].
    bar: length of the scale bar [mm], and what stands beside it [text].
    kept: where wicks are clear of the wall, as a polygon [mm].

    >>> plan(Outline(((0, 0), (40, 0), (0, 30))), [Wick((10, 10), (), "Wick 1")], None, (10, "10 mm")).count('class="handle"')
    1
    """
    drawn = frame(outline)
    shapes = [_polygon(drawn, outline.points, "outline")]
    shapes += [_polygon(drawn, wick.pool, style) for style in ("pool", "pool-edge") for wick in wicks if wick.pool]
    if kept:
        shapes.append(_polygon(drawn, kept, "clearance"))
    if worst is not None:
        shapes.append(_worst(*drawn.at(worst)))
    shapes += [_handle(row, wick, *drawn.at(wick.place)) for row, wick in enumerate(wicks)]
    bottom = round(2 * drawn.y - _EDGE + _LINE * 2)
    shapes.append(_bar(bar[0] * drawn.scale, bar[1], bottom))
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {bottom + _BELOW}" class="section">{"".join(shapes)}</svg>'


def _polygon(drawn: Frame, points: Sequence[Point], style: str) -> str:
    return f'<polygon class="{style}" points="{" ".join(f"{x},{y}" for x, y in map(drawn.at, points))}"/>'


def _worst(x: float, y: float) -> str:
    anchor, off = ("end", -_RING - 4) if x > WIDTH / 2 else ("start", _RING + 4)
    low = y + (16 if y < _EDGE + 4 else -8)
    return (f'<circle class="worst" cx="{x}" cy="{y}" r="{_RING}"/>'
            f'<text class="label-small worst" x="{x + off}" y="{low}" text-anchor="{anchor}">melts last</text>')


def _handle(row: int, wick: Wick, x: float, y: float) -> str:
    return (f'<g class="handle" data-row="{row}" tabindex="0" role="button" aria-label={quoteattr(wick.name)}>'
            f'<circle class="hit" cx="{x}" cy="{y}" r="{_HAND}"/><circle class="wick" cx="{x}" cy="{y}" r="{_WICK}"/>'
            f'<text class="label" x="{x + _WICK + 4}" y="{y + 5}">{row + 1}</text></g>')


def _bar(length: float, told: str, y: float) -> str:
    left = _EDGE
    right, tick = round(left + length, 1), 5
    return (f'<path class="scale" d="M{left} {y - tick}V{y + tick}M{left} {y}H{right}M{right} {y - tick}V{y + tick}"/>'
            f'<text class="label-small scale" x="{right + 8}" y="{y + 5}">{escape(told)}</text>')
