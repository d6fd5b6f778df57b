"""What all drawings of sections share: their sheet, the line with its labels, shapes and numbers."""

from collections.abc import Iterable
from xml.sax.saxutils import escape

from brimbook.shape.outline import Point

WIDTH, HEIGHT = 350, 190
LEFT, RIGHT, TOP, BOTTOM = 20, 172, 34, 166
WALL = 12
# Labels stand one below the other by so much, the lowest so far above the sheet's edge.
_STEP, _EDGE = 20, 10


def line_and_labels(level: float, right: float, labels: list[str], with_line: bool = True) -> list[str]:
    """A fill line across the drawing, and lines of text beside it [SVG].

    level: of the line [sheet].
    right: where the drawing ends [sheet].
    labels: the first one large [texts].
    with_line: is the line drawn [yes or no]?
    """
    start = number(max(right + WALL + 4, RIGHT + 14))
    shapes = [f'<line class="fill-line" x1="{number(LEFT - 16)}" y1="{number(level)}" x2="{RIGHT + 12}" '
              f'y2="{number(level)}"/>'] if with_line else []
    top = min(level, HEIGHT - _EDGE - 6 - _STEP * max(len(labels) - 1, 0))
    for place, text in enumerate(labels):
        style = "label" if place == 0 else "label-small"
        shapes.append(f'<text class="{style}" x="{start}" y="{number(top + 6 + _STEP * place)}">{escape(text)}</text>')
    return shapes


def polygon(corners: Iterable[Point], style: str) -> str:
    """A closed polygon [SVG].

    corners: of it [sheet].
    style: a class name [text].
    """
    return f'<polygon class="{style}" points="{" ".join(f"{number(x)},{number(y)}" for x, y in corners)}"/>'


def outlines(polygons: Iterable[Iterable[Point]], style: str) -> str:
    """Several outlines as one shape, holes among them [SVG].

    polygons: of the shape [sheet].
    style: a class name [text].
    """
    path = "".join(f'M{"L".join(f"{number(x)},{number(y)}" for x, y in each)}Z' for each in polygons)
    return f'<path class="{style}" fill-rule="evenodd" d="{path}"/>' if path else ""


def number(value: float) -> str:
    """A place on the sheet as text [text].

    value: along either side [sheet].
    """
    return f"{value:.1f}".removesuffix(".0")


def sheet(shapes: list[str]) -> str:
    """A drawing of these shapes [SVG].

    shapes: the undermost first [SVG].
    """
    return (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" class="section">'
            f'{"".join(shapes)}</svg>')
