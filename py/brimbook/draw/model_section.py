"""The sections of a model from a file, to scale: upright with what fills it, and level as seen from above."""

from collections.abc import Callable
from dataclasses import dataclass

from brimbook.draw.section_parts import BOTTOM, HEIGHT, LEFT, RIGHT, TOP, WIDTH, line_and_labels, outlines, sheet
from brimbook.shape.outline import Point

Polygon = tuple[Point, ...]
_PLAN_EDGE = 16


@dataclass(frozen=True)
class Cut:
    """An upright cut: what is solid, what fills it, and the height of the line; none for a piece that nothing fills.

    style: of the solid, a class name.
    """

    solid: tuple[Polygon, ...]
    filled: tuple[Polygon, ...] = ()
    line: float | None = None
    style: str = "vessel-wall"


def upright(cut: Cut, contents: str, labels: list[str]) -> str:
    """A cut to scale, filled to its line [SVG].

    cut: places from the left, and heights [mm].
    contents: what fills it: wax or water, a class name [text].
    labels: lines of text beside the line, the first one large [texts].

    >>> square = ((0.0, 0.0), (60.0, 0.0), (60.0, 40.0), (0.0, 40.0))
    >>> 'class="vessel-wall"' in upright(Cut((square,)), "water", ["96 mL"])
    True
    """
    points = [point for each in (*cut.solid, *cut.filled) for point in each]
    place, right = _placed(points, (LEFT, RIGHT, TOP, BOTTOM))
    level = place((0.0, cut.line))[1] if cut.line is not None else TOP
    return sheet([outlines(([place(each) for each in part] for part in cut.filled), contents),
                  outlines(([place(each) for each in part] for part in cut.solid), cut.style),
                  *line_and_labels(level, right, labels, with_line=cut.line is not None)])


def level(solid: tuple[Polygon, ...], filled: tuple[Polygon, ...], labels: list[str]) -> str:
    """A section as seen from above, to scale, what is filled in it too [SVG].

    solid: outlines of the solid, holes among them: places from the left, and from the front [mm].
    filled: outlines of what is filled [mm].
    labels: lines of text beside it, the first one large [texts].

    >>> 'class="water"' in level((), (((0.0, 0.0), (60.0, 0.0), (60.0, 40.0)),), ["at 40 mm"])
    True
    """
    points = [point for each in (*solid, *filled) for point in each]
    place, right = _placed(points, (LEFT, RIGHT, _PLAN_EDGE, HEIGHT - _PLAN_EDGE))
    return sheet([outlines(([place(each) for each in part] for part in filled), "water"),
                  outlines(([place(each) for each in part] for part in solid), "vessel-wall"),
                  *line_and_labels(TOP, right, labels, with_line=False)])


def stacked(drawings: list[str]) -> str:
    """Drawings of one width, one below the other [SVG].

    drawings: each with its view box from 0 0 on [SVG].
    """
    parts, at = [], 0.0
    for each in drawings:
        high = each.partition(f'viewBox="0 0 {WIDTH} ')[2].partition('"')[0]
        parts.append(each.replace("<svg ", f'<svg y="{at:g}" width="{WIDTH}" height="{high}" ', 1))
        at += float(high)
    if len(drawings) == 1:
        return drawings[0]
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {at:g}" class="section">{"".join(parts)}</svg>'


def _placed(points: list[Point], frame: tuple[float, float, float, float]) -> tuple[Callable[[Point], Point], float]:
    """From mm to the sheet, as large as the frame allows, and where the drawing ends on the right."""
    left, right, top, bottom = frame
    (least_x, least_y), (most_x, most_y) = ([pick(point[axis] for point in points) for axis in (0, 1)] for pick in (min, max))
    wide, high = max(most_x - least_x, 1e-9), max(most_y - least_y, 1e-9)
    scale = min((right - left) / wide, (bottom - top) / high)
    start = (left + right - wide * scale) / 2
    return (lambda point: (start + (point[0] - least_x) * scale, bottom - (point[1] - least_y) * scale)), start + wide * scale
