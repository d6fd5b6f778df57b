"""What was marked on a photo, drawn over it: 1000 units are the photo's width."""

import math
from collections.abc import Sequence
from xml.sax.saxutils import escape, quoteattr

from brimbook.shape.curves import smooth_through
from brimbook.shape.path_data import Point

WIDTH = 1000
# Sizes on a phone: about 3 units are one of its points.
_HIT, _NEAR, _RING, _CROSS, _TEXT = 34, 25, 17, 9, 26
# How far inside a sheet the length of its side stands, of the way to its middle.
_INWARD = 0.16


def marks_over(ratio: float, known: Sequence[Point], rim: Sequence[Point], names: Sequence[str], *, outline: Sequence[Point] = (),
               sides: Sequence[str] = (), is_round: bool = True) -> str:
    """The marks of a photo, each a handle that can be moved [SVG].

    ratio: how high the photo is for its width [–].
    known: marks of the sheet or the ruler [units].
    rim: marks of the rim [units].
    names: what each mark is called by those who listen, in the order of the record [texts].
    outline: the sheet's corners in order around it, or the ruler's ends, once they are there [units].
    sides: what stands at the first and second side of that, once its size is known [texts].
    is_round: is the rim curved from mark to mark [yes or no]?

    >>> marks_over(0.75, [(100, 100)], [], ["Corner 1"]).count('class="handle"')
    1
    """
    shapes = [_line(outline, len(outline) > 2, "photo-sheet")] if outline else []
    if len(rim) > 1:
        shapes.append(_rim(rim, is_round))
    shapes += [_side(outline, row, text) for row, text in enumerate(sides)]
    return (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {round(WIDTH * ratio)}" class="photo-marks">'
            f'{"".join(shapes)}{"".join(_handle(row, *each) for row, each in enumerate(zip([*known, *rim], names)))}</svg>')


def _line(points: Sequence[Point], is_closed: bool, style: str) -> str:
    corners = "L".join(f"{x:g} {y:g}" for x, y in points)
    return f'<path class="{style}" d="M{corners}{"Z" if is_closed else ""}"/>'


def _rim(points: Sequence[Point], is_round: bool) -> str:
    if not is_round or len(points) < 3:
        return _line(points, len(points) > 2, "photo-rim")
    apart = [point for row, point in enumerate(points) if point != points[row - 1]]
    if len(apart) < 3:
        return _line(points, True, "photo-rim")
    curves = smooth_through(apart)
    steps = "".join("C" + " ".join(f"{x:.1f} {y:.1f}" for x, y in curve[1:]) for curve in curves)
    return f'<path class="photo-rim" d="M{curves[0][0][0]:.1f} {curves[0][0][1]:.1f}{steps}Z"/>'


def _side(outline: Sequence[Point], row: int, text: str) -> str:
    middle = [math.fsum(point[axis] for point in outline) / len(outline) for axis in (0, 1)]
    x, y = ((outline[row][axis] + outline[row + 1][axis]) / 2 * (1 - _INWARD) + middle[axis] * _INWARD for axis in (0, 1))
    return f'<text class="photo-side" x="{x:.1f}" y="{y:.1f}" font-size="{_TEXT}" text-anchor="middle">{escape(text)}</text>'


def _handle(row: int, mark: Point, name: str) -> str:
    x, y = mark
    cross = f"M{x - _CROSS:g} {y:g}H{x + _CROSS:g}M{x:g} {y - _CROSS:g}V{y + _CROSS:g}"
    return (f'<g class="handle" data-row="p{row}" data-mark="{row}" tabindex="0" role="button" aria-label={quoteattr(name)}>'
            f'<circle class="hit" cx="{x:g}" cy="{y:g}" r="{_HIT}"/><circle class="near" cx="{x:g}" cy="{y:g}" r="{_NEAR}"/><circle class="photo-ring" cx="{x:g}" cy="{y:g}" r="{_RING}"/>'
            f'<path class="photo-cross" d="{cross}"/></g>')
